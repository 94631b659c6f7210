// The words in which amounts are noted, in English and German, as key_of writes them.
#pragma once

#include "notes/amount.hpp"

#include <optional>
#include <string_view>

namespace notes {

struct UnitWord {
  Unit unit = Unit::none;
  double of = 1; // so many of the unit
};
std::optional<UnitWord> unit_of(std::string_view key);

// one, two ... twelve; a half, a quarter; one and a half.
std::optional<double> number_word(std::string_view key);
std::optional<double> fraction_word(std::string_view key);

bool is_article(std::string_view key); // a, ein
bool is_about(std::string_view key);   // about, ca
bool is_level(std::string_view key);   // as spoons are meant
bool is_heaped(std::string_view key);  // or scant: as nobody knows how much it is
bool is_pinch(std::string_view key);   // an amount without a size
bool is_to(std::string_view key);      // between the ends of a range
bool is_and(std::string_view key);     // between two materials
bool is_of(std::string_view key);      // before a material
bool is_none_word(std::string_view key);

}
