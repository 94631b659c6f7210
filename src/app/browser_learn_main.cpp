// The worker that learns beside the page.
#include "paint/range/learn_bytes.hpp"
#include "studio/browser_answer.hpp"

#include <emscripten/emscripten.h>

extern "C" EMSCRIPTEN_KEEPALIVE void learn(char* problem, int size) {
  std::string answer =
      studio::written_answer(paint::learn_bytes({problem, static_cast<std::size_t>(size)}));
  emscripten_worker_respond(answer.data(), static_cast<int>(answer.size()));
}
