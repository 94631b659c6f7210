// Words of making binder that several screens say.
#pragma once

#include "bench/view_binder.hpp"

#include <string>

namespace screens {

std::string step_words(session::MakingStep step, bool honey); // else it is glycerin

// "2.5 water to 1 of gum, by weight".
std::string ratio_words(const paint::Recipe& recipe);
std::string percent_words(double strength); // of 0.293: "29"

}
