#include "words/calendar.hpp"
#include "words/speaking.hpp"
#include "words/typed_date.hpp"

#include <doctest/doctest.h>

using words::WithoutYear;

namespace {

const std::int64_t today = *words::days_of("2026-11-25");

std::string last(const std::string& typed) {
  return words::typed_date(typed, today, WithoutYear::last);
}

}

TEST_CASE("a date is typed as the language has it, or as it is kept") {
  CHECK(last("2026-11-20") == "2026-11-20");
  CHECK(last("20.11.2026") == "20.11.2026"); // nothing that English knows: said, and left as it is
  const words::Speaking speaking(words::Language::german);
  CHECK(last("2026-11-20") == "2026-11-20");
  CHECK(last("20.11.2026") == "2026-11-20");
  CHECK(last("5. 3. 26") == "2026-03-05");
  CHECK(words::typed_day(words::typed_example(), today, WithoutYear::last) == today);
}

TEST_CASE("without its year a day is the last there was, or the next to come") {
  const words::Speaking speaking(words::Language::german);
  CHECK(last("25.11.") == "2026-11-25");
  CHECK(last("26.11.") == "2025-11-26");
  CHECK(last("29.2") == "2024-02-29");
  const auto next = [](const std::string& typed) {
    return words::typed_date(typed, today, WithoutYear::next);
  };
  CHECK(next("25.11.") == "2026-11-25");
  CHECK(next("24.11.") == "2027-11-24");
  CHECK(next("29.2.") == "2028-02-29");
}

TEST_CASE("what is no date stays as it was typed") {
  const words::Speaking speaking(words::Language::german);
  for (const char* typed : {"", "25", "31.2.2026", "0.11.2026", "25.13.", "1.2.3.4", "25/11/2026",
                            "25.11.20266", "November", "..", "25..2026", "-1.2.2026"}) {
    CAPTURE(typed);
    CHECK_FALSE(words::typed_day(typed, today, WithoutYear::last));
    CHECK(last(typed) == typed);
  }
}
