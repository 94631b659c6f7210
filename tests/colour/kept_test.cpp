// Readings as they were kept, and repeats.
#include "colour/kept.hpp"
#include "colour/match.hpp"
#include "colour/scene.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace colour;

namespace {

constexpr Lab blue{32, 12, -42};

Reading read_blue() {
  scene::Table table;
  const Box box{110, 70, 100, 100};
  table.swatches = {{box, blue}};
  scene::Camera camera;
  camera.read_noise = 0.002;
  scene::Dice dice(7);
  const auto reading = read_swatch(scene::photograph(table, camera, dice),
                                   {scene::inside(box, 10), scene::paper_around(box, 6, 24)});
  REQUIRE(reading);
  return *reading;
}

}

TEST_CASE("a kept reading knows again what all swatches of its photo share") {
  const Reading read = read_blue(), kept = kept_reading(read.d50, uncertainty(read));
  const Three before = uncertainty(read), after = uncertainty(kept);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(after[i] == doctest::Approx(before[i]).epsilon(0.02));
    for (std::size_t k = 0; k + 1 < shared_parts; ++k) // all but the white
      CHECK(std::abs(kept.shared[k][i] - read.shared[k][i]) < 0.02);
  }
}

TEST_CASE("one that was said to be surer than a camera allows stays as sure") {
  const Reading kept = kept_reading(blue, {0.1, 0.2, 0.3});
  const Three sd = uncertainty(kept);
  CHECK(sd[0] <= 0.1 + 1e-9);
  CHECK(sd[1] <= 0.2 + 1e-9);
  CHECK(sd[2] <= 0.3 + 1e-9);
}

TEST_CASE("on one photo, two kept readings are nearly as sure as on the day they were read") {
  const Lab other{34, 11, -40};
  const Three sd = uncertainty(read_blue());
  const Reading one = kept_reading(blue, sd), two = kept_reading(other, sd);
  const Match together = match(one, two, Taken::one_photo),
              parted = match(one, two, Taken::two_photos);
  CHECK(together.high - together.low < 0.5 * (parted.high - parted.low));
}

TEST_CASE("of one photo, kept with its parts, no more is in doubt than on the day it was read") {
  scene::Table table;
  const Box left{30, 70, 100, 100}, right{190, 70, 100, 100};
  table.swatches = {{left, blue}, {right, {34, 11, -40}}};
  scene::Camera camera;
  camera.read_noise = 0.002;
  camera.white = {1.12, 1, 0.78}; // lamplight: the white is in doubt
  scene::Dice dice(11);
  const Photo photo = scene::photograph(table, camera, dice);
  const auto read = [&](const Box& box) {
    return *read_swatch(photo, {scene::inside(box, 10), scene::paper_around(box, 6, 20)});
  };
  const auto kept = [](const Reading& r, bool with_parts) {
    KeptParts parts;
    for (std::size_t i = 0; i < 3; ++i) parts.own[i] = std::sqrt(r.own[i][i]);
    parts.white = r.shared[static_cast<std::size_t>(Shared::white)];
    return kept_reading(r.d50, uncertainty(r), with_parts ? std::optional(parts) : std::nullopt);
  };
  const Reading one = read(left), two = read(right);
  const Match fresh = match(one, two, Taken::one_photo);
  const Match known = match(kept(one, true), kept(two, true), Taken::one_photo);
  const Match unknown = match(kept(one, false), kept(two, false), Taken::one_photo);
  CHECK(known.low == doctest::Approx(fresh.low).epsilon(0.1));
  CHECK(known.high == doctest::Approx(fresh.high).epsilon(0.1));
  CHECK(unknown.high - unknown.low > 2 * (fresh.high - fresh.low));
  const Match itself = match(kept(one, true), kept(one, true), Taken::one_photo);
  CHECK(itself.high < 0.3); // own choice: no eye sees it
  const Three before = uncertainty(one), after = uncertainty(kept(one, true));
  for (std::size_t i = 0; i < 3; ++i) CHECK(after[i] == doctest::Approx(before[i]).epsilon(0.02));
}

TEST_CASE("repeats that agree make two photos surer, repeats that do not less sure") {
  const Three sd = uncertainty(read_blue());
  Repeats none, close, far;
  const Reading one = kept_reading(blue, sd);
  for (int i = 0; i < 6; ++i) {
    add_repeat(close, one, kept_reading({32.1, 12, -42.1}, sd));
    add_repeat(far, one, kept_reading({36, 16, -36}, sd));
  }
  CHECK(doubt_of(none) == 1);
  CHECK(doubt_of(close) < 0.7);
  CHECK(doubt_of(far) > 1.3);
  CHECK(close.degrees == 18);
}

TEST_CASE("readings of one paint surprise as much as it is said of them") {
  scene::Dice dice(18);
  Repeats repeats;
  Reading one = kept_reading(blue, {0.4, 0.6, 0.8});
  for (Three& by : one.shared) by = {};
  for (std::size_t k = 0; k < 3; ++k) one.own[k][k] = 0.25;
  const auto read = [&] {
    Reading r = one;
    r.d50 = {blue.l + 0.5 * dice.normal(), blue.a + 0.5 * dice.normal(),
             blue.b + 0.5 * dice.normal()};
    return r;
  };
  for (int i = 0; i < 2000; ++i) add_repeat(repeats, read(), read());
  CHECK(doubt_of(repeats) == doctest::Approx(1).epsilon(0.03));
}

namespace {

// Of photos that go wrong less than is said, by this share, as photos of one camera do.
Lab photographed(const Lab& truth, double share, const Three& sd, scene::Dice& dice) {
  const Reading of = kept_reading(truth, sd);
  Three lab{truth.l, truth.a, truth.b};
  for (const Three& by : of.shared) {
    const double z = share * dice.normal();
    for (std::size_t i = 0; i < 3; ++i) lab[i] += z * by[i];
  }
  for (std::size_t i = 0; i < 3; ++i) lab[i] += std::sqrt(of.own[i][i]) * dice.normal();
  return {lab[0], lab[1], lab[2]};
}

struct Told {
  double held = 0, wide = 0; // shares of, and mean over, many workshops
};

Told after_repeats(int repeats, double share) {
  scene::Dice dice(1800 + static_cast<std::uint64_t>(repeats));
  const Three sd = uncertainty(read_blue());
  constexpr int workshops = 1000;
  Told out;
  for (int i = 0; i < workshops; ++i) {
    const auto read = [&](const Lab& truth) {
      return kept_reading(photographed(truth, share, sd, dice), sd);
    };
    Repeats known;
    for (int k = 0; k < repeats; ++k) add_repeat(known, read(blue), read(blue));
    const Lab other{blue.l + 1.5 * dice.normal(), blue.a + 1.5 * dice.normal(),
                    blue.b + 1.5 * dice.normal()};
    const Match m = match(read(blue), read(other), Taken::two_photos, doubt_of(known));
    const double truth = difference(blue, other);
    out.held += (truth >= m.low && truth <= m.high) / double(workshops);
    out.wide += (m.high - m.low) / workshops;
  }
  return out;
}

}

TEST_CASE("after repeats the limits are as near as the photos are true, and hold nine in ten") {
  for (const double share : {1.0, 0.5, 0.25}) {
    double before = 1e9;
    for (const int repeats : {0, 2, 8}) {
      CAPTURE(share);
      CAPTURE(repeats);
      const Told told = after_repeats(repeats, share);
      MESSAGE(share << ", " << repeats << " repeats: held " << told.held << ", " << told.wide
                    << " wide");
      CHECK(told.held >= 0.87);
      if (share < 1) CHECK(told.wide < before);
      before = told.wide;
    }
  }
}
