// The water that leaves the slab for the room's air, and what a bench teaches about its rate.
#pragma once

#include "paint/air.hpp"
#include "paint/bench_rate.hpp"
#include "paint/water_activity.hpp"

namespace paint {

// How far the paint is spread. Covered: a jar, nothing leaves.
enum class Spread { covered, gathered, knife, mulling };

struct Interval {
  double low = 0;
  double middle = 0;
  double high = 0;
};

// m2 open to the air (common practice, no source), where there is paint enough: a film is
// never thinner than 0.2 mm. The middle is the geometric mean.
Interval spread_area_m2(Spread spread);

// m2 that so much paint covers: the spread's middle, or less where it would be thinner than that.
double covered_m2(double mL, Spread spread);

enum class Surface { slab, pan };

// kg/(m2 h) from wet paint of water activity 1, proportional to saturation minus what the air
// holds, both at the air's temperature: that the paint cools by some degrees is in the coefficient.
// At 22 °C and 45 %: slab 0.14 (0.08 to 0.26), our own choice between the published formulas for
// large water surfaces and a film that cools by about 5 °C; a pan filled to some millimetres below
// its rim 0.10 (0.05 to 0.20), from an independent model of ten batches.
// Errors: those of room().
words::Result<Interval> evaporation_rate(const Room& room, Surface surface = Surface::slab);

// not_a_number, time_below_zero, time_too_long; absent for seconds of 0 to 1e10.
std::optional<words::Error> fault_of_time(double seconds);

// Water lost after `seconds` at the bench's rate, as taught() in bench_rate.hpp takes it. The paint
// approaches what the room lets it keep, from below too: paint drier than that takes water up by
// the same law. (A skin slows that, so it is the fastest it can be.) Rate is taken as straight in
// the water between fixed points of the paint's activity, so that each stretch is an exponential in
// closed form and two halves of a time make the whole; 0.3 % of the water there was from the law in
// small steps.
// Errors: those of fault_of for each, of room(), of held_water_g (a room above 0.98 dries paint to
// nothing that is known); volume_too_small where the volume is less than its water's.
words::Result<DryingPrediction> predict_drying(const Wet& wet, Spread spread, const Room& room,
                                               double seconds, const BenchRate& bench = {});

}
