#include "bench/advice.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Feel;

// What changed since the last feel note: an addition makes the note old.
struct LastNote {
  std::optional<Feel> feel;
  bool added_since = false;
};

LastNote last_note(const session::Batch& batch) {
  LastNote note;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (std::holds_alternative<session::Added>(e->event)) note.added_since = true;
    if (const auto* felt = std::get_if<session::Felt>(&e->event)) {
      note.feel = felt->as;
      return note;
    }
  }
  return note;
}

paint::PigmentClass family_of(const session::Batch& batch) {
  const auto pigments = session::pigments(batch);
  const auto largest = std::max_element(pigments.begin(), pigments.end(), [](auto& a, auto& b) {
    return a.volume_share < b.volume_share;
  });
  return largest == pigments.end() ? paint::PigmentClass::unknown : largest->card->pigment.family;
}

bool mulled(const session::Batch& batch) {
  return std::any_of(batch.passes.begin(), batch.passes.end(),
                     [](const session::Pass& p) { return p.stage == session::Stage::mulling; });
}

// Nobody counts fifty drops.
double spoons_of(double mL, double spoon_mL) {
  return spoon_mL > 0 ? std::min(1.0, std::floor(4 * mL / spoon_mL) / 4) : 0;
}

// Whether it would dry, from what the room lets gum, glycerin and honey keep. Without any of the
// two it is the room's doing, and no stop mark.
std::optional<paint::Tack> sticky(const paint::Standing& s, const paint::Room& room) {
  if (s.glycerin_g.value + s.honey_g.value <= 0) return std::nullopt;
  const paint::Wet dry{
      .gum_g = s.gum_g.value, .glycerin_g = s.glycerin_g.value, .honey_g = s.honey_g.value};
  const auto index = paint::tack_index(dry, room);
  const auto tack = index ? paint::tack(*index) : tl::make_unexpected(index.error());
  return tack && *tack != paint::Tack::dries ? std::optional(*tack) : std::nullopt;
}

// Pigment that would bring a loose paint to the middle of what it wants.
double pigment_to_middle(const session::Batch& batch, const paint::Band& band) {
  const paint::Standing& s = batch.standing;
  const double excess = s.flow_now->value / std::exp(band.middle) - 1;
  return std::max(0.0, excess) * s.pigment_g.value;
}

}

double advised_mL(const Advice& advice, const Measures& of) {
  if (advice.kind != Advice::add_drops) return 0;
  return advice.spoons > 0 ? advice.spoons * of.spoon_mL : advice.drops * of.drop_mL;
}

Advice advise(const session::Batch& batch, const std::optional<paint::Band>& band,
              const Measures& of) {
  Advice advice;
  const paint::Standing& s = batch.standing;
  if (batch.progress != session::Progress::open) return advice.kind = Advice::gathered, advice;
  if (!s.flow_now || !band) return advice;
  advice.rests_on = band->rests_on;
  advice.batches = band->batches;
  const paint::PigmentClass family = family_of(batch);
  if (s.liquid_mL.value <= 0) {
    const paint::Helping usual = paint::first_helping(family);
    advice.kind = Advice::first_helping;
    advice.low_g = usual.low * s.pigment_g.value / 10;
    advice.high_g = usual.high * s.pigment_g.value / 10;
    return advice;
  }
  const auto gum = paint::gum_state(s.gum_g.value, s.pigment_mL.value, family);
  advice.by_knife = !mulled(batch);
  advice.sticky = sticky(s, batch.places.room);
  const LastNote note = last_note(batch);
  const bool fresh = note.feel && !note.added_since;
  if (fresh && *note.feel == Feel::right) {
    advice.kind = Advice::there;
    if (gum == paint::GumState::too_little) advice.gum = gum;
    return advice;
  }
  if (fresh && *note.feel > Feel::right) {
    advice.kind = Advice::too_loose;
    advice.pigment_g = pigment_to_middle(batch, *band);
    return advice;
  }
  advice.gum = gum;
  advice.drops = paint::safe_drops(*band, s.flow_now->value, of.drop_mL, s.pigment_mL.value);
  advice.spoons = spoons_of(advice.drops * of.drop_mL, of.spoon_mL);
  advice.kind = advice.drops > 0 ? Advice::add_drops : Advice::mull_and_judge;
  return advice;
}

}
