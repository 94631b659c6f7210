#include "bench/layout_parts.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/screens.hpp"
#include "words/say.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr double upright_beside_mm = 64; // the other pads of Slab, and all gaps
constexpr double first_tab_mm = 3;       // by which its longer word makes it wider

}

void lay_out_top_bar(const Bench& bench, Layout& layout) {
  const bool upright = bench.display.upright();
  const Size mm = bench.display.mm;
  const double h = top_bar_mm - 2 * gap_mm;
  const double tab = upright ? std::min(14.0, (mm.w - upright_beside_mm) / 6) : 15.5;
  const double small = upright ? 12 : 13;
  layout.top_bar = {0, 0, mm.w, top_bar_mm};
  double x = margin_mm;
  for (const Screen screen : words::all_of<Screen>) {
    if (screens[screen].tab == words::Sentence{}) continue;
    const double wide = screen == Screen::today && upright ? tab + first_tab_mm : tab;
    add(layout, screens[screen].pad, {x, gap_mm, wide, h});
    x += wide + gap_mm;
  }
  double right = mm.w - margin_mm;
  const auto take_right = [&](double w) {
    right -= w;
    const Rect box{right, gap_mm, w, h};
    right -= gap_mm;
    return box;
  };
  if (!upright) layout.clock = take_right(17);
  add(layout, TopBarPad::night, take_right(small));
  add(layout, TopBarPad::sound, take_right(small));
  if (bench.screen != Screen::slab) add(layout, TopBarPad::tablet, take_right(small));
  if (bench.screen == Screen::slab && !bench.batch.empty() && !bench.locked)
    add(layout, TopBarPad::wipe, take_right(upright ? 20.5 : 22));
  layout.title = {x, gap_mm, right - x, h};
  if (!upright) return;
  // A name stands over what it names, and the time between the pads, with their gaps for its air.
  layout.clock = {x - gap_mm, gap_mm, right - x + 2 * gap_mm, h};
  layout.title = {};
}

Layout layout(const Bench& bench) {
  Layout out;
  lay_out_top_bar(bench, out);
  if (bench.locked) out.pads.clear();
  switch (bench.screen) {
  case Screen::today: lay_out_today(bench, out); break;
  case Screen::shelf: lay_out_shelf(bench, out); break;
  case Screen::plan: lay_out_plan(bench, out); break;
  case Screen::slab: lay_out_slab(bench, out); break;
  case Screen::pans: lay_out_pans(bench, out); break;
  case Screen::book: lay_out_book(bench, out); break;
  case Screen::tablet: lay_out_tablet(bench, out); break;
  case Screen::binder: lay_out_binder(bench, out); break;
  case Screen::photos: lay_out_photos(bench, out); break;
  }
  return out;
}

}
