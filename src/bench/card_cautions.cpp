#include "bench/card_cautions.hpp"

#include "bench/layout_parts.hpp"
#include "bench/pads_shelf.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr int columns = 2;

int a_page(double height_mm) {
  return columns * static_cast<int>((height_mm + gap_mm) / (row_mm + gap_mm));
}

}

std::vector<paint::Caution> asked_by(const session::Card& card) {
  return paint::cautions_of(card.id, pigment_of(card).cautions);
}

void turn_caution(session::Card& card, const std::string& word) {
  auto* pigment = std::get_if<session::PigmentCard>(&card.facts);
  const auto caution = paint::caution_named(word);
  const auto* entry = paint::in_catalogue(card.id);
  if (!pigment || !caution ||
      (entry && std::count(entry->cautions.begin(), entry->cautions.end(), *caution)))
    return;
  auto& chosen = pigment->cautions;
  std::erase(chosen, paint::name_of(paint::Caution::not_known));
  if (std::erase(chosen, word) == 0) chosen.push_back(word);
}

void lay_out_cautions(const Bench& bench, Rect area, Layout& layout) {
  const Grid below{2, 1, take_bottom(area, row_mm)};
  const auto& all = paint::cautions_to_choose();
  const int count = static_cast<int>(all.size()), here = std::max(columns, a_page(area.h));
  const int pages = (count + here - 1) / here;
  const int first = bench.shelf_page.caution_page % pages * here;
  const Grid grid{columns, here / columns, area};
  for (int i = 0; i < here && first + i < count; ++i)
    add(layout, ShelfPad::caution, grid.cell(i % columns, i / columns),
        std::string(paint::name_of(all[static_cast<std::size_t>(first + i)])));
  if (pages > 1) add(layout, ShelfPad::more_cautions, below.cell(0, 0));
  add(layout, ShelfPad::cautions_chosen, below.cell(1, 0));
}

}
