// A picture or thumbnails, and beside them (upright: below) words and pads for wet thumbs.
#include "bench/layout_parts.hpp"
#include "bench/pads_photos.hpp"
#include "bench/pads_shared.hpp"
#include "bench/record.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace bench {

namespace {

constexpr double wet_w = 26, wet_h = 22; // the least of a pad for a wet thumb
constexpr double beside_mm = 62, wide_beside_mm = 81, words_mm = 34,
                 words_of_one_mm = 44; // below a photo that is shown large

using Block = std::vector<std::optional<PadId>>; // row by row, with gaps

// Taken off the area: the place beside it.
Rect take_beside(const Bench& bench, int rows, double wide, double words, Rect& area) {
  if (bench.display.upright()) return take_bottom(area, rows * (wet_h + gap_mm) + words);
  area.w -= wide + gap_mm;
  return {area.right() + gap_mm, area.y, wide, area.h};
}

// A block of pads, the last row lowest, and over it what is said.
void lay_out_beside(const Block& pads, int columns, Rect side, Layout& layout) {
  const int count = static_cast<int>(pads.size()), rows = (count + columns - 1) / columns;
  const Grid grid{columns, rows, take_bottom(side, rows * wet_h + (rows - 1) * gap_mm)};
  for (int i = 0; i < count; ++i)
    if (const auto& pad = pads[static_cast<std::size_t>(i)])
      add(layout, pad->kind, grid.cell(i % columns, i / columns), pad->arg);
  layout.more = side;
}

Block pads_of_asked(const Bench& bench) {
  const PadId leave{SharedPad::leave, ""};
  if (bench.photos.waits || !bench.photos.facts) return {leave};
  return {PadId{PhotosPad::of, "swatch"}, PadId{PhotosPad::of, "dot"}, PadId{PhotosPad::of, "pan"},
          PadId{PhotosPad::of, "slab"}, leave};
}

// Nothing that is tapped again and again has "take it away" beneath it.
Block pads_of_open(const Bench& bench) {
  const PhotosState& state = bench.photos;
  const auto photo = open_photo(bench);
  const PadId leave{SharedPad::leave, ""}, away{PhotosPad::take_away, ""};
  if (!photo || state.waits) return {leave};
  if (photo->of == session::PhotoOf::dot)
    return {PadId{PhotosPad::specks, "many"},
            PadId{PhotosPad::specks, "few"},
            PadId{PhotosPad::specks, "none"},
            leave,
            photo->specks ? std::optional(PadId{PhotosPad::unsay, ""}) : std::nullopt,
            away};
  if (photo->of != session::PhotoOf::swatch || state.regions.empty()) return {leave, away};
  const PadId paint{PhotosPad::region, "paint"}, paper{PhotosPad::region, "paper"},
      smaller{PhotosPad::smaller, ""}, larger{PhotosPad::larger, ""}, read{PhotosPad::read, ""};
  const auto gap = std::nullopt;
  if (bench.display.upright()) return {paint, paper, read, leave, smaller, larger, gap, away};
  return {paint, paper, read, smaller, larger, gap, leave, gap, away}; // in threes
}

void lay_out_picture(const Bench& bench, const Block& pads, Rect area, Layout& layout) {
  const bool many = pads.size() > 5;
  const bool by_threes = pads.size() == 6;
  const int columns = by_threes ? 3 : bench.display.upright() ? 4 : many ? 3 : 2;
  const Rect side = take_beside(bench, many ? 2 : 1 + static_cast<int>(pads.size()) / 5,
                                many ? wide_beside_mm : beside_mm, words_of_one_mm, area);
  lay_out_beside(pads, columns, side, layout);
  layout.main = area;
}

template <class Id>
void lay_out_thumbs(const Bench& bench, std::size_t count, const Rect& area, const Id& id,
                    Layout& layout) {
  layout.main = area;
  const Grid grid = photos_grid(bench.display, area);
  const int all = static_cast<int>(count), rows = (all + grid.columns - 1) / grid.columns;
  const int first = first_row(bench.photos.list, grid.rows, rows) * grid.columns;
  for (int i = first; i < std::min(all, first + grid.columns * grid.rows); ++i) {
    const PadId pad = id(static_cast<std::size_t>(i));
    add(layout, pad.kind, grid.cell((i - first) % grid.columns, (i - first) / grid.columns),
        pad.arg);
  }
  add_list(layout, bench.photos.list, grid, all);
}

// Their places are there where the list has more than shows, and each where there is a page.
void lay_out_ways(const Bench& bench, Block pads, const Rect& side, Layout& layout) {
  const ListArea list = *layout.list;
  if (list.rows > list.shown) {
    pads.push_back(PadId{SharedPad::page_back, ""});
    pads.push_back(PadId{SharedPad::page_on, ""});
  }
  lay_out_beside(pads, bench.display.upright() ? 4 : 2, side, layout);
  std::erase_if(layout.pads, [&](const Pad& pad) {
    return (pad.id.kind == SharedPad::page_back && list.first == 0) ||
           (pad.id.kind == SharedPad::page_on && list.first + list.shown >= list.rows);
  });
}

void lay_out_folder(const Bench& bench, Rect area, Layout& layout) {
  const PhotosState& state = bench.photos;
  add_field(layout, take_top(area, row_mm), {PhotosPad::folder_text, ""}, state.folder);
  const Rect side = take_beside(bench, 1, beside_mm, words_mm, area);
  const auto pad = [&](std::size_t i) { return PadId{PhotosPad::choose, state.pictures[i].name}; };
  lay_out_thumbs(bench, state.pictures.size(), area, pad, layout);
  Block ways{PadId{SharedPad::leave, ""}};
  if (!state.waits) ways.push_back(PadId{PhotosPad::look, ""});
  lay_out_ways(bench, ways, side, layout);
}

void lay_out_kept(const Bench& bench, Rect area, Layout& layout) {
  const Folded batch = kept_fold(bench, bench.photos.batch);
  const auto photos = batch ? photos_of(*batch) : std::vector<session::Photo>();
  const bool undo = batch && photo_taken_away(bench, *batch);
  const int rows = undo ? 2 : 1; // upright, where it may stand beside those of a list's pages
  const Rect side = take_beside(bench, rows, beside_mm, words_mm, area);
  const auto pad = [&](std::size_t i) { return PadId{PhotosPad::photo, key_of(photos[i])}; };
  lay_out_thumbs(bench, photos.size(), area, pad, layout);
  Block ways{PadId{SharedPad::leave, ""}, PadId{PhotosPad::add, ""}};
  if (undo) ways.push_back(PadId{SharedPad::undo, ""});
  lay_out_ways(bench, ways, side, layout);
}

}

Grid photos_grid(const Display& display, const Rect& area) {
  const double side = display.upright() ? 30 : 34;
  const auto fit = [](double room, double least) {
    return std::max(1, static_cast<int>((room + gap_mm) / (least + gap_mm)));
  };
  return {fit(area.w, std::max(side, wet_w)), fit(area.h, std::max(side, wet_h)), area};
}

void lay_out_photos(const Bench& bench, Layout& layout) {
  const Rect area = below_top_bar(bench.display);
  switch (bench.photos.page) {
  case PhotosPage::kept: return lay_out_kept(bench, area, layout);
  case PhotosPage::folder: return lay_out_folder(bench, area, layout);
  case PhotosPage::asked: return lay_out_picture(bench, pads_of_asked(bench), area, layout);
  case PhotosPage::open: return lay_out_picture(bench, pads_of_open(bench), area, layout);
  }
}

}
