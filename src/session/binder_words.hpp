// What a jar's label says of the binder in it, on a screen and on paper the same.
#pragma once

#include "paint/material.hpp"
#include "session/event.hpp"

#include <string>

namespace session {

// "4 gum, 8 water, 1 honey", by weight, in whole numbers where they come close; nothing without
// gum.
std::string parts_words(const paint::Recipe& recipe);

std::string dose_words(Unit unit, double amount); // "preservative: 6 drops"; 0: not said

}
