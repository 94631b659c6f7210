// Plays a script as the program does and says, as JSON, what a hand has to do in a browser to do
// the same: what is touched when and where, and which random numbers are drawn. Usage: browser_hand
// SCRIPT STUDIO PX_PER_MM
#include "bench/layout.hpp"
#include "commands/play.hpp"

#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <iterator>
#include <optional>
#include <random>
#include <sstream>

namespace {

using Json = nlohmann::json;

struct Hand {
  double px_per_mm;
  Json deeds = Json::array();

  std::optional<bench::Now> ticked = {}; // by the input before, which may have written a line
  std::size_t lines = 0;                 // until then

  Json px(bench::Point at) const { return {at.x * px_per_mm, at.y * px_per_mm}; }

  void add(Json deed, const bench::Now& now) {
    deed["wall_ms"] = now.wall_ms;
    deed["run_ms"] = now.run_ms;
    deed["utc_offset_min"] = now.utc_offset_min;
    deeds.push_back(std::move(deed));
  }

  void see(const bench::Bench& bench, const bench::Input& input, const bench::Now& now) {
    const std::size_t there = bench.logs.empty() ? 0 : bench.logs.front().lines.size();
    if (ticked && there > lines) add({{"do", "look"}}, *ticked);
    ticked.reset();
    lines = there;
    if (std::holds_alternative<bench::Tick>(input)) ticked = now;
    Json deed;
    if (const auto* p = std::get_if<bench::Pointer>(&input)) {
      constexpr const char* phases[] = {"down", "move", "up", "lost"};
      deed = {{"do", phases[p->phase]}, {"at", px(p->at)}};
    } else if (const auto* t = std::get_if<bench::Text>(&input)) {
      const bench::Layout layout = bench::layout(bench);
      deed = {{"do", "write"},
              {"at", px(bench::pad_of(layout, t->field)->box.centre())},
              {"text", t->text}};
    } else if (const auto* k = std::get_if<bench::Key>(&input)) {
      deed = {{"do", k->down ? "press" : "release"}, {"key", k->name}};
    } else if (std::holds_alternative<bench::Leaving>(input)) {
      deed = {{"do", "leave"}};
    } else {
      return;
    }
    add(std::move(deed), now);
  }
};

std::uint32_t seed_in(const std::vector<commands::ScriptLine>& script) {
  for (const commands::ScriptLine& line : script)
    if (const auto* seed = std::get_if<commands::Seed>(&line.action)) return seed->value;
  return 0;
}

int fail(const std::string& why) {
  std::cerr << "browser_hand: " << why << '\n';
  return 2;
}

}

int main(int count, char** words) {
  if (count != 4) return fail("wants a script, a studio and pixels to the millimetre");
  std::ifstream in(words[1]);
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  const auto script = commands::read_script(text);
  if (!script) return fail(words::message(script.error()));
  Hand hand{std::stod(words[3])};
  commands::Playing how;
  how.studio = words[2];
  how.overhears = [&](const auto& bench, const auto& input, const auto& now) {
    hand.see(bench, input, now);
  };
  std::ostringstream said;
  if (const int status = commands::play(*script, how, said, std::cerr)) return status;

  std::mt19937 random(seed_in(*script));
  Json drawn = Json::array();
  for (int i = 0; i < 200; ++i) drawn.push_back(static_cast<std::uint32_t>(random()));
  std::cout << Json{{"deeds", hand.deeds}, {"random", drawn}, {"said", said.str()}} << '\n';
  return 0;
}
