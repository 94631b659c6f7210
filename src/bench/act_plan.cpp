#include "bench/act.hpp"
#include "bench/choices.hpp"
#include "bench/ghost.hpp"
#include "bench/record.hpp"

namespace bench {

namespace {

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

}
