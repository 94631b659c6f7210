#include "bench/act.hpp"
#include "bench/again.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/making.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_today.hpp"
#include "bench/pans.hpp"
#include "bench/shelf_list.hpp"
#include "bench/today.hpp"

#include <algorithm>

namespace bench {

namespace {

void lead_to_pans(Bench& bench, const Due& due, const Now& now) {
  bench.pans = {};
  bench.pans.batch = due.of;
  go_to(bench, Screen::pans);
  open_pans(bench, now);
  bench.pans.judging = due.what == Due::What::verdict;
  bench.pans.pan = due.pan;
}

void lead_to_shelf(Bench& bench, ShelfKind kind, const std::string& card) {
  bench.shelf_page = {};
  bench.shelf_page.kind = kind;
  if (const session::Card* known = shelf_card(bench, card)) {
    bench.shelf_page.kind = shelf_kind(known->kind());
    bench.shelf_page.card = *known;
    if (is_read(*known)) bench.shelf_page.on = CardPage::reading;
  }
  go_to(bench, Screen::shelf);
}

// Binder is made, a pigment is bought.
void lead_to_more(Bench& bench, const std::string& card) {
  const session::Card* known = shelf_card(bench, card);
  if (!known || known->kind() != session::CardKind::binder)
    return lead_to_shelf(bench, ShelfKind::pigment, card);
  open_making(bench, card);
  go_to(bench, Screen::binder);
}

// A copy: what is done there makes the list anew.
void lead_to(Bench& bench, const Due due, const Now& now, Effects& effects) {
  switch (due.what) {
  case Due::What::on_slab: return take_up(bench, due.of, now, effects);
  case Due::What::in_jar:
  case Due::What::next_layer:
  case Due::What::weigh_pan:
  case Due::What::verdict: return lead_to_pans(bench, due, now);
  case Due::What::use_up: return lead_to_shelf(bench, ShelfKind::pigment, due.of);
  case Due::What::runs_low: return lead_to_more(bench, due.of);
  case Due::What::making: show_making(bench, due.of); return go_to(bench, Screen::binder);
  case Due::What::hand_on: effects.hand_on = true; return go_to(bench, Screen::tablet);
  }
}

void put_hand(Bench& bench, Hand hand, Effects& effects) {
  bench.tablet.hand = bench.display.hand = hand;
  effects.keep_tablet = true;
}

}

void act_on_today(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  const auto own = pad.kind.as<TodayPad>();
  if (!own) return;
  switch (*own) {
  case TodayPad::due:
    for (const Due& one : bench.today.waits)
      if (name_of(one) == pad.arg) return lead_to(bench, one, now, effects);
    return;
  case TodayPad::again: return make_again(bench, pad.arg, now);
  case TodayPad::new_paint: return go_to(bench, Screen::plan);
  case TodayPad::have:
    lead_to_shelf(bench, ShelfKind::pigment, "");
    bench.shelf_page.ticking = true;
    return;
  case TodayPad::binder: open_making(bench, bench.plan.binder); return go_to(bench, Screen::binder);
  case TodayPad::bank_card: return go_to(bench, Screen::tablet);
  case TodayPad::hand:
    return put_hand(bench, pad.arg == "right" ? Hand::right : Hand::left, effects);
  }
}

}
