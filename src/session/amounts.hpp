// The second half of the fold's preparation: grams of every addition, bottles weighed and counts
// lost taken into account. Used by batch.cpp alone.
#pragma once

#include "paint/measure.hpp"
#include "session/lines_of_batch.hpp"
#include "words/error.hpp"

#include <tuple>

namespace session {

// For each entry: what it put in; absent where it put in nothing or is withdrawn. A lost count
// puts in nothing, with an uncertainty, until its bottle is weighed around it.
std::vector<std::optional<paint::Amount>> amounts_of(BatchLines& lines);

// What additions put in, each by its own tool. Remembers while the cards are there: one drop is
// added again and again.
class GramsAdded {
public:
  // Errors: those of paint::grams_weighed, grams_of_drops and grams_of_spoons, of a recipe that
  // makes no sense, and card_not_laid_out without the tool that is named.
  const words::Result<paint::Amount>& operator()(const Added& added, const Card& of,
                                                 const Card* tool);

private:
  using Measured = std::tuple<const Card*, const Card*, Unit, std::uint64_t>;
  std::map<Measured, words::Result<paint::Amount>> known_;
  words::Result<paint::Amount> without_tool_;
};

// Absent, with a warning by the caller, where the recipe makes no sense.
words::Result<paint::Material> material_of(const Card& card);

// What a tool's card says of its drops and fillings.
paint::Dropper dropper_of(const Card& card);
paint::Spoon spoon_of(const Card& card);

}
