#include "paint/dropper.hpp"

#include "paint/drop.hpp"
#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <limits>

namespace dropper_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double infinite = std::numeric_limits<double>::infinity();
const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2}), {}};

template <class T>
words::Sentence fault(const words::Result<T>& r) {
  return r ? words::Sentence{} : r.error().what;
}

}

TEST_CASE("the law of drops: a share of the hanging drop, growing with tip and tension") {
  CHECK(drop_weight_factor(0) == 1);
  holds("never more falls than hangs, never less than half", [] {
    const double f = drop_weight_factor(between(0, 1.2));
    RC_ASSERT(f <= 1);
    RC_ASSERT(f > 0.5);
  });
  holds("wider tip, stronger skin or lighter liquid: larger drop", [] {
    const double tip = between(0.2, 6.5), tension = between(25, 75), density = between(0.8, 1.5);
    const auto mL = drop_mL(tip, tension, density);
    RC_ASSERT(mL.has_value());
    RC_ASSERT(*drop_mL(tip * 1.01, tension, density) > *mL);
    RC_ASSERT(*drop_mL(tip, tension * 1.01, density) > *mL);
    RC_ASSERT(*drop_mL(tip, tension, density * 1.01) < *mL);
  });
  holds("tip to drop and back", [] {
    const double tip = between(0.2, 6.5), tension = between(25, 75), density = between(0.8, 1.5);
    const double back = *tip_of_drop_mm(*drop_mL(tip, tension, density), tension, density);
    RC_ASSERT(std::abs(back / tip - 1) < 1e-9);
  });
}

TEST_CASE("drops that no tip gives") {
  CHECK(fault(drop_mL(none, 72, 1)) == Say::not_a_number);
  CHECK(fault(drop_mL(3, infinite, 1)) == Say::not_a_number);
  CHECK(fault(drop_mL(0, 72, 1)) == Say::measure_not_positive);
  CHECK(fault(drop_mL(3, 72, -1)) == Say::measure_not_positive);
  CHECK(fault(drop_mL(14, 72.75, 1)) == words::Sentence{});
  CHECK(fault(drop_mL(16, 72.75, 1)) == Say::drop_out_of_range);
  CHECK(fault(tip_of_drop_mm(0, 72, 1)) == Say::measure_not_positive);
  CHECK(fault(tip_of_drop_mm(none, 72, 1)) == Say::not_a_number);
  CHECK(fault(tip_of_drop_mm(1, 72, 1)) == Say::drop_out_of_range);
}

TEST_CASE("a dropper calibrated by weighing drops") {
  holds("gives back the mass that was weighed, with the liquid it was weighed with", [] {
    const double drops = *rc::gen::inRange(5, 200);
    const double g = drops * between(0.02, 0.1);
    for (const Material& m : {water, binder}) {
      const auto d = calibrated("d", {{drops, g}}, 0.01, m);
      RC_ASSERT(d.has_value());
      RC_ASSERT(std::abs(grams_of_drops(drops, *d, m)->value / g - 1) < 1e-9);
    }
  });
  holds("more drops, a finer scale, another weighing: better known", [] {
    const double each = between(0.02, 0.1);
    const auto u = [&](double drops, int times, double step) {
      const std::vector<DropsWeighed> same(static_cast<std::size_t>(times), {drops, drops * each});
      return calibrated("d", same, step, water)->mL_per_drop_u;
    };
    const double drops = *rc::gen::inRange(5, 100);
    RC_ASSERT(u(2 * drops, 1, 0.01) < u(drops, 1, 0.01));
    RC_ASSERT(u(drops, 1, 0.01) < u(drops, 1, 0.1));
    RC_ASSERT(u(drops, 2, 0.01) < u(drops, 1, 0.01));
  });
  // Alike weighings never claim less than the 5 % of each drop.
  const Dropper d = *calibrated("d", {{50, 2.5}, {50, 2.5}}, 1e-6, water);
  CHECK(d.mL_per_drop_u / d.mL_per_drop == doctest::Approx(0.005).epsilon(1e-3));
  const Dropper scattered = *calibrated("d", {{50, 2.0}, {50, 3.0}}, 1e-6, water);
  CHECK(scattered.mL_per_drop_u / scattered.mL_per_drop == doctest::Approx(0.2).epsilon(1e-3));
}

TEST_CASE("calibrations that cannot be") {
  CHECK(fault(calibrated("d", {}, 0.1, water)) == Say::nothing_counted);
  CHECK(fault(calibrated("d", {{0, 1}}, 0.1, water)) == Say::nothing_counted);
  CHECK(fault(calibrated("d", {{none, 1}}, 0.1, water)) == Say::not_a_number);
  CHECK(fault(calibrated("d", {{-3, 1}}, 0.1, water)) == Say::negative_amount);
  CHECK(fault(calibrated("d", {{20, none}}, 0.1, water)) == Say::not_a_number);
  CHECK(fault(calibrated("d", {{20, 1}}, 0, water)) == Say::measure_not_positive);
  CHECK(fault(calibrated("d", {{20, 1}}, 0.1, {})) == Say::density_not_known);
  CHECK(fault(calibrated("d", {{20, 0}}, 0.1, water)) == Say::drop_out_of_range);
  CHECK(fault(calibrated("d", {{20, 20}}, 0.1, water)) == Say::drop_out_of_range);
}

TEST_CASE("a bottle weighed recalibrates the dropper") {
  holds("between what was believed and what was found, and surer than either", [] {
    const Dropper before{.tool = "d", .mL_per_drop = between(0.02, 0.08), .mL_per_drop_u = 0.008};
    const double drops = *rc::gen::inRange(10, 200);
    const Amount believed = *grams_of_drops(drops, before, binder);
    const double found = believed.value * between(0.6, 1.5);
    const Amount weighed{found, 0, {{"bottle", 0.04}}};
    const auto after = recalibrated(before, drops, binder, weighed);
    RC_ASSERT(after.has_value());
    RC_ASSERT(after->calibrated_with == Kind::binder);
    const Amount now = *grams_of_drops(drops, *after, binder);
    RC_ASSERT((now.value - believed.value) * (now.value - found) <= 1e-12);
    const double alone = std::hypot(0.04, std::sqrt(believed.variance));
    RC_ASSERT(now.shares.at("d") < alone);
    RC_ASSERT(now.shares.at("d") < uncertainty(believed));
  });
  const Dropper d{.tool = "d"};
  CHECK(fault(recalibrated(d, 0, water, exact(1))) == Say::nothing_counted);
  CHECK(fault(recalibrated(d, none, water, exact(1))) == Say::not_a_number);
  CHECK(fault(recalibrated(d, 20, water, exact(none))) == Say::not_a_number);
  CHECK(fault(recalibrated(d, 20, {}, exact(1))) == Say::density_not_known);
  CHECK(fault(recalibrated(d, 20, water, exact(50))) == Say::drop_out_of_range);
  // A dropper that is known exactly learns nothing.
  CHECK(recalibrated({.tool = "d", .mL_per_drop_u = 0}, 20, water, {1.2, 0.01, {}})->mL_per_drop ==
        doctest::Approx(0.05));
}

}
