#include "session/plan.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr double near_enough = 0.95;

bool is_wet(const Batch& batch) {
  for (const Total& t : batch.totals)
    if (is_liquid(t.card.kind()) && t.grams.value > 0) return true;
  return false;
}

// By the hand, or by a dot: what was forgotten until then is left out of it.
bool is_judged(const Batch& batch) {
  const auto is_right = [](const Feeling& felt) {
    return felt.as == Feel::right && !felt.set_aside;
  };
  return last_dot(batch) || std::any_of(batch.feelings.begin(), batch.feelings.end(), is_right);
}

const Card* card_of(const Batch& batch, const std::string& id) {
  const auto known = batch.cards.find(id);
  return known == batch.cards.end() ? nullptr : &known->second;
}

// g of one part, by that of the others of which most is there; 0: none is.
double part_g(const Batch& batch, const Planned::Take& of) {
  double most_g = 0;
  for (const Planned::Take& take : batch.plan->of.takes)
    if (take.of != of.of && take.parts.value_or(0) > 0)
      most_g = std::max(most_g, grams_in(batch, take.of) / *take.parts);
  return most_g;
}

// Of the pigments that were planned.
struct PigmentShares {
  int pigments = 0;
  double share = 1;   // that is there, of all of their grams
  double largest = 1; // of that of which most is there, at most all of it
};

PigmentShares shares_of(const Batch& batch) {
  PigmentShares out;
  double planned = 0, there = 0, largest = 0;
  for (const Planned::Take& take : batch.plan->of.takes) {
    const Card* card = card_of(batch, take.of);
    if (!card || card->kind() != CardKind::pigment) continue;
    ++out.pigments;
    if (!take.g || !(*take.g > 0)) continue;
    const double g = grams_in(batch, take.of);
    planned += *take.g;
    there += g;
    largest = std::max(largest, g / *take.g);
  }
  if (!(there > 0)) return out;
  return {out.pigments, there / planned, std::min(1.0, largest)};
}

}

double grams_in(const Batch& batch, const std::string& card) {
  for (const Total& t : batch.totals)
    if (t.card.id == card) return t.grams.value;
  return 0;
}

std::optional<double> grams_planned(const Batch& batch, const Planned::Take& take) {
  if (take.g || !take.parts) return take.g;
  const double g = *take.parts * part_g(batch, take);
  return g > 0 ? std::optional(g) : std::nullopt;
}

std::optional<int> drops_to_come(const ToCome& one, const Measures& of) {
  const Tapped whole = tapped((one.there_g + one.g.value_or(0)) / of.g_per_mL, of);
  if (whole.drops == 0 || whole.spoons > 0) return std::nullopt;
  const auto there = std::lround(one.there_g / of.g_per_mL / of.drop_mL);
  return std::max(0, whole.drops - static_cast<int>(there));
}

std::vector<ToCome> to_come(const Batch& batch) {
  std::vector<ToCome> out;
  if (!batch.plan || batch.progress != Progress::open || batch.newer) return out;
  const bool wet = is_wet(batch), judged = is_judged(batch);
  const PigmentShares shares = shares_of(batch);
  for (const Planned::Take& take : batch.plan->of.takes) {
    const Card* card = card_of(batch, take.of);
    if (!card || card->kind() == CardKind::binder) continue;
    const bool pigment = card->kind() == CardKind::pigment;
    const double there = grams_in(batch, take.of);
    if (pigment && wet && (judged || shares.pigments < 2)) continue;
    const auto planned = grams_planned(batch, take);
    if (pigment && !planned && there <= 0) out.push_back({card, std::nullopt, 0});
    if (!planned) continue;
    const double dry_or_kept = wet && take.g ? shares.largest : 1; // once it is wet, in proportion
    const double wanted = *planned * (pigment ? dry_or_kept : shares.share);
    const ToCome one{card, wanted - there, there};
    const bool counted =
        is_liquid(card->kind()) && drops_to_come(one, measures_in(batch, *card)) == 0;
    if (there < near_enough * wanted && !counted) out.push_back(one);
  }
  return out;
}

}
