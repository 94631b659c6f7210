#include "bench/act.hpp"

#include "bench/choices.hpp"
#include "bench/ghost.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

constexpr std::int64_t notice_ms = 4000;

void go_to(Bench& bench, Screen screen) {
  if (screen == Screen::slab && bench.batch.empty()) return;
  bench.screen = screen;
  bench.keys.binding.reset();
  bench.number.reset();
  bench.middle = Middle::trail;
}

bool belongs_to_number(PadKind kind) {
  return kind == PadKind::digit || kind == PadKind::point || kind == PadKind::erase ||
         kind == PadKind::enter || kind == PadKind::leave;
}

// The next batch on the slab starts from the same room, but another colour.
void begin(Bench& bench, const Now& now, Effects& effects) {
  const PlanState plan = bench.plan;
  if (missing_for_begin(bench)) return;
  const std::string batch = fresh_id(now);
  record(bench, batch, session::Opened{plan.name}, now, effects);
  record(bench, batch, session::RoomSet{plan.celsius, plan.humidity, plan.room_guessed}, now,
         effects);
  for (const session::Card& card : bench.shelf) {
    using session::CardKind;
    const bool chosen = card.id == plan.pigment || card.id == plan.binder;
    const bool always = card.is_a != CardKind::pigment && card.is_a != CardKind::binder;
    if (chosen || always) lay_out_card(bench, batch, card, now, effects);
  }
  if (plan.grams > 0)
    record(bench, batch, session::Added{plan.pigment, session::Unit::g, plan.grams, ""}, now,
           effects);
  bench.batch = batch;
  bench.batches.push_back(batch);
  bench.lessons = session::lessons_of(session::all_of(bench.logs));
  bench.plan.pigment.clear();
  bench.plan.name.clear();
  bench.plan.name_typed = false;
  bench.plan.grams = 0;
  bench.plan.search.clear();
  bench.amount = {};
  refold(bench, now);
  bench.ghost = ghost_of(bench, *bench.folded);
  go_to(bench, Screen::slab);
}

void choose_pigment(Bench& bench, const std::string& id) {
  bench.plan.pigment = id;
  if (!bench.plan.name_typed) bench.plan.name = proposed_name(bench, id);
}

// Takes up a batch again: a closed one by withdrawing what closed it.
void take_up(Bench& bench, const Now& now, Effects& effects) {
  bench.batch = bench.book.batch;
  refold(bench, now);
  if (!bench.folded) return;
  if (bench.folded->progress == session::Progress::closed)
    for (auto e = bench.folded->entries.rbegin(); e != bench.folded->entries.rend(); ++e)
      if (std::holds_alternative<session::Closed>(e->event) && !e->withdrawn) {
        record(bench, bench.batch, session::Withdrawn{e->ref}, now, effects);
        break;
      }
  bench.amount = {};
  refold(bench, now);
  bench.ghost = ghost_of(bench, *bench.folded);
  go_to(bench, Screen::slab);
}

}

void say_error(Bench& bench, words::Error error, const Now& now) {
  bench.notice = {std::nullopt, std::move(error), now.run_ms + notice_ms};
}

void act_on_plan(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::pigment: return choose_pigment(bench, pad.arg);
  case PadKind::binder: bench.plan.binder = pad.arg; return;
  case PadKind::page_back: --bench.plan.page; return;
  case PadKind::page_on: ++bench.plan.page; return;
  case PadKind::weigh:
  case PadKind::celsius:
  case PadKind::humidity: return open_number(bench, pad);
  case PadKind::begin: return begin(bench, now, effects);
  default: return;
  }
}

void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::batch: bench.book.batch = pad.arg; return;
  case PadKind::page_back: --bench.book.page; return;
  case PadKind::page_on: ++bench.book.page; return;
  case PadKind::to_list: bench.book.batch.clear(); return;
  case PadKind::take_up: return take_up(bench, now, effects);
  default: return;
  }
}

void act(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  switch (pad.kind) {
  case PadKind::plan: return go_to(bench, Screen::plan);
  case PadKind::slab: return go_to(bench, Screen::slab);
  case PadKind::book:
    if (bench.screen == Screen::book) bench.book.batch.clear();
    return go_to(bench, Screen::book);
  case PadKind::tablet: return go_to(bench, Screen::tablet);
  case PadKind::sound:
    bench.tablet.sound = !bench.tablet.sound;
    effects.keep_tablet = true;
    return;
  case PadKind::night: bench.night = !bench.night; return;
  case PadKind::wipe: bench.locked = true; return;
  default: break;
  }
  if (bench.number && belongs_to_number(pad.kind)) return act_on_number(bench, pad, now, effects);
  if (bench.screen == Screen::slab) return act_on_slab(bench, pad, now, effects);
  if (bench.screen == Screen::plan) return act_on_plan(bench, pad, now, effects);
  if (bench.screen == Screen::tablet) return act_on_tablet(bench, pad, effects);
  act_on_book(bench, pad, now, effects);
}

}
