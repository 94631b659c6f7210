// Names in a pack in other letters than ASCII: kept as they are, byte by byte, and never trusted.
#include "studio/packs.hpp"
#include "words/studio_says.hpp"

#include <cstdlib>

namespace pack_names_test {

using namespace packs;

namespace {

const std::vector<std::string> far_names{
    "sessions/Müller 2026.jsonl", "sessions/Mu\u0308ller 2026.jsonl", // ü in one sign and in two
    "sessions/墨.jsonl", "sessions/синий 🎨.jsonl"};

bool is_taken(const std::string& name) { return !studio::PackNames().take(name); }

bool python(const std::string& what, const Path& pack) {
  const std::string command = std::string("/usr/bin/python3 -B ") + SLABSIDE_ROOT +
                              "/tests/studio/python_zip.py " + what + " " + pack.string();
  return std::system(command.c_str()) == 0;
}

}

TEST_CASE("names of umlauts, two-part letters and ideographs come back as they were") {
  const Workshop w;
  for (const std::string& name : far_names) w.put(name, name);
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  REQUIRE(studio::unpack(*files, w.pack, w.out));
  CHECK(tree(w.out) == tree(w.studio));
  CHECK(tree(w.out).size() == 4 + far_names.size());
}

// Bit 11 says that a name is UTF-8 (APPNOTE 4.4.4); without it other programs read code page 437.
TEST_CASE("a name in other letters is marked as UTF-8, one in ASCII is not") {
  const Workshop w;
  w.put(far_names[0], "");
  REQUIRE(studio::pack(*files, w.studio, w.pack));
  const std::string bytes = rig::bytes_of(w.pack);
  const auto marked = [&](const std::string& name) {
    const std::size_t first = bytes.find(name), second = bytes.find(name, first + 1);
    const bool head = bytes[first - 30 + 7] & 8, list = bytes[second - 46 + 9] & 8;
    CHECK(head == list);
    return head;
  };
  CHECK(marked(far_names[0]));
  CHECK_FALSE(marked("sessions/a.jsonl"));
}

TEST_CASE("names that Python marks as UTF-8 are read, and unmarked ones that are UTF-8") {
  const Workshop w;
  REQUIRE(python("names", w.pack));
  REQUIRE(studio::unpack(*files, w.pack, w.out));
  CHECK(tree(w.out) == Tree{{"sessions/Müller.jsonl", "one sign"},
                            {"sessions/Mu\u0308ller.jsonl", "two signs"},
                            {"sessions/墨.jsonl", "ink"}});
  const auto unmarked = studio::inspect(zip::of({{"sessions/Müller.jsonl", "x"}}));
  REQUIRE(unmarked);
  CHECK(unmarked->files == 1);
}

// Table 3-7 of the Unicode Standard: what is well-formed.
TEST_CASE("names that are not UTF-8 are refused, marked or not") {
  for (const char* name : {"photos/caf\xe9.jpg", "photos/\xc3.jpg", "photos/\xc3",
                           "photos/\x80.jpg", "photos/\xc0\xaf.jpg", "photos/\xe0\x80\xaf.jpg",
                           "photos/\xed\xa0\x80", "photos/\xf4\x90\x80\x80", "photos/\xff.jpg"})
    for (const std::uint16_t flags : {0, 0x800})
      CHECK(entry_refused({name, "x", zip::plain_file, flags}) ==
            why(words::StudioSay::entry_not_utf8, name));
}

TEST_CASE("names that show as others than they are are refused") {
  for (const char* name : {"photos/\u202Egpj.exe", "photos/a\u2066b", "photos/\u200F",
                           "photos/\u061C", "photos/a\u2028b", "photos/a\u2029", "photos/a\xc2\x85",
                           "photos/a\xc2\x9b[2J", "photos/\xc2\x80"})
    CHECK(entry_refused({name, "x"}) == why(words::StudioSay::entry_odd_name, name));
  for (const char* name :
       {"sessions/\u00A0.jsonl", "sessions/\u00C2\u0192.jsonl", "sessions/a\u200Db.jsonl"})
    CHECK(is_taken(name));
}

TEST_CASE("a pack of too many entries is refused") {
  studio::PackNames names;
  for (std::uint64_t i = 0; i < studio::most_pack_entries; ++i)
    REQUIRE_FALSE(names.take(photo(std::to_string(i))));
  CHECK(names.take(photo("abc")) ==
        words::Error{words::StudioSay::pack_too_many, {std::to_string(studio::most_pack_entries)}});
}

// Python's zipfile writes every size, place and count in the larger records when its limits are
// set to nothing, and any writer of a stream does so before it knows a size.
TEST_CASE("a zip64 pack by Python's zipfile is read right") {
  for (const char* how : {"zip64_heads", "zip64_everywhere"}) {
    CAPTURE(how);
    const Workshop w;
    REQUIRE(python(how, w.pack));
    const auto unpacked = studio::unpack(*files, w.pack, w.out);
    REQUIRE_MESSAGE(unpacked, words::message(unpacked.error()));
    const Tree all = tree(w.out);
    CHECK(all.at("sessions/a.jsonl") == "one\n");
    CHECK(all.at(photo("0")) == std::string(100'000, 'p'));
    CHECK(all.size() == 2);
  }
  const Workshop w;
  REQUIRE(python("zip64_many", w.pack));
  const auto many = studio::inspect(rig::bytes_of(w.pack));
  REQUIRE_MESSAGE(many, words::message(many.error()));
  CHECK(many->files == 65'538); // more than 16 bits can count
}

TEST_CASE("one byte of a zip64 pack changed: refused, or the same studio") {
  const Workshop w;
  REQUIRE(python("zip64_small", w.pack));
  const std::string whole = rig::bytes_of(w.pack);
  const auto inspected = studio::inspect(whole);
  REQUIRE(inspected);
  int refusals = 0;
  for (std::size_t at = 0; at < whole.size(); ++at)
    for (const char flip : {'\x01', '\x10', '\xff'}) {
      std::string changed = whole;
      changed[at] = static_cast<char>(changed[at] ^ flip);
      const auto read = studio::inspect(changed);
      refusals += !read;
      if (read) CHECK(read->bytes == inspected->bytes);
    }
  CHECK(refusals > 300);
}

}
