#include "paint/gum.hpp"

#include "paint/film.hpp"
#include "random.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace paint;
using words::Say;

TEST_CASE("enough gum is told by the class, silent in between and without pigment") {
  CHECK(gum_state(0.3, 1, PigmentClass::mineral) == GumState::too_little);
  CHECK_FALSE(gum_state(0.4, 1, PigmentClass::mineral));
  CHECK(gum_state(0.8, 1, PigmentClass::mineral) == GumState::enough);
  CHECK_FALSE(gum_state(1.2, 1, PigmentClass::mineral));
  CHECK(gum_state(1.5, 1, PigmentClass::mineral) == GumState::too_much);
  CHECK(gum_state(0.4, 1, PigmentClass::organic) == GumState::too_little);
  CHECK(gum_state(1.5, 1, PigmentClass::carbon) == GumState::enough);
  CHECK_FALSE(gum_state(1, 0, PigmentClass::mineral));
  CHECK_FALSE(gum_state(std::nan(""), 1, PigmentClass::mineral));
}

TEST_CASE("more gum never asks for more gum") {
  const auto rank = [](std::optional<GumState> s, double share) {
    if (s) return static_cast<double>(*s);
    return share < 1 ? 0.5 : 1.5;
  };
  holds("rises", [&] {
    const double less = between(0, 3), more = less + between(0, 1);
    for (PigmentClass c : {PigmentClass::mineral, PigmentClass::organic, PigmentClass::carbon})
      RC_ASSERT(rank(gum_state(less, 1, c), less) <= rank(gum_state(more, 1, c), more) ||
                gum_state(less, 1, c) == gum_state(more, 1, c));
  });
}

TEST_CASE("the stop mark is where the tack index says caution") {
  holds("at the mark", [] {
    const double share = between(0, 1);
    const Room air = *room(between(10, 35), between(5, 70));
    const double stop = *humectant_stop(share, air);
    const Wet there{.gum_g = 3, .glycerin_g = 3 * stop * share, .honey_g = 3 * stop * (1 - share)};
    RC_ASSERT(std::abs(*tack_index(there, air) - caution_mark({})) < 1e-9 || stop == 0);
    // The damper the room, the less it bears.
    const Room damper = *room(air.celsius, air.humidity * 100 + 5);
    RC_ASSERT(*humectant_stop(share, damper) <= stop);
  });
  // A paper's films on a gum like this one: 20 g of glycerin to 100 g satisfactory, 40 too tacky;
  // at 50 to 57 %, which is assumed.
  CHECK(*humectant_stop(1, *room(21, 57)) > 0.20);
  CHECK(*humectant_stop(1, *room(21, 57)) < 0.40);
  CHECK(humectant_stop(1.1, {}).error().what == Say::not_a_share);
  CHECK(humectant_stop(std::nan(""), {}).error().what == Say::not_a_number);
  CHECK(humectant_stop(0.5, {}, {.ln_u = 0}).error().what == Say::tack_mark_unusable);
}
