#include "bench/known.hpp"

#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/mulling.hpp"
#include "bench/rewetting.hpp"
#include "session/amounts.hpp"

namespace bench {

namespace {

bool is_sweetened(const session::Card& binder) {
  const auto material = session::material_of(binder);
  return material && material->parts.honey + material->parts.glycerin > 0;
}

Known::Binder known_binder(const Bench& bench, const session::Card& card) {
  const auto material = session::material_of(card);
  return {card.name, measures_of(bench, card), material ? material->parts.gum : 0};
}

// Where the batch's own has some, the first of them on the shelf is the other one.
void take_binders(const Bench& bench, Known& known) {
  for (const session::Card& own : materials_of(bench)) {
    if (own.kind() != session::CardKind::binder) continue;
    if (!is_sweetened(own)) known.plain = known_binder(bench, own);
    for (const session::Card* card : shelf_of(bench, session::CardKind::binder))
      if (!known.plain && !is_sweetened(*card))
        known.plain = known.without_honey = known_binder(bench, *card);
    return;
  }
}

}

Known known_of(const Bench& bench) {
  Known known;
  known.verdicts = bench.learning.verdicts;
  known.tack = bench.rewetting.slab.mark;
  known.took_first = made_first(bench);
  known.takes_in_all = planned_in_all(bench).flow;
  for (const session::Card& card : materials_of(bench))
    if (card.kind() == session::CardKind::water) known.water = measures_of(bench, card);
  known.pass_s = bench.mulling.pass_s;
  take_binders(bench, known);
  known.mulling_left = mulling_left(bench);
  return known;
}

}
