// What is said of the ranges.
#pragma once

#include "words/sentence.hpp"

#include <string_view>

namespace words {

enum class RangesSay {
  range_wants,
  range_not_felt,
  range_note,
  range_note_back,
  range_note_on,
  range_set_aside,
  range_take_in,
  range_left_out,
  range_was,
  range_to_all,
  range_not_learnt,
  range_in_told,
  range_unfelt, // as range_in_binder
  range_in_binder,
  range_in_stronger,
  range_in_thinner,
  binder_stronger,
  binder_thinner,
};

constexpr Table table_of(RangesSay) { return Table::ranges; }

std::string_view english(RangesSay id);

}
