#include "paint/tools_loss.hpp"
#include "random.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace tools_loss_test {

using namespace paint;

TEST_CASE("before any weighing about 7 % stays, by what makers say 5 to 10") {
  const Amount usual = foretold({});
  CHECK(usual.value == doctest::Approx(0.075));
  CHECK(usual.value - uncertainty(usual) < 0.05);
  CHECK(usual.value + uncertainty(usual) > 0.10);
}

TEST_CASE("weighings move what usually stays towards what they tell, and narrow it") {
  holds("towards", [] {
    const ToolsLoss before{between(0, 0.2), between(0.001, 0.05), 3};
    const double observed = between(0, 0.3);
    const ToolsLoss after = updated(before, observed, between(1e-4, 0.1));
    RC_ASSERT(after.share >= std::min(before.share, observed) - 1e-12);
    RC_ASSERT(after.share <= std::max(before.share, observed) + 1e-12);
    RC_ASSERT(after.u < before.u);
    RC_ASSERT(after.observations == 4);
  });
  const ToolsLoss same = updated(ToolsLoss{}, ToolsLoss{}.share, 0.01);
  CHECK(same.share == doctest::Approx(ToolsLoss{}.share));
}

TEST_CASE("less than nothing cannot stay; what says nothing teaches nothing") {
  CHECK(updated(ToolsLoss{0.01, 0.03, 0}, -0.2, 0.01).share == 0);
  const double none = std::numeric_limits<double>::quiet_NaN();
  CHECK(updated(ToolsLoss{}, none, 0.01) == ToolsLoss{});
  CHECK(updated(ToolsLoss{}, 1.5, 0.01) == ToolsLoss{});
  CHECK(updated(ToolsLoss{}, 0.05, 0) == ToolsLoss{});
  CHECK(updated(ToolsLoss{}, 0.05, none) == ToolsLoss{});
}

// A workshop that scrapes well: weighings bring the program to its 3 %.
TEST_CASE("many weighings find the workshop's own share") {
  ToolsLoss loss;
  for (int i = 0; i < 40; ++i) loss = updated(loss, i % 2 ? 0.02 : 0.04, 0.01);
  CHECK(loss.share == doctest::Approx(0.03).epsilon(0.05));
  CHECK(loss.u < 0.005);
}

}
