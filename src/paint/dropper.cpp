#include "paint/dropper.hpp"

#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

words::Result<Dropper> checked(Dropper dropper) {
  const double mL = dropper.mL_per_drop;
  if (mL >= 0.003 && mL <= 0.3 && std::isfinite(dropper.mL_per_drop_u)) return dropper;
  return words::failure(Say::drop_out_of_range);
}

// Variance of one drop as the weighings show it among themselves: 0 for a single one.
double scatter(const std::vector<DropsWeighed>& weighed, double mean) {
  if (weighed.size() < 2) return 0;
  double sum = 0;
  for (const DropsWeighed& w : weighed) {
    const double off = w.g / w.drops - mean;
    sum += w.drops * off * off;
  }
  return sum / static_cast<double>(weighed.size() - 1);
}

}

words::Result<Dropper> calibrated(const std::string& tool, const std::vector<DropsWeighed>& weighed,
                                  double step_g, const Material& with) {
  if (weighed.empty()) return words::failure(Say::nothing_counted);
  double drops = 0, g = 0, scale = 0;
  for (const DropsWeighed& w : weighed) {
    if (auto fault = fault_of_count(w.drops, most_drops)) return tl::make_unexpected(*fault);
    if (!(w.drops > 0)) return words::failure(Say::nothing_counted);
    const auto net = grams_weighed(w.g, step_g);
    if (!net) return tl::make_unexpected(net.error());
    drops += w.drops;
    g += w.g;
    scale += 2 * net->variance; // full less empty
  }
  const double density = g_per_mL(with);
  if (!(density > 0)) return words::failure(Say::density_not_known);
  const double mean = g / drops;
  const double own = own_of_drop * mean;
  const double variance = std::max(scatter(weighed, mean), own * own) / drops;
  const double u = std::sqrt(variance + scale / (drops * drops));
  return checked({tool, mean / density, u / density, with.kind});
}

words::Result<Dropper> recalibrated(const Dropper& before, double drops, const Material& of,
                                    const Amount& grams) {
  if (auto fault = fault_of(grams)) return tl::make_unexpected(*fault);
  const auto expected = grams_of_drops(drops, before, of);
  if (!expected) return tl::make_unexpected(expected.error());
  if (!(drops > 0)) return words::failure(Say::nothing_counted);
  const double each = drops * g_per_mL(of);
  // What the drops scatter of their own is in the finding, not in what was believed before.
  const double believed = uncertainty(*expected);
  const double prior_variance = believed * believed - expected->variance;
  const double found = uncertainty(grams);
  const double found_variance = found * found + expected->variance;
  const double weight = prior_variance / (prior_variance + found_variance);
  const double total = expected->value + weight * (grams.value - expected->value);
  const double u = std::sqrt(weight * found_variance);
  return checked({before.tool, total / each, u / each, of.kind});
}

}
