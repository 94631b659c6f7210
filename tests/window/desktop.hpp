// A message bus of the test's own, with a desktop on it that keeps a list of who wants the display
// awake.
#pragma once

#include <sys/types.h>

#include <atomic>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

struct sd_bus_message;

namespace desktop {

// Every program started meanwhile finds it, this one too.
class Daemon {
public:
  Daemon();
  ~Daemon();
  Daemon(const Daemon&) = delete;
  Daemon& operator=(const Daemon&) = delete;

private:
  pid_t pid_ = -1;
};

enum class Manner { grants, refuses, never_answers };

using Calls = std::vector<std::string>;

class Desktop {
public:
  explicit Desktop(Manner manner = Manner::grants);
  ~Desktop();
  Desktop(const Desktop&) = delete;
  Desktop& operator=(const Desktop&) = delete;

  // What it was asked for, "inhibit WHO: WHY" and "release COOKIE", and "gone" where the last that
  // asked has left the bus. Waits until there are so many, or for long enough.
  Calls after(std::size_t count);

  // For the bus's library.
  Manner manner() const { return manner_; }
  std::string asker; // its name on the bus
  void note(std::string call);

private:
  const Manner manner_;
  std::mutex mutex_;
  Calls calls_;
  std::atomic<bool> ends_ = false;
  std::thread thread_;
};

}
