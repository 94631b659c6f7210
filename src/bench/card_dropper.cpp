#include "bench/card_dropper.hpp"

#include "paint/dropper.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace bench {

namespace {

using session::Card;
using session::CardKind;

constexpr double twenty = 20;
constexpr std::array liquids{CardKind::water, CardKind::binder, CardKind::honey,
                             CardKind::glycerin};

paint::Material usual(CardKind kind) {
  const paint::Recipe recipe = kind == CardKind::binder     ? paint::Recipe{.gum = 1, .water = 2}
                               : kind == CardKind::honey    ? paint::Recipe{.water = 1, .honey = 1}
                               : kind == CardKind::glycerin ? paint::Recipe{.glycerin = 1}
                                                            : paint::Recipe{.water = 1};
  return {session::paint_kind(kind), *paint::parts_of(recipe), {}};
}

double g_per_mL(CardKind kind) { return paint::g_per_mL(usual(kind)); }

session::Volume guessed_drop(CardKind with) {
  const paint::Dropper guess;
  const auto grams = paint::grams_of_drops(1, guess, usual(with));
  if (with == CardKind::water || !grams) return {guess.mL_per_drop, guess.mL_per_drop_u};
  return {grams->value / g_per_mL(with), paint::uncertainty(*grams) / g_per_mL(with)};
}

bool is_guessed(const session::DropperCard& dropper) {
  constexpr double rounding = 1e-9;
  const session::Volume guess = guessed_drop(dropper.calibrated_with);
  return std::abs(dropper.drop.mL - guess.mL) < rounding &&
         std::abs(dropper.drop.mL_u - guess.mL_u) < rounding;
}

}

DropsWeight weight_of_twenty(const Card& card) {
  const auto* dropper = std::get_if<session::DropperCard>(&card.facts);
  if (!dropper) return {};
  const double g = twenty * g_per_mL(dropper->calibrated_with);
  return {dropper->drop.mL * g, dropper->drop.mL_u * g};
}

words::Result<Card> with_weighed_drops(Card card, double g) {
  auto* dropper = std::get_if<session::DropperCard>(&card.facts);
  if (!dropper) return card;
  const auto tool = paint::calibrated(card.id, {{twenty, g}}, paint::scale_step_g,
                                      usual(dropper->calibrated_with));
  if (!tool) return tl::make_unexpected(tool.error());
  dropper->drop = {tool->mL_per_drop, tool->mL_per_drop_u};
  return card;
}

Card with_next_liquid(Card card) {
  auto* at = std::get_if<session::DropperCard>(&card.facts);
  if (!at) return card;
  const auto here = std::find(liquids.begin(), liquids.end(), at->calibrated_with);
  const bool last = here == liquids.end() || here + 1 == liquids.end();
  const CardKind next = last ? liquids.front() : *(here + 1);
  const double by = g_per_mL(at->calibrated_with) / g_per_mL(next);
  at->drop =
      is_guessed(*at) ? guessed_drop(next) : session::Volume{at->drop.mL * by, at->drop.mL_u * by};
  at->calibrated_with = next;
  return card;
}

}
