// A program started by a test, with what it prints; and the one way to wait for anything.
#pragma once

#include <doctest/doctest.h>
#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace touch {

using Path = std::filesystem::path;
using Environment = std::vector<std::pair<std::string, std::string>>;

// Far beyond what a loaded machine needs: it only ends a test that has failed.
inline constexpr std::chrono::seconds patience{60};

template <class Condition>
void wait_until(const std::string& what, Condition condition) {
  const auto until = std::chrono::steady_clock::now() + patience;
  while (!condition()) {
    REQUIRE_MESSAGE(std::chrono::steady_clock::now() < until, "this never came: ", what);
    std::this_thread::sleep_for(std::chrono::milliseconds(2));
  }
}

struct Ending {
  bool by_signal = false;
  int number = 0; // of the signal, or the exit status
};

class Process {
public:
  // `words[0]` is looked up as a shell would. `environment` is added to the present one. The
  // process is killed with this one, and with this object.
  explicit Process(const std::vector<std::string>& words, const Environment& environment = {});
  ~Process();
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;

  const std::string& out() { return read(out_); } // all it has printed so far
  const std::string& err() { return read(err_); }
  bool running();
  void kill(int signal);
  Ending wait(); // for its end
  pid_t pid() const { return pid_; }

private:
  struct Stream {
    int pipe = -1;
    std::string text;
  };
  static const std::string& read(Stream& stream);

  pid_t pid_ = -1;
  bool ended_ = false;
  int status_ = 0;
  Stream out_, err_;
};

// A folder of its own, gone at the end.
struct Folder {
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  Path path;
};

}
