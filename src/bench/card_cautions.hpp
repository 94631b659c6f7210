// What a card's maker chooses to be careful about: the closed list, a pad each, in place of the
// card.
#pragma once

#include "bench/layout_of.hpp"
#include "paint/catalogue.hpp"

namespace bench {

// What the card asks for: the catalogue's by its id, and what was chosen.
std::vector<paint::Caution> asked_by(const session::Card& card);

// Chooses a caution, or takes it back; the catalogue's own stay.
void turn_caution(session::Card& card, const std::string& word);

void lay_out_cautions(const Bench& bench, Rect area, Layout& layout);

}
