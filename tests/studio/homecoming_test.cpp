// What lay in the fallback comes home: once, whole, under its own name, and never over anything.
#include "studio/homecoming.hpp"
#include "studio/sentences.hpp"
#include "studio/sitting.hpp"
#include "words/studio_says.hpp"

namespace homecoming_test {

using namespace sitting;

namespace {

const std::string part = "2026-11-25T143200Z-a83f-c41e08d5.1.jsonl";

struct Homes {
  rig::Memory memory;
  rig::Opened home{memory};
  Homecoming coming{*home.disk};

  // Both folders were read, in the fallback first.
  void read(const std::vector<disk::FileBytes>& at_home,
            const std::vector<disk::FileBytes>& fallback,
            const std::vector<disk::Failure>& failures = {}) {
    CHECK_FALSE(coming.take(Location::fallback, {1, {}, fallback, 0}));
    CHECK_FALSE(coming.over());
    CHECK_FALSE(coming.take(Location::home, {1, failures, at_home, 0}));
  }
  void wait() {
    while (!coming.over())
      for (const disk::Answer& answer : home.await(1)) CHECK(coming.take(Location::home, answer));
  }
  std::map<std::string, std::string> kept() { return memory.after_power_cut(); }
};

const std::map<std::string, std::string> nothing;

}

TEST_CASE("a file that is only adrift is put home, forced, and said once") {
  Homes homes;
  homes.read({}, {{part, "line\nline\n"}});
  homes.wait();
  CHECK(homes.kept() == std::map<std::string, std::string>{{"sessions/" + part, "line\nline\n"}});
  const auto said = homes.coming.said();
  REQUIRE(said.size() == 1);
  CHECK(said[0] == words::Error{words::StudioSay::came_home, {"1"}});
  CHECK(homes.coming.said().empty());
}

TEST_CASE("what is home already, in full, is left alone") {
  for (const char* at_home : {"line\n", "line\nand more\n"}) {
    Homes homes;
    homes.read({{part, at_home}}, {{part, "line\n"}});
    CHECK(homes.coming.over());
    CHECK(homes.coming.said().empty());
    CHECK(homes.kept() == nothing);
  }
}

TEST_CASE("where home says less, or something else, the copy stands beside it, once") {
  for (const char* at_home : {"", "li", "lime\n", "line\n"}) {
    Homes homes;
    homes.read({{part, at_home}}, {{part, "line\nmore\n"}});
    homes.wait();
    const std::string copy = "copy-10-" + part;
    CHECK(homes.kept() == std::map<std::string, std::string>{{"sessions/" + copy, "line\nmore\n"}});
    Homes again;
    again.read({{copy, "line\nmore\n"}, {part, at_home}}, {{part, "line\nmore\n"}});
    CHECK(again.coming.over());
    CHECK(again.kept() == nothing);
    // A reader still knows whose it is, even with its first line gone.
    const session::File file = session::read_file(copy, "x\n");
    CHECK(file.session == "c41e08d5");
    CHECK(file.part == 1);
  }
}

TEST_CASE("a file without one whole line is nothing to bring home") {
  Homes homes;
  homes.read({}, {{part, ""}, {"2026-11-25T143200Z-a83f-c41e08d5.2.jsonl", "torn"}});
  CHECK(homes.coming.over());
  CHECK(homes.kept() == nothing);
}

TEST_CASE("a home that cannot be listed is left in peace") {
  Homes homes;
  homes.read({}, {{part, "line\n"}}, {{disk::Operation::list, "/root/sessions", EIO, {}}});
  CHECK(homes.coming.over());
  CHECK(homes.kept() == nothing);
}

TEST_CASE("a home with one file that cannot be read is still home") {
  Homes homes;
  homes.read({}, {{part, "line\n"}}, {{disk::Operation::read, "/root/sessions/x", EIO, {}}});
  homes.wait();
  CHECK(homes.kept().size() == 1);
}

TEST_CASE("folders that answer in pieces are waited for to the end") {
  Homes homes;
  CHECK_FALSE(homes.coming.take(Location::fallback, {1, {}, {{part, "line\n"}}, 0}));
  CHECK_FALSE(homes.coming.take(Location::home, {1, {}, {{"a.jsonl", "x\n"}}, 1}));
  CHECK_FALSE(homes.coming.over());
  CHECK_FALSE(homes.coming.take(Location::home, {1, {}, {{part, "line\n"}}, 0}));
  CHECK(homes.coming.over());
  CHECK(homes.kept() == nothing);
}

TEST_CASE("a copy that fails is said, with why; the next start tries again") {
  rig::Memory memory;
  rig::Opened home("/root", disk::faulty_files(memory.files(), faults({"fail-force:1:EIO"})[0]));
  Homecoming coming(*home.disk);
  coming.take(Location::home, {1, {}, {}, 0});
  coming.take(Location::fallback, {1, {}, {{part, "line\n"}}, 0});
  for (const disk::Answer& answer : home.await(1)) CHECK(coming.take(Location::home, answer));
  CHECK(coming.over());
  const auto said = coming.said();
  REQUIRE(said.size() == 1);
  CHECK(said[0].args.at(1) == words::Inner(studio::error_of_system(EIO)));
  CHECK(memory.after_power_cut() == nothing);
}

}
