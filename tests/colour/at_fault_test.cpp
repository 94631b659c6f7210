// Which region it is about, where a photo cannot tell.
#include "colour/reading.hpp"
#include "colour/scene.hpp"

#include <doctest/doctest.h>

using namespace colour;

namespace {

using Regioned = std::vector<std::size_t>;

constexpr Box swatch{110, 70, 100, 100};
const Regions usual{scene::inside(swatch, 10), scene::paper_around(swatch, 6, 24)};

Photo photo_of(const Lab& colour, double exposure = 0.8) {
  scene::Table table;
  table.swatches = {{swatch, colour}};
  scene::Camera camera;
  camera.exposure = exposure;
  scene::Dice dice(7);
  return scene::photograph(table, camera, dice);
}

Regioned at_fault(const Photo& photo, const Regions& regions) {
  const auto reading = read_swatch(photo, regions);
  REQUIRE_FALSE(reading);
  return regions_at_fault(photo, regions, reading.error());
}

const Photo blue = photo_of({32, 12, -42});

}

TEST_CASE("of several papers, the one that is at fault is named") {
  Regions regions = usual;
  regions.paper[2] = {400, 10, 30, 30}; // beyond the photo
  CHECK(at_fault(blue, regions) == Regioned{3});
  regions = usual;
  regions.paper[0] = {115, 80, 30, 30}; // on the paint
  CHECK(at_fault(blue, regions) == Regioned{1});
}

TEST_CASE("what fails with whatever paper is the swatch's fault") {
  Regions regions = usual;
  regions.swatch = {300, 200, 100, 100};
  CHECK(at_fault(blue, regions) == Regioned{0});
  regions.swatch = {150, 110, 6, 6};
  CHECK(at_fault(blue, regions) == Regioned{0});
}

TEST_CASE("with one paper both are shown, where either may be at fault") {
  Regions regions{usual.swatch, {usual.paper[0]}};
  regions.paper[0] = {115, 80, 30, 30}; // on the paint
  CHECK(at_fault(blue, regions) == Regioned{0, 1});
}

TEST_CASE("paint like its paper is the swatch's fault") {
  CHECK(at_fault(photo_of({99.8, 0, 0}), usual) == Regioned{0});
}

TEST_CASE("paper that is overexposed is all of it at fault") {
  CHECK(at_fault(photo_of({32, 12, -42}, 1.6), usual) == Regioned{1, 2, 3, 4});
}

TEST_CASE("a photo without colours is no region's fault") {
  Photo grey = blue;
  grey.grey = true;
  CHECK(at_fault(grey, usual).empty());
}
