#include "studio/worker.hpp"

#include <condition_variable>
#include <deque>
#include <mutex>
#include <system_error>
#include <thread>

namespace studio {

struct Worker::Jobs {
  std::mutex mutex; // over the next two
  std::deque<std::function<void()>> waiting;
  bool leaving = false;
  std::condition_variable something;
  std::thread thread{[this] { run(); }}; // last: it starts when all the others are there

  void run() {
    for (;;) {
      std::unique_lock lock(mutex);
      something.wait(lock, [this] { return leaving || !waiting.empty(); });
      if (leaving) return;
      const std::function<void()> job = std::move(waiting.front());
      waiting.pop_front();
      lock.unlock();
      job();
    }
  }
};

Worker::Worker() : jobs_(std::make_shared<Jobs>()) {}

Worker::~Worker() {
  {
    const std::lock_guard lock(jobs_->mutex);
    jobs_->leaving = true;
    jobs_->waiting.clear();
  }
  jobs_->something.notify_one();
  jobs_->thread.join();
}

void Worker::give(std::function<void()> job) {
  {
    const std::lock_guard lock(jobs_->mutex);
    jobs_->waiting.push_back(std::move(job));
  }
  jobs_->something.notify_one();
}

void do_both(const std::function<void()>& one, const std::function<void()>& other) {
  std::thread beside;
  try {
    beside = std::thread(other);
  } catch (const std::system_error&) { other(); } // the system gives none
  one();
  if (beside.joinable()) beside.join();
}

}
