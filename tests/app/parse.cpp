#include "app/parse.hpp"

#include <doctest/doctest.h>

#include <string>

using app::parse_mm;
using app::parse_pixels;

TEST_CASE("sizes") {
  CHECK(parse_pixels("1280x800") == window::Extent{1280, 800});
  CHECK(parse_pixels("1x16384") == window::Extent{1, 16384});
  for (const std::string text : {"", "x", "1280", "1280x", "x800", "0x800", "1280x16385", "-1x800",
                                 "1280X800", "1280x800 ", "1280.5x800", "1280x800x2", "nanx800"})
    CHECK_MESSAGE(!parse_pixels(text), text);

  CHECK(parse_mm("217.5x136") == bench::Size{217.5, 136});
  for (const std::string text : {"", "x", "218", "19x136", "218x5001", "218,5x136", "nanx136",
                                 "218xinf", "218x", "\"218\"x136", "218x[136]"})
    CHECK_MESSAGE(!parse_mm(text), text);
}
