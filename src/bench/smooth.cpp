#include "bench/smooth.hpp"

#include <algorithm>

namespace bench {

bool is_added(const session::Batch& batch, const session::Entry& entry, session::CardKind kind) {
  const auto* added = std::get_if<session::Added>(&entry.event);
  const auto card = added ? batch.cards.find(added->of) : batch.cards.end();
  return card != batch.cards.end() && card->second.kind() == kind;
}

bool is_pigment(const session::Batch& batch, const session::Entry& entry) {
  return is_added(batch, entry, session::CardKind::pigment);
}

namespace {

// The last one; one from before the last pigment says nothing of that.
const session::Entry* dot_of(const session::Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::Dot>(e->event)) return &*e;
    if (is_pigment(batch, *e)) return nullptr;
  }
  return nullptr;
}

double mulled_s(const session::Batch& batch, session::Clock from, session::Clock to) {
  double seconds = 0;
  for (const session::Pass& pass : batch.passes)
    if (pass.stage == session::Stage::mulling)
      seconds +=
          std::max(0.0, std::min(pass.end.value_or(batch.clock), to) - std::max(pass.start, from));
  return seconds;
}

// From the last one back; a look twice at the same paint is one.
int same_specks(const session::Batch& batch) {
  constexpr double least_s = 60; // of mulling between two dots: own choice
  const session::Entry* later = nullptr;
  int same = 0;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (is_pigment(batch, *e)) break;
    const auto* dot = std::get_if<session::Dot>(&e->event);
    if (!dot) continue;
    if (dot->specks == session::Specks::none) break;
    if (later && mulled_s(batch, e->clock, later->clock) < least_s) continue;
    if (later && std::get<session::Dot>(later->event).specks > dot->specks) break; // fewer
    later = &*e;
    ++same;
  }
  return same;
}

// Those that have ended, or as many as their minutes make.
int passes_since(const session::Batch& batch, session::Clock since, double pass_s) {
  constexpr double nearly_whole = 0.25;
  double seconds = 0;
  int ended = 0;
  for (const session::Pass& pass : batch.passes) {
    if (pass.stage != session::Stage::mulling) continue;
    seconds += std::max(0.0, pass.end.value_or(batch.clock) - std::max(pass.start, since));
    if (pass.end && pass.start >= since) ++ended;
  }
  return std::max(ended, static_cast<int>(seconds / pass_s + nearly_whole));
}

}

SmoothState smooth_state(const session::Batch& batch, const std::optional<MullingNeeded>& left,
                         double pass_s) {
  SmoothState state;
  if (const session::Entry* dot = dot_of(batch)) {
    state.dot = std::get<session::Dot>(dot->event).specks;
    state.mulled_since_dot = passes_since(batch, dot->clock, pass_s) > 0;
  }
  state.passes = passes_since(batch, 0, pass_s);
  state.mulled = session::family_of(batch) != paint::PigmentClass::effect;
  state.often_coarse = is_often_coarse(session::family_of(batch));
  if (left && left->batches > 0)
    state.left = left; // as its kind does, it may well be smooth before
  state.same_specks = same_specks(batch);
  return state;
}

Smoothness smoothness(const SmoothState& state) {
  if (!state.mulled || state.dot == session::Specks::none) return Smoothness::smooth;
  const bool takes_longer = state.left && state.left->passes.middle >= 1;
  if (state.passes == 0 || takes_longer) return Smoothness::keep_mulling;
  return state.dot && !state.mulled_since_dot ? Smoothness::keep_mulling : Smoothness::not_looked;
}

// Ground earths and stones, and what nobody knows; others are made fine, and clump (common
// practice, no source).
bool is_often_coarse(paint::PigmentClass family) {
  return family == paint::PigmentClass::mineral || family == paint::PigmentClass::extender ||
         family == paint::PigmentClass::unknown;
}

SpecksStay specks_stay(const SmoothState& state) {
  const bool takes_longer = state.left && state.left->passes.middle >= 1;
  if (!state.mulled || state.same_specks < 2 || takes_longer) return SpecksStay::no;
  constexpr int many_looks = 4; // own choice: by then most paints are smooth
  const bool too_long = state.left || state.same_specks >= many_looks;
  if (!too_long) return SpecksStay::in_portions;
  if (state.often_coarse) return SpecksStay::coarse;
  return state.same_specks < many_looks ? SpecksStay::in_portions : SpecksStay::as_it_is;
}

bool is_known_rough(const SmoothState& state) {
  if (!state.mulled || state.dot == session::Specks::none) return false;
  return state.dot || smoothness(state) == Smoothness::keep_mulling;
}

}
