// What the window puts on paper: written beside it, shown by another program.
#include "commands/folders.hpp"
#include "commands/paper_desk.hpp"
#include "commands/tool.hpp"
#include "studio/bell.hpp"
#include "words/commands_says.hpp"

#include <unistd.h>

namespace paper_desk_test {

using namespace tool;
using commands::HandedFile;

namespace {

// The small batch's page, in a program of its own that shows files with `viewer`.
struct Open : Studio {
  std::unique_ptr<commands::EffectRunner> runner;
  studio::Bell bell;
  std::uint32_t ids = 0x20000000;

  explicit Open(const std::string& viewer = "", const std::string& script = small_batch) {
    REQUIRE(play(script).status == 0);
    commands::Setup setup;
    setup.studio = path;
    setup.session = "0a0a0a0a";
    setup.device = "0b0b";
    setup.looks_again = false;
    setup.viewer = viewer;
    setup.wake = [rings = bell] { rings.ring(); };
    runner = std::make_unique<commands::EffectRunner>(setup, now());
    settle();
    for (const std::string& pad :
         {std::string("book"), "batch " + runner->bench().batches.back(), std::string("paper")})
      tap(pad);
  }
  bench::Now now() {
    return {1795617120000, 5000000, 60, [this] { return ++ids; }};
  }
  void settle() { REQUIRE(runner->settle(now(), std::chrono::minutes(5))); }
  void tap(const std::string& pad) { runner->feed(bench::Tap{*bench::pad_named(pad)}, now()); }
  const bench::PaperDesk& paper() const { return runner->bench().paper; }
  std::string said() const { return paper().failure ? words::message(*paper().failure) : ""; }
  std::string put(const std::string& pad) {
    tap(pad);
    settle();
    return paper().written;
  }
  // Until something is said of how it was shown.
  void wait_for_failure() {
    for (;;) {
      const long rings = bell.rings();
      runner->poll(now());
      if (paper().failure) return;
      REQUIRE(bell.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::minutes(5)));
    }
  }
};

std::string program(const rig::Folder& folder, const std::string& does) {
  const rig::Path file = folder.path / "viewer";
  rig::put(file, "#!/bin/sh\n" + does + "\n");
  std::filesystem::permissions(file, std::filesystem::perms::owner_all);
  return file.string();
}

}

TEST_CASE("the window writes what the commands make, and never over a file") {
  Open s;
  const std::string sheet = s.put("sheet");
  CHECK(sheet == (s.path / "paper" / "Evening-blue-sheet.html").string());
  CHECK(rig::bytes_of(sheet) == s.read({"sheet", "--batch", "last"}).out);
  CHECK(s.put("sheet") == sheet); // the same again is the same file
  CHECK(rig::bytes_of(s.put("labels")) == s.read({"labels", "--batch", "last"}).out);
  CHECK(rig::bytes_of(s.put("table")) == s.read({"table", "--batch", "last"}).out);
  rig::put(sheet, "mine");
  CHECK(s.put("sheet") == (s.path / "paper" / "Evening-blue-sheet-2.html").string());
  CHECK(rig::bytes_of(sheet) == "mine");
  CHECK(s.said() == "");
}

TEST_CASE("amounts of a recipe that is its maker's own stay off what the window writes") {
  Open s;
  const std::string open = "batch " + s.runner->bench().batches.back();
  CHECK(has(rig::bytes_of(s.put("sheet")), "to 10 g"));
  s.tap("keep_as_recipe");
  std::string recipe;
  for (const session::Card& card : s.runner->bench().shelf)
    if (card.kind() == session::CardKind::recipe) recipe = card.id;
  REQUIRE(recipe != "");
  for (const std::string& pad :
       {std::string("shelf"), std::string("kind_of recipe"), "card " + recipe,
        std::string("choice mine"), std::string("card_done"), std::string("book"), open,
        std::string("paper")})
    s.tap(pad);
  for (const char* pad : {"sheet", "labels"}) {
    CAPTURE(pad);
    const std::string bytes = rig::bytes_of(s.put(pad));
    CHECK(has(bytes, "Ultramarine"));
    CHECK_FALSE(has(bytes, "to 10 g"));
    CHECK(bytes == s.read({pad, "--batch", "last"}).out);
  }
  CHECK(s.put("table") == "");
  CHECK(has(s.said(), "Evening blue"));
  CHECK(has(s.said(), "stay off tables"));
}

TEST_CASE("a folder that cannot be made is named, and the next tap tries again") {
  Open s;
  rig::put(s.path / "paper", "in the way");
  CHECK(s.put("sheet") == "");
  CHECK(has(s.said(), (s.path / "paper").string()));
  std::filesystem::remove(s.path / "paper");
  CHECK(s.put("sheet") != "");
  CHECK(s.said() == "");
}

TEST_CASE("the viewer is given the file's name as one word, with no shell between") {
  const rig::Folder folder;
  const std::string seen = (folder.path / "seen").string();
  // Writes what it was given, and then says by its end that it could not show it.
  Open s(program(folder, "printf '%s %s' \"$#\" \"$1\" > '" + seen + "'; exit 3"),
         std::string(small_batch)
             .replace(std::string(small_batch).find("Evening blue"), 12, "Blue $(touch x); 'two'"));
  const std::string sheet = s.put("sheet");
  CHECK(has(sheet, "Blue-touch-x-two-sheet.html"));
  s.wait_for_failure();
  CHECK(rig::bytes_of(seen) == "1 " + sheet);
  CHECK(has(s.said(), sheet)); // where it lies all the same
  CHECK(has(s.said(), "could not show it"));
}

TEST_CASE("a viewer that is not there gets words, and the file stays") {
  Open s("no-such-viewer-at-all");
  const std::string sheet = s.put("sheet");
  s.wait_for_failure();
  CHECK(has(s.said(), "no-such-viewer-at-all is not installed"));
  CHECK(has(s.said(), sheet));
  CHECK(rig::bytes_of(sheet) != "");
}

TEST_CASE("a name of a batch becomes one that any system takes") {
  using commands::file_stem;
  CHECK(file_stem("Evening blue") == "Evening-blue");
  CHECK(file_stem("../../etc/passwd") == "etc-passwd");
  CHECK(file_stem("/") == "batch");
  CHECK(file_stem("") == "batch");
  CHECK(file_stem("-o a") == "o-a");
  CHECK(file_stem("Grün, 3") == "Grün-3");
  std::string wide;
  for (int i = 0; i < 100; ++i) wide += "é";
  CHECK(file_stem("a" + wide) == "a" + wide.substr(0, 78)); // no letter is cut
}

}
