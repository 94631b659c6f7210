#include "colour/match.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace colour {

namespace {

constexpr double nearly_neutral = 6; // chroma

double& part(Lab& lab, std::size_t i) { return i == 0 ? lab.l : i == 1 ? lab.a : lab.b; }

Three as_ways(const Apart& by) { return {by.lightness, by.chroma, by.hue}; }

// How they are apart is said as three numbers: as ways, or as what the difference is made of.
using Said = Three (*)(const Apart&);

// What a step of each of L*, a* and b* of one of both does to that.
Matrix slopes(const Lab& one, const Lab& other, bool of_other, Said said) {
  constexpr double step = 1e-3;
  Matrix out{};
  for (std::size_t i = 0; i < 3; ++i) {
    Lab more_one = one, more_other = other, less_one = one, less_other = other;
    part(of_other ? more_other : more_one, i) += step;
    part(of_other ? less_other : less_one, i) -= step;
    const Three more = said(apart(more_one, more_other));
    const Three less = said(apart(less_one, less_other));
    for (std::size_t k = 0; k < 3; ++k) out[k][i] = (more[k] - less[k]) / (2 * step);
  }
  return out;
}

Matrix covariance_of(const Reading& one, const Reading& other, Taken taken, Said said) {
  const Matrix from_one = slopes(one.d50, other.d50, false, said);
  const Matrix from_other = slopes(one.d50, other.d50, true, said);
  Matrix out = through(from_one, one.own);
  add(out, through(from_other, other.own));
  for (std::size_t k = 0; k < shared_parts; ++k) {
    Three first = times(from_one, one.shared[k]);
    const Three second = times(from_other, other.shared[k]);
    if (taken == Taken::one_photo) {
      for (std::size_t i = 0; i < 3; ++i) first[i] += second[i];
      add_square(out, first);
    } else {
      add_square(out, first);
      add_square(out, second);
    }
  }
  return out;
}

struct Scatter {         // of the three ways together
  double sum = 0;        // of the variances
  double of_squares = 0; // sum of the squares of the covariances
  double along = 0;      // variance along the difference that was read
};

Scatter scatter_of(const Matrix& covariance, const Three& by, double size) {
  Scatter s;
  for (std::size_t i = 0; i < 3; ++i) {
    s.sum += covariance[i][i];
    for (std::size_t j = 0; j < 3; ++j) {
      s.of_squares += covariance[i][j] * covariance[i][j];
      if (size > 0) s.along += by[i] * covariance[i][j] * by[j] / (size * size);
    }
  }
  if (size == 0) s.along = s.sum / 3;
  return s;
}

// How many sd above the middle a reading is, were the truth so far apart: Wilson and Hilferty's
// cube root of the chi-square.
double above_middle(double read, double truth, const Scatter& s) {
  const double mean = truth * truth + s.sum;
  const double variance = 2 * s.of_squares + 4 * truth * truth * s.along;
  const double part = variance / (9 * mean * mean); // 2 / (9 degrees of freedom)
  return (std::cbrt(read * read / mean) - (1 - part)) / std::sqrt(part);
}

// The truth at which the reading lies so many sd above: it falls as the truth grows.
double truth_at(double read, double sds, const Scatter& s) {
  double low = 0, high = read + 4 * std::sqrt(s.sum) + 1e-9;
  if (above_middle(read, 0, s) <= sds) return 0;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (above_middle(read, middle, s) > sds ? low : high) = middle;
  }
  return (low + high) / 2;
}

// The unique hues, and once more around.
constexpr std::array<double, 5> unique_hues{24, 90, 162, 246, 384};
constexpr std::array<Turned, 4> towards{Turned::redder, Turned::yellower, Turned::greener,
                                        Turned::bluer};

bool hardly_any(const Lab& one, const Lab& other) {
  return chroma(one) < nearly_neutral || chroma(other) < nearly_neutral;
}

Turned turned_of(const Lab& one, const Lab& other, bool onwards) {
  if (hardly_any(one, other)) return other.b > one.b ? Turned::warmer : Turned::cooler;
  const double raw = hue_degrees(one), hue = raw < unique_hues[0] ? raw + 360 : raw;
  std::size_t before = 0;
  while (before + 2 < unique_hues.size() && unique_hues[before + 1] <= hue) ++before;
  const double share =
      (hue - unique_hues[before]) / (unique_hues[before + 1] - unique_hues[before]);
  constexpr double is_one_already = 0.35;
  if (onwards) return towards[(before + (share > 1 - is_one_already ? 2 : 1)) % 4];
  return towards[(before + (share < is_one_already ? 3 : 0)) % 4];
}

Turned other_way(const Lab& one, const Lab& other, Turned went, bool onwards) {
  if (!hardly_any(one, other)) return turned_of(one, other, onwards);
  return went == Turned::warmer ? Turned::cooler : Turned::warmer;
}

}

Seen seen(double difference) {
  return difference < 1     ? Seen::not_seen
         : difference < 2   ? Seen::practised_eye
         : difference < 3.5 ? Seen::any_eye
         : difference < 5   ? Seen::clearly
                            : Seen::another_colour;
}

bool tells(const Way& way) {
  return std::abs(way.by) >= 0.5 && std::abs(way.by) > nine_in_ten * way.sd;
}

double surprise(const Reading& one, const Reading& other) {
  const Three by = as_squares(apart(one.d50, other.d50));
  Matrix covariance = covariance_of(one, other, Taken::two_photos, as_squares);
  constexpr double least = 0.02; // numbers are kept to a hundredth
  for (std::size_t i = 0; i < 3; ++i) covariance[i][i] += least * least;
  const Three weighted = times(inverse(covariance), by);
  return by[0] * weighted[0] + by[1] * weighted[1] + by[2] * weighted[2];
}

Match match(const Reading& one, const Reading& other, Taken taken, double doubt) {
  const double more = taken == Taken::two_photos ? doubt : 1;
  const Apart by = apart(one.d50, other.d50);
  Matrix covariance = covariance_of(one, other, taken, as_squares);
  for (Three& row : covariance)
    for (double& each : row) each *= more * more;
  Match out;
  out.difference = difference(one.d50, other.d50);
  const Scatter s = scatter_of(covariance, as_squares(by), out.difference);
  out.low = out.high = out.difference;
  if (s.sum > 0) {
    const double least_read = std::sqrt(s.sum) / 2;
    out.low = std::min(out.difference, truth_at(out.difference, nine_in_ten, s));
    out.high =
        std::max(out.difference, truth_at(std::max(out.difference, least_read), -nine_in_ten, s));
  }
  const Matrix of_ways = covariance_of(one, other, taken, as_ways);
  out.lightness = {by.lightness, more * std::sqrt(of_ways[0][0])};
  out.chroma = {by.chroma, more * std::sqrt(of_ways[1][1])};
  out.hue = {by.hue, more * std::sqrt(of_ways[2][2])};
  const bool on = by.hue > 0;
  out.turned = turned_of(one.d50, other.d50, on);
  out.turned_on = on ? out.turned : other_way(one.d50, other.d50, out.turned, true);
  out.turned_back = on ? other_way(one.d50, other.d50, out.turned, false) : out.turned;
  return out;
}

}
