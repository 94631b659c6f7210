// Plan's right side: what the plan comes to, as a recipe to follow.
#pragma once

#include "screens/widgets.hpp"

namespace screens {

void draw_recipe(Sheet& sheet, const bench::PlanView& plan);

// Running text; returns how far down it reached.
double note(Sheet& sheet, const Rect& area, double y, const std::string& words, const Lettering& l,
            Colour colour);
double lines_high(const std::string& words, double width, const Lettering& l);

std::string scoops_words(const std::vector<bench::ScoopView>& scoops); // "1 tbsp + 2¾ tsp"
std::string grams_within(double g, double u); // as many digits as a spoon bears; u 0: as weighed
std::string grams_about(double g, double u, bool guess); // with its width, where that is wide
std::string want_words(bench::Want want);
std::string unsaid_words(bench::Want want); // while it is not said how much

}
