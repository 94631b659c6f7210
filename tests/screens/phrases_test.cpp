#include "paint/catalogue.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/sources.hpp"
#include "words/speaking.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace phrases_test {

using namespace screens;

// Moments by GNU date: `date -u -d @1773066720`, and the others back from `date -u -d ... +%s`.
TEST_CASE("times of day and dates, in the zone given") {
  CHECK(date_and_time(1773066720000, 0) == "9 March, 14:32");
  CHECK(date_and_time(1773066720000, 60) == "9 March, 15:32");
  CHECK(date_and_time(1709251140000, 0) == "29 Feb, 23:59"); // 2024, a leap year
  CHECK(date_and_time(1709251140000, 1) == "1 March, 00:00");
  CHECK(date_and_time(-1800000, 0) == "31 Dec, 23:30"); // before 1970
  CHECK(time_of_day(0, -300) == "19:00");
}

TEST_CASE("a running time") {
  CHECK(minutes_seconds(0) == "0:00");
  CHECK(minutes_seconds(754.9) == "12:34");
  CHECK(minutes_seconds(6000) == "100:00");
  CHECK(minutes_seconds(std::nan("")) == "0:00");
}

TEST_CASE("amounts as they are said at the bench") {
  using session::Unit;
  CHECK(amount_words(Unit::drops, 1) == "1 drop");
  CHECK(amount_words(Unit::drops, 5) == "5 drops");
  CHECK(amount_words(Unit::spoons, 0.25) == "¼ tsp");
  CHECK(amount_words(Unit::spoons, 1.5) == "1½ tsp");
  CHECK(amount_words(Unit::g, 0.42) == "0.42 g");
  CHECK(amount_words(Unit::spoons, 0.3) == "0.3 tsp");
  CHECK(amount_words(Unit::g, 250) == "250 g");
  CHECK(next_words({Unit::g, 0}) == "weigh");
  CHECK(amount_pad_words("1/2 tsp") == "½ tsp");
}

TEST_CASE("one small drop is not 0.0 g") {
  CHECK(grams_words(0.035) == "0.04 g");
  CHECK(grams_words(paint::Amount{0.035, 0.007 * 0.007, {}}) == "0.04 g");
  CHECK(grams_words(paint::Amount{35.8, 16, {}}) == "36 g");
  CHECK(grams_words(paint::exact(12)) == "12.0 g");
  CHECK(grams_words(paint::exact(std::nan(""))) == "nan g");
}

TEST_CASE("a room is shown as it was read, other numbers by their uncertainty") {
  CHECK(event_words(session::RoomSet{19.5, 0.475, false}, "") == "room 19.5 °C, 47.5 %");
  CHECK(event_words(session::RoomSet{21, 0.5, true}, "") == "room 21 °C, 50 %");
  CHECK(reading_words(19.5) == "19.5");
  CHECK(number_words({1.834, 0.0049, {}}, 2) == "1.83");
  CHECK(number_words({1.834, 0.04, {}}, 2) == "1.8");
  CHECK(number_words(paint::exact(1.834), 1) == "1.8");
}

TEST_CASE("what the next undo takes back") {
  const session::Added drop{"gum", session::Unit::drops, 1, "dropper"};
  CHECK(event_words(drop, "Binder") == "Binder 1 drop");
  CHECK(event_words(session::Felt{session::Feel::wont_move}, "") == "won’t move");
  CHECK(event_words(session::CountLost{"gum"}, "Binder") == "Binder, count lost");
}

TEST_CASE("advice that little has taught says that it is a guess; the rest does not") {
  bench::Advice a;
  a.kind = bench::Advice::add_drops;
  a.amount.drops = 10;
  CHECK(advice_words(a) == "a guess: add 10 drops of binder, then mull");
  a.hint = false;
  CHECK(advice_words(a) == "add 10 drops of binder, then mull");
  a.several = true;
  CHECK(advice_words(a) == "add 10 drops of binder, then mull; it may take several rounds");
  a.amount.drops = 1;
  a.several = false;
  a.water = true;
  CHECK(advice_words(a) == "add 1 drop of water, then mull");
  CHECK(advice_words({}) == "weigh the pigment first");
  a.amount = {.g = 5.2};
  a.water = false;
  a.by_knife = true;
  CHECK(advice_words(a) == "add 5.2 g of binder, then work it in");
}

TEST_CASE("an amount is said in what has a pad") {
  CHECK(tapped_words({.drops = 15}) == "15 drops");
  CHECK(tapped_words({.drops = 17}) == "17 drops");
  CHECK(tapped_words({.drops = 1}) == "1 drop");
  CHECK(tapped_words({.spoons = 0.75}) == "½ + ¼ tsp");
  CHECK(tapped_words({.spoons = 0.25, .drops = 5}) == "¼ tsp and 5 drops");
  CHECK(tapped_words({.spoons = 2}) == "2 tsp");
  CHECK(tapped_words({.spoons = 3.75}) == "3 + ½ + ¼ tsp");
}

TEST_CASE("a first helping is said in spoons where one serves, the rest of it likewise") {
  bench::Advice a;
  a.kind = bench::Advice::first_helping;
  a.hint = false;
  a.low_g = 5.2;
  a.high_g = 7.2;
  CHECK(advice_words(a) == "start with 5.2 to 7.2 g binder");
  a.amount.spoons = 1.25;
  CHECK(advice_words(a) == "start with 1 + ¼ tsp binder (5.2 to 7.2 g)");
  a.rest = true;
  CHECK(advice_words(a) == "add the rest at once: 1 + ¼ tsp binder (5.2 to 7.2 g)");
  a.amount.spoons = 0;
  a.low_g = 7.2;
  CHECK(advice_words(a) == "add the rest at once: 7.2 g binder");
}

TEST_CASE("too loose: what to do, in minutes that anybody would say") {
  bench::Advice a;
  a.kind = bench::Advice::too_loose;
  a.hint = false;
  a.dry_min = 10;
  CHECK(advice_words(a) == "mull wide 10 min, then judge");
  CHECK(right_words(a, std::nullopt, true) == "mull wide 10 min, then judge (the room is a guess)");
  a.pigments = {{"a", "Cobalt blue", 0.8}, {"b", "Ochre", 0.24}};
  CHECK(advice_words(a) ==
        "mull wide 10 min, or add 0.80 g Cobalt blue + 0.24 g Ochre (mask on), mull; judge");
  a.pigments.clear();
  a.gum = paint::GumState::too_little;
  CHECK(gum_words(a) == "gum is short: no more pigment");
}

TEST_CASE("flowing right and being smooth are two things") {
  bench::Advice a;
  a.kind = bench::Advice::keep_mulling;
  CHECK(advice_words(a) == "it flows right: keep mulling, then make a test dot");
  a.mulling = bench::MullingNeeded{{4, 7.2, 12}, {1, 2.1, 4}, 3};
  CHECK(advice_words(a) ==
        "it flows right: keep mulling, about 2 more passes (7 min), then make a test dot");
  a.mulling->passes.middle = 0.6;
  CHECK(advice_words(a) ==
        "it flows right: keep mulling, about 1 more pass (7 min), then make a test dot");
  a.mulling = bench::MullingNeeded{{6, 14, 30}, {2, 4, 8}, 0};
  CHECK(advice_words(a) == "it flows right: mull some 15 min more, a dot each pass");
  a.specks = bench::SpecksStay::in_portions;
  CHECK(advice_words(a) == "specks stay: mull it in smaller portions, then a dot");
  a.specks = bench::SpecksStay::coarse;
  CHECK(advice_words(a) == "grains stay: gather it; next time grind it dry, mask on");
  a.specks = bench::SpecksStay::as_it_is;
  CHECK(advice_words(a) == "specks stay: gather it; next time mull less at once");
  a.by_knife = true; // never mulled: nothing is known of specks
  CHECK(advice_words(a) == "it flows right: mull it now, then make a test dot");
  a.by_knife = false;
  a.gum = paint::GumState::too_little;
  a.amount.drops = 10;
  for (const auto right :
       {bench::Advice::keep_mulling, bench::Advice::test_dot, bench::Advice::there}) {
    a.kind = right;
    a.dry_min = 0;
    CHECK(advice_words(a) == "gum is short: dry it a little, add 10 drops of binder");
    a.dry_min = 5;
    CHECK(advice_words(a) == "gum is short: mull wide 5 min, add 10 drops of binder");
    CHECK(gum_words(a).empty());
  }
  a.binder = "Gum 1:2";
  CHECK(advice_words(a) == "gum is short: mull wide 5 min, add 10 drops of Gum 1:2");
  a.gum.reset();
  CHECK(advice_words(a) == "just right and smooth: scrape it together, gather it");
}

TEST_CASE("right in flow, it is said in one sentence what honey has to do with it") {
  bench::Advice a;
  a.kind = bench::Advice::there;
  CHECK(right_words(a, std::nullopt) == "just right and smooth: scrape it together, gather it");
  const bench::Softening soft{"Honey 1:1", {.drops = 20}};
  CHECK(right_words(a, soft) == "it flows right; " + softening_words(soft));
  a.sticky = paint::Tack::may_stay_sticky;
  CHECK(right_words(a, std::nullopt) ==
        "it flows right, but may stay tacky: no more honey or glycerin");
  CHECK(is_right_in_all(a));
  a.times_without_honey = 0.4;
  CHECK(right_words(a, std::nullopt) ==
        "it flows right, but is too sweet to dry well: keep it, to mix into as much without honey");
  a.times_without_honey = 2.1;
  CHECK(right_words(a, std::nullopt, true) ==
        "it flows right, but is too sweet to dry well: keep it, to mix into 3 times as much "
        "without honey (the room is a guess)");
  a.pigments = {{"a", "Cobalt blue", 0.8}};
  a.amount.spoons = 0.25;
  a.binder = "Gum 1:2";
  CHECK(right_words(a, std::nullopt) ==
        "it flows right, but is too sweet to dry well: add 0.80 g Cobalt blue (mask on) and ¼ tsp "
        "of Gum 1:2, mull, judge");
  a.binder.clear();
  a.pigments.clear();
  a.amount = {};
  a.gum = paint::GumState::too_little;
  CHECK_FALSE(is_right_in_all(a));
  a.amount.drops = 10;
  CHECK(right_words(a, soft) == "gum is short: dry it a little, add 10 drops of binder");
}

TEST_CASE("what is over is judged, and what is too much is said with what to do") {
  bench::Advice a;
  a.kind = bench::Advice::mull_and_judge;
  a.judge_now = true;
  CHECK(advice_words(a) == "mulled: say how it moves now");
  a.by_knife = true;
  CHECK(advice_words(a) == "worked in: say how it moves now");
  a = {};
  a.kind = bench::Advice::past_right;
  a.amount.drops = 10;
  CHECK(advice_words(a) == "a guess: 10 drops too much liquid: mull, judge");
  a.hint = false;
  CHECK(advice_words(a) == "10 drops too much liquid: mull, judge");
  a.dry_min = 5;
  CHECK(advice_words(a) == "10 drops too much liquid: mull wide 5 min");
  CHECK(right_words(a, std::nullopt, true) ==
        "10 drops too much liquid: mull wide 5 min (the room is a guess)");
  a.by_knife = true; // no minutes are said
  CHECK(right_words(a, std::nullopt, true) == "10 drops too much liquid: work it in, judge");
  a = {};
  a.kind = bench::Advice::give_back;
  a.mL = 3;
  a.amount.spoons = 0.5;
  CHECK(right_words(a, std::nullopt, true) == advice_words(a) + " (the room is a guess)");
}

TEST_CASE("what goes in is named where something is to go in, once") {
  bench::Advice a;
  a.kind = bench::Advice::add_drops;
  a.amount.drops = 10;
  a.gum = paint::GumState::enough;
  CHECK(gum_words(a).empty());
  a.gum = paint::GumState::too_little;
  CHECK(gum_words(a) == "gum is short: binder, not water");
  a.gum = paint::GumState::too_much;
  CHECK(gum_words(a) == "water only: gum enough");
  for (const auto kind : {bench::Advice::mull_and_judge, bench::Advice::work_in,
                          bench::Advice::first_helping, bench::Advice::soak}) {
    a.kind = kind;
    CHECK(gum_words(a).empty());
  }
}

TEST_CASE("while it is worked in: how long still, and then that it is judged") {
  bench::Advice a;
  a.kind = bench::Advice::work_in;
  a.wait_min = 2;
  CHECK(advice_words(a) == "work it in with the knife for 2 min, then judge");
  a.too_early = true;
  a.wait_min = 1;
  CHECK(advice_words(a) == "work it in for 1 min more, then judge");
  a.wait_min = 0;
  CHECK(advice_words(a) == "worked in: say again how it moves");
  a.too_early = false;
  CHECK(advice_words(a) == "worked in: say how it moves under the knife");
  a.kind = bench::Advice::soak;
  a.wait_min = 10;
  CHECK(advice_words(a) == "let it soak for 10 min, then mull");
}

TEST_CASE("after too sticky no drop is called a risk") {
  bench::Advice a;
  a.kind = bench::Advice::mull_and_judge;
  CHECK(advice_words(a) == "mull, then judge"); // little is known to stop a hand
  a.hint = false;
  CHECK(advice_words(a) == "no more yet: mull, then judge");
  a.sticky_now = true;
  CHECK(advice_words(a) == "mull, then judge again");
  a.by_knife = true;
  CHECK(advice_words(a) == "work it in, then judge again");
}

TEST_CASE("found dry: how much water, and what then") {
  bench::Advice a;
  a.kind = bench::Advice::give_back;
  a.mL = 6.13;
  a.amount.spoons = 1;
  CHECK(advice_words(a) == "give back 1 tsp of water (6.1 mL), let it soak ten minutes, then mull");
  a.mL = 0.6;
  a.amount = {.drops = 10};
  CHECK(advice_words(a) ==
        "give back 10 drops of water (0.6 mL), let it soak ten minutes, then mull");
}

TEST_CASE(
    "what a pigment's figures rest on: a source or a guess, and no word that says otherwise") {
  bench::ShelfView shelf;
  shelf.density_from = "data sheet";
  const std::string half = rests_on_words(shelf);
  CHECK(half.find("data sheet") != std::string::npos);
  CHECK(half.find("guess") != std::string::npos);
  shelf.oil_from = "table";
  const std::string whole = rests_on_words(shelf);
  CHECK(whole.find("guess") == std::string::npos);
  shelf.oil_from.clear();
  shelf.oil_beside = "supplier data sheet (42)";
  CHECK(rests_on_words(shelf).find("a guess; supplier data sheet (there 42)") != std::string::npos);
  for (const std::string& said : {half, whole}) CHECK(said.find("onfidence") == std::string::npos);
}

TEST_CASE(
    "every source of the catalogue is said in each language, and a figure as one found there") {
  CHECK(source_words("supplier data sheet (1.77)") == "supplier data sheet (there 1.77)");
  const words::Speaking speaking(words::Language::german);
  CHECK(source_words("supplier data sheet (1.77)") == "Datenblatt des Lieferanten (dort 1,77)");
  CHECK(source_words("supplier data sheet (40 to 50 mL)") ==
        "Datenblatt des Lieferanten (dort 40 bis 50 mL)");
  CHECK(source_words("somebody’s own") == "somebody’s own");
  for (const paint::CataloguePigment& pigment : paint::catalogue())
    for (const std::string& from : {pigment.density_from, pigment.oil_from, pigment.oil_beside}) {
      const bool a_title = from.rfind("Encyclopedic Dictionary", 0) == 0 || from.empty();
      CHECK_MESSAGE((a_title || source_words(from) != from), from);
      for (const char* english : {"table", "sheet", "maker", " to ", " and "})
        if (!a_title && from.find("Gettens") == std::string::npos)
          CHECK_MESSAGE(source_words(from).find(english) == std::string::npos, from);
    }
}

TEST_CASE("how long until the next layer: whole hours up to three days, then whole days") {
  CHECK(span_words(12.7, 61.2) == "in 12 to 62 h");
  CHECK(span_words(12.7, 140) == "in 12 h to 6 days");
  CHECK(span_words(0, 0.4) == "in 1 to 2 h");
  CHECK(span_words(41, 180) == "in 2 to 8 days");
  CHECK(span_words(35, 180) == "in 1 to 8 days");
}

TEST_CASE("what was a gift costs nothing, and no 0.00 of a currency") {
  CHECK(money_words(0, "crowns") == "nothing");
  CHECK(money_words(2.5, "crowns") == "2.50 crowns");
}

}
