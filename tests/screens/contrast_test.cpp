// Contrast as it is in framebuffers, by WCAG 2.2: 7:1 for text (1.4.6), 3:1 for outlines and marks
// that carry meaning (1.4.11), against what lies on either side of them.
#include "screens/draw.hpp"
#include "screens/eyes.hpp"
#include "screens/marks.hpp"
#include "screens/measure.hpp"
#include "screens/paint.hpp"
#include "screens/theme.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace contrast_test {

using namespace screens;
using eyes::contrast;
using eyes::Frame;

namespace {

constexpr double px_per_mm = 1280 / 218.0; // a 10" tablet of 1280 x 800, coarser than most

struct Measured {
  double ratio = 21;
  Colour ink, ground;
};

// The ink that differs most from the same frame without words, beside the worst of the ground.
Measured measure(const Text& text, const Frame& with, const Frame& bare) {
  const double w = width_mm(text.words, text.cap_mm, text.bold);
  const double left = text.anchor == Anchor::left     ? text.at.x
                      : text.anchor == Anchor::centre ? text.at.x - w / 2
                                                      : text.at.x - w;
  const auto px = [](double mm) { return static_cast<int>(std::lround(mm * px_per_mm)); };
  Measured out;
  int most = -1;
  std::vector<Colour> grounds;
  for (int y = px(text.at.y - text.cap_mm); y < px(text.at.y); ++y)
    for (int x = px(left); x <= px(left + w); ++x) {
      const Colour ground = bare.pixel(x, y), seen = with.pixel(x, y);
      if (grounds.empty() || !(grounds.back() == ground)) grounds.push_back(ground);
      if (eyes::apart(seen, ground) <= most) continue;
      most = eyes::apart(seen, ground);
      out.ink = seen;
    }
  for (const Colour ground : grounds)
    if (contrast(out.ink, ground) < out.ratio) {
      out.ratio = contrast(out.ink, ground);
      out.ground = ground;
    }
  return out;
}

std::string hex(Colour c) {
  char text[8];
  std::snprintf(text, sizeof text, "#%02x%02x%02x", c.r, c.g, c.b);
  return text;
}

struct Counted {
  int texts = 0, marks = 0;
};

int check_texts(const std::vector<Shape>& shapes, const Frame& with, const Frame& bare) {
  int count = 0;
  for (const Shape& shape : eyes::unveiled(shapes)) {
    const auto* text = std::get_if<Text>(&shape);
    if (!text || text->words.empty()) continue;
    const Measured m = measure(*text, with, bare);
    CHECK_MESSAGE(m.ratio >= 7, text->words << ": " << hex(m.ink) << " on " << hex(m.ground));
    ++count;
  }
  return count;
}

int check_marks(const std::vector<Shape>& without_texts, const Frame& bare) {
  int count = 0;
  for (const Shape& shape : eyes::unveiled(without_texts)) {
    const auto edge = eyes::edge_of(shape, bare);
    if (!edge || edge->seen == std::array{0, 0}) continue;
    CHECK_MESSAGE(!edge->too_faint(), eyes::described(shape)
                                          << ": " << hex(edge->ink) << " beside "
                                          << hex(edge->beside) << ", " << edge->worst << ":1");
    ++count;
  }
  return count;
}

// Of both by the same two frames: those take most of the time.
Counted check(eyes::Eyes& eyes, const bench::View& view) {
  const auto shapes = draw(view), bare_shapes = eyes::without_texts(shapes);
  const Frame with = eyes.look(view), bare = eyes.look(bare_shapes, backdrop(view));
  return {check_texts(shapes, with, bare), check_marks(bare_shapes, bare)};
}

// Every view, by day and by night, on one framebuffer a display: of five the usual tablet, lying
// and upright, for the others lay the same inks on the same grounds, and frames take most of the
// time.
Counted check_every_view() {
  constexpr bench::Size lying{218, 136}, upright{136, 218};
  std::optional<eyes::Eyes> eyes;
  bench::Size mm;
  Counted all;
  for (auto& c : views::all()) {
    if (!(c.mm == lying || c.mm == upright)) continue;
    if (!eyes || !(c.mm == mm)) {
      eyes.reset();
      eyes.emplace(mm = c.mm, px_per_mm);
    }
    for (const bool night : {false, true}) {
      CAPTURE(c.name);
      CAPTURE(night);
      c.view.top_bar.night = night;
      const Counted counted = check(*eyes, c.view);
      all.texts += counted.texts;
      all.marks += counted.marks;
    }
  }
  return all;
}

}

// 21:1 is the end of the scale by the standard's own definition. #777777 on white is the well-known
// grey that just misses 4.5:1, #767676 the one that just has it (both from memory).
TEST_CASE("the formula gives the values of the standard") {
  CHECK(contrast(rgb(0xFFFFFF), rgb(0x000000)) == doctest::Approx(21));
  CHECK(contrast(rgb(0x777777), rgb(0xFFFFFF)) == doctest::Approx(4.48).epsilon(0.002));
  CHECK(contrast(rgb(0xFFFFFF), rgb(0x767676)) == doctest::Approx(4.54).epsilon(0.002));
}

TEST_CASE("a measure that must fail: a faint word, a faint ring, and a word half on its own ink") {
  eyes::Eyes eyes({40, 20}, px_per_mm);
  const Colour white = rgb(0xFFFFFF), grey = rgb(0x777777), black = rgb(0x000000);
  const Text word{{5, 10}, Anchor::left, 2.9, false, grey, "word", 0};
  const Disc ring{{30, 10}, 4, clear, rgb(0xBBBBBB), 0.6},
      clear_ring{{30, 10}, 4, clear, black, 0.6};
  const Frame bare = eyes.look(std::vector<Shape>{}, white);
  const Measured faint = measure(word, eyes.look({word}, white), bare);
  CHECK(faint.ratio == doctest::Approx(4.48).epsilon(0.01));
  const Shape half = Box{{0, 0, 10, 20}, 0, grey, screens::clear, 0};
  CHECK(measure(word, eyes.look({half, word}, white), eyes.look({half}, white)).ratio < 1.1);
  const auto edge = eyes::edge_of(ring, eyes.look({ring}, white));
  REQUIRE(edge);
  CHECK(edge->too_faint());
  const auto plain = eyes::edge_of(clear_ring, eyes.look({clear_ring}, white));
  REQUIRE(plain);
  CHECK(plain->faint == std::array{0, 0});
  CHECK(plain->seen[0] > 20);
}

TEST_CASE("on every screen words have 7:1 on what lies under them; outlines and marks 3:1 beside") {
  const Counted all = check_every_view();
  CHECK(all.texts > 5000);
  CHECK(all.marks > 5000);
}

TEST_CASE("what is pressed reads as well as what is not") {
  std::optional<eyes::Eyes> eyes;
  const auto all = views::all();
  for (const char* name : {"slab, running, 218 x 136", "plan, 218 x 136", "book, 218 x 136"}) {
    auto c = *std::find_if(all.begin(), all.end(), [&](const auto& v) { return v.name == name; });
    if (!eyes) eyes.emplace(c.mm, px_per_mm);
    for (const bool night : {false, true})
      for (const bench::Pad& pad : c.view.layout.pads) {
        CAPTURE(bench::name_of(pad.id));
        CAPTURE(night);
        c.view.top_bar.night = night;
        c.view.pressed = pad.id;
        check(*eyes, c.view);
      }
  }
}

// What the theme promises beyond what happens to stand on the screens above.
TEST_CASE("ink reads on every ground of the theme, and on every step of the band") {
  for (const bool night : {false, true}) {
    const Theme& t = theme(night);
    for (const Colour ground : {t.bench, t.slab, t.right, t.sticky, t.runny, t.binder, t.water,
                                t.honey, t.glycerin, t.wetting_aid})
      CHECK(contrast(t.ink, ground) >= 7);
    CHECK(contrast(t.right, t.quiet) >= 3); // bars, on their tracks: of a pass, and under a finger
    CHECK(contrast(t.right_ink, t.right) >= 3);
    for (int i = 0; i <= 20; ++i) {
      const Colour band = mixed(t.slab, t.right, i / 20.0);
      CHECK(contrast(t.ink, band) >= 7);
      CHECK(contrast(t.right_ink, band) >= 7);
      CHECK(contrast(t.rule, band) >= 3); // the ghost
    }
  }
}

}
