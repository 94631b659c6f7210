// Texts of the command line to values. Nothing where the text is anything else: no part of it is
// guessed, nothing is rounded into range.
#pragma once

#include "bench/geometry.hpp"
#include "window/surface.hpp"

#include <optional>
#include <string_view>

namespace app {

inline constexpr int most_pixels = 16384; // of a side

// "1280x800": pixels, whole numbers from 1 to 16384.
std::optional<window::Extent> parse_pixels(std::string_view text);

// "217.5x136": millimetres, each from 20 to 5000.
std::optional<bench::Size> parse_mm(std::string_view text);

}
