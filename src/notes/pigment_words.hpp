// What makers call pigments of the catalogue beside the names that it has: German, and short.
#pragma once

#include <string_view>
#include <vector>

namespace notes {

struct PigmentWord {
  std::string_view key; // as key_of has it
  std::string_view card;
};
const std::vector<PigmentWord>& pigment_words();

}
