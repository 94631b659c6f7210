// What a language settles by itself.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class LanguageSay {
  tag,      // as IETF BCP 47 has it
  own_name, // what those who speak it call it
  decimal_sign,
  date_time,
  date, // 0: day, 1: month, 2: year
  month_names,
  day_names,    // of the week, from Sunday
  weekday_date, // 0: day of the week, 1: day, 2: month
  day_month,    // 0: day, 1: month
  date_typed,   // a date as people type it: digits, the year last where dots are between them
};

constexpr Table table_of(LanguageSay) { return Table::language; }

std::string_view english(LanguageSay id);

}
