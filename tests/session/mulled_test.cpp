// What a batch tells of mulling.
#include "make.hpp"
#include "session/mulled.hpp"

#include <doctest/doctest.h>

namespace mulled_test {

using namespace session;
using doctest::Approx;

namespace {

make::Writer wet(std::string session = "c41e08d5") {
  make::Writer w(std::move(session));
  w.put("b", Opened{"Blue"});
  for (const Card& card :
       {make::pigment("blue", 4, 30), make::pigment("red", 5, 20),
        make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}), make::paint_of("b0", 2)})
    w.put("b", LaidOut{card});
  w.put("b", Added{"blue", Unit::g, 20, ""});
  w.put("b", Added{"gum", Unit::g, 9, ""});
  return w;
}

void pass(make::Writer& w, double minutes) {
  w.put("b", StageBegan{Stage::mulling});
  w.wait(60 * minutes);
  w.put("b", StageBegan{Stage::resting});
  w.wait(60);
}

Mulled told(const make::Writer& w) { return mulled(make::folded({w.log}, "b")); }

}

TEST_CASE("dots bear the minutes mulled before them, wetting out and resting left out") {
  make::Writer w = wet();
  w.put("b", StageBegan{Stage::wetting_out});
  w.wait(300);
  w.put("b", Dot{Specks::many}); // before any mulling: of no use
  pass(w, 4);
  w.put("b", Dot{Specks::many});
  pass(w, 3);
  w.put("b", Dot{Specks::few});
  w.put("b", StageBegan{Stage::mulling});
  w.wait(120);
  w.put("b", Dot{Specks::none}); // in the middle of a pass
  w.wait(30);
  const Mulled m = told(w);
  REQUIRE(m.dots.size() == 3);
  CHECK(m.dots[0] == paint::MullDot{4, paint::SpeckWord::many});
  CHECK(m.dots[1] == paint::MullDot{7, paint::SpeckWord::few});
  CHECK(m.dots[2].minutes == Approx(9));
  CHECK(m.passes_s.size() == 2); // the third runs
  CHECK(m.pigments == std::vector<MulledPigment>{{"blue", paint::PigmentClass::mineral}});
}

TEST_CASE("pigment added later begins it anew, a trace of one is not counted as one") {
  make::Writer w = wet();
  pass(w, 4);
  w.put("b", Dot{Specks::none});
  w.put("b", Added{"red", Unit::g, 0.4, ""});
  CHECK(told(w).dots.empty());
  CHECK(told(w).minutes == 0);
  CHECK(told(w).pigments.size() == 1);
  pass(w, 3);
  w.put("b", Dot{Specks::few});
  CHECK(told(w).dots == paint::MullBatch{{3, paint::SpeckWord::few}});
  w.put("b", Added{"red", Unit::g, 5, ""});
  CHECK(told(w).pigments.size() == 2);
}

TEST_CASE("withdrawn and corrected dots are as they stand") {
  make::Writer w = wet();
  pass(w, 4);
  const Ref slip = w.put("b", Dot{Specks::none});
  const Ref wrong = w.put("b", Dot{Specks::many});
  w.put("b", Withdrawn{slip});
  w.put("b", Corrected{wrong, Corrected::Says(Dot{Specks::few}), {}});
  CHECK(told(w).dots == paint::MullBatch{{4, paint::SpeckWord::few}});
}

TEST_CASE("a pass of more than an hour was forgotten: what comes after it tells nothing") {
  make::Writer w = wet();
  pass(w, 4);
  w.put("b", Dot{Specks::few});
  pass(w, 61);
  w.put("b", Dot{Specks::none});
  CHECK(told(w).dots == paint::MullBatch{{4, paint::SpeckWord::few}});
  CHECK(told(w).passes_s.size() == 1);
}

TEST_CASE("paint of another batch was mulled there: nothing is told of its pigments") {
  make::Writer w = wet();
  w.put("b", Added{"b0", Unit::g, 5, ""});
  pass(w, 4);
  w.put("b", Dot{Specks::none});
  CHECK(told(w).pigments.empty());
}

TEST_CASE("a second device goes on where the first one left the paint") {
  make::Writer w = wet(), other("0ther");
  pass(w, 4);
  w.put("b", Dot{Specks::many});
  other.t = w.t + 60000;
  pass(other, 5);
  other.put("b", Dot{Specks::none});
  const Mulled m = mulled(make::folded({w.log, other.log}, "b"));
  REQUIRE(m.dots.size() == 2);
  CHECK(m.dots[1].minutes == Approx(9));
}

namespace {

Photo dot_photo(char digit, std::optional<SpecksSeen> seen = {}) {
  Photo photo{std::string(64, digit), "jpg", PhotoOf::dot};
  photo.specks = seen;
  return photo;
}

}

TEST_CASE("a dot judged on its photo counts at the moment the photo was kept") {
  make::Writer w = wet();
  pass(w, 4);
  w.put("b", dot_photo('a'));
  pass(w, 6);
  w.put("b", dot_photo('a', SpecksSeen{Specks::few, Specks::many}));
  const Mulled of = told(w);
  REQUIRE(of.dots.size() == 1);
  CHECK(of.dots[0].minutes == Approx(4).epsilon(0.01));
  CHECK(of.dots[0].specks == paint::SpeckWord::few);
}

TEST_CASE("a photo nobody has judged is no dot, and the last word on one counts") {
  make::Writer w = wet();
  pass(w, 4);
  w.put("b", dot_photo('a'));
  CHECK(told(w).dots.empty());
  w.put("b", dot_photo('a', SpecksSeen{Specks::many}));
  w.put("b", dot_photo('a', SpecksSeen{Specks::none, Specks::few}));
  REQUIRE(told(w).dots.size() == 1);
  CHECK(told(w).dots[0].specks == paint::SpeckWord::none);
}

TEST_CASE("of a dot told at the slab and judged on its photo, the photo counts") {
  make::Writer w = wet();
  pass(w, 4);
  w.put("b", Dot{Specks::none});
  w.put("b", dot_photo('a', SpecksSeen{Specks::few}));
  pass(w, 5);
  w.put("b", Dot{Specks::none});
  const Mulled of = told(w);
  REQUIRE(of.dots.size() == 2);
  CHECK(of.dots[0].specks == paint::SpeckWord::few);
  CHECK(of.dots[1].specks == paint::SpeckWord::none);
}

}
