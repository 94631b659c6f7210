#include "paint/amount.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace amount_test {

using namespace paint;

namespace {

Amount with_share(double value, double share) { return {value, 0, {{"dropper", share}}}; }

}

TEST_CASE("an exact amount has no uncertainty") {
  CHECK(uncertainty(exact(3)) == 0);
  CHECK(relative_uncertainty(exact(3)) == 0);
  CHECK(relative_uncertainty({0, 4, {}}) == 0);
}

TEST_CASE("own scatter adds by squares, one tool's error by value, different tools by squares") {
  const Amount scatter{1, 9, {}};
  CHECK(uncertainty(scatter + Amount{1, 16, {}}) == doctest::Approx(5));
  CHECK(uncertainty(with_share(1, 3) + with_share(1, 4)) == doctest::Approx(7));
  const Amount other{1, 0, {{"spoon", 4}}};
  CHECK(uncertainty(with_share(1, 3) + other) == doctest::Approx(5));
}

TEST_CASE("a tool's error cancels in a difference and in a ratio, its own scatter does not") {
  CHECK(uncertainty(with_share(5, 1) - with_share(3, 1)) == doctest::Approx(0));
  CHECK((with_share(5, 1) - with_share(3, 1)).value == 2);
  CHECK(uncertainty(quotient(with_share(10, 1), with_share(20, 2))) == doctest::Approx(0));
  CHECK(uncertainty(Amount{5, 9, {}} - Amount{3, 16, {}}) == doctest::Approx(5));
}

TEST_CASE("scaling by a negative factor turns the sign of the share, not of the uncertainty") {
  const Amount a = scaled({2, 1, {{"scale", 0.5}}}, -3);
  CHECK(a.value == -6);
  CHECK(a.variance == 9);
  CHECK(a.shares.at("scale") == -1.5);
  CHECK(uncertainty(a) == doctest::Approx(std::sqrt(9 + 2.25)));
}

TEST_CASE("product and quotient follow finite differences") {
  // The first-order rule is a derivative: 1e-6 steps give it to about 1e-6 of itself.
  const Amount a{3, 0, {{"a", 0.3}}};
  const Amount b{7, 0, {{"b", 0.2}}};
  const double h = 1e-6;
  const double product_a = ((3 + h) * 7 - 21) / h * 0.3;
  const double quotient_b = (3 / (7 + h) - 3.0 / 7) / h * 0.2;
  CHECK(product(a, b).shares.at("a") == doctest::Approx(product_a).epsilon(1e-5));
  CHECK(quotient(a, b).shares.at("b") == doctest::Approx(quotient_b).epsilon(1e-5));
  CHECK(quotient(a, b).value == doctest::Approx(3.0 / 7));
}

TEST_CASE("a quotient by nothing is not finite, not-a-number stays so") {
  CHECK_FALSE(std::isfinite(quotient(exact(1), exact(0)).value));
  CHECK(std::isnan((exact(std::nan("")) + exact(1)).value));
  CHECK(std::isnan(relative_uncertainty({1, std::nan(""), {}})));
}

}
