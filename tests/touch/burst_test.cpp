// Fifteen taps a second over changing pads: none is lost, and the pads never wait for the disk.
#include "bench/pads_choice.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "touch/hand.hpp"

#include <csignal>
#include <random>

namespace burst_test {

namespace {

using namespace touch;
using namespace std::chrono_literals;

constexpr int taps = 300;
constexpr auto every = 1000ms / 15;

void begin(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("10");
  hand.tap("begin");
}

// Pads that stay within the making of the batch. The number pad has its digits elsewhere, and a
// tap on the pad tapped last would be taken for a bounce.
std::vector<std::string> pads_for_a_burst(const Hand& hand, const std::string& last) {
  using bench::ChoicePad;
  using bench::SharedPad;
  using bench::SlabPad;
  std::vector<std::string> names;
  for (const bench::Pad& pad : bench::layout(hand.mirror).pads) {
    const std::string name = bench::name_of(pad.id);
    const bool choice = pad.id.kind == ChoicePad::amount || pad.id.kind == ChoicePad::specks ||
                        pad.id.kind == ChoicePad::trouble_is ||
                        pad.id.kind == ChoicePad::lost_count;
    const bool hands = pad.id.kind == SlabPad::add || pad.id.kind == SlabPad::felt ||
                       pad.id.kind == SlabPad::another || pad.id.kind == SlabPad::bottle ||
                       pad.id.kind == SlabPad::dot || pad.id.kind == SlabPad::trouble ||
                       pad.id.kind == SharedPad::undo || pad.id.kind == SlabPad::pass;
    if ((choice || hands) && name != last && name != "add pb29" && name != "amount weigh")
      names.push_back(name);
  }
  return names;
}

// The same taps every time. Returns once the program has seen them all.
void burst(Hand& hand) {
  std::mt19937 random(15);
  std::string last;
  auto next = std::chrono::steady_clock::now();
  for (int i = 0; i < taps; ++i) {
    const std::vector<std::string> pads = pads_for_a_burst(hand, last);
    last = pads[random() % pads.size()];
    std::this_thread::sleep_until(next);
    hand.flick(last, std::chrono::milliseconds(random() % 30));
    next += every;
  }
  hand.drawn();
}

std::vector<Pixels> looks(Hand& hand, const std::vector<std::string>& pads) {
  std::vector<Pixels> out;
  for (const std::string& pad : pads) out.push_back(hand.look(hand.pad_area(pad)));
  return out;
}

const std::vector<std::string> materials{"add gum_12",   "add water",   "add honey_11",
                                         "add glycerin", "add ox_gall", "add pb29"};

struct After { // what stands on the glass after the burst
  std::vector<Pixels> materials;
  Pixels undo;
};

After burst_that_is_saved(const std::vector<std::string>& options) {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, options);
  begin(hand);
  burst(hand);
  hand.saved();
  hand.drawn();
  const After after{looks(hand, materials), hand.look(hand.pad_area("undo"))};
  CHECK(hand.close().number == 0);
  CHECK(hand.lines.size() > 100);
  check_same(only_session(home), hand.lines);
  return after;
}

}

TEST_CASE("a burst on a disk that answers, and on one that never does") {
  const After saved = burst_that_is_saved({});

  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home, lying, {"--fault", "silent"});
  hand.saves = false;
  begin(hand);
  burst(hand);
  // The sums stand there just the same; only the mark of the save is missing.
  CHECK(looks(hand, materials) == saved.materials);
  CHECK(hand.look(hand.pad_area("undo")) != saved.undo);
  CHECK_FALSE(hand.reported());
  CHECK(hand.close().number == 1);
  const std::string count = std::to_string(hand.lines.size());
  CHECK(hand.program.out().rfind("ready\nunsaved " + count + "\nclosed\n", 0) == 0);
  CHECK_MESSAGE(hand.program.err().find(count) != std::string::npos, hand.program.err());
  CHECK(home.files().empty());
}

TEST_CASE("a burst on a slow disk") { burst_that_is_saved({"--fault", "slow:150"}); }

// Everything comes in one look at the queue then, with one time for all: no finger is to be blamed.
TEST_CASE("the program stands still for a while, and no tap is lost") {
  Glass glass(1280, 800);
  const Home home;
  Hand hand(glass, home);
  begin(hand);
  hand.drawn();
  hand.program.kill(SIGSTOP);
  for (int i = 0; i < taps; ++i) hand.flick(i % 7 < 4 ? "add gum_12" : "add water", 0ms);
  hand.program.kill(SIGCONT);
  CHECK(hand.close().number == 0);
  check_same(only_session(home), hand.lines);
}

}
