#include "app/frame.hpp"

#include <doctest/doctest.h>

TEST_CASE("a display as large as the screens want is drawn in its true size") {
  CHECK(app::fitting_px_per_mm({1280, 800}, 1280 / 218.0) == 1280 / 218.0);
  CHECK(app::fitting_px_per_mm({800, 1280}, 1280 / 218.0) == 1280 / 218.0);
  CHECK(app::fitting_px_per_mm({2560, 1440}, 4) == 4);
}

TEST_CASE("on a smaller one all is there, and smaller") {
  for (const window::Extent size : {window::Extent{1280, 748}, window::Extent{748, 1280}}) {
    const double px_per_mm = app::fitting_px_per_mm(size, 1280 / 154.0);
    const bench::Display display = app::display_of(size, px_per_mm, bench::Hand::left);
    const bench::Size& least = bench::least_display;
    CHECK(std::max(display.mm.w, display.mm.h) >= least.w - 1e-9);
    CHECK(std::min(display.mm.w, display.mm.h) >= least.h - 1e-9);
  }
}
