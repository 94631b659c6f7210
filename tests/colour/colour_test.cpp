// Numbers of colours: there and back, and at their ends.
#include "colour/difference.hpp"
#include "colour/photo.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace colour;

TEST_CASE("white is white, black is black, and under either light") {
  const Three white_d65 = times(srgb_to_xyz_d65(), {1, 1, 1});
  const Three white_d50 = times(srgb_to_xyz_d50(), {1, 1, 1});
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(white_d65[i] == doctest::Approx(d65[i]));
    CHECK(white_d50[i] == doctest::Approx(d50[i]));
  }
  const Lab white = lab(white_d50, d50), black = lab({0, 0, 0}, d50);
  CHECK(white.l == doctest::Approx(100));
  CHECK(std::abs(white.a) < 1e-9);
  CHECK(std::abs(black.l) < 1e-12);
  const Lab other = under_d65({100, 0, 0});
  CHECK(other.l == doctest::Approx(100));
  CHECK(chroma(other) < 1e-9);
}

TEST_CASE("every level goes to linear light and back") {
  for (int level = 0; level < 256; ++level) {
    const double linear = srgb_to_linear(level / 255.0);
    CHECK(linear_to_srgb(linear) * 255 == doctest::Approx(level).epsilon(1e-4));
    CHECK(static_cast<double>(srgb().linear[1][static_cast<std::size_t>(level)]) ==
          doctest::Approx(linear).epsilon(1e-6));
  }
}

TEST_CASE("CIELAB goes to XYZ and back, the nearly black too") {
  for (const Lab& one : {Lab{50, 20, -30}, {5, 1, -2}, {0.5, 0, 0}, {97, -3, 8}, {8, 0.1, 0.1}}) {
    const Lab back = lab(xyz(one, d50), d50);
    CHECK(back.l == doctest::Approx(one.l));
    CHECK(back.a == doctest::Approx(one.a));
    CHECK(back.b == doctest::Approx(one.b));
  }
}

TEST_CASE("an adaptation there and one back are none") {
  const Matrix both = product(adaptation(d65, d50), adaptation(d50, d65));
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) CHECK(std::abs(both[i][j] - (i == j ? 1 : 0)) < 1e-12);
}

TEST_CASE("which way two colours differ has its sign, and turns round with them") {
  const Lab one{40, 10, -40};
  CHECK(apart(one, {45, 10, -40}).lightness > 0);
  CHECK(apart(one, {40, 12, -48}).chroma > 0);
  const Apart there = apart(one, {42, 14, -36}), back = apart({42, 14, -36}, one);
  CHECK(there.hue > 0); // on from blue towards red
  CHECK(there.lightness == doctest::Approx(-back.lightness));
  CHECK(there.chroma == doctest::Approx(-back.chroma));
  CHECK(there.hue == doctest::Approx(-back.hue));
  CHECK(difference(one, one) == 0);
  CHECK(difference({50, 0, 0}, {50, 0, 0}) == 0);
}

TEST_CASE(
    "a box of the photo seen upright is the same place in its file, on whichever side it lies") {
  for (int orientation = 1; orientation <= 8; ++orientation) {
    CAPTURE(orientation);
    for (const int shrunk : {1, 4}) {
      Photo photo;
      photo.width = 40;
      photo.height = 30;
      photo.orientation = orientation;
      photo.shrunk = shrunk;
      const Size size = upright_size(photo);
      CHECK(size.width == (orientation >= 5 ? 30 : 40) * shrunk);
      const Box box{4 * shrunk, 2 * shrunk, 7 * shrunk, 11 * shrunk};
      CHECK(as_upright(as_stored(box, photo), photo) == box);
      CHECK(lies_in(box, photo));
    }
  }
  Photo photo;
  photo.width = 40;
  photo.height = 30;
  CHECK_FALSE(lies_in({30, 0, 11, 5}, photo));
  CHECK_FALSE(lies_in({0, 0, 0, 5}, photo));
  CHECK_FALSE(lies_in({-1, 0, 5, 5}, photo));
  CHECK_FALSE(lies_in({2147483640, 0, 20, 5}, photo));
  CHECK(lies_in({0, 0, 40, 30}, photo));
}
