// A picture of a moment that is past: nobody sits there now, so nothing may be written for it.
#include "app/picture.hpp"

#include "commands/run.hpp"
#include "words/commands_says.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace {

namespace fs = std::filesystem;

struct Folder {
  fs::path path;
  Folder() {
    std::string name = (fs::temp_directory_path() / "slabside-XXXXXX").string();
    REQUIRE(::mkdtemp(name.data()));
    path = name;
  }
  ~Folder() {
    std::error_code ignored;
    fs::remove_all(path, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
};

constexpr const char* twenty_minutes_of_mulling = R"(at 2026-11-20T14:00:00+01:00
seed 7
tap pigment pb29
tap weigh
type 10
tap begin
tap pass
wait 20m
tap felt too_sticky
)";

}

TEST_CASE("a picture of a moment within a pass, minutes after the last tap") {
  const Folder folder;
  const std::string script = (folder.path / "script").string();
  const std::string studio = (folder.path / "studio").string();
  std::ofstream(script) << twenty_minutes_of_mulling;
  std::ostringstream out, err;
  REQUIRE(commands::run({"play", script, "--studio", studio}, out, err) == 0);
  app::PictureOptions options;
  options.studio = studio;
  options.out = (folder.path / "slab.png").string();
  for (const char* at : {"2026-11-20T14:04:00+01:00", "2026-11-20T14:19:00+01:00"}) {
    options.at = commands::moment(at).value();
    const auto made = app::make_picture(options);
    REQUIRE(made);
    CHECK(fs::file_size(options.out) > 1000);
    fs::remove(options.out);
  }
}

TEST_CASE("a picture that is too small or too large says which sizes are possible") {
  const Folder folder;
  app::PictureOptions options;
  options.screen = bench::Screen::today;
  options.out = (folder.path / "a.png").string();
  options.studio = (folder.path / "studio").string();
  fs::create_directory(*options.studio);
  const auto says = [&](window::Extent size, bench::Size mm) {
    options.size = size;
    options.mm = mm;
    const auto made = app::make_picture(options);
    return made ? std::string() : words::message(made.error());
  };
  for (const window::Extent size : {window::Extent{1, 1}, {217, 200}, {9000, 5700}})
    CHECK(says(size, {218, 136})
              .find("218x136 mm a picture can be drawn from --size 218x136 to "
                    "8720x5440") != std::string::npos);
  CHECK(says({1280, 800}, {136.5, 5000})
            .find("136.5x5000 mm a picture can be drawn from --size "
                  "137x5000 to 5460x16384") != std::string::npos);
  CHECK(says({218, 136}, {218, 136}).empty());
}

TEST_CASE("a pad that is not there is named, with its place and those that are") {
  const Folder folder;
  app::PictureOptions options;
  options.screen = bench::Screen::today;
  options.out = (folder.path / "a.png").string();
  options.studio = (folder.path / "studio").string();
  fs::create_directory(*options.studio);
  options.taps = {*bench::pad_named("shelf"), *bench::pad_named("felt right")};
  const auto made = app::make_picture(options);
  REQUIRE(!made);
  const std::string words = words::message(made.error());
  CHECK(words.find("--taps, pad 2: The pad “felt right” is not there now. There are: ") == 0);
  CHECK(words.find("kind_of") != std::string::npos);
}

TEST_CASE("a picture is never written over what is there, and says why it cannot be written") {
  const Folder folder;
  app::PictureOptions options;
  options.screen = bench::Screen::today;
  options.out = (folder.path / "mine").string();
  std::ofstream(options.out) << "mine";
  options.studio = (folder.path / "studio").string();
  fs::create_directory(*options.studio);
  const auto there = app::make_picture(options);
  REQUIRE(!there);
  CHECK(there.error() == words::Error{words::CommandsSay::file_there, {options.out}});
  CHECK(fs::file_size(options.out) == 4);
  options.out += "/new.png";
  const auto below = app::make_picture(options);
  REQUIRE(!below);
  CHECK(words::message(below.error()).find("A part of the path is no folder") == 0);
  options.studio = (folder.path / "none").string();
  const auto none = app::make_picture(options);
  REQUIRE(!none);
  CHECK(none.error() == words::Error{words::CommandsSay::no_studio, {*options.studio}});
}
