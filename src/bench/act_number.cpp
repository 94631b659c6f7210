#include "bench/act.hpp"
#include "bench/corrections.hpp"
#include "bench/materials.hpp"
#include "bench/record.hpp"
#include "paint/air.hpp"
#include "paint/measure.hpp"
#include "words/bench_says.hpp"

#include <cmath>

namespace bench {

namespace {

constexpr std::size_t longest_number = 8; // characters

void close_number(Bench& bench) {
  bench.number.reset();
  if (bench.middle == Middle::number) bench.middle = Middle::trail;
}

session::Event weighed(const Bench& bench, const PadId& target, double g) {
  const session::Place here = session::in_hand(bench.folded->places);
  switch (target.kind) {
  case PadKind::bottle_of: return session::BottleWeighed{target.arg, g};
  case PadKind::weigh_paint: return session::Weighed{here, g, 0};
  case PadKind::spilt: return session::Lost{here, {1, g}, ""};
  default: return session::Added{target.arg, session::Unit::g, g, ""};
  }
}

words::Result<double> correct_amount(Bench& bench, double value, const Now& now, Effects& effects) {
  const session::Entry* line = line_chosen(bench);
  if (!line) return value;
  if (auto says = with_amount(line->event, value))
    record(bench, bench.batch, session::Corrected{line->ref, *std::move(says), {}}, now, effects);
  refold(bench, now);
  return value;
}

words::Result<double> set_parts(Bench& bench, const std::string& card, double parts) {
  if (!(parts > 0 && parts <= 1000)) return words::failure(words::BenchSay::parts_out_of_range);
  for (BlendPart& part : bench.plan.blend)
    if (part.card == card) part.parts = parts;
  return parts;
}

// In the plan's own unit. Whole pans.
words::Result<double> set_wanted(Bench& bench, double value) {
  if (!(value > 0)) return words::failure(words::BenchSay::nothing_wanted);
  if (bench.plan.want == Want::pans && value != std::floor(value))
    return words::failure(words::BenchSay::pans_not_whole,
                          {words::fixed(std::floor(value), 0), words::fixed(std::ceil(value), 0),
                           words::fixed(value, 1)});
  if (const auto fits = paint::grams_weighed(value); !fits)
    return tl::make_unexpected(fits.error());
  bench.plan.wanted = value;
  return value;
}

void weighed_at_slab(Bench& bench, const PadId& target, double g, const Now& now,
                     Effects& effects) {
  if (const auto card = card_of(bench, target.arg))
    lay_out_card(bench, bench.batch, *card, now, effects);
  record(bench, bench.batch, weighed(bench, target, g), now, effects);
  bench.amount = {};
  refold(bench, now);
}

// Takes the number to its place, or says why it cannot go there.
words::Result<double> use(Bench& bench, const PadId& target, double value, const Now& now,
                          Effects& effects) {
  PlanState& plan = bench.plan;
  if (target.kind == PadKind::celsius || target.kind == PadKind::humidity) {
    const bool warmth = target.kind == PadKind::celsius;
    const auto room =
        paint::room(warmth ? value : plan.celsius, warmth ? plan.humidity * 100 : value);
    if (!room) return tl::make_unexpected(room.error());
    plan.celsius = room->celsius;
    plan.humidity = room->humidity;
    plan.room_guessed = false;
    return value;
  }
  if (target.kind == PadKind::fact) return set_fact(bench, target.arg, value);
  if (target.kind == PadKind::pour_g || target.kind == PadKind::weigh_pan)
    return set_on_pan(bench, target, value, now, effects);
  if (target.kind == PadKind::parts) return set_parts(bench, target.arg, value);
  if (target.kind == PadKind::weigh) return set_wanted(bench, value);
  if (target.kind == PadKind::other_amount) return correct_amount(bench, value, now, effects);
  if (target.kind != PadKind::bottle_of) {
    const auto grams = paint::grams_weighed(value);
    if (!grams) return tl::make_unexpected(grams.error());
  }
  weighed_at_slab(bench, target, value, now, effects);
  return value;
}

void enter(Bench& bench, const Now& now, Effects& effects) {
  NumberEntry entry = *bench.number;
  const auto value = paint::typed_number(entry.text);
  const auto used = value ? use(bench, entry.target, *value, now, effects) : value;
  if (used) return close_number(bench);
  bench.number->error = used.error();
}

void type(Bench& bench, char c) {
  std::string& text = bench.number->text;
  bench.number->error.reset();
  if (text.size() < longest_number) text += c;
}

}

void open_number(Bench& bench, PadId target) {
  bench.number = NumberEntry{std::move(target), "", std::nullopt};
  if (bench.screen == Screen::slab) bench.middle = Middle::number;
}

void act_on_number(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::digit: return type(bench, pad.arg[0]);
  case PadKind::point: return type(bench, '.');
  case PadKind::erase:
    bench.number->error.reset();
    if (!bench.number->text.empty()) bench.number->text.pop_back();
    return;
  case PadKind::enter: return enter(bench, now, effects);
  case PadKind::leave: return close_number(bench);
  default: return;
  }
}

}
