#include "paint/gum.hpp"

#include "random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace gum_test {

using namespace paint;
using Say = words::PaintSay;

TEST_CASE("enough gum is told by the class, silent in between and without pigment") {
  CHECK(gum_state(0.3, 1, usual_marks(PigmentClass::mineral)) == GumState::too_little);
  CHECK_FALSE(gum_state(0.4, 1, usual_marks(PigmentClass::mineral)));
  CHECK(gum_state(0.8, 1, usual_marks(PigmentClass::mineral)) == GumState::enough);
  CHECK_FALSE(gum_state(1.2, 1, usual_marks(PigmentClass::mineral)));
  CHECK(gum_state(1.5, 1, usual_marks(PigmentClass::mineral)) == GumState::too_much);
  CHECK(gum_state(0.4, 1, usual_marks(PigmentClass::organic)) == GumState::too_little);
  CHECK(gum_state(1.5, 1, usual_marks(PigmentClass::carbon)) == GumState::enough);
  CHECK_FALSE(gum_state(1, 0, usual_marks(PigmentClass::mineral)));
  CHECK_FALSE(gum_state(std::nan(""), 1, usual_marks(PigmentClass::mineral)));
}

TEST_CASE("more gum never asks for more gum") {
  const auto rank = [](std::optional<GumState> s, double share) {
    if (s) return static_cast<double>(*s);
    return share < 1 ? 0.5 : 1.5;
  };
  holds("rises", [&] {
    const double less = between(0, 3), more = less + between(0, 1);
    for (PigmentClass c : {PigmentClass::mineral, PigmentClass::organic, PigmentClass::carbon})
      RC_ASSERT(rank(gum_state(less, 1, usual_marks(c)), less) <=
                    rank(gum_state(more, 1, usual_marks(c)), more) ||
                gum_state(less, 1, usual_marks(c)) == gum_state(more, 1, usual_marks(c)));
  });
}

TEST_CASE("verdicts move the limit they speak of, few of them little, and the other one not") {
  const GumMarks usual = usual_marks(PigmentClass::mineral);
  CHECK(marks_after(usual, {}) == usual);
  const std::vector<GumVerdict> one{{GumVerdict::rubs_off, 0.5}};
  const GumMarks after_one = marks_after(usual, one);
  CHECK(after_one.enough_from > usual.enough_from * 1.02);
  CHECK(after_one.enough_from < usual.enough_from * 1.2);
  CHECK(after_one.much == doctest::Approx(usual.much));
  const GumMarks after_ten = marks_after(usual, std::vector<GumVerdict>(10, one[0]));
  CHECK(after_ten.enough_from > 0.5);
  CHECK(after_ten.enough_from < 0.9);
  CHECK(after_ten.enough_from / after_ten.little ==
        doctest::Approx(usual.enough_from / usual.little));
  const GumMarks cracks = marks_after(usual, {{GumVerdict::too_much, 1.0}});
  CHECK(cracks.much < usual.much);
  CHECK(cracks.little == doctest::Approx(usual.little));
  const GumMarks good = marks_after(usual, {{GumVerdict::holds, 0.3}});
  CHECK(good.little < usual.little);
}

TEST_CASE("one good verdict does not take the warning away from leaner paint, several do") {
  const GumMarks usual = usual_marks(PigmentClass::mineral);
  for (const double lean : {0.2, 0.25, 0.3, 0.33}) {
    CAPTURE(lean);
    const auto good = [&](std::size_t times) {
      return marks_after(usual, std::vector<GumVerdict>(times, {GumVerdict::holds, lean}));
    };
    CHECK(gum_state(lean, 1, good(1)) == GumState::too_little);
    CHECK(good(1).little > 0.95 * usual.little);
    CHECK(good(10).little < 0.8 * usual.little);
  }
  const GumMarks rich = marks_after(usual, {{GumVerdict::holds, 1.6}});
  CHECK(gum_state(1.6, 1, rich) == GumState::too_much);
  CHECK(
      gum_state(0.3, 1, marks_after(usual, std::vector<GumVerdict>(8, {GumVerdict::holds, 0.3}))) !=
      GumState::too_little);
}

TEST_CASE("one verdict that contradicts many others is taken for another's fault") {
  const GumMarks usual = usual_marks(PigmentClass::mineral);
  std::vector<GumVerdict> verdicts(12, {GumVerdict::holds, 0.6});
  const GumMarks before = marks_after(usual, verdicts);
  verdicts.push_back({GumVerdict::rubs_off, 1.0});
  CHECK(marks_after(usual, verdicts).enough_from < before.enough_from * 1.05);
}

TEST_CASE("verdicts without sense or against each other leave the marks in order") {
  const GumMarks usual = usual_marks(PigmentClass::organic);
  CHECK(marks_after(usual, {{GumVerdict::rubs_off, 0}, {GumVerdict::too_much, std::nan("")}}) ==
        usual);
  std::vector<GumVerdict> verdicts(50, {GumVerdict::rubs_off, 2.5});
  verdicts.insert(verdicts.end(), 50, {GumVerdict::too_much, 0.3});
  const GumMarks m = marks_after(usual, verdicts);
  CHECK(m.little < m.enough_from);
  CHECK(m.enough_from <= m.enough_to * (1 + 1e-12));
  CHECK(m.enough_to < m.much);
}

// An independent sum, by Simpson's rule over eight sds, of one verdict on the lower limit.
TEST_CASE("the grid agrees with a finer integral") {
  const GumMarks usual = usual_marks(PigmentClass::mineral);
  const double limit = std::log(usual.little * usual.enough_from) / 2, at = std::log(0.5);
  const int n = 20000;
  const double low = -2, h = 4.0 / n;
  double mass = 0, sum = 0;
  for (int i = 0; i <= n; ++i) {
    const double off = low + i * h;
    const double p = 1 / (1 + std::exp((at - limit - off) / 0.15));
    const double weight = (i == 0 || i == n ? 1
                           : i % 2          ? 4
                                            : 2) *
                          std::exp(-0.5 * off * off / 0.0625) * (0.9 * p + 0.05);
    mass += weight;
    sum += weight * off;
  }
  const GumMarks m = marks_after(usual, {{GumVerdict::rubs_off, 0.5}});
  CHECK(std::log(m.little / usual.little) == doctest::Approx(sum / mass).epsilon(1e-3));
}

}
