#include "faults/perishable.hpp"

#include <algorithm>
#include <cerrno>

namespace faults {

namespace {

using disk::Done;
using Random = std::mt19937;

bool coin(Random& random) { return random() % 2 == 0; }

constexpr std::size_t block = 64; // small, so that a line spans several

// The bytes that were never forced, as some disk may have them: same length at most.
std::string harmed(std::string bytes, Random& random, Harm harm) {
  const std::size_t cut = random() % (bytes.size() + 1);
  if (coin(random)) bytes.resize(cut);
  if (harm == Harm::torn || coin(random)) return bytes;
  for (std::size_t at = 0; at < bytes.size(); at += block) {
    const auto from = bytes.begin() + static_cast<std::ptrdiff_t>(at);
    const auto to = bytes.begin() + static_cast<std::ptrdiff_t>(std::min(at + block, bytes.size()));
    const auto fate = random() % 4;
    if (fate == 0) std::fill(from, to, '\0');
    if (fate == 1) std::generate(from, to, [&] { return static_cast<char>(random() % 256); });
  }
  return bytes;
}

const Path& path_of(const Path& folder) { return folder; }
template <class File>
const Path& path_of(const std::pair<const Path, File>& file) {
  return file.first;
}

template <class Names>
Names children(const Names& names, const Path& folder) {
  Names found;
  for (const auto& entry : names)
    if (path_of(entry) != folder && path_of(entry).parent_path() == folder) found.insert(entry);
  return found;
}

// The names of one folder become safe: those that are there, and that the others are not.
template <class Names>
void make_safe(Names& safe, const Names& now, const Path& folder) {
  for (const auto& before : children(safe, folder)) safe.erase(path_of(before));
  const Names there = children(now, folder);
  safe.insert(there.begin(), there.end());
}

}

class Computer::Calls final : public disk::Files {
public:
  Calls(Computer& computer, Who who) : it_(computer), who_(who) {}

  Done make_folder(const Path& folder) override {
    std::unique_lock lock(it_.mutex_);
    const Fate fate = it_.fate(who_, lock);
    if (!fate.happens) return {fate.code};
    if (!it_.folders_.count(folder.parent_path())) return {ENOENT};
    if (it_.files_.count(folder) || !it_.folders_.insert(folder).second) return {EEXIST};
    return {fate.code};
  }

  disk::Opened open_new(const Path& file) override {
    std::unique_lock lock(it_.mutex_);
    const Fate fate = it_.fate(who_, lock);
    if (!fate.happens) return {fate.code, -1};
    if (!it_.folders_.count(file.parent_path())) return {ENOENT, -1};
    if (it_.folders_.count(file) || it_.files_.count(file)) return {EEXIST, -1};
    opened_.push_back(it_.files_[file] = std::make_shared<File>());
    return {fate.code, static_cast<int>(opened_.size()) - 1};
  }

  // One that fails has written the first half, as a full disk does.
  Done write(int handle, std::string_view bytes) override {
    std::unique_lock lock(it_.mutex_);
    const Fate fate = it_.fate(who_, lock);
    if (!it_.power_ && !fate.happens) return {fate.code};
    opened_.at(static_cast<std::size_t>(handle))->bytes +=
        bytes.substr(0, fate.happens ? bytes.size() : bytes.size() / 2);
    return {fate.code};
  }

  Done force(int handle) override {
    std::unique_lock lock(it_.mutex_);
    if (const int code = it_.fate(who_, lock).code) return {code};
    File& file = *opened_.at(static_cast<std::size_t>(handle));
    file.forced = file.bytes.size();
    return {};
  }

  Done force_folder(const Path& folder) override {
    std::unique_lock lock(it_.mutex_);
    if (const int code = it_.fate(who_, lock).code) return {code};
    if (!it_.folders_.count(folder)) return {ENOENT};
    make_safe(it_.safe_files_, it_.files_, folder);
    make_safe(it_.safe_folders_, it_.folders_, folder);
    return {};
  }

  disk::Sized size_under(int handle, const Path& file) override {
    const std::lock_guard lock(it_.mutex_);
    if (!it_.power_) return {EIO, 0};
    const auto named = it_.files_.find(file);
    const FileRef& open = opened_.at(static_cast<std::size_t>(handle));
    if (named == it_.files_.end() || named->second != open) return {ESTALE, 0};
    return {0, open->bytes.size()};
  }

  void close(int handle) override { opened_.at(static_cast<std::size_t>(handle)).reset(); }

  Done rename(const Path& from, const Path& to) override {
    std::unique_lock lock(it_.mutex_);
    const Fate fate = it_.fate(who_, lock);
    if (!fate.happens) return {fate.code};
    const auto found = it_.files_.extract(from);
    if (found.empty()) return {ENOENT};
    it_.files_[to] = found.mapped();
    return {fate.code};
  }

  Done remove(const Path& file) override {
    std::unique_lock lock(it_.mutex_);
    const Fate fate = it_.fate(who_, lock);
    if (!fate.happens) return {fate.code};
    if (it_.files_.erase(file) == 0) return {ENOENT};
    return {fate.code};
  }

  disk::Listed list(const Path& folder) override {
    const std::lock_guard lock(it_.mutex_);
    if (!it_.power_) return {EIO, {}, {}};
    if (!it_.folders_.count(folder)) return {ENOENT, {}, {}};
    disk::Listed listed;
    for (const auto& [path, file] : children(it_.files_, folder))
      listed.names.push_back(path.filename().string());
    return listed;
  }

  disk::Sized size(const Path& file) override {
    const std::lock_guard lock(it_.mutex_);
    if (!it_.power_) return {EIO, 0};
    const auto found = it_.files_.find(file);
    if (found == it_.files_.end()) return {ENOENT, 0};
    return {0, found->second->bytes.size()};
  }

  disk::Bytes read(const Path& file) override {
    const std::lock_guard lock(it_.mutex_);
    if (!it_.power_) return {EIO, {}};
    const auto found = it_.files_.find(file);
    if (found == it_.files_.end()) return {ENOENT, {}};
    return {0, found->second->bytes};
  }

  disk::Bytes read_piece(const Path& file, std::uint64_t at, std::size_t most) override {
    disk::Bytes all = read(file);
    if (all.code == 0) all.bytes = all.bytes.substr(std::min(at, all.bytes.size()), most);
    return all;
  }

private:
  Computer& it_;
  const Who who_;
  std::vector<FileRef> opened_; // by handle; null when closed
};

std::unique_ptr<disk::Files> Computer::files(Who who) {
  return std::make_unique<Calls>(*this, who);
}

Computer::Fate Computer::fate(Who who, std::unique_lock<std::mutex>& lock) {
  changed_.wait(lock, [this] { return !held_; });
  if (!power_) return {false, EIO};
  const int n = ++changes_[who];
  const auto cut = cut_.find(who);
  if (cut != cut_.end() && n == cut->second) {
    power_ = false;
    return {true, EIO};
  }
  const Outage& outage = outages_[who];
  if (n >= outage.from && n < outage.to) return {false, outage.code};
  return {};
}

void Computer::outage(Who who, int nth, int changes, int code) {
  const std::lock_guard lock(mutex_);
  const int from = changes_[who] + nth;
  outages_[who] = {from, from + changes, code};
}

void Computer::hold() {
  const std::lock_guard lock(mutex_);
  held_ = true;
}

void Computer::let_go() {
  const std::lock_guard lock(mutex_);
  held_ = false;
  changed_.notify_all();
}

void Computer::cut_at(Who who, int nth) {
  const std::lock_guard lock(mutex_);
  cut_[who] = changes_[who] + nth;
}

bool Computer::has_power() {
  const std::lock_guard lock(mutex_);
  return power_;
}

int Computer::changes(Who who) {
  const std::lock_guard lock(mutex_);
  return changes_[who];
}

std::unique_ptr<Computer> Computer::after_power_cut(std::uint32_t seed, Harm harm) {
  const std::lock_guard lock(mutex_);
  Random random(seed);
  auto next = std::make_unique<Computer>();
  std::set<Path> folders = folders_;
  folders.insert(safe_folders_.begin(), safe_folders_.end());
  for (const Path& folder : folders) // parents come before what lies in them
    if (next->folders_.count(folder.parent_path()) && (safe_folders_.count(folder) || coin(random)))
      next->folders_.insert(folder);

  std::set<Path> names;
  for (const auto& [path, file] : files_) names.insert(path);
  for (const auto& [path, file] : safe_files_) names.insert(path);
  std::map<FileRef, FileRef> kept; // a file may have two names
  for (const Path& name : names) {
    const auto now = files_.find(name), safe = safe_files_.find(name);
    const FileRef as_now = now == files_.end() ? nullptr : now->second;
    const FileRef as_safe = safe == safe_files_.end() ? nullptr : safe->second;
    const FileRef file = coin(random) ? as_now : as_safe;
    if (!file || !next->folders_.count(name.parent_path())) continue;
    FileRef& copy = kept[file];
    if (!copy) {
      const std::string rest = harmed(file->bytes.substr(file->forced), random, harm);
      copy = std::make_shared<File>(File{file->bytes.substr(0, file->forced) + rest, 0});
      copy->forced = copy->bytes.size();
    }
    next->files_[name] = copy;
  }
  next->safe_files_ = next->files_;
  next->safe_folders_ = next->folders_;
  return next;
}

std::map<std::string, std::string> Computer::folder(const Path& path) {
  const std::lock_guard lock(mutex_);
  std::map<std::string, std::string> found;
  for (const auto& [name, file] : children(files_, path))
    found[name.filename().string()] = file->bytes;
  return found;
}

}
