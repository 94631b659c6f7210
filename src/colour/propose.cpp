#include "colour/propose.hpp"

#include "colour/card.hpp"
#include "colour/cells.hpp"
#include "colour/difference.hpp"
#include "colour/fields.hpp"
#include "colour/light.hpp"

#include <algorithm>
#include <cmath>

namespace colour {

namespace {

constexpr int most_fields = 160;
constexpr double is_paint = 8, is_paper = 4; // from the paper; own estimate
constexpr double least_share = 0.01;         // of the photo

struct Map {
  int width = 0, height = 0;
  std::vector<char> is; // row by row

  bool at(int x, int y) const {
    return x >= 0 && y >= 0 && x < width && y < height &&
           is[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
              static_cast<std::size_t>(x)] != 0;
  }
};

std::vector<Cell> as_cells(const Fields& fields, const std::vector<char>& taken) {
  std::vector<Cell> cells;
  for (int y = 0; y < fields.height; ++y)
    for (int x = 0; x < fields.width; ++x) {
      const auto i = static_cast<std::size_t>(y) * static_cast<std::size_t>(fields.width) +
                     static_cast<std::size_t>(x);
      if (!taken[i]) continue;
      const Three& l = fields.light[i];
      if (l[0] <= 0 || l[1] <= 0 || l[2] <= 0) continue;
      cells.push_back({(x + 0.5) * fields.side, (y + 0.5) * fields.side,
                       static_cast<double>(fields.side) * fields.side, l});
    }
  return cells;
}

double least_of(const Three& light) { return std::min({light[0], light[1], light[2]}); }

// The brightest by its weakest colour: paper is bright in all of them, a yellow paint is not.
std::vector<char> bright(const Fields& fields) {
  std::vector<double> weakest;
  for (const Three& l : fields.light) weakest.push_back(least_of(l));
  std::vector<double> sorted = weakest;
  const auto high = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() * 9 / 10);
  std::nth_element(sorted.begin(), high, sorted.end());
  std::vector<char> taken;
  for (const double w : weakest) taken.push_back(w > 0.6 * *high);
  return taken;
}

struct Looked {
  std::vector<Lab> as;     // of each field, as it would look on the paper there
  std::vector<double> far; // from the paper
};

Looked looked_at(const Fields& fields, const Light& light, const Photo& photo) {
  Looked out;
  for (int y = 0; y < fields.height; ++y)
    for (int x = 0; x < fields.width; ++x) {
      const Three there = light_at(light, (x + 0.5) * fields.side, (y + 0.5) * fields.side);
      Three ratio = fields.at(x, y);
      for (std::size_t i = 0; i < 3; ++i) ratio[i] = there[i] > 0 ? ratio[i] / there[i] : 0;
      out.as.push_back(lab(times(photo.encoding.to_xyz_d50, ratio), d50));
      out.far.push_back(difference(out.as.back(), {100, 0, 0}));
    }
  return out;
}

// Paper by the light on what was thought to be paper, again and again.
Looked looked_over(const Fields& fields, const Photo& photo) {
  std::vector<char> paper = bright(fields);
  Looked looked;
  for (int round = 0; round < 4; ++round) {
    const auto light =
        light_on(as_cells(fields, paper), photo, photo.width / 2.0, photo.height / 2.0);
    if (!light) return {};
    looked = looked_at(fields, *light, photo);
    for (std::size_t i = 0; i < looked.far.size(); ++i) paper[i] = looked.far[i] < is_paper;
  }
  return looked;
}

struct Blob {
  std::vector<std::pair<int, int>> fields;
  bool at_edge = false;
};

Blob blob_from(Map& map, int x, int y) {
  Blob blob;
  std::vector<std::pair<int, int>> ahead{{x, y}};
  while (!ahead.empty()) {
    const auto [i, j] = ahead.back();
    ahead.pop_back();
    if (!map.at(i, j)) continue;
    map.is[static_cast<std::size_t>(j) * static_cast<std::size_t>(map.width) +
           static_cast<std::size_t>(i)] = 0;
    blob.fields.push_back({i, j});
    blob.at_edge = blob.at_edge || i == 0 || j == 0 || i == map.width - 1 || j == map.height - 1;
    for (const auto& [dx, dy] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}})
      ahead.push_back({i + dx, j + dy});
  }
  return blob;
}

// The largest first, none of fewer fields.
std::vector<Blob> blobs_of(Map map, double least) {
  std::vector<Blob> blobs;
  for (int y = 0; y < map.height; ++y)
    for (int x = 0; x < map.width; ++x) {
      if (!map.at(x, y)) continue;
      Blob blob = blob_from(map, x, y);
      if (static_cast<double>(blob.fields.size()) >= least) blobs.push_back(std::move(blob));
    }
  std::stable_sort(blobs.begin(), blobs.end(),
                   [](const Blob& a, const Blob& b) { return a.fields.size() > b.fields.size(); });
  return blobs;
}

// The largest box of fields that all are: heights of columns, row by row.
Box largest_box(const Map& map, const Box& within) {
  Box best;
  std::vector<int> heights(static_cast<std::size_t>(within.width), 0);
  for (int y = 0; y < within.height; ++y) {
    for (int x = 0; x < within.width; ++x) {
      int& height = heights[static_cast<std::size_t>(x)];
      height = map.at(within.x + x, within.y + y) ? height + 1 : 0;
    }
    for (int left = 0; left < within.width; ++left) {
      int lowest = within.height;
      for (int right = left; right < within.width; ++right) {
        lowest = std::min(lowest, heights[static_cast<std::size_t>(right)]);
        if (lowest == 0) break;
        if (lowest * (right - left + 1) > best.width * best.height)
          best = {within.x + left, within.y + y - lowest + 1, right - left + 1, lowest};
      }
    }
  }
  return best;
}

Box around(const Blob& blob) {
  int left = blob.fields[0].first, right = left, top = blob.fields[0].second, bottom = top;
  for (const auto& [x, y] : blob.fields) {
    left = std::min(left, x);
    right = std::max(right, x);
    top = std::min(top, y);
    bottom = std::max(bottom, y);
  }
  return {left, top, right - left + 1, bottom - top + 1};
}

Box less_seam(const Box& box, int seam) {
  return {box.x + seam, box.y + seam, box.width - 2 * seam, box.height - 2 * seam};
}

Box clipped(const Box& box, const Map& map) {
  const int left = std::max(0, box.x), top = std::max(0, box.y);
  return {left, top, std::min(map.width, box.x + box.width) - left,
          std::min(map.height, box.y + box.height) - top};
}

// Beside it, above and below, up to half as wide as the swatch itself.
std::vector<Box> paper_beside(const Map& paper, const Box& swatch) {
  const int w = std::max(3, swatch.width / 2), h = std::max(3, swatch.height / 2);
  std::vector<Box> found;
  for (const Box& side : {Box{swatch.x - w, swatch.y, w, swatch.height},
                          Box{swatch.x + swatch.width, swatch.y, w, swatch.height},
                          Box{swatch.x, swatch.y - h, swatch.width, h},
                          Box{swatch.x, swatch.y + swatch.height, swatch.width, h}}) {
    const Box here = clipped(side, paper);
    if (here.width < 1 || here.height < 1) continue;
    const Box box = largest_box(paper, here);
    if (box.width >= 2 && box.height >= 2) found.push_back(box);
  }
  return found;
}

Box in_pixels(const Box& fields, int side) {
  return {fields.x * side, fields.y * side, fields.width * side, fields.height * side};
}

template <class Is>
Map map_where(const Fields& fields, const Is& is) {
  Map map{fields.width, fields.height, {}};
  for (int y = 0; y < fields.height; ++y)
    for (int x = 0; x < fields.width; ++x) map.is.push_back(is(x, y));
  return map;
}

Map map_of(const Fields& fields, const std::vector<double>& far, bool of_paint) {
  Map map{fields.width, fields.height, {}};
  for (const double f : far) map.is.push_back(of_paint ? f >= is_paint : f < is_paper);
  return map;
}

// The largest box of paint within `all`, less a seam, and the paper beside it.
std::optional<Regions> regions_of(const Map& paint, const Map& paper, const Box& all, int side,
                                  const Photo& photo) {
  const Box inner = largest_box(paint, all);
  const int seam = std::max(1, std::min(inner.width, inner.height) / 10);
  const Box swatch = less_seam(inner, seam);
  if (swatch.width < 2 || swatch.height < 2) return std::nullopt;
  Regions regions{as_upright(in_pixels(swatch, side), photo), {}};
  for (const Box& box : paper_beside(paper, all)) {
    const Box inside = std::min(box.width, box.height) > 4 ? less_seam(box, 1) : box;
    regions.paper.push_back(as_upright(in_pixels(inside, side), photo));
  }
  return regions.paper.empty() ? std::nullopt : std::optional(std::move(regions));
}

// ---- on a card

// Whether the middle of a field of the photo lies in the card's field for the paint, or so many mm
// beyond; within it, below 0.
bool in_field(const CardOnPhoto& card, int x, int y, double beyond) {
  const Place& field = card_places.paint;
  const Spot at = on_card(card, {x + 0.5, y + 0.5});
  return at.x > field.x - beyond && at.x < field.x + field.w + beyond && at.y > field.y - beyond &&
         at.y < field.y + field.h + beyond;
}

// A brush goes a little over the printed line. Paint that differs less from the paper than
// elsewhere would do is looked for too; where there seems to be none, it is the middle of the
// field.
std::vector<Regions> on_card(const CardOnPhoto& card, const Fields& fields, const Looked& looked,
                             const Photo& photo) {
  constexpr double over = 3, well_within = -6; // mm
  const Map paper = map_of(fields, looked.far, false);
  const double least = 0.05 * card_places.paint.w * card_places.paint.h * card.fields_mm2;
  std::vector<Regions> out;
  for (const double from : {is_paint, is_paper}) {
    const Map paint = map_where(fields, [&](int x, int y) {
      return looked.far[static_cast<std::size_t>(y) * static_cast<std::size_t>(fields.width) +
                        static_cast<std::size_t>(x)] >= from &&
             in_field(card, x, y, over);
    });
    for (const Blob& blob : blobs_of(paint, least)) {
      const Box all = around(blob), inner = largest_box(paint, all);
      if (inner.width * inner.height < least / 2) continue; // the printed line
      if (auto regions = regions_of(paint, paper, all, fields.side, photo))
        out.push_back(*std::move(regions));
    }
    if (!out.empty()) return out;
  }
  const auto field = [&](double beyond) {
    return map_where(fields, [&](int x, int y) { return in_field(card, x, y, beyond); });
  };
  const std::vector<Blob> whole = blobs_of(field(1), 1);
  if (whole.empty()) return {};
  if (auto regions =
          regions_of(field(well_within), paper, around(whole.front()), fields.side, photo))
    out.push_back(*std::move(regions));
  return out;
}

bool is_mirrored(int orientation) {
  return orientation == 2 || orientation == 4 || orientation == 5 || orientation == 7;
}

}

std::vector<Regions> propose_regions(const Photo& photo) {
  constexpr std::size_t most = 2;
  const Fields fields = fields_of(photo, most_fields);
  if (fields.width < 12 || fields.height < 12) return {};
  const Looked looked = looked_over(fields, photo);
  if (looked.far.empty()) return {};
  std::vector<Regions> out;
  for (const CardOnPhoto& card : find_cards(fields, looked.as, is_mirrored(photo.orientation)))
    for (Regions& regions : on_card(card, fields, looked, photo))
      if (out.size() < most) out.push_back(std::move(regions));
  if (!out.empty()) return out;

  const Map paint = map_of(fields, looked.far, true), paper = map_of(fields, looked.far, false);
  for (const Blob& blob : blobs_of(paint, least_share * fields.width * fields.height)) {
    if (out.size() == most) break;
    if (blob.at_edge) continue;
    if (auto regions = regions_of(paint, paper, around(blob), fields.side, photo))
      out.push_back(*std::move(regions));
  }
  return out;
}

}
