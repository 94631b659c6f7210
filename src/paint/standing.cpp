#include "paint/standing.hpp"

#include "paint/water.hpp"

#include <algorithm>

namespace paint {

namespace {

constexpr double alcohol_mL_per_g = 1 / 0.7893;

double liquid_share(const Parts& parts) { return 1 - parts.pigment; }

// What stays is reckoned by itself, not by subtraction: mixed volumes do not add up exactly.
double without_alcohol_mL_per_g(const Parts& parts) {
  const double stays = liquid_share(parts) - parts.alcohol;
  if (!(stays > 0)) return 0;
  Parts without = parts;
  without.alcohol = 0;
  return stays * mL_per_g(without);
}

double pigment_mL_per_g(const Material& m) {
  return m.parts.pigment > 0 && m.pigment.g_per_mL > 0 ? m.parts.pigment / m.pigment.g_per_mL : 0;
}

double oil_mL_per_g(const Material& m) {
  return pigment_mL_per_g(m) * oil_absorption_point(m.pigment);
}

// A quantity that is linear in what went in and what has left: its value, and how much it changes
// with each term. Of terms with errors of their own, a ratio must count each once.
struct Quantity {
  double value = 0;
  std::vector<double> of_term;
  std::map<std::string, double> shares; // of what is no term: densities, oil absorptions
};

// The portions' grams, then water gone, then alcohol left.
struct Terms {
  std::vector<const Amount*> amounts;

  std::size_t water_gone() const { return amounts.size() - 2; }
  std::size_t alcohol_left() const { return amounts.size() - 1; }
};

Amount weighted(const Terms& terms, double value, const Quantity& a, double by_a, const Quantity& b,
                double by_b) {
  Amount out;
  out.value = value;
  for (std::size_t i = 0; i < terms.amounts.size(); ++i) {
    const double factor = by_a * a.of_term[i] + by_b * b.of_term[i];
    if (factor == 0) continue;
    out.variance += factor * factor * terms.amounts[i]->variance;
    for (const auto& [tool, share] : terms.amounts[i]->shares) out.shares[tool] += factor * share;
  }
  for (const auto& [tool, share] : a.shares) out.shares[tool] += by_a * share;
  if (by_b != 0)
    for (const auto& [tool, share] : b.shares) out.shares[tool] += by_b * share;
  return out;
}

Amount amount_of(const Terms& terms, const Quantity& q) {
  return weighted(terms, q.value, q, 1, q, 0);
}

Amount ratio_of(const Terms& terms, const Quantity& over, const Quantity& under) {
  const double ratio = over.value / under.value;
  return weighted(terms, ratio, over, 1 / under.value, under, -ratio / under.value);
}

Quantity operator+(Quantity a, const Quantity& b) {
  a.value += b.value;
  for (std::size_t i = 0; i < a.of_term.size(); ++i) a.of_term[i] += b.of_term[i];
  for (const auto& [tool, share] : b.shares) a.shares[tool] += share;
  return a;
}

// Of every portion so much to its gram, and what its making leaves open of that.
template <class PerGram>
Quantity sum(const std::vector<Portion>& contents, PerGram per_gram) {
  Quantity q;
  const auto leave_open = [&](std::string_view share, const Portion& p, const Parts& other) {
    Material material = p.material;
    material.parts = other;
    const double more = (per_gram(material) - q.of_term.back()) * p.grams.value;
    if (more != 0) q.shares[std::string(share)] += more;
  };
  for (const Portion& p : contents) {
    const Parts& parts = p.material.parts;
    q.of_term.push_back(per_gram(p.material));
    q.value += q.of_term.back() * p.grams.value;
    if (parts.gum > 0) leave_open(gum_moisture_share, p, with_moister_gum(parts));
    if (parts.honey > 0) leave_open(honey_moisture_share, p, with_moister_honey(parts));
  }
  q.of_term.resize(contents.size() + 2, 0);
  return q;
}

// Liquid, so much to its gram: dry gum's volume is not known exactly either.
template <class PerGram>
Quantity liquid_volume(const std::vector<Portion>& contents, PerGram mL_to_gram) {
  Quantity q = sum(contents, mL_to_gram);
  for (const Portion& p : contents)
    if (p.material.parts.gum > 0)
      q.shares[std::string(gum_volume_share)] += mL_u_of_gum(p.material.parts) * p.grams.value;
  return q;
}

Quantity liquid_put_in(const std::vector<Portion>& contents) {
  return liquid_volume(contents,
                       [](const Material& m) { return liquid_share(m.parts) * mL_per_g(m.parts); });
}

Quantity liquid_grams(const std::vector<Portion>& contents) {
  return sum(contents, [](const Material& m) { return liquid_share(m.parts); });
}

Quantity grams_of(const std::vector<Portion>& contents, double Parts::*which) {
  return sum(contents, [&](const Material& m) { return m.parts.*which; });
}

Terms terms_of(const std::vector<Portion>& contents, const Amount& water_gone,
               const Amount& alcohol_left) {
  Terms terms;
  for (const Portion& p : contents) terms.amounts.push_back(&p.grams);
  terms.amounts.push_back(&water_gone);
  terms.amounts.push_back(&alcohol_left);
  return terms;
}

Quantity& with(Quantity& q, const Terms& terms, std::size_t term, double factor) {
  q.of_term[term] += factor;
  q.value += factor * terms.amounts[term]->value;
  return q;
}

Quantity pigment_volume(const std::vector<Portion>& contents) {
  Quantity q = sum(contents, pigment_mL_per_g);
  for (const Portion& p : contents)
    if (const double mL = pigment_mL_per_g(p.material) * p.grams.value; mL != 0)
      q.shares["density:" + p.card] -=
          mL * p.material.pigment.g_per_mL_u / p.material.pigment.g_per_mL;
  return q;
}

// In oil at the absorption point the density cancels.
Quantity oil_volume(const std::vector<Portion>& contents) {
  Quantity q = sum(contents, oil_mL_per_g);
  for (const Portion& p : contents)
    if (const double mL = oil_mL_per_g(p.material) * p.grams.value; mL != 0)
      q.shares["oil:" + p.card] +=
          mL * p.material.pigment.oil_u / p.material.pigment.oil_g_per_100g;
  return q;
}

}

Sums sums_of(const std::vector<Portion>& contents) {
  Sums s;
  for (const Portion& p : contents) {
    const Parts& parts = p.material.parts;
    const double g = p.grams.value;
    s.pigment_g += g * parts.pigment;
    s.pigment_mL += g * pigment_mL_per_g(p.material);
    s.oil_mL += g * oil_mL_per_g(p.material);
    s.gum_g += g * parts.gum;
    s.glycerin_g += g * parts.glycerin;
    s.honey_g += g * parts.honey;
    s.water_g += g * parts.water;
    s.alcohol_g += g * parts.alcohol;
    s.liquid_mL += g * liquid_share(parts) * mL_per_g(parts);
    s.without_alcohol_mL += g * without_alcohol_mL_per_g(parts);
    if (!(parts.pigment > 0)) continue;
    s.densities_known = s.densities_known && p.material.pigment.g_per_mL > 0;
    s.oil_known = s.oil_known && oil_absorption_point(p.material.pigment) > 0;
  }
  return s;
}

Live live(const Sums& s, const Gone& gone) {
  Live now;
  now.water_g = s.water_g - gone.water_g;
  now.alcohol_g = s.alcohol_g - gone.alcohol_g;
  now.liquid_mL =
      s.without_alcohol_mL - gone.water_g * water_mL_per_g + now.alcohol_g * alcohol_mL_per_g;
  if (s.gum_g > 0) now.gum_strength = s.gum_g / (s.gum_g + now.water_g);
  if (!(s.pigment_g > 0) || !s.densities_known) return now;
  now.flow = now.liquid_mL / s.pigment_mL;
  if (s.oil_known) now.over_oil_point = now.liquid_mL / s.oil_mL;
  return now;
}

namespace {

double share(double gum_g, double others_g) {
  const double all_g = gum_g + std::max(0.0, others_g);
  return gum_g > 0 ? gum_g / all_g : 0;
}

}

double dry_gum(const Sums& s, const Live& now) {
  return share(s.gum_g, s.glycerin_g + s.honey_g + now.water_g + now.alcohol_g);
}

double dry_gum_put_in(const Standing& s) {
  return share(s.gum_g.value, s.liquid_g.value - s.gum_g.value);
}

double dry_gum(const Standing& s) {
  return share(s.gum_g.value,
               s.glycerin_g.value + s.honey_g.value + s.water_g.value + s.alcohol_g.value);
}

Wet wet_of(const Sums& s, const Live& now) {
  return {s.gum_g, s.glycerin_g, s.honey_g, now.water_g, s.pigment_mL + now.liquid_mL};
}

WentIn went_in(const std::vector<Portion>& contents) {
  const Amount nothing;
  const Terms terms = terms_of(contents, nothing, nothing);
  const double gum_g = grams_of(contents, &Parts::gum).value;
  return {amount_of(terms, grams_of(contents, &Parts::pigment)),
          amount_of(terms, liquid_put_in(contents)),
          share(gum_g, liquid_grams(contents).value - gum_g)};
}

Standing stand(const std::vector<Portion>& contents, const Amount& water_gone,
               const Amount& alcohol_left) {
  const Terms terms = terms_of(contents, water_gone, alcohol_left);
  const auto part = [&](double Parts::*which) { return grams_of(contents, which); };
  const Quantity pigment = part(&Parts::pigment), solid = pigment_volume(contents);
  const Quantity gum = part(&Parts::gum), glycerin = part(&Parts::glycerin);
  const Quantity honey = part(&Parts::honey);
  const Quantity binder =
      sum(contents, [](const Material& m) { return m.kind == Kind::binder ? 1.0 : 0.0; });
  const Quantity put_in = liquid_put_in(contents);
  Quantity water = part(&Parts::water),
           alcohol = sum(contents, [](const Material&) { return 0.0; });
  Quantity liquid =
      liquid_volume(contents, [](const Material& m) { return without_alcohol_mL_per_g(m.parts); });
  with(water, terms, terms.water_gone(), -1);
  with(alcohol, terms, terms.alcohol_left(), 1);
  with(liquid, terms, terms.water_gone(), -water_mL_per_g);
  with(liquid, terms, terms.alcohol_left(), alcohol_mL_per_g);

  Standing s;
  s.pigment_g = amount_of(terms, pigment);
  s.pigment_mL = amount_of(terms, solid);
  s.binder_g = amount_of(terms, binder);
  s.liquid_g = amount_of(terms, liquid_grams(contents));
  s.liquid_mL = amount_of(terms, put_in);
  s.liquid_mL_now = amount_of(terms, liquid);
  s.water_lost_mL = scaled(water_gone, water_mL_per_g);
  s.gum_g = amount_of(terms, gum);
  s.glycerin_g = amount_of(terms, glycerin);
  s.honey_g = amount_of(terms, honey);
  s.water_g = amount_of(terms, water);
  s.alcohol_g = amount_of(terms, alcohol);
  if (gum.value > 0) {
    s.gum_strength = ratio_of(terms, gum, gum + water);
    s.humectant_to_gum = ratio_of(terms, glycerin + honey, gum);
  }
  if (!(pigment.value > 0)) return s;
  s.binder_ratio = scaled(ratio_of(terms, binder, pigment), 10);
  const Sums known = sums_of(contents);
  if (!known.densities_known) return s;
  s.flow_put_in = ratio_of(terms, put_in, solid);
  s.flow_now = ratio_of(terms, liquid, solid);
  s.gum_per_pigment = ratio_of(terms, gum, solid);
  s.pigment_fraction = ratio_of(terms, solid, solid + liquid);
  if (known.oil_known) s.over_oil_point = ratio_of(terms, liquid, oil_volume(contents));
  return s;
}

}
