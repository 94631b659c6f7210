// Colours as eyes see them, for tests.
#pragma once

#include "screens/shapes.hpp"

#include <array>
#include <string>
#include <vector>

namespace eyes {

using screens::Colour;
using Three = std::array<double, 3>;

// sRGB to linear light (IEC 61966-2-1).
Three linear(Colour c);

// WCAG 2.2, “relative luminance” and “contrast ratio”: 1 to 21.
double luminance(Colour c);
double contrast(Colour a, Colour b);

// What somebody sees who lacks one kind of cone: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes,
// “A Physiologically-based Model for Simulation of Color Vision Deficiency”, IEEE Transactions on
// Visualization and Computer Graphics 15 (2009) 1291: its matrices of severity 1.0, on linear RGB.
enum class Lacks { nothing, long_cones, middle_cones, short_cones };
inline constexpr std::array all_eyes{Lacks::nothing, Lacks::long_cones, Lacks::middle_cones,
                                     Lacks::short_cones};
Colour seen(Colour c, Lacks lacks);

// CIELAB under D65 (ISO/CIE 11664-4), and the difference of two colours in it, CIEDE2000 (ISO/CIE
// 11664-6) with its three weights 1.
Three lab(Colour c);
double delta_e00(const Three& lab1, const Three& lab2);

// The largest difference in one channel, 0 to 255.
int apart(Colour a, Colour b);

}
