#include "colour/cells.hpp"

#include <algorithm>
#include <cmath>

namespace colour {

namespace {

constexpr int narrowest = 6; // pixels

const std::uint8_t* pixel(const Photo& photo, int x, int y) {
  return &photo.rgb[3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width) +
                         static_cast<std::size_t>(x))];
}

struct Counts {
  double brimming = 0, empty = 0, glints = 0, counted = 0;
  std::array<double, 3> levels{};
};

// Of one row of a cell: one look at each pixel does everything.
void take_row(const Photo& photo, int y, int from, int to, const std::array<int, 3>& glint_from,
              Cell& cell, Counts& counts) {
  const auto& linear = photo.encoding.linear;
  std::array<float, 3> light{};
  std::array<int, 3> levels{};
  int brimming = 0, empty = 0, glints = 0;
  const std::uint8_t* at = pixel(photo, from, y);
  for (int x = from; x < to; ++x, at += 3) {
    const int r = at[0], g = at[1], b = at[2];
    if (r > glint_from[0] && g > glint_from[1] && b > glint_from[2]) {
      ++glints;
      continue;
    }
    brimming += std::max({r, g, b}) >= 254;
    empty += std::min({r, g, b}) <= 1;
    levels = {levels[0] + r, levels[1] + g, levels[2] + b};
    light = {light[0] + linear[0][at[0]], light[1] + linear[1][at[1]], light[2] + linear[2][at[2]]};
  }
  for (std::size_t i = 0; i < 3; ++i) {
    cell.light[i] += static_cast<double>(light[i]);
    counts.levels[i] += levels[i];
  }
  cell.pixels += to - from - glints;
  counts.brimming += brimming;
  counts.empty += empty;
  counts.glints += glints;
  counts.counted += to - from;
}

int parts_of(int length, double side) {
  const int by_side = static_cast<int>(std::lround(length / side));
  return std::clamp(by_side, 1, std::max(1, length / narrowest));
}

}

Cells cells_of(const Photo& photo, const Box& box, int wanted, const Three& glint_from) {
  Cells out;
  if (box.width < 1 || box.height < 1) return out;
  const double side =
      std::sqrt(static_cast<double>(box.width) * static_cast<double>(box.height) / wanted);
  const int across = parts_of(box.width, side), down = parts_of(box.height, side);
  std::array<int, 3> glints{};
  for (std::size_t i = 0; i < 3; ++i) glints[i] = static_cast<int>(std::lround(glint_from[i]));
  Counts counts;
  for (int j = 0; j < down; ++j)
    for (int i = 0; i < across; ++i) {
      const int left = box.x + box.width * i / across, right = box.x + box.width * (i + 1) / across;
      const int top = box.y + box.height * j / down, bottom = box.y + box.height * (j + 1) / down;
      Cell cell{(left + right - 1) / 2.0, (top + bottom - 1) / 2.0, 0, {}};
      for (int y = top; y < bottom; ++y) take_row(photo, y, left, right, glints, cell, counts);
      if (cell.pixels == 0) continue;
      for (double& light : cell.light) light /= cell.pixels;
      out.pixels += cell.pixels;
      out.cells.push_back(cell);
    }
  for (std::size_t i = 0; i < 3; ++i) out.levels[i] = counts.levels[i] / std::max(1.0, out.pixels);
  out.brimming = counts.brimming / std::max(1.0, counts.counted);
  out.empty = counts.empty / std::max(1.0, counts.counted);
  out.glints = counts.glints / std::max(1.0, counts.counted);
  return out;
}

namespace {

struct Spread {
  double n = 0, sum = 0, squares = 0;
  void add(double x) {
    n += 1;
    sum += x;
    squares += x * x;
  }
  double sd() const {
    if (n < 2) return 0;
    return std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1)));
  }
};

// Light, blue and red of T.871, equations 1 to 3, without the offset.
Three light_and_colours(const Three& rgb) {
  return {0.299 * rgb[0] + 0.587 * rgb[1] + 0.114 * rgb[2],
          -0.1687 * rgb[0] - 0.3313 * rgb[1] + 0.5 * rgb[2],
          0.5 * rgb[0] - 0.4187 * rgb[1] - 0.0813 * rgb[2]};
}

Three block_mean(const Photo& photo, int left, int top, int side) {
  Three sum{};
  for (int y = top; y < top + side; ++y) {
    const std::uint8_t* at = pixel(photo, left, y);
    for (int x = 0; x < side; ++x, at += 3) sum = {sum[0] + at[0], sum[1] + at[1], sum[2] + at[2]};
  }
  for (double& s : sum) s /= side * side;
  return light_and_colours(sum);
}

void add_blocks(const Photo& photo, const Box& box, int side, std::array<Spread, 3>& spread) {
  // Some 24 along the shorter side say enough.
  const int step = side * std::max(1, std::min(box.width, box.height) / (side * 24));
  for (int top = (box.y + side - 1) / side * side; top + side <= box.y + box.height; top += step)
    for (int left = (box.x + side - 1) / side * side; left + side <= box.x + box.width;
         left += step) {
      const Three mean = block_mean(photo, left, top, side);
      if (side == 8) spread[0].add(mean[0]);
      if (side == 16) spread[1].add(mean[1]);
      if (side == 16) spread[2].add(mean[2]);
    }
}

}

Three block_scatter(const Photo& photo, const std::vector<Box>& boxes) {
  std::array<Spread, 3> spread;
  for (const Box& box : boxes)
    for (const int side : {8, 16}) add_blocks(photo, box, side, spread);
  return {spread[0].sd(), spread[1].sd(), spread[2].sd()};
}

}
