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

// The first of them on the shelf, where that of the batch has some.
std::optional<Known::Binder> without_honey(const Bench& bench) {
  for (const session::Card& own : materials_of(bench)) {
    if (own.kind() != session::CardKind::binder) continue;
    if (!is_sweetened(own)) return std::nullopt;
    for (const session::Card* card : shelf_of(bench, session::CardKind::binder))
      if (!is_sweetened(*card)) return Known::Binder{card->name, measures_of(bench, *card)};
    return std::nullopt;
  }
  return std::nullopt;
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
  known.without_honey = without_honey(bench);
  // A guess of how long would be no more than that: it is said once batches have taught it.
  if (const auto left = mulling_left(bench); left && left->batches > 0) known.mulling_left = left;
  return known;
}

}
