#include "studio/learner.hpp"

#include "paint/learn_bytes.hpp"

namespace studio {

Learner::Learner(std::function<void()> wake) : wake_(std::move(wake)) {}

void Learner::give(std::string problem) {
  ++under_way_;
  worker_.give([this, problem = std::move(problem)] {
    Result result = paint::learn_bytes(problem);
    {
      const std::lock_guard lock(mutex_);
      results_.push_back(std::move(result));
    }
    if (wake_) wake_();
  });
}

std::optional<Learner::Result> Learner::poll() {
  const std::lock_guard lock(mutex_);
  if (results_.empty()) return std::nullopt;
  Result result = std::move(results_.front());
  results_.pop_front();
  --under_way_;
  return result;
}

}
