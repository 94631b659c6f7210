// What the worker that learns calls, and nothing else (assets/browser/learner.js).
#include "paint/range/learn_bytes.hpp"
#include "studio/browser_answer.hpp"

#include <emscripten/emscripten.h>

extern "C" void slabside_learnt(const char* answer, int size); // studio/browser_learner.js

extern "C" EMSCRIPTEN_KEEPALIVE void learn(const char* problem, int size) {
  const std::string answer =
      studio::written_answer(paint::learn_bytes({problem, static_cast<std::size_t>(size)}));
  slabside_learnt(answer.data(), static_cast<int>(answer.size()));
}
