#include "touch/process.hpp"

#include <fcntl.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>

namespace touch {

namespace {

[[noreturn]] void become(std::vector<std::string> words, const Environment& environment) {
  prctl(PR_SET_PDEATHSIG, SIGKILL);
  for (const auto& [name, value] : environment) setenv(name.c_str(), value.c_str(), 1);
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  execvp(pointers[0], pointers.data());
  _exit(127);
}

}

Process::Process(const std::vector<std::string>& words, const Environment& environment) {
  std::array<int, 2> out{}, err{};
  REQUIRE(pipe2(out.data(), O_CLOEXEC) == 0);
  REQUIRE(pipe2(err.data(), O_CLOEXEC) == 0);
  pid_ = fork();
  REQUIRE(pid_ >= 0);
  if (pid_ == 0) {
    dup2(out[1], STDOUT_FILENO);
    dup2(err[1], STDERR_FILENO);
    become(words, environment);
  }
  close(out[1]);
  close(err[1]);
  out_.pipe = out[0];
  err_.pipe = err[0];
  for (const int pipe : {out_.pipe, err_.pipe}) fcntl(pipe, F_SETFL, O_NONBLOCK);
}

Process::~Process() {
  if (running()) {
    kill(SIGKILL);
    waitpid(pid_, &status_, 0);
  }
  close(out_.pipe);
  close(err_.pipe);
}

const std::string& Process::read(Stream& stream) {
  std::array<char, 4096> some{};
  for (;;) {
    const ssize_t count = ::read(stream.pipe, some.data(), some.size());
    if (count <= 0) return stream.text;
    stream.text.append(some.data(), static_cast<std::size_t>(count));
  }
}

bool Process::running() {
  if (!ended_) ended_ = waitpid(pid_, &status_, WNOHANG) == pid_;
  return !ended_;
}

void Process::kill(int signal) { ::kill(pid_, signal); }

Ending Process::wait() {
  wait_until("the end of a process", [&] {
    out(); // or a full pipe would keep it
    err();
    return !running();
  });
  if (WIFSIGNALED(status_)) return {true, WTERMSIG(status_)};
  return {false, WEXITSTATUS(status_)};
}

Folder::Folder() {
  std::string name = (std::filesystem::temp_directory_path() / "touch-XXXXXX").string();
  REQUIRE(mkdtemp(name.data()) != nullptr);
  path = name;
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path, ignored);
}

}
