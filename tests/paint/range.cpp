#include "paint/range/range.hpp"

#include "paint/range/learn_facts.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

namespace range_test {

using namespace paint;

namespace {

const Pigment mineral{
    .g_per_mL = 4.2, .oil_g_per_100g = 30, .oil_u = 4.5, .family = PigmentClass::mineral};

Prediction untaught() { return *predict(*learn({}), {{{-1, 1, learn_facts(mineral)}}, {}, 0}); }

}

TEST_CASE("a band's edges and chances are those of what is foreseen") {
  const Prediction prediction = untaught();
  const Band band = band_seen(prediction);
  const double usual = 0.12; // ln r_oa of its class; half of what it is off by is followed
  const double followed = usual + (std::log(30 * 4.2 / 93.5) - usual) / 2;
  CHECK(band.middle == doctest::Approx(0.60 + followed).epsilon(0.02));
  CHECK(band.sd > 0.4);
  CHECK(band.sd < 0.7);
  CHECK(band.from < band.middle);
  CHECK(band.middle < band.to);
  CHECK(chance_too_loose(prediction, {std::exp(band.to), 0}) == doctest::Approx(0.5));
  for (double ln = band.from - 1; ln < band.to + 1; ln += 0.01)
    CHECK(std::abs(chance_right(band, std::exp(ln)) - chance_right(prediction, {std::exp(ln), 0})) <
          0.002);
}

TEST_CASE("notes of today narrow the band, and then it is sampled as finely as it needs") {
  Prediction prediction = untaught();
  const double sd = band_seen(prediction).sd;
  for (const auto& [flow, felt] : std::vector<std::pair<double, int>>{
           {1.5, 1}, {1.8, 1}, {2.0, 2}, {2.1, 2}, {2.3, 3}, {2.05, 2}})
    prediction = *after(prediction, {flow, 0, felt});
  const Band band = band_seen(prediction);
  CHECK(band.sd < sd / 4);
  CHECK(chance_right(band, std::exp(band.middle)) > 0.6);
  for (double ln = band.from - 0.2; ln < band.to + 0.2; ln += 0.005)
    CHECK(std::abs(chance_right(band, std::exp(ln)) - chance_right(prediction, {std::exp(ln), 0})) <
          0.01);
}

TEST_CASE("where nothing was sampled there is no chance, and of no flow none is told") {
  const Band band = band_seen(untaught());
  CHECK(chance_right(band, 0) == 0);
  CHECK(chance_right(band, 1e-9) == 0);
  CHECK(chance_right(band, 1e9) == 0);
  CHECK(std::isnan(chance_right(band, -1)));
  CHECK(std::isnan(chance_right(band, std::nan(""))));
  CHECK(chance_right(Band{}, 2) == 0);
}

}
