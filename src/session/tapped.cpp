#include "session/tapped.hpp"

#include "paint/measure.hpp"
#include "session/amounts.hpp"
#include "session/batch.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr double most_spoons = 12; // more is weighed: own choice
constexpr double rounding = 1e-9;  // an amount that was made of drops is so many drops

// What is said in spoons is said in teaspoons: 4.9 mL, or 5, and worn or deep ones (own choice).
bool is_teaspoon(const Card& spoon) {
  const double mL = volume_of(spoon).mL;
  return mL > 4 && mL < 6.5;
}

double mL_of(const words::Result<paint::Amount>& grams, double mL_per_g, double otherwise) {
  return grams ? grams->value * mL_per_g : otherwise;
}

}

Measures measures_of(const Card& liquid, const Card* dropper, const Card* spoon) {
  Measures m{any_drop_mL, 0, 1};
  const auto material = material_of(liquid);
  if (!material) return m;
  const double per_g = paint::mL_per_g(material->parts);
  if (per_g > 0) m.g_per_mL = 1 / per_g;
  if (!is_liquid(liquid.kind())) return m;
  if (dropper)
    m.drop_mL =
        mL_of(paint::grams_of_drops(1, dropper_of(*dropper), *material), per_g, any_drop_mL);
  if (spoon && is_teaspoon(*spoon))
    m.spoon_mL = mL_of(paint::grams_of_spoons(1, spoon_of(*spoon), *material), per_g, 0);
  return m;
}

Measures measures_in(const Batch& batch, const Card& liquid) {
  const Card *dropper = nullptr, *spoon = nullptr;
  for (const auto& [id, card] : batch.cards) {
    if (card.kind() == CardKind::dropper) dropper = &card;
    if (card.kind() == CardKind::spoon) spoon = &card;
  }
  return measures_of(liquid, dropper, spoon);
}

double spoons_in(double mL, const Measures& of) {
  const double spoons = of.spoon_mL > 0 ? std::floor(4 * mL / of.spoon_mL + rounding) / 4 : 0;
  return spoons <= most_spoons ? spoons : 0;
}

namespace {

// There is a pad for one, for a half and for a quarter.
double taps_of(double spoons) {
  const double whole = std::floor(spoons), quarters = std::round(4 * (spoons - whole));
  return whole + (quarters > 0) + (quarters > 2);
}

int whole_drops(double mL, const Measures& of) {
  constexpr double most = 1e6;
  return static_cast<int>(std::min(most, std::floor(mL / of.drop_mL + rounding)));
}

int least_drops(double mL, const Measures& of) {
  return -whole_drops(-std::min(mL, 1e6 * of.drop_mL), of);
}

}

double spoons_between(double low_mL, double high_mL, const Measures& of) {
  if (!(of.spoon_mL > 0)) return 0;
  const double middle = (low_mL + high_mL) / 2 / of.spoon_mL;
  double best = 0;
  const double first = std::ceil(4 * low_mL / of.spoon_mL - rounding) / 4;
  for (double spoons = std::max(0.25, first); spoons <= most_spoons; spoons += 0.25) {
    if (spoons * of.spoon_mL > high_mL) break;
    const double fewer = best > 0 ? taps_of(best) - taps_of(spoons) : 1;
    if (fewer > 0 || (fewer == 0 && std::abs(spoons - middle) < std::abs(best - middle)))
      best = spoons;
  }
  return best;
}

int drops_by_fives(int least, int most) {
  const int fives = 5 * (most / 5);
  return most > 5 && fives >= least ? fives : std::max(least, most);
}

Tapped put_in_again(const Total& total, const Measures& of) {
  const bool weighed = total.weighed_g > 0;
  if (total.drops <= most_counted || weighed || !is_liquid(total.card.kind())) return {};
  const double mL = total.grams.value / of.g_per_mL;
  // A sum stands in place of what was counted: to five drops.
  const bool sum = !total.spoons.empty();
  const Tapped fine = sum ? tapped(mL - 5 * of.drop_mL, mL + of.drop_mL / 2, of) : Tapped{};
  const Tapped all = fine.spoons > 0 ? fine : tapped(mL, of);
  return all.spoons > 0 ? all : Tapped{};
}

double mL_of(const Tapped& amount, const Measures& of) {
  return amount.g > 0 ? amount.g / of.g_per_mL
                      : amount.spoons * of.spoon_mL + amount.drops * of.drop_mL;
}

namespace {

Tapped in_what_is_there(double least_mL, double most_mL, const Measures& of) {
  const int least = std::max(0, least_drops(least_mL, of));
  const int most = std::max(least, whole_drops(most_mL, of));
  const double spoons = spoons_in(most_mL, of), in_spoons = spoons * of.spoon_mL;
  if (spoons > 0 && in_spoons >= least_mL * (1 - rounding)) return {.spoons = spoons};
  if (most <= most_counted) return {.drops = drops_by_fives(least, most)};
  const int counted = whole_drops(std::max(least_mL, most_mL) - in_spoons, of);
  const int needed = std::max(0, least_drops(least_mL - in_spoons, of));
  return {.spoons = spoons, .drops = std::min(most_counted, drops_by_fives(needed, counted))};
}

}

Tapped tapped(double least_mL, double most_mL, const Measures& of) {
  const Tapped amount = in_what_is_there(least_mL, most_mL, of);
  const bool too_little = mL_of(amount, of) < least_mL * (1 - rounding);
  const bool weighed = of.spoon_mL <= 0 && most_mL > (most_counted + 1) * of.drop_mL;
  if (!too_little && !weighed) return amount;
  return {.g = std::max(least_mL, most_mL) * of.g_per_mL};
}

Tapped at_once(double low_mL, double high_mL, const Measures& of) {
  constexpr double as_a_spoon_fills = 0.9, near = 0.95;
  const double spoons = spoons_between(as_a_spoon_fills * low_mL, high_mL, of);
  if (spoons > 0) return {.spoons = spoons};
  const double least_mL = std::min(low_mL, near * high_mL);
  const double few_mL = std::min(high_mL, least_mL + 5 * of.drop_mL); // one of them is a five
  const Tapped amount = tapped(least_mL, few_mL, of);
  return amount.g > 0 ? Tapped{} : amount;
}

Tapped tapped(double mL, const Measures& of) {
  constexpr double near = 0.1; // own choice
  const double half_a_drop = of.drop_mL / 2;
  const double least_mL = std::min((1 - near) * mL, mL - half_a_drop);
  const Tapped round = tapped(least_mL, std::max((1 + near) * mL, mL + half_a_drop), of);
  if (round.g == 0 && round.drops % 5 == 0) return round;
  Tapped amount = tapped(least_mL, mL + half_a_drop, of);
  if (amount.g > 0) amount.g = mL * of.g_per_mL;
  return amount;
}

}
