#include "bench/binder_range.hpp"
#include "bench/card_cautions.hpp"
#include "bench/card_colour.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/colour_chart.hpp"
#include "bench/kept_lists.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/shelf.hpp"
#include "bench/shelf_list.hpp"
#include "bench/stock.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

StockView stock_view(const Bench& bench, const session::Card& card, const Now& now) {
  const session::Prices known = prices(bench);
  return {stock_of(bench, card), low_mark(bench, card.id), days_left(bench, card, now.wall_ms),
          session::a_gram_of(card, known), known.currency};
}

// Of batches of this pigment alone: of a blend nobody knows which of them wanted how much. As flows
// of the binder that is meant; `drying` as paint::Prediction has it.
std::vector<double> right_of(const Bench& bench, const std::string& card, double g_per_flow,
                             double drying) {
  const double meant = dry_gum_meant(bench);
  std::vector<double> out;
  for (const auto& [id, batch] : bench.learning.training) {
    if (batch.pigments.size() != 1 || batch.pigments.count(card) == 0) continue;
    std::optional<double> flow;
    for (const session::Feeling& note : batch.notes)
      if (note.as == session::Feel::right && !note.set_aside)
        flow = note.flow * std::exp(drying * (meant - note.dry_gum));
    if (flow) out.push_back(*flow * g_per_flow);
  }
  return out;
}

ReadingView::Batch batch_view(const Bench& bench, const std::string& id) {
  ReadingView::Batch v;
  v.pad = {ShelfPad::batch_of, id};
  const Folded batch = kept_fold(bench, id);
  if (!batch) return v;
  v.name = batch->name;
  v.trail = trail_at_slab(*batch);
  v.trail.band = kept_band(bench, id);
  v.progress = batch->progress;
  if (!batch->verdicts.empty()) v.became = batch->verdicts.back().verdict.as;
  return v;
}

ReadingView reading_view(const Bench& bench, const ShelfView& shelf) {
  ReadingView v;
  const session::Card& card = *shelf.card;
  const auto question =
      session::range_question(bench.learning.ranges, {{&card, 1}}, dry_gum_meant(bench));
  const auto expected = session::expectation(bench.learning.ranges, question);
  if (expected) v.band = expected->band;
  if (expected && shelf.range)
    v.right = right_of(bench, card.id, shelf.range->g_per_flow, expected->prediction.drying);
  v.mulling = mulling_of_card(bench);
  for (const std::string& id : batches_of_card(bench)) v.batches.push_back(batch_view(bench, id));
  return v;
}

ColourView colour_view(const Bench& bench, const session::Card& card) {
  const auto take = swatch_to_take(bench, card);
  return {name_of_batch(bench, swatch_shown(bench, card)),
          take ? name_of_batch(bench, take->batch) : "", colour_to_give_back(card).has_value()};
}

JarsView jars_view(const Bench& bench, const std::string& card) {
  JarsView v;
  v.jar = bench.shelf_page.jar;
  const auto stock = bench.stock.find(card);
  if (stock == bench.stock.end()) return v;
  v.jars.assign(stock->second.jars.rbegin(), stock->second.jars.rend());
  v.weighed = stock->second.weighed;
  return v;
}

void add_facts(const session::Card& card, ShelfView& v) {
  for (const std::string_view which : facts_of(card.kind())) {
    const Fact fact = fact_of(card, which);
    v.facts.push_back({{ShelfPad::fact, std::string(which)},
                       fact.value,
                       fact.decimals,
                       fact.u,
                       fact.say,
                       fact.zero});
  }
}

void add_page(const Bench& bench, ShelfView& v) {
  switch (v.on) {
  case CardPage::facts: return add_facts(*v.card, v);
  case CardPage::reading: v.reading = reading_view(bench, v); return;
  case CardPage::jars: v.jars = jars_view(bench, v.card->id); return;
  case CardPage::hues: v.chart = chart_hues(); return;
  case CardPage::shades: v.chart = chart_shades(bench.shelf_page.hue); return;
  }
}

void add_card(const Bench& bench, const session::Card& card, const Now& now, ShelfView& v) {
  v.card = card;
  v.on = bench.shelf_page.on;
  v.is_new = bench.shelf_page.is_new;
  v.ships = ships_so(in_its_own_colour(card));
  if (bench.shelf_page.changed) v.fault = fault_of_figures(card);
  v.stock = stock_view(bench, card, now);
  if (card.kind() == session::CardKind::pigment) {
    v.range = range_of_card(bench, card);
    v.soft = soft_wanted(bench, card);
    v.colour = colour_view(bench, card);
  }
  if (card.kind() == session::CardKind::binder) v.paper = bench.paper;
  if (card.kind() == session::CardKind::recipe) {
    v.recipe = recipe_view(bench, card);
    for (const std::string& id : batches_of_card(bench))
      v.recipe->made.push_back(batch_view(bench, id));
  }
  v.choosing = bench.shelf_page.choosing;
  if (shelf_kind(card.kind()) == ShelfKind::pigment) v.asks = asked_by(card);
  if (const auto* entry = paint::in_catalogue(card.id); entry && v.ships) {
    v.density_from = entry->density_from;
    v.oil_from = entry->oil_from;
    v.oil_beside = entry->oil_beside;
    v.from_catalogue = true;
  }
  add_page(bench, v);
}

ShelfView::Row row_view(const Bench& bench, const session::Card& card) {
  const session::PigmentCard& pigment = session::pigment_of(card);
  const auto& open = bench.shelf_page.card;
  ShelfView::Row row{{row_pad(bench), card.id},
                     card.kind(),
                     card.name,
                     pigment.index_name.empty() ? card.lot : pigment.index_name,
                     pigment.colour,
                     stock_of(bench, card),
                     low_mark(bench, card.id),
                     open && open->id == card.id,
                     is_mine(bench, card)};
  const auto* recipe = std::get_if<session::RecipeCard>(&card.facts);
  if (!recipe) return row;
  for (const session::Said& said : recipe->pigments) {
    const session::Card* of = card_anywhere(bench, said.of);
    row.pigments.push_back({of ? of->name : said.of, of ? pigment_of(*of).colour : 0});
  }
  if (const auto made = bench.index.made_by.find(card.id); made != bench.index.made_by.end())
    row.made = made->second.size();
  return row;
}

}

ShelfView shelf_view(const Bench& bench, const Now& now) {
  const ShelfState& page = bench.shelf_page;
  ShelfView v;
  v.kind = page.kind;
  v.away = page.away;
  v.put_away = bench.away.size();
  v.ticking = bench.shelf_page.ticking;
  if (v.ticking)
    for (const session::Card& card : bench.shelf)
      v.ticked += card.kind() == session::CardKind::pigment && is_mine(bench, card);
  v.others = page.others;
  const auto list = list_of_shelf(bench);
  v.not_listed = list->others;
  v.search = page.search;
  v.number = number_view(bench);
  v.notice = bench.notice;
  const Layout here = layout(bench);
  const int columns = shelf_columns(bench), shown = here.list->shown, rows = here.list->rows;
  v.page = page_of(page.list, shown, rows);
  const auto first = static_cast<std::size_t>(here.list->first * columns);
  const auto most = static_cast<std::size_t>(shown * columns);
  for (std::size_t i = first; i < std::min(list->cards.size(), first + most); ++i)
    v.rows.push_back(row_view(bench, listed_from(bench)[list->cards[i]]));
  if (page.card) add_card(bench, *page.card, now, v);
  return v;
}

}
