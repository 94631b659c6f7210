// Numbers that are typed at the slab.
#include "bench/corrections.hpp"
#include "hands.hpp"

namespace number_test {

using namespace hands;

namespace {

bool is_refused(const Hands& h) { return h.b.number && h.b.number->error; }

}

TEST_CASE("an amount that no line can say is refused, whatever pad it was typed for") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  const std::size_t before = h.lines.size();

  SUBCASE("a bottle") {
    h.tap("more");
    h.tap("bottle");
    h.tap("bottle_of gum_12");
    h.type("842355");
  }
  SUBCASE("drops that are corrected") {
    h.tap("more");
    h.tap("lines");
    h.tap("line " + arg_of(correctable(h.b).back()->ref));
    h.tap("other_amount");
    h.type("10001");
  }
  SUBCASE("grams of pigment") {
    h.tap("add pb28");
    h.type("5001");
  }
  CHECK(is_refused(h));
  CHECK(h.lines.size() == before);
}

TEST_CASE(
    "a liquid's pad tapped over the digits closes them: a key goes to no pad that is not there") {
  Hands h;
  h.begin();
  h.tap("add pb28");
  REQUIRE(h.b.number);
  h.tap("add gum_12");
  CHECK_FALSE(h.b.number);
  CHECK(h.count<session::Added>() == 2);
}

}
