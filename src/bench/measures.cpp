#include "bench/measures.hpp"

#include "bench/materials.hpp"

namespace bench {

Measures measures_of(const Bench& bench, const session::Card& liquid) {
  const auto dropper = card_of(bench, tool_for(bench, liquid, session::Unit::drops));
  const auto spoon = card_of(bench, tool_for(bench, liquid, session::Unit::spoons));
  return session::measures_of(liquid, dropper ? &*dropper : nullptr, spoon ? &*spoon : nullptr);
}

Measures measures_of_binder(const Bench& bench) {
  for (const session::Card& card : materials_of(bench))
    if (card.kind() == session::CardKind::binder) return measures_of(bench, card);
  return {any_drop_mL, 0, 1};
}

}
