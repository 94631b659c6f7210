#include "ordinal/ordinal.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace ordinal_test {

using namespace ordinal;

namespace {

OrdinalData rows(std::vector<OrdinalRow> of, int words = 3) {
  OrdinalData data;
  data.words = words;
  data.rows = std::move(of);
  return data;
}

}

TEST_CASE("rows that cannot be are named") {
  CHECK(fit_ordinal(rows({})).error() == "row 0");
  CHECK(fit_ordinal(rows({{0, {1}, {}}, {3, {1}, {}}})).error() == "row 2");
  CHECK(fit_ordinal(rows({{0, {1}, {}}, {-1, {1}, {}}})).error() == "row 2");
  CHECK(fit_ordinal(rows({{0, {1}, {}}, {1, {}, {}}})).error() == "row 2");
  CHECK(fit_ordinal(rows({{0, {1}, {0}}})).error() == "row 1");
  const double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(fit_ordinal(rows({{0, {nan}, {}}, {1, {1}, {}}})).error() == "not a number");
  CHECK(fit_ordinal(rows({{0, {1}, {}}, {2, {2}, {}}})).error() == "word 1 is never said");
}

TEST_CASE("parameters that cannot be are refused") {
  const OrdinalData data = rows({{0, {1}, {}}, {1, {2}, {}}, {2, {3}, {}}});
  CHECK(ordinal_at(data, {{1, 0}, {1}, {}}).error() == "parameters");
  CHECK(ordinal_at(data, {{0, 1}, {}, {}}).error() == "parameters");
  CHECK(ordinal_at(data, {{0}, {1}, {}}).error() == "parameters");
  CHECK(ordinal_at(data, {{0, 1}, {1}, {1}}).error() == "parameters");
}

TEST_CASE("words that a number parts without a doubt are said to be separated") {
  std::vector<OrdinalRow> parted;
  for (int i = 0; i < 12; ++i) parted.push_back({i / 4, {static_cast<double>(i)}, {}});
  const auto fit = fit_ordinal(rows(parted));
  REQUIRE(fit);
  CHECK(fit->end == OrdinalEnd::separated);
}

TEST_CASE("without anything that explains them, words keep their shares") {
  const auto fit = fit_ordinal(rows({{0, {}, {}}, {1, {}, {}}, {1, {}, {}}, {2, {}, {}}}));
  REQUIRE(fit);
  CHECK(fit->end == OrdinalEnd::found);
  CHECK(std::abs(fit->at.thresholds[0] - std::log(1.0 / 3)) < 1e-9);
  CHECK(std::abs(fit->log_likelihood - (2 * std::log(0.25) + 2 * std::log(0.5))) < 1e-9);
}

TEST_CASE("turning the words around turns the slope around") {
  std::vector<OrdinalRow> one, other;
  for (int i = 0; i < 30; ++i) {
    const int word = (i * 7 % 10 + i) / 14;
    one.push_back({word, {0.1 * i}, {}});
    other.push_back({2 - word, {0.1 * i}, {}});
  }
  const auto a = fit_ordinal(rows(one)), b = fit_ordinal(rows(other));
  REQUIRE(a);
  REQUIRE(b);
  CHECK(std::abs(a->log_likelihood - b->log_likelihood) < 1e-9);
  CHECK(std::abs(a->at.slopes[0] + b->at.slopes[0]) < 1e-6);
  CHECK(std::abs(a->at.thresholds[0] + b->at.thresholds[1]) < 1e-6);
}

}
