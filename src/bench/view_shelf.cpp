#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/planning.hpp"
#include "bench/shelf.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>

namespace bench {

namespace {

// A card of the catalogue as it ships.
const paint::CataloguePigment* catalogued(const session::Card& card) {
  for (const paint::CataloguePigment& entry : paint::catalogue())
    if (entry.id == card.id) return &entry;
  return nullptr;
}

bool ships_so(const session::Card& card) {
  const auto all = shelf_that_ships();
  return std::find(all.begin(), all.end(), card) != all.end();
}

void add_card(const Bench& bench, const session::Card& card, ShelfView& v) {
  v.card = card;
  v.ships = ships_so(card);
  if (bench.shelf_page.changed) v.fault = fault_of_figures(card);
  v.left_g = left_of(bench, card);
  for (const std::string_view which : facts_of(card.is_a)) {
    const Fact fact = fact_of(card, which);
    v.facts.push_back({{PadKind::fact, std::string(which)}, fact.value, fact.decimals, fact.u});
  }
  if (const auto* entry = catalogued(card); entry && v.ships) {
    v.sources = entry->sources;
    v.confidence = entry->confidence;
  }
}

}

ShelfView shelf_view(const Bench& bench) {
  const ShelfState& page = bench.shelf_page;
  ShelfView v;
  v.kind = page.kind;
  v.away = page.away;
  v.put_away = bench.away.size();
  v.search = page.search;
  v.page = page.page;
  v.number = number_view(bench);
  v.notice = bench.notice;
  const auto cards = cards_listed(bench);
  const Layout here = layout(bench);
  for (const session::Card* card : cards)
    if (pad_of(here, {PadKind::card, card->id}))
      v.rows.push_back({{PadKind::card, card->id},
                        card->is_a,
                        card->name,
                        card->index_name.empty() ? card->lot : card->index_name,
                        card->colour,
                        std::nullopt,
                        page.card && page.card->id == card->id});
  if (page.card) add_card(bench, *page.card, v);
  return v;
}

}
