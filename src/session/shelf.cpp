#include "session/shelf.hpp"

#include "session/resolve.hpp"

namespace session {

Shelf shelf_of(const Logs& logs, const Offsets& offsets) {
  Shelf shelf;
  for (const Resolved& line : resolve(logs, "").lines) {
    if (line.withdrawn) continue;
    const int offset_min = offset_of(offsets, line.ref).value_or(0);
    if (const auto* laid = std::get_if<LaidOut>(line.event)) {
      shelf.cards[laid->card->id] = *laid->card;
      shelf.put_away.erase(laid->card->id);
      if (laid->card->made_g > 0) shelf.stock[laid->card->id].made_offset_min = offset_min;
    }
    if (const auto* put = std::get_if<PutAway>(line.event)) shelf.put_away.insert(put->card);
    if (const auto* bought = std::get_if<Bought>(line.event))
      shelf.stock[bought->of].jars.push_back({line.ref, line.at, *bought, offset_min});
    if (const auto* weighed = std::get_if<StockWeighed>(line.event))
      shelf.stock[weighed->of].weighed =
          Stock::Weighing{line.ref, line.at, weighed->g, weighed->tare_g, offset_min};
    if (const auto* making = std::get_if<Making>(line.event))
      take_step(shelf, {line.ref, line.at, *making, offset_min});
  }
  return shelf;
}

bool keeps_amounts(const Shelf& shelf, const Batch& batch) {
  for (const auto& [id, card] : shelf.cards) {
    const auto* recipe = std::get_if<RecipeCard>(&card.facts);
    if (!recipe || !recipe->mine) continue;
    if (recipe->batch == batch.id || (batch.plan && batch.plan->of.recipe == id)) return true;
  }
  return false;
}

}
