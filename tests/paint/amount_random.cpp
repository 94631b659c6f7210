// The algebra of amounts with any numbers.
#include "paint/amount.hpp"
#include "paint/bottle.hpp"
#include "random.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace amount_random_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

Amount any_amount() {
  return {
      between(0.1, 100), between(0, 4), {{"dropper", between(-2, 2)}, {"scale", between(-2, 2)}}};
}

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

bool same(const Amount& a, const Amount& b) {
  return near(a.value, b.value) && near(uncertainty(a), uncertainty(b)) &&
         near(covariance(a, b), covariance(b, a)) && near(covariance(a, a), covariance(b, b));
}

const double infinite = std::numeric_limits<double>::infinity();

}

TEST_CASE("amounts obey the rules of sums") {
  holds("order and brackets do not matter", [] {
    const Amount a = any_amount(), b = any_amount(), c = any_amount();
    RC_ASSERT(same(a + b, b + a));
    RC_ASSERT(same((a + b) + c, a + (b + c)));
    RC_ASSERT(same(scaled(a + b, 3), scaled(a, 3) + scaled(b, 3)));
  });
  holds("nothing added is nothing changed", [] {
    const Amount a = any_amount();
    RC_ASSERT(same(a + exact(0), a));
    RC_ASSERT(same(a - exact(0), a));
    RC_ASSERT(same(product(a, exact(1)), a));
    RC_ASSERT(same(quotient(a, exact(1)), a));
  });
  holds("an uncertainty of a sum lies between the difference and the sum of the two", [] {
    const Amount a = any_amount(), b = any_amount();
    const double u = uncertainty(a + b);
    RC_ASSERT(u <= uncertainty(a) + uncertainty(b) + 1e-9);
    RC_ASSERT(u >= std::abs(uncertainty(a) - uncertainty(b)) - 1e-9);
  });
  holds("the variance of a sum is that of each and twice what they share", [] {
    const Amount a = any_amount(), b = any_amount();
    const double ua = uncertainty(a), ub = uncertainty(b), u = uncertainty(a + b);
    RC_ASSERT(near(u * u, ua * ua + ub * ub + 2 * covariance(a, b)));
  });
  holds("a product of relative uncertainties, a quotient undoes it", [] {
    const Amount a = any_amount();
    const Amount b{between(0.1, 100), between(0, 4), {{"spoon", between(-2, 2)}}};
    const double r = std::hypot(relative_uncertainty(a), relative_uncertainty(b));
    RC_ASSERT(near(relative_uncertainty(product(a, b)), r));
    RC_ASSERT(near(relative_uncertainty(quotient(a, b)), r));
    RC_ASSERT(near(quotient(product(a, b), exact(b.value)).value, a.value));
  });
}

TEST_CASE("a faulty amount is told apart") {
  CHECK_FALSE(fault_of(exact(-3)));
  CHECK(fault_of(exact(std::nan("")))->what == Say::not_a_number);
  CHECK(fault_of(exact(infinite))->what == Say::not_a_number);
  CHECK(fault_of(Amount{1, std::nan(""), {}})->what == Say::not_a_number);
  CHECK(fault_of({1, 0, {{"scale", infinite}}})->what == Say::not_a_number);
  CHECK(fault_of(Amount{1, -1, {}})->what == Say::negative_amount);
}

TEST_CASE("a bottle weighed: what was counted is split so that the sum is the weighing") {
  holds("sum and uncertainty are the weighing's", [] {
    std::vector<Amount> counted;
    const int n = *rc::gen::inRange(1, 12);
    for (int i = 0; i < n; ++i)
      counted.push_back({between(0, 5), between(0.001, 1), {{"dropper", between(0, 1)}}});
    const Amount weighed{between(0, 40), 0, {{"bottle", 0.04}}};
    const auto after = split(weighed, counted);
    RC_ASSERT(after.has_value());
    Amount sum;
    for (const Amount& a : *after) sum = sum + a;
    RC_ASSERT(near(sum.value, weighed.value));
    RC_ASSERT(near(uncertainty(sum), 0.04));
  });
  holds("equal drops share equally", [] {
    const Amount drop{between(0.01, 1), between(0.0001, 0.1), {{"dropper", between(0, 0.5)}}};
    const auto after = split({between(0, 10), 0, {{"b", 0.1}}}, {drop, drop, drop});
    RC_ASSERT(near((*after)[0].value, (*after)[2].value));
  });
}

TEST_CASE("a lost count takes what the drops cannot explain") {
  // 2 g counted well, then the count was lost; the bottle lost 3 g.
  const Amount drops{2, 0, {{"dropper", 0.02}}};
  const Amount lost = *lost_count(2);
  CHECK(uncertainty(lost) == doctest::Approx(0.3));
  CHECK(uncertainty(*lost_count(0)) == doctest::Approx(0.15));
  const auto after = *split({3, 0, {{"bottle", 0.04}}}, {drops, lost});
  CHECK(after[0].value == doctest::Approx(2).epsilon(0.01));
  CHECK(after[1].value == doctest::Approx(1).epsilon(0.01));
  CHECK(split({3, 0, {}}, {exact(2), exact(1)})->at(0).value == 2);
  CHECK(split({3, 0, {}}, {exact(1), exact(1)})->at(0).value == 1.5);
  CHECK(split({3, 0, {}}, {}).error().what == Say::nothing_counted);
  CHECK(split({3, 0, {}}, {exact(0)}).error().what == Say::nothing_counted);
  CHECK(split({3, 0, {}}, {exact(std::nan(""))}).error().what == Say::not_a_number);
  CHECK(split(exact(infinite), {exact(1)}).error().what == Say::not_a_number);
  CHECK(lost_count(std::nan("")).error().what == Say::not_a_number);
  CHECK(lost_count(-1).error().what == Say::negative_amount);
  holds("the more was counted, the more a lost count may be wrong", [] {
    const double a = between(0, 50), b = between(0, 50);
    RC_ASSERT(uncertainty(*lost_count(std::max(a, b))) >= uncertainty(*lost_count(std::min(a, b))));
  });
}

TEST_CASE("a weighed difference") {
  CHECK(weighed_difference(80, 78.6, "b")->value == doctest::Approx(1.4));
  CHECK(weighed_difference(80, 80, "b")->value == 0);
  CHECK(weighed_difference(80, 80.1, "b").error().what == Say::bottle_gained);
  CHECK(weighed_difference(-1, 0, "b").error().what == Say::negative_amount);
  CHECK(weighed_difference(std::nan(""), 0, "b").error().what == Say::not_a_number);
  CHECK(weighed_difference(100001, 0, "b").error().what == Say::amount_too_large);
  CHECK(weighed_difference(infinite, 0, "b").error().what == Say::amount_too_large);
  CHECK(weighed_difference(80, 70, "b", 0).error().what == Say::measure_not_positive);
  holds("two weighings of one bottle in a row add up", [] {
    const double full = between(50, 100), half = between(20, 50), empty = between(0, 20);
    const double first = weighed_difference(full, half, "1")->value;
    RC_ASSERT(near(first + weighed_difference(half, empty, "2")->value,
                   weighed_difference(full, empty, "3")->value));
  });
}

TEST_CASE("the jar weighed narrows every part and never widens one") {
  holds("given their sum", [] {
    std::vector<Amount> parts;
    const int n = *rc::gen::inRange(1, 6);
    Amount before;
    for (int i = 0; i < n; ++i) {
      parts.push_back(any_amount());
      before = before + parts.back();
    }
    const double u = between(0.01, 3);
    const double off = between(-3, 3) * std::hypot(uncertainty(before), u);
    const auto after = given_sum(parts, {before.value + off, u * u, {}}, "jar");
    RC_ASSERT(after.has_value());
    Amount sum;
    for (int i = 0; i < n; ++i) {
      RC_ASSERT(uncertainty((*after)[i]) <= uncertainty(parts[i]) + 1e-9);
      sum = sum + (*after)[i];
    }
    // The sum is what one weighing and one count make of one number.
    const double s = std::pow(uncertainty(before), 2), r = u * u;
    RC_ASSERT(near(sum.value, before.value + off * s / (s + r)));
    RC_ASSERT(near(std::pow(uncertainty(sum), 2), s * r / (s + r)));
  });
  holds("the order of the parts does not matter", [] {
    const Amount a = any_amount(), b = any_amount();
    const Amount jar{(a + b).value + 0.1, 0.5, {}};
    RC_ASSERT(same(given_sum({a, b}, jar, "jar")->at(0), given_sum({b, a}, jar, "jar")->at(1)));
  });
}

TEST_CASE("a jar that cannot be, or says nothing new") {
  const Amount part{10, 1, {}};
  CHECK(given_sum({part}, {15, 0.01, {}}, "jar").error().what == Say::weighing_contradicts);
  CHECK(given_sum({part}, {13, 0.01, {}}, "jar").has_value());
  CHECK(given_sum({}, part, "jar").error().what == Say::nothing_counted);
  CHECK(given_sum({part}, exact(std::nan("")), "jar").error().what == Say::not_a_number);
  CHECK(given_sum({exact(infinite)}, part, "jar").error().what == Say::not_a_number);
  CHECK(given_sum({exact(3)}, exact(3), "jar")->at(0) == exact(3));
  CHECK(given_sum({exact(3)}, exact(4), "jar").error().what == Say::weighing_contradicts);
}

}
