// The room's air, and the water that leaves the slab for it.
#pragma once

#include "paint/material.hpp"

namespace paint {

struct Room {
  double celsius = 21;   // 5 to 45
  double humidity = 0.5; // relative, 0 to 1
};

// Errors: not_a_number, temperature_out_of_range, humidity_out_of_range.
words::Result<Room> room(double celsius, double humidity_percent);

// Saturation vapour pressure over water in kPa, 0 to 100 °C.
// Hyland & Wexler 1983, constants as in the ASHRAE Handbook of Fundamentals.
// Error: temperature_out_of_range. Below, a room is one that room() would make, masses, volume and
// seconds are not negative: anything else gives not-a-number.
words::Result<double> saturation_kPa(double celsius);

// How far the paint is spread. Covered: a jar, nothing leaves.
enum class Spread { covered, gathered, knife, mulling };

struct Interval {
  double low = 0;
  double middle = 0;
  double high = 0;
};

// m2 open to the air (common practice, no source), before the film's own limit. The middle is the
// geometric mean.
Interval spread_area_m2(Spread spread);

// kg/(m2 h) from wet paint of water activity 1, proportional to saturation minus what the air
// holds, both at the air's temperature: that the paint cools by some degrees is in the coefficient,
// chosen so that 22 °C and 45 % give 0.14 (0.08 to 0.26). That interval is our own choice between
// the published formulas for large water surfaces, 0.13 to 0.26 there, and a film that cools by
// about 5 °C.
Interval evaporation_rate(const Room& room);

// Relative standard uncertainty of the water lost, rate and area together: 0.4, both intervals
// taken as uniform in the logarithm.
double evaporation_relative_u();

// What may dry: g of dry gum, glycerin and honey solids, and the g of water among them; with the
// whole volume of the paint in mL, which bounds how far it can be spread (film at least 0.2 mm).
struct Wet {
  double gum_g = 0;
  double glycerin_g = 0;
  double honey_g = 0;
  double water_g = 0;
  double volume_mL = 0;
};

// g of water that gum, glycerin and honey hold at a relative humidity of 0 to 0.98 (their uptakes
// added at one water activity: Zdanovskii, Stokes & Robinson); 0 to 70 °C. Glycerin below 0.30 and
// honey outside 0.50 to 0.60 are extrapolated. What the pigment itself holds is left out: under 1 %
// of oxides, a few of clays, iron blue and carbon.
double held_water_g(const Wet& wet, double humidity, double celsius);

// Relative humidity at which the paint would neither gain nor lose: 0 to 0.98, and 1 for more water
// than is held at 0.98.
double water_activity(const Wet& wet, double celsius);

// g of water left after `seconds` of the middle rate and area; never below what the room lets the
// paint keep (in rooms above 0.98: what it holds at 0.98), never more than there was: water taken
// up from damp air is not modelled.
double water_after(const Wet& wet, Spread spread, const Room& room, double seconds);

}
