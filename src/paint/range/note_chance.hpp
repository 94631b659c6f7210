// The chance of one word in a cumulative logit, as a logarithm that neither overflows nor cancels,
// with its derivatives. Shared by all that is learnt or guessed of a range.
#pragma once

#include <cmath>
#include <limits>

namespace paint {

inline constexpr double infinite = std::numeric_limits<double>::infinity();

inline double logistic(double x) { return 1 / (1 + std::exp(-x)); }

inline double ln_logistic(double x) {
  return x > 0 ? -std::log1p(std::exp(-x)) : x - std::log1p(std::exp(x));
}

// P(word) = F(above) - F(below): ends of the word's interval, in slopes. Infinite where the word is
// the first or the last. Written as F(above) F(-below) (1 - exp(below - above)).
struct WordChance {
  double ln_p = 0;
  double by_above = 0, by_below = 0; // derivatives of ln_p
  double by_above_2 = 0, by_below_2 = 0, by_both = 0;
};

inline WordChance word_chance(double below, double above) {
  const double f_above = logistic(above), f_below = logistic(below);
  WordChance w{.ln_p = ln_logistic(above) + ln_logistic(-below),
               .by_above = logistic(-above),
               .by_below = -f_below,
               .by_above_2 = -f_above * logistic(-above),
               .by_below_2 = -f_below * logistic(-below)};
  const double width = above - below;
  if (std::isinf(width)) return w;
  const double q = 1 / std::expm1(width);
  w.ln_p += std::log(-std::expm1(-width));
  w.by_above += q;
  w.by_below -= q;
  w.by_above_2 -= q * (1 + q);
  w.by_below_2 -= q * (1 + q);
  w.by_both = q * (1 + q);
  return w;
}

}
