#include "paint/faults.hpp"

#include "paint/drying.hpp"
#include "paint/measure.hpp"
#include "random.hpp"
#include "words/paint_says.hpp"

#include <cmath>
#include <limits>

namespace faults_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const double none = std::nan("");
const double infinite = std::numeric_limits<double>::infinity();

words::Sentence what(const std::optional<words::Error>& fault) {
  return fault ? fault->what : words::Sentence{};
}

}

TEST_CASE("each number is right or wrong for one reason, and that has words") {
  holds("by its sign", [] {
    const double x = between(-10, 10);
    RC_ASSERT(what(fault_if_negative(x)) == (x < 0 ? Say::negative_amount : words::Sentence{}));
    RC_ASSERT(what(fault_if_not_positive(x)) ==
              (x > 0 ? words::Sentence{} : Say::measure_not_positive));
  });
  holds("by its range, both ends of which are right", [] {
    const double least = between(-1, 1), most = least + between(0, 2), x = between(-2, 4);
    const bool inside = x >= least && x <= most;
    RC_ASSERT(what(fault_if_no_share(x, least, most)) ==
              (inside ? words::Sentence{} : Say::not_a_share));
    RC_ASSERT(!fault_if_no_share(least, least, most));
    RC_ASSERT(!fault_if_no_share(most, least, most));
  });
  holds("by the most that is taken", [] {
    const double most = between(0, 100), x = between(-50, 150);
    const words::Sentence expected = x < 0      ? Say::negative_amount
                                     : x > most ? Say::amount_too_large
                                                : words::Sentence{};
    RC_ASSERT(what(fault_of_count(x, most)) == expected);
  });
  holds("by its length in time", [] {
    const double seconds = between(-1e9, 2e10);
    const words::Sentence expected = seconds < 0      ? Say::time_below_zero
                                     : seconds > 1e10 ? Say::time_too_long
                                                      : words::Sentence{};
    RC_ASSERT(what(fault_of_time(seconds)) == expected);
  });
  for (double bad : {none, infinite, -infinite}) {
    CHECK(what(fault_if_negative(bad)) == Say::not_a_number);
    CHECK(what(fault_if_not_positive(bad)) == Say::not_a_number);
    CHECK(what(fault_if_no_share(bad)) == Say::not_a_number);
    CHECK(what(fault_of_time(bad)) == Say::not_a_number);
  }
  CHECK(what(fault_of_count(none, 9)) == Say::not_a_number);
  CHECK(what(fault_of_count(infinite, 9)) == Say::amount_too_large);
  CHECK(words::message(*fault_if_negative(-1)).find("-1") != std::string::npos);
}

}
