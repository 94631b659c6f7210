#include "studio/browser_answer.hpp"
#include "studio/learner.hpp"

#include <emscripten/emscripten.h>

#include <deque>

extern "C" worker_handle slabside_learner(); // browser_learner.js

namespace studio {

// The worker begins when there is first something to learn.
struct Learner::Work {
  std::function<void()> wake;
  std::optional<worker_handle> worker = {};
  int under_way = 0;
  std::deque<Result> results = {};

  ~Work() {
    if (worker) emscripten_destroy_worker(*worker);
  }

  static void answered(char* bytes, int size, void* given) {
    const std::unique_ptr<std::weak_ptr<Work>> of(static_cast<std::weak_ptr<Work>*>(given));
    const auto work = of->lock();
    if (!work) return;
    work->results.push_back(read_answer({bytes, static_cast<std::size_t>(size)}));
    if (work->wake) work->wake();
  }
};

Learner::Learner(std::function<void()> wake) : work_(new Work{std::move(wake)}) {}

void Learner::give(std::string problem) {
  if (!work_->worker) work_->worker = slabside_learner();
  ++work_->under_way;
  emscripten_call_worker(*work_->worker, "learn", problem.data(), static_cast<int>(problem.size()),
                         Work::answered, new std::weak_ptr<Work>(work_));
}

std::optional<Learner::Result> Learner::poll() {
  if (work_->results.empty()) return std::nullopt;
  Result result = std::move(work_->results.front());
  work_->results.pop_front();
  --work_->under_way;
  return result;
}

bool Learner::is_busy() const { return work_->under_way > 0; }

}
