#include "paint/softness.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace softness_test {

using namespace paint;
using doctest::Approx;

namespace {

const Room usual{22, 0.5};

double middle(const TackMark& mark) { return std::exp(mark.ln_middle); }

SoftMarks after(std::vector<SoftVerdict> verdicts) {
  return marks_after(usual_soft_marks(), verdicts);
}

// The mean of the mark in ln after one verdict, by summing over a grid: what updated() has in
// closed form.
double by_grid(const TackMark& mark, double index, bool too_hard) {
  double mass = 0, sum = 0;
  for (int i = -4000; i <= 4000; ++i) {
    const double ln = mark.ln_middle + 8 * mark.ln_u * i / 4000;
    const double z = (ln - mark.ln_middle) / mark.ln_u;
    const double below = 0.5 * std::erfc(-(ln - std::log(index)) / mark.ln_noise / std::sqrt(2));
    const double weight = std::exp(-z * z / 2) * (too_hard ? below : 1 - below);
    mass += weight;
    sum += weight * ln;
  }
  return sum / mass;
}

}

TEST_CASE("before any verdict hard lies between the films told in words, and sticky above") {
  const SoftMarks m = usual_soft_marks();
  CHECK(middle(m.hard) == Approx(std::sqrt(0.14 * 0.32)).epsilon(1e-5));
  CHECK(warning_mark(m.hard) == Approx(0.32).epsilon(1e-5)); // good, one in six is not
  CHECK(caution_mark(m.hard) == Approx(0.14).epsilon(1e-5));
  CHECK(soft_range(m).low == Approx(0.32).epsilon(1e-5));
  CHECK(soft_range(m).high == Approx(0.5).epsilon(1e-5));
}

TEST_CASE("a verdict moves the mark it speaks of, as Bayes's rule on a grid has it") {
  const SoftMarks m = usual_soft_marks();
  const SoftMarks hard = after({{SoftVerdict::wont_rewet, 0.3}});
  CHECK(hard.hard.ln_middle == Approx(by_grid(m.hard, 0.3, true)).epsilon(1e-4));
  CHECK(middle(hard.hard) > middle(m.hard));
  CHECK(hard.sticky == m.sticky);
  const SoftMarks holds = after({{SoftVerdict::holds, 0.15}});
  CHECK(holds.hard.ln_middle == Approx(by_grid(m.hard, 0.15, false)).epsilon(1e-4));
  CHECK(middle(holds.hard) < middle(m.hard));
  CHECK(middle(after({{SoftVerdict::holds, 0.8}}).sticky) > middle(m.sticky));
  const SoftMarks sticky = after({{SoftVerdict::sticky, 0.4}});
  CHECK(middle(sticky.sticky) < middle(m.sticky));
  CHECK(sticky.hard == m.hard);
}

TEST_CASE("a crack, which has other reasons too, teaches less than paint that would not re-wet") {
  const double before = middle(usual_soft_marks().hard);
  const double crack = middle(after({{SoftVerdict::cracked, 0.3}}).hard) - before;
  const double hard = middle(after({{SoftVerdict::wont_rewet, 0.3}}).hard) - before;
  CHECK(crack > 0);
  CHECK(crack < 0.7 * hard);
}

TEST_CASE(
    "what was to be expected teaches hardly, and one verdict does not outweigh what is known") {
  const double before = middle(usual_soft_marks().hard);
  CHECK(middle(after({{SoftVerdict::wont_rewet, 0.07}}).hard) == Approx(before).epsilon(0.03));
  CHECK(middle(after({{SoftVerdict::holds, 0.16}}).hard) > 0.14);
}

TEST_CASE("verdicts that say nothing are left out, and contradictions leave one point") {
  const double nan = std::nan(""), endless = std::numeric_limits<double>::infinity();
  for (const double index : {0.0, -1.0, nan, endless, 1000.0})
    CHECK(after({{SoftVerdict::wont_rewet, index}, {SoftVerdict::sticky, index}}) ==
          usual_soft_marks());
  std::vector<SoftVerdict> both(40, {SoftVerdict::wont_rewet, 0.9});
  both.resize(80, {SoftVerdict::sticky, 0.2});
  const SoftRange r = soft_range(after(both));
  CHECK(r.low == r.high);
  CHECK(std::isfinite(r.low));
}

TEST_CASE("a pigment may differ from its class") {
  const SoftMarks m = usual_soft_marks(), own = for_a_pigment(m);
  CHECK(own.hard.ln_middle == m.hard.ln_middle);
  CHECK(own.hard.ln_u == Approx(std::hypot(m.hard.ln_u, 0.15)));
  CHECK(middle(marks_after(own, {{SoftVerdict::wont_rewet, 0.3}}).hard) >
        middle(marks_after(m, {{SoftVerdict::wont_rewet, 0.3}}).hard));
}

// The films in words: satisfactory with 20 g of glycerin to 100 g of gum, at 50 to 57 % humidity,
// which stand at 0.30 to 0.34; too tacky with 40 g, at 0.47 to 0.53.
TEST_CASE("so much glycerin as the films had") {
  const Wet gum{.gum_g = 100};
  CHECK(*softener_g(Softener::glycerin, 0.32, gum, {25, 0.535}) == Approx(20).epsilon(0.1));
  CHECK(*softener_g(Softener::glycerin, 0.50, gum, {25, 0.535}) == Approx(40).epsilon(0.1));
}

TEST_CASE("what is to be added brings the paint there, less in damp air and none where it has it") {
  for (const Softener by : {Softener::honey, Softener::glycerin}) {
    const Wet has{.gum_g = 3, .glycerin_g = 0.1, .honey_g = 0.2};
    const double g = *softener_g(by, 0.4, has, usual);
    Wet with = has;
    (by == Softener::honey ? with.honey_g : with.glycerin_g) += g;
    CHECK(*tack_index(with, usual) == Approx(0.4).epsilon(1e-6));
    CHECK(*softener_g(by, 0.4, has, {22, 0.65}) < g);
    CHECK(*softener_g(by, 0.05, has, usual) == 0);
  }
  CHECK_FALSE(softener_g(Softener::honey, 0.4, {}, usual));
  CHECK_FALSE(softener_g(Softener::honey, 0.4, {.gum_g = 1}, {22, 0.995}));
  CHECK_FALSE(softener_g(Softener::honey, 50, {.gum_g = 1}, usual));
  CHECK_FALSE(softener_g(Softener::honey, 0.4, {.gum_g = std::nan("")}, usual));
}

}
