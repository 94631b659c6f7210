// Colours as numbers that mean a look: linear RGB, XYZ, CIELAB. XYZ is relative, 1 for white.
// Light is of the 2 degree observer; a white is stated wherever one is meant.
#pragma once

#include <array>

namespace colour {

using Three = std::array<double, 3>;
using Matrix = std::array<Three, 3>; // by rows

Three times(const Matrix& m, const Three& v);
Matrix product(const Matrix& a, const Matrix& b);
Matrix through(const Matrix& slopes, const Matrix& covariance); // of what has these slopes
void add(Matrix& to, const Matrix& more);
void add_square(Matrix& to, const Three& by); // of an error that is shared
Matrix inverse(const Matrix& m);              // of one that has an inverse

// Whites as XYZ. D50 is the profile connection space's (ICC.1, 7.2.16), D65 that of sRGB: x 0.3127,
// y 0.3290 (IEC 61966-2-1).
inline constexpr Three d50{0.9642, 1, 0.8249};
inline constexpr Three d65{0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290};

// sRGB's curve (IEC 61966-2-1, 5.2): 0 to 1 either way. Beyond, it goes on as it ends.
double srgb_to_linear(double encoded);
double linear_to_srgb(double linear);

// From linear sRGB, 1 for white, to XYZ under D65 (IEC 61966-2-1, from its primaries and white).
const Matrix& srgb_to_xyz_d65();
// The same, adapted to D50.
const Matrix& srgb_to_xyz_d50();

// What looks under one white as an XYZ does under another: Bradford's linear adaptation (ICC.1,
// annex E). Both whites above 0.
Matrix adaptation(const Three& from_white, const Three& to_white);

struct Lab {
  double l = 0; // L*, 0 to 100
  double a = 0, b = 0;
  bool operator==(const Lab&) const = default;
};

// ISO/CIE 11664-4, with its straight part for what is nearly black.
Lab lab(const Three& xyz, const Three& white);
Three xyz(const Lab& lab, const Three& white);

// Of a CIELAB under D50, the one under D65, adapted.
Lab under_d65(const Lab& under_d50);

double chroma(const Lab& lab);
double hue_degrees(const Lab& lab); // 0 to 360; 0 of a neutral

}
