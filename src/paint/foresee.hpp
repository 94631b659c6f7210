// What a studio's learnt range says of the batch on the slab: a small plain value, made once when
// the pigments are there, sharpened by each note of today.
//
// t is ln of the mL of liquid at the middle of right. Its distribution is a mixture over 2p points
// of theta (a cubature of the third degree: the mode +- sqrt(p) times the columns of the Cholesky
// factor of theta's covariance, p parameters being free), each a normal distribution on a grid,
// spaced by at most 0.7 slopes. A note multiplies it by its chance (Bayes's rule). What a hand
// would say is told without slips: for the one that does not slip.
#pragma once

#include "paint/learn.hpp"

namespace paint {

struct ForeseePart {
  int learnt = -1;    // which of Learnt.pigments; -1: one that it does not hold
  double mL = 0;      // 0 to 1e6, not all 0
  LearnPigment facts; // of one that it does not hold

  bool operator==(const ForeseePart&) const = default;
};

struct ForeseeTool {
  int learnt = -1;  // which of Learnt.tools
  double share = 1; // of the liquid that is counted today, -10 to 10
  double sd = 0;    // of one that it does not hold

  bool operator==(const ForeseeTool&) const = default;
};

struct ForeseeBatch {
  std::vector<ForeseePart> pigments;
  std::vector<ForeseeTool> tools;
  double shared_sd = 0; // as LearnBatch

  bool operator==(const ForeseeBatch&) const = default;
};

struct ForeseenPoint {
  Hand hand;
  double first = 0, step = 0; // of its grid in t
  int count = 0;
};

struct Foreseen {
  std::vector<ForeseenPoint> points;
  std::vector<double> weights; // of every point's grid one after the other; they sum to 1
};

// Of one that was learnt, or of nobody's notes: learn({}) holds the priors alone. Errors:
// learn_out_of_range, learn_not_there, learn_no_pigment, and what Learnt's end says where it was
// not found.
words::Result<Foreseen> foresee(const Learnt& learnt, const ForeseeBatch& batch);

struct TodayNote {
  double mL = 0; // live liquid; above 0
  double sd = 0; // of ln mL, this note's own part; 0 to 10
  int felt = 2;  // 0 to 4

  bool operator==(const TodayNote&) const = default;
};

// After one more note. Errors: learn_out_of_range.
words::Result<Foreseen> after(const Foreseen& before, const TodayNote& note);

// Liquid there now; sd of its ln beyond what the notes have in common, as for water lost since the
// last one. Chances are not a number for mL that is not above 0, or for a Foreseen that is empty.
struct ForeseenAt {
  double mL = 0;
  double sd = 0;
};

std::array<double, 5> chances(const Foreseen& foreseen, ForeseenAt at); // of each word
double chance_right(const Foreseen& foreseen, ForeseenAt at);
double chance_too_loose(const Foreseen& foreseen, ForeseenAt at); // or runnier

// Most drops that leave the chance of too loose at 4 % or less, 0 to 10,000; 0 where the drop, the
// liquid or the Foreseen is none. The promise is 5 % for each step that is advised; the rest is for
// what the model does not know.
int safe_drops(const Foreseen& foreseen, ForeseenAt at, double drop_mL);

// Liquid at which the chance of too loose is so much; chance between 0 and 1, else not a number.
double mL_at_chance_too_loose(const Foreseen& foreseen, double chance);

// From where right or looser is as likely as not to where too loose is.
struct ForeseenBand {
  double from_mL = 0;
  double to_mL = 0;
};
ForeseenBand band_of(const Foreseen& foreseen);

double mL_at_share(const Foreseen& foreseen, double share); // quantile of e^t; 0.5: the median

struct LnSpread {
  double mean = 0;
  double sd = 0;
};
LnSpread spread_of(const Foreseen& foreseen); // of t

}
