// This tablet: the hand, its keys, and what studios tell each other.
#include "bench/keys.hpp"
#include "bench/pads_tablet.hpp"
#include "bench/view_parts.hpp"

namespace bench {

namespace {

TabletView::Sharing told_view(const Bench& bench) {
  const Sharing& s = bench.sharing;
  TabletView::Sharing v{
      s.folder, s.written, s.preparing || s.asked, s.none, "", 0, 0, 0, s.failure, 0, 0, false};
  if (s.found) {
    v.found = s.found->name;
    v.found_at = s.found->at;
    v.found_pigments = s.found->told.pigments.size();
    v.found_batches = s.found->told.batches;
  }
  if (const auto& counts = bench.learning.told) {
    v.pigments = counts->pigments.size();
    v.batches = counts->batches;
    const session::Ranges& ranges = bench.learning.ranges;
    v.doubted = ranges.told == counts && !ranges.fit.told;
  }
  return v;
}

}

TabletView tablet_view(const Bench& bench) {
  TabletView v;
  v.drawn_at = bench.display.drawn_at;
  v.mm = {bench.display.mm.w * v.drawn_at, bench.display.mm.h * v.drawn_at};
  v.hand = bench.tablet.hand;
  v.language = bench.spoken;
  v.motion = bench.tablet.motion;
  v.full_screen = bench.full_screen.value_or(false);
  v.shares = has_files(bench.sharing);
  if (v.shares && bench.sharing.open) v.told = told_view(bench);
  for (const std::string_view name : bindable) {
    TabletView::Row row{{TabletPad::bind, std::string(name)}, *pad_named(name), "", false};
    for (const auto& [key, pad] : bench.tablet.keys)
      if (pad == row.does) row.key = key;
    row.waits = bench.keys.binding == row.does;
    v.rows.push_back(std::move(row));
  }
  return v;
}

}
