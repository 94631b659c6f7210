#include "bench/card_cautions.hpp"
#include "bench/card_colour.hpp"
#include "bench/card_facts.hpp"
#include "bench/colour_chart.hpp"
#include "bench/kept_lists.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/shelf_list.hpp"
#include "bench/stock.hpp"

namespace bench {

namespace {

static_assert(words::count_of<ShelfKind> <= 9, "ten tabs, and what was put away is one");

void lay_out_list(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  constexpr int columns = 5;
  const Grid tabs{columns, 2, take_top(area, 2 * row_mm + gap_mm)};
  int tab = 0;
  for (const ShelfKind kind : words::all_of<ShelfKind>) {
    add(layout, ShelfPad::kind_of, tabs.cell(tab % columns, tab / columns),
        std::string(shelf_tabs[kind].name));
    ++tab;
  }
  add(layout, ShelfPad::kept_away, tabs.cell(columns - 1, 1));
  if (has_search(bench.shelf_page.kind))
    add_search(layout, take_top(area, row_mm), bench.shelf_page.search);
  const auto list = list_of_shelf(bench);
  const std::size_t others = list->others;
  const Grid bottom{others > 0 ? 4 : 3, 1, take_bottom(area, row_mm)};
  const int last = bottom.columns - 1;
  const int rows = shelf_rows(area.h), a_page = rows * shelf_columns(bench);
  const Grid grid{shelf_columns(bench), rows, area};
  const int all = static_cast<int>(list->cards.size());
  add_list(layout, bench.shelf_page.list, grid, all);
  const int first = layout.list->first * grid.columns;
  for (int i = 0; i < a_page && first + i < all; ++i)
    add(layout, row_pad(bench), grid.cell(i % grid.columns, i / grid.columns),
        listed_from(bench)[list->cards[static_cast<std::size_t>(first + i)]].id);
  add_page_back(layout, bottom.cell(0, 0));
  if (others > 0) add(layout, ShelfPad::others, bottom.cell(1, 0));
  // A recipe begins on Plan.
  const bool recipes = bench.shelf_page.kind == ShelfKind::recipe;
  if (!bench.shelf_page.away && !recipes) add(layout, ShelfPad::new_card, bottom.cell(last - 1, 0));
  add_page_on(layout, bottom.cell(last, 0));
}

void lay_out_texts(const session::Card& card, Rect& area, Layout& layout) {
  add_field(layout, take_top(area, row_mm), {ShelfPad::says, "name"}, card.name);
  const Rect row = take_top(area, row_mm);
  if (!session::is_liquid(card.kind()))
    return add_field(layout, row, {ShelfPad::says, "lot"}, card.lot);
  const Grid texts{3, 1, row}; // too narrow to be emptied by a pad
  add(layout, ShelfPad::says, texts.cell(0, 0), "lot");
  add(layout, ShelfPad::says, texts.cell(1, 0), "made_on");
  add(layout, ShelfPad::says, texts.cell(2, 0), "keep_until");
}

void add_latest(const Bench& bench, std::size_t most, double high_mm, Rect& area, Layout& layout) {
  const auto batches = batches_of_card(bench);
  if (batches.empty()) return;
  const Grid latest{static_cast<int>(most), 1, take_bottom(area, high_mm)};
  for (std::size_t i = 0; i < batches.size(); ++i)
    add(layout, ShelfPad::batch_of, latest.cell(static_cast<int>(i), 0), batches[i]);
}

// What it says lies between its name and what can be done with it.
void lay_out_recipe(const Bench& bench, Rect area, Layout& layout) {
  const bool away = bench.shelf_page.away;
  add(layout, ShelfPad::says, take_top(area, row_mm), "name");
  const auto choices = choices_of(session::CardKind::recipe);
  const Grid choice{static_cast<int>(choices.size()), 1, take_top(area, row_mm)};
  for (std::size_t i = 0; i < choices.size(); ++i)
    add(layout, ShelfPad::choice, choice.cell(static_cast<int>(i), 0),
        std::string(row_of(choices[i]).name));
  const Grid foot{away ? 2 : 3, 1, take_bottom(area, row_mm)};
  add(layout, away ? ShelfPad::bring_back : ShelfPad::put_away, foot.cell(0, 0));
  if (!away) add(layout, ShelfPad::make, foot.cell(1, 0));
  add(layout, ShelfPad::card_done, foot.cell(foot.columns - 1, 0));
  add_latest(bench, latest_by_recipe, row_mm, area, layout);
  layout.lower = area;
}

// What can be changed, to be looked at and written on.
void lay_out_facts(const Bench& bench, Rect area, Layout& layout) {
  const session::Card& card = *bench.shelf_page.card;
  if (card.kind() == session::CardKind::recipe) return lay_out_recipe(bench, area, layout);
  lay_out_texts(card, area, layout);
  std::vector<PadId> pads;
  for (const std::string_view fact : facts_of(card.kind()))
    pads.push_back({ShelfPad::fact, std::string(fact)});
  for (const ChoiceKind choice : choices_of(card.kind()))
    pads.push_back({ShelfPad::choice, std::string(row_of(choice).name)});
  if (is_read(card)) pads.push_back({ShelfPad::chart, ""});
  const int count = static_cast<int>(pads.size());
  const Grid grid{3, (count + 2) / 3, take_top(area, (count + 2) / 3 * (row_mm + gap_mm) - gap_mm)};
  for (int i = 0; i < count; ++i)
    layout.pads.push_back({pads[static_cast<std::size_t>(i)], grid.cell(i % 3, i / 3)});
  const bool jars = has_jars(card) && !is_read(card) && !bench.shelf_page.away;
  const bool binder = jars && card.kind() == session::CardKind::binder && !bench.shelf_page.is_new;
  const Grid foot{jars ? 3 : 2, 1, take_bottom(area, row_mm)};
  if (binder) {
    const bool paper = is_there(bench.paper);
    const Grid making{paper ? 3 : 2, 1, take_bottom(area, row_mm)};
    if (paper) add(layout, ShelfPad::binder_label, making.cell(2, 0));
    add(layout, ShelfPad::make_binder, making.cell(0, 0));
    add(layout, ShelfPad::strength, making.cell(1, 0));
  }
  add(layout, bench.shelf_page.away ? ShelfPad::bring_back : ShelfPad::put_away, foot.cell(0, 0));
  if (jars && !bench.shelf_page.is_new) add(layout, ShelfPad::jars, foot.cell(1, 0));
  add(layout, ShelfPad::card_done, foot.cell(foot.columns - 1, 0));
  layout.lower = area;
}

constexpr double trail_mm = 27; // of a batch, with its name

void lay_out_reading(const Bench& bench, Rect area, Layout& layout) {
  const session::Card& card = *bench.shelf_page.card;
  std::vector<ShelfPad> does{ShelfPad::make};
  if (!is_mine(bench, card)) does.push_back(ShelfPad::tick);
  if (swatch_to_take(bench, card)) does.push_back(ShelfPad::as_swatch);
  if (colour_to_give_back(card)) does.push_back(ShelfPad::as_catalogue);
  for (const ShelfPad pad : {ShelfPad::jars, ShelfPad::change}) does.push_back(pad);
  const Grid foot{static_cast<int>(does.size()), 1, take_bottom(area, row_mm)};
  for (std::size_t i = 0; i < does.size(); ++i)
    add(layout, does[i], foot.cell(static_cast<int>(i), 0));
  add_latest(bench, latest_batches, trail_mm, area, layout);
  layout.lower = area;
}

void lay_out_jars(const Bench& bench, Rect area, Layout& layout) {
  const session::Bought& jar = bench.shelf_page.jar;
  const Grid entry{2, 3, take_top(area, 3 * (row_mm + gap_mm) - gap_mm)};
  add(layout, ShelfPad::jar_g, entry.cell(0, 0));
  add(layout, ShelfPad::jar_price, entry.cell(1, 0));
  add_field(layout, entry.cell(0, 1), {ShelfPad::jar_says, "currency"}, jar.currency);
  add_field(layout, entry.cell(1, 1), {ShelfPad::jar_says, "lot"}, jar.lot);
  add_field(layout, entry.cell(0, 2), {ShelfPad::jar_says, "on"}, jar.on);
  add(layout, ShelfPad::jar_in, entry.cell(1, 2));
  const Grid foot{3, 1, take_bottom(area, row_mm)};
  add(layout, ShelfPad::to_card, foot.cell(0, 0));
  if (last_entry(bench, bench.shelf_page.card->id))
    add(layout, ShelfPad::jar_back, foot.cell(1, 0));
  add(layout, ShelfPad::left_g, foot.cell(2, 0));
  layout.lower = area;
}

void lay_out_chart(ShelfPad pad, std::size_t count, Rect area, Layout& layout) {
  add(layout, ShelfPad::to_card, take_bottom(area, row_mm));
  const int of = static_cast<int>(count);
  const Grid grid{chart_columns, (of + chart_columns - 1) / chart_columns, area};
  for (int i = 0; i < of; ++i)
    add(layout, pad, grid.cell(i % chart_columns, i / chart_columns), std::to_string(i));
}

void lay_out_card(const Bench& bench, Rect area, Layout& layout) {
  const ShelfState& page = bench.shelf_page;
  if (page.ticking && !page.card) add(layout, ShelfPad::own_done, take_bottom(area, row_mm));
  layout.side = area;
  if (!page.card) return;
  if (page.choosing) return lay_out_cautions(bench, area, layout);
  switch (page.on) {
  case CardPage::facts: return lay_out_facts(bench, area, layout);
  case CardPage::reading: return lay_out_reading(bench, area, layout);
  case CardPage::jars: return lay_out_jars(bench, area, layout);
  case CardPage::hues: return lay_out_chart(ShelfPad::hue, chart_hues().size(), area, layout);
  case CardPage::shades:
    return lay_out_chart(ShelfPad::shade, chart_shades(page.hue).size(), area, layout);
  }
}

}

int shelf_rows(double height) { return static_cast<int>((height + gap_mm) / (row_mm + gap_mm)); }

int shelf_columns(const Bench& bench) {
  return bench.shelf_page.kind == ShelfKind::pigment ? 2 : 1;
}

void lay_out_shelf(const Bench& bench, Layout& layout) {
  const bool upright = bench.display.upright();
  const Halves parts = halves(below_top_bar(bench.display), upright, upright ? 0.5 : 0.48);
  lay_out_list(bench, parts.first, layout);
  lay_out_card(bench, parts.second, layout);
  if (bench.number) lay_out_number_over(parts.second, layout);
}

}
