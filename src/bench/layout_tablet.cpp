#include "bench/keys.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_tablet.hpp"

namespace bench {

namespace {

constexpr double left_mm = 92; // the card, and some air around it

// The card, what makes it larger and smaller, and above it hand, motion, full screen and perhaps
// the language.
void lay_out_card(const Bench& bench, Rect area, bool with_language, Layout& layout) {
  const bool chooses = bench.full_screen.has_value(), beside = chooses && bench.display.upright();
  const Grid ways{2 + beside + with_language, 1, take_top(area, row_mm)};
  add(layout, TabletPad::hand, ways.cell(0, 0));
  add(layout, TabletPad::motion, ways.cell(1, 0));
  if (chooses)
    add(layout, TabletPad::full_screen, beside ? ways.cell(2, 0) : take_top(area, row_mm));
  if (with_language) add(layout, TabletPad::language, ways.cell(2 + beside, 0));
  const Grid quarters{4, 1, take_bottom(area, row_mm)};
  layout.main = area;
  add(layout, TabletPad::card_smaller, quarters.cell(0, 0), "much");
  add(layout, TabletPad::card_smaller, quarters.cell(1, 0));
  add(layout, TabletPad::card_larger, quarters.cell(2, 0));
  add(layout, TabletPad::card_larger, quarters.cell(3, 0), "much");
}

// What has been told, what may be done about it, and what is asked.
void lay_out_sharing(const Bench& bench, Rect area, Layout& layout) {
  const Grid pads{2, 1, take_bottom(area, row_mm)};
  if (bench.sharing.found) {
    add(layout, TabletPad::take_told, pads.cell(0, 0));
    add(layout, TabletPad::leave_told, pads.cell(1, 0));
  } else {
    add(layout, TabletPad::tell, pads.cell(0, 0));
    add(layout, TabletPad::find_told, pads.cell(1, 0));
  }
  const bool heard = bench.learning.told || bench.learning.not_heard;
  if (heard && !bench.sharing.found) add(layout, TabletPad::forget_told, take_bottom(area, row_mm));
  layout.more = area;
}

void lay_out_keys(const Rect& area, Layout& layout) {
  const Grid grid{2, 6, area};
  for (int i = 0; i < static_cast<int>(bindable.size()); ++i)
    add(layout, TabletPad::bind, grid.cell(i / 6, i % 6), std::string(bindable[i]));
}

}

void lay_out_tablet(const Bench& bench, Layout& layout) {
  const Rect area = slab_grid(bench.display).area;
  const bool upright = bench.display.upright();
  const bool shares = has_files(bench.sharing);
  const Rect card = upright ? Rect{area.x, area.y, area.w, shares ? 94.5 : 108}
                            : Rect{area.x, area.y, left_mm, area.h};
  // Where that is wide, and one more row below would make all of them too low.
  const bool in_first_row = upright && !shares;
  lay_out_card(bench, card, in_first_row, layout);
  Rect keys = upright ? Rect{area.x, card.bottom() + gap_mm, area.w, 0}
                      : Rect{card.right() + gap_mm, area.y, 0, 0};
  keys.w = area.right() - keys.x;
  keys.h = area.bottom() - keys.y;
  if (!in_first_row) {
    const Grid below{shares ? 2 : 1, 1, take_bottom(keys, row_mm)};
    if (shares) add(layout, TabletPad::others, below.cell(0, 0));
    add(layout, TabletPad::language, below.cell(shares ? 1 : 0, 0));
  }
  layout.side = take_top(keys, row_mm);
  if (shares && bench.sharing.open)
    lay_out_sharing(bench, keys, layout);
  else
    lay_out_keys(keys, layout);
}

}
