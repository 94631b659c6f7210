// mend, pack and unpack, as somebody types them.
#include "commands/check.hpp"
#include "commands/copies.hpp"
#include "commands/open_pack.hpp"
#include "commands/show.hpp"
#include "commands/tool.hpp"
#include "studio/mend.hpp"
#include "studio/pieces.hpp"

#include <cstdlib>

namespace copies_test {

using namespace tool;

namespace {

const std::string photo_bytes(70'000, 'p'), photo = studio::sha256(photo_bytes) + ".jpg";

Ran unpack(const rig::Path& file, const rig::Path& folder) {
  return run({"unpack", file.string(), "--out", folder.string()});
}

// The same, but for saying that entries may be missing.
std::string without_mark(std::string json) {
  const std::string mark = "\"damaged\": true";
  const std::size_t at = json.find(mark);
  REQUIRE(at != std::string::npos);
  return json.replace(at, mark.size(), "\"damaged\": false");
}

Ran shown(const std::string& studio) {
  return run({"show", "last", "--json", "--studio", studio, "--fallback", ""});
}

struct Played : Studio {
  std::string pack = (path / "p.zip").string(), out = (path / "new").string();
  Played() { REQUIRE(play(small_batch).status == 0); }
  Ran packed() const { return run({"pack", "--studio", name, "--out", pack}); }
  Ran mended() const { return run({"mend", "--studio", name, "--out", out}); }
  rig::Path session() const { return std::filesystem::directory_iterator(sessions)->path(); }
};

}

TEST_CASE("a studio packed, carried and unpacked is checked and shown as before") {
  const Played s;
  std::filesystem::create_directory(s.path / "photos");
  rig::put(s.path / "photos" / photo, photo_bytes);
  const Ran packed = s.packed();
  CHECK(packed.err == "");
  CHECK(packed.status == 0);
  CHECK(has(packed.out, "2 files"));
  CHECK(unpack(s.pack, s.out).status == 0);
  CHECK(run({"check", s.out}).out == run({"check", s.name}).out);
  CHECK(run({"check", s.out}).status == 0);
  CHECK(shown(s.out).out == shown(s.name).out);
}

TEST_CASE("a photo that is not what its name says is packed, and said") {
  const Played s;
  std::filesystem::create_directory(s.path / "photos");
  rig::put(s.path / "photos" / photo, "another");
  const Ran packed = s.packed();
  CHECK(packed.status == 1);
  CHECK(has(packed.out, photo + ": this photo is not as it was"));
  CHECK(has(packed.out, "2 files"));
}

TEST_CASE("a pack of a damaged studio says so where it is unpacked, and ends as damage") {
  const Played s;
  std::string bytes = rig::bytes_of(s.session());
  bytes[bytes.find("gum_12") + 1] ^= 1;
  rig::put(s.session(), bytes);
  s.packed();
  const Ran ran = unpack(s.pack, s.out);
  CHECK(ran.status == 1);
  CHECK(has(ran.out, "unpacked as"));
  CHECK(has(ran.out, "the check value does not match the line"));
  CHECK(has(ran.out, "mend --studio " + s.out));
}

TEST_CASE("a pack cut in its middle is refused by how much of it there is") {
  const Played s;
  REQUIRE(s.packed().status == 0);
  rig::put(s.pack, rig::bytes_of(s.pack).substr(0, 500));
  const Ran ran = unpack(s.pack, s.out);
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "it was cut after 500 bytes"));
  CHECK(has(ran.err, "Fetch it once more"));
}

TEST_CASE("an entry that was not finished is said by mending, with its place") {
  const Played s;
  const std::string bytes = rig::bytes_of(s.session());
  rig::put(s.session(), bytes.substr(0, bytes.size() - 5));
  const Ran ran = s.mended();
  CHECK(ran.status == 0);
  CHECK(has(ran.out, "the last entry was not finished"));
  CHECK(has(ran.out, "byte " + std::to_string(bytes.rfind('\n', bytes.size() - 2) + 1)));
}

TEST_CASE("a pack opened by hand is unpacked once, and found again with what was done since") {
  const Played s;
  REQUIRE(s.packed().status == 0);
  const std::string whole = rig::bytes_of(s.pack);
  std::ostringstream out;
  const auto first = commands::open_pack(s.pack, s.path, out);
  REQUIRE(first.has_value());
  CHECK(first->parent_path() == s.path);
  CHECK(first->filename().string().find("Slabside-p-") == 0);
  CHECK(has(out.str(), first->string()));
  CHECK(shown(first->string()).out == shown(s.name).out);

  rig::put(*first / "sessions" / "later.jsonl", "");
  const auto again = commands::open_pack(s.pack, s.path, out);
  REQUIRE(again.has_value());
  CHECK(*again == *first);
  CHECK(std::filesystem::exists(*again / "sessions" / "later.jsonl"));
  CHECK(rig::bytes_of(s.pack) == whole);

  // Another one of that name is another studio.
  const char* more = "seed 8\ntap pigment pb29\ntap weigh\ntype 10\ntap begin\n";
  REQUIRE(s.play(more).status == 0);
  std::filesystem::remove(s.pack);
  REQUIRE(s.packed().status == 0);
  const auto other = commands::open_pack(s.pack, s.path, out);
  REQUIRE(other.has_value());
  CHECK(*other != *first);
}

TEST_CASE("what is no pack is not opened, and leaves nothing") {
  const Studio s;
  rig::put(s.path / "p.slabside", "no zip");
  const auto before = std::distance(std::filesystem::directory_iterator(s.path), {});
  std::ostringstream out;
  const auto opened = commands::open_pack(s.path / "p.slabside", s.path, out);
  REQUIRE(!opened.has_value());
  CHECK(has(words::message(opened.error()), "p.slabside"));
  CHECK(out.str() == "");
  CHECK(std::distance(std::filesystem::directory_iterator(s.path), {}) == before);
  CHECK(!commands::open_pack(s.path / "none.slabside", s.path, out).has_value());
}

TEST_CASE("other programs read the pack: Python's zipfile, unzip and bsdtar") {
  const Played s;
  std::filesystem::create_directory(s.path / "photos");
  rig::put(s.path / "photos" / photo, photo_bytes);
  rig::put(s.path / "photos" / (studio::sha256("") + ".png"), "");
  rig::put(s.sessions / "another.jsonl", "");
  rig::put(s.sessions / "Müller.jsonl", "");
  rig::put(s.sessions / "墨.jsonl", "ink");
  REQUIRE(s.packed().status == 0);
  const std::string agrees = std::string("/usr/bin/python3 -B ") + SLABSIDE_ROOT +
                             "/tests/commands/zip_agrees.py " + s.pack + " " + s.name;
  CHECK(std::system(agrees.c_str()) == 0);
}

TEST_CASE("a pack that is refused is named, with the entry and what to do") {
  const Studio s;
  rig::put(s.path / "p.zip", "no zip");
  const Ran ran = unpack(s.path / "p.zip", s.path / "new");
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "p.zip"));
  CHECK(has(ran.err, "Fetch it once more"));
  CHECK(!std::filesystem::exists(s.path / "new"));
  CHECK(unpack(s.path / "none.zip", s.path / "new").status == 1);
  CHECK(unpack(s.path, s.path / "new").status == 1);
}

TEST_CASE("what was saved elsewhere and is not home yet is not in the pack, and that is said") {
  const Played s;
  const rig::Path fallback = s.path / "adrift",
                  session = fallback / "sessions" / s.session().filename();
  std::filesystem::create_directories(fallback / "sessions");
  rig::put(session, "the same name is at home");
  std::ostringstream out;
  REQUIRE(commands::pack(s.name, fallback, s.pack, out));
  CHECK(!has(out.str(), "not in it"));
  std::filesystem::remove(s.pack);
  rig::put(fallback / "sessions" / "x-a83f-c41e08d5.1.jsonl", "");
  REQUIRE(commands::pack(s.name, fallback, s.pack, out));
  CHECK(has(out.str(), "not in it: what was saved in “" + fallback.string()));
}

TEST_CASE("what is to be made must be named, and must not be there") {
  const Played s;
  CHECK(run({"pack", "--studio", s.name}).status == 2);
  CHECK(run({"mend", "--studio", s.name}).status == 2);
  CHECK(run({"unpack", s.pack}).status == 2);
  CHECK(run({"mend", "--studio", s.out, "--out", s.out}).status == 2);
  std::filesystem::create_directory(s.out);
  CHECK(s.mended().status == 2);
  CHECK(has(s.mended().err, "there already"));
  CHECK(std::filesystem::is_empty(s.out));
}

TEST_CASE("a whole studio is mended to the same one") {
  const Played s;
  const Ran ran = s.mended();
  CHECK(ran.status == 0);
  CHECK(has(ran.out, ".jsonl: copied\n"));
  CHECK(rig::bytes_of(rig::Path(s.out) / "sessions" / s.session().filename()) ==
        rig::bytes_of(s.session()));
}

namespace {

// What check and show say of a studio's sessions, without a disk.
struct Said {
  int status = -1;
  std::string shown;
};

Said said_of(const std::vector<studio::SessionFile>& sessions) {
  studio::Reading reading;
  for (const auto& [name, bytes] : sessions)
    reading.files.push_back(session::read_file(name, bytes));
  std::ostringstream out;
  const int status = commands::check(reading, out);
  const auto batch = commands::find_batch(session::join_parts(reading.files), "last");
  return {status, batch ? commands::shown_as_json(*batch) : words::message(batch.error())};
}

std::string flipped(std::string bytes, std::size_t at) {
  bytes[at] = static_cast<char>(bytes[at] ^ 1 << at % 7);
  return bytes;
}

// A beginning can be made again, and then no entry is missing any more.
std::string expected(const std::string& shown, const std::string& whole, std::size_t at) {
  return at < whole.find('\n') ? without_mark(shown) : shown;
}

}

TEST_CASE(
    "a byte flipped anywhere: the mended studio is whole, and sums what could be read before") {
  const Played s;
  const std::string name = s.session().filename(), whole = rig::bytes_of(s.session());
  REQUIRE(whole.size() > 1000);
  for (std::size_t at = 0; at < whole.size(); ++at) {
    CAPTURE(at);
    std::vector<studio::SessionFile> sessions{{name, flipped(whole, at)}};
    const Said before = said_of(sessions);
    const auto report = studio::mend_sessions(sessions);
    const Said after = said_of(sessions);
    CHECK(after.status == 0);
    CHECK(after.shown == expected(before.shown, whole, at));
    CHECK_FALSE(report.lost.empty()); // also a goodbye with another sign for its newline
  }
}

// The same as somebody types it, here and there: each copy is forced to a real disk.
TEST_CASE("a byte flipped here and there: mended on a disk") {
  const Played s;
  const rig::Path file = s.session();
  const std::string whole = rig::bytes_of(file);
  for (std::size_t at = 7; at < whole.size(); at += 301) {
    CAPTURE(at);
    rig::put(file, flipped(whole, at));
    const Ran before = shown(s.name);
    CHECK(s.mended().status == 1);
    CHECK(run({"check", s.out}).status == 0);
    CHECK(shown(s.out).out == expected(before.out, whole, at));
    CHECK(rig::bytes_of(file) == flipped(whole, at));
    std::filesystem::remove_all(s.out);
  }
}

TEST_CASE("a photo that changed or is gone is lost, and said") {
  const Played s;
  const Ran kept = run({"photo", std::string(SLABSIDE_ROOT) + "/tests/studio/pictures/base.jpg",
                        "--batch", "last", "--of", "slab", "--studio", s.name, "--fallback", ""});
  REQUIRE(kept.status == 0);
  const rig::Path photo = std::filesystem::directory_iterator(s.path / "photos")->path();
  CHECK(s.mended().status == 0);
  CHECK(run({"check", s.out}).status == 0);
  std::filesystem::remove_all(s.out);
  rig::put(photo, "no picture");
  Ran ran = s.mended();
  CHECK(ran.status == 1);
  CHECK(has(ran.out, photo.filename().string()));
  CHECK(rig::bytes_of(rig::Path(s.out) / "photos" / photo.filename()) == "no picture");
  std::filesystem::remove_all(s.out);
  std::filesystem::remove(photo);
  ran = s.mended();
  CHECK(ran.status == 1);
  CHECK(has(ran.out, photo.filename().string()));
}

namespace {

// Mends a studio of one file.
Ran mended(const std::string& bytes) {
  const Studio s;
  rig::put(s.sessions / "a-a83f-c41e08d5.jsonl", bytes);
  const std::string out = (s.path / "new").string();
  Ran ran = run({"mend", "--studio", s.name, "--fallback", "", "--out", out});
  CHECK(run({"check", out}).status == ran.status);
  return ran;
}

std::string sealed(const std::vector<session::Line>& lines) {
  std::string bytes;
  std::uint32_t before = 0;
  for (const session::Line& line : lines) {
    const auto encoded = session::encode(line, before);
    bytes += encoded->bytes;
    before = encoded->check;
  }
  return bytes;
}

}

TEST_CASE("mending ends with 0 where the copy says all that was said, however it was damaged") {
  const std::string whole =
      bytes_of({{"", began()}, {"7f3a91c2", session::Opened{"Stone"}}, {"", session::Left{}}});
  const std::size_t second = whole.find('\n') + 1;
  for (const std::string& bytes : {whole, whole.substr(0, second) + "\n" + whole.substr(second),
                                   whole + "\n", whole + whole.substr(second)}) {
    const Ran ran = mended(bytes);
    CHECK(ran.status == 0);
    CHECK(has(ran.out, "0 things could not be had back"));
  }
}

TEST_CASE("mending ends with 1 where something is still wrong in the copy, which is said") {
  session::Began newer = began();
  newer.version = 7;
  Ran ran = mended(bytes_of({{"", newer}, {"", session::Left{}}}));
  CHECK(ran.status == 1);
  CHECK(has(ran.out,
            "still so in the copy: a-a83f-c41e08d5.jsonl: line 1, byte 0: written by a newer"));
  const std::int64_t at = 1795617120000;
  ran = mended(sealed({{0, 0, at, "", began()},
                       {1, 9000, at + 9000, "7f3a91c2", session::Opened{"Stone"}},
                       {2, 6500, at + 6500, "", session::Left{}}}));
  CHECK(ran.status == 1);
  CHECK(has(ran.out, "it was 2.5 s before the line that stands before it"));
  CHECK(has(ran.out, "0 things could not be had back"));
}

TEST_CASE("the copy is the same studio as the one it mends") {
  const Played s;
  rig::put(s.path / "studio-id", "1234abcdabcd\n");
  CHECK(s.mended().status == 0);
  CHECK(rig::bytes_of(rig::Path(s.out) / "studio-id") == "1234abcdabcd\n");
}

TEST_CASE("what no studio holds is copied by mending all the same, and said") {
  const Played s;
  rig::put(s.sessions / "notes.txt", "mine");
  rig::put(s.sessions / "x.unfinished", "half");
  const Ran ran = s.mended();
  CHECK(has(ran.out, "notes.txt: copied as it is"));
  CHECK(rig::bytes_of(rig::Path(s.out) / "sessions" / "notes.txt") == "mine");
  CHECK(!std::filesystem::exists(rig::Path(s.out) / "sessions" / "x.unfinished"));
}

TEST_CASE("check says what no file holds, and cannot say anything of no studio") {
  const Studio s;
  session::Began later = began();
  later.part = 1;
  later.from = 3;
  session::Line first{3, 0, 1795617120000, "", later},
      line{3, 0, 1795617120000, "", session::Left{}};
  const auto one = session::encode(first, 0);
  const auto two = session::encode(line, one->check);
  rig::put(s.sessions / "x-a83f-c41e08d5.1.jsonl", one->bytes + two->bytes);
  const Ran ran = run({"check", s.name});
  CHECK(ran.status == 1);
  CHECK(has(ran.out, "session c41e08d5: lines 0 to 2 are in no file"));
  CHECK(run({"check", (s.path / "nowhere").string()}).status == 2);
  const rig::Folder broken;
  rig::put(broken.path / "sessions", "a file where a folder should be");
  CHECK(run({"check", broken.path.string()}).status == 2);
}

}
