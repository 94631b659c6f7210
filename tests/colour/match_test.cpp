// Two swatches beside each other: the limits, and which way.
#include "colour/match.hpp"
#include "colour/scene.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace colour;

namespace {

Reading reading_of(const Lab& lab, double sd) {
  Reading r;
  r.d50 = lab;
  for (std::size_t i = 0; i < 3; ++i) r.own[i][i] = sd * sd;
  return r;
}

}

TEST_CASE("a reading that is sure has no width, one that is not has") {
  const Match sure = match(reading_of({50, 0, 0}, 0), reading_of({53, 0, 0}, 0), Taken::two_photos);
  CHECK(sure.low == sure.difference);
  CHECK(sure.high == sure.difference);
  const Match unsure =
      match(reading_of({50, 0, 0}, 0.3), reading_of({53, 0, 0}, 0.3), Taken::two_photos);
  CHECK(unsure.low < unsure.difference);
  CHECK(unsure.high > unsure.difference);
  CHECK(unsure.low > 0);
}

TEST_CASE("the same read twice may be the same") {
  const Match m =
      match(reading_of({50, 20, 20}, 0.5), reading_of({50.3, 20.2, 19.9}, 0.5), Taken::one_photo);
  CHECK(m.low == 0);
  CHECK(m.high >= m.difference);
}

TEST_CASE("far off, the limits are the normal distribution's") {
  // Of lightness alone, S_L at L* 50 is 1 within a thousandth.
  const Match m = match(reading_of({49, 0, 0}, 0.1), reading_of({51, 0, 0}, 0.1), Taken::one_photo);
  const double sd = std::sqrt(2.0) * 0.1;
  CHECK(std::abs(m.high - (m.difference + 1.645 * sd)) < 0.03);
  CHECK(std::abs(m.low - (m.difference - 1.645 * sd)) < 0.03);
  CHECK(m.lightness.sd == doctest::Approx(sd).epsilon(0.01));
}

TEST_CASE("what a camera did to both cancels on one photo and adds on two") {
  Reading one = reading_of({40, 10, -30}, 0.05), other = reading_of({41, 10, -30}, 0.05);
  one.shared[0] = other.shared[0] = {1.5, 0, 0};
  const Match together = match(one, other, Taken::one_photo);
  const Match parted = match(one, other, Taken::two_photos);
  CHECK(parted.high - parted.low > 4 * (together.high - together.low));
}

TEST_CASE("the limits hold the truth nine times in ten, whatever it is") {
  scene::Dice dice(90);
  // Each way as unsure, and one far more than the others.
  for (const Three& sd : {Three{0.4, 0.4, 0.4}, Three{0.15, 0.5, 1.2}})
    for (const double apart : {0.0, 0.3, 0.8, 1.5, 4.0}) {
      CAPTURE(sd[2]);
      CAPTURE(apart);
      constexpr int times = 2000;
      int held = 0;
      for (int i = 0; i < times; ++i) {
        const Lab one{50, 20, -10};
        const double turn = dice.even(0, 6.283185307), tilt = dice.even(-1, 1);
        const double flat = std::sqrt(1 - tilt * tilt);
        Lab other{50 + apart * tilt, 20 + apart * flat * std::cos(turn),
                  -10 + apart * flat * std::sin(turn)};
        const double truth = difference(one, other);
        Reading first = reading_of(one, 0), second = reading_of(other, 0);
        for (Reading* r : {&first, &second}) {
          r->d50.l += sd[0] * dice.normal();
          r->d50.a += sd[1] * dice.normal();
          r->d50.b += sd[2] * dice.normal();
          for (std::size_t k = 0; k < 3; ++k) r->own[k][k] = sd[k] * sd[k];
        }
        const Match m = match(first, second, Taken::one_photo);
        held += truth >= m.low && truth <= m.high;
      }
      // Where both are nearly the same, the upper limit always holds.
      const double share = held / double(times);
      CHECK(share > 0.87);
      CHECK(share < (apart < 2 ? 0.98 : 0.93));
    }
}

TEST_CASE("which way, in a painter's words") {
  const auto turned = [](const Lab& one, const Lab& other) {
    return match(reading_of(one, 0.1), reading_of(other, 0.1), Taken::one_photo).turned;
  };
  const Lab blue{40, -15, -40}, yellow{80, 0, 70}, orange{60, 40, 60}, red{45, 55, 25},
      green{50, -45, 15}, grey{50, 1, 1};
  CHECK(turned(blue, {40, -18, -38}) == Turned::greener);
  CHECK(turned(blue, {40, -10, -42}) == Turned::redder);
  CHECK(turned(yellow, {80, -8, 69}) == Turned::greener);
  CHECK(turned(yellow, {80, 8, 69}) == Turned::redder);
  CHECK(turned(orange, {60, 36, 63}) == Turned::yellower);
  CHECK(turned(orange, {60, 45, 56}) == Turned::redder);
  CHECK(turned(red, {45, 52, 32}) == Turned::yellower);
  CHECK(turned(red, {45, 57, 18}) == Turned::bluer);
  CHECK(turned(green, {50, -43, 22}) == Turned::yellower);
  CHECK(turned(green, {50, -46, 8}) == Turned::bluer);
  CHECK(turned(grey, {50, 1, 4}) == Turned::warmer);
  CHECK(turned(grey, {50, 1, -3}) == Turned::cooler);
}

TEST_CASE("a blue that is duller is said to be duller, though its hue has turned as well") {
  const Lab vivid{46.4, -3.1, -43.4}, dull{52.7, -7.3, -35.1};
  const Match m = match(reading_of(vivid, 0.3), reading_of(dull, 0.3), Taken::one_photo);
  CHECK(m.chroma.by < -2.5);
  CHECK(tells(m.chroma));
  CHECK(m.lightness.by > 5);
  // CIEDE2000's own terms: dC'/S_C of chroma 43.5 and 35.9.
  const Match back = match(reading_of(dull, 0.3), reading_of(vivid, 0.3), Taken::one_photo);
  CHECK(back.chroma.by == doctest::Approx(-m.chroma.by));
  CHECK(m.difference == doctest::Approx(difference(vivid, dull)));
}

TEST_CASE("a way that is less than its doubt tells nothing") {
  CHECK(tells({1, 0.3}));
  CHECK_FALSE(tells({1, 0.7}));
  CHECK_FALSE(tells({0.4, 0.01}));
  CHECK(tells({-2, 1}));
}

TEST_CASE("what an eye makes of it") {
  CHECK(seen(0) == Seen::not_seen);
  CHECK(seen(1) == Seen::practised_eye);
  CHECK(seen(2) == Seen::any_eye);
  CHECK(seen(3.5) == Seen::clearly);
  CHECK(seen(5) == Seen::another_colour);
}
