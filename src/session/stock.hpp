// What there is of a card of the shelf, how long it will last, and what must be bought for a plan.
#pragma once

#include "session/batch.hpp"

namespace session {

struct Jar {
  Ref line;
  std::int64_t at = 0; // of the line, ms since 1970
  Bought of;
  int offset_min = 0; // of the clock on the wall then, east of UTC: whose day `of.on` is
};

// Micrograms of a card that were used, by the moment, ms since 1970: whole numbers, so that a sum
// over batches stays exact while they come and go.
using Uses = std::map<std::int64_t, std::int64_t>;
// Drops that follow each other are one, at the beginning of their minute.
std::int64_t use_moment(Unit unit, std::int64_t at);

struct Stock {
  struct Weighing {
    Ref line;
    std::int64_t at = 0;
    double g = 0;
    double tare_g = 0; // of the empty jar; 0: not said
    int offset_min = 0;
  };
  std::vector<Jar> jars;           // in order of their lines
  std::optional<Weighing> weighed; // the last time, or when something was put into the jar
  Uses taken;                      // into binder; into batches: see left_of
  int made_offset_min = 0;         // where its card says when it was made
};
using Stocks = std::map<std::string, Stock>; // by card

struct Remaining {
  double g = 0;  // below 0: more was taken than was known of
  double of = 0; // what there was, before any of it was taken; at least the largest jar
};

// What was weighed last, or else what the card says was made, whichever is later (a weighing of the
// same day is); what was bought since, or ever where neither is known; less what batches, whose
// uses these are, and binder took since then, or since the day of the first purchase. A jar counts
// from its own day; of the day of a weighing those that were entered after it. Absent where nothing
// was said.
std::optional<Remaining> left_of(const Card& card, const Stock& stock, const Uses& uses);

// g a day that batches took in the last 90 days, or since the first of them where that is less, but
// never of less than 28 days: a studio's first evening is no pace. Own choice. Absent: none.
std::optional<double> pace(const Uses& uses, std::int64_t now_ms);
// Days until it is used up, at that pace.
std::optional<double> days_left(const Remaining& left, const Uses& uses, std::int64_t now_ms);

// What a batch takes of it: the mean of its last three. Absent: none did.
std::optional<double> taken_by_a_batch(const std::vector<double>& latest_first);

// What is to be bought, so that all of this can be made. Wants of one card count together; a card
// whose stock nobody knows is short of nothing.
struct Wanted {
  std::string card;
  double g = 0;
};
struct ToBuy {
  std::string card;
  double wanted_g = 0, left_g = 0;
};
std::vector<ToBuy> to_buy(const std::vector<Wanted>& wanted,
                          const std::map<std::string, double>& left_g);

}
