// Dates as people and spreadsheets write them. Pure.
#pragma once

#include "words/error.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

namespace notes {

enum class DateOrder { unknown, day_first, month_first };

// Of all dates of a column that tell; unknown where none does, or they contradict each other.
DateOrder date_order_of(const std::vector<std::string_view>& cells);

// Days since 1970: 2019-04-03, 3.4.2019, 3. April 2019, Apr 3, 2019, 3/4/19, or the bare number of
// days by which spreadsheets count. With points the day stands first. Errors: date_none,
// date_two_ways for 3/4/2019 in no known order.
words::Result<std::int64_t> date_in(std::string_view cell, DateOrder order);

}
