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

// A little of every pigment in it brings a loose paint to the middle of what it wants.
std::vector<Advice::Pigment> pigments_to(const session::Batch& batch, double flow) {
  const double more = batch.standing.flow_now->value / flow - 1;
  std::vector<Advice::Pigment> out;
  for (const session::Total& t : batch.totals)
    if (t.card.kind() == session::CardKind::pigment && t.grams.value > 0 && more > 0)
      out.push_back({t.card.id, t.card.name, more * t.grams.value});
  return out;
}

// Minutes until so much has dried off, as it lies, that it is at the middle of right, which rises
// as the gum grows stronger; 0 for more than two hours.
int minutes_to_right(const session::Batch& batch, const session::Expectation& expected) {
  session::Places places = batch.places;
  const double dry_gum = paint::dry_gum(session::sums(places), session::live(places));
  for (int minute = 1; minute <= 120; ++minute) {
    session::dry(places, 60);
    const paint::Live now = session::live(places);
    const double stronger = paint::dry_gum(session::sums(places), now) - dry_gum;
    const double middle = expected.band.middle + expected.prediction.drying * stronger;
    if (now.flow && *now.flow <= std::exp(middle)) return minute;
  }
  return 0;
}

// What the hand would find now, since water may have left after the last note.
paint::PredictionAt now_at(const session::Batch& batch, double stronger) {
  const paint::Standing& s = batch.standing;
  const double since = batch.feelings.empty() ? 0 : batch.feelings.back().lost_mL;
  const double lost = std::max(0.0, s.water_lost_mL.value - since);
  return {s.flow_now->value, std::min(1.0, session::dried_off_u * lost / s.liquid_mL_now.value),
          stronger};
}

}

double advised_mL(const Advice& advice, const Measures& of) {
  if (advice.kind != Advice::add_drops) return 0;
  return advice.spoons > 0 ? advice.spoons * of.spoon_mL : advice.drops * of.drop_mL;
}

namespace {

Advice start_with(const session::Batch& batch, Advice advice) {
  const paint::Helping usual = paint::first_helping(session::family_of(batch));
  advice.kind = Advice::first_helping;
  advice.low_g = usual.low * batch.standing.pigment_g.value / 10;
  advice.high_g = usual.high * batch.standing.pigment_g.value / 10;
  return advice;
}

// Since the last note, by more than a hand would feel.
bool has_dried(const session::Batch& batch) {
  constexpr double felt = 0.97;
  return !batch.feelings.empty() &&
         batch.standing.flow_now->value < felt * batch.feelings.back().flow;
}

bool right_is_likeliest(const session::Expectation& expected, const paint::PredictionAt& now) {
  const auto chances = paint::chances(expected.prediction, now);
  return std::max_element(chances.begin(), chances.end()) == chances.begin() + 2;
}

Advice thicken(const session::Batch& batch, const session::Expectation& expected, Advice advice) {
  advice.kind = Advice::too_loose;
  advice.dry_min = minutes_to_right(batch, expected);
  advice.pigments = pigments_to(batch, std::exp(expected.band.middle));
  return advice;
}

}

Advice advise(const session::Batch& batch, const std::optional<session::Expectation>& expected,
              const Measures& of, const session::GumVerdicts& verdicts) {
  Advice advice;
  const paint::Standing& s = batch.standing;
  if (batch.progress != session::Progress::open) return advice.kind = Advice::gathered, advice;
  if (!s.flow_now || !expected) return advice;
  advice.hint = expected->band.of_studio < taught_enough;
  if (s.liquid_mL.value <= 0) return start_with(batch, advice);
  advice.gum = paint::gum_state(s.gum_g.value, s.pigment_mL.value,
                                session::marks_of(verdicts, session::family_of(batch)));
  advice.by_knife = !mulled(batch);
  advice.sticky = sticky(s, batch.places.room);
  const LastNote note = last_note(batch);
  const bool fresh = note.feel && !note.added_since;
  if (fresh && *note.feel > Feel::right) {
    advice.gum.reset();
    return thicken(batch, *expected, advice);
  }
  if (fresh && !batch.feelings.empty() && batch.feelings.back().unwetted)
    return advice.kind = Advice::work_in, advice;
  const paint::PredictionAt now = now_at(batch, expected->stronger);
  const double drop = of.drop_mL / s.pigment_mL.value;
  const bool of_water = advice.gum == paint::GumState::too_much;
  advice.drops =
      paint::safe_drops(expected->prediction, now, drop, of_water ? -paint::dry_gum_put_in(s) : 0);
  const bool right = fresh && *note.feel == Feel::right;
  if (right && (!has_dried(batch) || right_is_likeliest(*expected, now))) {
    advice.kind = Advice::there;
    if (advice.gum != paint::GumState::too_little) advice.gum.reset();
    return advice;
  }
  advice.spoons = spoons_of(advice.drops * of.drop_mL, of.spoon_mL);
  advice.kind = advice.drops > 0 ? Advice::add_drops
                : advice.hint    ? Advice::keep_going
                                 : Advice::mull_and_judge;
  return advice;
}

}
