// How long a paint has to be mulled until a test dot shows few specks, or none, as the dots of
// earlier batches tell it. The minutes T until none are left scatter log-normally: a batch about
// its pigment, a pigment about its class in this studio, and that about what is usual
// (decline_guess). Specks decline in the first order (mulling.hpp), so that "few" is said from a
// fixed share of T on, and whoever judges a dot is a little off. A dot with specks says that T is
// longer than it was mulled by then, so a batch that was gathered with specks counts as just that.
// All of it is sums over a grid of ln T, from 15 s to 9 h: nothing is sought that might not be
// found.
#pragma once

#include "paint/mulling.hpp"

#include <array>
#include <cstddef>

namespace paint {

struct MullDot {
  double minutes = 0; // of mulling before it, above 0: others are passed over
  SpeckWord specks = SpeckWord::many;
  bool operator==(const MullDot&) const = default;
};
using MullBatch = std::vector<MullDot>;     // of one batch, in order
using MullPigment = std::vector<MullBatch>; // of one pigment; those of the last 40 batches count

inline constexpr std::size_t mull_cells = 128;
using MullTime = std::array<double, mull_cells>; // chance of each cell of the grid, together 1

// Standard deviations in ln T, and a share: own estimates, no source. Of several, what the dots say
// weighs them.
struct MullScatter {
  std::vector<double> of_batches{0.15, 0.25, 0.4, 0.6}; // about their pigment
  std::vector<double> of_pigments{0.15, 0.3, 0.5};      // about their class
  double of_classes = 0.4;                              // about what is usual
  double of_judging = 0.25;                             // where one word ends and the next begins
  double slips = 0.02;                                  // of dots whose word says nothing
};

// Of the next batch of a pigment: that one of its class which stands at `which`, or one that has
// taught nothing yet. Absent for effect pigments, which mulling breaks.
std::optional<MullTime> mull_time(PigmentClass family, const std::vector<MullPigment>& of_class,
                                  std::optional<std::size_t> which,
                                  const MullScatter& scatter = {});

// Of the next batch of a blend: what its slowest pigment lets expect, and its own batches.
MullTime mull_time_of_blend(const std::vector<MullTime>& pigments, const MullPigment& own);

// With what today's dots have shown.
MullTime mull_time_after(const MullTime& before, const MullBatch& today);

// Minutes in all: one in ten takes less than low, one in ten more than high.
Interval mull_minutes(const MullTime& time, SpeckWord until = SpeckWord::none);

// Minutes still to come after so many, likewise; what the last dot with specks rules out is left
// out. 0 where the last dot shows no more than that; absent where everything is ruled out.
std::optional<Interval> mull_minutes_left(const MullTime& time, const MullBatch& today,
                                          double mulled, SpeckWord until = SpeckWord::none);

// Seconds of one pass as this hand makes them: their geometric mean, drawn to the usual 210 s as
// five such passes would; one is taken for no less than 1 and no more than 15 minutes.
inline constexpr double usual_pass_s = 210; // the middle of 2 to 5 minutes: common practice, no
                                            // source
double usual_pass_after(const std::vector<double>& passes_s);

}
