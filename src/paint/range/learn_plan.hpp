// A problem laid out for the solver: what is looked for in places of one vector z, notes by batch,
// the pattern of the second derivatives. Private to learn*.cpp.
#pragma once

#include "paint/range/learn.hpp"
#include "paint/range/learn_batch.hpp"

#include <Eigen/Sparse>

#include <vector>

namespace paint::learning {

using Sparse = Eigen::SparseMatrix<double>;

struct PlanSegment {
  std::vector<int> local; // which of the batch's own places each pigment is
  std::vector<double> ln_mL;
};

struct PlanNote {
  int felt = 0;
  std::vector<NoteShare> moves;
  double ln_mL = 0;
  double variance = 0; // 3 sd^2 / pi^2, the note's own
};

struct PlanBatch {
  double shared_variance = 0;
  double share_of_prior = 0; // half, over the batches of its busiest pigment
  std::vector<int> at;       // places in z: pigments, then tools
  int pigments = 0;          // of them
  std::vector<PlanSegment> segments;
  std::vector<PlanNote> notes;

  int directions() const { // segments, then tools
    return static_cast<int>(segments.size() + at.size()) - pigments;
  }
  int tool_at(int direction) const {
    return at[static_cast<std::size_t>(pigments + direction) - segments.size()];
  }
  std::vector<Eigen::Index> entries; // of the pairs of places (i >= j, row by row) in the matrix
};

struct PlanNormal { // ln d ~ normal(alpha + offset, tau^2 + own_variance)
  double offset = 0;
  double own_variance = 0;
  Eigen::Index own = 0, with_alpha = 0; // entries in the matrix
};

struct Plan {
  std::vector<int> pigment_at, tool_at; // by the problem's numbers; -1: no note leans on it
  std::vector<PlanNormal> demands;      // z begins with them
  int alpha_at = 0;
  Eigen::Index alpha_entry = 0;
  std::vector<double> tool_variances; // z ends with them
  std::vector<Eigen::Index> tool_entries;
  std::vector<PlanBatch> batches;
  int notes = 0;
  Sparse pattern; // lower half of minus the second derivatives, in order, all entries 0

  int size() const { return alpha_at + 1 + static_cast<int>(tool_variances.size()); }
};

// Of a problem without faults.
Plan plan_of(const LearnProblem& problem);

}
