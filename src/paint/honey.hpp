// What a refractometer says of honey.
#pragma once

#include "words/error.hpp"

namespace paint {

// Mass share of water in honey from its refractive index read at `celsius`: Wedmore's formula
// (1955) on Chataway's table, W % = (-0.2681 - log10(n - 1)) / 0.002243 at 20 °C, after 0.00023 is
// added for each degree above. 13 to 25 % within 0.03 %; index (at 20 °C) 1.474 to 1.505, 5 to 45
// °C. Errors: not_a_number, honey_index_out_of_range, temperature_out_of_range.
words::Result<double> honey_moisture(double refractive_index, double celsius = 20);

}
