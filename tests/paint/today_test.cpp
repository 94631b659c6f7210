#include "paint/today.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

using namespace paint;

namespace {

Band guess() {
  Band band;
  band.middle = std::log(2.4);
  band.sd = 0.48;
  return band;
}

}

TEST_CASE("no note, or one that cannot be, changes nothing") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  for (const std::vector<Reading>& notes :
       {std::vector<Reading>{}, {{0, 2}}, {{-1, 2}}, {{nan, 2}}, {{2, 5}}, {{2, -1}}}) {
    const Band now = after(guess(), notes);
    CHECK(std::abs(now.middle - guess().middle) < 1e-12);
    CHECK(std::abs(now.sd - guess().sd) < 1e-4); // the grid ends at five sd
  }
}

TEST_CASE("sticky moves the range up, loose down, right to where it was felt") {
  CHECK(after(guess(), {{2.4, 1}}).middle > guess().middle + 0.1);
  CHECK(after(guess(), {{2.4, 3}}).middle < guess().middle - 0.1);
  CHECK(after(guess(), {{2.4, 0}}).middle > after(guess(), {{2.4, 1}}).middle);
  CHECK(after(guess(), {{2.4, 4}}).middle < after(guess(), {{2.4, 3}}).middle);
  CHECK(std::abs(after(guess(), {{1.9, 2}}).middle - std::log(1.9)) < 0.05);
}

TEST_CASE("two notes on either side close in on the range") {
  const Band now = after(guess(), {{1.9, 1}, {2.9, 3}});
  CHECK(now.middle > std::log(1.9));
  CHECK(now.middle < std::log(2.9));
  CHECK(now.sd < 0.12);
}

TEST_CASE("a slip does not throw the range away") {
  const Band steady = after(guess(), {{2.4, 2}, {2.4, 2}, {2.4, 2}});
  const Band slipped = after(guess(), {{2.4, 2}, {2.4, 2}, {2.4, 2}, {2.4, 4}});
  CHECK(std::abs(slipped.middle - steady.middle) < 0.1);
}

// An independent sum: Simpson's rule, 20,001 points on eight sd, for one note "right".
TEST_CASE("the grid agrees with a finer integral") {
  const Band b = guess();
  const double x = 0.2; // ln flow less the prior's middle
  const auto likely = [&](double off) {
    const auto f = [&](double e) { return 1 / (1 + std::exp(-(e - (x - off)) / b.slope)); };
    return std::exp(-0.5 * off * off / (b.sd * b.sd)) * (0.95 * (f(0.12) - f(-0.12)) + 0.01);
  };
  const int n = 20000;
  const double lo = -8 * b.sd, h = 16 * b.sd / n;
  double mass = 0, first = 0, second = 0;
  for (int i = 0; i <= n; ++i) {
    const double off = lo + i * h;
    const double w = (i == 0 || i == n ? 1 : i % 2 ? 4 : 2) * likely(off);
    mass += w;
    first += w * off;
    second += w * off * off;
  }
  const double middle = first / mass;
  const double sd = std::sqrt(second / mass - middle * middle);
  const Band now = after(b, {{std::exp(b.middle + x), 2}});
  CHECK(std::abs(now.middle - b.middle - middle) < 1e-4);
  CHECK(std::abs(now.sd - sd) < 1e-4);
}

TEST_CASE("a thousand notes that contradict each other still give a range") {
  std::vector<Reading> notes;
  for (int i = 0; i < 1000; ++i) notes.push_back({2.4, i % 2 ? 0 : 4});
  const Band now = after(guess(), notes);
  CHECK(std::isfinite(now.middle));
  CHECK(now.sd > 0);
}
