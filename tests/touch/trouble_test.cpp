// Studios that cannot be written, and two windows on one studio.
#include "touch/hand.hpp"

#include <sys/mount.h>

#include <fstream>

namespace trouble_test {

namespace {

using namespace touch;

void small_batch(Hand& hand, const std::string& pigment) {
  hand.tap("pigment " + pigment);
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
  hand.tap("add gum_12");
  hand.tap("add water");
  hand.tap("felt too_loose");
}

void make_file(const Path& path) {
  std::ofstream(path) << "not a folder\n";
  REQUIRE(std::filesystem::is_regular_file(path));
}

}

TEST_CASE("a studio that is no folder: the lines go adrift, and it is said") {
  Glass glass(1280, 800);
  const Home home;
  make_file(home.studio);
  Hand hand(glass, home);
  small_batch(hand, "pb29");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err().find((home.state / "slabside" / "adrift").string()) !=
        std::string::npos);
  // The beginning bears the number of the part that could be written, all else is as it was tapped.
  const auto kept = only_session(home);
  CHECK(std::get<session::Began>(kept[0].event).part > 0);
  check_same({kept.begin() + 1, kept.end()}, {hand.lines.begin() + 1, hand.lines.end()});
}

TEST_CASE("nowhere to write: the pads work, and it is said how much is lost") {
  Glass glass(1280, 800);
  const Home home;
  make_file(home.studio);
  make_file(home.state);
  Hand hand(glass, home);
  hand.saves = false;
  small_batch(hand, "pb29");
  CHECK(hand.close().number == 1);
  const std::string count = std::to_string(hand.lines.size());
  CHECK(hand.program.out().rfind("ready\nunsaved " + count + "\nclosed\n", 0) == 0);
  CHECK_MESSAGE(hand.program.err().find(count) != std::string::npos, hand.program.err());
}

// A file system of its own, with so little room; gone with the test.
struct SmallDisk {
  explicit SmallDisk(const Path& at) : path(at) {
    std::filesystem::create_directory(at);
    // A page for who it is, and one of lines.
    mounted = mount("touch", at.c_str(), "tmpfs", 0, "size=8k") == 0;
  }
  ~SmallDisk() {
    if (mounted) umount(path.c_str());
  }
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;
  Path path;
  bool mounted = false;
};

TEST_CASE("the disk fills up while tapping: the rest goes adrift, in order") {
  const Home home;
  const SmallDisk disk(home.studio);
  if (!disk.mounted) {
    MESSAGE("left out: no file system can be mounted here");
    return;
  }
  Glass glass(1280, 800);
  Hand hand(glass, home);
  small_batch(hand, "pb29");
  for (int i = 0; i < 30; ++i) hand.tap(i % 2 == 0 ? "add gum_12" : "add water");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err().find("adrift") != std::string::npos);
  CHECK(home.files().size() > 1);
  check_same(only_session(home), hand.lines);
}

TEST_CASE("two windows on one studio") {
  Glass glass(1280, 1600);
  const Home home;
  Hand upper(glass, home), lower(glass, home, lying, {}, {0, 800});
  small_batch(upper, "pb29");
  small_batch(lower, "pb28");
  for (int i = 0; i < 10; ++i) {
    upper.tap("add gum_12");
    lower.tap("add gum_12");
  }
  CHECK(upper.close().number == 0);
  lower.tap("undo");
  CHECK(lower.close().number == 0);
  const auto files = home.files();
  REQUIRE(files.size() == 2);
  const bool swapped = deeds(files[0].lines) != deeds(upper.lines);
  check_same(files[swapped ? 1 : 0].lines, upper.lines);
  check_same(files[swapped ? 0 : 1].lines, lower.lines);
  for (const session::File& file : files) CHECK(file.damage.empty());
}

}
