#include "paint/material.hpp"

#include "paint/water.hpp"
#include "words/lists.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <numbers>
#include <utility>

namespace paint {

namespace {

struct Named {
  std::string_view name;
};

constexpr words::EnumTable<Kind, Named> kinds{{
    {Kind::pigment, {"pigment"}},
    {Kind::binder, {"binder"}},
    {Kind::water, {"water"}},
    {Kind::honey, {"honey"}},
    {Kind::glycerin, {"glycerin"}},
    {Kind::wetting_aid, {"wetting_aid"}},
    {Kind::other, {"other"}},
}};

constexpr words::EnumTable<PigmentClass, Named> classes{{
    {PigmentClass::mineral, {"mineral"}},
    {PigmentClass::fine_mineral, {"fine_mineral"}},
    {PigmentClass::organic, {"organic"}},
    {PigmentClass::carbon, {"carbon"}},
    {PigmentClass::effect, {"effect"}},
    {PigmentClass::extender, {"extender"}},
    {PigmentClass::unknown, {"unknown"}},
}};

template <class E>
words::Result<E> id_in(const words::EnumTable<E, Named>& names, std::string_view name) {
  const auto id = names.find(&Named::name, name);
  if (!id) return words::failure(words::PaintSay::unknown_name, {std::string(name)});
  return *id;
}

// Honey holds at most 20 % water (Codex CXS 12), 17 % usually.
constexpr double honey_moisture = 0.17;
// sqrt(half width^2 / 3 + distance of the middle from the value used^2), GUM 4.3.7 and F.2.4.5.
constexpr double gum_moisture_u = 0.0153;
constexpr double honey_moisture_u = 0.0173;

// mL/g at 20 °C. Glycerin: specific gravity 1.26362 (20/20), Bosart & Snoddy in
// Lange's Handbook, 15th ed., table 5.13. Ethanol 0.7893 g/mL: from memory.
constexpr double water_v = water_mL_per_g;
constexpr double glycerin_v = 1 / 1.2614;
constexpr double alcohol_v = 1 / 0.7893;
// Dry gum in solution, 0.58 to 0.62 from memory; 0.02 moves a 30 % solution by 0.7 %.
constexpr double gum_v = 0.60;
constexpr double gum_v_u = 0.02;
// Honey of 17 % water has a specific gravity 20/20 of 1.4237 (White 1975); what is not its water's
// volume is its solids'.
constexpr double honey_v =
    (1 / (1.4237 * water_g_per_mL) - honey_moisture * water_v) / (1 - honey_moisture);
// Preservatives, soaps, what nobody has named: as water, no source.
constexpr double other_v = 1;

// By how much glycerin and water are denser than their volumes added, 1 to 1.0113: Volk & Kaehler's
// factor at 20 °C, w the glycerin's mass share of the two.
double shrinking(double glycerin, double water) {
  if (!(glycerin > 0) || !(water > 0)) return 1;
  const double w = glycerin / (glycerin + water);
  constexpr double at_20 = 1.78e-6 * 20 * 20 - 1.82e-4 * 20 + 1.41e-2;
  return 1 + at_20 * std::pow(std::sin(std::numbers::pi * std::pow(w, 1.31)), 0.81);
}

}

std::string_view name_of(Kind kind) { return kinds[kind].name; }

std::string_view name_of(PigmentClass c) { return classes[c].name; }
words::Result<PigmentClass> pigment_class_named(std::string_view name) {
  return id_in(classes, name);
}

namespace {

words::Result<double> sum_of(std::initializer_list<double> shares) {
  double sum = 0;
  for (const double share : shares) {
    if (!std::isfinite(share))
      return words::failure(words::PaintSay::not_a_number, {words::Number(share, 1)});
    if (share < 0)
      return words::failure(words::PaintSay::negative_amount, {words::Number(share, 2)});
    sum += share;
  }
  if (!(sum > 0)) return words::failure(words::PaintSay::empty_recipe);
  return sum;
}

}

words::Result<Parts> whole(const Parts& m) {
  const auto sum = sum_of({m.pigment, m.gum, m.water, m.glycerin, m.honey, m.alcohol, m.other});
  if (!sum) return tl::make_unexpected(sum.error());
  return Parts{m.pigment / *sum, m.gum / *sum,     m.water / *sum, m.glycerin / *sum,
               m.honey / *sum,   m.alcohol / *sum, m.other / *sum};
}

words::Result<Parts> parts_of(const Recipe& as_sold) {
  const auto all = sum_of({as_sold.gum, as_sold.water, as_sold.honey, as_sold.glycerin,
                           as_sold.alcohol, as_sold.other});
  if (!all) return tl::make_unexpected(all.error());
  const double sum = *all;
  Parts parts;
  parts.gum = as_sold.gum * (1 - gum_moisture) / sum;
  parts.honey = as_sold.honey * (1 - honey_moisture) / sum;
  parts.water = (as_sold.water + as_sold.gum * gum_moisture + as_sold.honey * honey_moisture) / sum;
  parts.glycerin = as_sold.glycerin / sum;
  parts.alcohol = as_sold.alcohol / sum;
  parts.other = as_sold.other / sum;
  return parts;
}

bool is_of_composition(std::string_view share) {
  return share == gum_moisture_share || share == honey_moisture_share || share == gum_volume_share;
}

Parts with_moister_gum(Parts p) {
  const double more = p.gum / (1 - gum_moisture) * gum_moisture_u;
  p.gum -= more;
  p.water += more;
  return p;
}

Parts with_moister_honey(Parts p) {
  const double more = p.honey / (1 - honey_moisture) * honey_moisture_u;
  p.honey -= more;
  p.water += more;
  return p;
}

double mL_u_of_gum(const Parts& p) { return p.gum * gum_v_u; }

double mL_per_g(const Parts& p) {
  const double grams = p.gum + p.water + p.glycerin + p.honey + p.alcohol + p.other;
  if (grams == 0) return 0;
  const double thin =
      (p.water * water_v + p.glycerin * glycerin_v) / shrinking(p.glycerin, p.water);
  return (p.gum * gum_v + thin + p.honey * honey_v + p.alcohol * alcohol_v + p.other * other_v) /
         grams;
}

double g_per_mL(const Material& m) {
  const double solid = m.parts.pigment;
  if (solid > 0 && !(m.pigment.g_per_mL > 0)) return 0;
  const double volume =
      (solid > 0 ? solid / m.pigment.g_per_mL : 0) + (1 - solid) * mL_per_g(m.parts);
  return volume > 0 ? 1 / volume : 0;
}

double usual_g_per_mL(Kind kind) {
  switch (kind) {
  case Kind::pigment: return 0;
  case Kind::binder: return 1 / mL_per_g(*parts_of({.gum = 1, .water = 2}));
  case Kind::honey: return 1 / mL_per_g(*parts_of({.honey = 1}));
  case Kind::glycerin: return 1 / glycerin_v;
  case Kind::water:
  case Kind::wetting_aid: return 1 / water_v; // ox gall and soap are thin solutions
  case Kind::other: return 1 / other_v;
  }
  return 0;
}

// mN/m, all from memory: water 72.75, glycerin 63.4, gum arabic solution 45 to 65, honey 50 to 60,
// ox gall or soap 30 to 40; for liquids nobody has named, the whole span from soap to water.
double surface_tension(Kind kind) {
  switch (kind) {
  case Kind::water: return 72.75;
  case Kind::glycerin: return 63.4;
  case Kind::wetting_aid: return 35;
  case Kind::pigment: // a paint drips as its binder
  case Kind::binder:
  case Kind::honey: return 55;
  case Kind::other: return 51;
  }
  return 0;
}

// The limits above as uniform: half width / sqrt(3) (GUM 4.3.7).
double surface_tension_relative_u(Kind kind) {
  switch (kind) {
  case Kind::water: return 0;
  case Kind::glycerin: return 0.01;
  case Kind::honey: return 0.05;
  case Kind::wetting_aid: return 0.08;
  case Kind::pigment:
  case Kind::binder: return 0.105;
  case Kind::other: return 0.25;
  }
  return 0;
}

namespace {
constexpr double much_alcohol = 0.2; // from there to neat 38 to 22 mN/m, at 62 % 26 (from memory)
}

double surface_tension(const Material& of) {
  return of.parts.alcohol > much_alcohol ? 27 : surface_tension(of.kind);
}

double surface_tension_relative_u(const Material& of) {
  return of.parts.alcohol > much_alcohol ? 0.15 : surface_tension_relative_u(of.kind);
}

double oil_absorption_point(const Pigment& p) {
  // 93.5 g = 100 mL of linseed oil.
  return p.oil_g_per_100g > 0 && p.g_per_mL > 0 ? p.oil_g_per_100g * p.g_per_mL / 93.5 : 0;
}

}
