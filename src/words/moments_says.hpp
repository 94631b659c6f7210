// What is said of moments.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class MomentsSay {
  date_time,
  date, // 0: day, 1: month, 2: year
  month_names,
};

constexpr Table table_of(MomentsSay) { return Table::moments; }

std::string_view english(MomentsSay id);

}
