#include "paint/making.hpp"

#include "paint/binder.hpp"
#include "paint/faults.hpp"
#include "paint/tools_loss.hpp"
#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double most_spoons = 1000;
constexpr double heap_g_per_mL = 0.5, heap_relative_u = 0.3;

std::optional<words::Error> fault_of_amount(double x, double most) {
  if (auto fault = fault_if_not_positive(x)) return fault;
  if (x <= most) return std::nullopt;
  return words::Error{Say::amount_too_large, {words::Number(x, 1), words::Number(most, 0)}};
}

Recipe times(const Recipe& r, double by) {
  return {r.gum * by, r.water * by, r.honey * by, r.glycerin * by, r.alcohol * by, r.other * by};
}

}

double sum_of(const Recipe& r) {
  return r.gum + r.water + r.honey + r.glycerin + r.alcohol + r.other;
}

words::Result<Recipe> scaled_to_gum(const Recipe& recipe, double gum_g) {
  if (auto fault = fault_of_amount(gum_g, most_binder_g)) return tl::make_unexpected(*fault);
  if (!(recipe.gum > 0)) return words::failure(Say::empty_recipe);
  return times(recipe, gum_g / recipe.gum);
}

double gets_into_jar(double put_in_g) { return put_in_g * (1 - ToolsLoss{}.share); }

words::Result<Amount> gum_in_spoons(double spoons, double spoon_mL) {
  if (auto fault = fault_of_amount(spoons, most_spoons)) return tl::make_unexpected(*fault);
  if (auto fault = fault_if_not_positive(spoon_mL)) return tl::make_unexpected(*fault);
  const double g = spoons * spoon_mL * heap_g_per_mL;
  if (auto fault = fault_of_amount(g, most_binder_g)) return tl::make_unexpected(*fault);
  Amount out = exact(g);
  out.variance = heap_relative_u * g * heap_relative_u * g;
  return out;
}

double strength_of(const Recipe& recipe) {
  const auto parts = parts_of(recipe);
  return parts ? parts->gum : 0;
}

words::Result<PutIn> to_strength(const Recipe& binder, double grams, double wanted) {
  if (auto fault = fault_of_amount(grams, most_binder_g)) return tl::make_unexpected(*fault);
  const auto parts = parts_of(binder);
  if (!parts) return tl::make_unexpected(parts.error());
  const bool thinner = wanted <= parts->gum;
  const auto g =
      thinner ? water_to_reach(*parts, grams, wanted) : gum_to_reach(*parts, grams, wanted);
  if (!g) return tl::make_unexpected(g.error());
  return thinner ? PutIn{*g, 0} : PutIn{0, *g};
}

Recipe with(const Recipe& binder, double grams, const PutIn& in) {
  const double sum = sum_of(binder);
  Recipe out = sum > 0 ? times(binder, grams / sum) : Recipe{};
  out.water += in.water_g;
  out.gum += in.gum_g;
  return out;
}

words::Result<Recipe> dried_by(const Recipe& binder, double grams, double gone_g) {
  if (auto fault = fault_if_negative(gone_g)) return tl::make_unexpected(*fault);
  Recipe out = with(binder, grams, {});
  if (!(gone_g < out.water))
    return words::failure(Say::more_water_than_there_is,
                          {words::Number(gone_g, 1), words::Number(out.water, 1)});
  out.water -= gone_g;
  return out;
}

}
