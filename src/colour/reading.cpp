#include "colour/reading.hpp"

#include "colour/cells.hpp"
#include "colour/difference.hpp"
#include "colour/light.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace colour {

namespace {

constexpr double curve_sd = 0.03, liveliness_sd = 0.03, black_sd = 0.004; // see the header
constexpr int swatch_cells = 16, paper_cells = 48;
constexpr Three no_glints{256, 256, 256};

struct Beside {  // the paint beside the paper
  Three ratio{}; // of linear light, 1 as the paper
  Three paper{}; // the paper's light, linear, 1 for the most a photo holds
};

Three scaled(const Three& a, const Three& b) { return {a[0] * b[0], a[1] * b[1], a[2] * b[2]}; }

// The white of the light taken out of the photo's own colours.
Lab by_own_colours(const Beside& beside, const Encoding& encoding) {
  const Three white = times(encoding.to_xyz_d50, {1, 1, 1});
  return lab(times(encoding.to_xyz_d50, beside.ratio), white);
}

Lab by_bradford(const Beside& beside, const Encoding& encoding) {
  const Three paper = times(encoding.to_xyz_d50, beside.paper);
  const Three paint = times(encoding.to_xyz_d50, scaled(beside.ratio, beside.paper));
  Three adapted = times(adaptation(paper, d50), paint);
  return lab(adapted, d50);
}

Lab look(const Beside& beside, const Encoding& encoding) {
  const Lab one = by_own_colours(beside, encoding), other = by_bradford(beside, encoding);
  return {(one.l + other.l) / 2, (one.a + other.a) / 2, (one.b + other.b) / 2};
}

Three minus(const Lab& a, const Lab& b) { return {a.l - b.l, a.a - b.a, a.b - b.b}; }

// Half of an even distribution between both ways: its sd is a sqrt(12)th of the whole.
Three white_doubt(const Beside& beside, const Encoding& encoding) {
  Three by = minus(by_own_colours(beside, encoding), by_bradford(beside, encoding));
  for (double& each : by) each /= std::sqrt(12.0);
  return by;
}

std::array<Three, shared_parts> camera_doubts(const Beside& beside, const Encoding& encoding) {
  const Lab as_read = look(beside, encoding);
  const auto changed = [&](auto change) {
    Beside other = beside;
    for (double& r : other.ratio) r = change(std::max(r, 0.0));
    return minus(look(other, encoding), as_read);
  };
  const double light = times(encoding.to_xyz_d50, beside.ratio)[1];
  std::array<Three, shared_parts> out{};
  out[static_cast<std::size_t>(Shared::curve)] =
      changed([](double r) { return std::pow(r, 1 + curve_sd); });
  out[static_cast<std::size_t>(Shared::liveliness)] =
      changed([&](double r) { return r + liveliness_sd * (r - light); });
  out[static_cast<std::size_t>(Shared::black)] =
      changed([](double r) { return (r + black_sd) / (1 + black_sd); });
  out[static_cast<std::size_t>(Shared::white)] = white_doubt(beside, encoding);
  return out;
}

struct Paper {
  Light light;
  Cells cells;
  std::array<Three, 3> coarse{}; // as coarse_doubts
};

// A mean of coarsened values is off by up to half a step, evenly, where all fall on the same side.
// Of values that hardly scatter but lie on both sides, the share p on one is no measure of where
// they lie: the mean is off by (p - 1/2) steps, while the scatter is p (1 - p). Only values spread
// over several steps average it out, to one over pi times the steps (the first harmonic of the
// error; Widrow and Kollar, Quantization Noise, chapter 4).
double coarse_sd(double step, double scatter, double range) {
  if (step <= 0) return 0;
  const double squared = scatter * scatter / (step * step);
  const double evenly = 1.0 / 12, steps = std::sqrt(12 * std::max(0.0, squared - evenly));
  const double averaged = evenly / std::pow(std::max(1.0, std::numbers::pi * steps), 2);
  const bool on_two_sides = range < 1.6 * step;
  return step * std::sqrt(on_two_sides ? std::clamp(0.25 - squared, averaged, evenly) : averaged);
}

// How many cells share a block of 16 x 16 of a JPEG's colours, and with it its step.
double in_one_block(const Photo& photo, const Cells& cells) {
  if (photo.colour_step <= 0 || cells.cells.empty()) return 1;
  return std::max(1.0, 256 * static_cast<double>(cells.cells.size()) / cells.pixels);
}

double slope(const std::array<float, 256>& curve, double level) {
  const auto at = static_cast<std::size_t>(std::clamp(std::lround(level), 1L, 254L));
  return static_cast<double>(curve[at + 1] - curve[at - 1]) / 2;
}

// What the JPEG's steps may do to the mean linear light of boxes: 1 sd of light, blue and red.
std::array<Three, 3> coarse_doubts(const Photo& photo, const std::vector<Box>& boxes,
                                   const Three& levels) {
  const BlockScatter blocks = block_scatter(photo, boxes);
  Three sd{};
  for (std::size_t k = 0; k < 3; ++k)
    sd[k] = coarse_sd(k == 0 ? photo.light_step : photo.colour_step, blocks.sd[k], blocks.range[k]);
  // Of T.871, equations 4 to 6: what light, blue and red do to the three levels.
  constexpr std::array<Three, 3> to_rgb{{{1, 1, 1}, {0, -0.34414, 1.772}, {1.402, -0.71414, 0}}};
  std::array<Three, 3> out{};
  for (std::size_t k = 0; k < 3; ++k)
    for (std::size_t i = 0; i < 3; ++i)
      out[k][i] = sd[k] * to_rgb[k][i] * slope(photo.encoding.linear[i], levels[i]);
  return out;
}

Paper paper_of(const Photo& photo, const std::vector<Box>& boxes) {
  double area = 0;
  for (const Box& box : boxes) area += static_cast<double>(box.width) * box.height;
  Paper paper;
  double brimming = 0;
  for (const Box& box : boxes) {
    const double share = static_cast<double>(box.width) * box.height / area;
    const Cells cells = cells_of(
        photo, box, std::max(2, static_cast<int>(std::lround(paper_cells * share))), no_glints);
    paper.cells.cells.insert(paper.cells.cells.end(), cells.cells.begin(), cells.cells.end());
    paper.cells.pixels += cells.pixels;
    brimming += cells.brimming * cells.pixels;
    for (std::size_t i = 0; i < 3; ++i) paper.cells.levels[i] += cells.levels[i] * cells.pixels;
  }
  for (double& level : paper.cells.levels) level /= std::max(1.0, paper.cells.pixels);
  paper.cells.brimming = brimming / std::max(1.0, paper.cells.pixels);
  paper.coarse = coarse_doubts(photo, boxes, paper.cells.levels);
  return paper;
}

std::optional<Untold> fault_of_regions(const Photo& photo, const Regions& regions) {
  if (!lies_in(regions.swatch, photo)) return Untold::outside;
  if (regions.paper.empty()) return Untold::no_paper;
  double paper = 0;
  for (const Box& box : regions.paper) {
    if (!lies_in(box, photo)) return Untold::outside;
    if (overlap(box, regions.swatch)) return Untold::overlapping;
    const Box here = as_stored(box, photo);
    if (here.width < 1 || here.height < 1) return Untold::too_small;
    paper += static_cast<double>(here.width) * here.height;
  }
  const Box swatch = as_stored(regions.swatch, photo);
  const bool narrow = std::min(swatch.width, swatch.height) < 12;
  if (narrow || static_cast<double>(swatch.width) * swatch.height < 400 || paper < 400)
    return Untold::too_small;
  return std::nullopt;
}

std::optional<Untold> fault_of_paper(const Paper& paper) {
  const auto [least, most] =
      std::minmax_element(paper.cells.levels.begin(), paper.cells.levels.end());
  if (paper.cells.brimming > 0.01 || *most >= 250) return Untold::paper_clipped;
  if (paper.cells.levels[1] < 70) return Untold::paper_dark;
  if (*least < 25) return Untold::no_paper;
  return std::nullopt;
}

// Its light as it falls on the middle of the swatch.
tl::expected<Paper, Untold> paper_around(const Photo& photo, const std::vector<Box>& upright,
                                         const Box& swatch) {
  std::vector<Box> boxes;
  for (const Box& box : upright) boxes.push_back(as_stored(box, photo));
  Paper paper = paper_of(photo, boxes);
  if (const auto fault = fault_of_paper(paper)) return tl::make_unexpected(*fault);
  const auto light = light_on(paper.cells.cells, photo, swatch.x + swatch.width / 2.0,
                              swatch.y + swatch.height / 2.0);
  if (!light || light->scatter[1] > 0.08 || light->unevenness > 1)
    return tl::make_unexpected(Untold::no_paper);
  for (const int x : {swatch.x, swatch.x + swatch.width})
    for (const int y : {swatch.y, swatch.y + swatch.height})
      for (const double there : light_at(*light, x, y))
        if (!(there > 0)) return tl::make_unexpected(Untold::no_paper);
  paper.light = *light;
  for (double& scatter : paper.light.scatter)
    scatter *= std::sqrt(in_one_block(photo, paper.cells));
  return paper;
}

std::optional<Untold> fault_of_swatch(const Cells& swatch) {
  if (swatch.glints > 0.03) return Untold::gloss;
  if (swatch.brimming > 0.02) return Untold::clipped;
  const double most = *std::max_element(swatch.levels.begin(), swatch.levels.end());
  if (most < 6) return Untold::too_dark;
  return swatch.cells.size() < 4 ? std::optional(Untold::too_small) : std::nullopt;
}

// What is as bright as the paper within a swatch that is not: found only where a colour of the
// swatch lies well below the paper's.
Cells swatch_cells_of(const Photo& photo, const Box& box, const Three& paper_levels) {
  Cells all = cells_of(photo, box, swatch_cells, no_glints);
  double lowest = 1;
  for (std::size_t i = 0; i < 3; ++i)
    lowest = std::min(lowest, all.levels[i] / std::max(1.0, paper_levels[i]));
  if (lowest > 0.6) return all;
  return cells_of(photo, box, swatch_cells,
                  {0.85 * paper_levels[0], 0.85 * paper_levels[1], 0.85 * paper_levels[2]});
}

struct Mean {
  Three ratio{};
  Matrix covariance{};
};

// Each cell evened by the light where it lies; t's variance instead of the normal one's, of so many
// cells that are as one.
Mean evened(const Cells& swatch, const Light& light, double alike) {
  std::vector<Three> ratios;
  Mean mean;
  for (const Cell& cell : swatch.cells) {
    const Three there = light_at(light, cell.x, cell.y);
    ratios.push_back(
        {cell.light[0] / there[0], cell.light[1] / there[1], cell.light[2] / there[2]});
    for (std::size_t i = 0; i < 3; ++i) mean.ratio[i] += ratios.back()[i];
  }
  const double n = static_cast<double>(ratios.size());
  for (double& r : mean.ratio) r /= n;
  const double by = n * (n - 3) / alike; // at least 4 cells: fault_of_swatch
  for (const Three& r : ratios)
    for (std::size_t i = 0; i < 3; ++i)
      for (std::size_t j = 0; j < 3; ++j)
        mean.covariance[i][j] += (r[i] - mean.ratio[i]) * (r[j] - mean.ratio[j]) / by;
  return mean;
}

double graded(const Cells& swatch, const Light& light, const Encoding& encoding) {
  std::vector<double> lightness;
  for (const Cell& cell : swatch.cells) {
    const Three there = light_at(light, cell.x, cell.y);
    const double y = times(encoding.to_xyz_d50, {cell.light[0] / there[0], cell.light[1] / there[1],
                                                 cell.light[2] / there[2]})[1];
    lightness.push_back(lab({d50[0], y, d50[2]}, d50).l);
  }
  std::sort(lightness.begin(), lightness.end());
  const std::size_t quarter = std::max<std::size_t>(1, lightness.size() / 4);
  double low = 0, high = 0;
  for (std::size_t i = 0; i < quarter; ++i) {
    low += lightness[i];
    high += lightness[lightness.size() - 1 - i];
  }
  return (high - low) / static_cast<double>(quarter);
}

// Of two cells, how far apart they are by hue alone: CIELAB's difference of hue (ISO/CIE 11664-4).
// A wash from light to dark has little of that, two paints have much.
bool of_several_colours(const Cells& swatch, const Light& light, const Encoding& encoding) {
  constexpr double another_hue = 20;
  std::vector<Lab> looks;
  for (const Cell& cell : swatch.cells) {
    const Three there = light_at(light, cell.x, cell.y);
    looks.push_back(by_own_colours(
        {{cell.light[0] / there[0], cell.light[1] / there[1], cell.light[2] / there[2]}, there},
        encoding));
  }
  for (const Lab& one : looks)
    for (const Lab& other : looks)
      if (2 * (chroma(one) * chroma(other) - one.a * other.a - one.b * other.b) >
          another_hue * another_hue)
        return true;
  return false;
}

// What a step of each colour of the ratio does to L*, a* and b*.
Matrix slopes(const Beside& beside, const Encoding& encoding) {
  Matrix out{};
  for (std::size_t i = 0; i < 3; ++i) {
    const double step = std::max(1e-4, 0.01 * beside.ratio[i]);
    Beside more = beside, less = beside;
    more.ratio[i] += step;
    less.ratio[i] -= step;
    const Three by = minus(look(more, encoding), look(less, encoding));
    for (std::size_t k = 0; k < 3; ++k) out[k][i] = by[k] / (2 * step);
  }
  return out;
}

// All of the reading's own doubt about the ratio; true where a colour is at the photo's lowest.
bool widen(Mean& mean, const Photo& photo, const Box& box, const Cells& swatch,
           const Paper& paper) {
  const Light& light = paper.light;
  const Three there = light_at(light, light.x, light.y);
  const Three fit = light_variance(light, light.x, light.y);
  for (const Three& by : coarse_doubts(photo, {box}, swatch.levels))
    add_square(mean.covariance, {by[0] / there[0], by[1] / there[1], by[2] / there[2]});
  for (const Three& by : paper.coarse)
    add_square(mean.covariance, {mean.ratio[0] * by[0] / there[0], mean.ratio[1] * by[1] / there[1],
                                 mean.ratio[2] * by[2] / there[2]});
  bool beyond = false;
  for (std::size_t i = 0; i < 3; ++i) {
    mean.covariance[i][i] += mean.ratio[i] * mean.ratio[i] * fit[i];
    const bool lowest = swatch.levels[i] < 6;
    if (lowest) mean.covariance[i][i] += 0.01 * 0.01; // as far as a reflectance may lie outside
    beyond = beyond || lowest;
  }
  return beyond;
}

}

tl::expected<Reading, Untold> read_swatch(const Photo& photo, const Regions& regions) {
  if (photo.grey) return tl::make_unexpected(Untold::no_colours);
  if (const auto fault = fault_of_regions(photo, regions)) return tl::make_unexpected(*fault);
  const Box box = as_stored(regions.swatch, photo);
  const auto paper = paper_around(photo, regions.paper, box);
  if (!paper) return tl::make_unexpected(paper.error());

  const Cells swatch = swatch_cells_of(photo, box, paper->cells.levels);
  if (const auto fault = fault_of_swatch(swatch)) return tl::make_unexpected(*fault);
  if (of_several_colours(swatch, paper->light, photo.encoding))
    return tl::make_unexpected(Untold::several);
  Mean mean = evened(swatch, paper->light, in_one_block(photo, swatch));
  if (times(photo.encoding.to_xyz_d50, mean.ratio)[1] > 1.05)
    return tl::make_unexpected(Untold::no_paper);

  Reading out;
  out.beyond = widen(mean, photo, box, swatch, *paper);
  const Beside beside{mean.ratio, light_at(paper->light, paper->light.x, paper->light.y)};
  out.d50 = look(beside, photo.encoding);
  out.d65 = under_d65(out.d50);
  out.own = through(slopes(beside, photo.encoding), mean.covariance);
  out.shared = camera_doubts(beside, photo.encoding);
  out.graded = graded(swatch, paper->light, photo.encoding);
  out.glints = swatch.glints;
  if (difference(out.d50, {100, 0, 0}) < 1.5) return tl::make_unexpected(Untold::like_paper);
  return out;
}

std::array<Three, shared_parts> camera_doubts(const Lab& of) {
  const Encoding& encoding = srgb();
  return camera_doubts({times(inverse(encoding.to_xyz_d50), xyz(of, d50)), {1, 1, 1}}, encoding);
}

Three uncertainty(const Reading& reading) {
  Three out{};
  for (std::size_t i = 0; i < 3; ++i) {
    double variance = reading.own[i][i];
    for (const Three& by : reading.shared) variance += by[i] * by[i];
    out[i] = std::sqrt(variance);
  }
  return out;
}

}
