#include "disk/rig.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace rig {

Folder::Folder() {
  std::string name = (std::filesystem::temp_directory_path() / "disk-XXXXXX").string();
  REQUIRE(::mkdtemp(name.data()) != nullptr);
  path = name;
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path, ignored);
}

std::string bytes_of(const Path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void put(const Path& file, const std::string& bytes) {
  std::ofstream out(file, std::ios::binary);
  out << bytes;
  REQUIRE(out.flush());
}

std::function<void()> Bell::wake() const {
  return [shared = shared_] {
    const std::lock_guard lock(shared->mutex);
    ++shared->rings;
    shared->rung.notify_all();
  };
}

long Bell::rings() const {
  const std::lock_guard lock(shared_->mutex);
  return shared_->rings;
}

void Bell::wait_past(long rings) const {
  std::unique_lock lock(shared_->mutex);
  shared_->rung.wait(lock, [&] { return shared_->rings > rings; });
}

std::vector<Answer> await(disk::Disk& disk, const Bell& bell, std::size_t count) {
  std::vector<Answer> all;
  for (;;) {
    const long rings = bell.rings();
    for (Answer& answer : disk.answers()) all.push_back(std::move(answer));
    if (all.size() >= count) return all;
    bell.wait_past(rings);
  }
}

Answer ask(disk::Disk& disk, const Bell& bell, disk::Request request) {
  const disk::Ticket ticket = disk.submit(std::move(request));
  const std::vector<Answer> answers = await(disk, bell, 1);
  REQUIRE(answers.size() == 1);
  REQUIRE(answers[0].ticket == ticket);
  return answers[0];
}

class Memory::Calls final : public disk::Files {
public:
  explicit Calls(Memory& memory) : memory_(memory) {}

  disk::Done make_folder(const Path& folder) override {
    const std::lock_guard lock(memory_.mutex_);
    if (!memory_.folders_.count(folder.parent_path())) return {ENOENT};
    return {memory_.folders_.insert(folder).second ? 0 : EEXIST};
  }
  disk::Opened open_new(const Path& file) override {
    const std::lock_guard lock(memory_.mutex_);
    if (!memory_.folders_.count(file.parent_path())) return {ENOENT, -1};
    if (!memory_.bytes_.try_emplace(file).second) return {EEXIST, -1};
    memory_.opened_.push_back(file);
    return {0, static_cast<int>(memory_.opened_.size()) - 1};
  }
  disk::Done write(int handle, std::string_view bytes) override {
    const std::lock_guard lock(memory_.mutex_);
    ++memory_.writes_;
    const std::string& file = memory_.opened_.at(static_cast<std::size_t>(handle));
    CHECK_FALSE(file.empty()); // closed before
    memory_.bytes_[file] += bytes;
    return {};
  }
  disk::Done force(int handle) override {
    std::unique_lock lock(memory_.mutex_);
    ++memory_.forces_;
    ++memory_.held_;
    memory_.changed_.notify_all();
    memory_.changed_.wait(lock, [this] { return !memory_.hold_; });
    --memory_.held_;
    const std::string& file = memory_.opened_.at(static_cast<std::size_t>(handle));
    memory_.safe_bytes_[file] = memory_.bytes_[file];
    return {};
  }
  disk::Done force_folder(const Path& folder) override {
    const std::lock_guard lock(memory_.mutex_);
    if (!memory_.folders_.count(folder)) return {ENOENT};
    for (const auto& [file, bytes] : memory_.bytes_)
      if (Path(file).parent_path() == folder) memory_.safe_names_.insert(file);
    for (const auto& below : memory_.folders_)
      if (Path(below).parent_path() == folder) memory_.safe_names_.insert(below);
    return {};
  }
  disk::Sized size_under(int handle, const Path& file) override {
    const std::lock_guard lock(memory_.mutex_);
    const auto named = memory_.bytes_.find(file);
    const bool same = memory_.opened_.at(static_cast<std::size_t>(handle)) == file &&
                      named != memory_.bytes_.end();
    if (!same) return {ESTALE, 0};
    return {0, named->second.size()};
  }
  void close(int handle) override {
    const std::lock_guard lock(memory_.mutex_);
    std::string& file = memory_.opened_.at(static_cast<std::size_t>(handle));
    CHECK_FALSE(file.empty()); // closed twice
    file.clear();
  }
  disk::Done rename(const Path& from, const Path& to) override {
    const std::lock_guard lock(memory_.mutex_);
    const auto found = memory_.bytes_.extract(from);
    if (found.empty()) return {ENOENT};
    memory_.bytes_[to] = found.mapped();
    memory_.safe_bytes_[to] = memory_.safe_bytes_[from];
    memory_.safe_bytes_.erase(from);
    return {};
  }
  disk::Done remove(const Path& file) override {
    const std::lock_guard lock(memory_.mutex_);
    return {memory_.bytes_.erase(file) == 1 ? 0 : ENOENT};
  }
  disk::Listed list(const Path& folder) override {
    const std::lock_guard lock(memory_.mutex_);
    if (!memory_.folders_.count(folder)) return {ENOENT, {}, {}};
    disk::Listed listed;
    for (const auto& [file, bytes] : memory_.bytes_)
      if (Path(file).parent_path() == folder) listed.names.push_back(Path(file).filename());
    return listed;
  }
  disk::Sized size(const Path& file) override {
    const std::lock_guard lock(memory_.mutex_);
    const auto found = memory_.bytes_.find(file);
    if (found == memory_.bytes_.end()) return {ENOENT, 0};
    return {0, found->second.size()};
  }
  disk::Bytes read(const Path& file) override {
    const std::lock_guard lock(memory_.mutex_);
    const auto found = memory_.bytes_.find(file);
    if (found == memory_.bytes_.end()) return {ENOENT, {}};
    return {0, found->second};
  }
  disk::Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    disk::Bytes all = read(file);
    if (all.code == 0) all.bytes = all.bytes.substr(std::min(at, all.bytes.size()), most);
    return all;
  }

private:
  Memory& memory_;
};

std::unique_ptr<disk::Files> Memory::files() { return std::make_unique<Calls>(*this); }

std::map<std::string, std::string> Memory::after_power_cut() {
  const std::lock_guard lock(mutex_);
  std::map<std::string, std::string> left;
  for (const auto& [file, bytes] : safe_bytes_) {
    bool reachable = true;
    for (Path name = file; name != "/"; name = name.parent_path())
      reachable = reachable && safe_names_.count(name) == 1;
    if (reachable) left[Path(file).lexically_relative("/root")] = bytes;
  }
  return left;
}

void Memory::hold_forces() {
  const std::lock_guard lock(mutex_);
  hold_ = true;
}

void Memory::let_forces_go() {
  const std::lock_guard lock(mutex_);
  hold_ = false;
  changed_.notify_all();
}

void Memory::wait_for_held_force() {
  std::unique_lock lock(mutex_);
  changed_.wait(lock, [this] { return held_ > 0; });
}

int Memory::writes() {
  const std::lock_guard lock(mutex_);
  return writes_;
}

long Memory::still_open() {
  const std::lock_guard lock(mutex_);
  return std::count_if(opened_.begin(), opened_.end(),
                       [](const std::string& file) { return !file.empty(); });
}

int Memory::forces() {
  const std::lock_guard lock(mutex_);
  return forces_;
}

}
