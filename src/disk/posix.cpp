#include "disk/posix.hpp"

#include "disk/whole_file.hpp"

#include <algorithm>
#include <cerrno>
#include <condition_variable>
#include <csignal>
#include <deque>
#include <iterator>
#include <map>
#include <mutex>
#include <random>
#include <string_view>
#include <thread>
#include <utility>

namespace disk {
namespace {

using Path = std::filesystem::path;

struct Job {
  Ticket ticket = 0;
  Request request;
};

bool good_component(std::string_view part) { return !part.empty() && part != "." && part != ".."; }

// Not std::filesystem's view of a path: it forgives a doubled "/", and then one file has two names.
bool good_name(std::string_view name) {
  if (name.find('\0') != std::string_view::npos) return false;
  for (auto slash = name.find('/'); slash != std::string_view::npos; slash = name.find('/')) {
    if (!good_component(name.substr(0, slash))) return false;
    name.remove_prefix(slash + 1);
  }
  return good_component(name);
}

// So much at once, that an append need not wait long behind a reading.
constexpr std::size_t piece_bytes = std::size_t{1} << 20;

struct Reading {
  Ticket ticket = 0;
  Path folder;
  std::deque<std::string> names; // not read to the end yet
  std::string bytes;             // of the first of them, so far
  std::vector<Failure> failures; // not answered yet
};

// The files and what became of them. Touched by the writer thread alone, so without a lock.
class Store {
public:
  Store(Path root, std::unique_ptr<Files> files)
      : root_(std::move(root)), files_(std::move(files)) {}
  Store(const Store&) = delete;
  Store& operator=(const Store&) = delete;
  ~Store() {
    for (auto& [name, file] : kept_) close(file);
  }

  // Writes the appends, all bytes for one file together; one answer for each.
  std::vector<Answer> append(const std::vector<Job>& jobs) {
    std::map<std::string, std::string> together;
    for (const Job& job : jobs) {
      const auto& append = std::get<Append>(job.request);
      together[append.file] += append.bytes;
    }
    for (const auto& [name, bytes] : together) add(name, bytes);

    std::vector<Answer> answers;
    for (const Job& job : jobs) {
      const Kept& file = kept_[std::get<Append>(job.request).file];
      answers.push_back({job.ticket, {}, {}});
      if (file.failure) answers.back().failures.push_back(*file.failure);
    }
    return answers;
  }

  Answer keep(Ticket ticket, const Keep& wanted) {
    Answer answer{ticket, {}, {}};
    if (auto failed = keep_whole(wanted)) answer.failures.push_back(*std::move(failed));
    return answer;
  }

  // The names, to be read piece by piece.
  Reading begin_reading(Ticket ticket, const ReadFolder& wanted) {
    Reading reading{ticket, root_ / wanted.folder, {}, {}, {}};
    if (!good_name(wanted.folder)) {
      reading.failures.push_back(failure(Operation::name, wanted.folder, EINVAL));
      return reading;
    }
    Listed listed = list(reading.folder);
    if (listed.code != 0)
      reading.failures.push_back(failure(Operation::list, reading.folder, listed.code));
    std::sort(listed.names.begin(), listed.names.end());
    std::sort(listed.odd.begin(), listed.odd.end());
    for (const std::string& name : listed.odd)
      if (name.ends_with(wanted.ending))
        reading.failures.push_back(failure(Operation::not_a_file, reading.folder / name, EINVAL));
    for (std::string& name : listed.names)
      if (name.ends_with(wanted.ending) && !is_known(reading.folder / name, wanted.known))
        reading.names.push_back(std::move(name));
    return reading;
  }

  Answer read_piece(Reading& reading) {
    Answer answer{reading.ticket, std::exchange(reading.failures, {}), {}};
    for (std::size_t bytes = 0; !reading.names.empty() && bytes < piece_bytes;) {
      const Path file = reading.folder / reading.names.front();
      const Bytes read = files_->read_piece(file, reading.bytes.size(), piece_bytes);
      bytes += read.bytes.size();
      reading.bytes += read.bytes; // mostly all there is
      const auto failed = read.code != 0 ? std::optional(failure(Operation::read, file, read.code))
                                         : too_large(reading);
      if (failed)
        answer.failures.push_back(*failed);
      else if (read.bytes.size() == piece_bytes)
        continue; // there may be more of it
      else
        answer.files.push_back({std::move(reading.names.front()), std::move(reading.bytes)});
      reading.names.pop_front();
      reading.bytes.clear();
    }
    answer.to_come = reading.names.size();
    return answer;
  }

private:
  struct Kept {
    bool begun = false;
    int handle = -1;
    std::uint64_t bytes = 0;        // written
    std::optional<Failure> failure; // once set, the file is closed for ever
  };

  // Asked once there is so much of it that it might be.
  std::optional<Failure> too_large(const Reading& reading) {
    if (reading.bytes.size() < piece_bytes) return {};
    const Path file = reading.folder / reading.names.front();
    const Sized whole = files_->size(file);
    const bool over = whole.bytes > most_file_bytes || reading.bytes.size() > most_file_bytes;
    return over ? std::optional(failure(Operation::too_large, file, EFBIG)) : std::nullopt;
  }

  void close(Kept& file) {
    if (file.handle != -1) files_->close(file.handle);
    file.handle = -1;
  }

  bool is_known(const Path& file, const std::map<std::string, std::uint64_t>& known) {
    const auto at = known.find(file.filename().string());
    if (at == known.end()) return false;
    const Sized now = files_->size(file);
    return now.code == 0 && now.bytes == at->second;
  }

  // A folder that is not there is empty, but not so when the root itself has gone.
  Listed list(const Path& folder) {
    Listed listed = files_->list(folder);
    if (listed.code == ENOENT) listed.code = files_->list(root_).code;
    return listed;
  }

  // No second try of anything: after a failed force the system may call the lost pages clean, and
  // a force that then succeeds says nothing (Rebello et al., USENIX ATC 2020).
  void add(const std::string& name, const std::string& bytes) {
    Kept& file = kept_[name];
    if (!std::exchange(file.begun, true)) file.failure = begin(name, file.handle);
    if (!file.failure) file.failure = put(root_ / name, file, bytes);
    if (file.failure) close(file);
  }

  // Looked for under its name only after the force, so that what is confirmed lies there. A file
  // that somebody cut or wrote into is no more the file that it was.
  std::optional<Failure> put(const Path& path, Kept& file, const std::string& bytes) {
    std::optional<Failure> failed;
    file.bytes += bytes.size();
    if (const int wrote = files_->write(file.handle, bytes).code)
      failed = failure(Operation::write, path, wrote);
    else if (const int forced = files_->force(file.handle).code)
      failed = failure(Operation::force, path, forced);
    const Sized there = files_->size_under(file.handle, path);
    if (there.code == ESTALE || (!failed && there.code != 0))
      return failure(Operation::gone, path, there.code);
    if (!failed && there.bytes != file.bytes) return failure(Operation::gone, path, ESTALE);
    return failed;
  }

  // Written under a name of its own, and only once it is safe there given its right one.
  std::optional<Failure> keep_whole(const Keep& wanted) {
    if (!good_name(wanted.file)) return failure(Operation::name, wanted.file, EINVAL);
    const Path path = root_ / wanted.file;
    if (auto failed = make_folders(Path(wanted.file).parent_path())) return failed;
    const Bytes there = files_->read(path);
    if (there.code == 0 && there.bytes != wanted.bytes)
      return failure(Operation::keep, path, EEXIST);
    if (there.code != 0 && there.code != ENOENT) return failure(Operation::read, path, there.code);
    const Path beside = path.string() + own_ending_;
    return put_in_place(*files_, path, beside, wanted.bytes);
  }

  std::optional<Failure> begin(const std::string& name, int& handle) {
    if (!good_name(name)) return failure(Operation::name, name, EINVAL);
    const Path path = root_ / name;
    if (auto failed = make_folders(Path(name).parent_path())) return failed;
    const Opened opened = files_->open_new(path);
    if (opened.code != 0) return failure(Operation::open, path, opened.code);
    handle = opened.handle;
    return force_folder(path.parent_path());
  }

  // A parent is forced even where its folder was there before: the run that made the folder may
  // have died, or failed, before it forced the name.
  std::optional<Failure> make_folders(const Path& below) {
    Path folder = root_;
    for (const Path& part : below) {
      const Path parent = folder;
      folder /= part;
      const int code = files_->make_folder(folder).code;
      if (code != 0 && code != EEXIST) return failure(Operation::make_folder, folder, code);
      if (auto failed = force_folder(parent)) return failed;
    }
    return {};
  }

  std::optional<Failure> force_folder(const Path& folder) {
    if (const int code = files_->force_folder(folder).code)
      return failure(Operation::force, folder, code);
    return {};
  }

  const Path root_;
  const std::unique_ptr<Files> files_;
  // Two programs that keep the same file at the same time must not write into each other's.
  const std::string own_ending_ = "." + std::to_string(std::random_device()()) + unfinished_ending;
  std::map<std::string, Kept> kept_;
};

// So a handler of the program's never runs in the writer thread, no call is cut short, and a file
// grown past the system's limit is EFBIG from write instead of the death of the program (SIGXFSZ).
void take_no_signals() {
  sigset_t all;
  sigfillset(&all);
  pthread_sigmask(SIG_BLOCK, &all, nullptr);
}

class PosixDisk final : public Disk {
public:
  PosixDisk(Path root, std::unique_ptr<Files> files, std::function<void()> wake)
      : store_(std::move(root), std::move(files)), wake_(std::move(wake)),
        writer_([this] { run(); }) {}
  PosixDisk(const PosixDisk&) = delete;
  PosixDisk& operator=(const PosixDisk&) = delete;

  ~PosixDisk() override {
    {
      const std::lock_guard lock(mutex_);
      leaving_ = true;
      std::erase_if(waiting_,
                    [](const Job& job) { return std::holds_alternative<ReadFolder>(job.request); });
    }
    something_.notify_one();
    writer_.join();
  }

  Ticket submit(Request request) override {
    const std::lock_guard lock(mutex_);
    waiting_.push_back({++last_ticket_, std::move(request)});
    something_.notify_one();
    return last_ticket_;
  }

  std::vector<Answer> answers() override {
    const std::lock_guard lock(mutex_);
    return std::exchange(answers_, {});
  }

private:
  void run() {
    take_no_signals();
    std::optional<Reading> reading;
    for (;;) {
      const std::vector<Job> jobs = next(reading);
      if (jobs.empty() && !reading) return;
      const ReadFolder* folder =
          jobs.empty() ? nullptr : std::get_if<ReadFolder>(&jobs.front().request);
      if (folder) reading = store_.begin_reading(jobs.front().ticket, *folder);
      if (folder || jobs.empty()) {
        answer_one(store_.read_piece(*reading));
        if (reading->names.empty()) reading.reset();
      } else if (const auto* whole = std::get_if<Keep>(&jobs.front().request)) {
        answer_one(store_.keep(jobs.front().ticket, *whole));
      } else {
        answer(store_.append(jobs));
      }
    }
  }

  // Waits for the next request that stands alone, or for all appends up to it; empty when it is
  // time to go. While a folder is being read it does not wait, and only appends may come between;
  // but when it is time to go the folder is read no further.
  std::vector<Job> next(std::optional<Reading>& reading) {
    std::unique_lock lock(mutex_);
    if (leaving_) reading.reset();
    if (!reading) something_.wait(lock, [this] { return leaving_ || !waiting_.empty(); });
    auto end = std::find_if(waiting_.begin(), waiting_.end(), [](const Job& job) {
      return !std::holds_alternative<Append>(job.request);
    });
    if (end == waiting_.begin() && !waiting_.empty() && !reading) ++end;
    std::vector<Job> jobs(std::make_move_iterator(waiting_.begin()), std::make_move_iterator(end));
    waiting_.erase(waiting_.begin(), end);
    return jobs;
  }

  void answer_one(Answer come) {
    std::vector<Answer> one;
    one.push_back(std::move(come)); // a list in braces would copy all bytes of its files
    answer(std::move(one));
  }

  void answer(std::vector<Answer> come) {
    {
      const std::lock_guard lock(mutex_);
      std::move(come.begin(), come.end(), std::back_inserter(answers_));
    }
    if (wake_) wake_();
  }

  Store store_;
  const std::function<void()> wake_;

  std::mutex mutex_; // over the next five
  std::condition_variable something_;
  std::deque<Job> waiting_;
  std::vector<Answer> answers_;
  Ticket last_ticket_ = 0;
  bool leaving_ = false;

  std::thread writer_; // last: it starts when all the others are there
};

}

std::unique_ptr<Disk> open_disk(Path root, std::unique_ptr<Files> files,
                                std::function<void()> wake) {
  return std::make_unique<PosixDisk>(std::move(root), std::move(files), std::move(wake));
}

}
