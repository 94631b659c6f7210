#include "window/offscreen.hpp"

#include "window/renderer.hpp"

#include <doctest/doctest.h>
#include <imgui.h>

#include <array>

namespace {

using Rgb = std::array<int, 3>;

Rgb pixel(const window::Picture& picture, int x, int y) {
  const auto at = static_cast<std::size_t>((y * picture.size.w + x) * 3);
  return {picture.rgb[at], picture.rgb[at + 1], picture.rgb[at + 2]};
}

}

// Own regression: what was drawn is what is read, the right way up, the edges included. 33 is odd,
// so that rows of 99 bytes would show any padding.
TEST_CASE("a picture without a display") {
  auto offscreen = window::Offscreen::open({33, 20});
  REQUIRE_MESSAGE(offscreen.has_value(), offscreen.error());
  CHECK(!window::renderer().empty());
  offscreen->begin_frame();
  ImGui::GetBackgroundDrawList()->AddRectFilled({0, 0}, {2, 3}, IM_COL32(255, 0, 0, 255));
  ImGui::GetBackgroundDrawList()->AddRectFilled({32, 19}, {33, 20}, IM_COL32(0, 255, 0, 255));
  const window::Picture picture = offscreen->end_frame({0, 0, 1});
  REQUIRE(picture.size == window::Extent{33, 20});
  REQUIRE(picture.rgb.size() == 33 * 20 * 3);
  CHECK(pixel(picture, 0, 0) == Rgb{255, 0, 0});
  CHECK(pixel(picture, 1, 2) == Rgb{255, 0, 0});
  CHECK(pixel(picture, 2, 2) == Rgb{0, 0, 255});
  CHECK(pixel(picture, 1, 3) == Rgb{0, 0, 255});
  CHECK(pixel(picture, 32, 19) == Rgb{0, 255, 0});
  CHECK(pixel(picture, 0, 19) == Rgb{0, 0, 255});
}

// Each frame starts anew, also after the font texture was thrown away.
TEST_CASE("a second frame, with the fonts made again") {
  auto offscreen = window::Offscreen::open({8, 8});
  REQUIRE(offscreen.has_value());
  offscreen->begin_frame();
  ImGui::GetBackgroundDrawList()->AddRectFilled({0, 0}, {8, 8}, IM_COL32(255, 0, 0, 255));
  CHECK(pixel(offscreen->end_frame({0, 0, 0}), 4, 4) == Rgb{255, 0, 0});
  window::rebuild_font_texture();
  offscreen->begin_frame();
  CHECK(pixel(offscreen->end_frame({0, 1, 0}), 4, 4) == Rgb{0, 255, 0});
}

TEST_CASE("a size that cannot be is said, and the next one opens") {
  for (const window::Extent size : {window::Extent{0, 20}, {20, 0}, {-1, 20}, {20, 16385}}) {
    const auto none = window::Offscreen::open(size);
    REQUIRE(!none.has_value());
    CHECK(none.error().find("16384") != std::string::npos);
  }
  CHECK(window::Offscreen::open({1, 1}).has_value());
}
