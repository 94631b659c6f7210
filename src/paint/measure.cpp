#include "paint/measure.hpp"

#include "paint/drop.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double most_spoons = 1000;
constexpr double most_g = 5000;
constexpr double own_of_filling = 0.05;
constexpr double own_of_powder = 0.10;
// What the law of drops leaves out when it takes one liquid for another. Eschbaum's glycerin drop
// (1895) is 10 % lighter than it says from his water drop: a half width of 10 %, taken as uniform.
constexpr double law_u = 0.06;

std::optional<words::Error> fault_of_measure(double size, double size_u) {
  if (std::isfinite(size) && size > 0 && std::isfinite(size_u) && size_u >= 0) return std::nullopt;
  return words::Error{Say::measure_not_positive, {words::Number(size, 3)}};
}

// `count` repeats of one measure, each with a scatter of its own.
Amount repeats(double count, double grams_each, double own) {
  return {count * grams_each, count * (own * grams_each) * (own * grams_each), {}};
}

// A measured volume weighs as much as its liquid is dense, which its making leaves open.
void leave_density_open(Amount& grams, const Parts& of) {
  const double mL = mL_per_g(of);
  const auto leave_open = [&](std::string_view share, double mL_u) {
    grams.shares[std::string(share)] -= grams.value * mL_u / mL;
  };
  if (of.gum > 0) leave_open(gum_volume_share, mL_u_of_gum(of));
  if (of.gum > 0) leave_open(gum_moisture_share, mL_per_g(with_moister_gum(of)) - mL);
  if (of.honey > 0) leave_open(honey_moisture_share, mL_per_g(with_moister_honey(of)) - mL);
}

double tension_u(const Material& of, Kind calibrated_with) {
  return std::hypot(surface_tension_relative_u(of), surface_tension_relative_u(calibrated_with),
                    law_u);
}

}

std::optional<words::Error> fault_of_count(double count, double most) {
  if (std::isnan(count)) return words::Error{Say::not_a_number, {words::Number(count, 0)}};
  if (count < 0) return words::Error{Say::negative_amount, {words::Number(count, 1)}};
  if (count > most)
    return words::Error{Say::amount_too_large, {words::Number(count, 0), words::Number(most, 0)}};
  return std::nullopt;
}

words::Result<double> drop_volume_mL(const Dropper& dropper, const Material& of) {
  if (of.kind == dropper.calibrated_with) return dropper.mL_per_drop;
  const double from = usual_g_per_mL(dropper.calibrated_with);
  const double to = g_per_mL(of);
  if (!(from > 0) || !(to > 0)) return words::failure(Say::density_not_known);
  const auto tip =
      tip_of_drop_mm(dropper.mL_per_drop, surface_tension(dropper.calibrated_with), from);
  return tip ? drop_mL(*tip, surface_tension(of), to) : tip;
}

words::Result<Amount> grams_of_drops(double drops, const Dropper& dropper, const Material& of) {
  if (auto fault = fault_of_count(drops, most_drops)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_measure(dropper.mL_per_drop, dropper.mL_per_drop_u))
    return tl::make_unexpected(*fault);
  const auto mL = drop_volume_mL(dropper, of);
  if (!mL) return tl::make_unexpected(mL.error());
  const double each = *mL * g_per_mL(of);
  if (!(each > 0)) return words::failure(Say::density_not_known);
  Amount grams = repeats(drops, each, own_of_drop);
  grams.shares[dropper.tool] = grams.value * dropper.mL_per_drop_u / dropper.mL_per_drop;
  if (of.kind == dropper.calibrated_with) return grams;
  grams.shares["tension:" + std::string(name_of(of.kind))] =
      grams.value * tension_u(of, dropper.calibrated_with);
  if (!(of.parts.pigment > 0)) leave_density_open(grams, of.parts);
  return grams;
}

words::Result<Amount> grams_of_spoons(double spoons, const Spoon& spoon, const Material& of) {
  if (auto fault = fault_of_count(spoons, most_spoons)) return tl::make_unexpected(*fault);
  for (double u : {spoon.mL_u, spoon.own})
    if (auto fault = fault_of_measure(spoon.mL, u)) return tl::make_unexpected(*fault);
  const bool powder = of.parts.pigment >= 1;
  const double density = powder ? of.pigment.heap_g_per_mL : g_per_mL(of);
  if (!(density > 0))
    return words::failure(powder ? Say::powder_not_weighed : Say::density_not_known);
  const double own = powder ? std::max(spoon.own, own_of_powder) : spoon.own;
  Amount grams = repeats(spoons, spoon.mL * density, own);
  grams.shares[spoon.tool] = grams.value * spoon.mL_u / spoon.mL;
  if (!(of.parts.pigment > 0)) leave_density_open(grams, of.parts);
  if (powder)
    grams.shares["heap:" + spoon.tool] = grams.value * of.pigment.heap_g_per_mL_u / density;
  return grams;
}

words::Result<Amount> grams_weighed(double g, double step_g) {
  if (auto fault = fault_of_count(g, most_g)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_measure(step_g, 0)) return tl::make_unexpected(*fault);
  return Amount{g, step_g * step_g / 12, {}};
}

words::Result<Spoon> spoon_weighed(const std::string& tool, const std::vector<double>& water_g,
                                   double step_g) {
  if (water_g.empty()) return words::failure(Say::nothing_counted);
  Amount sum;
  for (double g : water_g) {
    const auto full = grams_weighed(g, step_g);
    if (!full) return tl::make_unexpected(full.error());
    if (!(g > 0)) return words::failure(Say::measure_not_positive, {words::Number(g, 1)});
    const double own = own_of_filling * g;
    sum = sum + Amount{g, own * own + 2 * full->variance, {}};
  }
  const double fillings = static_cast<double>(water_g.size());
  const Amount mL = scaled(sum, 1 / (fillings * usual_g_per_mL(Kind::water)));
  return Spoon{tool, mL.value, uncertainty(mL), own_of_filling};
}

// US: 231 cubic inches to the gallon. UK: a fluid ounce of 1/160 of 4.54609 L; half of it a
// tablespoon and a quarter of that a teaspoon, or five eighths of it a tablespoon.
const std::vector<KitchenMeasure>& kitchen_measures() {
  static const std::vector<KitchenMeasure> measures{
      {"teaspoon_us", 4.92892159375},
      {"tablespoon_us", 14.78676478125},
      {"fluid_ounce_us", 29.5735295625},
      {"cup_us", 236.5882365},
      {"fluid_ounce_label", 30},
      {"cup_label", 240},
      {"teaspoon_metric", 5},
      {"tablespoon_metric", 15},
      {"cup_metric", 250},
      {"teaspoon_uk_traditional", 3.5516328125},
      {"tablespoon_uk_traditional", 14.20653125},
      {"tablespoon_uk_large", 17.7581640625},
      {"fluid_ounce_uk", 28.4130625},
      {"tablespoon_australia", 20},
      {"cup_japan", 200},
  };
  return measures;
}

Spoon spoon_of(const KitchenMeasure& measure) {
  return {std::string(measure.id), measure.mL, measure.mL * 0.05 / std::sqrt(3.0)};
}

// Both whole numbers are exact in a double, so that what divides them is the nearest there is.
words::Result<double> typed_number(const std::string& text) {
  double whole = 0, parts = 1;
  int digits = 0, marks = 0;
  for (const char c : text) {
    const bool digit = c >= '0' && c <= '9';
    const bool mark = c == ',' || c == '.';
    if (!digit && !mark) return words::failure(Say::not_a_number, {text});
    if (digit) whole = 10 * whole + (c - '0');
    if (digit && marks > 0) parts *= 10;
    digits += digit;
    marks += mark;
  }
  // 15 digits are what a double keeps.
  if (digits == 0 || digits > 15 || marks > 1) return words::failure(Say::not_a_number, {text});
  return whole / parts;
}

}
