#include "paint/layer_time.hpp"

#include "paint/faults.hpp"
#include "paint/water.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace paint {

namespace {

using Say = words::PaintSay;

constexpr Interval diffusion_m2_s{1.2e-11, 2.5e-11, 5e-11};
constexpr double free_relative_u = 0.05;

std::optional<words::Error> fault_of(const Course& c) {
  for (double x : {c.free_g, c.constant_g_h, c.falling_per_h})
    if (auto fault = fault_if_not_positive(x)) return fault;
  return std::nullopt;
}

std::optional<words::Error> fault_of_share(double share) {
  if (!std::isfinite(share)) return words::Error{Say::not_a_number, {words::Number(share, 0)}};
  if (share < 0 || share >= 1) return words::Error{Say::not_a_share, {words::Number(share, 3)}};
  return std::nullopt;
}

// The share of the free water that is left when the rate begins to fall.
double critical(const Course& c) {
  return std::min(1.0, c.constant_g_h / (c.falling_per_h * c.free_g));
}

double hours(const Course& c, double share) {
  const double left = 1 - share, from = critical(c);
  if (left >= from) return c.free_g * share / c.constant_g_h;
  return c.free_g * (1 - from) / c.constant_g_h + std::log(from / left) / c.falling_per_h;
}

double gone(const Course& c, double h) {
  const double from = critical(c), constant_h = c.free_g * (1 - from) / c.constant_g_h;
  if (h <= constant_h) return c.constant_g_h * h / c.free_g;
  return 1 - from * std::exp(-c.falling_per_h * (h - constant_h));
}

double g_per_h(const Course& c, double share) {
  return std::min(c.constant_g_h, c.falling_per_h * c.free_g * (1 - share));
}

// ln of the factor by which a layer is slower than a course, with its variance.
struct Slower {
  double ln = 0;
  double variance = 0;
};

// Each weighing gives the factor with an uncertainty g u, where g is how the ln of the course's
// time changes with a gram. Absent where no weighing says anything.
std::optional<Slower> slower(const Course& c, const std::vector<WeighIn>& weigh_ins, double u) {
  double weights = 0, sum = 0, squares = 0, common = 0;
  int count = 0;
  for (std::size_t i = 1; i < weigh_ins.size(); ++i) {
    const double share = (weigh_ins[0].grams - weigh_ins[i].grams) / c.free_g;
    if (share < 0.02 || share > 0.98) continue;
    const double time = hours(c, share);
    const double g = 1 / (time * g_per_h(c, share));
    const double ln = std::log(weigh_ins[i].hours / time), weight = 1 / (g * g * u * u);
    weights += weight;
    sum += weight * ln;
    squares += weight * ln * ln;
    common += weight * g;
    ++count;
  }
  if (count == 0) return std::nullopt;
  const double mean = sum / weights;
  const double scatter = count > 1 ? (squares - mean * sum) / (count - 1) : 1;
  const double first = common / weights * u;
  return Slower{mean, std::max(1.0, scatter) / weights + first * first};
}

std::optional<words::Error> fault_of(const std::vector<WeighIn>& all, double free_g, double u) {
  if (all.size() < 2) return words::Error{Say::weigh_ins_too_few, {}};
  for (const WeighIn& w : all) {
    if (!std::isfinite(w.hours))
      return words::Error{Say::not_a_number, {words::Number(w.hours, 0)}};
    if (!std::isfinite(w.grams))
      return words::Error{Say::not_a_number, {words::Number(w.grams, 0)}};
    if (w.grams < 0) return words::Error{Say::negative_amount, {words::Number(w.grams, 2)}};
  }
  if (all[0].hours != 0) return words::Error{Say::weigh_ins_out_of_order, {}};
  const double noise = 3 * u * std::sqrt(2);
  for (std::size_t i = 1; i < all.size(); ++i) {
    if (all[i].hours <= all[i - 1].hours) return words::Error{Say::weigh_ins_out_of_order, {}};
    const double lost = all[0].grams - all[i].grams;
    const double dry_g = all[0].grams - free_g;
    if (lost > free_g * (1 + 3 * free_relative_u) + noise || lost < -noise)
      return words::Error{
          Say::weighing_contradicts,
          {words::Number(lost < 0 ? all[0].grams : dry_g, 2), words::Number(all[i].grams, 2)}};
  }
  return std::nullopt;
}

// The courses that the weighings have to tell apart, what is expected first: either rate alone at
// its ends, and the free water too.
std::array<Course, 9> shapes(const Drying& d) {
  const auto& [slow_c, mid_c, fast_c] = d.constant_g_h;
  const auto& [slow_f, mid_f, fast_f] = d.falling_per_h;
  const double less = d.free_g * (1 - free_relative_u), more = d.free_g * (1 + free_relative_u);
  return {{{d.free_g, mid_c, mid_f},
           {less, mid_c, mid_f},
           {more, mid_c, mid_f},
           {d.free_g, fast_c, slow_f},
           {less, fast_c, slow_f},
           {more, fast_c, slow_f},
           {d.free_g, slow_c, fast_f},
           {less, slow_c, fast_f},
           {more, slow_c, fast_f}}};
}

}

words::Result<double> hours_until(const Course& course, double share) {
  if (auto fault = fault_of(course)) return tl::make_unexpected(*fault);
  if (auto fault = fault_of_share(share)) return tl::make_unexpected(*fault);
  return hours(course, share);
}

words::Result<Drying> drying_of(const Layer& layer, const Room& room) {
  if (auto fault = fault_of(layer.wet)) return tl::make_unexpected(*fault);
  if (auto fault = fault_if_not_positive(layer.area_cm2)) return tl::make_unexpected(*fault);
  if (layer.area_cm2 > 1000)
    return words::failure(Say::amount_too_large, {words::Number(layer.area_cm2, 0), "1000"});
  const auto rate = evaporation_rate(room, Surface::pan);
  if (!rate) return tl::make_unexpected(rate.error());
  const auto held = held_water_g(layer.wet, room.humidity, room.celsius);
  if (!held) return tl::make_unexpected(held.error());
  const double free_g = layer.wet.water_g - *held;
  if (free_g <= 0) return words::failure(Say::nothing_to_dry);
  const double dry_mL = layer.wet.volume_mL - free_g / water_g_per_mL;
  if (dry_mL <= 0)
    return words::failure(Say::volume_too_small, {words::Number(layer.wet.volume_mL, 2),
                                                  words::Number(layer.wet.water_g, 2)});
  const double depth_m = dry_mL / layer.area_cm2 * 0.01;
  const double per_h =
      std::numbers::pi * std::numbers::pi * 3600 / (4 * depth_m * depth_m); // for each m2/s
  const double g_h = layer.area_cm2 * 0.1;                                  // for each kg/(m2 h)
  const Interval& d = diffusion_m2_s;
  return Drying{free_g,
                {rate->low * g_h, rate->middle * g_h, rate->high * g_h},
                {d.low * per_h, d.middle * per_h, d.high * per_h}};
}

words::Result<Interval> layer_hours(const Drying& d, double share) {
  const auto& [slow_c, middle_c, fast_c] = d.constant_g_h;
  const auto& [slow_f, middle_f, fast_f] = d.falling_per_h;
  const auto low = hours_until(Course{d.free_g, fast_c, fast_f}, share);
  if (!low) return tl::make_unexpected(low.error());
  const auto middle = hours_until(Course{d.free_g, middle_c, middle_f}, share);
  if (!middle) return tl::make_unexpected(middle.error());
  const auto high = hours_until(Course{d.free_g, slow_c, slow_f}, share);
  if (!high) return tl::make_unexpected(high.error());
  return Interval{*low, *middle, *high};
}

words::Result<Interval> layer_hours(const Drying& drying, const std::vector<WeighIn>& weigh_ins,
                                    double share, double step_g) {
  if (const auto expected = layer_hours(drying, share); !expected) return expected;
  if (auto fault = fault_if_not_positive(step_g)) return tl::make_unexpected(*fault);
  const double u = step_g / std::sqrt(12.0);
  if (auto fault = fault_of(weigh_ins, drying.free_g, u)) return tl::make_unexpected(*fault);
  std::optional<Interval> range;
  for (const Course& shape : shapes(drying)) {
    const auto fit = slower(shape, weigh_ins, u);
    if (!fit) continue;
    const double middle = std::exp(fit->ln) * hours(shape, share);
    const double wide = std::exp(2 * std::sqrt(fit->variance));
    if (!range) range = Interval{middle, middle, middle};
    range->low = std::min(range->low, middle / wide);
    range->high = std::max(range->high, middle * wide);
  }
  if (!range) return words::failure(Say::weigh_ins_say_nothing);
  return *range;
}

words::Result<Interval> loses_g(const Drying& d, const Interval& ready, double from_h,
                                double to_h) {
  for (double h : {from_h, to_h - from_h})
    if (auto fault = fault_if_negative(h)) return tl::make_unexpected(*fault);
  for (double h : {ready.low, ready.middle, ready.high})
    if (auto fault = fault_if_not_positive(h)) return tl::make_unexpected(*fault);
  if (const auto sound = layer_hours(d); !sound) return sound;
  const auto& [slow_c, middle_c, fast_c] = d.constant_g_h;
  const auto& [slow_f, middle_f, fast_f] = d.falling_per_h;
  const Course middle{d.free_g, middle_c, middle_f};
  // Hours of the course for one of this layer.
  const auto pace = [](const Course& c, double ready_h) { return hours(c, ready_share) / ready_h; };
  const double there = std::min(gone(middle, from_h * pace(middle, ready.middle)), 1 - 1e-9);
  const auto lost = [&](const Course& c, double ready_h) {
    const double later = hours(c, there) + (to_h - from_h) * pace(c, ready_h);
    return c.free_g * std::max(0.0, gone(c, later) - there);
  };
  return Interval{lost({d.free_g, slow_c, slow_f}, ready.high) * (1 - free_relative_u),
                  lost(middle, ready.middle),
                  lost({d.free_g, fast_c, fast_f}, ready.low) * (1 + free_relative_u)};
}

}
