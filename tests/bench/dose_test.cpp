// How much of a preservative is to go into binder, and what cannot be so of it and of its jar.
#include "bench/making.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

namespace dose_test {

using namespace bench;
using hands::Hands;
using Say = words::BenchSay;

namespace {

BinderView shown(Hands& h) { return std::get<BinderView>(view(h.b, h.now()).screen); }

// 60 g of gum, 180 g in all.
void open_making(Hands& h) {
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12");
  h.tap("make_binder");
}

void say(Hands& h, const std::string& pad, const std::string& number) {
  h.tap(pad);
  h.type(number);
}

Hands on_the_next_day(Hands before) {
  for (session::Line& line : before.b.logs.front().lines) // it is read as another session's
    if (auto* back = std::get_if<session::Withdrawn>(&line.event)) back->line.session = "0ther";
  Hands later;
  later.open_after(before, 86400, Screen::shelf);
  later.tap("kind_of binder");
  later.tap("card gum_12");
  later.tap("make_binder");
  return later;
}

bool says(const Hands& h, Say say) {
  return h.b.number && h.b.number->error && h.b.number->error->what == words::Sentence(say);
}

}

TEST_CASE("a dose that is said before its step begins is there on the next day") {
  Hands h;
  open_making(h);
  SUBCASE("while it steeps") {
    h.tap("step gum");
    h.tap("step steep");
    say(h, "dose", "7");
  }
  SUBCASE("before the gum is in") {
    say(h, "dose", "7");
    h.tap("step gum");
  }
  SUBCASE("of several the last") {
    h.tap("step gum");
    say(h, "dose", "9");
    say(h, "dose", "7");
  }
  SUBCASE("after its step was taken back") {
    h.tap("step gum");
    h.tap("step preserve");
    say(h, "dose", "7");
    h.tap("take_step_back");
  }
  Hands later = on_the_next_day(h);
  CHECK(shown(later).dose == 7);
  CHECK_FALSE(shown(later).dose_in_g);
  const auto steps = making_in_hand(later.b)->steps.size();
  later.tap("step preserve");
  CHECK(std::get<session::Making>(later.lines.back().event).drops == 7);
  CHECK(making_in_hand(later.b)->steps.size() == steps + 1);
}

TEST_CASE("a dose in g is one in g on the next day") {
  Hands h;
  open_making(h);
  h.tap("step gum");
  h.tap("dose_in");
  say(h, "dose", "1.8");
  Hands later = on_the_next_day(h);
  CHECK(shown(later).dose == 1.8);
  CHECK(shown(later).dose_in_g);
}

TEST_CASE("a dose that is said begins no step, and nothing is written of none") {
  Hands h;
  open_making(h);
  say(h, "dose", "7");
  CHECK(h.lines.empty());
  h.tap("step gum");
  const auto lines = h.lines.size();
  CHECK(making_in_hand(h.b)->steps.size() == 1);
  say(h, "dose", "7");
  CHECK(h.lines.size() == lines);
  h.tap("take_step_back");
  CHECK(h.b.makings.empty());
}

TEST_CASE("a jar that is to hold more than went in is asked about once") {
  Hands h;
  open_making(h);
  h.tap("step gum");
  say(h, "jar_holds", "5000");
  CHECK(says(h, Say::jar_holds_more));
  CHECK_FALSE(shown(h).jar_weighed);
  h.tap("enter");
  CHECK(shown(h).makes_g == 5000);
  say(h, "jar_holds", "186"); // the scale, and what clung to the spoon
  CHECK(shown(h).makes_g == 186);
}

TEST_CASE("a dose that would be a tenth of the binder is asked about once") {
  Hands h;
  open_making(h);
  h.tap("step gum");
  say(h, "dose", "1000");
  CHECK(says(h, Say::dose_doubted));
  h.tap("enter");
  CHECK(shown(h).dose == 1000);
  say(h, "dose", "40");
  CHECK(shown(h).dose == 40);
}

TEST_CASE("what no jar holds is said at once, and asked about by nobody") {
  Hands h;
  open_making(h);
  h.tap("step gum");
  for (const char* pad : {"jar_holds", "dose"}) {
    say(h, pad, "9999");
    CHECK(says(h, Say::fact_out_of_range));
    h.tap("leave");
  }
}

}
