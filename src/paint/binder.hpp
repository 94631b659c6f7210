// Binders: what their cards may say, and what brings one to a wanted strength. Masses in g, shares
// 0 to 1.
#pragma once

#include "paint/material.hpp"

#include <optional>

namespace paint {

// Own limits of a binder's card, wide enough for any that makes paint: honey, or glycerin, to gum,
// and water to gum, by mass. More is a slip of the finger, or no binder.
inline constexpr double most_honey_to_gum = 3;
inline constexpr double most_glycerin_to_gum = 3;
inline constexpr double most_water_to_gum = 20;
// Which of them it oversteps first, with the two masses: recipe_honey, recipe_glycerin,
// recipe_water.
std::optional<words::Error> fault_of_recipe(const Recipe& binder);

// Share of dry gum. More does not dissolve (a supplier's data sheet says 50 to 55 %).
inline constexpr double strongest_binder = 0.55;
inline constexpr double most_binder_g = 5000; // at once: own choice

// g of water, or of gum as sold, to add to so many g of a binder until dry gum is this share of the
// whole. Strengths above 0 and up to strongest_binder. Errors: not_a_number, negative_amount,
// empty_recipe; not_a_share for parts that do not sum to 1; amounts as in measure.hpp;
// strength_out_of_reach where water would have to strengthen, or gum to weaken.
words::Result<double> water_to_reach(const Parts& binder, double grams, double strength);
words::Result<double> gum_to_reach(const Parts& binder, double grams, double strength,
                                   double moisture = gum_moisture);

}
