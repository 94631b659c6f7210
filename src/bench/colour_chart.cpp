#include "bench/colour_chart.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace bench {

namespace {

constexpr double pi = 3.14159265358979323846;

struct Hue {
  double degrees, chroma, lightness; // as the chart of hues shows it
};

// Round the circle, then the earths and grey.
constexpr std::array<Hue, 16> hues{{{5, 0.2, 0.55},
                                    {30, 0.2, 0.6},
                                    {55, 0.18, 0.7},
                                    {80, 0.17, 0.78},
                                    {105, 0.18, 0.86},
                                    {130, 0.18, 0.7},
                                    {155, 0.14, 0.55},
                                    {185, 0.11, 0.6},
                                    {230, 0.13, 0.6},
                                    {260, 0.17, 0.5},
                                    {290, 0.18, 0.42},
                                    {330, 0.18, 0.5},
                                    {75, 0.09, 0.62},
                                    {45, 0.09, 0.45},
                                    {140, 0.05, 0.5},
                                    {0, 0, 0.5}}};

// The light first, the vivid before the dull.
constexpr std::array<double, 8> lights{0.96, 0.85, 0.74, 0.63, 0.52, 0.42, 0.32, 0.2};
constexpr std::array<double, 2> vividness{1, 0.5};

double gamma(double linear) {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

std::array<double, 3> linear_rgb(double lightness, double chroma, double degrees) {
  const double a = chroma * std::cos(degrees * pi / 180), b = chroma * std::sin(degrees * pi / 180);
  const double l = std::pow(lightness + 0.3963377774 * a + 0.2158037573 * b, 3);
  const double m = std::pow(lightness - 0.1055613458 * a - 0.0638541728 * b, 3);
  const double s = std::pow(lightness - 0.0894841775 * a - 1.2914855480 * b, 3);
  return {4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
          -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
          -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s};
}

double ungamma(double encoded) {
  return encoded <= 0.04045 ? encoded / 12.92 : std::pow((encoded + 0.055) / 1.055, 2.4);
}

bool can_be_shown(const std::array<double, 3>& rgb) {
  return std::all_of(rgb.begin(), rgb.end(), [](double c) { return c >= -1e-6 && c <= 1 + 1e-6; });
}

std::uint32_t colour_of(double lightness, double chroma, double degrees) {
  constexpr double step = 0.005;
  std::array<double, 3> rgb = linear_rgb(lightness, chroma, degrees);
  while (chroma > 0 && !can_be_shown(rgb)) {
    chroma = std::max(0.0, chroma - step);
    rgb = linear_rgb(lightness, chroma, degrees);
  }
  std::uint32_t out = 0;
  for (const double c : rgb)
    out = out << 8 | static_cast<std::uint32_t>(std::lround(255 * gamma(std::clamp(c, 0.0, 1.0))));
  return out;
}

}

std::vector<std::uint32_t> chart_hues() {
  std::vector<std::uint32_t> out;
  for (const Hue& hue : hues) out.push_back(colour_of(hue.lightness, hue.chroma, hue.degrees));
  return out;
}

std::vector<std::uint32_t> chart_shades(int hue) {
  const Hue& of = hues[static_cast<std::size_t>(std::clamp(hue, 0, 15))];
  std::vector<std::uint32_t> out;
  for (const double lightness : lights)
    for (const double vivid : vividness)
      out.push_back(colour_of(lightness, of.chroma * vivid, of.degrees));
  return out;
}

Shade shade_of(std::uint32_t colour) {
  const auto part = [&](int shift) { return ungamma((colour >> shift & 0xff) / 255.0); };
  const double r = part(16), g = part(8), b = part(0);
  const double l = std::cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const double m = std::cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const double s = std::cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  const double lightness = 0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s;
  const double to_red = 1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s;
  const double to_yellow = 0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s;
  const double degrees = std::atan2(to_yellow, to_red) * 180 / pi;
  return {lightness, std::hypot(to_red, to_yellow), degrees < 0 ? degrees + 360 : degrees};
}

}
