// Replays of what glass and hands do (tests/cases/glass/*/stream.txt) on a slab, and what of it
// counted (expect.txt).
#include "bench/pads_slab.hpp"
#include "bench/pads_top_bar.hpp"
#include "bench/touch.hpp"
#include "bench/view.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace {

namespace fs = std::filesystem;
using namespace bench;

std::vector<std::string> lines_of(const fs::path& path) {
  std::ifstream file(path);
  REQUIRE_MESSAGE(file.good(), path.string());
  std::vector<std::string> lines;
  for (std::string line; std::getline(file, line);)
    if (!line.empty() && line[0] != '#') lines.push_back(line);
  return lines;
}

constexpr std::int64_t start_ms = 100'000;

Now at(std::int64_t ms) {
  static std::uint32_t ids = 1;
  return {1795617120000 + ms, start_ms + ms, 0, [] { return ++ids; }};
}

// 12 g of cobalt blue on the slab, tapped before the stream's own time.
Bench slab() {
  Bench b = start("c41e08d5", "a83f", {}, at(-60'000));
  step(b, Loaded{}, at(-60'000));
  for (const char* pad : {"pigment pb28", "weigh", "digit 1", "digit 2", "enter", "begin"})
    step(b, Tap{*pad_named(pad)}, at(-50'000));
  return b;
}

// A pad's middle; "inside" it near a corner; where one "was" before the glass was locked; a "gap".
Point place(const Bench& b, const Layout& before, const std::string& where) {
  if (where == "gap") {
    const Rect box = pad_of(before, *pad_named("add gum_12"))->box;
    return {box.right() + gap_mm / 2, box.centre().y};
  }
  const bool inside = where.rfind("inside ", 0) == 0, was = where.rfind("was ", 0) == 0;
  const auto pad = pad_named(where.substr(inside ? 7 : was ? 4 : 0));
  REQUIRE_MESSAGE(pad.has_value(), where);
  const Layout now = layout(b);
  const Pad* found = pad_of(was && !pad_of(now, *pad) ? before : now, *pad);
  if (!found && pad->kind == TopBarPad::unlock) // it went when it was held long enough
    return now.main.centre();
  REQUIRE_MESSAGE(found != nullptr, where);
  return inside ? Point{found->box.x + 1, found->box.bottom() - 1} : found->box.centre();
}

std::string word_of(NotCounted why) {
  constexpr const char* words[] = {"bounced", "slid", "rested", "other_finger"};
  return words[static_cast<std::size_t>(why)];
}

// Through the recogniser alone for what was tapped, and through step for what it does.
std::vector<std::string> replayed(const fs::path& stream) {
  Bench b = slab();
  const Layout before = layout(b);
  std::vector<std::string> out;
  for (const std::string& line : lines_of(stream)) {
    std::istringstream in(line);
    std::int64_t ms = 0;
    std::uint64_t poll = 0;
    int finger = 0;
    std::string what, where;
    in >> ms >> poll >> finger >> what;
    REQUIRE_MESSAGE(!in.fail(), line);
    std::getline(in >> std::ws, where);
    if (what == "tick") {
      step(b, Tick{}, at(ms));
      continue;
    }
    constexpr const char* phases[] = {"down", "move", "up", "lost"};
    const auto phase = std::find(std::begin(phases), std::end(phases), what) - std::begin(phases);
    REQUIRE_MESSAGE(phase < 4, line);
    const Pointer pointer{static_cast<Pointer::Phase>(phase), place(b, before, where),
                          start_ms + ms, poll, finger};
    Touch touch = b.touch;
    const Recognised r = recognise(touch, layout(b), pointer);
    if (r.tap) out.push_back("tap " + name_of(*r.tap));
    if (r.not_counted) out.push_back(word_of(*r.not_counted));
    const Effects effects = step(b, pointer, at(ms));
    const bool adds = r.tap && r.tap->kind == SlabPad::add;
    CHECK((std::any_of(effects.append.begin(), effects.append.end(), [](const auto& l) {
            return std::holds_alternative<session::Added>(l.event);
          })) == adds);
    if (r.not_counted) CHECK(b.notice.not_counted == r.not_counted); // what was not counted is said
  }
  return out;
}

}

TEST_CASE("what glass and hands do, and what of it counts") {
  std::size_t cases = 0;
  for (const auto& entry : fs::directory_iterator(fs::path(SLABSIDE_ROOT) / "tests/cases/glass")) {
    CAPTURE(entry.path().filename().string());
    const auto now = replayed(entry.path() / "stream.txt");
    const auto expected = lines_of(entry.path() / "expect.txt");
    std::string all;
    for (const std::string& line : now) all += line + "; ";
    CAPTURE(all);
    CHECK(now == expected);
    ++cases;
  }
  CHECK(cases >= 18);
}
