// Which version this is, as somebody asks who installs or reports.
#include "commands/tool.hpp"

namespace version_test {

using namespace tool;

TEST_CASE("--version says the program's version, as the build has it, and the session format's") {
  const std::string build = rig::bytes_of(SLABSIDE_ROOT "/CMakeLists.txt");
  const std::string before = "project(slabside VERSION ";
  const std::size_t at = build.find(before);
  REQUIRE(at != std::string::npos);
  const std::size_t from = at + before.size();
  const std::string version = build.substr(from, build.find(' ', from) - from);
  const Ran ran = run({"--version"});
  CHECK(ran.status == 0);
  CHECK(ran.err == "");
  CHECK(ran.out == "Slabside " + version + "\nsession format " +
                       std::to_string(session::format_version) + "\n");
  CHECK(run({"--version", "now"}).status == 2);
}

}
