// What browser_*.js hands over.
#pragma once

#include <cstdlib>
#include <string>

namespace commands {

// A text that it left in the program's memory, which is freed.
inline std::string taken(char* text) {
  std::string out = text;
  std::free(text);
  return out;
}

}
