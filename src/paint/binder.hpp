// Binders: from what goes into the pot to what they are made of, and back to a wanted strength.
// Masses in g, volumes in mL at 20 °C, shares 0 to 1.
#pragma once

#include "paint/material.hpp"

#include <optional>

namespace paint {

// What is bought and put in. Ox gall as sold is a solution of 5 % (common practice, no source);
// alcohol as sold is of 96 % by volume, so 93.8 % by mass (from memory of the OIML tables).
// Sugar counts with the solids of honey, whose volume and hold on water are near its own.
struct Ingredients {
  double gum = 0;
  double water = 0;
  double honey = 0;
  double sugar = 0;
  double glycerin = 0;
  double ox_gall = 0;
  double alcohol = 0;
  double preservative = 0;
  double gum_moisture = 0.12;   // 0.10 to 0.15 as sold; JECFA allows 0.15. To 0.30 here
  double honey_moisture = 0.17; // 0.13 to 0.25; Codex CXS 12 allows 0.20

  bool operator==(const Ingredients&) const = default;
};

// By mass. Errors: not_a_number, negative_amount, empty_recipe; not_a_share for a moisture out of
// range (gum 0 to 0.30, honey 0.10 to 0.30).
words::Result<Parts> mixed(const Ingredients& grams);

// The same liquid as a card's recipe, whose gum and honey have their usual moisture. Errors as
// above; recipe_too_dry where drier gum or honey would leave it less than no water.
words::Result<Recipe> recipe_of(const Ingredients& grams);

// A recipe by volume as one by mass, and back. Gum and sugar are as they lie in the measure: weigh
// one measure of gum, lumps and powder differ; sugar 0.85 g/mL (common practice, no source).
// Errors as mixed; measure_not_positive for gum that weighs nothing, where there is gum.
words::Result<Ingredients> weighed_from(const Ingredients& mL, double gum_heap_g_per_mL);
words::Result<Ingredients> measured_from(const Ingredients& grams, double gum_heap_g_per_mL);

// Own limits of a binder's card, wide enough for any that makes paint: honey, or glycerin, to gum,
// and water to gum, by mass. More is a slip of the finger, or no binder.
inline constexpr double most_honey_to_gum = 3;
inline constexpr double most_glycerin_to_gum = 3;
inline constexpr double most_water_to_gum = 20;
// Which of them it oversteps first, with the two masses: recipe_honey, recipe_glycerin,
// recipe_water.
std::optional<words::Error> fault_of_recipe(const Recipe& binder);

// What two recipes are compared by.
struct BinderFacts {
  double g_per_mL = 0;
  double solids = 0;                       // all but water and alcohol
  double gum = 0;                          // dry gum in the whole: its strength
  double humectant = 0;                    // glycerin and the solids of honey, in the whole
  std::optional<double> humectant_per_gum; // absent without gum
};
// Errors: not_a_number, negative_amount, empty_recipe; not_a_share for parts that do not sum to 1
// or hold pigment.
words::Result<BinderFacts> facts_of(const Parts& binder);

// g of water, or of gum as sold, to add to so many g of a binder until dry gum is this share of the
// whole. Strengths above 0 and up to 0.55, more than which water does not dissolve (a supplier's
// data sheet says 50 to 55 %). Errors as facts_of, amounts as in measure.hpp, not_a_share;
// strength_out_of_reach where water would have to strengthen, or gum to weaken.
words::Result<double> water_to_reach(const Parts& binder, double grams, double strength);
words::Result<double> gum_to_reach(const Parts& binder, double grams, double strength,
                                   double gum_moisture = 0.12);

// A binder that lost water while it stood: found by weighing it again, or by its density. Of a 1:2
// binder 0.01 g/mL is 9 % of the water, so that the scale is the better way.
// Errors as facts_of; amounts as in measure.hpp; bottle_gained where it weighs more;
// water_more_than_there; density_out_of_reach where it is below the recipe's or above that of the
// binder without any water.
words::Result<Parts> weighed_again(const Parts& binder, double then_g, double now_g);
words::Result<Parts> thickened_to(const Parts& binder, double g_per_mL);

}
