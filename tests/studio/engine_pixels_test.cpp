// Pictures as a browser's engine gives them.
#include "studio/engine_pixels.hpp"
#include "studio/jpg_tags.hpp"
#include "studio/picture.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>

namespace engine_pixels_test {

namespace {

using studio::EnginePixels;

std::string file(const std::string& name) {
  std::ifstream in(SLABSIDE_ROOT "/tests/studio/pictures/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}

TEST_CASE("what is see-through of a picture is laid over white") {
  EnginePixels pixels{3, 1, {10, 20, 30, 255, 0, 0, 0, 0, 100, 0, 255, 51}};
  CHECK(studio::lay_over_white(pixels));
  CHECK(pixels.rgba ==
        std::vector<std::uint8_t>{10, 20, 30, 255, 255, 255, 255, 255, 224, 204, 255, 255});
  CHECK_FALSE(studio::lay_over_white(pixels));
}

TEST_CASE("an engine's pixels are a photo with what its file says of it") {
  const std::string bytes = file("base.jpg");
  const studio::JpgTags tags = studio::jpg_tags(bytes);
  REQUIRE(tags.light_step > 0);
  const auto photo = studio::photo_of(bytes, {2, 1, {1, 2, 3, 255, 4, 5, 6, 255}}, 4);
  REQUIRE(photo);
  CHECK(photo->width == 2);
  CHECK(photo->height == 1);
  CHECK(photo->rgb == std::vector<std::uint8_t>{1, 2, 3, 4, 5, 6});
  CHECK(photo->orientation == 1); // the engine has turned it
  CHECK(colour::upright_size(*photo).width == 8);
  CHECK(photo->light_step == tags.light_step);
  CHECK(photo->colour_step == tags.colour_step);
  CHECK_FALSE(photo->grey);
  CHECK_FALSE(photo->see_through);
  const auto grey = studio::photo_of(file("two.png"), {1, 1, {9, 9, 9, 0}}, 1);
  REQUIRE(grey);
  CHECK(grey->grey);
  CHECK(grey->see_through);
  CHECK(grey->light_step == 0);
}

TEST_CASE("other bytes than those of so many pixels are no photo") {
  for (const EnginePixels& pixels :
       {EnginePixels{}, EnginePixels{2, 2, {1, 2, 3, 255}}, EnginePixels{-1, -1, {1, 2, 3, 255}}})
    CHECK_FALSE(studio::photo_of("", pixels, 1));
}

TEST_CASE("a picture is made no smaller than it must be to hold it") {
  using studio::PictureKind;
  CHECK(studio::shrunk_for({PictureKind::jpg, 3264, 2448, 0}, 8e6) == 1);
  CHECK(studio::shrunk_for({PictureKind::jpg, 4032, 3024, 0}, 8e6) == 2);
  CHECK(studio::shrunk_for({PictureKind::png, 8000, 8000, 0}, 8e6) == 4);
  CHECK(studio::shrunk_for({PictureKind::png, 8000, 8000, 0}, 1) == 8); // and no smaller than that
}

}
