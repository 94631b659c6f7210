// The evenings of the demo workshop, line after line: what the bench keeps folded is what a fold
// from nothing gives.
#include "bench/record.hpp"
#include "commands/play.hpp"
#include "commands/tool.hpp"
#include "session/exactly.hpp"

#include <filesystem>
#include <fstream>

namespace folds_test {

namespace {

namespace fs = std::filesystem;

std::string text_of(const fs::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

// Of the batch on the slab, once for each line that came.
void look(const bench::Bench& bench, std::size_t& lines, session::Folding& going) {
  if (bench.batch.empty() || bench.logs.front().lines.size() == lines) return;
  lines = bench.logs.front().lines.size();
  const session::Logs logs = bench::logs_about(bench, bench.batch);
  going.read(logs, bench.batch, bench.lessons);
  const auto anew = session::fold(logs, bench.batch, std::nullopt, bench.lessons);
  REQUIRE(exactly::same(going.at(std::nullopt), anew));
  bench::Bench other = bench;
  REQUIRE(exactly::same(*bench::fold_of(other, bench.batch), anew));
}

}

TEST_CASE("every evening of the workshop, folded on from line to line") {
  std::vector<fs::path> scripts;
  for (const auto& file : fs::directory_iterator(fs::path(SLABSIDE_ROOT) / "demo/scripts"))
    scripts.push_back(file.path());
  std::sort(scripts.begin(), scripts.end());
  REQUIRE(scripts.size() > 5);
  const fs::path studio = fs::temp_directory_path() / "slabside-folds-test";
  fs::remove_all(studio);
  std::size_t looked_at = 0;
  for (const fs::path& path : scripts) {
    const auto script = commands::read_script(text_of(path));
    REQUIRE(script.has_value());
    commands::Playing how;
    how.studio = studio;
    std::size_t lines = 0;
    session::Folding going;
    how.onlooker = [&](const bench::Bench& bench, const bench::Now&) {
      look(bench, lines, going);
      return true;
    };
    std::ostringstream out, err;
    CHECK_MESSAGE(commands::play(*script, how, out, err) == 0, err.str());
    looked_at += lines;
  }
  fs::remove_all(studio);
  CHECK(looked_at > 200);
}

}
