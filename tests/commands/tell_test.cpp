// tell and hear, as somebody types them.
#include "commands/tool.hpp"
#include "paint/range/told.hpp"

#include <nlohmann/json.hpp>

namespace tell_test {

using namespace tool;

namespace {

// The small batch, mulled until it was right.
std::string felt_batch() {
  return std::string(small_batch) + "wait 60\ntap pass\nwait 200\ntap felt right\n";
}

// The same on another evening: two studios have no session in common.
std::string felt_by_another() {
  std::string batch = felt_batch();
  return batch.replace(batch.find("seed 7"), 6, "seed 8");
}

struct Two {
  Studio friends, own;
  std::string file = (friends.path / "told.json").string();
  Two() { REQUIRE(friends.play(felt_batch()).status == 0); }
  Ran tell() const {
    return run({"tell", "--out", file, "--studio", friends.name, "--fallback", ""});
  }
  Ran hear(const std::string& what) const {
    return run({"hear", what, "--studio", own.name, "--fallback", ""});
  }
  nlohmann::json range_of(const std::string& pigment) const {
    const Ran ran = own.read({"range", pigment, "--json"});
    REQUIRE(ran.status == 0);
    const auto all = nlohmann::json::parse(ran.out);
    for (const auto& row : all["pigments"])
      if (row["card"] == pigment) return row;
    return {};
  }
};

}

TEST_CASE("what one studio tells another hears, and can forget") {
  const Two s;
  const auto before = s.range_of("pb29");
  CHECK(s.tell().status == 0);
  const std::string bytes = rig::bytes_of(s.file);
  CHECK(paint::told_from(bytes));
  for (const char* own : {"Evening", "gum_12", "c41e", "2026"}) CHECK_FALSE(has(bytes, own));
  const Ran heard = s.hear(s.file);
  CHECK(heard.status == 0);
  CHECK(has(heard.out, "1 pigment, from 1 batch."));
  CHECK(run({"check", s.own.name}).status == 0);
  const auto after = s.range_of("pb29");
  CHECK(after["sd_of_ln"] < before["sd_of_ln"]);
  CHECK(after["rests_on"] == "told");
  CHECK(has(s.own.read({"range"}).out, "what another studio told"));
  CHECK(before["rests_on"] == "class_guess");
  CHECK(s.hear("--no-more").status == 0);
  CHECK(s.range_of("pb29") == before);
  CHECK(s.hear("--no-more").status == 1);
  CHECK(s.own.files().size() == 2); // each in a session of its own, nothing written over
}

TEST_CASE("a studio does not hear itself: its notes would count twice") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  const auto before = s.friends.files();
  const Ran ran = run({"hear", s.file, "--studio", s.friends.name, "--fallback", ""});
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "written by this very studio"));
  CHECK(s.friends.files() == before);
  CHECK(s.hear(s.file).status == 0);
}

TEST_CASE("what a friend told is not told on") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  REQUIRE(s.own.play(felt_by_another()).status == 0);
  const std::string out = (s.own.path / "out.json").string();
  const std::vector<std::string> tell{"tell",     "--out",      out, "--studio",
                                      s.own.name, "--fallback", ""};
  REQUIRE(run(tell).status == 0);
  const std::string alone = rig::bytes_of(out);
  REQUIRE(s.hear(s.file).status == 0);
  std::filesystem::remove(out);
  REQUIRE(run(tell).status == 0);
  CHECK(rig::bytes_of(out) == alone);
}

TEST_CASE(
    "on this tablet: written beside the sessions, once for what is the same, and a friend's is "
    "taken") {
  const Two s;
  const std::string write = "tap tablet\ntap other_studios\ntap tell\ntap tell\n";
  REQUIRE(s.friends.play("at 2026-11-22T14:02:00+01:00\nseed 9\n" + write).status == 0);
  std::vector<std::string> written;
  for (const auto& entry : std::filesystem::directory_iterator(s.friends.path / "told"))
    written.push_back(rig::bytes_of(entry.path()));
  REQUIRE(written.size() == 1);
  CHECK(has(s.friends.files().begin()->first, paint::told_from(written[0])->from));

  const std::string take = "at 2026-11-23T14:02:00+01:00\nseed 9\ntap tablet\n"
                           "tap other_studios\ntap find_told\ntap take_told\n";
  CHECK(s.friends.play(take).status == 1); // its own is none of a friend's: nothing to take
  std::filesystem::create_directory(s.own.path / "told");
  CHECK(s.own.play(take).status == 1); // nothing lies there
  rig::put(s.own.path / "told" / "friend.json", written[0]);
  const auto before = s.range_of("pb29");
  REQUIRE(s.own.play(take).status == 0);
  CHECK(s.range_of("pb29")["rests_on"] == "told");
  REQUIRE(s.own
              .play("at 2026-11-24T14:02:00+01:00\nseed 10\ntap tablet\n"
                    "tap other_studios\ntap forget_told\n")
              .status == 0);
  CHECK(s.range_of("pb29") == before);
}

TEST_CASE("nothing is told where nothing was felt; no file is written over") {
  const Two s;
  CHECK(run({"tell", "--out", s.file, "--studio", s.own.name, "--fallback", ""}).status == 1);
  CHECK(s.tell().status == 0);
  CHECK(s.tell().status == 1);
  CHECK(run({"tell", "--studio", s.friends.name}).status == 2);
}

TEST_CASE("what counts already is not kept twice") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  REQUIRE(s.hear(s.file).status == 0);
  const auto before = s.own.files();
  const Ran again = s.hear(s.file);
  CHECK(again.status == 0);
  CHECK(has(again.out, "counts already"));
  CHECK(s.own.files() == before);
}

TEST_CASE("an older word of a studio does not take the place of its newer one") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  auto newer = nlohmann::json::parse(rig::bytes_of(s.file));
  newer["batches"] = newer["batches"].get<int>() + 3;
  const std::string later = (s.friends.path / "later").string();
  rig::put(later, newer.dump());
  REQUIRE(s.hear(later).status == 0);
  const auto before = s.own.files();
  const Ran older = s.hear(s.file);
  CHECK(older.status == 1);
  CHECK(has(older.err, "--no-more"));
  CHECK(s.own.files() == before);
}

TEST_CASE("what no pigment wants is not heard, however well it is written") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  auto absurd = nlohmann::json::parse(rig::bytes_of(s.file));
  absurd["ln_demands"][0] = 4.9;
  rig::put(s.friends.path / "absurd", absurd.dump());
  const Ran ran = s.hear((s.friends.path / "absurd").string());
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "134.3 mL of liquid to 1 mL of pigment"));
  CHECK(s.own.files().empty());
}

TEST_CASE("what cannot be heard is named, and nothing is kept") {
  const Two s;
  rig::put(s.friends.path / "bad", "{\"format\":\"slabside-range\",\"version\":9}");
  const Ran bad = s.hear((s.friends.path / "bad").string());
  CHECK(bad.status == 1);
  CHECK(has(bad.err, "version 9"));
  CHECK(has(bad.err, "bad” was not heard"));
  rig::put(s.friends.path / "large", std::string(100'000, 'x'));
  CHECK(has(s.hear((s.friends.path / "large").string()).err, "48000 bytes"));
  CHECK(s.hear((s.friends.path / "none").string()).status == 1);
  CHECK(s.hear(s.friends.name).status == 1); // a folder
  CHECK(run({"hear", "--studio", s.own.name}).status == 2);
  CHECK(s.own.files().empty());
}

TEST_CASE("a word that the studio's own notes speak against is kept, and said not to be believed") {
  const Two s;
  REQUIRE(s.tell().status == 0);
  std::string evening = felt_by_another();
  for (const char* lines : {"tap add gum_12 x3\nwait 5\ntap felt right\n"})
    for (int i = 0; i < 6; ++i) evening += lines;
  REQUIRE(s.own.play(evening).status == 0);
  CHECK_FALSE(has(s.hear(s.file).out, "speak against it"));
  auto far = nlohmann::json::parse(rig::bytes_of(s.file));
  far["ln_demands"][0] = far["ln_demands"][0].get<double>() - 1;
  for (auto& hand : far["hand"]) hand[1] = 0.01;
  far["covariance"][0][0] = 0.001;
  rig::put(s.friends.path / "far", far.dump());
  const Ran heard = s.hear((s.friends.path / "far").string());
  CHECK(heard.status == 0);
  CHECK(has(heard.out, "speak against it"));
}

}
