#include "paint/binder.hpp"

#include "paint/faults.hpp"
#include "paint/measure.hpp"
#include "words/paint_says.hpp"

#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

std::optional<words::Error> fault_of_sum(std::initializer_list<double> amounts, double& sum) {
  for (double amount : amounts) {
    if (auto fault = fault_if_negative(amount)) return fault;
    sum += amount;
  }
  if (!(sum > 0)) return words::Error{Say::empty_recipe, {}};
  if (!std::isfinite(sum)) return words::Error{Say::not_a_number, {words::Number(sum, 1)}};
  return std::nullopt;
}

std::optional<words::Error> fault_of(const Parts& p) {
  double sum = 0;
  if (auto fault = fault_of_sum({p.gum, p.water, p.glycerin, p.honey, p.alcohol, p.other}, sum))
    return fault;
  return fault_if_no_share(sum + p.pigment, 1 - 1e-9, 1 + 1e-9);
}

std::optional<words::Error> fault_of_wanted(const Parts& binder, double grams, double strength) {
  if (auto fault = fault_of(binder)) return fault;
  if (auto fault = fault_of_count(grams, most_binder_g)) return fault;
  if (auto fault = fault_if_no_share(strength, 0, 1)) return fault;
  if (strength > 0 && strength <= strongest_binder) return std::nullopt;
  return words::Error{Say::strength_out_of_reach, {words::Number(strength * 100, 1)}};
}

}

std::optional<words::Error> fault_of_recipe(const Recipe& r) {
  struct Limit {
    double grams, most;
    words::Sentence what;
  };
  for (const Limit& limit : {Limit{r.honey, most_honey_to_gum, Say::recipe_honey},
                             Limit{r.glycerin, most_glycerin_to_gum, Say::recipe_glycerin},
                             Limit{r.water, most_water_to_gum, Say::recipe_water}})
    if (limit.grams > limit.most * r.gum)
      return words::Error{
          limit.what,
          {words::Number(limit.grams, 1), words::Number(r.gum, 1), words::Number(limit.most, 0)}};
  return std::nullopt;
}

words::Result<double> water_to_reach(const Parts& binder, double grams, double strength) {
  if (auto fault = fault_of_wanted(binder, grams, strength)) return tl::make_unexpected(*fault);
  if (strength > binder.gum)
    return words::failure(Say::strength_out_of_reach, {words::Number(strength * 100, 1)});
  return grams * (binder.gum / strength - 1); // the gum stays as much
}

words::Result<double> gum_to_reach(const Parts& binder, double grams, double strength,
                                   double moisture) {
  if (auto fault = fault_of_wanted(binder, grams, strength)) return tl::make_unexpected(*fault);
  if (auto fault = fault_if_no_share(moisture, 0, 0.30)) return tl::make_unexpected(*fault);
  if (strength < binder.gum)
    return words::failure(Say::strength_out_of_reach, {words::Number(strength * 100, 1)});
  // With x g of it: binder.gum grams + (1 - moisture) x = strength (grams + x).
  return grams * (strength - binder.gum) / (1 - moisture - strength);
}

}
