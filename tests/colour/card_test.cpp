// Swatches painted on the printed card, on photos of it.
#include "colour/card.hpp"
#include "colour/difference.hpp"
#include "colour/propose.hpp"
#include "colour/scene.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <optional>

using namespace colour;

namespace {

constexpr double px_mm = 5, around_mm = 6;

Box in_pixels(const Place& mm) {
  const auto px = [](double v) { return static_cast<int>(std::lround(v * px_mm)); };
  return {px(mm.x + around_mm), px(mm.y + around_mm), px(mm.w), px(mm.h)};
}

// Linear grey as a colour beside the paper.
Lab grey(double linear) { return lab({linear * d50[0], linear * d50[1], linear * d50[2]}, d50); }

constexpr Place as_painted{6.5, 22, 51, 28};

struct Printed {
  double darker = 1; // what the printer makes of the greys' light
  std::optional<Lab> paint;
  Place at = as_painted;
};

scene::Table table_of(const Printed& printed) {
  const CardPlaces& p = card_places;
  scene::Table table;
  table.width = static_cast<int>((p.w + 2 * around_mm) * px_mm);
  table.height = static_cast<int>((p.h + 2 * around_mm) * px_mm);
  const auto put = [&](const Place& mm, const Lab& look) {
    table.swatches.push_back({in_pixels(mm), look});
  };
  const auto outline = [&](const Place& mm) {
    constexpr double line = 0.2;
    const Lab ink{45, 0, 0};
    put({mm.x, mm.y, mm.w, line}, ink);
    put({mm.x, mm.y + mm.h, mm.w, line}, ink);
    put({mm.x, mm.y, line, mm.h}, ink);
    put({mm.x + mm.w, mm.y, line, mm.h}, ink);
  };
  put(p.light, grey(srgb_to_linear(light_grey / 255.0) * printed.darker));
  put(p.dark, grey(srgb_to_linear(dark_grey / 255.0) * printed.darker));
  for (const Place& each : {Place{0, 0, p.w, p.h}, p.paint, p.white, p.light, p.dark})
    outline(each);
  put({5, 3.5, 22, 3}, {20, 0, 0}); // its name
  for (int i = 0; i <= static_cast<int>(p.scale_mm); ++i)
    put({p.paint.x + i, p.scale_y, 0.2, 3}, {20, 0, 0});
  if (printed.paint) put(printed.at, *printed.paint);
  return table;
}

Photo taken(const Printed& printed, int orientation = 1) {
  scene::Camera camera;
  camera.read_noise = 0.003;
  camera.across = 0.1;
  camera.white = {1, 0.96, 0.86};
  camera.orientation = orientation;
  camera.blur = 1;
  scene::Dice dice(21);
  return scene::photograph(table_of(printed), camera, dice);
}

// The camera was held askew; what it saw beside the card is dark.
Photo turned(const Photo& photo, double degrees) {
  const double by = degrees * std::numbers::pi / 180, c = std::cos(by), s = std::sin(by);
  Photo out = photo;
  for (int y = 0; y < photo.height; ++y)
    for (int x = 0; x < photo.width; ++x) {
      const double u = x - photo.width / 2.0, v = y - photo.height / 2.0;
      const int i = static_cast<int>(std::lround(c * u + s * v + photo.width / 2.0));
      const int j = static_cast<int>(std::lround(c * v - s * u + photo.height / 2.0));
      const bool there = i >= 0 && j >= 0 && i < photo.width && j < photo.height;
      for (int k = 0; k < 3; ++k)
        out.rgb[static_cast<std::size_t>(3 * (y * photo.width + x) + k)] =
            there ? photo.rgb[static_cast<std::size_t>(3 * (j * photo.width + i) + k)] : 20;
    }
  return out;
}

// The colour of the one swatch that is found.
Lab found_on(const Photo& photo) {
  const auto found = propose_regions(photo);
  REQUIRE(found.size() == 1);
  const auto reading = read_swatch(photo, found.front());
  REQUIRE(reading);
  return reading->d50;
}

const Lab cobalt{45, 2, -40}, ochre{62, 14, 50}, black{20, 0.5, 0.5}, middle_grey{55, 0, 0},
    pale{94, -2, -5}, white{97, -1, 1};

}

TEST_CASE("on its own card the paint is found, and the greys are no swatches") {
  for (const Lab& paint : {cobalt, ochre, black, middle_grey, pale, white}) {
    CAPTURE(paint.l);
    for (int orientation = 1; orientation <= 8; ++orientation) {
      CAPTURE(orientation);
      CHECK(difference(found_on(taken({1, paint}, orientation)), paint) < 1.5);
    }
  }
}

TEST_CASE("the card is found as printers and hands make it") {
  for (const double darker : {0.7, 1.3}) {
    CAPTURE(darker);
    CHECK(difference(found_on(taken({darker, cobalt})), cobalt) < 1.5);
  }
  for (const double degrees : {-20.0, -6.0, 6.0, 20.0}) {
    CAPTURE(degrees);
    CHECK(difference(found_on(turned(taken({1, ochre}), degrees)), ochre) < 1.5);
  }
  // A stroke that covers a third of the field, and one beyond its line.
  CHECK(difference(found_on(taken({1, pale, {9, 24, 24, 18}})), pale) < 1.5);
  CHECK(difference(found_on(taken({1, cobalt, {3, 17.5, 58, 36}})), cobalt) < 1.5);
}

TEST_CASE("on an empty card there is no paint to be told from the paper") {
  const Photo photo = taken({});
  const auto found = propose_regions(photo);
  REQUIRE(found.size() == 1);
  const auto reading = read_swatch(photo, found.front());
  REQUIRE_FALSE(reading);
  CHECK(reading.error() == Untold::like_paper);
}

TEST_CASE("two greys beside each other are swatches, where no card is around them") {
  scene::Table table;
  table.swatches = {{{100, 40, 70, 70}, grey(0.5)}, {{100, 117, 70, 70}, grey(0.18)}};
  scene::Dice dice(22);
  CHECK(propose_regions(scene::photograph(table, {}, dice)).size() == 2);
}
