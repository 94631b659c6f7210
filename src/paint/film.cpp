#include "paint/film.hpp"

#include "paint/faults.hpp"
#include "paint/water.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace paint {

namespace {

using Say = words::PaintSay;

std::optional<words::Error> fault_of(const Pigment& p) {
  if (auto fault = fault_if_negative(p.g_per_mL)) return fault;
  if (auto fault = fault_if_negative(p.oil_g_per_100g)) return fault;
  if (p.g_per_mL == 0) return words::Error{Say::density_not_known, {}};
  if (p.oil_g_per_100g == 0) return words::Error{Say::oil_absorption_not_known, {}};
  return std::nullopt;
}

double critical(double oil_g_per_100g, double g_per_mL) {
  return 1 / (1 + oil_g_per_100g * g_per_mL / 93.5);
}

// mL that 1 g of dry gum takes up in a film, water apart.
constexpr double gum_in_film_v = (1 / 1.40 - gum_moisture / water_g_per_mL) / (1 - gum_moisture);

double binder_mL(const Wet& wet, double held_g) {
  const Parts parts{.water = held_g, .glycerin = wet.glycerin_g, .honey = wet.honey_g};
  const double grams = held_g + wet.glycerin_g + wet.honey_g;
  return wet.gum_g * gum_in_film_v + mL_per_g(parts) * grams;
}

std::optional<words::Error> fault_of(double index, const TackMark& mark) {
  if (auto fault = fault_if_negative(index)) return fault;
  if (index > 100) return words::Error{Say::amount_too_large, {words::Number(index, 0), "100"}};
  const bool usable = std::isfinite(mark.ln_middle) && mark.ln_u > 0 && mark.ln_noise >= 0 &&
                      std::isfinite(std::hypot(mark.ln_u, mark.ln_noise));
  if (!usable) return words::Error{Say::tack_mark_unusable, {}};
  return std::nullopt;
}

double spread(const TackMark& mark) { return std::hypot(mark.ln_u, mark.ln_noise); }

// Density of the standard normal over its distribution; beyond 30 the first terms of the tail.
double mills(double z) {
  if (z < -30) return -z - 1 / z;
  constexpr double root_2 = 1.41421356237309504880, root_2_pi = 2.50662827463100050242;
  return std::exp(-z * z / 2) / root_2_pi / (std::erfc(-z / root_2) / 2);
}

}

words::Result<double> cpvc(const std::vector<PigmentMass>& by_mass) {
  double grams = 0, oil = 0, mL = 0;
  for (const auto& [pigment, g] : by_mass) {
    if (auto fault = fault_if_negative(g)) return tl::make_unexpected(*fault);
    if (auto fault = fault_of(pigment)) return tl::make_unexpected(*fault);
    grams += g;
    oil += g * pigment.oil_g_per_100g;
    mL += g / pigment.g_per_mL;
  }
  if (grams == 0) return words::failure(Say::no_pigment_there);
  return critical(oil / grams, grams / mL);
}

words::Result<Film> film_of(double pigment_mL, const Wet& wet, const Room& room) {
  if (auto fault = fault_if_negative(pigment_mL)) return tl::make_unexpected(*fault);
  const auto held = held_water_g(wet, room.humidity, room.celsius);
  if (!held) return tl::make_unexpected(held.error());
  const Film film{pigment_mL, binder_mL(wet, *held), *held};
  if (film.pigment_mL + film.binder_mL == 0) return words::failure(Say::nothing_to_dry);
  return film;
}

namespace {

// How a number moves with each of what it rests on, and with the uncertainty of that.
template <class Of>
words::Result<Amount> by_differences(const std::vector<Amount>& rests_on, double step, Of number) {
  std::vector<double> at;
  for (const Amount& one : rests_on) at.push_back(one.value);
  const words::Result<double> here = number(at);
  if (!here) return tl::make_unexpected(here.error());
  Amount out = exact(*here);
  for (std::size_t i = 0; i < at.size(); ++i) {
    at[i] += step;
    const words::Result<double> beside = number(at);
    at[i] = rests_on[i].value;
    if (!beside) continue;
    Amount off = rests_on[i];
    off.value = 0;
    out = out + scaled(off, (*beside - *here) / step);
  }
  return out;
}

}

words::Result<double> pvc(const Film& film) {
  for (double mL : {film.pigment_mL, film.binder_mL})
    if (auto fault = fault_if_negative(mL)) return tl::make_unexpected(*fault);
  const double all = film.pigment_mL + film.binder_mL;
  if (all == 0) return words::failure(Say::nothing_to_dry);
  return film.pigment_mL / all;
}

words::Result<Amount> pvc(const Amount& pigment_mL, const Amount& gum_g, const Amount& glycerin_g,
                          const Amount& honey_g, const Room& room, double humidity_u) {
  const auto at = [&](const std::vector<double>& of, const Room& in) -> words::Result<double> {
    const auto film = film_of(of[0], Wet{of[1], of[2], of[3], 0, 0}, in);
    return film ? pvc(*film) : tl::make_unexpected(film.error());
  };
  const double step = 1e-4 * (pigment_mL.value + gum_g.value);
  auto out = by_differences({pigment_mL, gum_g, glycerin_g, honey_g}, step,
                            [&](const auto& of) { return at(of, room); });
  if (!out) return out;
  Room drier = room;
  drier.humidity = std::max(0.0, room.humidity - humidity_u);
  const auto beside = at({pigment_mL.value, gum_g.value, glycerin_g.value, honey_g.value}, drier);
  if (beside) out->variance += (*beside - out->value) * (*beside - out->value);
  return out;
}

words::Result<double> tack_index(const Wet& wet, const Room& room) {
  const auto held = held_water_g(wet, room.humidity, room.celsius);
  if (!held) return held;
  if (wet.gum_g == 0) return words::failure(Say::no_gum_there);
  return (*held + 0.6 * wet.glycerin_g + 0.2 * wet.honey_g) / wet.gum_g;
}

words::Result<Amount> tack_index(const Amount& gum_g, const Amount& glycerin_g,
                                 const Amount& honey_g, const Room& room) {
  return by_differences({gum_g, glycerin_g, honey_g}, 1e-4 * gum_g.value, [&](const auto& at) {
    return tack_index(Wet{at[0], at[1], at[2], 0, 0}, room);
  });
}

double caution_mark(const TackMark& mark) { return std::exp(mark.ln_middle - spread(mark)); }
double warning_mark(const TackMark& mark) { return std::exp(mark.ln_middle + spread(mark)); }

words::Sentence say_of(Tack tack) {
  switch (tack) {
  case Tack::dries: return Say::tack_dries;
  case Tack::may_stay_sticky: return Say::tack_may_stay;
  case Tack::stays_sticky: return Say::tack_stays;
  }
  return {};
}

words::Result<Tack> tack(double index, const TackMark& mark) {
  if (auto fault = fault_of(index, mark)) return tl::make_unexpected(*fault);
  if (index < caution_mark(mark)) return Tack::dries;
  return index < warning_mark(mark) ? Tack::may_stay_sticky : Tack::stays_sticky;
}

words::Result<Tack> tack(const Amount& index, const TackMark& mark) {
  TackMark wider = mark;
  if (index.value > 0) wider.ln_noise = std::hypot(mark.ln_noise, relative_uncertainty(index));
  return tack(index.value, wider);
}

words::Result<TackMark> updated(const TackMark& mark, double index, bool sticky) {
  if (auto fault = fault_of(index, mark)) return tl::make_unexpected(*fault);
  if (index == 0) return words::failure(Say::measure_not_positive, {"0"});
  const double side = sticky ? 1 : -1;
  const double s = spread(mark);
  const double z = side * (std::log(index) - mark.ln_middle) / s;
  const double ratio = mills(z);
  const double part = mark.ln_u / s; // of the spread that a verdict can teach
  TackMark after = mark;
  after.ln_middle -= side * mark.ln_u * part * ratio;
  after.ln_u *= std::sqrt(1 - part * part * ratio * (ratio + z));
  ++after.verdicts;
  return after;
}

}
