#include "studio/watch.hpp"

#include "studio/sentences.hpp"
#include "studio/understand.hpp"

#include <memory>
#include <utility>

namespace studio {

namespace {

std::string prefix_of(Location place) { return place == Location::fallback ? fallback_prefix : ""; }

}

Watch::Watch(disk::Disk& home, disk::Disk* fallback, std::string own_session,
             std::function<void()> wake)
    : home_(home), fallback_(fallback), own_(std::move(own_session)), wake_(std::move(wake)) {}

std::size_t Watch::files_to_come() const {
  std::size_t sum = 0;
  for (const auto& [place, files] : to_come_) sum += files;
  return sum;
}

void Watch::look() {
  if (busy_) return;
  busy_ = true;
  faults_.clear();
  submit(Location::home, home_);
  if (fallback_) submit(Location::fallback, *fallback_);
}

void Watch::submit(Location place, disk::Disk& disk) {
  to_come_[place] = 0;
  disk.submit(disk::ReadFolder{sessions_folder, sessions_ending, known_[place]});
}

void Watch::take(Location place, disk::Answer answer) {
  for (const disk::Failure& failure : answer.failures) faults_.push_back(error(failure));
  read_ += answer.files.size();
  for (const disk::FileBytes& file : answer.files) known_[place][file.name] = file.bytes.size();
  std::erase_if(answer.files, [&](const disk::FileBytes& file) {
    return file.name.find("-" + own_ + ".") != std::string::npos;
  });
  // Shared, since a job must be copyable.
  const auto files = std::make_shared<std::vector<disk::FileBytes>>(std::move(answer.files));
  worker_.give([this, place, files] {
    std::vector<session::File> read = understand(*files, prefix_of(place));
    for (std::size_t i = 0; i < read.size(); ++i) {
      const Name name{place, (*files)[i].name};
      understood_.session_of[name] = read[i].session;
      understood_.files[name] = std::move(read[i]);
    }
    files->clear(); // their bytes are needed no more
  });
  to_come_[place] = answer.to_come;
  if (answer.to_come == 0) to_come_.erase(place);
  if (to_come_.empty()) finish();
}

void Watch::finish() {
  worker_.give([this] {
    Result result = result_of(understood_);
    {
      const std::lock_guard lock(mutex_);
      result_ = std::move(result);
    }
    wake_();
  });
}

// Jobs only. A session is joined from all of its files, so those of a changed one that did not
// change themselves are wanted once more.
Watch::Result Watch::result_of(Understood& understood) {
  Result result;
  std::set<std::string> sessions;
  for (const auto& [name, file] : understood.files) sessions.insert(file.session);
  for (const auto& [name, session] : understood.session_of)
    if (sessions.count(session) && !understood.files.count(name)) result.read_again.push_back(name);
  if (!result.read_again.empty()) return result;

  result.found.emplace();
  std::vector<session::File> files;
  for (auto& [name, file] : std::exchange(understood.files, {})) {
    result.found->files.push_back(file.name);
    files.push_back(std::move(file));
  }
  session::Joined joined = session::join(std::move(files));
  result.found->logs = std::move(joined.logs);
  result.found->damage = std::move(joined.damage);
  return result;
}

std::optional<Found> Watch::poll() {
  std::optional<Result> result;
  {
    const std::lock_guard lock(mutex_);
    result = std::exchange(result_, std::nullopt);
  }
  if (!result) return std::nullopt;
  if (!result->found) {
    for (const auto& [place, name] : result->read_again) known_[place].erase(name);
    busy_ = false;
    look();
    return std::nullopt;
  }
  busy_ = false;
  result->found->first = !std::exchange(looked_, true);
  result->found->faults = faults_;
  const bool news =
      result->found->first || !result->found->files.empty() || faults_ != faults_said_;
  faults_said_ = faults_;
  return news ? std::move(result->found) : std::nullopt;
}

}
