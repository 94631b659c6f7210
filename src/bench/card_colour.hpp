// The colour of a pigment's card, from the catalogue or from the swatch of its own paint.
#pragma once

#include "bench/bench.hpp"

namespace bench {

struct OwnSwatch {
  std::string batch;
  std::uint32_t colour = 0;
};
// Of batches of this pigment alone: the newest that was read, unless the card shows it already.
std::optional<OwnSwatch> swatch_to_take(const Bench& bench, const session::Card& card);
// The batch whose swatch the card shows; empty: none.
std::string swatch_shown(const Bench& bench, const session::Card& card);
// The catalogue's, where the card shows another.
std::optional<std::uint32_t> colour_to_give_back(const session::Card& card);

session::Card with_colour(session::Card card, std::uint32_t colour);
// With the colour of the catalogue, so that its other figures are told from changed ones.
session::Card in_its_own_colour(const session::Card& card);

}
