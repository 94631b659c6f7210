#include "bench/smooth.hpp"

#include <algorithm>

namespace bench {

namespace {

bool is_pigment(const session::Batch& batch, const session::Added& added) {
  const auto card = batch.cards.find(added.of);
  return card != batch.cards.end() && card->second.kind() == session::CardKind::pigment;
}

// A dot from before the last pigment says nothing of that.
std::optional<session::Specks> dot_of(const session::Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (const auto* dot = std::get_if<session::Dot>(&e->event)) return dot->specks;
    if (const auto* added = std::get_if<session::Added>(&e->event);
        added && is_pigment(batch, *added))
      return std::nullopt;
  }
  return std::nullopt;
}

}

SmoothState smooth_state(const session::Batch& batch, const std::optional<MullingNeeded>& left) {
  SmoothState state;
  state.dot = dot_of(batch);
  state.passes = static_cast<int>(
      std::count_if(batch.passes.begin(), batch.passes.end(), [](const session::Pass& pass) {
        return pass.stage == session::Stage::mulling && pass.end;
      }));
  state.mulled = session::family_of(batch) != paint::PigmentClass::effect;
  state.left = left;
  return state;
}

Smoothness smoothness(const SmoothState& state) {
  if (!state.mulled || state.dot == session::Specks::none) return Smoothness::smooth;
  if (state.dot || state.passes == 0) return Smoothness::keep_mulling;
  const bool takes_longer = state.left && state.left->passes.middle >= 1;
  return takes_longer ? Smoothness::keep_mulling : Smoothness::not_looked;
}

}
