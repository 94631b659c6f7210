// Specks whose number is known.
#include "colour/scene.hpp"
#include "colour/specks.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace colour;
using scene::Camera;
using scene::Dice;
using scene::Table;

namespace {

constexpr Box dot{20, 20, 360, 260};

// None nearer to another than both are wide.
Table dotted(int specks, double smallest, double largest, double light, Dice& dice) {
  Table table;
  table.width = 400;
  table.height = 300;
  table.swatches = {{dot, {45, 10, -30}}};
  while (static_cast<int>(table.specks.size()) < specks) {
    const scene::Speck one{dice.even(50, 350), dice.even(50, 250), dice.even(smallest, largest),
                           light};
    bool clear = true;
    for (const scene::Speck& other : table.specks)
      clear = clear && std::hypot(one.x - other.x, one.y - other.y) > one.across + other.across + 4;
    if (clear) table.specks.push_back(one);
  }
  return table;
}

Camera noisy(int blur) {
  Camera camera;
  camera.across = 0.2;
  camera.read_noise = 0.002;
  camera.shot_noise = 0.01;
  camera.blur = blur;
  return camera;
}

}

TEST_CASE(
    "as many as there are, dark or light, in and a little out of focus, whichever side is up") {
  for (const int wanted : {0, 1, 12, 60})
    for (const double light : {0.45, 1.9})
      for (const int blur : {0, 1}) {
        CAPTURE(wanted);
        CAPTURE(light);
        CAPTURE(blur);
        Dice dice(static_cast<std::uint64_t>(wanted) + 5);
        Camera camera = noisy(blur);
        camera.orientation = wanted % 8 + 1;
        const Table table = dotted(wanted, 4, 9, light, dice);
        const auto specks =
            count_specks(scene::photograph(table, camera, dice), scene::inside(dot, 20), 20.0);
        REQUIRE(specks);
        CHECK(std::abs(static_cast<int>(specks->found.size()) - wanted) <= wanted / 20);
        for (const Speck& speck : specks->found) {
          double nearest = 1e9;
          for (const scene::Speck& s : table.specks)
            nearest = std::min(nearest, std::hypot(s.x - speck.x, s.y - speck.y));
          CHECK(nearest < 4);
        }
      }
}

TEST_CASE("by the area of paint where there is a scale, by the dot where there is none") {
  Dice dice(3);
  const Photo photo = scene::photograph(dotted(12, 5, 9, 0.45, dice), noisy(0), dice);
  const Box paint = scene::inside(dot, 20);
  const auto scaled = count_specks(photo, paint, 20.0), plain = count_specks(photo, paint, {});
  REQUIRE((scaled && plain));
  REQUIRE(scaled->per_cm2);
  const double cm2 = paint.width / 200.0 * paint.height / 200.0;
  CHECK(*scaled->per_cm2 == doctest::Approx(static_cast<double>(scaled->found.size()) / cm2));
  CHECK_FALSE(plain->per_cm2);
  CHECK(scaled->as_word == Specked::few);
  CHECK(plain->as_word == Specked::few);
  CHECK(count_specks(photo, paint, 60.0)->as_word == Specked::many);
}

TEST_CASE("a brush stroke is no speck") {
  Dice dice(4);
  Table table = dotted(0, 4, 9, 0.45, dice);
  table.swatches.push_back({{100, 150, 200, 3}, {30, 10, -30}});
  const auto specks =
      count_specks(scene::photograph(table, noisy(0), dice), scene::inside(dot, 20), {});
  REQUIRE(specks);
  CHECK(specks->found.empty());
  CHECK(specks->as_word == Specked::none);
}

TEST_CASE("where nothing can be counted, and why") {
  Dice dice(5);
  const Photo photo = scene::photograph(dotted(3, 4, 9, 0.45, dice), noisy(0), dice);
  CHECK(count_specks(photo, {380, 20, 50, 50}, {}).error() == Uncounted::outside);
  CHECK(count_specks(photo, {100, 100, 39, 80}, {}).error() == Uncounted::too_small);
  Photo night = photo;
  for (auto& level : night.rgb) level = level / 64;
  CHECK(count_specks(night, scene::inside(dot, 20), {}).error() == Uncounted::too_dark);
  for (auto& level : night.rgb) level = 5;
  CHECK(count_specks(night, scene::inside(dot, 20), {}).error() == Uncounted::too_dark);
  for (auto& level : night.rgb) level = 6;
  CHECK(count_specks(night, scene::inside(dot, 20), {}).has_value());
}
