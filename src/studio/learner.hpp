// Fits the range away from the thread that draws: bytes in, bytes out, one problem after the other.
#pragma once

#include "studio/worker.hpp"
#include "words/error.hpp"

#include <deque>
#include <functional>
#include <mutex>
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
  bool is_busy() const { return under_way_ > 0; }

private:
  const std::function<void()> wake_;
  int under_way_ = 0; // given, and not yet polled
  std::mutex mutex_;  // over the next
  std::deque<Result> results_;
  Worker worker_; // last: its jobs use the others
};

}
