#include "colour/light.hpp"

#include <algorithm>
#include <cmath>

namespace colour {

namespace {

using Four = std::array<double, 4>;
using Square = std::array<Four, 4>;

constexpr double falloff_sd = 0.30,
                 bow_sd = 0.10;        // over half the photo's longer side; own estimate
constexpr double far_off = 4;          // scatters
constexpr double least_scatter = 2e-4; // relative: the file's levels

Four terms(const Light& light, double x, double y) {
  const double across = (x - light.x) / light.unit, down = (y - light.y) / light.unit;
  return {1, across, down, across * across + down * down};
}

double dot(const Four& a, const Four& b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
}

// Gauss-Jordan; what it is given is a sum of squares and a prior, and so has an inverse.
Square inverse_of(Square m) {
  Square out{};
  for (std::size_t i = 0; i < 4; ++i) out[i][i] = 1;
  for (std::size_t i = 0; i < 4; ++i) {
    const double pivot = m[i][i];
    for (std::size_t k = 0; k < 4; ++k) {
      m[i][k] /= pivot;
      out[i][k] /= pivot;
    }
    for (std::size_t j = 0; j < 4; ++j) {
      if (j == i) continue;
      const double by = m[j][i];
      for (std::size_t k = 0; k < 4; ++k) {
        m[j][k] -= by * m[i][k];
        out[j][k] -= by * out[i][k];
      }
    }
  }
  return out;
}

double middle_of(std::vector<double> values) {
  const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), half, values.end());
  return *half;
}

// One fit with the scatter as it is thought to be, relative to the light.
void fit(Light& light, const std::vector<Cell>& cells, std::size_t colour, double mean,
         double scatter, double weight_of_one) {
  Square m{};
  Four right{};
  for (const Cell& cell : cells) {
    const Four t = terms(light, cell.x, cell.y);
    const double weight = cell.pixels / weight_of_one;
    for (std::size_t i = 0; i < 4; ++i) {
      for (std::size_t j = 0; j < 4; ++j) m[i][j] += weight * t[i] * t[j];
      right[i] += weight * t[i] * cell.light[colour] / mean;
    }
  }
  const double variance = scatter * scatter;
  m[1][1] += variance / (falloff_sd * falloff_sd);
  m[2][2] += variance / (falloff_sd * falloff_sd);
  m[3][3] += variance / (bow_sd * bow_sd);
  const Square& spread = light.spread[colour] = inverse_of(m);
  for (std::size_t i = 0; i < 4; ++i) light.fit[colour][i] = mean * dot(spread[i], right);
}

std::vector<double> residuals(const Light& light, const std::vector<Cell>& cells,
                              std::size_t colour) {
  std::vector<double> off;
  for (const Cell& cell : cells)
    off.push_back(cell.light[colour] / dot(light.fit[colour], terms(light, cell.x, cell.y)) - 1);
  return off;
}

double root_mean_square(const std::vector<double>& values, double parameters) {
  double sum = 0;
  for (const double v : values) sum += v * v;
  const double count = static_cast<double>(values.size());
  return std::sqrt(sum / std::max(1.0, count - parameters));
}

// By the green, which is most of the light. At least as many as a fit needs stay.
std::vector<Cell> without_far_off(const Light& light, const std::vector<Cell>& cells) {
  std::vector<double> off = residuals(light, cells, 1);
  std::vector<double> sizes;
  for (const double o : off) sizes.push_back(std::abs(o));
  const double scatter = std::max(1.4826 * middle_of(sizes), least_scatter);
  std::vector<Cell> near;
  for (std::size_t i = 0; i < cells.size(); ++i)
    if (sizes[i] <= far_off * scatter) near.push_back(cells[i]);
  return near.size() < 6 ? cells : near;
}

void fit_all(Light& light, const std::vector<Cell>& cells) {
  double pixels = 0;
  Three mean{};
  for (const Cell& cell : cells) {
    pixels += cell.pixels;
    for (std::size_t i = 0; i < 3; ++i) mean[i] += cell.pixels * cell.light[i];
  }
  const double each = pixels / static_cast<double>(cells.size());
  for (std::size_t i = 0; i < 3; ++i) {
    mean[i] /= pixels;
    double scatter = 0.01;
    for (int round = 0; round < 3; ++round) { // the prior's weight hangs on the scatter
      fit(light, cells, i, mean[i], scatter, each);
      scatter = std::max(root_mean_square(residuals(light, cells, i), 4), least_scatter);
    }
    light.scatter[i] = scatter;
  }
}

}

std::optional<Light> light_on(const std::vector<Cell>& paper, const Photo& photo, double at_x,
                              double at_y) {
  if (paper.size() < 6) return std::nullopt;
  for (const Cell& cell : paper)
    for (const double l : cell.light)
      if (!(l > 0)) return std::nullopt;
  Light light;
  light.x = at_x;
  light.y = at_y;
  light.unit = std::max(photo.width, photo.height) / 2.0;
  fit_all(light, paper);
  const std::vector<Cell> near = without_far_off(light, paper);
  if (near.size() < paper.size()) fit_all(light, near);
  double least = light.fit[1][0], most = least;
  for (const Cell& cell : near) {
    const Three here = light_at(light, cell.x, cell.y);
    least = std::min(least, here[1]);
    most = std::max(most, here[1]);
  }
  for (const auto& of : light.fit)
    if (!(of[0] > 0)) return std::nullopt;
  light.unevenness = (most - least) / light.fit[1][0];
  return light;
}

Three light_at(const Light& light, double x, double y) {
  const Four t = terms(light, x, y);
  return {dot(light.fit[0], t), dot(light.fit[1], t), dot(light.fit[2], t)};
}

Three light_variance(const Light& light, double x, double y) {
  const Four t = terms(light, x, y);
  Three out{};
  for (std::size_t colour = 0; colour < 3; ++colour) {
    Four by{};
    for (std::size_t i = 0; i < 4; ++i) by[i] = dot(light.spread[colour][i], t);
    const double scatter = light.scatter[colour];
    out[colour] = std::max(0.0, dot(by, t)) * scatter * scatter;
  }
  return out;
}

}
