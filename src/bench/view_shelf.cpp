#include "bench/card_cautions.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/pads_shelf.hpp"
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
  if (card.kind() == session::CardKind::pigment) {
    v.range = range_of_card(bench, card);
    v.soft = soft_wanted(bench, card);
  }
  v.choosing = bench.shelf_page.choosing;
  if (shelf_kind(card.kind()) == ShelfKind::pigment) v.asks = asked_by(card);
  for (const std::string_view which : facts_of(card.kind())) {
    const Fact fact = fact_of(card, which);
    v.facts.push_back({{ShelfPad::fact, std::string(which)},
                       fact.value,
                       fact.decimals,
                       fact.u,
                       fact.say,
                       fact.zero});
  }
  if (const auto* entry = catalogued(card); entry && v.ships) {
    v.density_from = entry->density_from;
    v.oil_from = entry->oil_from;
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
  for (const session::Card* card : cards) {
    const session::PigmentCard& pigment = session::pigment_of(*card);
    if (pad_of(here, {ShelfPad::card, card->id}))
      v.rows.push_back({{ShelfPad::card, card->id},
                        card->kind(),
                        card->name,
                        pigment.index_name.empty() ? card->lot : pigment.index_name,
                        pigment.colour,
                        std::nullopt,
                        page.card && page.card->id == card->id});
  }
  if (page.card) add_card(bench, *page.card, v);
  return v;
}

}
