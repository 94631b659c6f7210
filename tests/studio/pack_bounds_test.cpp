// How large a pack may be when it is unpacked, whatever it says of itself.
#include "studio/packs.hpp"
#include "words/studio_says.hpp"

namespace pack_bounds_test {

using namespace packs;

namespace {

class Counting final : public rig::Passing {
public:
  std::uint64_t written = 0;
  disk::Done write(int handle, std::string_view bytes) override {
    written += bytes.size();
    return Passing::write(handle, bytes);
  }
};

// Why it is refused, and how much was written before.
std::pair<std::string, std::uint64_t> unpacked(const std::string& bytes) {
  const Workshop w;
  rig::put(w.pack, bytes);
  Counting counting;
  const auto unpacked = studio::unpack(counting, w.pack, w.out);
  REQUIRE(!unpacked);
  CHECK(w.beside() == 0);
  return {written(unpacked.error().args.at(1)), counting.written};
}

// The four bytes of the unpacked size in the list, which is the last thing with that name.
std::string with_listed_size(std::string bytes, const std::string& name, std::uint64_t size) {
  return bytes.replace(bytes.rfind(name) - 46 + 24, 4, zip::little(size, 4));
}

std::string bomb() { return deflated(photo("a"), 64 << 20); }

}

TEST_CASE("an entry that says it is too large is refused before anything is written") {
  zip::Entry large{photo("a"), "x"};
  large.size = static_cast<std::int64_t>(studio::most_entry_bytes) + 1;
  const auto [why, written] = unpacked(zip::of({{photo("f"), "y"}, large}));
  CHECK(why == words::say(words::StudioSay::entry_too_large,
                          {photo("a"), std::to_string(studio::most_entry_bytes)}));
  CHECK(written == 0);
}

TEST_CASE("a pack that says it swells is refused before anything is written") {
  REQUIRE(studio::inspect(deflated(photo("a"), 1 << 20)));
  const auto [why, written] = unpacked(bomb());
  CHECK(why == words::say(words::StudioSay::pack_swells, {photo("a"), "100"}));
  CHECK(written == 0);
  std::vector<zip::Entry> many(100, zip::Entry{"", "x"});
  for (std::size_t i = 0; i < many.size(); ++i) {
    many[i].name = photo(std::to_string(i));
    many[i].size = 1 << 20;
  }
  CHECK(unpacked(zip::of(many)).first.find("100 times") != std::string::npos);
}

TEST_CASE("a pack that swells and does not say so is refused once it has") {
  for (const std::uint64_t said : {0, 1, 10, 1 << 20}) {
    const std::string lying = with_listed_size(bomb(), photo("a"), said);
    const auto [why, written] = unpacked(lying);
    CHECK(why.find(photo("a")) != std::string::npos);
    CHECK(written <= (lying.size() + 1) * studio::most_times_larger + (1 << 20));
  }
}

TEST_CASE("an entry that is not as long as it says is refused") {
  for (const std::int64_t said : {0, 3, 5, 1000}) {
    zip::Entry wrong{photo("a"), "four"};
    wrong.listed = said;
    CHECK(entry_refused(wrong).find(photo("a")) != std::string::npos);
    wrong.size = said;
    CHECK(entry_refused(wrong).find(photo("a")) != std::string::npos);
  }
}

TEST_CASE("a file that is too large to be unpacked is not packed, and not read") {
  const Workshop w;
  rig::put(w.studio / photo("1"), "");
  std::filesystem::resize_file(w.studio / photo("1"), studio::most_entry_bytes + 1);
  const auto packed = studio::pack(*files, w.studio, w.pack);
  REQUIRE(!packed);
  CHECK(words::written(packed.error().args.at(1)) ==
        words::say(words::StudioSay::entry_too_large,
                   {photo("1"), std::to_string(studio::most_entry_bytes)}));
  CHECK(!std::filesystem::exists(w.pack));
}

namespace {

// The files of a workshop, one of which changes its length between the asking and the reading.
class Changing final : public rig::Passing {
public:
  Changing(Path file, std::uint64_t length) : file_(std::move(file)), length_(length) {}

  disk::Sized size(const Path& file) override {
    const disk::Sized sized = Passing::size(file);
    if (file == file_) std::filesystem::resize_file(file, length_);
    return sized;
  }

private:
  const Path file_;
  const std::uint64_t length_;
};

}

TEST_CASE("a session that grows while it is packed is packed as it was, one that shrinks is said") {
  const Workshop w;
  Changing growing(w.studio / "sessions" / "a.jsonl", 100);
  REQUIRE(studio::pack(growing, w.studio, w.pack));
  REQUIRE(studio::unpack(*files, w.pack, w.out));
  CHECK(rig::bytes_of(w.out / "sessions" / "a.jsonl") == "one\n");
  std::filesystem::remove(w.pack);
  Changing shrinking(w.studio / "sessions" / "b.jsonl", 2);
  const auto packed = studio::pack(shrinking, w.studio, w.pack);
  REQUIRE(!packed);
  CHECK(words::written(packed.error().args.at(1)) ==
        why(words::StudioSay::entry_shrank, "sessions/b.jsonl"));
  CHECK(!std::filesystem::exists(w.pack));
}

}
