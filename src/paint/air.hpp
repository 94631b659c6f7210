// The room's air: how much water it holds and could hold.
#pragma once

#include "words/error.hpp"

namespace paint {

struct Room {
  double celsius = 21;   // 5 to 45
  double humidity = 0.5; // relative, 0 to 1
};

// Errors: not_a_number, temperature_out_of_range, humidity_out_of_range.
words::Result<Room> room(double celsius, double humidity_percent);

// Saturation vapour pressure over water in kPa, 0 to 100 °C.
// Hyland & Wexler 1983, constants as in the ASHRAE Handbook of Fundamentals. Air raises it by 0.4 %
// (the enhancement factor); that is left out, as it is common to the wet paint and the room.
// Errors: not_a_number, temperature_out_of_range.
words::Result<double> saturation_kPa(double celsius);

}
