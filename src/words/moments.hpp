// Moments and durations, written out.
#pragma once

#include "words/calendar.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace words {

// 12:34; minutes go on past 59.
std::string minutes_seconds(double seconds);

// 14:32; 9 March, 14:32; 9 March 2026; all of a moment in ms since 1970.
std::string time_of_day(std::int64_t ms, int utc_offset_min);
std::string time_to_second(std::int64_t ms, int utc_offset_min); // 14:32:07
std::string date_and_time(std::int64_t ms, int utc_offset_min);
std::string date(std::int64_t ms, int utc_offset_min);
std::string weekday_and_date(std::int64_t ms, int utc_offset_min); // Friday 27 Nov
// As short as it is understood on the day of `now_ms`: 14:32 of that day, Tuesday of the six days
// before it, else 7 Nov, and with its year where that is another.
std::string lately(std::int64_t ms, std::int64_t now_ms, int utc_offset_min);

// "2026-11-25T15:32:00+01:00" (ISO 8601, RFC 3339), to the second it lies in. Years 0 to 9999 have
// four digits.
std::string local_time(std::int64_t ms, int utc_offset_min);

// Of such a text, 60 for that one; Z is 0. Absent where it ends otherwise, or says more than 14 h.
std::optional<int> utc_offset_in(std::string_view local_time);

}
