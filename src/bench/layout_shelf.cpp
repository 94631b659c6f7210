#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"

namespace bench {

namespace {

constexpr std::array kinds{"pigment", "binder", "liquid", "dropper", "spoon", "pan", "glass"};

void lay_out_list(const Bench& bench, Rect area, Layout& layout) {
  layout.main = area;
  const Grid tabs{4, 2, take_top(area, 2 * row_mm + gap_mm)};
  for (int i = 0; i < static_cast<int>(kinds.size()); ++i)
    add(layout, PadKind::kind_of, tabs.cell(i % 4, i / 4), kinds[i]);
  add(layout, PadKind::kept_away, tabs.cell(3, 1));
  const bool wide = bench.shelf_page.kind == ShelfKind::pigment;
  if (wide) add(layout, PadKind::search, take_top(area, row_mm));
  const Grid bottom{3, 1, take_bottom(area, row_mm)};
  const auto cards = cards_listed(bench);
  const int rows = shelf_rows(area.h), a_page = rows * (wide ? 2 : 1);
  const Grid grid{wide ? 2 : 1, rows, area};
  const int first = bench.shelf_page.page * a_page;
  for (int i = 0; i < a_page && first + i < static_cast<int>(cards.size()); ++i)
    add(layout, PadKind::card, grid.cell(i % grid.columns, i / grid.columns), cards[first + i]->id);
  if (bench.shelf_page.page > 0) add(layout, PadKind::page_back, bottom.cell(0, 0));
  if (!bench.shelf_page.away) add(layout, PadKind::new_card, bottom.cell(1, 0));
  if (first + a_page < static_cast<int>(cards.size()))
    add(layout, PadKind::page_on, bottom.cell(2, 0));
}

void lay_out_card(const Bench& bench, Rect area, Layout& layout) {
  layout.side = area;
  if (!bench.shelf_page.card) return;
  const session::Card& card = *bench.shelf_page.card;
  add(layout, PadKind::says, take_top(area, row_mm), "name");
  const bool made = session::is_liquid(card.is_a);
  const Grid texts{made ? 3 : 1, 1, take_top(area, row_mm)};
  add(layout, PadKind::says, texts.cell(0, 0), "lot");
  if (made) add(layout, PadKind::says, texts.cell(1, 0), "made_on");
  if (made) add(layout, PadKind::says, texts.cell(2, 0), "keep_until");
  const auto facts = facts_of(card.is_a);
  const auto choices = choices_of(card.is_a);
  const int count = static_cast<int>(facts.size() + choices.size());
  const Grid grid{3, (count + 2) / 3, take_top(area, (count + 2) / 3 * (row_mm + gap_mm) - gap_mm)};
  int i = 0;
  for (const std::string_view fact : facts) {
    add(layout, PadKind::fact, grid.cell(i % 3, i / 3), std::string(fact));
    ++i;
  }
  for (const std::string_view choice : choices) {
    add(layout, PadKind::choice, grid.cell(i % 3, i / 3), std::string(choice));
    ++i;
  }
  const Grid half{2, 1, take_bottom(area, row_mm)};
  if (!bench.shelf_page.is_new)
    add(layout, bench.shelf_page.away ? PadKind::bring_back : PadKind::put_away, half.cell(0, 0));
  add(layout, PadKind::card_done, half.cell(1, 0));
  layout.lower = area;
}

}

int shelf_rows(double height) { return static_cast<int>((height + gap_mm) / (row_mm + gap_mm)); }

void lay_out_shelf(const Bench& bench, Layout& layout) {
  const bool upright = bench.display.upright();
  const Halves parts = halves(below_strip(bench.display), upright, upright ? 0.5 : 0.48);
  lay_out_list(bench, parts.first, layout);
  lay_out_card(bench, parts.second, layout);
  if (bench.number) lay_out_number_over(upright ? parts.second : parts.second, layout);
}

}
