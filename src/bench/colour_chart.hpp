// A chart to choose the colour of a heap from: hues, then shades of one of them. Computed in OKLCH
// (Ottosson 2020), so that steps look even; what a display cannot show is made less vivid.
#pragma once

#include <cstdint>
#include <vector>

namespace bench {

inline constexpr int chart_columns = 4;

std::vector<std::uint32_t> chart_hues();          // 0xRRGGBB
std::vector<std::uint32_t> chart_shades(int hue); // its place among them

// A colour in OKLCH, from the same source.
struct Shade {
  double lightness = 0, chroma = 0, degrees = 0; // 0 to 360
};
Shade shade_of(std::uint32_t colour); // 0xRRGGBB

}
