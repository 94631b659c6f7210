// An amount as somebody noted it: "1/4 tsp", "¼ TL", "2 Tbsp", "12 drops", "3,5 g", "half a
// teaspoon", "2 bis 3 Tropfen". English and German. Pure.
#pragma once

#include "notes/number.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace notes {

enum class Unit { none, parts, g, drops, mL, teaspoon, tablespoon, tool };

// A spoon of the workshop's own, by its name.
struct Tool {
  std::string card;
  std::string key; // of its name
};

struct NotedAmount {
  double value = 0;                 // of a range its middle
  std::optional<double> up_to = {}; // of a range
  Unit unit = Unit::none;
  std::string tool = {};   // card, where the unit is one
  std::string remark = {}; // what stands behind it in brackets
  bool operator==(const NotedAmount&) const = default;
};

// How the numbers and the spoons of one column are to be read.
struct CellFormat {
  Decimal decimal = Decimal::unknown;
  std::vector<Tool> tools = {};
};

// As names are compared: in small letters without marks, blanks and signs.
std::string key_of(std::string_view text);

// A cell that says that there is none of it: empty, a dash, "none", "keine", 0.
bool says_none(std::string_view cell);

// All of a cell; absent where it says none. Errors, in the words of NotesSay: no number, no or an
// unknown unit, a heaped spoon, a pinch, percent, a negative number, something more than one
// amount.
words::Result<std::optional<NotedAmount>> amount_in(std::string_view cell,
                                                    const CellFormat& format);

// One behind the other: "3 g + 1 g"; "2 g, 1 g". Errors: as above.
words::Result<std::vector<NotedAmount>> amounts_in(std::string_view cell, const CellFormat& format);

// What a cell of names says, each with its amount if one stands beside it: "1/4 tsp white and a
// tablespoon of blue", "Ultramarin 3,5 g + 1 g Weiß", "gum 1:2". Never empty names. Errors: as
// above, for an amount that stands before a name.
struct Named {
  std::optional<NotedAmount> amount;
  std::string name;
  bool operator==(const Named&) const = default;
};
words::Result<std::vector<Named>> named_in(std::string_view cell, const CellFormat& format);

// The unit that a heading names, "Menge (g)", "binder in drops"; none for others.
Unit unit_in(std::string_view heading);

}
