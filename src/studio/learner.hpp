// Fits the range away from whoever draws: bytes in, bytes out, one problem after the other. On a
// thread, or in a browser in a worker of its own (assets beside the page: learner.js).
#pragma once

#include "words/error.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace studio {

class Learner {
public:
  using Result = words::Result<std::string>; // as paint::learn_bytes

  // `wake` is called, perhaps on another thread, when poll() has something.
  explicit Learner(std::function<void()> wake);

  void give(std::string problem);
  std::optional<Result> poll(); // the results in order, each once
  bool is_busy() const;

  static void failed(const std::string& why); // in a browser: its worker broke down

private:
  struct Work;
  std::shared_ptr<Work> work_;
};

}
