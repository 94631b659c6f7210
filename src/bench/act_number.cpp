#include "bench/act.hpp"
#include "bench/card_facts.hpp"
#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/materials.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pans.hpp"
#include "bench/recalibration.hpp"
#include "bench/recipes.hpp"
#include "bench/record.hpp"
#include "bench/typed.hpp"
#include "paint/air.hpp"
#include "paint/measure.hpp"
#include "session/bytes.hpp"
#include "words/bench_says.hpp"

namespace bench {

namespace {

constexpr std::size_t longest_number = 8; // characters

void close_number(Bench& bench) {
  bench.amount = {}; // the next tap is no weighing
  bench.number.reset();
  if (is_open<NumberPanel>(bench.panel)) bench.panel = TrailPanel{};
}

// More than a line can say would be damage when it is read again.
words::Result<double> if_it_can_be(const session::Event& event, double value) {
  if (session::reads_back(event)) return value;
  return words::failure(words::BenchSay::amount_cannot_be);
}

words::Result<double> correct_amount(Bench& bench, double value, const Now& now, Effects& effects) {
  const session::Entry* line = line_chosen(bench);
  if (!line) return value;
  auto says = with_amount(line->event, value);
  if (!says) return value;
  session::Corrected corrected{line->ref, *std::move(says), {}};
  if (auto can = if_it_can_be(corrected, value); !can) return can;
  record(bench, bench.batch, std::move(corrected), now, effects);
  refold(bench, now);
  ask_if_doubted(bench);
  return value;
}

// In the plan's own unit.
words::Result<double> set_wanted(Bench& bench, double value) {
  if (!(value > 0)) return words::failure(words::BenchSay::nothing_wanted);
  bench.plan.wanted = value;
  return value;
}

words::Result<double> weighed_at_slab(Bench& bench, const std::string& id, session::Event event,
                                      double value, const Now& now, Effects& effects) {
  if (auto can = if_it_can_be(event, value); !can) return can;
  if (const auto card = card_of(bench, id)) lay_out_card(bench, bench.batch, *card, now, effects);
  record(bench, bench.batch, std::move(event), now, effects);
  bench.amount = {};
  refold(bench, now);
  return value;
}

words::Result<double> set_room(PlanState& plan, double celsius, double humidity, double typed,
                               const Now& now) {
  const auto room = paint::room(celsius, humidity);
  if (!room) return tl::make_unexpected(room.error());
  plan.celsius = room->celsius;
  plan.humidity = room->humidity;
  plan.room_guessed = false;
  plan.room_read_at = now.wall_ms;
  return typed;
}

// Of a batch, from now on: the degrees, or after them the humidity.
words::Result<double> set_room_of(Bench& bench, const std::string& batch, bool humidity,
                                  double value, const Now& now, Effects& effects) {
  const Folded folded = fold_of(bench, batch);
  if (!folded) return value;
  const paint::Room& was = folded->places.room;
  const auto room =
      humidity ? paint::room(was.celsius, value) : paint::room(value, was.humidity * 100);
  if (!room) return tl::make_unexpected(room.error());
  const bool guessed = !humidity && folded->room_guessed;
  record(bench, batch, session::RoomSet{room->celsius, room->humidity, guessed}, now, effects);
  if (!guessed) set_room(bench.plan, room->celsius, room->humidity * 100, value, now);
  if (batch == bench.batch) refold(bench, now);
  if (bench.screen == Screen::pans) refold_pans(bench, now);
  return value;
}

bool asks_humidity(const PadId& target) { return target.arg == "humidity"; }

// Where a number goes that was asked for by a pad of each list.
struct Use {
  Bench& bench;
  const PadId& target;
  double value;
  const Now& now;
  Effects& effects;

  words::Result<double> operator()(PlanPad pad) const {
    PlanState& plan = bench.plan;
    switch (pad) {
    case PlanPad::celsius: return set_room(plan, value, plan.humidity * 100, value, now);
    case PlanPad::humidity: return set_room(plan, plan.celsius, value, value, now);
    case PlanPad::parts: return say_amount(bench, target.arg, value);
    case PlanPad::weigh: return set_wanted(bench, value);
    case PlanPad::pigment:
    case PlanPad::binder:
    case PlanPad::by_volume:
    case PlanPad::want:
    case PlanPad::pan_size:
    case PlanPad::cautions:
    case PlanPad::cautions_read:
    case PlanPad::name:
    case PlanPad::begin:
    case PlanPad::go_on:
    case PlanPad::another_pigment:
    case PlanPad::recipes:
    case PlanPad::recipe:
    case PlanPad::all_others:
    case PlanPad::say_in:
    case PlanPad::spoon:
    case PlanPad::other_binders:
    case PlanPad::fewer:
    case PlanPad::more:
    case PlanPad::keep_recipe: return value; // ask for none
    }
    return value;
  }

  words::Result<double> operator()(ChoicePad pad) const {
    switch (pad) {
    case ChoicePad::bottle_of: return bottle_weighed();
    case ChoicePad::amount:
    case ChoicePad::dropper:
    case ChoicePad::lost_count:
    case ChoicePad::keep_dropper:
    case ChoicePad::specks:
    case ChoicePad::trouble_is: return value; // ask for none
    }
    return value;
  }

  words::Result<double> operator()(MorePad pad) const {
    const session::Place here = session::in_hand(bench.folded->places);
    switch (pad) {
    case MorePad::weigh_paint: return paint_weighed(session::Weighed{here, value, 0});
    case MorePad::spilt: return weighed(session::Lost{here, {1, value}, ""});
    case MorePad::other_amount: return correct_amount(bench, value, now, effects);
    case MorePad::room:
      return set_room_of(bench, bench.batch, asks_humidity(target), value, now, effects);
    case MorePad::to_jar:
    case MorePad::from_jar:
    case MorePad::other_paint:
    case MorePad::paint_of:
    case MorePad::lines:
    case MorePad::earlier:
    case MorePad::later:
    case MorePad::run:
    case MorePad::line:
    case MorePad::other_material:
    case MorePad::it_was:
    case MorePad::materials:
    case MorePad::more_materials:
    case MorePad::choose_pads:
    case MorePad::on_pad:
    case MorePad::five_earlier:
    case MorePad::take_back:
    case MorePad::it_is:
    case MorePad::was_meant:
    case MorePad::found: return value; // ask for none
    }
    return value;
  }

  words::Result<double> bottle_weighed() const {
    const auto done = weighed_at_slab(bench, target.arg, session::BottleWeighed{target.arg, value},
                                      value, now, effects);
    if (!done) return done;
    if (dropper_found(bench)) bench.panel = DropperPanel{};
    ask_if_doubted(bench);
    return done;
  }

  words::Result<double> paint_weighed(session::Weighed event) const {
    const auto done = weighed(std::move(event));
    if (done) ask_if_doubted(bench);
    return done;
  }

  // Errors where a scale could not show it.
  words::Result<double> weighed(session::Event event) const {
    const auto grams = paint::grams_weighed(value);
    if (!grams) return tl::make_unexpected(grams.error());
    return weighed_at_slab(bench, target.arg, std::move(event), value, now, effects);
  }
};

// Takes the number to its place, or says why it cannot go there.
words::Result<double> use(Bench& bench, const PadId& target, double value, const Now& now,
                          Effects& effects) {
  const Use use{bench, target, value, now, effects};
  if (const auto pad = target.kind.as<PlanPad>()) return use(*pad);
  if (const auto pad = target.kind.as<ChoicePad>()) return use(*pad);
  if (const auto pad = target.kind.as<MorePad>()) return use(*pad);
  switch (target.kind.list()) {
  case PadList::shelf:
    return target.kind == ShelfPad::fact ? set_fact(bench, target.arg, value)
                                         : set_on_jar(bench, target, value, now, effects);
  case PadList::pans:
    return target.kind == PansPad::room
               ? set_room_of(bench, pans_batch(bench), asks_humidity(target), value, now, effects)
               : set_on_pan(bench, target, value, now, effects);
  case PadList::binder: return set_on_binder(bench, target, value, now, effects);
  case PadList::slab: return use.weighed(session::Added{target.arg, session::Unit::g, value, ""});
  case PadList::top_bar:
  case PadList::shared:
  case PadList::today:
  case PadList::choice:
  case PadList::more:
  case PadList::number:
  case PadList::plan:
  case PadList::book:
  case PadList::tablet:
  case PadList::photos: return value; // ask for none, or have been asked
  }
  return value;
}

void enter(Bench& bench, const Now& now, Effects& effects) {
  NumberEntry entry = *bench.number;
  const auto value = paint::typed_number(entry.text);
  if (value) {
    const Typed said = typed(bench, entry.target, *value);
    if (auto fault = refused(said)) return void(bench.number->error = std::move(fault));
    if (auto doubt = entry.asked == entry.text ? std::nullopt : asked_about(said)) {
      bench.number->error = std::move(doubt);
      bench.number->asked = entry.text;
      return;
    }
  }
  const auto used = value ? use(bench, entry.target, *value, now, effects) : value;
  if (!used) return void(bench.number->error = used.error());
  const bool of_room = entry.target.kind == MorePad::room || entry.target.kind == PansPad::room;
  if (!of_room || asks_humidity(entry.target)) return close_number(bench);
  open_number(bench, {entry.target.kind, "humidity"});
}

// Who was told what is wrong with it types it all again.
void type(Bench& bench, char c) {
  NumberEntry& entry = *bench.number;
  if (entry.error) entry.text.clear();
  entry.error.reset();
  if (entry.text.size() < longest_number) entry.text += c;
}

}

void open_number(Bench& bench, PadId target) {
  bench.number = NumberEntry{std::move(target), "", std::nullopt};
  if (bench.screen != Screen::slab) return;
  const auto* open = std::get_if<LinePanel>(&bench.panel);
  bench.panel = NumberPanel{open ? std::optional(open->line) : std::nullopt};
}

void act_on_number(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  const auto key = pad.kind.as<NumberPad>();
  if (!key) return close_number(bench); // leave
  switch (*key) {
  case NumberPad::digit: return type(bench, pad.arg[0]);
  case NumberPad::point: return type(bench, '.');
  case NumberPad::erase:
    bench.number->error.reset();
    if (!bench.number->text.empty()) bench.number->text.pop_back();
    return;
  case NumberPad::enter: return enter(bench, now, effects);
  }
}

}
