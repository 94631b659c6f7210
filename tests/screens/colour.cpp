#include "screens/colour.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace eyes {

namespace {

using Matrix = std::array<Three, 3>;

Three times(const Matrix& m, const Three& v) {
  Three out{};
  for (std::size_t i = 0; i < 3; ++i) out[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
  return out;
}

std::uint8_t coded(double light) {
  const double l = std::clamp(light, 0.0, 1.0);
  const double c = l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1 / 2.4) - 0.055;
  return static_cast<std::uint8_t>(std::lround(c * 255));
}

// Rows R, G, B of the paper's matrices, by what is lacking.
constexpr std::array<Matrix, 3> machado{{
    {{{0.152286, 1.052583, -0.204868},
      {0.114503, 0.786281, 0.099216},
      {-0.003882, -0.048116, 1.051998}}},
    {{{0.367322, 0.860646, -0.227968},
      {0.280085, 0.672501, 0.047413},
      {-0.011820, 0.042940, 0.968881}}},
    {{{1.255528, -0.076749, -0.178779},
      {-0.078411, 0.930809, 0.147602},
      {0.004733, 0.691367, 0.303900}}},
}};

// IEC 61966-2-1: linear RGB to XYZ.
constexpr Matrix to_xyz{
    {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};

double degrees(double a) { return a * 180 / std::numbers::pi; }
double radians(double a) { return a * std::numbers::pi / 180; }

double hue(double a, double b) {
  if (a == 0 && b == 0) return 0;
  const double h = degrees(std::atan2(b, a));
  return h < 0 ? h + 360 : h;
}

double seventh(double c) {
  const double c7 = std::pow(c, 7);
  return std::sqrt(c7 / (c7 + std::pow(25.0, 7)));
}

double mean_hue(double h1, double h2, bool grey) {
  if (grey) return h1 + h2;
  if (std::abs(h1 - h2) <= 180) return (h1 + h2) / 2;
  return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
}

double hue_step(double h1, double h2, bool grey) {
  if (grey) return 0;
  const double step = h2 - h1;
  return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
}

}

Three linear(Colour c) {
  const auto light = [](std::uint8_t channel) {
    const double v = channel / 255.0;
    return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  };
  return {light(c.r), light(c.g), light(c.b)};
}

double luminance(Colour c) {
  const Three l = linear(c);
  return 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2];
}

double contrast(Colour a, Colour b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

Colour seen(Colour c, Lacks lacks) {
  if (lacks == Lacks::nothing) return c;
  const Three l = times(machado[static_cast<std::size_t>(lacks) - 1], linear(c));
  return {coded(l[0]), coded(l[1]), coded(l[2]), c.a};
}

Three lab(Colour c) {
  Three xyz = times(to_xyz, linear(c));
  const Three white{0.9505, 1, 1.089};
  for (std::size_t i = 0; i < 3; ++i) {
    const double t = xyz[i] / white[i];
    xyz[i] = t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }
  return {116 * xyz[1] - 16, 500 * (xyz[0] - xyz[1]), 200 * (xyz[1] - xyz[2])};
}

// In the order and with the names of G. Sharma, W. Wu, E. N. Dalal, Color Research and Application
// 30 (2005) 21, equations 2 to 22.
double delta_e00(const Three& lab1, const Three& lab2) {
  const double c_mean = (std::hypot(lab1[1], lab1[2]) + std::hypot(lab2[1], lab2[2])) / 2;
  const double g = 0.5 * (1 - seventh(c_mean));
  const double a1 = (1 + g) * lab1[1], a2 = (1 + g) * lab2[1];
  const double c1 = std::hypot(a1, lab1[2]), c2 = std::hypot(a2, lab2[2]);
  const double h1 = hue(a1, lab1[2]), h2 = hue(a2, lab2[2]);
  const bool grey = c1 * c2 == 0;
  const double dl = lab2[0] - lab1[0], dc = c2 - c1;
  const double dh = 2 * std::sqrt(c1 * c2) * std::sin(radians(hue_step(h1, h2, grey) / 2));
  const double l = (lab1[0] + lab2[0]) / 2, c = (c1 + c2) / 2, h = mean_hue(h1, h2, grey);
  const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) +
                   0.32 * std::cos(radians(3 * h + 6)) - 0.20 * std::cos(radians(4 * h - 63));
  const double turn = 30 * std::exp(-std::pow((h - 275) / 25, 2));
  const double off = (l - 50) * (l - 50);
  const double sl = 1 + 0.015 * off / std::sqrt(20 + off);
  const double sc = 1 + 0.045 * c, sh = 1 + 0.015 * c * t;
  const double rt = -std::sin(radians(2 * turn)) * 2 * seventh(c);
  return std::sqrt(std::pow(dl / sl, 2) + std::pow(dc / sc, 2) + std::pow(dh / sh, 2) +
                   rt * (dc / sc) * (dh / sh));
}

int apart(Colour a, Colour b) {
  return std::max({std::abs(a.r - b.r), std::abs(a.g - b.g), std::abs(a.b - b.b)});
}

}
