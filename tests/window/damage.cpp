#include "window/canvas.hpp"
#include "window/offscreen.hpp"

#include <doctest/doctest.h>
#include <imgui.h>

#include <algorithm>
#include <functional>
#include <random>
#include <string>

namespace {

using window::Area;

constexpr window::Extent size{200, 120};
constexpr window::Colour ground{0, 0, 1};
using Draw = std::function<void(ImDrawList&)>;

struct Paper {
  window::Offscreen offscreen = open();

  static window::Offscreen open() {
    auto opened = window::Offscreen::open(size);
    REQUIRE_MESSAGE(opened.has_value(), opened.error());
    return *std::move(opened);
  }

  std::vector<window::Piece> pieces(const Draw& draw) {
    begin(draw);
    ImGui::Render();
    return window::pieces_of(*ImGui::GetDrawData());
  }
  std::vector<Area> damage(const Draw& before, const Draw& now) {
    const auto old = pieces(before);
    return window::damage(old, pieces(now));
  }
  window::Picture whole(const Draw& draw) {
    begin(draw);
    return offscreen.end_frame(ground);
  }
  std::vector<Area> onto(window::Canvas& canvas, const Draw& draw) {
    begin(draw);
    return canvas.draw(size, ground);
  }

private:
  void begin(const Draw& draw) {
    offscreen.begin_frame();
    draw(*ImGui::GetBackgroundDrawList());
  }
};

Draw box(float x, float y, ImU32 colour = IM_COL32_WHITE) {
  return [=](ImDrawList& list) { list.AddRectFilled({x, y}, {x + 20, y + 10}, colour); };
}

Draw both(const Draw& a, const Draw& b) {
  return [=](ImDrawList& list) {
    a(list);
    b(list);
  };
}

bool covers(const std::vector<Area>& areas, const Area& what) {
  return std::any_of(areas.begin(), areas.end(), [&](const Area& a) {
    return a.left <= what.left && a.top <= what.top && a.right >= what.right &&
           a.bottom >= what.bottom;
  });
}

bool apart(const std::vector<Area>& areas) {
  for (std::size_t i = 0; i < areas.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) {
      const Area &a = areas[i], &b = areas[k];
      if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        return false;
    }
  return true;
}

}

TEST_CASE("what stays is no damage; what moves is, where it was and where it is") {
  Paper paper;
  const Draw still = box(150, 90);
  CHECK(paper.damage(both(still, box(10, 10)), both(still, box(10, 10))).empty());
  const auto moved = paper.damage(both(box(10, 10), still), both(box(100, 10), still));
  CHECK(moved.size() == 2);
  CHECK(apart(moved));
  CHECK(covers(moved, {10, 10, 30, 20}));
  CHECK(covers(moved, {100, 10, 120, 20}));
  CHECK(!covers(moved, {150, 90, 170, 100}));
  CHECK(covers(paper.damage(still, both(box(10, 10), still)), {10, 10, 30, 20}));
  CHECK(covers(paper.damage(both(still, box(10, 10)), still), {10, 10, 30, 20}));
}

TEST_CASE("another colour, another order and another clip are damage") {
  Paper paper;
  const Draw red = box(10, 10, IM_COL32(255, 0, 0, 255)), white = box(20, 15);
  CHECK(covers(paper.damage(box(10, 10), red), {10, 10, 30, 20}));
  CHECK(covers(paper.damage(both(red, white), both(white, red)), {20, 15, 30, 20}));
  const auto clipped = [&](float right) {
    return Draw([=](ImDrawList& list) {
      list.PushClipRect({0, 0}, {right, 120});
      red(list);
      list.PopClipRect();
    });
  };
  CHECK(covers(paper.damage(clipped(15), clipped(25)), {15, 10, 25, 20}));
}

TEST_CASE("of very many changes the areas stay few and apart") {
  Paper paper;
  const auto many = [](ImU32 colour) {
    return Draw([=](ImDrawList& list) {
      for (int i = 0; i < 36; ++i) {
        const float x = static_cast<float>(i % 9) * 22, y = static_cast<float>(i / 9) * 30;
        list.AddRectFilled({x, y}, {x + 3, y + 3}, colour);
      }
    });
  };
  const auto areas = paper.damage(many(IM_COL32_WHITE), many(IM_COL32_BLACK));
  CHECK(areas.size() <= 12);
  CHECK(apart(areas));
  for (int i = 0; i < 36; ++i)
    CHECK(covers(areas, {i % 9 * 22, i / 9 * 30, i % 9 * 22 + 3, i / 9 * 30 + 3}));
}

namespace {

// Round and slanted, half clear, clipped and lettered, from one seed always the same.
Draw anything(unsigned seed) {
  return [seed](ImDrawList& list) {
    std::mt19937 random(seed);
    const auto up_to = [&](int n) { return static_cast<float>(random() % (n * 16u)) / 16; };
    const auto colour = [&] { return static_cast<ImU32>(random()) | 0x60000000u; };
    const auto place = [&] { return ImVec2(up_to(200), up_to(120)); };
    for (unsigned i = 0, count = random() % 6 + 1; i < count; ++i) {
      const ImVec2 corner = place();
      list.PushClipRect(corner, {corner.x + up_to(150), corner.y + up_to(90)}, true);
      list.AddCircleFilled(place(), up_to(30), colour());
      list.AddRect(place(), place(), colour(), 4, 0, up_to(5));
      const ImVec2 line[] = {place(), place(), place()};
      list.AddPolyline(line, 3, colour(), 0, up_to(4));
      list.AddText(nullptr, 13, place(), colour(), "a drop");
      list.PopClipRect();
    }
  };
}

}

// Some things stay from picture to picture, some come and some go.
TEST_CASE("a picture drawn where it changed is the picture drawn whole") {
  Paper paper;
  window::Canvas canvas;
  int in_part = 0;
  for (unsigned i = 0; i < 150; ++i) {
    CAPTURE(i);
    const Draw draw = both(both(anything(i / 7), anything(1000 + i / 3)), anything(2000 + i / 2));
    const auto areas = paper.onto(canvas, draw);
    const window::Picture in_parts = window::read_pixels(size);
    std::int64_t drawn = 0;
    for (const Area& area : areas) drawn += area.pixels();
    in_part += drawn < size.w * size.h;
    CHECK(paper.onto(canvas, draw).empty());
    REQUIRE(paper.whole(draw).rgb == in_parts.rgb);
  }
  CHECK(in_part > 50);
}

TEST_CASE("another ground, other letters and a picture forgotten are drawn whole") {
  Paper paper;
  window::Canvas canvas;
  const Draw draw = box(10, 10);
  const std::vector<Area> all{{0, 0, size.w, size.h}};
  CHECK(paper.onto(canvas, draw) == all);
  CHECK(paper.onto(canvas, draw).empty());
  canvas.forget();
  CHECK(paper.onto(canvas, draw) == all);
  window::rebuild_font_texture();
  CHECK(paper.onto(canvas, draw) == all);
  CHECK(paper.onto(canvas, draw).empty());
  paper.offscreen.begin_frame();
  draw(*ImGui::GetBackgroundDrawList());
  CHECK(canvas.draw(size, {1, 0, 0}) == all);
}

TEST_CASE("a framebuffer that keeps a picture tells when it is new") {
  Paper paper;
  window::Kept kept;
  CHECK(!kept.bind(size));
  window::Canvas canvas;
  paper.onto(canvas, box(10, 10));
  const window::Picture first = window::read_pixels(size);
  CHECK(kept.bind(size));
  paper.onto(canvas, box(10, 10));
  CHECK(window::read_pixels(size).rgb == first.rgb);
  CHECK(!kept.bind({50, 50}));
}
