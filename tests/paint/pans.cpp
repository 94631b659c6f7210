#include "paint/pans.hpp"

#include "turned_round.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

namespace pans_test {

using namespace paint;
using turned_round::pan_of_layers;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();

double share() { return *rc::gen::inRange(1, 1000) / 1000.0; }
double some(int most) { return *rc::gen::inRange(1, most * 100) / 100.0; }

}

TEST_CASE("each layer adds, and none fills a pan beyond its brim") {
  CHECK(rc::check("monotone", [] {
    const double capacity = some(5), f = share();
    const int layers = *rc::gen::inRange(1, 30);
    const double fill = pan_of_layers(capacity, f, layers).fill_mL;
    const double more = pan_of_layers(capacity, f, layers + 1).fill_mL;
    RC_ASSERT(more >= fill);
    RC_ASSERT(more <= capacity);
    RC_ASSERT(pan_of_layers(capacity, std::min(0.999, f + 0.001), layers).fill_mL >= fill - 1e-9);
  }));
  CHECK(pan_of_layers(2, 1, 1).fill_mL == 2);
}

TEST_CASE("volume is conserved: what dried is the dry share of what was poured") {
  CHECK(rc::check("conserved", [] {
    const double capacity = some(5), f = share();
    const int layers = *rc::gen::inRange(1, 30);
    const PanPlan pan = pan_of_layers(capacity, f, layers);
    RC_ASSERT(std::abs(pan.wet_mL * f - pan.fill_mL) < 1e-9 * (capacity + pan.wet_mL));
    // The same poured one by one.
    double poured = 0, held = 0;
    for (int i = 0; i < pan.layers; ++i) {
      poured += capacity - held;
      held += (capacity - held) * f;
    }
    RC_ASSERT(std::abs(poured - pan.wet_mL) < 1e-9 * (1 + pan.wet_mL));
  }));
  CHECK(pan_of_layers(2, 1, 3).wet_mL == 2);
}

TEST_CASE("the fewest layers: one less would not do") {
  CHECK(rc::check("fewest", [] {
    const double fill = share() * 0.99, f = *rc::gen::inRange(100, 1001) / 1000.0;
    const int layers = *layers_to(fill, f);
    const auto filled = [&](int n) { return 1 - std::pow(1 - f, n); };
    RC_ASSERT(filled(layers) >= fill - 1e-9);
    if (layers > 0) RC_ASSERT(filled(layers - 1) < fill);
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
    const double batch = wanted.wet_mL + pan_of_layers(capacity, f, wanted.layers).wet_mL * 0.99;
    RC_ASSERT(pans_of(batch, capacity, f, fill)->pans == pans);
  }));
}

TEST_CASE("pans that cannot be are errors") {
  CHECK(batch_for(1, 0, 0.5, 0.5).error().what == Say::measure_not_positive);
  CHECK(batch_for(1, none, 0.5, 0.5).error().what == Say::not_a_number);
  CHECK(batch_for(1, 1001, 0.5, 0.5).error().what == Say::amount_too_large);
  CHECK(batch_for(1, 2, 1.01, 0.5).error().what == Say::not_a_share);
  CHECK(batch_for(1, 2, none, 0.5).error().what == Say::not_a_number);
  CHECK(pans_of(-1, 2, 0.5, 0.9).error().what == Say::negative_amount);
  CHECK(pans_of(endless, 2, 0.5, 0.9).error().what == Say::not_a_number);
  CHECK(pans_of(5001, 2, 0.5, 0.9).error().what == Say::amount_too_large);
  CHECK(pans_of(5000, 1e-3, 0.5, 0.5).error().what == Say::amount_too_large);
  CHECK(pans_of(10, 2, 0.5, 0).error().what == Say::not_a_share);
  CHECK(batch_for(-1, 2, 0.5, 0.9).error().what == Say::negative_amount);
  CHECK(batch_for(10001, 2, 0.5, 0.9).error().what == Say::amount_too_large);
  CHECK(batch_for(3, 2, 0, 0.9).error().what == Say::fill_out_of_reach);
}

TEST_CASE("dry over wet: one bound below the critical concentration, two above it") {
  CHECK(rc::check("bounds", [] {
    const Film film{some(5), some(5), 0};
    const double critical = share(), solid = film.pigment_mL + film.binder_mL;
    const double wet = solid * (1 + some(3));
    const Interval f = *dry_over_wet(film, critical, wet);
    RC_ASSERT(f.low > 0);
    RC_ASSERT(f.low <= f.middle);
    RC_ASSERT(f.middle <= f.high);
    RC_ASSERT(f.high <= 1);
    const bool loose = *pvc(film) / critical > 1 + 1e-12;
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

}
