// Words into lines: broken at spaces, then made smaller, then without what stands in brackets, then
// broken within a word; cut with an ellipsis as the last resort.
#pragma once

#include "screens/shapes.hpp"

#include <string>
#include <vector>

namespace screens {

struct Lettering {
  double cap_mm = 2.9;
  bool bold = false;
  double least_mm = 2.9; // may be made smaller down to this
};

struct Lines {
  std::vector<std::string> lines;
  double cap_mm = 0;
  bool cut = false;       // something was left out
  bool shortened = false; // what stood in brackets was
};

// At most max_lines lines (1 or more), none wider than width_mm. even: two lines are made about as
// long as each other, as a label is; else each takes what it can, as running text does.
Lines fitted(const std::string& words, double width_mm, const Lettering& lettering, int max_lines,
             bool even = true);

// One line with an ellipsis if it must.
std::string cut_to(const std::string& words, double width_mm, double cap_mm, bool bold);

}
