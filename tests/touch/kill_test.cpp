// The real window, killed at random moments while fingers tap. SLABSIDE_KILLS=N says how often (3
// unless said), SLABSIDE_SEED=N where the moments come from (1 unless said).
#include "touch/hand.hpp"

#include <csignal>
#include <cstdlib>
#include <random>

namespace kill_test {

namespace {

using namespace touch;
using std::chrono::milliseconds;

unsigned long number(const char* variable, unsigned long otherwise) {
  const char* given = std::getenv(variable);
  return given ? std::strtoul(given, nullptr, 10) : otherwise;
}

constexpr int most_ms = 2500; // what all taps below take, more or less

// A batch is begun and worked at, as fast as it goes, until the program is dead.
void tap_until_dead(Hand& hand) {
  for (const char* pad : {"pigment pb29", "weigh", "digit 1", "digit 2", "enter", "begin"})
    hand.flick(pad, milliseconds(20));
  const char* const pads[] = {"add gum_12", "add water", "felt too_sticky", "add honey_11", "undo"};
  for (std::size_t i = 0; hand.program.running(); ++i)
    hand.flick(pads[i % std::size(pads)], milliseconds(20));
}

// Returns how many lines were reported as saved.
std::size_t kill_once(Glass& glass, int after_ms) {
  const Home home;
  Hand hand(glass, home);
  const pid_t pid = hand.program.pid();
  std::thread killer([&] {
    std::this_thread::sleep_for(milliseconds(after_ms));
    ::kill(pid, SIGKILL);
  });
  tap_until_dead(hand);
  killer.join();
  CHECK(hand.program.wait().by_signal);

  const std::size_t saved = hand.reported() ? *hand.reported() + 1 : 0;
  for (const session::File& file : home.files())
    for (const session::Damage& damage : file.damage) CHECK(damage.ordinary);
  const auto logs = session::join_parts(home.files());
  REQUIRE(logs.size() <= 1);
  const std::vector<session::Line> left =
      logs.empty() ? std::vector<session::Line>{} : logs[0].lines;
  CHECK(left.size() >= saved);
  REQUIRE(left.size() <= hand.lines.size());
  check_same(left,
             {hand.lines.begin(), hand.lines.begin() + static_cast<std::ptrdiff_t>(left.size())});
  return saved;
}

}

TEST_CASE("killed at any moment: what was reported as saved is there, and nothing is invented") {
  std::mt19937 random(static_cast<std::uint32_t>(number("SLABSIDE_SEED", 1)));
  Glass glass(1280, 800);
  const unsigned long kills = number("SLABSIDE_KILLS", 3);
  std::size_t saved = 0;
  for (unsigned long i = 0; i < kills; ++i) {
    const int after_ms = static_cast<int>(random() % most_ms);
    CAPTURE(i);
    CAPTURE(after_ms);
    saved += kill_once(glass, after_ms);
  }
  MESSAGE(kills, " kills, ", saved, " lines reported as saved, none lost");
  CHECK(saved > 0);
}

}
