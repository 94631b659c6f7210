// A pigment of the plan that nobody weighed is asked about before the paint is poured or closed.
#include "bench/choices.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

namespace left_out_test {

using namespace bench;
using namespace hands;

namespace {

// 12 g of two blues are planned, as pans would have it: nothing is weighed yet.
void begin_blend(Hands& h) {
  h.choose("pb28");
  h.choose("pb29");
  for (const char* pad : {"want", "weigh"}) h.tap(pad);
  h.type("6");
  h.tap("begin");
}

void put_in(Hands& h, const std::string& card, const std::string& g) {
  if (h.shows("add " + card)) {
    for (const char* pad : {"another", "amount weigh"}) h.tap(pad);
    h.tap("add " + card);
  } else {
    h.tap("pigments");
    h.tap("add " + card);
  }
  h.type(g);
  if (h.b.number) h.tap("enter");
}

void into_jar(Hands& h) {
  put_in(h, "gum_12", "6");
  for (const char* pad : {"pass", "pass", "pass", "gather"}) h.tap(pad);
}

bool asked(Hands& h) {
  return h.b.notice.error &&
         h.b.notice.error->what == words::Sentence(words::BenchSay::pigment_left_out);
}

}

TEST_CASE("before the first pour one sentence names the pigment that was never weighed") {
  for (const std::string pour : {"new_pan", "pour_all"}) {
    CAPTURE(pour);
    Hands h;
    begin_blend(h);
    put_in(h, "pb28", "6");
    into_jar(h);
    h.tap("pans");
    h.tap(pour);
    CHECK(asked(h));
    CHECK(h.b.notice.error->args == words::Args{shelf_card(h.b, "pb29")->name});
    CHECK(h.count<session::Poured>() == 0);
    h.tap(pour); // it is meant so
    CHECK_FALSE(asked(h));
    CHECK(h.count<session::Poured>() > 0);
    const int poured = h.count<session::Poured>();
    h.tap("new_pan");
    CHECK(h.count<session::Poured>() > poured);
    h.tap("slab");
    if (h.shows("close")) h.tap("close");
    CHECK_FALSE(asked(h));
  }
}

TEST_CASE("a batch is not closed before that was asked") {
  Hands h;
  begin_blend(h);
  put_in(h, "pb28", "6");
  into_jar(h);
  h.tap("close");
  CHECK(asked(h));
  CHECK(h.count<session::Closed>() == 0);
  h.tap("close");
  CHECK(h.count<session::Closed>() == 1);
}

TEST_CASE("nothing is asked where all of the blend was weighed") {
  Hands h;
  begin_blend(h);
  put_in(h, "pb28", "6");
  put_in(h, "pb29", "1"); // less than planned is some
  into_jar(h);
  h.tap("pans");
  h.tap("new_pan");
  CHECK_FALSE(asked(h));
  CHECK(h.count<session::Poured>() == 1);
}

}
