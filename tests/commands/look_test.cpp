// What other devices have written of a batch is wanted when it is opened, and not a minute later.
#include "commands/folders.hpp"
#include "commands/tool.hpp"
#include "studio/bell.hpp"

namespace look_test {

using namespace tool;

namespace {

struct Open : Studio {
  studio::Bell bell;
  std::unique_ptr<commands::EffectRunner> runner;
  std::uint32_t ids = 0x20000000;

  Open() {
    REQUIRE(play(small_batch).status == 0);
    commands::Setup setup;
    setup.studio = path;
    setup.session = "0a0a0a0a";
    setup.device = "0b0b";
    setup.wake = [rings = bell] { rings.ring(); };
    runner = std::make_unique<commands::EffectRunner>(setup, now());
    REQUIRE(runner->settle(now(), std::chrono::minutes(5)));
  }
  bench::Now now() { // the clock stands
    return {1795617120000, 5000000, 60, [this] { return ++ids; }};
  }
  void tap(const std::string& pad) { runner->feed(bench::Tap{*bench::pad_named(pad)}, now()); }
  bool knows(const std::string& text) const {
    for (const session::Log& log : runner->bench().logs)
      for (const session::Line& line : log.lines)
        if (const auto* noted = std::get_if<session::Noted>(&line.event);
            noted && noted->text == text)
          return true;
    return false;
  }
};

}

TEST_CASE("a batch that is opened is looked for at once") {
  Open s;
  const std::string batch = s.runner->bench().batches.back();
  rig::put(s.sessions / "2026-11-25T143200Z-a83f-c41e08d5.jsonl",
           bytes_of({{"", began()}, {batch, session::Noted{"by the other tablet"}}}));
  for (const std::string& pad : {std::string("book"), "batch " + batch}) s.tap(pad);
  s.runner->poll(s.now());
  CHECK_FALSE(s.knows("by the other tablet"));
  s.tap("take_up");
  REQUIRE(s.runner->bench().batch == batch);
  const auto until = std::chrono::steady_clock::now() + std::chrono::minutes(1);
  while (!s.knows("by the other tablet")) {
    const long rings = s.bell.rings();
    if (!s.runner->poll(s.now())) REQUIRE(s.bell.wait_past(rings, until));
  }
}

}
