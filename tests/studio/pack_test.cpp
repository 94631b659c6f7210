// Packing and unpacking: the whole studio or nothing, and nothing hostile.
#include "disk/faulty.hpp"
#include "studio/packs.hpp"
#include "studio/sentences.hpp"
#include "words/studio_says.hpp"

#include <cerrno>

namespace pack_test {

using namespace packs;

TEST_CASE("a studio packed and unpacked is the same studio") {
  const Workshop w;
  const auto packed = studio::pack(*files, w.studio, w.pack);
  REQUIRE(packed);
  CHECK(packed->files == 4);
  CHECK(packed->bytes == 100'011);
  CHECK(packed->left_out.empty());
  const auto inspected = studio::inspect(rig::bytes_of(w.pack));
  REQUIRE(inspected);
  CHECK(inspected->files == 4);
  CHECK(inspected->bytes == 100'011);
  const auto unpacked = studio::unpack(*files, w.pack, w.out / "");
  REQUIRE(unpacked);
  CHECK(unpacked->files == 4);
  CHECK(tree(w.out) == tree(w.studio));
  CHECK(w.beside() == 1);
}

TEST_CASE("the same studio packs to the same bytes, whenever and in whatever order it was made") {
  const Workshop w, other;
  std::filesystem::last_write_time(other.studio / "sessions" / "a.jsonl",
                                   std::filesystem::file_time_type());
  std::filesystem::remove(other.studio / "sessions" / "b.jsonl");
  other.put("sessions/b.jsonl", "two\n");
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  setenv("TZ", "Pacific/Auckland", 1);
  tzset();
  REQUIRE(studio::pack(*files, other.studio, other.pack));
  unsetenv("TZ");
  tzset();
  CHECK(rig::bytes_of(w.pack) == rig::bytes_of(other.pack));
}

TEST_CASE("what belongs to no studio is left out of the pack, and named") {
  const Workshop w;
  const Tree before = tree(w.studio);
  w.put("sessions/notes.txt", "");
  w.put("sessions/.hidden.jsonl", "");
  w.put("photos/x.jpg.17.unfinished", "half");
  w.put("photos/holiday.jpg", "no photo of a batch");
  std::filesystem::create_symlink(w.studio / "sessions" / "a.jsonl",
                                  w.studio / "sessions" / "link.jsonl");
  const auto packed = studio::pack(*files, w.studio, w.pack);
  REQUIRE(packed);
  CHECK(packed->left_out == std::vector<std::string>{"sessions/.hidden.jsonl", "sessions/notes.txt",
                                                     "photos/holiday.jpg",
                                                     "photos/x.jpg.17.unfinished"});
  REQUIRE(studio::unpack(*files, w.pack, w.out));
  CHECK(tree(w.out) == before);
}

TEST_CASE("what could not be unpacked is not packed") {
  const auto refusal = [](const std::string& name) {
    const Workshop w;
    w.put(name, "");
    const auto packed = studio::pack(*files, w.studio, w.pack);
    REQUIRE(!packed);
    CHECK(packed.error().what == words::StudioSay::pack_refused);
    CHECK(!std::filesystem::exists(w.pack));
    return written(packed.error().args.at(1));
  };
  CHECK(refusal("sessions/A.jsonl") == why(words::StudioSay::entry_twice, "sessions/a.jsonl"));
  CHECK(refusal("sessions/x\ny.jsonl") ==
        why(words::StudioSay::entry_odd_name, "sessions/x\ny.jsonl"));
  CHECK(refusal("sessions/caf\xe9.jsonl") ==
        why(words::StudioSay::entry_not_utf8, "sessions/caf\xe9.jsonl"));
}

TEST_CASE("nothing to pack is said") {
  const rig::Folder folder;
  const auto packed = studio::pack(*files, folder.path, folder.path / "p.zip");
  REQUIRE(!packed);
  CHECK(packed.error().what == words::StudioSay::pack_nothing);
}

TEST_CASE("neither a pack nor a folder is ever written over") {
  const Workshop w;
  rig::put(w.pack, "mine");
  CHECK(!studio::pack(*files, w.studio, w.pack));
  CHECK(rig::bytes_of(w.pack) == "mine");
  std::filesystem::remove(w.pack);
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  std::filesystem::create_directory(w.out);
  const auto there = studio::unpack(*files, w.pack, w.out);
  REQUIRE(!there);
  CHECK(there.error() == words::Error{words::StudioSay::folder_there, {w.out.string()}});
  std::filesystem::remove(w.out);
  std::filesystem::create_symlink("nowhere", w.out);
  CHECK(!studio::unpack(*files, w.pack, w.out));
  CHECK(w.beside() == 1);
}

// What cannot be read says nothing of what is in it.
TEST_CASE("a pack that cannot be read is said to be so, with the reason") {
  class Closed final : public rig::Passing {
    disk::Bytes read_piece(const Path&, std::uint64_t, std::size_t) override {
      return {EACCES, {}};
    }
  } closed;
  const Workshop w;
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  const auto unread = [&](disk::Files& through, const Path& pack) {
    const auto unpacked = studio::unpack(through, pack, w.out);
    REQUIRE(!unpacked);
    CHECK(!std::filesystem::exists(w.out));
    return unpacked.error();
  };
  CHECK(unread(closed, w.pack) == studio::error(disk::Operation::read, w.pack, EACCES));
  const Path none = w.pack.string() + "s", link = w.pack.string() + " too";
  CHECK(unread(*files, none) == studio::error(disk::Operation::read, none, ENOENT));
  CHECK(unread(*files, w.studio) == studio::error(disk::Operation::not_a_file, w.studio, EINVAL));
  std::filesystem::create_symlink(w.pack, link);
  CHECK(studio::unpack(*files, link, w.out));
}

TEST_CASE("names that lead elsewhere are refused") {
  for (const char* name :
       {"/etc/passwd", "../a.jsonl", "sessions/../../a.jsonl", "sessions/..", "sessions//a.jsonl",
        "./sessions/a.jsonl", "sessions/./a.jsonl", "..", "//host/share/a.jsonl"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_leaves, name));
  for (const char* name : {"C:/sessions/a.jsonl", "sessions/a.jsonl:stream", "sessions/a\x01.jsonl",
                           "sessions/a\n.jsonl", "sessions/a\x7f.jsonl", "sessions/a*.jsonl"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_odd_name, name));
  for (const char* name : {"sessions\\..\\..\\a.jsonl", "photos\\a.jpg", "photos/..\\a"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_odd_name, name));
}

TEST_CASE("names outside a studio's two folders are refused") {
  for (const char* name : {"a.jsonl", "notes/a.jsonl", "sessions/a.txt", "sessions/.jsonl",
                           "sessions/deep/a.jsonl", "photos/deep/a.jpg", "studio/sessions/a.jsonl"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_elsewhere, name));
}

TEST_CASE("a photo that is not called as the program calls it is refused") {
  const std::string good = photo("0");
  CHECK_FALSE(studio::PackNames().take(good));
  CHECK_FALSE(studio::PackNames().take(good.substr(0, 71) + ".png"));
  const std::string digits = good.substr(0, 70);
  for (const std::string& name :
       {std::string("photos/a.jpg"), std::string("photos/.jpg"), digits + ".jpg", digits + "00.jpg",
        digits + "A.jpg", digits + "g.jpg", digits + "0.exe", digits + "0.JPG", digits + "0",
        digits + "0.jpg.html"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_elsewhere, name));
}

TEST_CASE("a name with a zero byte is refused, whatever stands behind it") {
  for (const std::string& name :
       {std::string("sessions/a.jsonl\0.exe", 21), std::string("\0", 1),
        std::string("photos/a\0/../../x", 17), std::string("sessions/\0", 10)})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_odd_name, name));
}

TEST_CASE("an entry that calls itself otherwise than the list does is refused") {
  std::string bytes = zip::of({{photo("a"), "x"}, {photo("b"), "y"}});
  bytes[bytes.find(photo("a")) + 7] = 'c'; // at its own place, which comes first
  CHECK(refused(bytes) == why(words::StudioSay::entry_unlike, photo("a")));
  bytes = zip::of({{photo("a"), "x"}});
  bytes[bytes.find(photo("a")) + 7] = '/';
  CHECK(refused(bytes) != "");
}

TEST_CASE("a name that is there twice is refused, capital or not") {
  CHECK(entry_refused({"sessions/good.jsonl", "x"}) ==
        why(words::StudioSay::entry_twice, "sessions/good.jsonl"));
  CHECK(entry_refused({"sessions/GOOD.jsonl", "x"}) ==
        why(words::StudioSay::entry_twice, "sessions/GOOD.jsonl"));
}

TEST_CASE("links, devices and folders of their own are refused") {
  for (const std::uint32_t kind : {zip::link, zip::device, zip::pipe, zip::folder})
    CHECK(entry_refused({photo("a"), "/etc/passwd", kind}) ==
          why(words::StudioSay::entry_not_plain, photo("a")));
  CHECK(entry_refused({"photos/deep/", "", zip::folder}) ==
        why(words::StudioSay::entry_leaves, "photos/deep/"));
}

TEST_CASE("the two folders may have entries of their own") {
  const auto inspected = studio::inspect(zip::of({{"sessions/", "", zip::folder},
                                                  {"photos/", "", zip::folder},
                                                  {"sessions/a.jsonl", "one\n"}}));
  REQUIRE(inspected);
  CHECK(inspected->files == 1);
}

TEST_CASE("encrypted entries and rare ways of compressing are refused") {
  CHECK(entry_refused({photo("a"), std::string(20, 'x'), zip::plain_file, 1}) ==
        why(words::StudioSay::entry_encrypted, photo("a")));
  for (const std::uint16_t method : {12, 14, 93, 95, 98}) { // bzip2, lzma, zstd, xz, ppmd
    const std::string said = entry_refused({photo("a"), "xxxx", zip::plain_file, 0, method});
    CHECK(said.find("compressed in a way that is not read") != std::string::npos);
  }
}

TEST_CASE("a broken pack is refused") {
  const zip::Entry good{"sessions/a.jsonl", "one\n"};
  const std::string whole = zip::of({good});
  REQUIRE(studio::inspect(whole));
  const std::string no_zip = words::say(words::StudioSay::pack_no_zip);
  for (std::size_t cut = 0; cut < whole.size(); ++cut)
    CHECK(refused(whole.substr(0, cut)) ==
          (cut < 4 ? no_zip : words::say(words::StudioSay::pack_cut, {std::to_string(cut)})));
  CHECK(refused("one\n") == no_zip);
  zip::Entry wrong = good;
  wrong.crc_off_by = 1;
  CHECK(refused(zip::of({wrong})).find("sessions/a.jsonl") != std::string::npos);
  wrong = good;
  wrong.size = 5;
  CHECK(refused(zip::of({wrong})).find("sessions/a.jsonl") != std::string::npos);
}

TEST_CASE("one byte of a pack changed: refused, or the same studio") {
  const std::string whole =
      zip::of({{"sessions/a.jsonl", "one\n"}, {photo("b"), "a photo"}, {photo("c"), ""}});
  const Tree same{{"sessions/a.jsonl", "one\n"}, {photo("b"), "a photo"}, {photo("c"), ""}};
  int refusals = 0;
  for (std::size_t at = 0; at < whole.size(); ++at) {
    std::string changed = whole;
    changed[at] = static_cast<char>(changed[at] ^ 0x10);
    const Workshop w;
    rig::put(w.pack, changed);
    if (!studio::unpack(*files, w.pack, w.out)) {
      CHECK(w.beside() == 0);
      ++refusals;
      continue;
    }
    for (const auto& [name, bytes] : tree(w.out)) { // a name is held by no check value
      bool known = false;
      for (const auto& [_, other] : same) known |= other == bytes;
      CHECK(known);
    }
  }
  CHECK(refusals > 100);
}

namespace {

// A file system that puts no folder in the place of another, as FAT may be.
class ReplacesNoFolder final : public rig::Passing {
public:
  disk::Done rename(const Path& from, const Path& to) override {
    if (std::filesystem::is_directory(to)) return {EPERM};
    return Passing::rename(from, to);
  }
};

}

TEST_CASE("where no folder can be put in the place of an empty one it is put into none") {
  const Workshop w;
  ReplacesNoFolder files_there;
  REQUIRE(studio::pack(files_there, w.studio, w.pack));
  REQUIRE(studio::unpack(files_there, w.pack, w.out));
  CHECK(tree(w.out) == tree(w.studio));
  CHECK_FALSE(studio::unpack(files_there, w.pack, w.out));
}

TEST_CASE("whichever call fails, packing leaves no pack and unpacking no folder") {
  for (const char* call : {"fail", "fail-from"})
    for (int nth = 1;; ++nth) {
      const auto fault = disk::parse_fault(std::string(call) + ":" + std::to_string(nth) + ":EIO");
      REQUIRE(fault);
      const Workshop w;
      const auto faulty = disk::faulty_files(disk::posix_files(), *fault);
      const auto packed = studio::pack(*faulty, w.studio, w.pack);
      if (packed) break;
      CHECK(words::message(packed.error()).find("The disk answers with an error") !=
            std::string::npos);
      // A disk that fails from then on cannot take the half away either.
      if (fault->from) continue;
      CHECK(!std::filesystem::exists(w.pack));
    }
  const Workshop w;
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  for (int nth = 1;; ++nth) {
    const auto fault = disk::parse_fault("fail-from:" + std::to_string(nth) + ":EIO");
    const auto faulty = disk::faulty_files(disk::posix_files(), *fault);
    const auto unpacked = studio::unpack(*faulty, w.pack, w.out);
    if (unpacked) break;
    CHECK(words::message(unpacked.error()).find("The disk answers with an error") !=
          std::string::npos);
    // The last call forces the new folder's own name: by then it stands whole.
    if (std::filesystem::exists(w.out)) {
      CHECK(tree(w.out) == tree(w.studio));
      std::filesystem::remove_all(w.out);
    }
    CHECK(w.beside() == 0);
  }
  CHECK(tree(w.out) == tree(w.studio));
}

}
