// Amounts as they are tapped: whatever is said lies between what was asked for, in what has a pad.
#include "bench/measures.hpp"
#include "session/in_words.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace measures_test {

using namespace bench;

namespace {

const Measures spoon{0.05, 5, 1.1}, none{0.05, 0, 1.1};

}

TEST_CASE(
    "drops are up to five, or fives; more of them than anybody counts are spoons, or weighed") {
  CHECK(tapped(0.15, none).drops == 3);
  CHECK(tapped(0.80, none).drops == 15); // not 16
  CHECK(tapped(1.34, none).drops == 25);
  CHECK(tapped(2.0, none).drops == 0);
  CHECK(tapped(2.0, none).g == doctest::Approx(2.2));
  CHECK(tapped(1.3, spoon).spoons == 0.25);
  CHECK(tapped(0, spoon).drops == 0);
  CHECK(tapped(-1, spoon).spoons == 0);
}

TEST_CASE("what was put in drop by drop is as many spoons as if it had been measured at once") {
  const auto dropped = [](int drops) {
    double mL = 0;
    for (int i = 0; i < drops; ++i) mL += spoon.drop_mL;
    return tapped(mL, mL, spoon);
  };
  CHECK(dropped(50).spoons == 0.5);
  CHECK(dropped(50).drops == 0);
  CHECK(dropped(51).spoons == 0.5);
  CHECK(dropped(51).drops == 1);
  CHECK(dropped(60).spoons == 0.5);
  CHECK(dropped(60).drops == 10);
}

// A spoon of 4.93 mL (a US teaspoon), 20 drops to 1 mL: 45 drops of water are 0.46 of it.
TEST_CASE("many drops are said to be about as many spoons as they are") {
  const Measures of{0.05, 4.93, 1};
  session::Total total;
  total.card.facts = session::LiquidCard{session::CardKind::water, {}};
  total.drops = 45;
  total.grams = paint::exact(2.25);
  const Tapped again = session::put_in_again(total, of);
  CHECK(again.spoons == 0.5);
  CHECK(again.drops == 0);
  total.weighed_g = 9; // beside the drops: the scale says how much it is
  total.grams = paint::exact(9 + 2.25);
  CHECK(session::put_in_again(total, of).spoons == 0);
}

// 2¾ spoons of 4.93 mL are 13.56 mL, 131 drops of 0.035 mL 4.585 mL: 18.14 mL, 3.68 spoons.
TEST_CASE("what was put in by spoons and by drops is said as one sum") {
  const Measures of{0.035, 4.93, 1};
  session::Total total;
  total.card.facts = session::LiquidCard{session::CardKind::water, {}};
  total.spoons["teaspoon"] = 2.75;
  total.drops = 131;
  total.grams = paint::exact(2.75 * 4.93 + 131 * 0.035);
  const Tapped again = session::put_in_again(total, of);
  CHECK(mL_of(again, of) == doctest::Approx(18.14).epsilon(0.01));
  const std::string words = session::total_words(total, of);
  CHECK(words == "about 3½ tsp and 25 drops");
  total.drops = 12; // few enough to be counted again
  CHECK(session::total_words(total, of) == "2¾ tsp + 12 drops");
}

TEST_CASE("a helping goes in by the spoon, else by spoon and drops, else by drops") {
  const Measures of{0.05, 4.93, 1};
  CHECK(session::at_once(2.0, 2.6, of).spoons == 0.5);
  const Tapped both = session::at_once(2.3, 2.3, of);
  CHECK(both.spoons == 0.25);
  CHECK(both.drops == 20);
  CHECK(session::at_once(0.96, 1.1, of).drops == 20);
  CHECK(is_nothing(session::at_once(1.9, 1.9, {0.05, 0, 1}))); // nobody counts so many
}

TEST_CASE("where the round amount below would be too little, a little more is said") {
  CHECK(tapped(0.80, 0.90, none).drops == 18);
  CHECK(tapped(0.30, 0.30, none).drops == 6);
  const Tapped both = tapped(1.5, 1.6, spoon);
  CHECK(both.spoons == 0.25);
  CHECK(both.drops == 5);
  CHECK(mL_of(both, spoon) == doctest::Approx(1.5));
  CHECK(tapped(0.31, 0.2, none).drops == 7); // the least counts
}

TEST_CASE("what is said lies between what may be and what must be, to a drop") {
  for (const Measures& of : {spoon, none, Measures{0.033, 15, 1}})
    for (double most = 0.05; most < 30; most *= 1.3)
      for (const double share : {0.0, 0.5, 0.9, 1.0}) {
        const double mL = mL_of(tapped(share * most, most, of), of);
        CAPTURE(most);
        CAPTURE(share);
        CHECK(mL <= most + of.drop_mL + 1e-9);
        CHECK(mL >= share * most - 1e-9);
        CHECK(mL > 0);
      }
}

TEST_CASE("an amount is said within a tenth of it, or half a drop") {
  for (const Measures& of : {spoon, none, Measures{0.033, 4.93, 1}, Measures{0.02, 4.93, 1}})
    for (double mL = 0.01; mL < 80; mL *= 1.03) {
      const Tapped said = tapped(mL, of);
      CAPTURE(mL);
      CHECK(std::abs(mL_of(said, of) - mL) <= std::max(0.1 * mL, of.drop_mL / 2) * (1 + 1e-9));
      CHECK(said.drops <= most_counted);
      CHECK((said.g == 0 || (said.spoons == 0 && said.drops == 0)));
    }
  CHECK(is_nothing(tapped(0, spoon)));
}

TEST_CASE("of spoons that serve the one in the fewest taps") {
  CHECK(spoons_between(3, 5.5, spoon) == 1);
  CHECK(spoons_between(3, 4.5, spoon) == 0.75);
  CHECK(spoons_between(2, 4, spoon) == 0.5);
  CHECK(spoons_between(1.3, 2.4, spoon) == 0);
  CHECK(spoons_between(3, 4.5, none) == 0);
  CHECK(spoons_between(100, 140, spoon) == 0); // nobody counts so many
}

}
