#include "colour/cielab.hpp"

#include <cmath>
#include <numbers>

namespace colour {

namespace {

constexpr Matrix bradford{
    {{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}};

// x and y of the primaries (IEC 61966-2-1, table 1).
constexpr std::array<std::array<double, 2>, 3> srgb_primaries{
    {{0.64, 0.33}, {0.30, 0.60}, {0.15, 0.06}}};

constexpr double kappa = 24389.0 / 27, epsilon = 216.0 / 24389;

// Each primary so strong that all three at 1 are the white.
Matrix srgb_matrix() {
  Matrix m{};
  for (std::size_t i = 0; i < 3; ++i) {
    const auto [x, y] = srgb_primaries[i];
    m[0][i] = x / y;
    m[1][i] = 1;
    m[2][i] = (1 - x - y) / y;
  }
  const Three strength = times(inverse(m), d65);
  for (Three& row : m)
    for (std::size_t i = 0; i < 3; ++i) row[i] *= strength[i];
  return m;
}

double lab_curve(double t) { return t > epsilon ? std::cbrt(t) : (kappa * t + 16) / 116; }

double lab_curve_back(double f) {
  const double cubed = f * f * f;
  return cubed > epsilon ? cubed : (116 * f - 16) / kappa;
}

}

Three times(const Matrix& m, const Three& v) {
  Three out{};
  for (std::size_t i = 0; i < 3; ++i) out[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
  return out;
}

Matrix product(const Matrix& a, const Matrix& b) {
  Matrix out{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j)
      out[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j] + a[i][2] * b[2][j];
  return out;
}

Matrix through(const Matrix& slopes, const Matrix& covariance) {
  Matrix turned{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) turned[i][j] = slopes[j][i];
  return product(product(slopes, covariance), turned);
}

void add(Matrix& to, const Matrix& more) {
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) to[i][j] += more[i][j];
}

void add_square(Matrix& to, const Three& by) {
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) to[i][j] += by[i] * by[j];
}

Matrix inverse(const Matrix& m) {
  const auto minor = [&](std::size_t i, std::size_t j) {
    const std::size_t r = (i + 1) % 3, s = (i + 2) % 3, c = (j + 1) % 3, d = (j + 2) % 3;
    return m[r][c] * m[s][d] - m[r][d] * m[s][c];
  };
  const double determinant = m[0][0] * minor(0, 0) + m[0][1] * minor(0, 1) + m[0][2] * minor(0, 2);
  Matrix out{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) out[i][j] = minor(j, i) / determinant;
  return out;
}

double srgb_to_linear(double encoded) {
  return encoded <= 0.04045 ? encoded / 12.92 : std::pow((encoded + 0.055) / 1.055, 2.4);
}

double linear_to_srgb(double linear) {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
}

const Matrix& srgb_to_xyz_d65() {
  static const Matrix m = srgb_matrix();
  return m;
}

const Matrix& srgb_to_xyz_d50() {
  static const Matrix m = product(adaptation(d65, d50), srgb_to_xyz_d65());
  return m;
}

Matrix adaptation(const Three& from_white, const Three& to_white) {
  const Three from = times(bradford, from_white), to = times(bradford, to_white);
  Matrix scaled = bradford;
  for (std::size_t i = 0; i < 3; ++i)
    for (double& cell : scaled[i]) cell *= to[i] / from[i];
  return product(inverse(bradford), scaled);
}

Lab lab(const Three& xyz, const Three& white) {
  const double x = lab_curve(xyz[0] / white[0]), y = lab_curve(xyz[1] / white[1]),
               z = lab_curve(xyz[2] / white[2]);
  return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

Three xyz(const Lab& lab, const Three& white) {
  const double y = (lab.l + 16) / 116;
  return {white[0] * lab_curve_back(y + lab.a / 500), white[1] * lab_curve_back(y),
          white[2] * lab_curve_back(y - lab.b / 200)};
}

Lab under_d65(const Lab& under_d50) {
  static const Matrix to_d65 = adaptation(d50, d65);
  return lab(times(to_d65, xyz(under_d50, d50)), d65);
}

double chroma(const Lab& lab) { return std::hypot(lab.a, lab.b); }

double hue_degrees(const Lab& lab) {
  if (lab.a == 0 && lab.b == 0) return 0;
  const double degrees = std::atan2(lab.b, lab.a) * 180 / std::numbers::pi;
  return degrees < 0 ? degrees + 360 : degrees;
}

}
