// Ordered words explained by numbers: the cumulative logit model (McCullagh 1980, J. R. Stat. Soc.
// B 42:109), P(word <= j) = F(threshold_j - slopes . x), F the logistic, with effects of groups
// that are drawn from normal distributions and integrated out by Laplace's approximation. The
// general form of what learn.hpp does for paint; flat priors.
#pragma once

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace ordinal {

template <class T>
using Result = tl::expected<T, std::string>; // what cannot be, for whoever reads a failed test

struct OrdinalRow {
  int word = 0;            // 0 to words - 1
  std::vector<double> x;   // as many in each row; finite
  std::vector<int> groups; // for each factor the group that the row belongs to
};

struct OrdinalData {
  int words = 5;                  // 2 or more; each must have been said at least once
  std::vector<int> factor_groups; // how many groups each factor has; empty: fixed effects only
  std::vector<OrdinalRow> rows;
};

struct OrdinalParameters {
  std::vector<double> thresholds; // words - 1, rising
  std::vector<double> slopes;
  std::vector<double> sds; // of each factor's effects, above 0
};

enum class OrdinalEnd { found, separated, no_convergence, no_peak };

struct OrdinalFit {
  OrdinalParameters at;
  std::vector<double> standard_errors;      // thresholds, then slopes; of fixed effects only
  std::vector<std::vector<double>> effects; // factor by factor, the mode of each group's
  double log_likelihood = 0;
  OrdinalEnd end = OrdinalEnd::found; // separated: a slope runs away, since x parts the words
};

// The most likely parameters. Errors: "row N" (none, of another length, a word or group out of
// range), "not a number", "word N is never said".
Result<OrdinalFit> fit_ordinal(const OrdinalData& data);

// ln likelihood at given parameters, and the effects' modes there. Errors: as above, and
// "parameters".
Result<OrdinalFit> ordinal_at(const OrdinalData& data, const OrdinalParameters& parameters);

}
