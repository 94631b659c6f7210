// What a studio's feel notes say of its pigments, its tools and its hands: one model for all of
// them, fitted at once. Natural logarithms of volumes and flows throughout.
//
// A pigment's demand d is the liquid, in mL to 1 mL of pigment, at the middle of right: today, in
// binder of the usual strength. A note of a batch lies at
//   x = ln V - drying (g - mean g) - ln sum(v d) - gamma (mean g - usual) - level - u
//       + sum(share * tool error),
// g the dry gum's share of the liquid's mass then, its mean that of the batch's notes, u what the
// whole batch has for itself; P(word <= j) = (1 - slips) F((c_j - x) / s) + slips j / 5, F the
// logistic (cumulative logit, McCullagh 1980, with a lapse rate as in psychometrics, Wichmann &
// Hill 2001), thresholds c = (-w - g1, -w, w, w + g4). ln d ~ normal(alpha + kappa + ln_oil, tau^2
// + q^2), u ~ normal(0, sigma_b^2 + shared^2), tool errors ~ normal(0, sd^2).
//
// A hand changes in time: batches of like age share a level, a random walk backwards from today's,
// which is 0, of `walk`^2 for each batch. Of gamma a batch tells by its mean alone; what drying
// does within it is as the prior has it.
//
// Batches are integrated over u by a sum over evenly spaced nodes, demands and tools by Laplace's
// approximation; the parameters theta are the posterior's mode with the inverse of its curvature.
#pragma once

#include "words/error.hpp"

#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace paint {

struct LearnPigment {
  double ln_oil = 0; // what its oil absorption lets expect of ln demand; -10 to 10
  double kappa = 0;  // what its class adds; -10 to 10
  double q = 0;      // sd of both beyond tau; to 10
  bool told = false; // by another studio: q is all of it, without tau

  bool operator==(const LearnPigment&) const = default;
};

struct LearnTool {
  double sd = 0; // of its calibration error, ln units; 0 to 10
};

struct LearnBatch {
  double shared_sd = 0; // what all its notes are off by in common, ln units; 0 to 10
};

// A batch while its pigments keep their proportions.
struct LearnSegment {
  int batch = 0;
  std::vector<std::pair<int, double>> pigments; // which, mL: 0 to 1e6, not all 0
};

// Dry gum's share of the mass of gum 1 : water 2 at 12 % moisture of the gum.
inline constexpr double usual_dry_gum = 0.293;
// A knife is less sure than a muller: the sd of a note under it, beside its own. Own choice.
inline constexpr double knife_sd = 0.10;

struct LearnNote {
  int segment = 0;
  double ln_mL = 0;                          // liquid there; -25 to 25
  double sd = 0;                             // of ln_mL, this note's own part; 0 to 10
  std::vector<std::pair<int, double>> tools; // which, its share of the liquid: -10 to 10
  int felt = 2;                              // 0 won't move, 2 right, 4 too runny
  double dry_gum = usual_dry_gum;            // its share of the liquid's mass then; 0 to 1

  bool operator==(const LearnNote&) const = default;
};

// At most 5,000 pigments and as many tools; at most 200 of either, and of segments, in one batch.
// A note that says the same as the one before it of its segment, all fields alike, counts once.
struct LearnProblem {
  std::vector<LearnPigment> pigments;
  std::vector<LearnTool> tools;
  std::vector<LearnBatch> batches;
  std::vector<LearnSegment> segments;
  std::vector<LearnNote> notes; // in the order they were felt
};

// ln w, ln g1, ln g4, ln s, ln tau, ln sigma_b, logit of slips.
enum ThetaPlace : std::size_t {
  at_half_width,
  at_sticky_reach,
  at_loose_reach,
  at_slope,
  at_pigment_sd,
  at_batch_sd,
  at_slips
};
inline constexpr std::size_t theta_count = 7;
using Theta = std::array<double, theta_count>;

// theta in plain numbers.
struct NoteModel {
  double half_width = 0.12, sticky_reach = 0.30, loose_reach = 0.25, slope = 0.06,
         pigment_sd = 0.25, batch_sd = 0.08, slips = 0.047;

  bool operator==(const NoteModel&) const = default;
};
NoteModel note_model_of(const Theta& theta, bool slips = true); // without: slips are 0

struct NormalPrior {
  double centre = 0;
  double sd = 1; // 0: held there
};

// Before a studio has notes of its own. Own choice, no measured source. Near the volume that fills
// all gaps a paste's viscosity goes with (1 - phi / phi_m)^-2 and rises fourfold in ln with each
// step of ln flow, so that a factor of 2.5 in viscosity, taken as right, is a band 0.23 wide; hands
// tell viscosities 25 to 30 % apart (from memory), which is a slope of 0.04 and more.
std::array<NormalPrior, theta_count> usual_theta();

// Of gamma: a solution's ln viscosity rises by 15.6 for each unit of dry gum's share, and falls by
// 4 with each unit of ln flow, which is 3.9; its sd is 40 %, which spans what gums of other kinds
// do. Of walk: own choice; a hand that drifts by 0.15 in 40 batches is followed, one that does not
// is still covered as promised.
struct LearnPriors {
  std::array<NormalPrior, theta_count> theta = usual_theta();
  NormalPrior alpha{0, 0.4};      // sd above 0
  bool slips = true;              // false: each note is meant as it was tapped
  NormalPrior strength{3.9, 1.6}; // gamma
  double drying = 3.9;            // gamma within a batch, -100 to 100
  double walk = 0.015;            // sd from one batch to the next, ln flow; 0 to 10
};

enum class LearnEnd { found, separated, no_convergence, no_peak };
words::Sentence sentence(LearnEnd end); // none where it was found

// One entry of a symmetric matrix, row >= column.
struct MatrixEntry {
  int row = 0, column = 0;
  double value = 0;
};

struct FittedPigment {
  LearnPigment facts;
  int at = -1;          // its place in z; -1: never felt
  double ln_demand = 0; // its mode; never felt: what the others let expect
  double sd = 0;        // of ln_demand, all uncertainties together
};

struct FittedTool {
  double sd = 0; // as it was known before
  int at = -1;   // -1: no note leans on it
  double error = 0;
};

// The result. z holds ln demands, alpha, tool errors, gamma, levels in places of their own.
struct RangeFit {
  LearnPriors priors;
  Theta theta{};
  std::array<Theta, theta_count> theta_covariance{}; // rows of what was held are 0
  int alpha_at = 0;
  int strength_at = -1; // gamma's; -1: it was held
  int levels_at = 0;    // of the first of them, the latest; the others follow to the end of z
  std::vector<double> z;
  std::vector<Theta> z_by_theta;       // how each of z moves with theta
  std::vector<MatrixEntry> precision;  // of z at theta, the lower half
  std::vector<FittedPigment> pigments; // as in the problem
  std::vector<FittedTool> tools;
  bool told = false;                             // another studio's word is in it (told.hpp)
  double told_share = 0;                         // how likely that word is, 0.5 to 1; without one 0
  std::shared_ptr<const RangeFit> own = nullptr; // without that word; null where there is none
  int batches = 0;                               // with notes
  int notes = 0;                                 // that counted
  double log_marginal = 0;                       // ln P(notes | theta)
  double log_posterior = 0;                      // with theta's prior density
  LearnEnd end = LearnEnd::found;
};

// The fit. `earlier`, if given, is where it starts: a result of fewer notes, pigments and tools
// numbered alike. Errors: learn_out_of_range, learn_not_there, learn_no_pigment. A result that did
// not end as found says so in `end`; its numbers are where it stopped.
words::Result<RangeFit> learn(const LearnProblem& problem, const LearnPriors& priors = {},
                              const RangeFit* earlier = nullptr);

// Modes of z and the marginal at a given theta, nothing sought. Errors as learn().
words::Result<RangeFit> fit_at(const LearnProblem& problem, const LearnPriors& priors,
                               const Theta& theta);

// What is wrong with a problem or its priors; absent where nothing is.
std::optional<words::Error> fault_of(const LearnProblem& problem, const LearnPriors& priors);

}
