// Making binder: what comes of the gum there is, and what brings a jar to another strength. Masses
// in g; recipes by mass as bought, gum and honey with the water they are sold with.
#pragma once

#include "paint/amount.hpp"
#include "paint/material.hpp"

namespace paint {

double sum_of(const Recipe& recipe);

// The same recipe for so many g of gum, up to 5,000. Errors: not_a_number, measure_not_positive,
// amount_too_large; empty_recipe for one without gum.
words::Result<Recipe> scaled_to_gum(const Recipe& recipe, double gum_g);

// What gets into the jar of all that was put in: 5 to 10 % stays in cloth and pot (common practice,
// no source).
double gets_into_jar(double put_in_g);

// Ground gum in level spoons of so many mL: 0.5 g to 1 mL, by 0.3 to 0.8 (own guess: nobody has
// weighed this one). Errors: not_a_number, measure_not_positive, amount_too_large.
words::Result<Amount> gum_in_spoons(double spoons, double spoon_mL);

// Dry gum's share of the whole, 0 to 1; 0 where the recipe holds nothing.
double strength_of(const Recipe& recipe);

// What so many g of a binder want to be of another strength: water, or gum as bought. Errors: those
// of water_to_reach and gum_to_reach; amounts as in scaled_to_gum.
struct PutIn {
  double water_g = 0, gum_g = 0;
};
words::Result<PutIn> to_strength(const Recipe& binder, double grams, double wanted);

// Of so many g of a binder: with something put in, as the masses it then holds.
Recipe with(const Recipe& binder, double grams, const PutIn& in);
// Likewise after so many g of its water have gone. Errors: not_a_number, negative_amount;
// more_water_than_there_is, with what there is.
words::Result<Recipe> dried_by(const Recipe& binder, double grams, double gone_g);

}
