#include "bench/card_cautions.hpp"
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"

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
  const bool wide = bench.shelf_page.kind == ShelfKind::pigment;
  if (wide) add(layout, SharedPad::search, take_top(area, row_mm));
  const Grid bottom{3, 1, take_bottom(area, row_mm)};
  const auto cards = cards_listed(bench);
  const int rows = shelf_rows(area.h), a_page = rows * (wide ? 2 : 1);
  const Grid grid{wide ? 2 : 1, rows, area};
  const int first = bench.shelf_page.page * a_page;
  for (int i = 0; i < a_page && first + i < static_cast<int>(cards.size()); ++i)
    add(layout, ShelfPad::card, grid.cell(i % grid.columns, i / grid.columns),
        cards[first + i]->id);
  if (bench.shelf_page.page > 0) add(layout, SharedPad::page_back, bottom.cell(0, 0));
  // A recipe begins on Plan.
  const bool recipes = bench.shelf_page.kind == ShelfKind::recipe;
  if (!bench.shelf_page.away && !recipes) add(layout, ShelfPad::new_card, bottom.cell(1, 0));
  if (first + a_page < static_cast<int>(cards.size()))
    add(layout, SharedPad::page_on, bottom.cell(2, 0));
}

void lay_out_card(const Bench& bench, Rect area, Layout& layout) {
  layout.side = area;
  if (!bench.shelf_page.card) return;
  if (bench.shelf_page.choosing) return lay_out_cautions(bench, area, layout);
  const session::Card& card = *bench.shelf_page.card;
  add(layout, ShelfPad::says, take_top(area, row_mm), "name");
  const bool made = session::is_liquid(card.kind());
  const Grid texts{made ? 3 : 1, 1, take_top(area, row_mm)};
  add(layout, ShelfPad::says, texts.cell(0, 0), "lot");
  if (made) add(layout, ShelfPad::says, texts.cell(1, 0), "made_on");
  if (made) add(layout, ShelfPad::says, texts.cell(2, 0), "keep_until");
  const auto facts = facts_of(card.kind());
  const auto choices = choices_of(card.kind());
  const int count = static_cast<int>(facts.size() + choices.size());
  const Grid grid{3, (count + 2) / 3, take_top(area, (count + 2) / 3 * (row_mm + gap_mm) - gap_mm)};
  int i = 0;
  for (const std::string_view fact : facts) {
    add(layout, ShelfPad::fact, grid.cell(i % 3, i / 3), std::string(fact));
    ++i;
  }
  for (const ChoiceKind choice : choices) {
    add(layout, ShelfPad::choice, grid.cell(i % 3, i / 3), std::string(row_of(choice).name));
    ++i;
  }
  const Grid half{2, 1, take_bottom(area, row_mm)};
  if (!bench.shelf_page.is_new)
    add(layout, bench.shelf_page.away ? ShelfPad::bring_back : ShelfPad::put_away, half.cell(0, 0));
  add(layout, ShelfPad::card_done, half.cell(1, 0));
  layout.lower = area;
}

}

int shelf_rows(double height) { return static_cast<int>((height + gap_mm) / (row_mm + gap_mm)); }

void lay_out_shelf(const Bench& bench, Layout& layout) {
  const bool upright = bench.display.upright();
  const Halves parts = halves(below_top_bar(bench.display), upright, upright ? 0.5 : 0.48);
  lay_out_list(bench, parts.first, layout);
  lay_out_card(bench, parts.second, layout);
  if (bench.number) lay_out_number_over(upright ? parts.second : parts.second, layout);
}

}
