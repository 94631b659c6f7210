// Some paint in one place: what went into it and what has left it; parted, joined, dried, weighed.
// Masses in g.
#pragma once

#include "paint/drying.hpp"
#include "paint/standing.hpp"

namespace paint {

struct Mixture {
  std::vector<Portion> contents; // one a card, in the order of their first addition
  Amount water_gone;             // as far as it is settled; below 0: taken up from the air
  DryingPrediction since;        // what should have left beside that
  Interval alcohol_g;            // left in it: `low` on a fast bench, `high` on a slow one
  // What its uncertainty is made of, each to 1 of it: weighings that told of it tell of the rest
  // too.
  std::map<std::string, double> alcohol_by = {{"alcohol", 1}};
};

bool is_empty(const Mixture& m);

// grams may be below 0 where a weighing took back what was counted.
void put(Mixture& m, const std::string& card, const Material& material, const Amount& grams);

// All that has left, with the bench's uncertainty as the share "evaporation".
Amount water_gone(const Mixture& m, const BenchRate& bench);
// The interval taken as 95 %; its uncertainty is the share "alcohol".
Amount alcohol_left(const Mixture& m);
// All of it, now.
Amount grams_of(const Mixture& m, const BenchRate& bench);
Standing stand(const Mixture& m, const BenchRate& bench = {});
Live live(const Sums& sums, const Mixture& m);

// What one stretch of time takes from it. `sums` are those of its contents.
// Errors: those of predict_drying and alcohol_after.
struct Dried {
  DryingPrediction water;
  Interval alcohol_g;
};
words::Result<Dried> dried(const Mixture& m, const Sums& sums, Spread spread, const Room& room,
                           double seconds, const BenchRate& bench = {});
void dry(Mixture& m, const Dried& by);

// A mixed paint in two: each takes its share of everything, of what has left it too. Own errors of
// the contents become shares named after the parting, since both halves carry them; the share's own
// error is what one has more and the other less. share 0 to 1.
// Errors: not_a_number, not_a_share.
struct Parting {
  Mixture taken, left;
};
words::Result<Parting> part(const Mixture& m, const Amount& share, const std::string& parting);

// "Half" is a half to 0.05 by eye (own estimate).
Amount half_by_eye();
// What share so many grams are. Errors: nothing_there for no paint; amount_too_large for more than
// there is by over 4 standard uncertainties; else at most 1.
words::Result<Amount> share_of(const Mixture& m, const Amount& grams, const BenchRate& bench,
                               const std::string& parting);

Mixture joined(Mixture a, const Mixture& b);

// What a weighing of it says of everything at once (given_sum in bottle.hpp): what went in, what
// has left, what stayed on the tools.
struct Weighed {
  Mixture there;               // what was weighed
  Mixture on_tools;            // what had been parted from it
  BenchRate bench;             // taught, where enough had left to tell
  Amount stayed_on_tools = {}; // the share, by what went in and this weighing alone
};
// on_tools: what did not come along, as `part` took it from the whole; none for paint weighed where
// it lies. It cannot be less than nothing: paint that weighs so much left nothing behind. The bench
// is taught only where the water observed to have left stands 2 uncertainties above none.
// Errors: those of given_sum; nothing_there.
words::Result<Weighed> weighed(const Mixture& m, const Mixture& on_tools, const Amount& grams,
                               const BenchRate& bench, const std::string& weighing);

// Paint that was left to dry and got water until it moved as it had before: what was added is what
// had left, to 10 % of its liquid (own estimate of what a hand tells apart).
// Errors: not_only_water where anything but water went in between; nothing_lost where no water did.
words::Result<Weighed> brought_back(const Mixture& before, const Mixture& now,
                                    const BenchRate& bench, const std::string& name);

}
