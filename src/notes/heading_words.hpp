// Words that stand over columns, in English and German.
#pragma once

#include "notes/columns.hpp"

namespace notes {

struct Heading {
  std::optional<Role> role; // what its column holds
  std::optional<Role> of;   // pigment or liquid, the amounts of it too
  bool amounts = false;     // a word says so: "Pigment amount", "Bindermenge"
  bool whole = false;       // of all of the paint
  Unit unit = Unit::none;
  std::string number; // "2" of "Pigment 2", "b" of "Pigment B"; of several none
  std::string rest;   // without the words for amounts: "cobalt" of "Cobalt (g)" and "Cobaltmenge"
};
Heading heading_in(std::string_view text);

// What a heading says its column holds; absent where it says nothing that is known.
std::optional<Role> role_in(std::string_view heading);

}
