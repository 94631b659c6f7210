// Where a studio lies, who this device is, and folders that are not there yet.
#include "disk/rig.hpp"
#include "studio/sentences.hpp"
#include "studio/studio.hpp"
#include "studio/utc.hpp"

#include <doctest/doctest.h>

#include <cerrno>
#include <cstdlib>

namespace studio_test {

namespace {

struct Environment { // one variable, put back at the end
  Environment(const char* which, const std::string& value) : name(which) {
    if (const char* was = std::getenv(name)) before = was;
    setenv(name, value.c_str(), 1);
  }
  ~Environment() {
    if (before)
      setenv(name, before->c_str(), 1);
    else
      unsetenv(name);
  }
  const char* name;
  std::optional<std::string> before;
};

std::uint32_t seven() { return 0x1234abcd; }
std::uint32_t eight() { return 0x8888; }

disk::Answer ask(const studio::Path& root, disk::Request request) {
  const rig::Bell bell;
  const auto disk = studio::open(root, std::nullopt, bell.wake());
  return rig::ask(*disk, bell, std::move(request));
}

}

TEST_CASE("a device keeps its id") {
  const rig::Folder folder;
  const auto state = folder.path / "deep" / "slabside";
  CHECK(studio::device_id(state, seven) == "abcd");
  CHECK(studio::device_id(state, eight) == "abcd");
  rig::put(state / "device", "no id\n");
  CHECK(studio::device_id(state, eight) == "8888");
  CHECK(studio::device_id(state, seven) == "8888");
  rig::put(state / "device", "");
  CHECK(studio::device_id(state, seven) == "abcd");
}

TEST_CASE("a device whose id cannot be kept has one for this run") {
  const rig::Folder folder;
  rig::put(folder.path / "file", "");
  CHECK(studio::device_id(folder.path / "file" / "state", seven) == "abcd");
  CHECK(studio::device_id("", eight) == "8888");
}

TEST_CASE("folders by the XDG Base Directory Specification") {
  const Environment home("HOME", "/home/maker");
  {
    const Environment state("XDG_STATE_HOME", "/var/state");
    CHECK(studio::state_folder() == "/var/state/slabside");
  }
  const Environment relative("XDG_STATE_HOME", "state"); // "must be absolute", else ignored
  CHECK(studio::state_folder() == "/home/maker/.local/state/slabside");
  CHECK(studio::default_studio() == "/home/maker/Slabside");
}

TEST_CASE("each studio has its own folder for lines adrift") {
  const auto one = studio::fallback_folder("/s", "/studios/one");
  CHECK(one == studio::fallback_folder("/s", "/studios/two/../one"));
  CHECK(one != studio::fallback_folder("/s", "/studios/two"));
  CHECK(one.parent_path() == "/s/adrift");
  CHECK(studio::fallback_folder("", "/studios/one").empty());
}

TEST_CASE("however a studio's path is written, and whether it is there or not, its folder is one") {
  const rig::Folder folder;
  const auto disk = folder.path / "disk", studio = disk / "studio";
  const auto beside = std::filesystem::absolute(folder.path).parent_path();
  std::filesystem::create_directory_symlink(disk, folder.path / "link");
  std::filesystem::create_directory_symlink("disk", folder.path / "near");
  std::filesystem::create_directory_symlink("loop", folder.path / "loop");
  const auto one = studio::fallback_folder("/s", studio);
  for (const bool there : {false, true}) {
    CAPTURE(there);
    if (there) std::filesystem::create_directories(studio);
    for (const std::string& name :
         {studio.string() + "/", studio.string() + "//", (folder.path / "link/studio").string(),
          (folder.path / "near/studio/").string(), (disk / "." / "studio").string(),
          (disk / "other/../studio").string(),
          (beside / folder.path.filename() / "disk/studio").string()})
      CHECK_MESSAGE(studio::fallback_folder("/s", name) == one, name);
  }
  CHECK(studio::fallback_folder("/s", folder.path / "loop/x") != one);
}

TEST_CASE("a studio that is not there is empty, and made with its first file") {
  const rig::Folder folder;
  const auto root = folder.path / "a" / "b";
  const disk::Answer read = ask(root, disk::ReadFolder{"sessions", ".jsonl"});
  CHECK(rig::confirmed(read));
  CHECK(read.files.empty());
  CHECK_FALSE(std::filesystem::exists(folder.path / "a"));
  CHECK(rig::confirmed(ask(root, disk::Append{"sessions/x.jsonl", "line\n"})));
  CHECK(rig::bytes_of(root / "sessions" / "x.jsonl") == "line\n");
}

TEST_CASE("a studio that goes away while the program runs is not made anew") {
  const rig::Folder folder;
  const auto root = folder.path / "drive";
  std::filesystem::create_directory(root);
  const rig::Bell bell;
  const auto disk = studio::open(root, std::nullopt, bell.wake());
  std::filesystem::remove(root);
  CHECK_FALSE(rig::confirmed(rig::ask(*disk, bell, disk::Append{"sessions/x.jsonl", "line\n"})));
  CHECK_FALSE(std::filesystem::exists(root));
}

TEST_CASE("a studio where a plain file stands fails with words") {
  const rig::Folder folder;
  rig::put(folder.path / "file", "");
  const auto answer = ask(folder.path / "file" / "in", disk::Append{"sessions/x.jsonl", "line\n"});
  REQUIRE(answer.failures.size() == 1);
  CHECK(words::message(studio::error(answer.failures[0])).find("/file") != std::string::npos);
}

TEST_CASE("everything is read, at home and adrift, and what cannot be read is said") {
  const rig::Folder folder;
  std::filesystem::create_directories(folder.path / "home" / "sessions");
  std::filesystem::create_directories(folder.path / "adrift" / "sessions");
  rig::put(folder.path / "home" / "sessions" / "a.jsonl", "");
  rig::put(folder.path / "adrift" / "sessions" / "b.jsonl", "");
  const auto reading = studio::read_all(folder.path / "home", folder.path / "adrift");
  REQUIRE(reading.files.size() == 2);
  CHECK(reading.files[0].name == "a.jsonl");
  CHECK(reading.files[1].name == "adrift/b.jsonl");
  CHECK(reading.faults.empty());
  CHECK(studio::read_all(folder.path / "home", folder.path / "nowhere").files.size() == 1);
  disk::Answer failed;
  failed.failures.push_back({disk::Operation::read, "/x/y.jsonl", EIO, {}});
  REQUIRE(studio::reading_of(failed).faults.size() == 1);
  CHECK(studio::reading_of(failed).faults[0].args.at(0) == "/x/y.jsonl");
}

TEST_CASE("moments in UTC") { // date(1) -u -d @1795617120, @951782399, @-1
  CHECK(studio::utc_for_files(1795617120999) == "2026-11-25T143200Z");
  CHECK(studio::for_people(951782399000, std::nullopt) == "2000-02-28 23:59 UTC");
  CHECK(studio::for_people(951782399000, 60) == "2000-02-29 00:59");
  CHECK(studio::utc_for_files(-1000) == "1969-12-31T235959Z");
}

}
