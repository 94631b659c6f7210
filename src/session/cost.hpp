// What a paint costs, by the jars that were bought for it.
#pragma once

#include "session/stock.hpp"

namespace session {

// Of the last jar whose price was said, in the currency of the last jar of all: what was paid in
// another is not reckoned with, since nobody said what that is worth.
struct Prices {
  std::string currency;                 // empty: no price was said
  std::map<std::string, double> a_gram; // by card
  // A gram of each, by cards that are nothing else, but for water, and no binder.
  std::optional<double> gum, honey, glycerin;
};
Prices prices_of(const std::vector<Card>& cards, const Stocks& stocks);

struct Cost {
  double pigment = 0;
  double binder = 0;              // of one that was bought ready
  double gum = 0;                 // of those made here, by what they are made of
  double honey = 0;               // and glycerin
  double rest = 0;                // what else was bought
  std::vector<Card> unknown = {}; // without a price, and left out
  double sum() const { return pigment + binder + gum + honey + rest; }
};

struct Taken {
  const Card* card = nullptr;
  double g = 0;
};

// A card that was bought costs what its jar did; any other liquid what it is made of does, of which
// water, alcohol and the few drops of a preservative are left out.
Cost cost_of(const std::vector<Taken>& taken, const Prices& prices);

// What a gram of it costs. Absent: not known.
std::optional<double> a_gram_of(const Card& card, const Prices& prices);

// One pan's share of a batch that was poured into some: what was lost is paid for by what is there.
// Absent where no pan holds any.
std::optional<double> cost_of_a_pan(const Batch& batch, const Cost& cost);

}
