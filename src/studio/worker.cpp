#include "studio/worker.hpp"

namespace studio {

Worker::Worker() : thread_([this] { run(); }) {}

Worker::~Worker() {
  {
    const std::lock_guard lock(mutex_);
    leaving_ = true;
    waiting_.clear();
  }
  something_.notify_one();
  thread_.join();
}

void Worker::give(std::function<void()> job) {
  {
    const std::lock_guard lock(mutex_);
    waiting_.push_back(std::move(job));
  }
  something_.notify_one();
}

void Worker::run() {
  for (;;) {
    std::unique_lock lock(mutex_);
    something_.wait(lock, [this] { return leaving_ || !waiting_.empty(); });
    if (leaving_) return;
    const std::function<void()> job = std::move(waiting_.front());
    waiting_.pop_front();
    lock.unlock();
    job();
  }
}

}
