#include "bench/act.hpp"
#include "bench/choices.hpp"
#include "bench/doubt.hpp"
#include "bench/due.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pan_said.hpp"
#include "bench/pans.hpp"
#include "bench/record.hpp"
#include "paint/measure.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <charconv>

namespace bench {

namespace {

void record_of_pans(Bench& bench, session::Event event, const Now& now, Effects& effects) {
  const std::string batch = pans_batch(bench);
  record(bench, batch, std::move(event), now, effects);
  if (batch == bench.batch) refold(bench, now);
  refold_pans(bench, now);
}

void pour(Bench& bench, const session::Poured& poured, const Now& now, Effects& effects) {
  const auto& cards = bench.pans.folded->cards;
  const auto known = cards.find(poured.in);
  const session::Card* card = known == cards.end() ? shelf_card(bench, poured.in) : &known->second;
  if (!card) return;
  lay_out_card(bench, pans_batch(bench), session::Card(*card), now, effects);
  record_of_pans(bench, poured, now, effects);
}

void pour_one(Bench& bench, int number, const Now& now, Effects& effects) {
  const session::Batch& batch = *bench.pans.folded;
  const session::Pan* pan = pan_numbered(batch, number);
  bench.pans.pan = number;
  if (!(to_pour_mL(batch) > 0)) return say_error(bench, {words::BenchSay::pans_left_none, {}}, now);
  if (pan && is_full(*pan)) return say_error(bench, {words::BenchSay::pans_no_more, {}}, now);
  if (pan && !takes_layer(batch, *pan, now.wall_ms))
    return say_error(bench, {words::BenchSay::pans_still_wet, {std::to_string(number)}}, now);
  if (asks_what_is_left_out(bench, batch, now)) return;
  const auto card = pan ? std::optional(pan->card) : pan_card(bench);
  if (card) pour(bench, {number, number, card->id, std::nullopt}, now, effects);
  show_pan(bench, number);
}

void pour_all(Bench& bench, const Now& now, Effects& effects) {
  const auto pours = pours_for_all(bench, now);
  if (!pours.empty() && asks_what_is_left_out(bench, *bench.pans.folded, now)) return;
  for (const session::Poured& poured : pours) pour(bench, poured, now, effects);
  bench.pans.pan = 0;
}

void tap_pan(Bench& bench, const std::string& arg) {
  int number = 0;
  std::from_chars(arg.data(), arg.data() + arg.size(), number);
  const bool again = bench.pans.judging && bench.pans.pan == number; // all are meant
  bench.pans.pan = again ? 0 : number;
}

void another_card(Bench& bench) {
  const auto all = shelf_of(bench, session::CardKind::pan);
  const auto now = pan_card(bench);
  if (all.empty()) return;
  const auto here = std::find_if(all.begin(), all.end(),
                                 [&](const session::Card* c) { return now && c->id == now->id; });
  const auto next = here == all.end() || here + 1 == all.end() ? all.begin() : here + 1;
  bench.pans.card = (*next)->id;
}

// The word that stands, tapped again, is taken back, but where another day has asked since.
void judge(Bench& bench, session::Became as, const Now& now, Effects& effects) {
  const session::Verdict verdict{as, bench.pans.pan};
  const auto said = said_of(*bench.pans.folded, bench.pans.pan);
  const bool own = said && said->line.session == bench.sitting.session;
  const bool asked_anew = verdict_day_due(bench, pans_batch(bench), now) != 0;
  constexpr std::int64_t one_tap_ms = 1000; // two so near each other are one
  if (own && said->verdict == verdict && now.wall_ms - said->at < one_tap_ms) return;
  if (own && said->verdict == verdict && !asked_anew)
    return record_of_pans(bench, session::Withdrawn{said->line}, now, effects);
  record_of_pans(bench, verdict, now, effects);
}

void undo_of_pans(Bench& bench, const Now& now, Effects& effects) {
  const auto target = undo_target(bench, *bench.pans.folded);
  if (close_question(bench, target, now) || !target) return;
  for (const session::Ref& line : undone_together(bench, *bench.pans.folded, *target))
    record_of_pans(bench, session::Withdrawn{line}, now, effects);
}

void turn_to(Bench& bench, const std::string& batch, const Now& now) {
  bench.pans.batch = batch;
  bench.pans.card.clear();
  open_pans(bench, now);
}

// How much a pan took that was just poured by eye; else so much more of it.
void poured_grams(Bench& bench, int number, double g, const Now& now, Effects& effects) {
  const session::Pan* pan = pan_numbered(*bench.pans.folded, number);
  if (!pan) return;
  session::Poured poured{number, number, pan->card.id, g};
  if (const auto line = own_pour(bench, number))
    return record_of_pans(bench, session::Corrected{*line, session::Corrected::Says{poured}, {}},
                          now, effects);
  pour(bench, poured, now, effects);
}

}

namespace {

// Paint weighs at most 3 g/mL, wet; an empty pan as much as a tin of its size, and 50 g (own
// estimate): more is a slip of the finger, or several pans.
std::optional<words::Error> fault_of_weight(const session::Batch& batch, int number, double g) {
  const session::Pan* pan = pan_numbered(batch, number);
  const double mL = pan ? volume_of(pan->card).mL : 0;
  if (!pan || g <= 50 + 6 * mL) return std::nullopt;
  return words::Error{words::BenchSay::pan_too_heavy, {words::Number(mL, 1), words::Number(g, 0)}};
}

}

words::Result<double> set_on_pan(Bench& bench, const PadId& target, double g, const Now& now,
                                 Effects& effects) {
  if (const auto grams = paint::grams_weighed(g); !grams) return tl::make_unexpected(grams.error());
  if (target.kind != PansPad::weigh_pan)
    return poured_grams(bench, bench.pans.pan, g, now, effects), g;
  if (const auto too_heavy = fault_of_weight(*bench.pans.folded, bench.pans.pan, g))
    return tl::make_unexpected(*too_heavy);
  record_of_pans(bench, session::PanWeighed{bench.pans.pan, g}, now, effects);
  return g;
}

void act_on_pans(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (!bench.pans.folded) return;
  if (pad.kind == SharedPad::undo) return undo_of_pans(bench, now, effects);
  const auto own = pad.kind.as<PansPad>();
  if (!own) return;
  switch (*own) {
  case PansPad::pan: return tap_pan(bench, pad.arg);
  case PansPad::new_pan: return pour_one(bench, next_number(*bench.pans.folded), now, effects);
  case PansPad::pour_all: return pour_all(bench, now, effects);
  case PansPad::pour_pan: return pour_one(bench, bench.pans.pan, now, effects);
  case PansPad::pour_g:
  case PansPad::weigh_pan:
  case PansPad::room: return open_number(bench, pad);
  case PansPad::pan_card: return another_card(bench);
  case PansPad::judge:
    bench.pans.judging = !bench.pans.judging;
    bench.pans.pan = bench.pans.page = 0;
    return;
  case PansPad::became:
    if (const auto became = session::became_named(pad.arg)) judge(bench, *became, now, effects);
    return;
  case PansPad::all_pans: bench.pans.pan = 0; return;
  case PansPad::more_pans: bench.pans.page = (bench.pans.page + 1) % pan_pages(bench); return;
  case PansPad::batch: return turn_to(bench, pad.arg, now);
  case PansPad::more_batches:
    bench.pans.others_page = (bench.pans.others_page + 1) % other_pages(bench);
    return;
  }
}

}
