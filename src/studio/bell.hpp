// Rung by a disk's thread, waited for by another. Copies are the same bell, so a disk may hold one
// for as long as it likes.
#pragma once

#include <chrono>
#include <condition_variable>
#include <memory>
#include <mutex>

namespace studio {

class Bell {
public:
  void ring() const {
    {
      const std::lock_guard lock(shared_->mutex);
      ++shared_->rings;
    }
    shared_->rung.notify_all();
  }

  long rings() const {
    const std::lock_guard lock(shared_->mutex);
    return shared_->rings;
  }

  // False if it did not ring again in time. Read rings() before looking whether there is anything,
  // so that no ring falls between the two.
  bool wait_past(long rings, std::chrono::steady_clock::time_point until) const {
    std::unique_lock lock(shared_->mutex);
    return shared_->rung.wait_until(lock, until, [&] { return shared_->rings > rings; });
  }

private:
  struct Shared {
    std::mutex mutex;
    std::condition_variable rung;
    long rings = 0;
  };
  std::shared_ptr<Shared> shared_ = std::make_shared<Shared>();
};

}
