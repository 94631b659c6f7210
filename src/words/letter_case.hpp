// Small letters, of Latin, Greek and Cyrillic.
#pragma once

#include <string>
#include <string_view>

namespace words {

// Bytes that are not UTF-8 stay as they are.
std::string in_small_letters(std::string_view text);

// For searching: in small letters and without their marks, so that "Weißdorn", "Ocre rosé" and
// "Ω" are found however they are typed: in capitals, with the marks as letters of their own, or on
// a keyboard that has none of them (ß as ss, æ as ae). Two texts match if these do.
std::string searchable(std::string_view text);

}
