// Cards to be printed on watercolour paper and painted on: a field for the swatch, and beside it
// what a photo of it is measured by: bare paper, two greys, a scale in millimetres, the batch.
// Where they lie stands in colour/card.hpp, which finds the card again on a photo.
#pragma once

#include "paper/facts.hpp"
#include "paper/labels.hpp"

#include <string>
#include <vector>

namespace paper {

// One HTML file, a drawing a page, a card a batch.
std::string swatch_cards(const std::vector<Handed>& all, const Size& sheet);

}
