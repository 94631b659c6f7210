// Recipes of the shelf, and amounts as a maker says them: spoons, grams, parts.
#pragma once

#include "bench/bench.hpp"
#include "paint/scoops.hpp"

namespace bench {

// What an amount weighs, with the width that its spoon, or a guess of how the powder lies, leaves.
struct SaidGrams {
  paint::Amount g;
  bool guess = false; // nobody weighed a spoon of this powder
};
// Absent for parts, for a card or tool that is not on the shelf, and for what cannot be measured
// so.
std::optional<SaidGrams> grams_said(const Bench& bench, const BlendPart& part);

// How much of a pigment the plan's recipe has, in its own unit. Error: parts_out_of_range.
words::Result<double> say_amount(Bench& bench, const std::string& card, double amount);
// All amounts in another unit: the same recipe, where it is known what it weighs.
void say_in(Bench& bench, session::SaidIn in);
void next_spoon(Bench& bench, const std::string& card);

// The shelf's spoons, and the dropper of a liquid, for one material: what paint::best_scoops
// chooses from. Own choice: a spoon of 2 to 7 mL is also filled by the quarter.
std::vector<paint::Scoop> scoops_for(const Bench& bench, const session::Card& of);
// The best of them; absent where none serves, or the amount is too large to be spooned.
std::optional<paint::ScoopSet> scooped(const Bench& bench, const session::Card& of, double g,
                                       double near_g);

// Whether its name, or that of one of its pigments, holds that.
bool recipe_goes_by(const Bench& bench, const session::Card& card, const std::string& text);
// Those whose name, or whose pigments', holds the search text; by name.
std::vector<const session::Card*> recipes_found(const Bench& bench);
// Plan, filled with a recipe. What is no longer on the shelf is left out and said.
void use_recipe(Bench& bench, const std::string& card, const Now& now);
// The recipe that the plan goes by; empty: none, or other pigments were taken since.
std::string recipe_followed(const Bench& bench);

// One that was kept from this batch; empty: none.
std::string recipe_of_batch(const Bench& bench, const std::string& batch);
void keep_recipe_of(Bench& bench, const std::string& batch, const Now& now, Effects& effects);
void keep_recipe_of_plan(Bench& bench, const Now& now, Effects& effects);

}
