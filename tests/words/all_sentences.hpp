// Every sentence of every table there is.
#pragma once

#include "words/say.hpp"

#include <vector>

namespace words {

inline std::vector<Sentence> all_sentences() {
  constexpr int more_than_any_has = 1000;
  std::vector<Sentence> all;
  for (int table = 1; table <= static_cast<int>(Table::app); ++table)
    for (int row = 0; row < more_than_any_has; ++row) {
      const Sentence sentence{static_cast<Table>(table), row};
      if (!pattern(sentence).empty()) all.push_back(sentence);
    }
  return all;
}

}
