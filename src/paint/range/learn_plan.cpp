#include "paint/range/learn_plan.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace paint::learning {

namespace {

// Notes that count: a tap repeated with nothing changed between counts once.
std::vector<const LearnNote*> counted(const LearnProblem& problem) {
  std::vector<const LearnNote*> notes, last(problem.segments.size());
  for (const LearnNote& note : problem.notes) {
    const LearnNote*& before = last[place(note.segment)];
    if (!before || !(*before == note)) notes.push_back(&note);
    before = &note;
  }
  return notes;
}

// Gives places to the pigments and tools that notes lean on.
void give_places(Plan& plan, const LearnProblem& problem,
                 const std::vector<const LearnNote*>& notes) {
  plan.pigment_at.assign(problem.pigments.size(), -1);
  plan.tool_at.assign(problem.tools.size(), -1);
  for (const LearnNote* note : notes) {
    for (const auto& [pigment, mL] : problem.segments[place(note->segment)].pigments)
      if (mL > 0) plan.pigment_at[place(pigment)] = 0;
    for (const auto& [tool, share] : note->tools)
      if (share != 0 && problem.tools[place(tool)].sd > 0) plan.tool_at[place(tool)] = 0;
  }
  for (std::size_t i = 0; i < problem.pigments.size(); ++i) {
    if (plan.pigment_at[i] < 0) continue;
    const LearnPigment& facts = problem.pigments[i];
    plan.pigment_at[i] = static_cast<int>(plan.demands.size());
    plan.demands.push_back({facts.ln_oil + facts.kappa, facts.q * facts.q, facts.told});
  }
  plan.alpha_at = static_cast<int>(plan.demands.size());
  for (std::size_t i = 0; i < problem.tools.size(); ++i) {
    if (plan.tool_at[i] < 0) continue;
    plan.tool_at[i] = plan.alpha_at + 1 + static_cast<int>(plan.tool_variances.size());
    plan.tool_variances.push_back(problem.tools[i].sd * problem.tools[i].sd);
  }
}

int local(std::vector<int>& at, int global) {
  const auto found = std::find(at.begin(), at.end(), global);
  if (found == at.end()) {
    at.push_back(global);
    return static_cast<int>(at.size()) - 1;
  }
  return static_cast<int>(found - at.begin());
}

PlanSegment segment_of(const Plan& plan, PlanBatch& batch, const LearnSegment& from) {
  std::map<int, double> mL; // by local place; a pigment named twice counts together
  for (const auto& [pigment, volume] : from.pigments)
    if (volume > 0) mL[local(batch.at, plan.pigment_at[place(pigment)])] += volume;
  PlanSegment segment;
  for (const auto& [at, volume] : mL) {
    segment.local.push_back(at);
    segment.ln_mL.push_back(std::log(volume));
  }
  return segment;
}

double mean_dry_gum(const std::vector<const LearnNote*>& notes) {
  double sum = 0;
  for (const LearnNote* note : notes) sum += note->dry_gum;
  return sum / static_cast<double>(notes.size());
}

// Directions of a batch: its segments, then its tools.
template <class Lift>
void place_notes(const Plan& plan, PlanBatch& batch, const std::vector<const LearnNote*>& notes,
                 const std::vector<int>& segments, Lift lift) {
  for (const LearnNote* note : notes) {
    PlanNote own;
    own.ln_mL = note->ln_mL - lift(*note);
    own.variance = 3 * note->sd * note->sd / (std::numbers::pi * std::numbers::pi);
    own.felt = note->felt;
    const auto found = std::find(segments.begin(), segments.end(), note->segment);
    own.moves.push_back({static_cast<int>(found - segments.begin()), -1});
    std::map<int, double> shares;
    for (const auto& [tool, share] : note->tools)
      if (plan.tool_at[place(tool)] >= 0 && share != 0)
        shares[local(batch.at, plan.tool_at[place(tool)])] += share;
    for (const auto& [at, share] : shares)
      own.moves.push_back({static_cast<int>(segments.size()) + at - batch.pigments, share});
    batch.notes.push_back(own);
  }
  batch.tools = static_cast<int>(batch.at.size()) - batch.pigments;
}

void give_batches(Plan& plan, const LearnProblem& problem, const LearnPriors& priors,
                  const std::vector<const LearnNote*>& notes) {
  std::vector<std::vector<const LearnNote*>> of(problem.batches.size());
  for (const LearnNote* note : notes)
    of[place(problem.segments[place(note->segment)].batch)].push_back(note);
  for (std::size_t b = 0; b < of.size(); ++b) {
    if (of[b].empty()) continue;
    PlanBatch batch;
    batch.shared_variance = problem.batches[b].shared_sd * problem.batches[b].shared_sd;
    std::vector<int> segments;
    for (const LearnNote* note : of[b]) local(segments, note->segment);
    for (const int s : segments)
      batch.segments.push_back(segment_of(plan, batch, problem.segments[place(s)]));
    batch.pigments = static_cast<int>(batch.at.size());
    const double mean = mean_dry_gum(of[b]), stronger = mean - usual_dry_gum;
    const double held = plan.strength_at < 0 ? priors.strength.centre * stronger : 0;
    place_notes(plan, batch, of[b], segments, [&](const LearnNote& note) {
      return priors.drying * (note.dry_gum - mean) + held;
    });
    if (plan.strength_at >= 0 && stronger != 0) {
      batch.at.push_back(plan.strength_at);
      batch.common.push_back(stronger);
    }
    plan.batches.push_back(std::move(batch));
  }
}

// Which level batches of this age share; -1: today's.
int level_of(int age) {
  const auto above = std::upper_bound(level_from.begin(), level_from.end(), age);
  return static_cast<int>(above - level_from.begin()) - 1;
}

// Groups of batches by age, their middles so far apart that the walk between them is known.
void give_levels(Plan& plan, double walk) {
  const int count = static_cast<int>(plan.batches.size());
  if (walk == 0) return;
  const auto middle = [&](std::size_t begin, std::size_t end) {
    return (static_cast<int>(begin) + std::min(static_cast<int>(end), count) - 1) / 2.0;
  };
  double before = middle(0, place(level_from[0]));
  for (std::size_t j = 0; j < level_from.size() && level_from[j] < count; ++j) {
    const double here =
        middle(place(level_from[j]),
               j + 1 < level_from.size() ? place(level_from[j + 1]) : plan.batches.size());
    plan.level_variances.push_back(walk * walk * (here - before));
    before = here;
  }
  for (int b = 0; b < count; ++b)
    if (const int level = level_of(count - 1 - b); level >= 0) {
      plan.batches[place(b)].at.push_back(plan.levels_at + level);
      plan.batches[place(b)].common.push_back(1);
    }
}

void mark(std::vector<Eigen::Triplet<double>>& marks, int a, int b) {
  marks.emplace_back(std::max(a, b), std::min(a, b), 0.0);
}

Eigen::Index entry(const Sparse& matrix, int a, int b) {
  const int* inner = matrix.innerIndexPtr();
  const int* outer = matrix.outerIndexPtr();
  const int row = std::max(a, b), column = std::min(a, b);
  return std::lower_bound(inner + outer[column], inner + outer[column + 1], row) - inner;
}

void give_pattern(Plan& plan) {
  std::vector<Eigen::Triplet<double>> marks;
  for (int k = 0; k < plan.size(); ++k) mark(marks, k, k);
  for (int k = 0; k < plan.alpha_at; ++k) mark(marks, k, plan.alpha_at);
  for (const PlanBatch& batch : plan.batches)
    for (std::size_t i = 0; i < batch.at.size(); ++i)
      for (std::size_t j = 0; j < i; ++j) mark(marks, batch.at[i], batch.at[j]);
  for (int k = plan.levels_at + 1; k < plan.size(); ++k) mark(marks, k, k - 1);
  plan.pattern.resize(plan.size(), plan.size());
  plan.pattern.setFromTriplets(marks.begin(), marks.end());
  plan.pattern.makeCompressed();

  for (PlanBatch& batch : plan.batches)
    for (std::size_t i = 0; i < batch.at.size(); ++i)
      for (std::size_t j = 0; j <= i; ++j)
        batch.entries.push_back(entry(plan.pattern, batch.at[i], batch.at[j]));
  for (int k = 0; k < plan.alpha_at; ++k) {
    plan.demands[place(k)].own = entry(plan.pattern, k, k);
    plan.demands[place(k)].with_alpha = entry(plan.pattern, k, plan.alpha_at);
  }
  plan.alpha_entry = entry(plan.pattern, plan.alpha_at, plan.alpha_at);
  for (std::size_t t = 0; t < plan.tool_variances.size(); ++t) {
    const int k = plan.alpha_at + 1 + static_cast<int>(t);
    plan.tool_entries.push_back(entry(plan.pattern, k, k));
  }
  if (plan.strength_at >= 0)
    plan.strength_entry = entry(plan.pattern, plan.strength_at, plan.strength_at);
  for (int k = plan.levels_at; k < plan.size(); ++k)
    for (const int other : {k, std::max(k - 1, plan.levels_at)})
      plan.level_entries.push_back(entry(plan.pattern, k, other));
}

void share_priors(Plan& plan) {
  std::vector<int> batches(place(plan.size()));
  for (const PlanBatch& batch : plan.batches)
    for (const int at : batch.at) ++batches[place(at)];
  for (PlanBatch& batch : plan.batches) {
    int busiest = 1;
    for (int i = 0; i < batch.pigments; ++i)
      busiest = std::max(busiest, batches[place(batch.at[place(i)])]);
    batch.share_of_prior = 0.5 / busiest;
  }
}

}

Plan plan_of(const LearnProblem& problem, const LearnPriors& priors) {
  const auto notes = counted(problem);
  Plan plan;
  plan.notes = static_cast<int>(notes.size());
  give_places(plan, problem, notes);
  plan.levels_at = plan.alpha_at + 1 + static_cast<int>(plan.tool_variances.size());
  if (priors.strength.sd > 0) plan.strength_at = plan.levels_at++;
  give_batches(plan, problem, priors, notes);
  give_levels(plan, priors.walk);
  give_pattern(plan);
  share_priors(plan);
  return plan;
}

}
