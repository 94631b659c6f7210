#include "paint/digits.hpp"

#include "words/paint_says.hpp"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <limits>

namespace digits_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double endless = std::numeric_limits<double>::infinity();

Amount amount(double value, double u) { return {value, u * u, {}}; }

}

TEST_CASE("the last digit shown is within a tenth to one of the uncertainty") {
  CHECK(rc::check("one digit", [] {
    const double u = std::pow(10.0, *rc::gen::inRange(-9000, 6000) / 1000.0);
    const int decimals = *decimals_by(u, 1);
    const double place = std::pow(10.0, -decimals);
    RC_ASSERT(place > u / 9.5 * (1 - 1e-9)); // not more digits than are borne
    RC_ASSERT(place < u / 0.95 * (1 + 1e-9));
    const double fine = std::pow(10.0, -*decimals_by(u, 2));
    RC_ASSERT(fine > u / 99.5 * (1 - 1e-9));
    RC_ASSERT(fine < u / 9.95 * (1 + 1e-9));
  }));
}

TEST_CASE("a rounded uncertainty that carries loses a place") {
  CHECK(decimals_by(0.0996, 2) == 2); // 0.10
  CHECK(decimals_by(0.096, 1) == 1);  // 0.1
  CHECK(decimals_by(0.094, 1) == 2);  // 0.09
  CHECK(shown(amount(2, 0.0996))->uncertainty == "0.10");
}

TEST_CASE("large uncertainties round to tens and hundreds") {
  const Shown many = *shown(amount(123456, 5600));
  CHECK(many.value == "123500");
  CHECK(many.uncertainty == "5600");
  CHECK(many.decimals == -2);
}

TEST_CASE("uncertainties that cannot be are errors") {
  CHECK(decimals_by(none).error().what == Say::not_a_number);
  CHECK(decimals_by(endless).error().what == Say::not_a_number);
  CHECK(decimals_by(0).error().what == Say::uncertainty_not_positive);
  CHECK(decimals_by(-1).error().what == Say::uncertainty_not_positive);
  CHECK(decimals_by(1e-15).error().what == Say::uncertainty_too_small);
  CHECK(decimals_by(1, 0).error().what == Say::digits_out_of_range);
  CHECK(decimals_by(1, 3).error().what == Say::digits_out_of_range);
  CHECK(shown(amount(none, 1)).error().what == Say::not_a_number);
  CHECK(shown(exact(1)).error().what == Say::uncertainty_not_positive);
}

TEST_CASE("one drop moves the ratio that is shown, and not by more than ten of its last digits") {
  CHECK(rc::check("to one drop's worth", [] {
    const double step = *rc::gen::inRange(1000, 5000000) / 1e6;
    const double ratio = *rc::gen::inRange(0, 3000000) / 1e5;
    const int decimals = *decimals_to_step(step);
    RC_ASSERT(written(ratio, decimals) != written(ratio + step * 1.000001, decimals));
    if (decimals > 0) RC_ASSERT(step * std::pow(10.0, decimals) <= 10.0001);
  }));
  CHECK(decimals_to_step(0.001) == 3);
  CHECK(decimals_to_step(0.03) == 2);
  CHECK(decimals_to_step(4) == 0);
  CHECK(decimals_to_step(0.0009).error().what == Say::step_too_small);
  CHECK(decimals_to_step(0).error().what == Say::measure_not_positive);
  CHECK(decimals_to_step(endless).error().what == Say::not_a_number);
}

TEST_CASE("what was read is shown as it was read") {
  CHECK(written(19.5, decimals_as_read(19.5)) == "19.5");
  CHECK(written(19, decimals_as_read(19)) == "19");
  CHECK(written(0.47 * 100, decimals_as_read(0.47 * 100)) == "47");
  CHECK(written(19.25, decimals_as_read(19.25)) == "19.2"); // at most one; the even neighbour
  CHECK(decimals_as_read(none) == 0);
  CHECK(decimals_as_read(endless) == 0);
  CHECK(rc::check("to the tenth", [] {
    const int tenths = *rc::gen::inRange(-500, 1000);
    const double read = tenths / 10.0;
    RC_ASSERT(std::stod(written(read, decimals_as_read(read))) == read);
  }));
}

TEST_CASE("grams are never shown as nothing while there is something") {
  CHECK(rc::check("not 0", [] {
    const double g = std::pow(10.0, *rc::gen::inRange(-6000, 4000) / 1000.0);
    const std::string text = written(g, decimals_of_grams(g));
    RC_ASSERT(std::stod(text) > 0);
    RC_ASSERT(std::abs(std::stod(text) / g - 1) <= 0.51);
  }));
  const auto text = [](double g) { return written(g, decimals_of_grams(g)); };
  CHECK(text(0.035) == "0.04");
  CHECK(text(0.994) == "0.99");
  CHECK(text(0.996) == "1.0");
  CHECK(text(12) == "12.0");
  CHECK(text(99.96) == "100");
  CHECK(text(250) == "250");
  CHECK(text(0.004) == "0.004");
  CHECK(text(0.00096) == "0.001");
  CHECK(text(0) == "0.00");
  CHECK(text(-0.3) == "-0.30");
  CHECK(decimals_of_grams(none) == 0);
}

TEST_CASE("no more digits than the uncertainty bears, and none that a scale would not show") {
  CHECK(rc::check("grams", [] {
    const double g = std::pow(10.0, *rc::gen::inRange(-2000, 3500) / 1000.0);
    const double u = g * *rc::gen::inRange(1, 900) / 1000.0;
    const std::string text = *grams_written(amount(g, u));
    const auto point = text.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(text.size() - point) - 1;
    RC_ASSERT(decimals <= decimals_of_grams(g));
    RC_ASSERT(std::abs(std::stod(text) - g) <= std::max(0.51 * std::pow(10, -decimals), 0.53 * u));
    const Shown both = *shown(amount(g, u));
    RC_ASSERT(std::abs(std::stod(both.value) - g) <= 0.051 * u + 1e-12 * g);
    RC_ASSERT(std::abs(std::stod(both.uncertainty) - u) <= 0.051 * u);
    RC_ASSERT(both.decimals == *decimals_by(u, 2));
  }));
}

TEST_CASE("grams by their uncertainty, with two decimals below a gram") {
  CHECK(grams_written(amount(0.035, 0.007)) == "0.04"); // one small drop
  CHECK(grams_written(amount(5.83, 0.5)) == "5.8");
  CHECK(grams_written(amount(35.8, 4)) == "36");
  CHECK(grams_written(amount(12, 0.03)) == "12.0"); // the scale shows no more
  CHECK(grams_written(amount(0.8, 0.3)) == "0.80");
  CHECK(grams_written(exact(3)) == "3.0");
  CHECK(grams_written(amount(none, 1)).error().what == Say::not_a_number);
}

}
