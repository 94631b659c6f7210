// Whether paint that flows right is smooth too: the two are not the same.
#pragma once

#include "paint/drying.hpp"
#include "paint/mull_time.hpp"
#include "session/batch.hpp"

#include <optional>

namespace bench {

// Mulling that a paint likely takes: one in ten takes less than low, one in ten more than high.
struct MullingNeeded {
  paint::Interval minutes;
  paint::Interval passes; // whole ones; of the length that this studio's have
  int batches = 0;        // of this studio that it rests on; 0: on what is usual
};

bool is_added(const session::Batch& batch, const session::Entry& entry, session::CardKind kind);
bool is_pigment(const session::Batch& batch, const session::Entry& entry); // one was added

// What there is to go by.
struct SmoothState {
  std::optional<session::Specks> dot; // the last one, of all the pigment that is there
  int passes = 0;                     // of mulling, by their minutes where one was long
  bool mulled_since_dot = false;      // a pass, or as long
  bool mulled = true;                 // such paint is; flakes are not, they would break
  bool often_coarse = false;          // such pigments have grains that no muller breaks
  int same_specks = 0;                // dots in a row, none with fewer, mulled between them
  std::optional<MullingNeeded> left;  // until a dot shows no specks, while that is learnt
};
SmoothState smooth_state(const session::Batch& batch, const std::optional<MullingNeeded>& left = {},
                         double pass_s = paint::usual_pass_s);

enum class Smoothness { smooth, keep_mulling, not_looked };

// By the last dot, until a pass was made since; without one by what was learnt, and in the first
// pass no paint is.
Smoothness smoothness(const SmoothState& state);
// Whether mulling on as before still helps.
enum class SpecksStay {
  no,
  in_portions, // they grow no fewer: less at a time lies under the muller
  coarse,      // nor so, or for longer than this paint takes as a rule: grains of the pigment
  as_it_is     // not even in portions: no more is to be had of it
};
SpecksStay specks_stay(const SmoothState& state);
bool is_often_coarse(paint::PigmentClass family); // of grains that no muller breaks

// Mulled, and the last dot had specks, or without one what was learnt asks for more.
bool is_known_rough(const SmoothState& state);

}
