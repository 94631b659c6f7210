// A swatch read from photos that are what they should be, and from those that cannot tell.
#include "colour/difference.hpp"
#include "colour/propose.hpp"
#include "colour/scene.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace colour;
using scene::Camera;
using scene::Dice;
using scene::Table;

namespace {

constexpr Box blue_box{110, 70, 100, 100};
constexpr Lab blue{32, 12, -42};

Regions around(const Box& box) { return {scene::inside(box, 10), scene::paper_around(box, 6, 24)}; }

Photo photo_of(const Lab& colour, const Camera& camera) {
  Table table;
  table.swatches = {{blue_box, colour}};
  Dice dice(7);
  return scene::photograph(table, camera, dice);
}

Camera noisy() {
  Camera camera;
  camera.read_noise = 0.002;
  camera.shot_noise = 0.01;
  return camera;
}

std::optional<Untold> untold(const Photo& photo, const Regions& regions) {
  const auto reading = read_swatch(photo, regions);
  return reading ? std::nullopt : std::optional(reading.error());
}

}

TEST_CASE("two paints in one frame are told, a wash from light to dark is read") {
  scene::Table table;
  const Box all{100, 70, 120, 100};
  table.swatches = {{{100, 70, 60, 100}, {40, 12, -45}}, {{160, 70, 60, 100}, {45, 50, 30}}};
  scene::Camera camera;
  scene::Dice dice(3);
  const auto read = [&] {
    return read_swatch(scene::photograph(table, camera, dice),
                       {scene::inside(all, 8), scene::paper_around(all, 6, 24)});
  };
  const auto two = read();
  REQUIRE_FALSE(two);
  CHECK(two.error() == Untold::several);
  table.swatches[1].colour = {68, 4, -24};
  CHECK(read());
}

TEST_CASE("a true photo gives the true colour, whichever side it lies on") {
  for (int orientation = 1; orientation <= 8; ++orientation) {
    CAPTURE(orientation);
    Camera camera = noisy();
    camera.orientation = orientation;
    const auto reading = read_swatch(photo_of(blue, camera), around(blue_box));
    REQUIRE(reading);
    CHECK(difference(reading->d50, blue) < 0.5);
    CHECK(difference(reading->d65, under_d65(reading->d50)) < 1e-9);
  }
}

TEST_CASE("light that falls off and a lens that darkens its corners are taken out") {
  Camera camera = noisy();
  camera.exposure = 0.6;
  camera.across = 0.3;
  camera.down = -0.2;
  camera.bow = -0.1;
  const auto reading = read_swatch(photo_of(blue, camera), around(blue_box));
  REQUIRE(reading);
  CHECK(difference(reading->d50, blue) < 0.6);
  CHECK(reading->graded < 2);
}

TEST_CASE("light of another colour is taken out, and leaves its doubt") {
  Camera camera = noisy();
  const auto plain = read_swatch(photo_of(blue, camera), around(blue_box));
  camera.white = {1, 0.75, 0.45};
  const auto warm = read_swatch(photo_of(blue, camera), around(blue_box));
  REQUIRE((plain && warm));
  const std::size_t white = static_cast<std::size_t>(Shared::white);
  CHECK(std::abs(warm->shared[white][2]) > 10 * std::abs(plain->shared[white][2]));
  const Three sd = uncertainty(*warm);
  CHECK(std::abs(warm->d50.b - blue.b) < 2 * sd[2]);
  CHECK(sd[2] > uncertainty(*plain)[2]);
}

TEST_CASE("the paper on one side tells less than the paper around") {
  const Photo photo = photo_of(blue, noisy());
  Regions one_side = around(blue_box);
  one_side.paper.resize(1);
  const auto narrow = read_swatch(photo, one_side), wide = read_swatch(photo, around(blue_box));
  REQUIRE((narrow && wide));
  CHECK(narrow->own[0][0] > 2 * wide->own[0][0]);
}

TEST_CASE("what a photo cannot tell, and why") {
  const Photo photo = photo_of(blue, noisy());
  const Regions good = around(blue_box);
  CHECK_FALSE(untold(photo, good));

  Regions outside = good;
  outside.swatch.x = 300;
  CHECK(untold(photo, outside) == Untold::outside);
  outside = good;
  outside.paper[0].y = -1;
  CHECK(untold(photo, outside) == Untold::outside);

  Regions over = good;
  over.paper[0] = blue_box;
  CHECK(untold(photo, over) == Untold::overlapping);

  Regions small = good;
  small.swatch = {150, 100, 11, 60};
  CHECK(untold(photo, small) == Untold::too_small);

  CHECK(untold(photo, {good.swatch, {}}) == Untold::no_paper);
  CHECK(untold(photo, {{5000, 0, 100, 100}, {}}) == Untold::outside);
  Regions turned{good.paper[0], {good.swatch}};
  CHECK(untold(photo_of({65, -10, -20}, noisy()), turned) == Untold::no_paper);

  Photo grey = photo;
  grey.grey = true;
  CHECK(untold(grey, good) == Untold::no_colours);
}

TEST_CASE("too much light, too little, and what shines") {
  Camera camera = noisy();
  camera.exposure = 1.4;
  CHECK(untold(photo_of(blue, camera), around(blue_box)) == Untold::paper_clipped);
  camera.exposure = 0.04;
  CHECK(untold(photo_of(blue, camera), around(blue_box)) == Untold::paper_dark);
  // A yellow whose red is beyond the paper's, in light that the paper itself just bears.
  camera.exposure = 1;
  CHECK(untold(photo_of({88, 18, 85}, camera), around(blue_box)) == Untold::clipped);

  Table table;
  table.swatches = {{blue_box, blue}};
  for (int i = 0; i < 8; ++i) table.specks.push_back({130.0 + 8 * i, 100, 7, 40});
  Dice dice(8);
  const Photo shining = scene::photograph(table, noisy(), dice);
  CHECK(untold(shining, around(blue_box)) == Untold::gloss);
  table.specks.resize(2);
  const auto reading = read_swatch(scene::photograph(table, noisy(), dice), around(blue_box));
  REQUIRE(reading);
  CHECK(reading->glints > 0);
  CHECK(difference(reading->d50, blue) < 0.7);
}

TEST_CASE("white paint on white paper cannot be told from it; black paint can") {
  CHECK(untold(photo_of({99.3, 0.1, 0.4}, noisy()), around(blue_box)) == Untold::like_paper);
  const auto pale = read_swatch(photo_of({94, -1, 5}, noisy()), around(blue_box));
  CHECK(pale);
  const auto black = read_swatch(photo_of({16, 0.5, 0.5}, noisy()), around(blue_box));
  REQUIRE(black);
  CHECK(std::abs(black->d50.l - 16) < 2 * uncertainty(*black)[0]);
}

TEST_CASE("a wash that gets paler says how much") {
  Table table;
  for (int i = 0; i < 10; ++i)
    table.swatches.push_back({{110, 70 + 10 * i, 100, 10}, {40.0 + 4 * i, 5, -30}});
  Dice dice(9);
  const auto reading = read_swatch(scene::photograph(table, noisy(), dice), around(blue_box));
  REQUIRE(reading);
  CHECK(reading->graded > 15);
}

TEST_CASE("regions are proposed where the swatches lie, whichever side is up") {
  for (const int orientation : {1, 3, 6, 8}) {
    CAPTURE(orientation);
    Table table;
    table.swatches = {{{40, 70, 100, 100}, blue}, {{190, 80, 80, 80}, {60, 40, 50}}};
    Camera camera = noisy();
    camera.orientation = orientation;
    camera.across = 0.2;
    Dice dice(10);
    const auto found = propose_regions(scene::photograph(table, camera, dice));
    REQUIRE(found.size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
      const Box& all = table.swatches[i].box;
      const Box& swatch = found[i].swatch;
      CHECK(swatch.x >= all.x);
      CHECK(swatch.y >= all.y);
      CHECK(swatch.x + swatch.width <= all.x + all.width);
      CHECK(swatch.y + swatch.height <= all.y + all.height);
      CHECK(swatch.width * swatch.height > all.width * all.height / 2);
      CHECK(found[i].paper.size() >= 3);
      for (const Box& paper : found[i].paper)
        for (const auto& any : table.swatches) CHECK_FALSE(overlap(paper, any.box));
    }
  }
}

TEST_CASE("nothing is proposed on bare paper, on a photo of nothing, and on one too small") {
  Table table;
  Dice dice(11);
  CHECK(propose_regions(scene::photograph(table, noisy(), dice)).empty());
  Photo nothing;
  nothing.width = nothing.height = 200;
  nothing.rgb.assign(3 * 200 * 200, 0);
  CHECK(propose_regions(nothing).empty());
  nothing.width = nothing.height = 4;
  nothing.rgb.assign(3 * 4 * 4, 128);
  CHECK(propose_regions(nothing).empty());
  CHECK(propose_regions(Photo{}).empty());
}
