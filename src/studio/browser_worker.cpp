#include "studio/worker.hpp"

#include <emscripten/emscripten.h>

#include <deque>

namespace studio {

// One job, and then whatever else the page has to do.
struct Worker::Jobs {
  std::deque<std::function<void()>> waiting;

  using Shared = std::shared_ptr<Jobs>;

  static void next_of(const Shared& jobs) { emscripten_async_call(run_one, new Shared(jobs), 0); }
  static void run_one(void* given) {
    const std::unique_ptr<Shared> jobs(static_cast<Shared*>(given));
    auto& waiting = (*jobs)->waiting;
    if (waiting.empty()) return; // the worker is gone
    const std::function<void()> job = std::move(waiting.front());
    job();
    waiting.pop_front(); // only now, so that what a job gives waits its turn
    if (!waiting.empty()) next_of(*jobs);
  }
};

Worker::Worker() : jobs_(std::make_shared<Jobs>()) {}

Worker::~Worker() { jobs_->waiting.clear(); }

void Worker::give(std::function<void()> job) {
  jobs_->waiting.push_back(std::move(job));
  if (jobs_->waiting.size() == 1) Jobs::next_of(jobs_);
}

void do_both(const std::function<void()>& one, const std::function<void()>& other) {
  one();
  other();
}

}
