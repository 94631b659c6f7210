#include "session/plan.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr double near_enough = 0.95;

double grams_in(const Batch& batch, const std::string& card) {
  for (const Total& t : batch.totals)
    if (t.card.id == card) return t.grams.value;
  return 0;
}

bool is_wet(const Batch& batch) {
  for (const Total& t : batch.totals)
    if (is_liquid(t.card.kind()) && t.grams.value > 0) return true;
  return false;
}

// By the hand, or by a dot: what was forgotten until then is left out of it.
bool is_judged(const Batch& batch) {
  for (const Feeling& felt : batch.feelings)
    if (felt.as == Feel::right) return true;
  for (const Entry& e : batch.entries)
    if (!e.withdrawn && std::holds_alternative<Dot>(e.event)) return true;
  return false;
}

const Card* card_of(const Batch& batch, const std::string& id) {
  const auto known = batch.cards.find(id);
  return known == batch.cards.end() ? nullptr : &known->second;
}

bool is_blend(const Batch& batch) {
  int pigments = 0;
  for (const Planned::Take& take : batch.plan->of.takes) {
    const Card* card = card_of(batch, take.of);
    pigments += card && card->kind() == CardKind::pigment ? 1 : 0;
  }
  return pigments > 1;
}

// Of the pigment of which most of what was planned is there: as much of it.
double largest_share(const Batch& batch) {
  double share = 0;
  for (const Planned::Take& take : batch.plan->of.takes)
    if (const Card* card = card_of(batch, take.of); card && take.g && *take.g > 0)
      if (card->kind() == CardKind::pigment)
        share = std::max(share, grams_in(batch, take.of) / *take.g);
  return share;
}

// How much of a pigment is to be there: once it is wet, as much as keeps the blend's proportions.
double pigment_wanted(const Batch& batch, const Planned::Take& take) {
  if (!is_wet(batch)) return *take.g;
  return std::min(1.0, largest_share(batch)) * *take.g;
}

// Pigment that was weighed, to 1 g of what was planned.
double pigment_share(const Batch& batch) {
  double planned = 0, there = 0;
  for (const Planned::Take& take : batch.plan->of.takes) {
    const Card* card = card_of(batch, take.of);
    if (!card || card->kind() != CardKind::pigment || !take.g) continue;
    planned += *take.g;
    there += grams_in(batch, take.of);
  }
  return planned > 0 && there > 0 ? there / planned : 1;
}

}

std::optional<int> drops_to_come(const ToCome& one, const Measures& of) {
  const Tapped whole = tapped((one.there_g + one.g) / of.g_per_mL, of);
  if (whole.drops == 0 || whole.spoons > 0) return std::nullopt;
  const auto there = std::lround(one.there_g / of.g_per_mL / of.drop_mL);
  return std::max(0, whole.drops - static_cast<int>(there));
}

std::vector<ToCome> to_come(const Batch& batch) {
  std::vector<ToCome> out;
  if (!batch.plan || batch.progress != Progress::open || batch.newer) return out;
  const bool wet = is_wet(batch), judged = is_judged(batch), blend = is_blend(batch);
  const double share = pigment_share(batch);
  for (const Planned::Take& take : batch.plan->of.takes) {
    const Card* card = card_of(batch, take.of);
    if (!card || card->kind() == CardKind::binder) continue;
    const bool pigment = card->kind() == CardKind::pigment;
    const double there = grams_in(batch, take.of);
    if (pigment && wet && (judged || !blend)) continue;
    if (pigment && !take.g && there <= 0) out.push_back({card, 0, 0});
    if (!take.g) continue;
    const double wanted = pigment ? pigment_wanted(batch, take) : *take.g * share;
    const ToCome one{card, wanted - there, there};
    const bool counted =
        is_liquid(card->kind()) && drops_to_come(one, measures_in(batch, *card)) == 0;
    if (there < near_enough * wanted && !counted) out.push_back(one);
  }
  return out;
}

}
