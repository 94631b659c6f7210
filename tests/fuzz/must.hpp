// What a fuzzer holds of every input. A fuzzer finds crashes by itself; these are the wrong
// answers.
#pragma once

#include <cstdio>
#include <cstdlib>

namespace fuzz {

inline void must(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "== does not hold: %s\n", what);
  std::abort();
}

}
