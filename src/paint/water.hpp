// Pure water at 20 °C and 101 kPa: 0.998207 by IAPWS-95, as the CRC Handbook prints it.
#pragma once

namespace paint {

inline constexpr double water_g_per_mL = 0.99821;
inline constexpr double water_mL_per_g = 1 / water_g_per_mL;

}
