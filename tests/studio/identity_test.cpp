// Which studio a folder is: a mount point without its disk, another disk, and a folder that lost
// its id or got another.
#include "studio/homecoming.hpp"
#include "studio/sentences.hpp"
#include "studio/sitting.hpp"
#include "studio/studio.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

namespace identity_test {

namespace {

std::uint32_t digits() { return 0x1234abcd; }

// A device with a studio on a disk, which is mounted at a folder.
struct Bench {
  rig::Folder folder;
  studio::Path state = folder.path / "state", home = folder.path / "mnt";

  disk::Answer ask(disk::Request request, const std::string& device = "07bd", bool anew = false) {
    const rig::Bell bell;
    const auto disk = studio::open(home, std::nullopt, bell.wake(), disk::posix_files,
                                   studio::identity_of(state, home, device, digits, anew));
    return rig::ask(*disk, bell, std::move(request));
  }
  disk::Answer write(const std::string& session, const std::string& device = "07bd",
                     bool anew = false) {
    const std::string file = "sessions/2026-11-25T143200Z-" + device + "-" + session + ".jsonl";
    return ask(disk::Append{file, "line\n"}, device, anew);
  }
  bool lists() { return rig::confirmed(ask(disk::ReadFolder{"sessions", ".jsonl"})); }
  std::string id() const { return rig::bytes_of(home / studio::id_file); }
  // The disk is taken out: only the mount point is left.
  void unmount() const {
    std::filesystem::rename(home, folder.path / "disk");
    std::filesystem::create_directory(home);
  }
  void mount() const {
    std::filesystem::remove_all(home);
    std::filesystem::rename(folder.path / "disk", home);
  }
};

void refused(const disk::Answer& answer, const studio::Path& home) {
  REQUIRE(answer.failures.size() == 1);
  CHECK(studio::error(answer.failures[0]) ==
        words::Error{words::StudioSay::disk_other_studio, {home.string()}});
}

}

TEST_CASE("a studio gets an id with its first line, and keeps it") {
  Bench b;
  CHECK(b.lists());
  CHECK_FALSE(std::filesystem::exists(b.home));
  CHECK(rig::confirmed(b.write("5e1f20c70b94")));
  CHECK(b.id() == "1234abcdabcd\n");
  CHECK(rig::confirmed(b.write("5e1f20c70b95")));
  CHECK(b.id() == "1234abcdabcd\n");
}

TEST_CASE("a mount point without its disk is not the studio: nothing is written, and it is said") {
  Bench b;
  REQUIRE(rig::confirmed(b.write("5e1f20c70b94")));
  b.unmount();
  refused(b.write("5e1f20c70b95"), b.home);
  refused(b.ask(disk::ReadFolder{"sessions", ".jsonl"}), b.home);
  CHECK(std::filesystem::is_empty(b.home));
  std::filesystem::remove(b.home);
  refused(b.write("5e1f20c70b96"), b.home);
  CHECK_FALSE(std::filesystem::exists(b.home));
  b.mount();
  CHECK(b.lists());
  CHECK(rig::confirmed(b.write("5e1f20c70b97")));
}

TEST_CASE("a disk that is put in, or taken out, while the program runs") {
  Bench b;
  REQUIRE(rig::confirmed(b.write("5e1f20c70b94")));
  b.unmount();
  const rig::Bell bell;
  const auto disk = studio::open(b.home, std::nullopt, bell.wake(), disk::posix_files,
                                 studio::identity_of(b.state, b.home, "07bd", digits, false));
  const auto write = [&](const char* file) {
    return rig::ask(*disk, bell, disk::Append{std::string("sessions/") + file, "line\n"});
  };
  refused(write("a-07bd-1.jsonl"), b.home);
  b.mount();
  CHECK(rig::confirmed(write("a-07bd-1.1.jsonl")));
  b.unmount();
  CHECK_FALSE(rig::confirmed(write("a-07bd-1.1.jsonl"))); // gone from its name
  refused(write("a-07bd-1.2.jsonl"), b.home);
  CHECK(std::filesystem::is_empty(b.home));
}

TEST_CASE("another studio under the same name is asked about, and taken when it is meant") {
  Bench b;
  REQUIRE(rig::confirmed(b.write("5e1f20c70b94")));
  b.unmount();
  rig::put(b.home / studio::id_file, "00000000aaaa\n");
  refused(b.write("5e1f20c70b95"), b.home);
  CHECK(rig::confirmed(b.write("5e1f20c70b96", "07bd", true)));
  CHECK(b.id() == "00000000aaaa\n");
  CHECK(rig::confirmed(b.write("5e1f20c70b97")));
}

TEST_CASE("a folder with this device's own sessions is the studio, whatever its id") {
  Bench b;
  REQUIRE(rig::confirmed(b.write("5e1f20c70b94")));
  std::filesystem::remove(b.home / studio::id_file); // as an unpacked copy has none
  CHECK(rig::confirmed(b.write("5e1f20c70b95")));
  CHECK(b.id() == "1234abcdabcd\n");
  rig::put(b.home / studio::id_file, "00000000aaaa\n"); // as a synchroniser settles two first ones
  CHECK(b.lists());
  CHECK(rig::confirmed(b.write("5e1f20c70b96")));
  CHECK(b.id() == "00000000aaaa\n");
}

TEST_CASE("an id that another device wrote is learnt, and one that cannot be kept stops nothing") {
  Bench b;
  std::filesystem::create_directories(b.home / "sessions");
  rig::put(b.home / studio::id_file, "00000000aaaa\n");
  CHECK(b.lists());
  CHECK(rig::bytes_of(std::filesystem::directory_iterator(b.state / "studios")->path()) ==
        "00000000aaaa\n");
  Bench c;
  rig::put(c.state, ""); // no folder
  CHECK(rig::confirmed(c.write("5e1f20c70b94")));
  c.unmount();
  CHECK(rig::confirmed(c.write("5e1f20c70b95"))); // nobody knows better
}

TEST_CASE("without a folder for what is remembered any folder is the studio") {
  CHECK_FALSE(studio::identity_of("", "/s", "07bd", digits, false));
}

namespace {

std::size_t files_in(const studio::Path& folder) {
  std::error_code none;
  const std::filesystem::directory_iterator all(folder / "sessions", none);
  return static_cast<std::size_t>(std::distance(begin(all), end(all)));
}

// Home, and the folder that stands in for it.
struct Disks {
  rig::Bell bell;
  std::unique_ptr<disk::Disk> home, fallback;

  explicit Disks(const Bench& b)
      : home(studio::open(b.home, std::nullopt, bell.wake(), disk::posix_files,
                          studio::identity_of(b.state, b.home, "a83f", digits, false))),
        fallback(studio::open(b.folder.path / "fallback", std::nullopt, bell.wake())) {}

  // Until all was brought home that can be.
  void bring_home() {
    studio::Homecoming coming(*home);
    for (disk::Disk* disk : {home.get(), fallback.get()})
      disk->submit(disk::ReadFolder{"sessions", ".jsonl"});
    for (long rings = bell.rings(); !coming.over(); bell.wait_past(rings)) {
      rings = bell.rings();
      for (const auto& answer : home->answers()) coming.take(studio::Location::home, answer);
      for (const auto& answer : fallback->answers())
        coming.take(studio::Location::fallback, answer);
      if (coming.over()) return;
    }
  }
};

}

TEST_CASE("what is tapped while the disk is not in is kept elsewhere, and comes home once it is") {
  Bench b;
  REQUIRE(rig::confirmed(b.write("5e1f20c70b94", "a83f")));
  b.unmount();
  {
    Disks disks(b);
    studio::Journal journal(*disks.home, disks.fallback.get());
    for (const std::uint64_t n : {0, 1, 2}) journal.append(sitting::line(n));
    while (journal.unsaved() > 0) {
      const long rings = disks.bell.rings();
      for (const studio::News& news : journal.poll())
        if (const auto* failed = std::get_if<studio::Failed>(&news))
          CHECK(failed->reason.what == words::StudioSay::disk_other_studio);
      if (journal.unsaved() > 0) disks.bell.wait_past(rings);
    }
    CHECK(journal.place() == studio::Location::fallback);
  }
  CHECK(std::filesystem::is_empty(b.home));
  Disks(b).bring_home(); // into a mount point nothing is brought
  CHECK(std::filesystem::is_empty(b.home));
  b.mount();
  CHECK(files_in(b.home) == 1);
  Disks(b).bring_home();
  CHECK(files_in(b.home) == 2);
}

}
