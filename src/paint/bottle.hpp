// Weighings that tell afterwards what counting could not: a bottle before and after, and the jar of
// finished paint.
#pragma once

#include "paint/amount.hpp"
#include "words/error.hpp"

#include <string>
#include <vector>

namespace paint {

// What left a bottle, or what fills a jar: the heavier weighing less the lighter, in g. Its whole
// uncertainty, two readings uniform in step_g, is a share under the name `weighing`, so that all
// that was in between can share it.
// Errors: those of grams_weighed, but up to 100,000 g; bottle_gained where the second is heavier.
words::Result<Amount> weighed_difference(double before_g, double after_g,
                                         const std::string& weighing, double step_g = 0.1);

// A count was lost: nothing is added, and what was put in may be wrong by 3 drops, or by 15 % of
// what had been counted, whichever is more (standard uncertainty; our own choice, no source).
// Errors: not_a_number, negative_amount.
words::Result<Amount> lost_count(double counted_g);

// Everything counted between two weighings of its bottle weighs together what the bottle lost. The
// difference from the count goes to each by how much of the count's uncertainty is its own doing,
// k = cov(x, sum) / var(sum), so that a lost count takes what the drops cannot explain. Each then
// carries its part of the weighing's uncertainty and no other: the sum is right, how it is split
// among handfuls of the same liquid is not told apart.
// Errors: not_a_number; nothing_counted where there is nothing to split among.
words::Result<std::vector<Amount>> split(const Amount& weighed, const std::vector<Amount>& counted);

// The parts as they are once their sum was weighed: generalised least squares, with C the
// covariance of the parts, S = var(sum), r = var(weighed) and k = C 1 / (S + r),
//   x' = x + k (weighed - sum),  C' = C - k k^T (S + r)     (GUM 5.2 propagated through it).
// A part may be negative: water that has left, paint that stayed on the tools. An own error of one
// part is in all of them afterwards, so it becomes a share named `weighing` + " of " + its number.
// Weighings are independent of the parts: none may have been used for them before.
// What lies beside them and shares their errors by name is known better too: it follows the parts
// in what comes back, moved by k = cov(x, sum) / (S + r). Errors: not_a_number; nothing_counted for
// no parts; weighing_contradicts where the two differ by more than 4 standard uncertainties (our
// own choice): something was not recorded.
words::Result<std::vector<Amount>> given_sum(const std::vector<Amount>& parts,
                                             const Amount& weighed, const std::string& weighing,
                                             const std::vector<Amount>& beside = {});

}
