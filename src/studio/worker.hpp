// For what takes longer than a frame: a thread, or where there are none (a browser) the moments
// between two events. Jobs run one after the other, in the order given.
#pragma once

#include <functional>
#include <memory>

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
  struct Jobs;
  std::shared_ptr<Jobs> jobs_;
};

// Returns when both are done: at the same time, or where there is no second thread one after the
// other. They must not throw.
void do_both(const std::function<void()>& one, const std::function<void()>& other);

}
