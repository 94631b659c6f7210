#include "paint/mixture.hpp"

#include "paint/alcohol.hpp"
#include "paint/bottle.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr double surely = 4; // standard uncertainties, as in given_sum
constexpr double tells = 2;  // of them that lost water must stand above none

// Own errors by name, so that what is made from one amount shares them.
Amount named(const Amount& a, const std::string& name) {
  Amount out = a;
  out.variance = 0;
  if (a.variance > 0) out.shares[name] += std::sqrt(a.variance);
  return out;
}

Mixture named(Mixture m, const std::string& name) {
  for (Portion& p : m.contents) p.grams = named(p.grams, name + " own " + p.card);
  m.water_gone = named(m.water_gone, name + " own water");
  return m;
}

Interval scaled(const Interval& i, double by) { return {i.low * by, i.middle * by, i.high * by}; }

DryingPrediction scaled(const DryingPrediction& f, double by) {
  return {f.lost_g * by, f.per_ln_factor * by, f.carried};
}

Amount alcohol_put_in(const Mixture& m) {
  Amount sum;
  for (const Portion& p : m.contents)
    if (p.material.parts.alcohol > 0) sum = sum + scaled(p.grams, p.material.parts.alcohol);
  return sum;
}

double alcohol_u(const Mixture& m) { return (m.alcohol_g.high - m.alcohol_g.low) / 4; }

// What the uncertainties of two are made of, together.
std::map<std::string, double> alcohol_by(const Mixture& a, const Mixture& b) {
  const double of_a = alcohol_u(a), of_b = alcohol_u(b);
  if (!(of_a + of_b > 0)) return a.alcohol_by;
  std::map<std::string, double> by;
  for (const auto& [name, share] : a.alcohol_by) by[name] += share * of_a / (of_a + of_b);
  for (const auto& [name, share] : b.alcohol_by) by[name] += share * of_b / (of_a + of_b);
  return by;
}

// The whole without what the bench foretold.
Amount settled_grams(const Mixture& m) {
  Amount sum = alcohol_left(m) - m.water_gone;
  for (const Portion& p : m.contents) sum = sum + scaled(p.grams, 1 - p.material.parts.alcohol);
  return sum;
}

// What was added to an amount: its own error is not in the rest.
Amount grown(const Amount& before, const Amount& after) {
  Amount more = after - before;
  more.variance = std::max(0.0, after.variance - before.variance);
  return more;
}

BenchRate taught_where_it_tells(const BenchRate& bench, const DryingPrediction& predicted,
                                const Amount& lost) {
  const double u = uncertainty(lost);
  if (!(predicted.lost_g > 0) || !(lost.value > tells * u)) return bench;
  return updated(bench, predicted, lost.value, u).value_or(bench);
}

}

bool is_empty(const Mixture& m) { return m.contents.empty(); }

void put(Mixture& m, const std::string& card, const Material& material, const Amount& grams) {
  const auto held = std::find_if(m.contents.begin(), m.contents.end(),
                                 [&](const Portion& p) { return p.card == card; });
  if (held == m.contents.end())
    m.contents.push_back({material, grams, card});
  else
    held->grams = held->grams + grams;
  const double alcohol = grams.value * material.parts.alcohol;
  for (double* g : {&m.alcohol_g.low, &m.alcohol_g.middle, &m.alcohol_g.high}) *g += alcohol;
}

Amount water_gone(const Mixture& m, const BenchRate& bench) {
  const double u = m.since.per_ln_factor * relative_u(bench);
  Amount gone = m.water_gone;
  gone.value += m.since.lost_g;
  if (u != 0) gone.shares["evaporation"] += u;
  return gone;
}

Amount alcohol_left(const Mixture& m) {
  const double u = alcohol_u(m);
  if (u == 0) return exact(m.alcohol_g.middle);
  Amount left = exact(m.alcohol_g.middle);
  for (const auto& [name, share] : m.alcohol_by) left.shares[name] = share * u;
  return left;
}

Amount grams_of(const Mixture& m, const BenchRate& bench) {
  Mixture settled = m;
  settled.water_gone = water_gone(m, bench);
  return settled_grams(settled);
}

Standing stand(const Mixture& m, const BenchRate& bench) {
  return stand(m.contents, water_gone(m, bench), alcohol_left(m));
}

Live live(const Sums& sums, const Mixture& m) {
  return live(sums, {m.water_gone.value + m.since.lost_g, sums.alcohol_g - m.alcohol_g.middle});
}

words::Result<Dried> dried(const Mixture& m, const Sums& sums, Spread spread, const Room& room,
                           double seconds, const BenchRate& bench) {
  const Wet wet = wet_of(sums, live(sums, m));
  const auto water = predict_drying(wet, spread, room, seconds, bench);
  if (!water) return tl::make_unexpected(water.error());
  Dried out{*water, m.alcohol_g};
  if (!(m.alcohol_g.high > 0)) return out;
  const auto left = [&](double alcohol_g) {
    return alcohol_after(alcohol_g, wet, spread, room, seconds, bench);
  };
  const auto low = left(m.alcohol_g.low), middle = left(m.alcohol_g.middle);
  const auto high = left(m.alcohol_g.high);
  for (const auto* end : {&low, &middle, &high})
    if (!*end) return tl::make_unexpected(end->error());
  out.alcohol_g = {low->low, middle->middle, high->high};
  return out;
}

void dry(Mixture& m, const Dried& by) {
  m.since = then(m.since, by.water);
  m.alcohol_g = by.alcohol_g;
}

words::Result<Parting> part(const Mixture& m, const Amount& share, const std::string& parting) {
  if (const auto fault = fault_of(share)) return tl::make_unexpected(*fault);
  if (share.value < 0 || share.value > 1)
    return words::failure(Say::not_a_share, {words::Number(share.value, 3)});
  const Amount taken_share = named(share, parting);
  const Mixture whole = named(m, parting);
  Parting out{whole, whole};
  for (std::size_t i = 0; i < whole.contents.size(); ++i) {
    const Amount& grams = whole.contents[i].grams;
    out.taken.contents[i].grams = product(grams, taken_share);
    out.left.contents[i].grams = grams - out.taken.contents[i].grams;
  }
  out.taken.water_gone = product(whole.water_gone, taken_share);
  out.left.water_gone = whole.water_gone - out.taken.water_gone;
  out.taken.since = scaled(m.since, share.value);
  out.left.since = scaled(m.since, 1 - share.value);
  out.taken.alcohol_g = scaled(m.alcohol_g, share.value);
  out.left.alcohol_g = scaled(m.alcohol_g, 1 - share.value);
  if (share == exact(1)) out.left = {};
  if (share == exact(0)) out.taken = {};
  return out;
}

Amount half_by_eye() { return {0.5, 0.05 * 0.05, {}}; }

words::Result<Amount> share_of(const Mixture& m, const Amount& grams, const BenchRate& bench,
                               const std::string& parting) {
  const Amount all = grams_of(named(m, parting), bench);
  if (!(all.value > 0)) return words::failure(Say::nothing_there);
  if (const auto fault = fault_of(grams)) return tl::make_unexpected(*fault);
  if (grams.value > all.value + surely * uncertainty(all - grams))
    return words::failure(Say::amount_too_large,
                          {words::Number(grams.value, 1), words::Number(all.value, 1)});
  if (grams.value >= all.value) return exact(1);
  return quotient(grams, all);
}

Mixture joined(Mixture a, const Mixture& b) {
  for (const Portion& p : b.contents) {
    const auto same = std::find_if(a.contents.begin(), a.contents.end(),
                                   [&](const Portion& q) { return q.card == p.card; });
    if (same == a.contents.end())
      a.contents.push_back(p);
    else
      same->grams = same->grams + p.grams;
  }
  a.water_gone = a.water_gone + b.water_gone;
  a.since = {a.since.lost_g + b.since.lost_g, a.since.per_ln_factor + b.since.per_ln_factor,
             a.since.carried};
  a.alcohol_by = alcohol_by(a, b);
  a.alcohol_g = {a.alcohol_g.low + b.alcohol_g.low, a.alcohol_g.middle + b.alcohol_g.middle,
                 a.alcohol_g.high + b.alcohol_g.high};
  return a;
}

namespace {

// What a mixture weighs, in parts: its contents, the water gone from it, the alcohol.
std::vector<Amount> parts_of(const Mixture& m, const BenchRate& bench) {
  std::vector<Amount> parts;
  for (const Portion& p : m.contents) parts.push_back(p.grams);
  parts.push_back(scaled(water_gone(m, bench), -1));
  parts.push_back(scaled(alcohol_put_in(m) - alcohol_left(m), -1));
  return parts;
}

// So much alcohol is left as it is known now: not below none.
void take_alcohol(Mixture& m, const Amount& left) {
  const double u = uncertainty(left);
  if (alcohol_u(m) == 0 || !(u > 0)) return;
  const double middle = std::max(0.0, left.value), low = std::max(0.0, middle - 2 * u);
  m.alcohol_by.clear();
  for (const auto& [name, share] : left.shares) m.alcohol_by[name] = share / u;
  m.alcohol_g = {low, middle, low + 4 * u};
}

// The mixture as its parts are known now; `part` goes on to what follows them.
Mixture as_known(Mixture m, std::vector<Amount>::const_iterator& part) {
  for (Portion& p : m.contents) p.grams = *part++;
  m.water_gone = scaled(*part++, -1);
  m.since = {};
  take_alcohol(m, alcohol_put_in(m) + *part++);
  return m;
}

words::Result<Weighed> weighed_as_parted(const Mixture& m, const Mixture& on_tools,
                                         const Amount& grams, const BenchRate& bench,
                                         const std::string& weighing) {
  const auto known = given_sum(parts_of(m, bench), grams, weighing, parts_of(on_tools, bench));
  if (!known) return tl::make_unexpected(known.error());
  const Amount lost = settled_grams(m) - grams;
  auto part = known->cbegin();
  Weighed out;
  out.there = as_known(m, part);
  out.on_tools = is_empty(on_tools) ? Mixture{} : as_known(on_tools, part);
  out.bench = taught_where_it_tells(bench, m.since, lost);
  const Amount whole = grams_of(joined(m, on_tools), bench);
  out.stayed_on_tools = exact(1) - quotient(grams, whole);
  return out;
}

}

words::Result<Weighed> weighed(const Mixture& counted, const Mixture& on_tools, const Amount& grams,
                               const BenchRate& bench, const std::string& weighing) {
  if (is_empty(counted)) return words::failure(Say::nothing_there);
  const Mixture m = named(counted, weighing);
  const auto known = weighed_as_parted(m, on_tools, grams, bench, weighing);
  if (is_empty(on_tools)) return known;
  const bool nothing_stayed =
      known ? grams_of(known->on_tools, bench).value < 0 : grams.value > grams_of(m, bench).value;
  if (!nothing_stayed) return known;
  const Mixture whole = joined(m, on_tools);
  auto with_tools = weighed_as_parted(whole, {}, grams, bench, weighing);
  if (!with_tools && with_tools.error().what == words::Sentence(Say::weighing_contradicts))
    return words::failure(Say::weighing_contradicts_both,
                          {words::Number(grams_of(m, bench).value, 1),
                           words::Number(grams_of(whole, bench).value, 1),
                           words::Number(grams.value, 1)});
  return with_tools;
}

words::Result<Weighed> brought_back(const Mixture& before, const Mixture& now,
                                    const BenchRate& bench, const std::string& name) {
  constexpr double hand = 0.10;
  Amount added;
  for (const Portion& p : now.contents) {
    const auto was = std::find_if(before.contents.begin(), before.contents.end(),
                                  [&](const Portion& q) { return q.card == p.card; });
    const Amount more = was == before.contents.end() ? p.grams : grown(was->grams, p.grams);
    if (more.value == 0) continue;
    if (p.material.kind != Kind::water) return words::failure(Say::not_only_water);
    added = added + more;
  }
  if (!(added.value > 0)) return words::failure(Say::nothing_lost);
  const double u = hand * stand(before, bench).liquid_mL_now.value;
  added.variance += u * u;
  Weighed out{now, {}, taught_where_it_tells(bench, since(before.since, now.since), added)};
  out.there.water_gone = water_gone(before, bench) + named(added, name);
  out.there.since = {};
  return out;
}

}
