// Dates on cards: "2026-11-25", the proleptic Gregorian calendar.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace session {

// Days since 1970-01-01. Absent for what is no such date; years 1970 to 9999.
std::optional<std::int64_t> days_of(std::string_view date);

std::string date_of(std::int64_t days); // the same written, days from 0 to 9999-12-31

// Days since 1970 of a moment, by the clock on that wall.
std::int64_t day_of(std::int64_t ms_since_1970, int utc_offset_min);

}
