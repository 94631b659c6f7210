// Cards to be printed on watercolour paper and painted on: a field for the swatch, and beside it
// what a photo of it is measured by: bare paper, two greys, a scale in millimetres, the batch.
#pragma once

#include "paper/facts.hpp"
#include "paper/labels.hpp"
#include "session/geometry.hpp"

#include <string>
#include <vector>

namespace paper {

// Greys as they are sent to the printer, sRGB values 0 to 255, all three alike.
inline constexpr int dark_grey = 119, light_grey = 187;

// Where things lie on a card, in mm from its upper left corner.
struct CardPlaces {
  Size card{92, 62};
  session::Rect paint{5, 19, 54, 32};
  session::Rect white{64, 19, 10, 10}, light{64, 30, 10, 10}, dark{64, 41, 10, 10};
  double scale_y = 56, scale_mm = 50; // begins where the field for the paint does
};
inline constexpr CardPlaces card_places{};

// One HTML file, a drawing a page, a card a batch.
std::string swatch_cards(const std::vector<Handed>& all, const Size& sheet);

}
