#include "paint/bottle.hpp"

#include "paint/measure.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double most_g = 100000;
constexpr double lost_drops_g = 3 * 0.05;
constexpr double lost_share = 0.15;
constexpr double contradiction = 4;

double variance_of(const Amount& a) { return covariance(a, a) + a.variance; }

Amount sum_of(const std::vector<Amount>& parts) {
  Amount sum;
  for (const Amount& part : parts) sum = sum + part;
  return sum;
}

std::optional<words::Error> fault_of_parts(const std::vector<Amount>& parts, const Amount& whole) {
  if (parts.empty()) return words::Error{Say::nothing_counted, {}};
  for (const Amount& part : parts)
    if (auto fault = fault_of(part)) return fault;
  return fault_of(whole);
}

// For each part, its covariance with the sum of all.
std::vector<double> covariances(const std::vector<Amount>& parts, const Amount& sum) {
  std::vector<double> out;
  for (const Amount& part : parts) out.push_back(covariance(part, sum) + part.variance);
  return out;
}

}

words::Result<Amount> weighed_difference(double before_g, double after_g,
                                         const std::string& weighing, double step_g) {
  for (double g : {before_g, after_g})
    if (auto fault = fault_of_count(g, most_g)) return tl::make_unexpected(*fault);
  const auto reading = grams_weighed(0, step_g);
  if (!reading) return reading;
  if (after_g > before_g)
    return words::failure(Say::bottle_gained, {words::Number(after_g - before_g, 1)});
  return Amount{before_g - after_g, 0, {{weighing, std::sqrt(2 * reading->variance)}}};
}

words::Result<Amount> lost_count(double counted_g) {
  if (!std::isfinite(counted_g))
    return words::failure(Say::not_a_number, {words::Number(counted_g, 1)});
  if (counted_g < 0) return words::failure(Say::negative_amount, {words::Number(counted_g, 1)});
  const double u = std::max(lost_drops_g, lost_share * counted_g);
  return Amount{0, u * u, {}};
}

words::Result<std::vector<Amount>> split(const Amount& weighed,
                                         const std::vector<Amount>& counted) {
  if (auto fault = fault_of_parts(counted, weighed)) return tl::make_unexpected(*fault);
  const Amount sum = sum_of(counted);
  std::vector<double> doing = covariances(counted, sum);
  double whole = variance_of(sum);
  if (!(whole > 0)) { // counted without a doubt: by size
    for (std::size_t i = 0; i < counted.size(); ++i) doing[i] = counted[i].value;
    whole = sum.value;
  }
  if (!(whole > 0)) return words::failure(Say::nothing_counted);
  std::vector<Amount> out;
  for (std::size_t i = 0; i < counted.size(); ++i) {
    const double k = doing[i] / whole;
    Amount part = scaled(weighed, k);
    part.value = counted[i].value + k * (weighed.value - sum.value);
    out.push_back(part);
  }
  return out;
}

words::Result<std::vector<Amount>> given_sum(const std::vector<Amount>& parts,
                                             const Amount& weighed, const std::string& weighing,
                                             const std::vector<Amount>& beside) {
  if (auto fault = fault_of_parts(parts, weighed)) return tl::make_unexpected(*fault);
  std::vector<Amount> named = parts; // own errors as shares: they are about to be common
  for (std::size_t i = 0; i < named.size(); ++i) {
    if (!(parts[i].variance > 0)) continue;
    named[i].variance = 0;
    named[i].shares[weighing + " of " + std::to_string(i)] = std::sqrt(parts[i].variance);
  }
  const Amount sum = sum_of(named);
  const Amount reading{weighed.value, 0, {{weighing, uncertainty(weighed)}}};
  const Amount off = reading - sum;
  const double spread = uncertainty(off);
  if (!(std::abs(off.value) <= contradiction * spread))
    return words::failure(Say::weighing_contradicts,
                          {words::Number(sum.value, 1), words::Number(weighed.value, 1)});
  named = spread > 0 ? named : parts;
  named.insert(named.end(), beside.begin(), beside.end());
  if (!(spread > 0)) return named;
  for (Amount& part : named) part = part + scaled(off, covariance(part, sum) / (spread * spread));
  return named;
}

}
