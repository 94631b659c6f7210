// The program ends without warning while the writer is at work: by exit() as a library does it, or
// killed. A child process does so; its parent then reads the file.
#include "disk/rig.hpp"

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <iostream>

using namespace rig;

namespace {

std::string line(int n) { return std::to_string(n) + " " + std::string(200, 'x') + "\n"; }

// Submits without pause, tells how many were confirmed, and dies after so many.
[[noreturn]] void tap_and_die(const Path& root, int tell, int die_after, bool killed) {
  Opened disk(root);
  int submitted = 0, confirmed = 0;
  for (;;) {
    for (int i = 0; i < 20; ++i) disk.submit(Append{"s/x", line(submitted++)});
    confirmed += static_cast<int>(disk.await(1).size());
    if (confirmed < die_after) continue;
    if (::write(tell, &confirmed, sizeof confirmed) != sizeof confirmed) ::_exit(3);
    if (killed) ::raise(SIGKILL);
    std::exit(1);
  }
}

// How many lines the dead child had been told were safe.
int run_child(const Path& root, int die_after, bool killed) {
  int ends[2];
  REQUIRE(::pipe(ends) == 0);
  std::cout.flush(); // or the child's exit() prints it a second time
  const pid_t child = ::fork();
  REQUIRE(child != -1);
  if (child == 0) tap_and_die(root, ends[1], die_after, killed);
  ::close(ends[1]);
  int confirmed = 0, status = 0;
  CHECK(::read(ends[0], &confirmed, sizeof confirmed) == sizeof confirmed);
  ::close(ends[0]);
  REQUIRE(::waitpid(child, &status, 0) == child);
  if (killed)
    CHECK(WIFSIGNALED(status));
  else
    CHECK((WIFEXITED(status) && WEXITSTATUS(status) == 1));
  return confirmed;
}

}

TEST_CASE(
    "dead in the middle: the file is the beginning of what was submitted, with all confirmed") {
  for (const bool killed : {false, true})
    for (int die_after = 1; die_after < 400; die_after += 37) {
      CAPTURE(killed);
      CAPTURE(die_after);
      Folder folder;
      const int confirmed = run_child(folder.path, die_after, killed);
      CHECK(confirmed >= die_after);
      const std::string bytes = bytes_of(folder.path / "s/x");
      std::string expected;
      int lines = 0;
      while (expected.size() < bytes.size()) expected += line(lines++);
      CHECK(expected.compare(0, bytes.size(), bytes) == 0);
      CHECK(lines >= confirmed);
      if (lines == confirmed) CHECK(expected.size() == bytes.size());
    }
}
