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

// A dissolved substance in the law of Norrish (1966): activity = x exp(-k (1 - x)^2), where x is
// the mole fraction of water. Published constants are reliable to about 60 % by mass.
struct Solute {
  double g_per_mol = 0;
  double norrish_k = 0;
};

// Honey's solids as glucose and fructose, k 2.25 +-0.04. Far beyond 60 %, and yet within 0.06 of
// the measured activities of honeys of 14 to 21 % moisture: that is its uncertainty.
inline constexpr Solute honey_sugars{180.16, 2.25};

// g of water to 1 g of the solute at an activity of 0 to 0.98. Errors: not_a_number,
// humidity_out_of_range, measure_not_positive for a solute that is none.
words::Result<double> held_by(const Solute& solute, double activity);

// g of water that gum, glycerin and honey hold at a relative humidity of 0 to 0.98 and 0 to 70 °C:
// their uptakes added at one water activity (Zdanovskii, Stokes & Robinson).
// Gum: Guggenheim, Anderson & de Boer's law, fitted to Acacia nilotica at 30 °C, +-0.013 g/g.
// Glycerin: ASTM D5032, scope 0.30 to 0.98, below that extrapolated, +-2 % of humidity; Norrish's
// law says the same to 2 % up to 70 % glycerin, so one equation without a seam serves. A model of
// 2022 (Zhang, Grace & Sun) has up to 2.6 % more over the same glycerin. Honey: see above. What the
// pigment itself holds is left out: under 1 % of oxides, a few of clays, iron blue and carbon.
// Nothing holds nothing: 0. Errors: those of fault_of; humidity_above_held, humidity_out_of_range,
// temperature_out_of_range.
words::Result<double> held_water_g(const Wet& wet, double humidity, double celsius);

}
