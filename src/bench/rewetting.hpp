// What this studio's dry paint lets expect: how much honey or glycerin to gum, and how much gum.
#pragma once

#include "bench/planning.hpp"

namespace bench {

// A batch was folded: what it teaches takes the place of what it taught before. Null: nothing.
void learn_dried(Bench& bench, const std::string& batch, const session::Batch* folded);

// What a pigment wants in the air that was read last. By our own guess until verdicts on dry paint
// of it and of its class have taught better.
struct SoftWanted {
  struct Range {
    double low_g = 0, high_g = 0;
  };
  std::optional<Range> honey;    // its solids, to 10 g of dry gum
  std::optional<Range> glycerin; // likewise
  std::optional<Range> gum;      // dry, to 10 g of pigment
  bool damp = false;             // the room: no paint dries in it
  int verdicts = 0;              // on this pigment
  int of_class = 0;              // on others of its class
  std::optional<session::Became> last;
};
SoftWanted soft_wanted(const Bench& bench, const session::Card& pigment);

// What the last dry paint of the plan's pigments asks of the plan.
std::optional<LastTime> last_time(const Bench& bench, const Planned& planned);

// So little gum to the pigments that Slab will ask for more of it.
bool is_short_of_gum(const Bench& bench, const Planned& planned);

// Where paint like this batch begins to stay tacky, as verdicts on dry paint of its pigments and of
// their class have taught; until one did, our own guess.
paint::TackMark tack_mark(const Bench& bench, const session::Batch& batch);
void mark_tack(Bench& bench); // the slab's, at the end of a step

// The tack index below which paint of this batch's class is too hard.
double hard_below(const Bench& bench, paint::PigmentClass family);

}
