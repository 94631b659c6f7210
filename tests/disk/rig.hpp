// What the tests of the disk stand on: a folder to spoil, waiting for answers, and a disk in memory
// that knows what a power cut would leave.
#pragma once

#include "disk/posix.hpp"

#include <condition_variable>
#include <map>
#include <mutex>
#include <set>

namespace rig {

using disk::Answer;
using disk::Append;
using disk::ReadFolder;
using Path = std::filesystem::path;

// A new empty folder, gone again at the end.
struct Folder {
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  Path path;
};

std::string bytes_of(const Path& file);
void put(const Path& file, const std::string& bytes);

// Rung by the disk; lets a test sleep until then. Copies ring the same bell.
class Bell {
public:
  std::function<void()> wake() const;
  long rings() const;
  void wait_past(long rings) const;

private:
  struct Shared {
    std::mutex mutex;
    std::condition_variable rung;
    long rings = 0;
  };
  std::shared_ptr<Shared> shared_ = std::make_shared<Shared>();
};

// Waits for so many answers, and no longer.
std::vector<Answer> await(disk::Disk& disk, const Bell& bell, std::size_t count);
Answer ask(disk::Disk& disk, const Bell& bell, disk::Request request);

inline bool confirmed(const Answer& answer) { return answer.failures.empty(); }

// Files in memory, with the two states that matter: what a reader sees now, and what stays after
// a power cut, namely forced bytes under forced names. Its own small model, not the code's.
class Memory {
public:
  std::unique_ptr<disk::Files> files(); // one set of calls on this memory
  std::map<std::string, std::string> after_power_cut();

  void hold_forces(); // every force waits ...
  void let_forces_go();
  void wait_for_held_force();
  int writes();
  int forces();
  long still_open();

private:
  class Calls;
  std::mutex mutex_; // over all below
  std::condition_variable changed_;
  bool hold_ = false;
  int held_ = 0;
  int writes_ = 0;
  int forces_ = 0;
  std::set<std::string> folders_{"/", "/root"}, safe_names_{"/root"};
  std::map<std::string, std::string> bytes_, safe_bytes_;
  std::vector<std::string> opened_; // by handle; empty when closed
};

// The real files, every call passed on, for a test to look at some of them or to meddle with them.
class Passing : public disk::Files {
public:
  disk::Done make_folder(const Path& folder) override { return real_->make_folder(folder); }
  disk::Opened open_new(const Path& file) override { return real_->open_new(file); }
  disk::Done write(int handle, std::string_view bytes) override {
    return real_->write(handle, bytes);
  }
  disk::Done force(int handle) override { return real_->force(handle); }
  disk::Done force_folder(const Path& folder) override { return real_->force_folder(folder); }
  disk::Sized size_under(int handle, const Path& file) override {
    return real_->size_under(handle, file);
  }
  void close(int handle) override { real_->close(handle); }
  disk::Done rename(const Path& from, const Path& to) override { return real_->rename(from, to); }
  disk::Done remove(const Path& file) override { return real_->remove(file); }
  disk::Listed list(const Path& folder) override { return real_->list(folder); }
  disk::Sized size(const Path& file) override { return real_->size(file); }
  disk::Bytes read(const Path& file) override { return real_->read(file); }
  disk::Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    return real_->read_piece(file, at, most);
  }

private:
  const std::unique_ptr<disk::Files> real_ = disk::posix_files();
};

// An open disk with its bell: in memory, or in a real folder.
struct Opened {
  explicit Opened(Memory& memory) : Opened("/root", memory.files()) {}
  explicit Opened(const Path& root, std::unique_ptr<disk::Files> files = disk::posix_files())
      : disk(disk::open_disk(root, std::move(files), bell.wake())) {}

  disk::Ticket submit(disk::Request request) { return disk->submit(std::move(request)); }
  std::vector<Answer> await(std::size_t count) { return rig::await(*disk, bell, count); }
  Answer ask(disk::Request request) { return rig::ask(*disk, bell, std::move(request)); }
  // All pieces as one.
  Answer read(disk::ReadFolder folder) {
    submit(std::move(folder));
    Answer whole;
    do
      for (Answer& piece : await(1)) {
        for (auto& file : piece.files) whole.files.push_back(std::move(file));
        for (auto& failure : piece.failures) whole.failures.push_back(std::move(failure));
        whole.to_come = piece.to_come;
      }
    while (whole.to_come > 0);
    return whole;
  }

  Bell bell;
  std::unique_ptr<disk::Disk> disk;
};

}
