// Pictures as a browser's own engine decodes them.
#pragma once

#include "colour/photo.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace studio {

// Upright and in sRGB, as an engine gives them.
struct EnginePixels {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba; // row by row from the top; not multiplied by its fourth byte
};

// A tablet has less room than a computer: more pixels than these are made fewer, by 2, 4 or 8 each
// way. Enough for a swatch.
inline constexpr double most_engine_pixels = 8e6;

// Every pixel becomes opaque; true if one was not.
bool lay_over_white(EnginePixels& pixels);

// Of a file's bytes, and what the engine made of them where `by` x `by` pixels were to be one.
// Errors: photo_not_decoded, where the bytes are not those of so many pixels.
words::Result<colour::Photo> photo_of(std::string_view file, EnginePixels pixels, int by);

}
