// How firmly what lies on the slab holds its water: gum, glycerin and the sugars of honey.
#pragma once

#include "words/error.hpp"

#include <optional>

namespace paint {

// What may dry: g of dry gum, glycerin and honey solids, and the g of water among them; with the
// whole volume of the paint in mL, which bounds how far it can be spread.
struct Wet {
  double gum_g = 0;
  double glycerin_g = 0;
  double honey_g = 0;
  double water_g = 0;
  double volume_mL = 0;
};

// not_a_number or negative_amount; absent where every field may be reckoned with.
std::optional<words::Error> fault_of(const Wet& wet);

// A dissolved substance in the law of Norrish (1966): activity = x exp(-k s^2), where x is the mole
// fraction of water and s = 1 - x; published constants are reliable to about 60 % by mass. With
// bend, Margules's next term: x exp(-s^2 (k - bend s)).
struct Solute {
  double g_per_mol = 0;
  double norrish_k = 0;
  double bend = 0;
};

// Glycerin at 25 °C: two constants fitted to nine values of the model of Zhang, Grace & Sun (2022)
// from 10 to 80 %, which they meet within 0.005; Norrish's law with the published 1.16 lies within
// 0.011 as far as it reaches, 60 %. Taken as +-0.012.
inline constexpr Solute glycerin_in_water{92.094, 1.18, 1.32};

// Honey's solids as glucose and fructose, k 2.25 +-0.04. What honey holds follows it only above
// 18.6 % moisture: see held_water_g.
inline constexpr Solute honey_sugars{180.16, 2.25};

// g of water that gum, glycerin and honey hold at a relative humidity of 0 to 0.98 and 0 to 70 °C:
// their uptakes added at one water activity (Zdanovskii, Stokes & Robinson).
// Gum: Guggenheim, Anderson & de Boer's law, fitted to Acacia nilotica at 30 °C, +-0.013 g/g.
// Glycerin: glycerin_in_water, the logarithm of its activity coefficient as 1 / T; below 0.3
// extrapolated. Honey: of 14 to 18.6 % moisture by the middle of four published lines of measured
// honeys, activity = 0.243 + 0.0173 % (Norrish's law rises by 0.024 there); above that by Norrish's
// law, which takes the line up; below by the same law, moved so that it meets the line. +-0.045:
// the four and an older table lie so far apart. What the pigment itself holds is left out: under
// 1 % of oxides, a few of clays, iron blue and carbon.
// Nothing holds nothing: 0. Errors: those of fault_of; humidity_above_held, humidity_out_of_range,
// temperature_out_of_range.
words::Result<double> held_water_g(const Wet& wet, double humidity, double celsius);

}
