// What one studio has learnt, for another to begin from: a small file, asked for and never sent.
// How it looks stands in TOLD.md beside this file.
//
// Read, it is a prior whose variances are doubled, and widened by what two studios differ by: their
// hands, and the lots of a pigment. Where this studio's own notes speak against it, what they say
// by themselves stands (learn_told).
#pragma once

#include "paint/range/predict.hpp"

#include <string>
#include <string_view>

namespace paint {

struct ToldRange {
  std::vector<std::string> pigments; // by their names in the catalogue, each once
  std::vector<double> ln_demands;    // of each
  std::vector<double> covariance;    // of them, the lower half row by row
  NormalPrior class_offset;          // alpha
  NormalPrior strength;
  std::array<NormalPrior, theta_count> hand;
  int batches = 0, notes = 0; // that it rests on
  std::string from = {};      // of which studio, as a random number; empty: not said
};

// Of the same studio, from fewer of its batches: it would take the place of a newer word.
bool is_older(const ToldRange& told, const ToldRange& than);

inline std::size_t covariance_entry(std::size_t row, std::size_t column) {
  return row * (row + 1) / 2 + column;
}

inline constexpr std::size_t most_told_bytes = 48'000; // a file's; a session's line holds it

std::string bytes_of(const ToldRange& told);
// Errors: told_too_large, told_not_json, told_field_twice, told_format, told_version, told_field
// (missing, or no number, list or text, or `from` no twelve digits), told_out_of_range,
// told_unknown_pigment, told_twice, told_row (a covariance's row too long or too short),
// told_not_positive (the covariance is of nothing).
words::Result<ToldRange> told_from(std::string_view bytes);

// Well written, and not of any paint: a demand, or that of all classes, beyond five times what is
// expected, or below a fifth of it (own choice: some three sds of what studios and pigments of a
// class differ by); or a strength beyond three sds of what gums of all kinds do, or known for
// certain; or a hand beyond five sds of what hands are (own choice); or of no batch. Asked before
// it is kept; what was kept earlier stays readable. told_implausible, told_implausible_offset,
// told_implausible_strength, told_certain_strength, told_no_hand.
std::optional<words::Error> implausible(const ToldRange& told);

// Of the pigments that were felt and have a name; what has none is left out. No pigment: none. Each
// variance is wider by 2e-6 for each pigment, so that what is rounded for a file stays a
// covariance.
ToldRange told_by(const RangeFit& fit, const std::vector<std::string>& names);

// A problem's pigments and priors as another studio's word lets expect them.
struct ToldVariant {
  std::vector<LearnPigment> pigments;
  LearnPriors priors;
};
LearnPriors priors_told(const ToldRange& told);
// `name` in the catalogue: a pigment that was told of; else what is usual, by that studio's offset.
LearnPigment facts_told(const ToldRange& told, const LearnPigment& usual, const std::string& name);

// learn() with that word and without; the one that explains the notes better, the word being
// nine times as likely beforehand (own choice). That with the word has the other beside it, for
// predict_told. Errors: those of learn().
words::Result<RangeFit> learn_told(const LearnProblem& problem, const ToldVariant& told,
                                   const RangeFit* earlier = nullptr);

// predict() by that word and by the studio's own notes, each as far as it is likely. `own`: the
// batch with its facts as they are usual. Errors: those of predict().
words::Result<Prediction> predict_told(const RangeFit& fit, const PredictBatch& batch,
                                       const PredictBatch& own);

}
