#include "session/narrowing.hpp"

#include <algorithm>

namespace session {

namespace {

bool felt(const TrainingBatch& training, const std::string& card) {
  return training.pigments.count(card) > 0 && has_training_notes(training);
}

bool before(const TrainingBatch* a, const TrainingBatch* b) {
  return std::tie(a->opened_at, a->batch) < std::tie(b->opened_at, b->batch);
}

std::optional<paint::LnSpread> demand_from(const Ranges& today,
                                           const std::vector<const TrainingBatch*>& training,
                                           const Card& pigment) {
  RangeProblem asked = range_problem(training);
  auto fit = paint::fit_at(asked.problem, today.fit.priors, today.fit.theta);
  if (!fit || fit->end != paint::LearnEnd::found) return std::nullopt;
  return demand_in({*std::move(fit), std::move(asked.names)}, pigment);
}

}

std::vector<Narrowed> narrowing(const Ranges& ranges, const std::vector<const TrainingBatch*>& all,
                                const Card& pigment, std::size_t most) {
  std::vector<const TrainingBatch*> others, own;
  for (const TrainingBatch* training : all)
    (felt(*training, pigment.id) ? own : others).push_back(training);
  std::sort(own.begin(), own.end(), before);
  std::vector<Narrowed> out;
  if (own.empty()) return out;
  const std::size_t first = own.size() > most ? own.size() - most : 0;
  for (std::size_t known = first; known <= own.size(); ++known) {
    std::vector<const TrainingBatch*> training = others;
    training.insert(training.end(), own.begin(), own.begin() + static_cast<std::ptrdiff_t>(known));
    const auto demand =
        known == own.size() ? demand_in(ranges, pigment) : demand_from(ranges, training, pigment);
    if (demand) out.push_back({known == 0 ? nullptr : own[known - 1], *demand});
  }
  return out;
}

}
