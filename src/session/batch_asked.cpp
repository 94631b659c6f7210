// What is asked of a batch once it is folded.
#include "session/batch.hpp"

#include <algorithm>

namespace session {

double seconds_of(const Batch& batch, Stage stage) {
  double sum = 0;
  for (const Pass& p : batch.passes)
    if (p.stage == stage) sum += p.end.value_or(batch.clock) - p.start;
  return sum;
}

const Pass* running(const Batch& batch) {
  const bool runs = !batch.passes.empty() && !batch.passes.back().end;
  return runs ? &batch.passes.back() : nullptr;
}

namespace {
template <class E>
const E* last_standing(const Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (const E* found = std::get_if<E>(&e->event); found && !e->withdrawn) return found;
  return nullptr;
}
}

std::optional<Specks> last_dot(const Batch& batch) {
  const auto* dot = last_standing<Dot>(batch);
  return dot ? std::optional(dot->specks) : std::nullopt;
}

std::optional<TroubleKind> last_trouble(const Batch& batch) {
  const auto* trouble = last_standing<Trouble>(batch);
  return trouble ? std::optional(trouble->what) : std::nullopt;
}

std::vector<BatchPigment> pigments(const Batch& batch) {
  std::vector<BatchPigment> out;
  double sum = 0;
  for (const Total& t : batch.totals) {
    if (t.card.is_a != CardKind::pigment || t.grams.value <= 0) continue;
    out.push_back({&t.card, t.grams.value / t.card.pigment.g_per_mL});
    sum += out.back().volume_share;
  }
  for (BatchPigment& p : out) p.volume_share /= sum;
  return out;
}

paint::PigmentClass family_of(const Batch& batch) {
  const auto all = pigments(batch);
  const auto largest = std::max_element(
      all.begin(), all.end(), [](auto& a, auto& b) { return a.volume_share < b.volume_share; });
  return largest == all.end() ? paint::PigmentClass::unknown : largest->card->pigment.family;
}

}
