#include "paint/measure.hpp"

#include <cmath>
#include <locale>
#include <optional>
#include <sstream>

namespace paint {

namespace {

using words::Say;

constexpr double own_of_drop = 0.05;
constexpr double own_of_spoonful = 0.05;
constexpr double own_of_powder_spoonful = 0.10;
// Tate's law leaves out what of a drop stays at the tip. Eschbaum's glycerin drop (1895) is 10 %
// lighter than the law says: a half width of 10 %, taken as uniform.
constexpr double tate_u = 0.06;

std::optional<words::Error> fault_of_count(double count, double most) {
  if (std::isnan(count)) return words::Error{Say::not_a_number, {words::fixed(count, 0)}};
  if (count < 0) return words::Error{Say::negative_amount, {words::fixed(count, 1)}};
  if (count > most)
    return words::Error{Say::amount_too_large, {words::fixed(count, 0), words::fixed(most, 0)}};
  return std::nullopt;
}

std::optional<words::Error> fault_of_measure(double size, double size_u) {
  if (std::isfinite(size) && size > 0 && std::isfinite(size_u) && size_u >= 0) return std::nullopt;
  return words::Error{Say::measure_not_positive, {words::fixed(size, 3)}};
}

// `count` repeats of one measure, each with a scatter of its own.
Amount repeats(double count, double grams_each, double own) {
  return {count * grams_each, count * (own * grams_each) * (own * grams_each), {}};
}

double tension_u(Kind of, Kind calibrated_with) {
  return std::hypot(surface_tension_relative_u(of), surface_tension_relative_u(calibrated_with),
                    tate_u);
}

}

double drop_volume_mL(const Dropper& dropper, const Material& of) {
  if (of.kind == dropper.calibrated_with) return dropper.mL_per_drop;
  // A dropper calibrated with powder or with a material of no density has no grams to scale.
  const double from_g = dropper.mL_per_drop * usual_g_per_mL(dropper.calibrated_with);
  const double to_g = from_g * surface_tension(of.kind) / surface_tension(dropper.calibrated_with);
  const double density = g_per_mL(of);
  return density > 0 && from_g > 0 ? to_g / density : std::nan("");
}

words::Result<Amount> grams_of_drops(double drops, const Dropper& dropper, const Material& of) {
  if (auto fault = fault_of_count(drops, 10000)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_measure(dropper.mL_per_drop, dropper.mL_per_drop_u))
    return tl::make_unexpected(*fault);
  const double each = drop_volume_mL(dropper, of) * g_per_mL(of);
  if (!(each > 0)) return words::failure(Say::density_not_known);
  Amount grams = repeats(drops, each, own_of_drop);
  grams.shares[dropper.tool] = grams.value * dropper.mL_per_drop_u / dropper.mL_per_drop;
  if (of.kind != dropper.calibrated_with)
    grams.shares["tension:" + std::string(name_of(of.kind))] =
        grams.value * tension_u(of.kind, dropper.calibrated_with);
  return grams;
}

words::Result<Amount> grams_of_spoons(double spoons, const Spoon& spoon, const Material& of) {
  if (auto fault = fault_of_count(spoons, 1000)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_measure(spoon.mL, spoon.mL_u)) return tl::make_unexpected(*fault);
  const bool powder = of.parts.pigment >= 1;
  const double density = powder ? of.pigment.heap_g_per_mL : g_per_mL(of);
  if (!(density > 0))
    return words::failure(powder ? Say::powder_not_weighed : Say::density_not_known);
  Amount grams =
      repeats(spoons, spoon.mL * density, powder ? own_of_powder_spoonful : own_of_spoonful);
  grams.shares[spoon.tool] = grams.value * spoon.mL_u / spoon.mL;
  if (powder)
    grams.shares["heap:" + spoon.tool] = grams.value * of.pigment.heap_g_per_mL_u / density;
  return grams;
}

words::Result<Amount> grams_weighed(double g, double step_g) {
  if (auto fault = fault_of_count(g, 5000)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_measure(step_g, 0)) return tl::make_unexpected(*fault);
  return Amount{g, step_g * step_g / 12, {}};
}

// US: 231 cubic inches to the gallon. UK: half a fluid ounce of 1/160 of 4.54609 L, and a quarter
// of that.
const std::vector<KitchenMeasure>& kitchen_measures() {
  static const std::vector<KitchenMeasure> measures{
      {"teaspoon_us", 4.92892159375},
      {"tablespoon_us", 14.78676478125},
      {"teaspoon_metric", 5}, // also the food label's and Australia's
      {"tablespoon_metric", 15},
      {"teaspoon_uk_traditional", 3.5516328125},
      {"tablespoon_uk_traditional", 14.20653125},
      {"tablespoon_australia", 20},
  };
  return measures;
}

Spoon spoon_of(const KitchenMeasure& measure) {
  return {std::string(measure.id), measure.mL, measure.mL * 0.05 / std::sqrt(3.0)};
}

words::Result<double> typed_number(const std::string& text) {
  std::string plain;
  int digits = 0;
  int marks = 0;
  for (char c : text) {
    const bool digit = c >= '0' && c <= '9';
    const bool mark = c == ',' || c == '.';
    if (!digit && !mark) return words::failure(Say::not_a_number, {text});
    digits += digit;
    marks += mark;
    plain += mark ? '.' : c;
  }
  // 15 digits are what a double keeps.
  if (digits == 0 || digits > 15 || marks > 1) return words::failure(Say::not_a_number, {text});
  std::istringstream in(plain);
  in.imbue(std::locale::classic()); // the point is a point in every country
  double value = 0;
  in >> value;
  return value;
}

}
