#include "paint/pans.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();

double share() { return *rc::gen::inRange(1, 1000) / 1000.0; }
double some(int most) { return *rc::gen::inRange(1, most * 100) / 100.0; }

}

TEST_CASE("each layer adds, and none fills a pan beyond its brim") {
  CHECK(rc::check("monotone", [] {
    const double capacity = some(5), f = share();
    const int layers = *rc::gen::inRange(0, 30);
    const double fill = *fill_mL(capacity, f, layers), more = *fill_mL(capacity, f, layers + 1);
    RC_ASSERT(more >= fill);
    RC_ASSERT(more <= capacity);
    RC_ASSERT(*fill_mL(capacity, std::min(1.0, f + 0.001), layers) >= fill);
  }));
  CHECK(fill_mL(2, 0, 9) == 0);
  CHECK(fill_mL(2, 1, 1) == 2);
  CHECK(fill_mL(2, 0.5, 0) == 0);
}

TEST_CASE("volume is conserved: what dried is the dry share of what was poured") {
  CHECK(rc::check("conserved", [] {
    const double capacity = some(5), f = share();
    const int layers = *rc::gen::inRange(0, 30);
    const double wet = *wet_for_pan_mL(capacity, f, layers);
    RC_ASSERT(std::abs(wet * f - *fill_mL(capacity, f, layers)) < 1e-9 * (capacity + wet));
    // The same poured one by one.
    double poured = 0, held = 0;
    for (int i = 0; i < layers; ++i) {
      poured += capacity - held;
      held += (capacity - held) * f;
    }
    RC_ASSERT(std::abs(poured - wet) < 1e-9 * (1 + wet));
  }));
  CHECK(wet_for_pan_mL(2, 0, 3) == 6); // nothing stays, the pan is empty each time
  CHECK(wet_for_pan_mL(2, 1, 3) == 2);
}

TEST_CASE("the fewest layers: one less would not do") {
  CHECK(rc::check("fewest", [] {
    const double fill = share() * 0.99, f = *rc::gen::inRange(100, 1001) / 1000.0;
    const int layers = *layers_to(fill, f);
    RC_ASSERT(*fill_mL(1, f, layers) >= fill - 1e-9);
    if (layers > 0) RC_ASSERT(*fill_mL(1, f, layers - 1) < fill);
  }));
  CHECK(layers_to(0, 0.5) == 0);
  CHECK(layers_to(0.75, 0.5) == 2);
  CHECK(layers_to(1, 1) == 1);
  CHECK(layers_to(1, 0.5).value_or(0) > 30); // within a rounding of the brim
  CHECK(layers_to(0.5, 0).error().what == Say::fill_out_of_reach);
  CHECK(layers_to(1, 0.1).error().what == Say::fill_out_of_reach);
  CHECK(layers_to(none, 0.5).error().what == Say::not_a_number);
  CHECK(layers_to(1.1, 0.5).error().what == Say::not_a_share);
}

TEST_CASE("pans for a batch and a batch for pans are each other's inverse") {
  CHECK(rc::check("inverse", [] {
    const int pans = *rc::gen::inRange(0, 200);
    const double capacity = some(4), f = *rc::gen::inRange(200, 1000) / 1000.0, fill = 0.9;
    const PanPlan wanted = *batch_for(pans, capacity, f, fill);
    const PanPlan got = *pans_of(wanted.wet_mL, capacity, f, fill);
    RC_ASSERT(got.pans == pans);
    RC_ASSERT(got.layers == wanted.layers);
    RC_ASSERT(got.fill_mL >= 0.9 * capacity - 1e-9);
    // Less than one more pan's worth stays over.
    const double batch = wanted.wet_mL + *wet_for_pan_mL(capacity, f, wanted.layers) * 0.99;
    RC_ASSERT(pans_of(batch, capacity, f, fill)->pans == pans);
  }));
}

TEST_CASE("pans that cannot be are errors") {
  CHECK(fill_mL(0, 0.5, 1).error().what == Say::measure_not_positive);
  CHECK(fill_mL(none, 0.5, 1).error().what == Say::not_a_number);
  CHECK(fill_mL(1001, 0.5, 1).error().what == Say::amount_too_large);
  CHECK(fill_mL(2, 1.01, 1).error().what == Say::not_a_share);
  CHECK(fill_mL(2, 0.5, -1).error().what == Say::layers_out_of_range);
  CHECK(fill_mL(2, 0.5, 101).error().what == Say::layers_out_of_range);
  CHECK(wet_for_pan_mL(2, none, 1).error().what == Say::not_a_number);
  CHECK(pans_of(-1, 2, 0.5, 0.9).error().what == Say::negative_amount);
  CHECK(pans_of(endless, 2, 0.5, 0.9).error().what == Say::not_a_number);
  CHECK(pans_of(5001, 2, 0.5, 0.9).error().what == Say::amount_too_large);
  CHECK(pans_of(5000, 1e-3, 0.5, 0.5).error().what == Say::amount_too_large);
  CHECK(pans_of(10, 2, 0.5, 0).error().what == Say::not_a_share);
  CHECK(batch_for(-1, 2, 0.5, 0.9).error().what == Say::negative_amount);
  CHECK(batch_for(10001, 2, 0.5, 0.9).error().what == Say::amount_too_large);
  CHECK(batch_for(3, 2, 0, 0.9).error().what == Say::fill_out_of_reach);
}

TEST_CASE("dry over wet: one bound below lambda 1, two above it") {
  CHECK(rc::check("bounds", [] {
    const Film film{some(5), some(5), 0};
    const double critical = share(), solid = film.pigment_mL + film.binder_mL;
    const double wet = solid * (1 + some(3));
    const Interval f = *dry_over_wet(film, critical, wet);
    RC_ASSERT(f.low > 0);
    RC_ASSERT(f.low <= f.middle);
    RC_ASSERT(f.middle <= f.high);
    RC_ASSERT(f.high <= 1);
    const bool loose = *lambda(*pvc(film), critical) > 1 + 1e-12;
    if (!loose) RC_ASSERT(f.high - f.low < 1e-12);
    if (loose) RC_ASSERT(f.high > f.low);
  }));
  CHECK(dry_over_wet({2, 1, 0}, 0.5, 4)->high == 1); // 4 mL loose, and no more than there was
  CHECK(dry_over_wet({2, 1, 0}, 0.5, 2.9).error().what == Say::wet_less_than_dry);
  CHECK(dry_over_wet({2, 1, 0}, 0, 6).error().what == Say::not_a_share);
  CHECK(dry_over_wet({2, 1, 0}, none, 6).error().what == Say::not_a_number);
  CHECK(dry_over_wet({2, 1, 0}, 0.5, endless).error().what == Say::not_a_number);
  CHECK(dry_over_wet({2, 1, 0}, 0.5, 0).error().what == Say::measure_not_positive);
  CHECK(dry_over_wet({}, 0.5, 1).error().what == Say::nothing_to_dry);
}
