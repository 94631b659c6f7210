// A swatch's reading in the numbers that are kept.
#pragma once

#include "colour/reading.hpp"
#include "session/photo_event.hpp"

#include <cstdint>

namespace commands {

// 0xRRGGBB of sRGB.
std::uint32_t on_screen(const colour::Lab& d65);

// As it is kept with its photo, to two decimals.
session::Measured measured_of(const colour::Reading& reading);

}
