#include "paint/mull_time.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace mull_time_test {

using namespace paint;

namespace {

constexpr auto many = SpeckWord::many, few = SpeckWord::few, none = SpeckWord::none;

Interval next_of(PigmentClass family, const std::vector<MullPigment>& known,
                 std::optional<std::size_t> which = std::nullopt) {
  return mull_minutes(*mull_time(family, known, which));
}

// Batches that were all smooth between these two.
MullPigment smooth_between(double low, double high, int batches) {
  return MullPigment(static_cast<std::size_t>(batches), MullBatch{{low, few}, {high, none}});
}

double width(const Interval& i) { return i.high / i.low; }

}

TEST_CASE("before anything was mulled it is what makers say, and wide") {
  const Interval mineral = next_of(PigmentClass::mineral, {});
  CHECK(mineral.middle == doctest::Approx(10).epsilon(0.05)); // of 5 to 20
  CHECK(mineral.low < 5);
  CHECK(mineral.high > 20);
  CHECK(next_of(PigmentClass::organic, {}).middle ==
        doctest::Approx(std::sqrt(1200)).epsilon(0.05));
  CHECK_FALSE(mull_time(PigmentClass::effect, {}, std::nullopt)); // mulling breaks flakes
}

TEST_CASE("dots draw it to where the specks went, and narrow it") {
  const Interval one = next_of(PigmentClass::mineral, {smooth_between(27, 33, 1)}, 0);
  const Interval five = next_of(PigmentClass::mineral, {smooth_between(27, 33, 5)}, 0);
  CHECK(one.middle > 13);
  CHECK(five.middle > one.middle);
  CHECK(five.middle == doctest::Approx(30).epsilon(0.12));
  CHECK(width(five) < width(one));
  CHECK(width(one) < width(next_of(PigmentClass::mineral, {})));
}

TEST_CASE("gathered with specks, a batch says only that it takes longer") {
  const Interval usual = next_of(PigmentClass::mineral, {});
  const Interval cut_short = next_of(PigmentClass::mineral, {{{{3, few}}}}, 0);
  const Interval gritty = next_of(PigmentClass::mineral, {MullPigment(4, MullBatch{{30, few}})}, 0);
  CHECK(cut_short.middle == doctest::Approx(usual.middle).epsilon(0.35)); // hardly news
  CHECK(gritty.middle > 30);
  const Interval smooth =
      next_of(PigmentClass::mineral, {MullPigment(4, MullBatch{{30, none}})}, 0);
  CHECK(smooth.middle < 30);
}

TEST_CASE("others of its class teach an untried pigment, and less than its own batches do") {
  std::vector<MullPigment> known(5, smooth_between(27, 33, 4));
  const double usual = next_of(PigmentClass::mineral, {}).middle;
  const double untried = next_of(PigmentClass::mineral, known).middle;
  CHECK(untried > 1.5 * usual);
  known.push_back(smooth_between(9, 11, 1));
  const double one = next_of(PigmentClass::mineral, known, 5).middle;
  known.back() = smooth_between(9, 11, 6);
  const double six = next_of(PigmentClass::mineral, known, 5).middle;
  CHECK(one < untried);
  CHECK(six < one);
  CHECK(six == doctest::Approx(10).epsilon(0.2));
}

TEST_CASE("in which order pigments and batches come does not matter") {
  const MullPigment a = smooth_between(9, 11, 2), b = smooth_between(20, 26, 3);
  MullPigment mixed = a;
  mixed.insert(mixed.end(), b.begin(), b.end());
  const MullPigment turned(mixed.rbegin(), mixed.rend());
  const Interval one = next_of(PigmentClass::organic, {mixed, a, b}, 0);
  const Interval other = next_of(PigmentClass::organic, {b, a, turned}, 2);
  CHECK(one.middle == doctest::Approx(other.middle).epsilon(1e-9));
  CHECK(one.high == doctest::Approx(other.high).epsilon(1e-9));
}

TEST_CASE("what is left falls while it is mulled, and nothing is left of smooth paint") {
  const MullTime time = *mull_time(PigmentClass::mineral, {smooth_between(18, 22, 5)}, 0);
  double before = 1e9;
  for (double mulled = 0; mulled < 60; mulled += 3) {
    const Interval left = *mull_minutes_left(time, {}, mulled);
    CHECK(left.low <= left.middle);
    CHECK(left.middle <= left.high);
    CHECK(left.low >= 0);
    CHECK(left.middle <= before);
    before = left.middle;
  }
  CHECK(before == 0);
  const Interval few_left = *mull_minutes_left(time, {}, 2, few);
  CHECK(few_left.middle < mull_minutes_left(time, {}, 2)->middle);
  CHECK(mull_minutes_left(time, {{9, none}}, 9)->high == 0);
  CHECK(mull_minutes_left(time, {{9, few}}, 9, few)->high == 0);
  CHECK(mull_minutes_left(time, {{9, few}}, 9)->low > 0);
}

TEST_CASE("specks that are still there after all it should take put the end off") {
  const MullTime time = *mull_time(PigmentClass::mineral, {smooth_between(18, 22, 5)}, 0);
  const Interval usual = *mull_minutes_left(time, {}, 25);
  const Interval gritty = *mull_minutes_left(time, {{25, few}}, 25);
  CHECK(gritty.middle > usual.middle);
  CHECK(gritty.low > 0);
  const Interval coarse = *mull_minutes_left(time, {{25, many}}, 25);
  CHECK(coarse.middle > gritty.middle);
  CHECK_FALSE(mull_minutes_left(time, {{1e6, few}}, 1e6)); // nothing can be said any more
}

TEST_CASE("a blend takes as long as its slowest pigment until its own batches say otherwise") {
  const MullTime fast = *mull_time(PigmentClass::mineral, {smooth_between(9, 11, 5)}, 0);
  const MullTime slow = *mull_time(PigmentClass::organic, {smooth_between(45, 55, 5)}, 0);
  CHECK(mull_time_of_blend({fast, slow}, {}) == slow);
  CHECK(mull_time_of_blend({slow, fast}, {}) == slow);
  const Interval own = mull_minutes(mull_time_of_blend({fast, slow}, smooth_between(22, 26, 5)));
  CHECK(own.middle == doctest::Approx(26).epsilon(0.15));
}

TEST_CASE("dots that make no sense are passed over, those that contradict are weighed") {
  const double nan = std::nan(""), endless = std::numeric_limits<double>::infinity();
  const Interval usual = next_of(PigmentClass::mineral, {});
  const MullBatch nonsense{{0, none}, {-3, many}, {nan, none}, {endless, few}};
  CHECK(next_of(PigmentClass::mineral, {{nonsense}}, 0).middle ==
        doctest::Approx(usual.middle).epsilon(0.01));
  CHECK(next_of(PigmentClass::mineral, {{}}, 0).middle ==
        doctest::Approx(usual.middle).epsilon(0.01));
  for (const MullBatch& odd : {MullBatch{{5, none}, {20, many}}, MullBatch{{20, many}, {5, none}},
                               MullBatch{{1e6, many}}, MullBatch{{1e-6, none}}})
    for (int batches : {1, 60}) {
      const Interval i =
          next_of(PigmentClass::mineral, {MullPigment(static_cast<std::size_t>(batches), odd)}, 0);
      CHECK(std::isfinite(i.middle));
      CHECK(i.low <= i.middle);
      CHECK(i.middle <= i.high);
    }
  const Interval left =
      *mull_minutes_left(*mull_time(PigmentClass::mineral, {}, {}), {{5, none}, {8, few}}, 8);
  CHECK(left.low > 0); // the last word counts
}

TEST_CASE("one slip of the finger among many batches moves little") {
  MullPigment known = smooth_between(18, 22, 8);
  const double before = next_of(PigmentClass::mineral, {known}, 0).middle;
  known.push_back({{0.5, none}});
  CHECK(next_of(PigmentClass::mineral, {known}, 0).middle == doctest::Approx(before).epsilon(0.1));
}

TEST_CASE("passes are as long as this hand makes them, and a forgotten one is not believed") {
  CHECK(usual_pass_after({}) == doctest::Approx(usual_pass_s));
  CHECK(usual_pass_after(std::vector<double>(40, 300)) == doctest::Approx(300).epsilon(0.06));
  CHECK(usual_pass_after({300}) < 240);
  CHECK(usual_pass_after({1e6}) == usual_pass_after({900}));
  CHECK(usual_pass_after({0}) == usual_pass_after({60}));
}

}
