// What is said leads to good paint: water for what dried off, gum in grams and minutes, and no
// sentence that the pads or the picture beside it contradict.
#include "advice_slab.hpp"
#include "bench/advice_parts.hpp"
#include "bench/corrections.hpp"
#include "bench/told_at_slab.hpp"
#include "hands.hpp"

#include <cmath>

namespace true_advice_test {
using namespace advised;
using bench::SpecksStay;

namespace {

// Felt right under the muller, with as much gum as that takes.
void make_right(Slab& s, double gum = 7.5) {
  s.add("gum", gum);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::right);
}

}

TEST_CASE("paint that was right and dries on gets water, however long it lies") {
  for (const double minutes : {20.0, 40.0, 90.0, 147.0, 400.0}) {
    CAPTURE(minutes);
    Slab s;
    make_right(s, 6);
    s.w.wait(60 * minutes);
    s.w.put(batch, Noted{"still there"});
    const Advice advice = s.advice();
    if (advice.kind == Advice::add_drops) CHECK(advice.water);
  }
}

TEST_CASE("left to dry while a pass runs: the water is given back, soaks, and is not asked again") {
  Slab s;
  make_right(s);
  const double before = s.flow();
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(12 * 3600);
  s.w.put(batch, Noted{"the next morning"});
  REQUIRE(s.flow() < 0.5 * before);
  const Advice dry = s.advice();
  REQUIRE(dry.kind == Advice::give_back);
  CHECK(dry.mL ==
        doctest::Approx((before - s.flow()) * s.folded().standing.pigment_mL.value).epsilon(0.02));
  s.w.put(batch, StageBegan{Stage::resting});
  s.add("water", 0.97 * dry.mL);
  CHECK(s.advice().kind == Advice::soak);
  s.w.wait(660);
  CHECK(s.advice().kind != Advice::give_back);
  for (int pass = 0; pass < 4; ++pass) {
    s.mull(200);
    CHECK(s.advice().kind != Advice::give_back);
  }
}

TEST_CASE("too loose paint that was left to dry is not told to have it all back") {
  Slab s;
  s.add("gum", 12);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_runny);
  for (int hours = 0; hours < 8; ++hours) {
    s.w.wait(1800);
    s.w.put(batch, Noted{"it stands"});
    const Advice advice = s.advice();
    if (advice.kind == Advice::give_back) CHECK(s.flow() < 0.5 * s.middle());
  }
}

TEST_CASE("a step that stops short of right says that it takes several") {
  Slab s;
  s.add("gum", 3.5);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_sticky);
  const Advice advice = s.advice();
  REQUIRE(advice.kind == Advice::add_drops);
  const double then =
      s.flow() + bench::advised_mL(advice, s.of, s.known) / s.folded().standing.pigment_mL.value;
  CHECK((advice.several || std::log(then) >= s.expected()->band.from));
  CHECK(advice.several);
}

TEST_CASE("a few drops of a wetting aid before the binder leave the first helping as it was") {
  Slab s;
  const Advice before = s.advice();
  REQUIRE(before.kind == Advice::first_helping);
  s.add("water", 0.1);
  const Advice after = s.advice();
  CHECK(after.kind == Advice::first_helping);
  CHECK(after.high_g == doctest::Approx(before.high_g).epsilon(0.1));
}

TEST_CASE("what is past right, and what gum lacks, is said within a tenth, in spoons too") {
  for (const double spoon_mL : {0.0, 4.93})
    for (const double gum : {9.0, 9.5, 10.0, 10.5, 11.0, 12.0}) {
      Slab s;
      s.of.spoon_mL = spoon_mL;
      s.add("gum", gum);
      s.wet_out();
      CAPTURE(gum);
      const Advice advice = s.advice();
      if (advice.kind != Advice::past_right) continue;
      CHECK(bench::mL_of(advice.amount, s.of) ==
            doctest::Approx(advice.mL).epsilon(std::max(0.1, 0.02 / advice.mL)));
    }
}

TEST_CASE("too much honey in the binder: gum comes from one without, where there is one") {
  Slab s;
  s.w.card(make::liquid("honey gum", CardKind::binder, {.gum = 1, .water = 2, .honey = 2}));
  s.add("honey gum", 4.5);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_sticky);
  REQUIRE(s.advice().sticky);
  REQUIRE(s.advice().kind == Advice::add_drops);
  CHECK(s.advice().binder.empty());
  s.known.without_honey = bench::Known::Binder{"Gum 1:2", s.of};
  const Advice advice = s.advice();
  CHECK((advice.water || advice.binder == "Gum 1:2"));
  CHECK(bench::advised_mL(advice, s.of, s.known) > 0);
}

TEST_CASE("right as it is drawn never lies left of what was felt to be too sticky") {
  Slab s;
  s.w.card(make::liquid("honey", CardKind::honey, {.water = 1, .honey = 1}));
  s.add("gum", 5);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_sticky);
  const double felt = s.flow();
  s.add("honey", 4);
  const paint::Band band = bench::band_as_told(s.folded(), *s.expected());
  CHECK(std::exp(band.middle) > felt);
  CHECK(std::exp(band.to) > felt);
}

TEST_CASE("too much is said of no paint whose place is within right") {
  for (double gum = 5; gum < 14; gum += 0.25) {
    CAPTURE(gum);
    Slab s;
    s.add("gum", gum);
    s.wet_out();
    s.mull(200);
    s.feel(Feel::too_sticky);
    s.add("gum", 0.3);
    const paint::Band band = bench::band_as_told(s.folded(), *s.expected());
    if (s.advice().kind == Advice::past_right) CHECK(std::log(s.flow()) > band.to - 1e-9);
  }
}

TEST_CASE("nearly all of it spilt: what is left is not judged by a drop that it has not") {
  Slab s;
  s.add("gum", 7);
  s.wet_out();
  s.mull(200);
  s.feel(Feel::too_sticky);
  s.add("gum", 1.2);
  const double there =
      paint::grams_of(s.folded().places.at.at(Place::slab).paint, s.folded().places.bench).value;
  s.w.put(batch, Lost{Place::slab, {1, there - 0.1}, ""});
  CHECK(s.advice().kind != Advice::past_right);
}

TEST_CASE("the pad begins what the sentence says: hardly worked in powder is worked in again") {
  Slab s;
  s.add("gum", 5);
  CHECK(bench::next_stage(s.folded()) == Stage::wetting_out);
  s.wet_out(30);
  CHECK(bench::next_stage(s.folded()) == Stage::mulling);
  CHECK(bench::is_dusty(s.folded()));
  s.w.put(batch, StageBegan{Stage::resting}); // as when the window was closed
  CHECK(bench::next_stage(s.folded()) == Stage::wetting_out);
  CHECK(s.advice().kind == Advice::work_in);
  CHECK(bench::is_dusty(s.folded()));
  s.wet_out(100);
  s.w.put(batch, StageBegan{Stage::resting});
  CHECK(bench::next_stage(s.folded()) == Stage::mulling);
  CHECK_FALSE(bench::is_dusty(s.folded()));
  CHECK_FALSE(s.advice().by_knife);
}

TEST_CASE("the mask is said as long as the powder is to be worked in") {
  Slab s;
  s.add("gum", 5);
  for (const double seconds : {0.0, 30.0, 50.0, 30.0, 30.0}) {
    if (seconds == 0) s.w.put(batch, StageBegan{Stage::wetting_out});
    s.w.wait(seconds);
    s.w.put(batch, Noted{"at it"});
    CHECK(bench::is_dusty(s.folded()) == (s.advice().wait_min > 0));
  }
}

TEST_CASE("right under the knife is to be mulled, and no further mulling is spoken of") {
  Slab s;
  s.add("gum", 6);
  s.wet_out();
  s.w.put(batch, Felt{Feel::right, By::knife});
  CHECK(s.advice().kind == Advice::keep_mulling);
  CHECK(s.advice().by_knife);
  s.w.put(batch, StageBegan{Stage::mulling});
  CHECK_FALSE(s.advice().by_knife);
}

TEST_CASE("specks that stay lead on: smaller portions, then grains of the pigment") {
  Slab s;
  make_right(s, 8);
  const auto looked = [&](Specks specks) {
    s.mull(200);
    s.feel(Feel::right);
    s.dot(specks);
    return s.advice().specks;
  };
  CHECK(looked(Specks::many) == SpecksStay::no);
  CHECK(looked(Specks::few) == SpecksStay::no);
  s.dot(Specks::few); // a look more at the same paint
  CHECK(s.advice().specks == SpecksStay::no);
  CHECK(looked(Specks::few) == SpecksStay::in_portions);
  CHECK(looked(Specks::few) == SpecksStay::in_portions);
  CHECK(looked(Specks::few) == SpecksStay::coarse);
  CHECK(looked(Specks::none) == SpecksStay::no);
}

TEST_CASE("more specks than the dot before are no fewer") {
  Slab s;
  make_right(s, 8);
  const auto looked = [&](Specks specks) {
    s.mull(200);
    s.feel(Feel::right);
    s.dot(specks);
    return s.advice().specks;
  };
  CHECK(looked(Specks::many) == SpecksStay::no);
  CHECK(looked(Specks::few) == SpecksStay::no);
  CHECK(looked(Specks::few) == SpecksStay::in_portions);
  CHECK(looked(Specks::many) == SpecksStay::in_portions);
}

TEST_CASE("specks after the time that this paint takes are grains; before it, mulling goes on") {
  Slab s;
  make_right(s, 8);
  s.known.mulling_left = bench::MullingNeeded{{4, 7, 12}, {1, 2, 4}, 3};
  for (int i = 0; i < 2; ++i) {
    s.mull(200);
    s.feel(Feel::right);
    s.dot(Specks::few);
  }
  CHECK(s.advice().specks == SpecksStay::no);
  s.known.mulling_left->passes = {0, 0.2, 1};
  CHECK(s.advice().specks == SpecksStay::coarse);
}

TEST_CASE("of powder that is made fine, and clumps, no coarse grains are spoken of") {
  Slab s;
  Card fine = make::pigment("q", 1.6, 45);
  std::get<PigmentCard>(fine.facts).pigment.family = paint::PigmentClass::organic;
  s.w.card(fine);
  s.add("q", 40);
  make_right(s, 70);
  for (int i = 0; i < 6; ++i) {
    s.mull(200);
    s.feel(Feel::right);
    s.dot(Specks::few);
    if (i == 2) CHECK(s.advice().specks == SpecksStay::in_portions);
  }
  CHECK(s.advice().kind == Advice::keep_mulling);
  CHECK(s.advice().specks == SpecksStay::as_it_is);
}

TEST_CASE("what has dried off does not change by gathering, nor what stays by pouring") {
  hands::Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("9");
  h.tap("pass");
  h.wait(130);
  h.tap("pass");
  h.wait(600);
  h.tap("pass");
  const double dried = h.slab().dried_mL.value;
  REQUIRE(dried > 0.3);
  h.tap("gather");
  CHECK(h.slab().dried_mL.value == doctest::Approx(dried).epsilon(0.01));
  REQUIRE(h.slab().jar);
  const double stays = h.slab().jar->on_tools;
  CHECK(stays == doctest::Approx(0.075).epsilon(0.05));
  h.tap("pans");
  h.tap("pour_all");
  h.tap("slab");
  if (h.slab().jar) CHECK(h.slab().jar->on_tools == doctest::Approx(stays).epsilon(0.01));
}

TEST_CASE("after a question the pads give again what they gave: one drop") {
  for (const char* closing : {"undo", "leave"}) {
    CAPTURE(closing);
    hands::Hands h;
    h.begin();
    for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
    h.type("900");
    REQUIRE(h.slab().number);
    REQUIRE(h.slab().number->error);
    const int added = h.count<Added>();
    h.tap(closing);
    CHECK_FALSE(h.slab().number);
    CHECK(h.count<Added>() == added);
    CHECK(h.b.amount.unit == Unit::drops);
    CHECK(h.b.amount.count == 1);
  }
}

TEST_CASE("far too much, confirmed, is a wash: nothing is said of honey or of a drop") {
  hands::Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("900");
  h.tap("enter");
  CHECK(h.count<Added>() == 2);
  CHECK(h.slab().advice.kind == Advice::a_wash);
  CHECK_FALSE(h.slab().softening);
  h.tap("undo");
  CHECK(h.slab().advice.kind == Advice::first_helping);
}

TEST_CASE("an entry corrected to far too much asks once, and then all of it goes by that") {
  hands::Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("9");
  for (const char* pad : {"pass", "more", "lines"}) h.tap(pad);
  const auto lines = bench::correctable(h.b);
  for (const session::Entry* line : lines)
    if (const auto* added = std::get_if<Added>(&line->event); added && added->of == "gum_12")
      h.tap("line " + bench::arg_of(line->ref));
  h.tap("other_amount");
  h.type("900");
  REQUIRE(h.slab().number);
  REQUIRE(h.slab().number->error); // of a correction too it is asked
  CHECK(h.count<Corrected>() == 0);
  h.tap("enter");
  CHECK(h.count<Corrected>() == 1);
  CHECK(h.slab().advice.kind == Advice::a_wash);
  CHECK_FALSE(h.slab().trail.next);
  CHECK_FALSE(h.slab().softening);
}

TEST_CASE("a dot that is asked for stays asked for until it is made") {
  Slab s;
  make_right(s, 8);
  CHECK(s.advice().kind == Advice::test_dot);
  s.w.put(batch, StageBegan{Stage::mulling});
  s.w.wait(30);
  s.w.put(batch, Noted{"at it"});
  CHECK(s.advice().kind == Advice::test_dot);
  s.dot(Specks::none);
  CHECK(s.advice().kind == Advice::there);
}

TEST_CASE("what should dry is said of wet pans, and not a month later") {
  hands::Hands h;
  h.gather();
  for (const char* pad : {"pans", "pour_all"}) h.tap(pad);
  const auto shown = [&] { return std::get<bench::PansView>(view(h.b, h.now()).screen); };
  REQUIRE(shown().tack == paint::Tack::dries);
  for (int day = 0; day < 30; ++day) h.wait(24 * 3600);
  CHECK_FALSE(shown().said);
  CHECK_FALSE(shown().tack);
}

}
