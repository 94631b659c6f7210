// A problem laid out for the solver: what is looked for in places of one vector z, notes by batch,
// the pattern of the second derivatives. Private to this folder.
#pragma once

#include "paint/range/learn.hpp"
#include "paint/range/learn_batch.hpp"

#include <Eigen/Sparse>

#include <array>
#include <vector>

namespace paint::learning {

using Sparse = Eigen::SparseMatrix<double>;

inline std::size_t place(int i) { return static_cast<std::size_t>(i); }

struct PlanSegment {
  std::vector<int> local; // which of the batch's own places each pigment is
  std::vector<double> ln_mL;
};

struct PlanNote {
  int felt = 0;
  std::vector<NoteShare> moves;
  double ln_mL = 0;    // as it would feel at the batch's mean strength
  double variance = 0; // 3 sd^2 / pi^2, the note's own
};

struct PlanBatch {
  double shared_variance = 0;
  double share_of_prior = 0;   // half, over the batches of its busiest pigment
  std::vector<int> at;         // places in z: pigments, tools, what moves every demand
  int pigments = 0, tools = 0; // of them
  std::vector<double> common;  // by how much each of the last moves every demand
  std::vector<PlanSegment> segments;
  std::vector<PlanNote> notes;

  int directions() const { return static_cast<int>(segments.size()) + tools; } // segments, tools
  double lifted(const Eigen::VectorXd& z) const { // every demand, by what is common
    double sum = 0;
    for (std::size_t c = 0; c < common.size(); ++c)
      sum += common[c] * z[at[static_cast<std::size_t>(pigments + tools) + c]];
    return sum;
  }
  int tool_at(int direction) const {
    return at[static_cast<std::size_t>(pigments + direction) - segments.size()];
  }
  std::vector<Eigen::Index> entries; // of the pairs of places (i >= j, row by row) in the matrix
};

struct PlanNormal { // ln d ~ normal(alpha + offset, tau^2 + own_variance), told: without tau
  double offset = 0;
  double own_variance = 0;
  bool told = false;
  Eigen::Index own = 0, with_alpha = 0; // entries in the matrix
};

// Batches of like age, 0 the latest, share a level; the youngest have none, being today.
inline constexpr std::array<int, 10> level_from{4, 8, 12, 16, 20, 28, 36, 48, 64, 96};

struct Plan {
  std::vector<int> pigment_at, tool_at; // by the problem's numbers; -1: no note leans on it
  std::vector<PlanNormal> demands;      // z begins with them
  int alpha_at = 0;
  Eigen::Index alpha_entry = 0;
  std::vector<double> tool_variances; // then z has them
  std::vector<Eigen::Index> tool_entries;
  int strength_at = -1;
  Eigen::Index strength_entry = 0;
  int levels_at = 0;                       // z ends with them
  std::vector<double> level_variances;     // of each step back from the level before
  std::vector<Eigen::Index> level_entries; // own, then with the level before; the first has none
  std::vector<PlanBatch> batches;
  int notes = 0;
  Sparse pattern; // lower half of minus the second derivatives, in order, all entries 0

  int size() const { return levels_at + static_cast<int>(level_variances.size()); }
};

// Of a problem and priors without faults.
Plan plan_of(const LearnProblem& problem, const LearnPriors& priors);

}
