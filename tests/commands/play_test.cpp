#include "commands/tool.hpp"
#include "session/reader.hpp"

namespace play_test {

using namespace tool;

namespace {

std::vector<session::Line> lines_of(const Studio& studio) {
  std::vector<session::File> files;
  for (const auto& [name, bytes] : studio.files()) files.push_back(session::read_file(name, bytes));
  const auto logs = session::join_parts(files);
  REQUIRE(logs.size() == 1);
  return logs[0].lines;
}

}

TEST_CASE("the same script and seed give the same bytes") {
  const Studio one, two;
  const Ran first = one.play(small_batch), second = two.play(small_batch);
  CHECK(first.status == 0);
  CHECK(first.err == "");
  CHECK(first.out == second.out);
  CHECK(one.files().size() == 1);
  CHECK(one.files() == two.files());
  const Studio other;
  std::string reseeded = small_batch;
  reseeded.replace(reseeded.find("seed 7"), 6, "seed 8");
  CHECK(other.play(reseeded).status == 0);
  CHECK(other.files() != one.files());
}

TEST_CASE("what was tapped is what is kept") {
  const Studio studio;
  REQUIRE(studio.play(small_batch).status == 0);
  CHECK(run({"check", studio.name}).status == 0);
  double drops = 0, grams = 0;
  int withdrawn = 0;
  std::vector<std::int64_t> times;
  const auto lines = lines_of(studio);
  for (const session::Line& line : lines) {
    if (const auto* a = std::get_if<session::Added>(&line.event)) {
      (a->unit == session::Unit::g ? grams : drops) += a->amount;
      if (a->unit != session::Unit::g) times.push_back(line.t);
    }
    withdrawn += std::holds_alternative<session::Withdrawn>(line.event);
  }
  CHECK(drops == 10);
  CHECK(grams == 15);
  CHECK(withdrawn == 1);
  REQUIRE(times.size() == 10);
  CHECK(times[1] - times[0] == 1500); // every 1.5
  CHECK(std::holds_alternative<session::Left>(lines.back().event));
  // 14:02 in +01:00 is 13:02 UTC.
  CHECK(has(studio.files().begin()->first, "2026-11-20T1302"));
}

TEST_CASE("what a script leaves half typed is kept at its end") {
  const Studio studio;
  const Ran ran = studio.play("seed 7\ntap shelf\ntap kind_of binder\ntap new_card\n"
                              "write card_name Gum of May\n");
  CHECK(ran.status == 0);
  CHECK(ran.err == "");
  const auto lines = lines_of(studio);
  REQUIRE(lines.size() == 3);
  CHECK(std::get<session::LaidOut>(lines[1].event).card->name == "Gum of May");
  const Studio other;
  const Ran faulty = other.play("seed 7\ntap shelf\ntap kind_of binder\ntap new_card\n"
                                "write card_name Gum of May\nwrite made_on yesterday or so\n");
  CHECK(has(faulty.err, "yesterday or so is no date"));
}

TEST_CASE("stop leaves no goodbye") {
  const Studio studio;
  REQUIRE(studio.play(std::string(small_batch) + "stop\ntap undo\n").status == 0);
  CHECK_FALSE(std::holds_alternative<session::Left>(lines_of(studio).back().event));
}

TEST_CASE("a touch that slides off its pad counts as nothing") {
  const Studio studio;
  REQUIRE(studio.play(std::string(small_batch) + "down felt right\nslide\nup\n").status == 0);
  for (const session::Line& line : lines_of(studio))
    if (const auto* felt = std::get_if<session::Felt>(&line.event))
      CHECK(felt->as != session::Feel::right);
  const Studio other;
  REQUIRE(other.play(std::string(small_batch) + "down felt right\nup\n").status == 0);
  CHECK(lines_of(other).size() == lines_of(studio).size() + 1);
}

TEST_CASE("ids and device may be given") {
  const Studio studio;
  const Ran ran = studio.play("session 0badcafe\ndevice beef\n" + std::string(small_batch));
  CHECK(has(ran.out, "session 0badcafe"));
  CHECK(has(studio.files().begin()->first, "-beef-0badcafe.jsonl"));
}

TEST_CASE("saved lines are reported as they are saved, up to the last") {
  const Studio studio;
  const Ran ran = studio.play(small_batch, {"--report"});
  REQUIRE(ran.status == 0);
  CHECK(has(ran.out, "saved " + std::to_string(lines_of(studio).size() - 1) + "\n"));
}

TEST_CASE("a studio that fails once goes on in a new part") {
  const Studio studio, good;
  REQUIRE(good.play(small_batch).status == 0);
  const Ran ran = studio.play(small_batch, {"--fault", "fail-write:5:EIO"});
  CHECK(ran.status == 0);
  CHECK(studio.files().size() == 2);
  CHECK(lines_of(studio) == lines_of(good));
  CHECK(run({"check", studio.name}).status == 0);
}

TEST_CASE("a studio that fails for good: the rest is adrift, and read with the studio") {
  const Studio studio, good;
  const rig::Folder away;
  const std::string fallback = away.path.string();
  REQUIRE(good.play(small_batch).status == 0);
  const Ran ran =
      studio.play(small_batch, {"--fault", "fail-write-from:8:ENOSPC", "--fallback", fallback});
  CHECK(ran.status == 0);
  CHECK(has(ran.err, fallback));
  const std::vector<std::string> show{"show", "last", "--json"};
  const Ran shown =
      run({"show", "last", "--json", "--studio", studio.name, "--fallback", fallback});
  CHECK(shown.status == 0);
  CHECK(shown.out == good.read(show).out);
}

TEST_CASE("a studio that fails for good and nowhere to go: said, with how much") {
  const Studio studio;
  const Ran ran = studio.play(small_batch, {"--fault", "fail-write-from:8:ENOSPC"});
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "not saved"));
}

TEST_CASE("a number that does not go in stops the script at its line, with the reason") {
  const Studio studio;
  const Ran ran = studio.play("seed 7\ntap pigment pb29\ntap weigh\ntype 99999\ntap begin\n");
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "Line 4: 99999 does not go in: "));
  CHECK(has(ran.err, "5000"));
}

TEST_CASE("what the program tells the hand stands beside the line of the script") {
  const Studio studio;
  const Ran ran = studio.play("seed 7\ntap pigment pb29\ntap weigh\ntype 10\ntap begin\n"
                              "tap felt right\n");
  CHECK(ran.status == 0);
  CHECK(has(ran.err, "Line 6: "));
}

TEST_CASE("a finger that is not down can neither slide nor go up") {
  for (const char* line : {"up", "slide"}) {
    const Studio studio;
    const Ran ran = studio.play(std::string(small_batch) + line + "\n");
    CHECK(ran.status == 1);
    CHECK(has(ran.err, "Line 18: No finger is down"));
  }
}

TEST_CASE("a studio that is not there is made") {
  const rig::Folder folder;
  Studio script;
  const Ran ran =
      run({"play", script.script(small_batch), "--studio", (folder.path / "new").string()});
  CHECK(ran.status == 0);
  CHECK(std::filesystem::is_directory(folder.path / "new" / "sessions"));
}

TEST_CASE("a pad that is not there stops the script, with what is there") {
  const Studio studio;
  const Ran ran = studio.play(std::string(small_batch) + "\ntap take_up\n");
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "Line 19"));
  CHECK(has(ran.err, "felt right"));
  CHECK(std::holds_alternative<session::Left>(lines_of(studio).back().event));
}

}
