// A line never names a photo that is not there whole: on disks that fail at every call in turn,
// with the power cut at the end.
#include "disk/faulty.hpp"
#include "disk/rig.hpp"
#include "studio/mend.hpp"
#include "studio/pack.hpp"
#include "studio/photos.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>

namespace photos_test {

using namespace studio;

namespace {

const std::string bytes = rig::bytes_of(SLABSIDE_ROOT "/tests/studio/pictures/base.jpg");

session::Photo photo() {
  const auto made = photo_from(bytes, session::PhotoOf::swatch);
  REQUIRE(made);
  return *made;
}

std::vector<session::Line> lines() {
  session::Began began;
  began.session = "c41e08d5";
  began.device = "a83f";
  began.local = "2026-11-25T15:32:00+01:00";
  return {{0, 0, 1795617120000, "", began},
          {1, 0, 1795617120000, "7f3a91c2", photo()},
          {2, 0, 1795617120000, "", session::Left{}}};
}

// A disk with its bell, over files in memory or wherever.
struct Kept {
  Bell bell;
  std::unique_ptr<disk::Disk> disk;

  explicit Kept(std::unique_ptr<disk::Files> files, const rig::Path& root = "/root")
      : disk(disk::open_disk(root, std::move(files), [b = bell] { b.ring(); })) {}

  std::optional<words::Error> keep() { return keep_photo(*disk, bell, photo(), bytes, lines()); }
};

std::vector<session::File> sessions_in(const std::map<std::string, std::string>& left) {
  std::vector<session::File> files;
  for (const auto& [name, content] : left)
    if (name.rfind("sessions/", 0) == 0) files.push_back(session::read_file(name, content));
  return files;
}

bool is_named(const std::vector<session::File>& files) {
  for (const session::File& file : files)
    for (const session::Line& line : file.lines)
      if (const auto* named = std::get_if<session::Photo>(&line.event)) {
        CHECK(*named == photo());
        return true;
      }
  return false;
}

}

TEST_CASE("a photo is named by what is in it") {
  CHECK(photo().ending == "jpg");
  CHECK(photo_file(photo()) == "photos/" + sha256(bytes) + ".jpg");
  const auto refused = photo_from("text", session::PhotoOf::dot);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what == words::StudioSay::photo_not_known);
  CHECK_FALSE(photo_from(bytes.substr(0, 40), session::PhotoOf::dot));
}

TEST_CASE("every call fails once, or from then on: no line, or a line and its whole photo") {
  for (const char* kind : {"fail", "fail-from", "fail-write", "fail-write-from", "fail-force",
                           "fail-open", "fail-folder", "fail-rename", "fail-read"}) {
    int n = 1;
    for (bool struck = true; struck; ++n) {
      REQUIRE(n < 100);
      const std::string text = std::string(kind) + ":" + std::to_string(n) + ":EIO";
      CAPTURE(text);
      rig::Memory memory;
      const bool failed =
          Kept(disk::faulty_files(memory.files(), *disk::parse_fault(text))).keep().has_value();
      auto left = memory.after_power_cut();
      const bool named = is_named(sessions_in(left));
      if (named) CHECK(left[photo_file(photo())] == bytes);
      if (!failed) CHECK(named);
      // Failing once is got over by a new part of the session, or nothing was done at all.
      rig::Memory untouched;
      Kept(untouched.files()).keep();
      struck = left != untouched.after_power_cut();
    }
    CHECK(n > 2);
  }
}

TEST_CASE("the power goes before the photo is safe: nothing names it") {
  rig::Memory memory;
  memory.hold_forces();
  Kept kept(memory.files());
  kept.disk->submit(disk::Keep{photo_file(photo()), bytes});
  memory.wait_for_held_force();
  const auto left = memory.after_power_cut();
  CHECK(left.empty());
  memory.let_forces_go();
}

TEST_CASE("a photo kept twice is one file, named by both") {
  const rig::Folder folder;
  for (int i = 0; i < 2; ++i) {
    Kept kept(disk::posix_files(), folder.path);
    auto said = lines();
    std::get<session::Began>(said[0].event).session = i == 0 ? "c41e08d5" : "5e1f20c7";
    CHECK_FALSE(keep_photo(*kept.disk, kept.bell, photo(), bytes, said));
  }
  int photos = 0;
  for ([[maybe_unused]] const auto& entry :
       std::filesystem::directory_iterator(folder.path / photos_folder))
    ++photos;
  CHECK(photos == 1);
}

TEST_CASE("photos that are missing or changed are named; one that is whole is not") {
  const rig::Folder folder;
  Kept kept(disk::posix_files(), folder.path);
  REQUIRE_FALSE(kept.keep());
  std::vector<session::File> files(1);
  files[0].lines = lines();
  const auto faults = [&] { return photo_faults(*disk::posix_files(), folder.path, files); };
  CHECK(faults().empty());

  const rig::Path file = folder.path / photo_file(photo());
  const auto one = [&](const std::string& text) {
    const auto found = faults();
    REQUIRE(found.size() == 1); // though two lines name it
    const std::string said = words::message(found[0]);
    CHECK(said.find(photo_file(photo())) != std::string::npos);
    CHECK(said.find("7f3a91c2") != std::string::npos);
    CHECK(said.find(text) != std::string::npos);
  };
  files[0].lines.push_back(files[0].lines[1]);
  std::string changed = bytes;
  changed.back() ^= 1;
  for (const std::string& other : {changed, bytes + " ", bytes.substr(1), std::string()}) {
    rig::put(file, other);
    one("differ");
  }
  std::filesystem::remove(file);
  one("not there");
  rig::put(folder.path / photos_folder / ("x" + photo().sha256 + ".jpg"), bytes);
  one("not there");
}

TEST_CASE("photos are looked at, mended and packed piece by piece, however large they are") {
  class Pieces final : public rig::Passing {
  public:
    disk::Bytes read(const rig::Path& file) override {
      CHECK(file.parent_path().filename() != photos_folder);
      return Passing::read(file);
    }
    disk::Bytes read_piece(const rig::Path& file, std::uint64_t at, std::size_t most) override {
      CHECK(most <= longest_piece);
      largest = std::max(largest, at);
      return Passing::read_piece(file, at, most);
    }
    std::uint64_t largest = 0;
  };
  // Around the ends of pieces; the sums are those of the whole.
  for (const std::size_t size : {2 * longest_piece - 1, 2 * longest_piece, 2 * longest_piece + 1}) {
    const rig::Folder folder;
    const rig::Path studio = folder.path / "studio";
    std::string large(size, 'p');
    const session::Photo named{sha256(large), "jpg", session::PhotoOf::pan};
    std::filesystem::create_directories(studio / photos_folder);
    rig::put(studio / photo_file(named), large);
    std::vector<session::File> sessions(1);
    sessions[0].lines = {{1, 0, 0, "7f3a91c2", named}};
    Pieces files;
    CHECK(photo_faults(files, studio, sessions).empty());
    REQUIRE(mend(files, studio, folder.path / "mended"));
    CHECK(rig::bytes_of(folder.path / "mended" / photo_file(named)) == large);
    REQUIRE(pack(files, studio, folder.path / "p.zip"));
    REQUIRE(unpack(files, folder.path / "p.zip", folder.path / "unpacked"));
    CHECK(rig::bytes_of(folder.path / "unpacked" / photo_file(named)) == large);
    CHECK(files.largest >= longest_piece);
    large.back() = 'q';
    rig::put(studio / photo_file(named), large);
    CHECK(photo_faults(files, studio, sessions).size() == 1);
  }
}

}
