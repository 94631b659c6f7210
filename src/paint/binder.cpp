#include "paint/binder.hpp"

#include "paint/faults.hpp"
#include "paint/measure.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using words::Say;

constexpr double ox_gall_solids = 0.05;
constexpr double alcohol_by_mass = 0.938;
constexpr double sugar_heap_g_per_mL = 0.85;
constexpr double strongest = 0.55;

std::optional<words::Error> fault_of_sum(std::initializer_list<double> amounts, double& sum) {
  for (double amount : amounts) {
    if (auto fault = fault_if_negative(amount)) return fault;
    sum += amount;
  }
  if (!(sum > 0)) return words::Error{Say::empty_recipe, {}};
  if (!std::isfinite(sum)) return words::Error{Say::not_a_number, {words::fixed(sum, 1)}};
  return std::nullopt;
}

std::optional<words::Error> fault_of(const Ingredients& i, double& sum) {
  if (auto fault = fault_if_no_share(i.gum_moisture, 0, 0.30)) return fault;
  if (auto fault = fault_if_no_share(i.honey_moisture, 0.10, 0.30)) return fault;
  return fault_of_sum(
      {i.gum, i.water, i.honey, i.sugar, i.glycerin, i.ox_gall, i.alcohol, i.preservative}, sum);
}

std::optional<words::Error> fault_of(const Parts& p) {
  double sum = 0;
  if (auto fault = fault_of_sum({p.gum, p.water, p.glycerin, p.honey, p.alcohol, p.other}, sum))
    return fault;
  return fault_if_no_share(sum + p.pigment, 1 - 1e-9, 1 + 1e-9);
}

std::optional<words::Error> fault_of_wanted(const Parts& binder, double grams, double strength) {
  if (auto fault = fault_of(binder)) return fault;
  if (auto fault = fault_of_count(grams, 5000)) return fault;
  if (auto fault = fault_if_no_share(strength, 0, 1)) return fault;
  if (strength > 0 && strength <= strongest) return std::nullopt;
  return words::Error{Say::strength_out_of_reach, {words::fixed(strength * 100, 1)}};
}

// The binder with such a share of its mass gone as water.
Parts without(Parts p, double share) {
  p.water = std::max(0.0, p.water - share);
  const double left = 1 - share;
  for (double* part : {&p.gum, &p.water, &p.glycerin, &p.honey, &p.alcohol, &p.other})
    *part /= left;
  return p;
}

double honey_g_per_mL(double moisture) {
  return 1 / mL_per_g({.water = moisture, .honey = 1 - moisture});
}

// Each ingredient times its own factor: g/mL or its inverse.
template <class Factor>
Ingredients each(Ingredients i, double gum_heap_g_per_mL, Factor factor) {
  const double alcohol = 1 / mL_per_g({.water = 1 - alcohol_by_mass, .alcohol = alcohol_by_mass});
  if (i.gum > 0) i.gum *= factor(gum_heap_g_per_mL);
  i.water *= factor(usual_g_per_mL(Kind::water));
  i.honey *= factor(honey_g_per_mL(i.honey_moisture));
  i.sugar *= factor(sugar_heap_g_per_mL);
  i.glycerin *= factor(usual_g_per_mL(Kind::glycerin));
  i.ox_gall *= factor(usual_g_per_mL(Kind::wetting_aid));
  i.alcohol *= factor(alcohol);
  i.preservative *= factor(usual_g_per_mL(Kind::other));
  return i;
}

std::optional<words::Error> fault_of_heap(const Ingredients& i, double gum_heap_g_per_mL) {
  double sum = 0;
  if (auto fault = fault_of(i, sum)) return fault;
  if (i.gum == 0 || (std::isfinite(gum_heap_g_per_mL) && gum_heap_g_per_mL > 0))
    return std::nullopt;
  return words::Error{Say::measure_not_positive, {words::fixed(gum_heap_g_per_mL, 2)}};
}

}

words::Result<Parts> mixed(const Ingredients& i) {
  double sum = 0;
  if (auto fault = fault_of(i, sum)) return tl::make_unexpected(*fault);
  Parts p;
  p.gum = i.gum * (1 - i.gum_moisture) / sum;
  p.honey = (i.honey * (1 - i.honey_moisture) + i.sugar) / sum;
  p.glycerin = i.glycerin / sum;
  p.alcohol = i.alcohol * alcohol_by_mass / sum;
  p.other = (i.ox_gall * ox_gall_solids + i.preservative) / sum;
  p.water = (i.water + i.gum * i.gum_moisture + i.honey * i.honey_moisture +
             i.ox_gall * (1 - ox_gall_solids) + i.alcohol * (1 - alcohol_by_mass)) /
            sum;
  return p;
}

words::Result<Recipe> recipe_of(const Ingredients& grams) {
  const auto parts = mixed(grams);
  if (!parts) return tl::make_unexpected(parts.error());
  const Parts gum = *parts_of({.gum = 1});
  const Parts honey = *parts_of({.honey = 1});
  Recipe r;
  r.gum = parts->gum / gum.gum;
  r.honey = parts->honey / honey.honey;
  r.water = parts->water - r.gum * gum.water - r.honey * honey.water;
  if (r.water < -1e-12) return words::failure(Say::recipe_too_dry);
  r.water = std::max(0.0, r.water);
  r.glycerin = parts->glycerin;
  r.alcohol = parts->alcohol;
  r.other = parts->other;
  return r;
}

std::optional<words::Error> fault_of_recipe(const Recipe& r) {
  struct Limit {
    double grams, most;
    Say what;
  };
  for (const Limit& limit : {Limit{r.honey, most_honey_to_gum, Say::recipe_honey},
                             Limit{r.glycerin, most_glycerin_to_gum, Say::recipe_glycerin},
                             Limit{r.water, most_water_to_gum, Say::recipe_water}})
    if (limit.grams > limit.most * r.gum)
      return words::Error{
          limit.what,
          {words::fixed(limit.grams, 1), words::fixed(r.gum, 1), words::fixed(limit.most, 0)}};
  return std::nullopt;
}

words::Result<Ingredients> weighed_from(const Ingredients& mL, double gum_heap_g_per_mL) {
  if (auto fault = fault_of_heap(mL, gum_heap_g_per_mL)) return tl::make_unexpected(*fault);
  return each(mL, gum_heap_g_per_mL, [](double g_per_mL) { return g_per_mL; });
}

words::Result<Ingredients> measured_from(const Ingredients& grams, double gum_heap_g_per_mL) {
  if (auto fault = fault_of_heap(grams, gum_heap_g_per_mL)) return tl::make_unexpected(*fault);
  return each(grams, gum_heap_g_per_mL, [](double g_per_mL) { return 1 / g_per_mL; });
}

words::Result<BinderFacts> facts_of(const Parts& p) {
  if (auto fault = fault_of(p)) return tl::make_unexpected(*fault);
  if (p.pigment > 0) return words::failure(Say::not_a_share, {words::fixed(1 - p.pigment, 2)});
  BinderFacts f;
  f.g_per_mL = 1 / mL_per_g(p);
  f.solids = 1 - p.water - p.alcohol;
  f.gum = p.gum;
  f.humectant = p.glycerin + p.honey;
  if (p.gum > 0) f.humectant_per_gum = f.humectant / p.gum;
  return f;
}

words::Result<double> water_to_reach(const Parts& binder, double grams, double strength) {
  if (auto fault = fault_of_wanted(binder, grams, strength)) return tl::make_unexpected(*fault);
  if (strength > binder.gum)
    return words::failure(Say::strength_out_of_reach, {words::fixed(strength * 100, 1)});
  return grams * (binder.gum / strength - 1);
}

words::Result<double> gum_to_reach(const Parts& binder, double grams, double strength,
                                   double gum_moisture) {
  if (auto fault = fault_of_wanted(binder, grams, strength)) return tl::make_unexpected(*fault);
  if (auto fault = fault_if_no_share(gum_moisture, 0, 0.30)) return tl::make_unexpected(*fault);
  if (strength < binder.gum)
    return words::failure(Say::strength_out_of_reach, {words::fixed(strength * 100, 1)});
  return grams * (strength - binder.gum) / (1 - gum_moisture - strength);
}

words::Result<Parts> weighed_again(const Parts& binder, double then_g, double now_g) {
  if (auto fault = fault_of(binder)) return tl::make_unexpected(*fault);
  for (double g : {then_g, now_g})
    if (auto fault = fault_of_count(g, 5000)) return tl::make_unexpected(*fault);
  if (now_g > then_g) return words::failure(Say::bottle_gained, {words::fixed(now_g - then_g, 1)});
  if (then_g == 0) return words::failure(Say::empty_recipe);
  const double gone = (then_g - now_g) / then_g;
  if (gone > binder.water || gone == 1) return words::failure(Say::water_more_than_there);
  return without(binder, gone);
}

words::Result<Parts> thickened_to(const Parts& binder, double g_per_mL) {
  if (auto fault = fault_of(binder)) return tl::make_unexpected(*fault);
  if (!std::isfinite(g_per_mL))
    return words::failure(Say::not_a_number, {words::fixed(g_per_mL, 1)});
  const auto density = [&](double gone) { return 1 / mL_per_g(without(binder, gone)); };
  double low = 0, high = std::min(binder.water, 1 - 1e-9);
  // A millionth of leeway: the recipe's own density, handed back, is no loss.
  if (g_per_mL < density(low) * (1 - 1e-6) || g_per_mL > density(high))
    return words::failure(Say::density_out_of_reach,
                          {words::fixed(g_per_mL, 3), words::fixed(density(low), 3)});
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (density(middle) < g_per_mL ? low : high) = middle;
  }
  return without(binder, (low + high) / 2);
}

}
