// A tap chooses a pan; pouring and weighing have pads of their own.
#include "bench/pans.hpp"
#include "hands.hpp"

namespace pan_choice_test {

using namespace bench;
using hands::Hands;

TEST_CASE("a firm pan is chosen by a tap, and weighed, before it is poured") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("9");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("gather");
  h.tap("pans");
  h.tap("new_pan");
  h.tap("new_pan");
  h.wait(3 * 24 * 3600);
  const auto lines = h.lines.size();
  h.tap("pan 1");
  h.tap("pan 1"); // once more
  CHECK(h.lines.size() == lines);
  CHECK(h.b.pans.pan == 1);
  h.tap("weigh_pan");
  h.type("4.1");
  CHECK(std::get<session::PanWeighed>(h.lines.back().event).pan == 1);
  h.tap("pour_pan");
  CHECK(std::get<session::Poured>(h.lines.back().event) ==
        session::Poured{1, 1, "half_pan", std::nullopt});
  CHECK(h.b.pans.folded->pans[0].layers.size() == 2);
  CHECK(h.b.pans.folded->pans[1].layers.size() == 1);
}

}
