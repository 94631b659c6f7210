// Whether a batch is of the colour of an earlier one, and what in the two differs that may be why.
#pragma once

#include "bench/bench.hpp"
#include "bench/view_match.hpp"
#include "colour/kept.hpp"

namespace bench {

// Of several pictures of one paint in this workshop, each with the one before it.
colour::Repeats repeats_of(const Bench& bench);

// Two photos, of each of which a swatch was read. On one photo what the camera and the light did is
// common to both; how far two are to be trusted the repeats say.
struct Compared {
  colour::Match match; // of b against a
  colour::Taken taken = colour::Taken::two_photos;
  std::size_t repeats = 0; // that bear on it: none on one photo
};
Compared compared(const session::Photo& a, const session::Photo& b, const colour::Repeats& repeats);

// Of a batch, the reading that one of a photo with that SHA-256 is held against: on the same photo,
// else as it was read last. Absent: none was read.
std::optional<session::Photo> read_beside(const Bench& bench, const std::string& batch,
                                          const std::string& sha256);

// The last batch begun before it that is of the same paint (made again of one another, or of the
// same pigments), was judged good and had its swatch read; empty: none, or its own was not read.
std::string matched_with(const Bench& bench, const std::string& batch);

// Absent where either swatch was not read. Folds both batches, and those that say how much each
// number differs here from batch to batch.
std::optional<MatchView> match_of(Bench& bench, const std::string& one, const std::string& other);

}
