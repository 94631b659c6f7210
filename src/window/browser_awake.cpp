#include "window/awake.hpp"

#include <emscripten/emscripten.h>

#include <cstdlib>
#include <optional>

extern "C" void slabside_keep_awake(int awake); // browser_page.js: W3C Screen Wake Lock

namespace window {

namespace {
std::function<void(const std::string&)>& refused() {
  static std::function<void(const std::string&)> told;
  return told;
}
}

struct Awake::Asker {
  bool awake = false;
};

Awake::Awake(std::string, std::function<void(const std::string& answer)> told)
    : asker_(std::make_unique<Asker>()) {
  refused() = std::move(told);
}

Awake::~Awake() {
  keep(false);
  refused() = {};
}

void Awake::keep(bool awake) {
  if (awake == std::exchange(asker_->awake, awake)) return;
  slabside_keep_awake(awake);
}

}

extern "C" EMSCRIPTEN_KEEPALIVE void slabside_may_sleep(char* why) {
  const std::string answer = why;
  std::free(why);
  if (const auto once = std::exchange(window::refused(), {})) once(answer);
}
