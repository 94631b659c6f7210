#include "app/options.hpp"

#include "bench/pads_slab.hpp"
#include "words/app_says.hpp"
#include "words/commands_says.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

using app::picture_options;
using app::window_options;
using Say = words::AppSay;
using Given = std::vector<std::string>;

namespace {

words::Error bad_value(const std::string& option, const std::string& given, Say what) {
  return {Say::option_bad_value, {option, given, words::Inner({what, {}})}};
}

}

TEST_CASE("a window needs no words") {
  const auto o = window_options({});
  REQUIRE(o.has_value());
  CHECK(!o->studio);
  CHECK(o->size == window::Extent{1280, 800});
  CHECK(!o->mm);
  CHECK(!o->night);
  CHECK(!o->fault);
}

TEST_CASE("all a window can be told") {
  const auto o =
      window_options({"--studio", "here", "--size=640x400", "--mm", "218x136", "--hand", "right",
                      "--night", "--full-screen", "--report", "--fault", "fail-write:3:EIO"});
  REQUIRE(o.has_value());
  CHECK(o->studio == "here");
  CHECK(o->size == window::Extent{640, 400});
  CHECK(o->mm == bench::Size{218, 136});
  CHECK(o->hand == bench::Hand::right);
  CHECK(o->night);
  CHECK(o->full_screen);
  CHECK(o->report);
  CHECK(o->fault == disk::parse_fault("fail-write:3:EIO"));
}

TEST_CASE("the first wrong value is named, with its option") {
  for (const auto& [given, what] : {std::pair(Given{"--size", "big"}, Say::option_pixels),
                                    {Given{"--mm", "nanx10"}, Say::option_mm},
                                    {Given{"--hand", "both"}, Say::option_hand}}) {
    const auto o = window_options(given);
    REQUIRE(!o.has_value());
    CHECK(o.error() == bad_value(given[0], given[1], what));
  }
  for (const char* option : {"--fault", "--size"})
    CHECK(window_options({option, ""}).error() ==
          words::Error{words::CommandsSay::option_without_value, {option}});
  const auto two = window_options({"--hand", "both", "--size", "big"});
  REQUIRE(!two.has_value());
  CHECK(two.error() ==
        bad_value("--size", "big", Say::option_pixels)); // in the order of reading, not of typing
  CHECK(!window_options({"picture"}).has_value());
  CHECK(!window_options({"--out", "x.png"}).has_value());
}

TEST_CASE("a packed studio is a file that is there, and stands for --studio") {
  const std::string here = SLABSIDE_ROOT "/README.md";
  const auto o = window_options({here, "--night"});
  REQUIRE(o.has_value());
  CHECK(o->pack == here);
  CHECK(!o->studio);
  CHECK(window_options({"shwo"}).error() == words::Error{Say::no_such_file, {"shwo"}});
  CHECK(window_options({SLABSIDE_ROOT}).error() ==
        words::Error{Say::no_such_file, {SLABSIDE_ROOT}});
  CHECK(window_options({here, "--studio", "x"}).error() ==
        words::Error{Say::pack_or_studio, {here}});
  CHECK(!window_options({here, here}).has_value());
}

TEST_CASE("a picture wants a screen and a file") {
  const auto o = picture_options({"slab", "--out", "x.png", "--batch", "7f3a91c2", "--at",
                                  "2026-11-25T15:32:00+01:00", "--taps", "more; bottle"});
  REQUIRE(o.has_value());
  CHECK(o->screen == bench::Screen::slab);
  CHECK(o->batch == "7f3a91c2");
  CHECK(o->at == commands::Moment{1795617120000, 60}); // `date -u -d ... +%s`, GNU coreutils
  CHECK(o->taps ==
        std::vector<bench::PadId>{{bench::SlabPad::more, ""}, {bench::SlabPad::bottle, ""}});
  CHECK(o->out == "x.png");

  CHECK(picture_options({"plan"}).error() == words::Error{Say::option_missing, {"--out"}});
  CHECK(picture_options({"cellar", "--out", "x.png"}).error() ==
        words::Error{words::PaintSay::unknown_name, {"cellar"}});
  CHECK(picture_options({"plan", "--out", "x.png", "--at", "now"}).error() ==
        bad_value("--at", "now", Say::option_moment));
  CHECK(picture_options({"plan", "--out", "x.png", "--taps", "more; botle"}).error() ==
        app::wrong_tap(1, {words::CommandsSay::script_no_such_pad, {"botle"}}));
  CHECK(!picture_options({"--out", "x.png"}).has_value());
  CHECK(!picture_options({"plan", "slab", "--out", "x.png"}).has_value());
}
