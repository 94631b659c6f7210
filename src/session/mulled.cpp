#include "session/mulled.hpp"

#include <algorithm>

namespace session {

namespace {

constexpr Clock forgotten_s = 3600;
constexpr double seen = 0.05; // of the pigments' volume

bool was_forgotten(const Pass& pass, Clock now) {
  return pass.left_running || pass.end.value_or(now) - pass.start > forgotten_s;
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
    if (pass.stage == Stage::mulling && was_forgotten(pass, batch.clock))
      return pass.left_running ? *pass.end : pass.start;
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

struct DotSeen {
  Clock clock = 0;
  std::optional<Specks> as;
};

// Each at its first line, as its last says.
std::vector<DotSeen> dots_on_photos(const Batch& batch) {
  std::vector<std::pair<std::string, DotSeen>> photos;
  for (const Entry& e : batch.entries) {
    const auto* photo = std::get_if<Photo>(&e.event);
    if (!photo || e.withdrawn || photo->of != PhotoOf::dot) continue;
    auto known = std::find_if(photos.begin(), photos.end(),
                              [&](const auto& one) { return one.first == photo->sha256; });
    if (known == photos.end()) known = photos.insert(known, {photo->sha256, {e.clock, {}}});
    if (photo->specks) known->second.as = photo->specks->as;
  }
  std::vector<DotSeen> out;
  for (const auto& [of, dot] : photos)
    if (dot.as) out.push_back(dot);
  return out;
}

// A photo is looked at more closely than a dot at the slab: where no mulling lies between the two,
// the photo counts.
std::vector<DotSeen> dots_of(const Batch& batch) {
  std::vector<DotSeen> out = dots_on_photos(batch);
  const std::size_t on_photos = out.size();
  for (const Entry& e : batch.entries) {
    const auto* dot = std::get_if<Dot>(&e.event);
    if (!dot || e.withdrawn) continue;
    const bool seen_closer = std::any_of(
        out.begin(), out.begin() + static_cast<std::ptrdiff_t>(on_photos), [&](const DotSeen& one) {
          return minutes_between(batch, std::min(one.clock, e.clock),
                                 std::max(one.clock, e.clock)) <= 0;
        });
    if (!seen_closer) out.push_back({e.clock, dot->specks});
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const DotSeen& a, const DotSeen& b) { return a.clock < b.clock; });
  return out;
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
  for (const DotSeen& dot : dots_of(batch)) {
    if (dot.clock < from || dot.clock > to) continue;
    const double minutes = minutes_between(batch, from, dot.clock);
    if (minutes > 0) out.dots.push_back({minutes, word_of(*dot.as)});
  }
  out.minutes = minutes_between(batch, from, batch.clock);
  for (const Pass& pass : batch.passes)
    if (pass.stage == Stage::mulling && pass.end && !was_forgotten(pass, batch.clock))
      out.passes_s.push_back(*pass.end - pass.start);
  return out;
}

}
