// What a material is: its composition by mass, and for a pigment the facts that a bench needs.
#pragma once

#include "paint/amount.hpp"
#include "words/error.hpp"

#include <array>
#include <string>
#include <string_view>

namespace paint {

// Mass shares of what a material consists of; they sum to 1. `gum` is dry gum, `honey` is honey's
// solids: their water counts as water.
struct Parts {
  double pigment = 0;
  double gum = 0;
  double water = 0;
  double glycerin = 0;
  double honey = 0;
  double alcohol = 0;
  double other = 0;

  bool operator==(const Parts&) const = default;
};

enum class Kind { pigment, binder, water, honey, glycerin, wetting_aid, other };

std::string_view name_of(Kind kind); // the word in files: "pigment", "binder", ...

enum class PigmentClass { mineral, fine_mineral, organic, carbon, effect, extender, unknown };

std::string_view name_of(PigmentClass c);
words::Result<PigmentClass> pigment_class_named(std::string_view name);

struct Pigment {
  double g_per_mL = 0;       // true density, 0.5 to 20
  double g_per_mL_u = 0;     // its standard uncertainty
  double oil_g_per_100g = 0; // linseed oil absorption (ISO 787-5), 0 = not known
  double oil_u = 0;
  PigmentClass family = PigmentClass::unknown;
  double heap_g_per_mL = 0; // the dry powder as it lies in a spoon; 0 = never weighed. Handling
                            // moves it by a factor of two, so no default stands in for it
  double heap_g_per_mL_u = 0;

  bool operator==(const Pigment&) const = default;
};

struct Material {
  Kind kind = Kind::other;
  Parts parts;
  Pigment pigment; // meaningful where parts.pigment > 0

  bool operator==(const Material&) const = default;
};

// Recipe by mass of what is bought: gum and honey with the water they are sold with. Shares of any
// positive sum. Errors: not_a_number, negative_amount, empty_recipe.
// Gum moisture 0.12 (as sold 10 to 15 %), honey moisture 0.17: see the .cpp for sources.
struct Recipe {
  double gum = 0;
  double water = 0;
  double honey = 0;
  double glycerin = 0;
  double alcohol = 0;
  double other = 0;

  bool operator==(const Recipe&) const = default;
};
words::Result<Parts> parts_of(const Recipe& as_sold);

// Share of water in gum as sold: it loses 10 to 15 % on drying (JECFA: at most 15 %).
inline constexpr double gum_moisture = 0.12;

// What is not known of how liquids were made, each by its name in an amount's shares. All of one
// workshop's have it alike, whatever bottle they stand in.
inline constexpr std::string_view gum_moisture_share = "moisture:gum";
inline constexpr std::string_view honey_moisture_share = "moisture:honey";
inline constexpr std::string_view gum_volume_share = "volume:gum";
bool is_of_composition(std::string_view share);
// The parts, were gum, or honey, sold with one standard uncertainty more water: gum 0.015 (10 to
// 15 %), honey 0.017 (17 to 20 %), as uniform, about the value that is used.
Parts with_moister_gum(Parts parts);
Parts with_moister_honey(Parts parts);
// Standard uncertainty of mL_per_g by the volume of dry gum, 0.02 mL/g, in a gram of liquid and
// pigment together: 0.7 % of the usual binder.
double mL_u_of_gum(const Parts& parts);

// Shares of masses in any unit. Errors: as parts_of.
words::Result<Parts> whole(const Parts& masses);

// Volume in mL of 1 g of the liquid part (everything but pigment), by partial specific volumes at
// 20 °C. Glycerin shrinks with the water beside it, by Volk & Kaehler (2018, Exp. Fluids 59:75;
// constants as in aquasol 1.8.0), and is right to 0.06 % in water alone. Alcohol, which shrinks
// with water by up to 4 %, is added as it is: it is gone within minutes. Binders are right to 1 %,
// for the 0.02 mL/g that the volume of dry gum is uncertain by. 0 where there is no liquid part.
double mL_per_g(const Parts& parts);

// Density of the whole in g/mL, pigment included. 0 where it is not known: pigment of no density,
// or no parts.
double g_per_mL(const Material& m);

// Density in g/mL of what usually goes by that name; a binder is gum 1 : water 2. 20 °C.
// Pigment has none: 0.
double usual_g_per_mL(Kind kind);

// Surface tension in mN/m by which drops are scaled between liquids (measure.hpp), about 20 °C, and
// its relative standard uncertainty. From memory, see the .cpp.
double surface_tension(Kind kind);
double surface_tension_relative_u(Kind kind);
double surface_tension(const Material& of); // with much alcohol in it: lower
double surface_tension_relative_u(const Material& of);

// r_oa: mL of oil to 1 mL of pigment at the oil-absorption point, OA * rho / 93.5.
// 0 when the oil absorption is not known.
double oil_absorption_point(const Pigment& p);

}
