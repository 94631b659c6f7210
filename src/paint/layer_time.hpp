// When the next layer may go on: how long one layer takes to dry, from the room or from weighings.
#pragma once

#include "paint/drying.hpp"

#include <vector>

namespace paint {

// How one layer loses its free water, that which the room does not let it keep: at a constant rate
// while the surface is wet, then as fast as diffusion brings it, in proportion to what is left
// (Perry's Chemical Engineers' Handbook, drying: constant and linearly falling rate). It is the
// slower of the two at any time.
struct Course {
  double free_g = 0;
  double constant_g_h = 0;
  double falling_per_h = 0;
};

// Hours until this share of the free water is gone, 0 to below 1. Errors: not_a_number,
// measure_not_positive for a field of the course, not_a_share.
words::Result<double> hours_until(const Course& course, double share);

// One layer in one pan; all of its paint and the area open to the air.
struct Layer {
  Wet wet;
  double area_cm2 = 3; // a half pan; above 0 to 1,000
};

// What is known of its course before anything was weighed, each rate from slow to fast.
struct Drying {
  double free_g = 0;
  Interval constant_g_h;
  Interval falling_per_h;
};

// Constant rate: evaporation_rate of a pan. Falling rate: the slowest mode of diffusion through a
// sheet with one face sealed, pi^2 D / (4 L^2) (Crank, The Mathematics of Diffusion, 1975, ch. 4),
// L the depth when dry; D 1.2e-11 to 5e-11 m2/s, our own, from an independent model's 1e-11 (dry)
// to 4e-10 (wet), so that 80 % of 1 mL in a half pan take the 12 to 48 h of practice.
// Errors: those of evaporation_rate and held_water_g; measure_not_positive, amount_too_large for
// the area; volume_too_small; nothing_to_dry where the room lets it keep all its water.
words::Result<Drying> drying_of(const Layer& layer, const Room& room);

// The share at which the next layer may go on: common practice, no source.
inline constexpr double ready_share = 0.80;

// From all rates fast to all slow. Errors: as hours_until.
words::Result<Interval> layer_hours(const Drying& drying, double share = ready_share);

// A pan with its paint on the scale, so many hours after it was poured.
struct WeighIn {
  double hours = 0;
  double grams = 0;
};

// The same from weighings, which replace the expected speed; only how the two rates stand to each
// other, by a factor of 4 either way, and the free water, +-5 %, are still taken from before. The
// first at 0 h, then one or more in order of time. One factor on the time fitted by least squares,
// for each of those shapes; the interval is the widest of +-2 standard uncertainties, from the
// scale's step (uniform; the first weighing's error is common to all) and the scatter. Weighings
// with less than 2 % or more than 98 % of the water gone say nothing of the speed.
// Errors: not_a_number, negative_amount, measure_not_positive (step), not_a_share;
// weigh_ins_too_few, weigh_ins_out_of_order; weighing_contradicts where more is gone than there
// was, or it gained; weigh_ins_say_nothing.
words::Result<Interval> layer_hours(const Drying& drying, const std::vector<WeighIn>& weigh_ins,
                                    double share = ready_share, double step_g = 0.1);

// g that the layer loses from one moment to a later one, in hours after it was poured, of one that
// is ready after `ready_hours`: its courses go as much slower or faster as that says. They begin
// where the middle one stands at the first moment, so that the range opens from there; the free
// water is known to +-5 %.
// Errors: as hours_until; negative_amount for a time before the pour, or one that runs backwards.
words::Result<Interval> loses_g(const Drying& drying, const Interval& ready_hours, double from_h,
                                double to_h);

}
