// Letters as high as they were asked for, in the framebuffer, and from some face for every letter.
#include "screens/eyes.hpp"
#include "screens/measure.hpp"
#include "screens/theme.hpp"
#include "words/letters.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

namespace capitals_test {

using namespace screens;
using eyes::Eyes;
using eyes::Frame;

namespace {

constexpr Colour white = rgb(0xFFFFFF), black = rgb(0x000000);
constexpr bench::Size paper{60, 40};
constexpr Point at{8, 25};

Frame written(Eyes& eyes, const std::string& words, double cap_mm, bool bold) {
  return eyes.look({Text{at, Anchor::left, cap_mm, bold, black, words, 0}}, white);
}

double ink(const Frame& frame, int x, int y) { return 1 - frame.pixel(x, y).g / 255.0; }

struct Ink { // in pixels
  int left = 1 << 20, right = -1, top = 1 << 20, bottom = -1;
  double sum = 0;
  bool any() const { return right >= left; }
};

Ink ink_of(const Frame& frame) {
  Ink out;
  for (int y = 0; y < frame.picture.size.h; ++y)
    for (int x = 0; x < frame.picture.size.w; ++x) {
      if (ink(frame, x, y) < 0.1) continue;
      out.left = std::min(out.left, x);
      out.right = std::max(out.right, x);
      out.top = std::min(out.top, y);
      out.bottom = std::max(out.bottom, y);
      out.sum += ink(frame, x, y);
    }
  return out;
}

// Rows of ink down the column that has most, each as much as it is covered: a stem may cover only
// part of its columns, which the middle of its rows tells.
double height_px(const Frame& frame) {
  double highest = 0;
  for (int x = 0; x < frame.picture.size.w; ++x) {
    std::vector<double> rows;
    for (int y = 0; y < frame.picture.size.h; ++y)
      if (const double covered = ink(frame, x, y); covered > 0.02) rows.push_back(covered);
    if (rows.empty()) continue;
    std::vector<double> sorted = rows;
    std::nth_element(sorted.begin(), sorted.begin() + sorted.size() / 2, sorted.end());
    const double stem = sorted[sorted.size() / 2];
    if (stem < 0.25) continue; // too little to reckon with
    double height = 0;
    for (const double covered : rows) height += std::min(1.0, covered / stem);
    highest = std::max(highest, height);
  }
  return highest;
}

void check_heights(Eyes& eyes, double px_per_mm, const std::string& capital) {
  for (const double cap_mm : cap::all)
    for (const bool bold : {false, true}) {
      CAPTURE(capital);
      CAPTURE(px_per_mm);
      CAPTURE(cap_mm);
      CAPTURE(bold);
      const double asked = cap_mm * px_per_mm;
      const double drawn = height_px(written(eyes, capital, cap_mm, bold));
      CAPTURE(drawn);
      CAPTURE(asked);
      CHECK(std::abs(drawn - asked) <= std::max(0.5, 0.03 * asked));
    }
}

}

TEST_CASE("a capital is as high as was asked, at three scales, from either face") {
  for (const double px_per_mm : {4.0, 1280 / 218.0, 11.3}) {
    Eyes eyes(paper, px_per_mm);
    for (const char* capital : {"H", "Н"}) // Latin, and Cyrillic, which B612 has not
      check_heights(eyes, px_per_mm, capital);
  }
}

TEST_CASE("on a display of another scale the letters are made anew") {
  Eyes eyes({paper.w * 2, paper.h * 2}, 5); // pixels for 10 a mm
  check_heights(eyes, 5, "H");
  eyes.rescale(10);
  check_heights(eyes, 10, "H");
  eyes.rescale(5);
  check_heights(eyes, 5, "H");
}

// DejaVu Sans has them, by its own list of what it covers.
TEST_CASE(
    "a letter that B612 lacks comes from another face, in the room that was reckoned for it") {
  Eyes eyes(paper, 8);
  REQUIRE_FALSE(rank_with(0xE123, false)); // private use
  const Frame missing = written(eyes, "\uE123", cap::head, false);
  CHECK(ink_of(missing).any()); // a sign stands there, never a gap
  for (const char* letter : {"Ж", "Ω", "Ψ", "ű", "ř", "א", "😀", "½"}) {
    CAPTURE(letter);
    const Frame frame = written(eyes, letter, cap::head, false);
    CHECK(frame.picture.rgb != missing.picture.rgb);
    const Ink drawn = ink_of(frame);
    REQUIRE(drawn.any());
    CHECK(drawn.left >= at.x * 8 - 1.5);
    CHECK(drawn.right <= (at.x + width_mm(letter, cap::head, false)) * 8 + 1.5);
  }
}

TEST_CASE("a name in another script is drawn at once, in every height and weight") {
  Eyes eyes(paper, 6);
  for (const char* name : {"Ультрамарин", "Κόκκινο", "Błękit żelazowy"})
    for (const double cap_mm : {cap::small, cap::body, cap::timer})
      for (const bool bold : {false, true}) {
        CAPTURE(name);
        CAPTURE(cap_mm);
        std::string boxes;
        for (std::size_t i = 0; i < std::string(name).size();) {
          words::next_letter(name, i);
          boxes += "\uE123";
        }
        const Ink letters = ink_of(written(eyes, name, cap_mm, bold));
        CHECK(letters.any());
        CHECK(letters.sum != ink_of(written(eyes, boxes, cap_mm, bold)).sum);
      }
}

// Where the system has a face for them (fonts-noto-cjk, fonts-droid-fallback).
TEST_CASE("Chinese, Japanese and Korean, or the sign for what is missing") {
  Eyes eyes(paper, 6);
  const Frame missing = written(eyes, "\uE123", cap::body, true);
  for (const char* letter : {"青", "あ", "한"}) {
    std::size_t i = 0;
    const bool there = rank_with(words::next_letter(letter, i), true).has_value();
    const Frame frame = written(eyes, letter, cap::body, true);
    CHECK(ink_of(frame).any());
    CHECK((frame.picture.rgb != missing.picture.rgb) == there);
  }
}

}
