// What a studio's learnt range says of the batch on the slab: a small plain value, made once when
// the pigments are there, sharpened by each note of today.
//
// t is ln of the mL of liquid at the middle of right. Its distribution is a mixture over 2p points
// of theta (a cubature of the third degree: the mode +- sqrt(p) times the columns of the Cholesky
// factor of theta's covariance, p parameters being free), each a normal distribution on a grid,
// spaced by at most 0.7 slopes. A note multiplies it by its chance (Bayes's rule). What a hand
// would say is told without slips: for the one that does not slip.
//
// Liquids are those of the batch's own strength; one of another, as after some water has left,
// feels as the prior's drying has it (learn.hpp).
#pragma once

#include "paint/range/learn.hpp"

namespace paint {

struct PredictPart {
  int fit = -1;       // which of RangeFit.pigments; -1: one that it does not hold
  double mL = 0;      // 0 to 1e6, not all 0
  LearnPigment facts; // of one that it does not hold

  bool operator==(const PredictPart&) const = default;
};

struct PredictTool {
  int fit = -1;     // which of RangeFit.tools
  double share = 1; // of the liquid that is counted today, -10 to 10
  double sd = 0;    // of one that it does not hold

  bool operator==(const PredictTool&) const = default;
};

struct PredictBatch {
  std::vector<PredictPart> pigments;
  std::vector<PredictTool> tools;
  double shared_sd = 0;           // as LearnBatch
  double dry_gum = usual_dry_gum; // its share of the liquid's mass, 0 to 1

  bool operator==(const PredictBatch&) const = default;
};

struct PredictionPoint {
  NoteModel hand;
  double first = 0, step = 0; // of its grid in t
  int count = 0;
};

struct Prediction {
  std::vector<PredictionPoint> points; // by another studio's word first, where there is one
  std::vector<double> weights;         // of every point's grid one after the other; they sum to 1
  double drying = 0;                   // as LearnPriors
  std::size_t own = 0;                 // the first of points that are of this studio alone
};

// Of one that was learnt, or of nobody's notes: learn({}) holds the priors alone. Errors:
// learn_out_of_range, learn_not_there, learn_no_pigment, and what RangeFit's end says where it was
// not found.
words::Result<Prediction> predict(const RangeFit& fit, const PredictBatch& batch);

struct TodayNote {
  double mL = 0;       // live liquid; above 0
  double sd = 0;       // of ln mL, this note's own part; 0 to 10
  int felt = 2;        // 0 to 4
  double stronger = 0; // dry gum's share of the liquid then, less the batch's; -1 to 1
  double late = 0;     // chance that a step drier was meant than is felt by others; 0 to 1

  bool operator==(const TodayNote&) const = default;
};

// A studio's first batches: who is new to it may feel a word late. Own choice: a ruined first batch
// costs more than six first batches in a hundred that stop short of right.
inline constexpr int first_batches = 3;
inline constexpr double felt_late = 0.25;

// After one more note. Errors: learn_out_of_range.
words::Result<Prediction> after(const Prediction& before, const TodayNote& note);

// Liquid there now; sd of its ln beyond what the notes have in common, as for water lost since the
// last one. Chances are not a number for mL that is not above 0, or for a Prediction that is empty.
struct PredictionAt {
  double mL = 0;
  double sd = 0;
  double stronger = 0; // dry gum's share of it, less the batch's
};

std::array<double, 5> chances(const Prediction& prediction, PredictionAt at); // of each word
double chance_right(const Prediction& prediction, PredictionAt at);
double chance_too_loose(const Prediction& prediction, PredictionAt at); // or runnier

// The promise is 5 % for each step that is advised; the rest is for what the model does not know.
inline constexpr double allowed_too_loose = 0.04;

// Likewise by what this studio alone lets expect, where another's word lets expect more: that word
// may be wrong. Own choice, for why see TOLD.md.
inline constexpr double allowed_untold = 0.10;

// Most drops that leave the chance of too loose at that or less, 0 to 10,000; 0 where the drop, the
// liquid or the Prediction is none. `drop_stronger`: as PredictionAt, of the drop.
int safe_drops(const Prediction& prediction, PredictionAt at, double drop_mL,
               double drop_stronger = 0);

// Liquid at which the chance of too loose is so much; chance between 0 and 1, else not a number.
double mL_at_chance_too_loose(const Prediction& prediction, double chance);

// What may go in at once before anything was felt: half to seven tenths of the median, and no more
// than leaves the chance of too loose at 4 %, with another studio's word and without.
struct FirstLiquid {
  double from_mL = 0, to_mL = 0;
  double median_mL = 0; // of what will be wanted
  double cap_mL = 0;    // where the chance is 4 %
};
FirstLiquid first_liquid(const Prediction& prediction);

// From where right or looser is as likely as not to where too loose is.
struct PredictedBand {
  double from_mL = 0;
  double to_mL = 0;
};
PredictedBand band_of(const Prediction& prediction);

double mL_at_share(const Prediction& prediction, double share); // quantile of e^t; 0.5: the median

struct LnSpread {
  double mean = 0;
  double sd = 0;
};
LnSpread spread_of(const Prediction& prediction); // of t

}
