#include "studio/learner.hpp"

#include "paint/range/learn_bytes.hpp"
#include "studio/worker.hpp"

#include <deque>
#include <mutex>

namespace studio {

struct Learner::Work {
  std::function<void()> wake;
  int under_way = 0;     // given, and not yet polled
  std::mutex mutex = {}; // over the next
  std::deque<Result> results = {};
  Worker worker = {}; // last: its jobs use the others

  void learn(const std::string& problem) {
    Result result = paint::learn_bytes(problem);
    {
      const std::lock_guard lock(mutex);
      results.push_back(std::move(result));
    }
    if (wake) wake();
  }
};

Learner::Learner(std::function<void()> wake) : work_(new Work{std::move(wake)}) {}

void Learner::give(std::string problem) {
  ++work_->under_way;
  work_->worker.give([work = work_.get(), problem = std::move(problem)] { work->learn(problem); });
}

std::optional<Learner::Result> Learner::poll() {
  const std::lock_guard lock(work_->mutex);
  if (work_->results.empty()) return std::nullopt;
  Result result = std::move(work_->results.front());
  work_->results.pop_front();
  --work_->under_way;
  return result;
}

bool Learner::is_busy() const { return work_->under_way > 0; }

}
