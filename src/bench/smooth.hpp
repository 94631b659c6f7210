// Whether paint that flows right is smooth too: the two are not the same.
#pragma once

#include "paint/drying.hpp"
#include "session/batch.hpp"

#include <optional>

namespace bench {

// Mulling that this paint likely still takes until a dot shows no specks, as the studio has learnt.
struct MullingLeft {
  paint::Interval minutes;
  paint::Interval passes;
};

// What there is to go by.
struct SmoothState {
  std::optional<session::Specks> dot; // the last one, of all the pigment that is there
  int passes = 0;                     // of mulling that have ended
  bool mulled = true;                 // such paint is; flakes are not, they would break
  std::optional<MullingLeft> left;    // while that is learnt
};
SmoothState smooth_state(const session::Batch& batch, const std::optional<MullingLeft>& left = {});

enum class Smoothness { smooth, keep_mulling, not_looked };

// By the last dot; without one by what was learnt, and in the first pass no paint is.
Smoothness smoothness(const SmoothState& state);

}
