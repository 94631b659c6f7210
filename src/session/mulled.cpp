#include "session/mulled.hpp"

#include <algorithm>

namespace session {

namespace {

constexpr Clock forgotten_s = 3600;
constexpr double seen = 0.05; // of the pigments' volume

bool is_over_an_hour(const Pass& pass, Clock now) {
  return pass.end.value_or(now) - pass.start > forgotten_s;
}

double minutes_between(const Batch& batch, Clock from, Clock to) {
  Clock sum = 0;
  for (const Pass& pass : batch.passes)
    if (pass.stage == Stage::mulling)
      sum +=
          std::max(0.0, std::min(to, pass.end.value_or(batch.clock)) - std::max(from, pass.start));
  return sum / 60;
}

bool adds_pigment(const Batch& batch, const Entry& e) {
  const auto* added = std::get_if<Added>(&e.event);
  if (!added || e.withdrawn || !e.grams || !(e.grams->value > 0)) return false;
  const auto card = batch.cards.find(added->of);
  return card != batch.cards.end() && card->second.kind() == CardKind::pigment;
}

Clock last_pigment(const Batch& batch) {
  Clock at = 0;
  for (const Entry& e : batch.entries)
    if (adds_pigment(batch, e)) at = std::max(at, e.clock);
  return at;
}

// From where on nobody knows how long it was mulled.
Clock first_forgotten(const Batch& batch) {
  for (const Pass& pass : batch.passes)
    if (pass.stage == Stage::mulling && is_over_an_hour(pass, batch.clock)) return pass.start;
  return batch.clock;
}

std::vector<MulledPigment> pigments_seen(const Batch& batch) {
  std::vector<MulledPigment> out;
  const bool of_others = std::any_of(batch.totals.begin(), batch.totals.end(), [](const Total& t) {
    return t.card.kind() == CardKind::paint && t.grams.value > 0;
  });
  if (of_others) return out;
  for (const BatchPigment& p : pigments(batch))
    if (p.volume_share >= seen) out.push_back({p.card->id, pigment_of(*p.card).pigment.family});
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.card < b.card; });
  return out;
}

paint::SpeckWord word_of(Specks specks) {
  switch (specks) {
  case Specks::many: return paint::SpeckWord::many;
  case Specks::few: return paint::SpeckWord::few;
  case Specks::none: return paint::SpeckWord::none;
  }
  return paint::SpeckWord::many;
}

}

std::vector<MulledPigment> pigments_mulled(const Batch& batch) {
  return batch.newer ? std::vector<MulledPigment>() : pigments_seen(batch);
}

Mulled mulled(const Batch& batch) {
  Mulled out;
  if (batch.newer) return out;
  out.pigments = pigments_seen(batch);
  const Clock from = last_pigment(batch), to = first_forgotten(batch);
  for (const Entry& e : batch.entries) {
    const auto* dot = std::get_if<Dot>(&e.event);
    if (!dot || e.withdrawn || e.clock < from || e.clock > to) continue;
    const double minutes = minutes_between(batch, from, e.clock);
    if (minutes > 0) out.dots.push_back({minutes, word_of(dot->specks)});
  }
  out.minutes = minutes_between(batch, from, batch.clock);
  for (const Pass& pass : batch.passes)
    if (pass.stage == Stage::mulling && pass.end && !is_over_an_hour(pass, batch.clock))
      out.passes_s.push_back(*pass.end - pass.start);
  return out;
}

}
