// What a new file or folder says of itself when it is done: that it lies on the disk. Looked at by
// what was asked of the system, call by call.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"
#include "studio/mend.hpp"
#include "studio/pack.hpp"
#include "studio/studio.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

#include <cerrno>

namespace forced_test {

namespace {

using rig::Path;

// Keeps what no power cut may find: bytes written or names made, and not forced since.
class Watched : public rig::Passing {
public:
  std::set<Path> unsafe;

  disk::Done make_folder(const Path& folder) override {
    unsafe.insert(folder.parent_path());
    return Passing::make_folder(folder);
  }
  disk::Opened open_new(const Path& file) override {
    const disk::Opened opened = Passing::open_new(file);
    names_[opened.handle] = file;
    unsafe.insert(file);
    unsafe.insert(file.parent_path());
    return opened;
  }
  disk::Done write(int handle, std::string_view bytes) override {
    unsafe.insert(names_[handle]);
    return Passing::write(handle, bytes);
  }
  disk::Done force(int handle) override {
    unsafe.erase(names_[handle]);
    return Passing::force(handle);
  }
  disk::Done force_folder(const Path& folder) override {
    unsafe.erase(folder);
    return Passing::force_folder(folder);
  }
  disk::Done rename(const Path& from, const Path& to) override {
    CHECK(unsafe == std::set<Path>{to.parent_path()}); // all that lies in it was forced before
    unsafe.insert(to.parent_path());
    return Passing::rename(from, to);
  }

private:
  std::map<int, Path> names_;
};

struct Workshop : rig::Folder {
  Path studio = path / "studio", pack = path / "p.zip", out = path / "new";
  Workshop() {
    std::filesystem::create_directories(studio / "sessions");
    std::filesystem::create_directories(studio / "photos");
    rig::put(studio / "sessions" / "a.jsonl", "");
    rig::put(studio / "photos" / "p.jpg", "jpg");
  }
};

}

TEST_CASE("a pack, an unpacked and a mended studio are forced before they are said to be there") {
  const Workshop w;
  Watched files;
  REQUIRE(studio::pack(files, w.studio, w.pack));
  CHECK(files.unsafe.empty());
  REQUIRE(studio::unpack(files, w.pack, w.out));
  CHECK(files.unsafe.empty());
  REQUIRE(studio::mend(files, w.studio, w.path / "mended"));
  CHECK(files.unsafe.empty());
}

TEST_CASE("a folder that somebody makes meanwhile stays, and is not written over") {
  class Meddled final : public Watched {
  public:
    explicit Meddled(Path place) : place_(std::move(place)) {}
    disk::Done make_folder(const Path& folder) override {
      if (folder == place_) std::filesystem::create_directory(place_);
      return Watched::make_folder(folder);
    }

  private:
    const Path place_;
  };
  const Workshop w;
  Meddled files(w.out);
  const auto mended = studio::mend(files, w.studio, w.out);
  REQUIRE(!mended);
  CHECK(mended.error().what == words::StudioSay::folder_there);
  CHECK(std::filesystem::is_empty(w.out));
}

TEST_CASE("whichever call fails, mending leaves a whole studio or none") {
  int failures = 0;
  for (int nth = 1;; ++nth) {
    const auto fault = disk::parse_fault("fail-from:" + std::to_string(nth) + ":EIO");
    const Workshop w;
    const auto files = disk::faulty_files(disk::posix_files(), *fault);
    const auto mended = studio::mend(*files, w.studio, w.out);
    if (mended) break;
    ++failures;
    CHECK(words::message(mended.error()).find("The disk answers with an error") !=
          std::string::npos);
    std::size_t there = 0;
    for (const auto& entry : std::filesystem::directory_iterator(w.path))
      there += entry.path() == w.studio ? 0 : 1;
    // The last call forces the folder's own name, which it has by then.
    CHECK(there == (std::filesystem::exists(w.out / "photos" / "p.jpg") ? 1 : 0));
  }
  CHECK(failures > 10);
}

TEST_CASE("a file that cannot be read is lost from the mended studio, and said") {
  const Workshop w;
  // The first three calls that read list a folder, ask for the size of its one file and read it.
  const auto files = disk::faulty_files(disk::posix_files(), *disk::parse_fault("fail-read:3:EIO"));
  const auto mended = studio::mend(*files, w.studio, w.out);
  REQUIRE(mended);
  REQUIRE(mended->lost.size() == 1);
  CHECK(mended->lost[0].what == words::StudioSay::disk_read_failed);
  CHECK(!std::filesystem::exists(w.out / "sessions" / "a.jsonl"));
}

namespace {

const Path deep = "/root/workshop/studio";

// Whether a first line that a run appends is confirmed. From its nth call that makes or forces a
// folder on, the run is dead (0: it lives).
bool appended(rig::Memory& memory, const std::string& file, int nth) {
  const auto make = [&] {
    if (nth == 0) return memory.files();
    const auto dead = disk::parse_fault("fail-folder-from:" + std::to_string(nth) + ":EIO");
    return disk::faulty_files(memory.files(), *dead);
  };
  const rig::Bell bell;
  const auto disk = studio::open(deep, std::nullopt, bell.wake(), make);
  return rig::confirmed(rig::ask(*disk, bell, disk::Append{"sessions/" + file, "line\n"}));
}

}

TEST_CASE(
    "wherever a run dies that founds a studio, what the next one confirms is there for good") {
  int deaths = 0;
  for (int nth = 1;; ++nth) {
    CAPTURE(nth);
    rig::Memory memory;
    if (appended(memory, "a.jsonl", nth)) break;
    ++deaths;
    REQUIRE(appended(memory, "b.jsonl", 0));
    CHECK(memory.after_power_cut()["workshop/studio/sessions/b.jsonl"] == "line\n");
  }
  CHECK(deaths > 6); // three folders made, and as many parents and the new file's folder forced
}

TEST_CASE("folders on the way that are somebody else's need not be forced") {
  class Closed final : public rig::Passing {
  public:
    explicit Closed(int code) : code_(code) {}
    disk::Done force_folder(const Path& folder) override {
      return folder == "/" ? disk::Done{code_} : Passing::force_folder(folder);
    }

  private:
    const int code_;
  };
  for (const int code : {EACCES, EPERM, EROFS, EIO}) {
    const rig::Folder folder;
    const rig::Bell bell;
    const auto disk = studio::open(folder.path, std::nullopt, bell.wake(),
                                   [&] { return std::make_unique<Closed>(code); });
    const auto answer = rig::ask(*disk, bell, disk::Append{"sessions/a.jsonl", "line\n"});
    CHECK(rig::confirmed(answer) == (code != EIO));
  }
}

}
