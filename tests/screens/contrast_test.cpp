// Contrast by WCAG 2.2: relative luminance and (L1 + 0.05) / (L2 + 0.05); 7:1 for text (1.4.6),
// 3:1 for what carries meaning (1.4.11).
#include "screens/theme.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace screens;

namespace {

double linear(std::uint8_t channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(Colour c) {
  return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b);
}

double contrast(Colour a, Colour b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}

TEST_CASE("the formula gives the values of the standard") {
  CHECK(contrast(rgb(0xFFFFFF), rgb(0x000000)) == doctest::Approx(21));
  // #767676 on white: the well-known grey that just passes 4.5:1 (from memory).
  CHECK(contrast(rgb(0xFFFFFF), rgb(0x767676)) == doctest::Approx(4.54).epsilon(0.002));
}

TEST_CASE("every text reaches 7:1 on every ground it is written on") {
  for (const bool night : {false, true}) {
    const Theme& t = theme(night);
    CAPTURE(night);
    for (const Colour ground : {t.bench, t.slab, t.right, t.sticky, t.runny, t.binder, t.water,
                                t.honey, t.glycerin, t.wetting_aid}) {
      CHECK(contrast(t.ink, ground) >= 7);
      const Ground flash = pressed(on(t, ground));
      CHECK(contrast(flash.ink, flash.fill) >= 7);
    }
    for (const Colour ground : {t.bench, t.slab}) {
      CHECK(contrast(t.quiet, ground) >= 7);
      CHECK(contrast(t.right_ink, ground) >= 7);
    }
    CHECK(contrast(t.right_ink, t.right) >= 7);
    CHECK(contrast(t.caution_ink, t.caution) >= 7);
    const Ground runs = dark(t);
    CHECK(contrast(runs.ink, runs.fill) >= 7);
  }
}

// The words over the band: the band is mixed between slab and right, step by step.
TEST_CASE("words on the band reach 7:1 wherever they stand") {
  for (const bool night : {false, true})
    for (int i = 0; i <= 20; ++i) {
      const Theme& t = theme(night);
      const Colour ground = mixed(t.slab, t.right, i / 20.0);
      CHECK(contrast(t.ink, ground) >= 7);
      CHECK(contrast(t.right_ink, ground) >= 7);
    }
}

TEST_CASE("outlines and marks reach 3:1") {
  for (const bool night : {false, true}) {
    const Theme& t = theme(night);
    CHECK(contrast(t.rule, t.slab) >= 3);
    CHECK(contrast(t.ink, t.slab) >= 3);
    CHECK(contrast(t.right_ink, t.right) >= 3);
    CHECK(contrast(t.right, t.ink) >= 3); // the bar of the running pass
  }
}
