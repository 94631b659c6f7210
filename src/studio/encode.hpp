// Pixels made into a picture's bytes.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace studio {

// A JPEG as good as a small print shows, of 4 bytes a pixel, the fourth left out. Empty where none
// can be made.
std::string jpg_of(int width, int height, const std::vector<std::uint8_t>& rgba);

}
