#include "paint/cracks.hpp"

#include <doctest/doctest.h>

namespace cracks_test {

using namespace paint;

namespace {

std::vector<CrackCause> order(const Cracked& known) {
  std::vector<CrackCause> out;
  for (const LikelyCause& c : crack_causes(known)) out.push_back(c.cause);
  return out;
}

int seen(const Cracked& known) {
  int count = 0;
  for (const LikelyCause& c : crack_causes(known)) count += c.seen;
  return count;
}

}

TEST_CASE("the causes of cracks stand in the order of practice while nothing is known") {
  CHECK(order({}) == std::vector{CrackCause::deep_layer, CrackCause::little_gum,
                                 CrackCause::too_hard, CrackCause::dried_fast});
  CHECK(seen({}) == 0);
  CHECK(seen({5.9, GumState::enough, 0.3, 0.2, 20}) == 0);
}

TEST_CASE("what points to a cause puts it first, and says so") {
  CHECK(crack_causes({6.5, {}, 0, 0, 0}).front() == LikelyCause{CrackCause::deep_layer, true});
  CHECK(order({0, GumState::too_little, 0, 0, 0}).front() == CrackCause::little_gum);
  CHECK(order({0, {}, 0.15, 0.2, 0}).front() == CrackCause::too_hard);
  CHECK(order({0, {}, 0, 0, 5}).front() == CrackCause::dried_fast);
  // Two of them, in the order of practice.
  CHECK(order({7, {}, 0.15, 0.2, 0}) == std::vector{CrackCause::deep_layer, CrackCause::too_hard,
                                                    CrackCause::little_gum,
                                                    CrackCause::dried_fast});
}

TEST_CASE("too much gum is named where it is seen, and too little is not named beside it") {
  CHECK(order({0, GumState::too_much, 0, 0, 0}) ==
        std::vector{CrackCause::much_gum, CrackCause::deep_layer, CrackCause::too_hard,
                    CrackCause::dried_fast});
}

}
