#include "commands/tool.hpp"

namespace check_test {

using namespace tool;

namespace {

std::string whole() {
  return bytes_of({{"", began()},
                   {"7f3a91c2", session::Opened{"Stone"}},
                   {"7f3a91c2", session::Gathered{}},
                   {"", session::Left{}}});
}

Ran check(const std::string& bytes) {
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl", bytes);
  return run({"check", studio.name});
}

std::size_t start_of_line(const std::string& bytes, int line) {
  std::size_t at = 0;
  while (line-- > 1) at = bytes.find('\n', at) + 1;
  return at;
}

}

TEST_CASE("a whole file has nothing to report") {
  const Ran ran = check(whole());
  CHECK(ran.status == 0);
  CHECK(has(ran.out, "1 file, 4 lines: 0 damaged places, 0 notes"));
}

TEST_CASE("a file cut in its last line is ordinary: a note") {
  std::string bytes = whole();
  bytes.resize(bytes.size() - 5);
  const Ran ran = check(bytes);
  CHECK(ran.status == 0);
  CHECK(has(ran.out,
            "note: a.jsonl: line 4, byte " + std::to_string(start_of_line(bytes, 4)) + ": "));
}

TEST_CASE("a session cut in its middle, of which another names a later line, is damage") {
  const Studio s;
  session::Began other = began();
  other.session = "19aa20f7";
  const std::string bytes = whole();
  rig::put(
      s.sessions / "b-a83f-19aa20f7.jsonl",
      bytes_of(
          {{"", other}, {"7f3a91c2", session::Withdrawn{{"c41e08d5", 2}}}, {"", session::Left{}}}));
  rig::put(s.sessions / "a-a83f-c41e08d5.jsonl", bytes);
  CHECK(run({"check", s.name}).status == 0);
  for (const bool torn : {false, true}) {
    rig::put(s.sessions / "a-a83f-c41e08d5.jsonl",
             bytes.substr(0, start_of_line(bytes, 3) + (torn ? 9 : 0)));
    const Ran ran = run({"check", s.name});
    CHECK(ran.status == 1);
    CHECK(
        has(ran.out, "session c41e08d5 ends at line 1, and another names its line 2: it was cut"));
    CHECK(has(ran.out, "the last entry was not finished") == torn);
  }
}

TEST_CASE("a flipped bit is damage, named by file, line and byte") {
  std::string bytes = whole();
  const std::size_t third = start_of_line(bytes, 3);
  bytes[third + 8] ^= 1;
  const Ran ran = check(bytes);
  CHECK(ran.status == 1);
  CHECK(ran.out.rfind("a.jsonl: line 3, byte " + std::to_string(third) + ": ", 0) == 0);
  CHECK(has(ran.out, "session c41e08d5: line 2 is in no file"));
  CHECK(has(ran.out, "2 damaged places"));
}

TEST_CASE("a line that is missing, doubled or swapped is damage") {
  const std::string bytes = whole();
  const std::size_t two = start_of_line(bytes, 2), three = start_of_line(bytes, 3),
                    four = start_of_line(bytes, 4);
  const std::string second = bytes.substr(two, three - two),
                    third = bytes.substr(three, four - three);
  CHECK(check(bytes.substr(0, two) + bytes.substr(three)).status == 1);
  CHECK(check(bytes.substr(0, three) + second + bytes.substr(three)).status == 1);
  CHECK(check(bytes.substr(0, two) + third + second + bytes.substr(four)).status == 1);
}

TEST_CASE("a file of a newer format is not summed, and that is said") {
  session::Began newer = began();
  newer.version = 7;
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl",
           bytes_of({{"", newer}, {"7f3a91c2", session::Opened{"Stone"}}, {"", session::Left{}}}));
  const Ran ran = run({"check", studio.name});
  CHECK(ran.status == 1);
  CHECK(has(ran.out, "newer"));
  const auto shown = studio.read({"show", "last"});
  CHECK(shown.status == 0);
  CHECK(has(shown.out, "not summed"));
}

TEST_CASE("a file that is no session at all is damage, whatever it holds") {
  CHECK(check("PK\x03\x04 something else\n").status == 1);
  CHECK(check(std::string(100000, '[') + "\n").status == 1);
  CHECK(check(std::string(3, '\0') + "\n").status == 1);
}

TEST_CASE("one thing is one thing") {
  const Ran ran = check(bytes_of({{"", began()}}));
  CHECK(has(ran.out, "1 file, 1 line: 0 damaged places, 1 note"));
}

TEST_CASE("check and show count the same damaged places") {
  std::string bytes = whole();
  bytes[start_of_line(bytes, 3) + 8] ^= 1; // the line, and the number that is then missing
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl", bytes);
  std::filesystem::create_directory(studio.sessions / "b.jsonl"); // and what is no file
  CHECK(has(run({"check", studio.name}).out, ": 3 damaged places, "));
  CHECK(has(studio.read({"show", "last"}).err, "Not all could be read: 3 damaged places."));
}

TEST_CASE("check says of each entry that is left out which, why, and what to do") {
  using namespace session;
  Card bulb{"bulb", "green bulb", DropperCard{{0.05, 0}, CardKind::water}};
  const std::string batch = "7f3a91c2";
  const Ran ran = check(bytes_of({{"", began()},
                                  {"", LaidOut{bulb}},
                                  {batch, Opened{"Stone"}},
                                  {batch, Added{"bulb", Unit::g, 3, ""}},
                                  {batch, Weighed{Place::jar, 10, 25}},
                                  {batch, AsBefore{{"c41e08d5", 77}}},
                                  {batch, PanWeighed{4, 5}},
                                  {batch, Poured{1, 2, "", {}}},
                                  {batch, BottleWeighed{"gum", 80}},
                                  {batch, BottleWeighed{"gum", 80}},
                                  {"", Left{}}}));
  CHECK(ran.status == 0);
  const auto of = [&](int n) { return "Stone (7f3a91c2): Line c41e08d5 " + std::to_string(n); };
  CHECK(has(ran.out, of(3) + " is not in the sums. “green bulb” is a tool"));
  CHECK(has(ran.out, of(4) + " was left out. It weighs 15.0 g less than what it lies in"));
  CHECK(has(ran.out, of(5) + " was left out. There is no line c41e08d5 77 before it"));
  CHECK(has(ran.out, of(6) + " was left out. Pan 4 was never poured"));
  CHECK(has(ran.out, of(7) + ": nothing was poured as told. It names no pan"));
  CHECK(has(ran.out, of(9) + ": this weighing of the bottle of “gum” tells nothing. No drop was"));
  CHECK(has(ran.out, "1 file, 11 lines: 0 damaged places, 0 notes"));
}

TEST_CASE("an empty studio is in order") {
  const rig::Folder folder;
  CHECK(run({"check", folder.path.string()}).status == 0);
}

}
