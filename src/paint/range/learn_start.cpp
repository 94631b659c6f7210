#include "paint/range/learn_start.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace paint::learning {

namespace {

constexpr double near_enough = 0.5; // ln flow: the search finds its way from there

// The middle of each word, ln flow from the middle of right.
std::array<double, 5> middles(const NoteModel& h) {
  const double w = h.half_width;
  return {-w - 1.5 * h.sticky_reach, -w - h.sticky_reach / 2, 0, w + h.loose_reach / 2,
          w + 1.5 * h.loose_reach};
}

double wanted(const PlanBatch& batch, const PlanSegment& segment, const Eigen::VectorXd& z) {
  double sum = 0;
  for (std::size_t k = 0; k < segment.local.size(); ++k)
    sum += std::exp(segment.ln_mL[k] + z[batch.at[static_cast<std::size_t>(segment.local[k])]]);
  return std::log(sum) + batch.lifted(z);
}

double median(std::vector<double>& of) {
  const auto middle = of.begin() + static_cast<std::ptrdiff_t>(of.size() / 2);
  std::nth_element(of.begin(), middle, of.end());
  return *middle;
}

}

Eigen::VectorXd start_near_notes(const Plan& plan, const NoteModel& hand, Eigen::VectorXd z) {
  const std::array<double, 5> word = middles(hand);
  std::vector<std::vector<double>> said(plan.demands.size()); // of each demand
  for (const PlanBatch& batch : plan.batches)
    for (const PlanNote& note : batch.notes) {
      const PlanSegment& segment =
          batch.segments[static_cast<std::size_t>(note.moves[0].direction)];
      // A blend's pigments move together.
      const double off =
          note.ln_mL - word[static_cast<std::size_t>(note.felt)] - wanted(batch, segment, z);
      for (const int local : segment.local) {
        const int at = batch.at[static_cast<std::size_t>(local)];
        said[static_cast<std::size_t>(at)].push_back(z[at] + off);
      }
    }
  for (std::size_t k = 0; k < said.size(); ++k) {
    if (said[k].empty()) continue;
    const double there = median(said[k]);
    double& from = z[static_cast<Eigen::Index>(k)];
    if (std::isfinite(there) && std::abs(there - from) > near_enough) from = there;
  }
  return z;
}

}
