// A thread for what takes longer than a frame. Jobs run one after the other, in the order given.
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

namespace studio {

class Worker {
public:
  // Throws std::system_error where the system gives no thread.
  Worker();
  Worker(const Worker&) = delete;
  Worker& operator=(const Worker&) = delete;
  ~Worker(); // ends the job under way; those that wait are dropped

  // A job must not throw, and touches only what nobody else does, or locks it.
  void give(std::function<void()> job);

private:
  void run();

  std::mutex mutex_; // over the next two
  std::deque<std::function<void()>> waiting_;
  bool leaving_ = false;
  std::condition_variable something_;
  std::thread thread_; // last: it starts when all the others are there
};

}
