#include "studio/journal.hpp"

#include "session/bytes.hpp"
#include "studio/sentences.hpp"
#include "studio/utc.hpp"
#include "words/session_says.hpp"

#include <utility>

namespace studio {

Journal::Journal(disk::Disk& home, disk::Disk* fallback) : home_(home), fallback_(fallback) {}

void Journal::append(std::vector<session::Line> lines) {
  std::string bytes;
  for (session::Line& line : lines) bytes += take_in(std::move(line));
  if (bytes.empty()) return;
  if (stuck_) return retry();
  const disk::Ticket ticket = submit(std::move(bytes));
  for (auto w = waiting_.rbegin(); w != waiting_.rend() && w->ticket == 0; ++w) w->ticket = ticket;
}

// As bytes; none of a line that can never be written. It has no ticket yet.
std::string Journal::take_in(session::Line line) {
  if (!began_ && !std::holds_alternative<session::Began>(line.event)) {
    refuse(line, {words::SessionSay::file_without_beginning, {}});
    return {};
  }
  auto encoded = session::encode(line, check_);
  if (!encoded) {
    refuse(line, encoded.error());
    return {};
  }
  if (!began_) began_ = line;
  check_ = encoded->check;
  waiting_.push_back({std::move(line), 0});
  return std::move(encoded->bytes);
}

// It can never be written, so that this session is whole can never be said again.
void Journal::refuse(const session::Line& line, words::Error reason) {
  if (!refused_) refused_ = line.n;
  news_.emplace_back(Failed{std::move(reason)});
}

void Journal::retry() {
  if (!stuck_) return;
  stuck_ = false;
  begin_part();
}

std::vector<News> Journal::poll() {
  for (disk::Answer& answer : home_.answers()) take(Location::home, std::move(answer));
  if (fallback_)
    for (disk::Answer& answer : fallback_->answers()) take(Location::fallback, std::move(answer));
  return std::exchange(news_, {});
}

void Journal::take(Location place, disk::Answer answer) {
  const auto own = parts_of_.find({place, answer.ticket});
  if (own == parts_of_.end()) {
    news_.emplace_back(Read{place, std::move(answer)});
    return;
  }
  const int part = own->second;
  parts_of_.erase(own);
  if (part != part_) return; // a later part has taken over what this is about
  if (answer.failures.empty())
    confirm(answer.ticket);
  else
    fail(answer.failures.front());
}

void Journal::confirm(disk::Ticket ticket) {
  failures_ = 0;
  std::uint64_t last = 0;
  bool any = false;
  while (!waiting_.empty() && waiting_.front().ticket <= ticket) {
    const std::uint64_t n = waiting_.front().line.n;
    waiting_.pop_front();
    if (refused_ && n > *refused_) continue;
    last = n;
    any = true;
  }
  if (any) news_.emplace_back(Saved{last});
}

void Journal::fail(const disk::Failure& failure) {
  news_.emplace_back(Failed{error(failure)});
  ++failures_;
  ++part_;
  if (fallback_ && failures_ > 1)
    place_ = place_ == Location::home ? Location::fallback : Location::home;
  const int at_once = fallback_ ? 2 : 1; // tries of a new part before the hands have to ask again
  stuck_ = failures_ > at_once;
  if (!stuck_) begin_part();
}

// One append for all of it: the part stands with what it takes over, or not at all.
void Journal::begin_part() {
  const session::Line& first = waiting_.front().line;
  session::Line beginning{first.n, first.t, first.at, "", began_->event};
  auto& began = std::get<session::Began>(beginning.event);
  began.part = part_;
  began.from = first.n;

  check_ = 0;
  std::string bytes;
  const auto add = [&](const session::Line& line) {
    const auto encoded = session::encode(line, check_); // was possible before
    if (!encoded) return;
    bytes += encoded->bytes;
    check_ = encoded->check;
  };
  add(beginning);
  for (const Waiting& w : waiting_)
    if (!std::holds_alternative<session::Began>(w.line.event)) add(w.line);
  const disk::Ticket ticket = submit(std::move(bytes));
  for (Waiting& w : waiting_) w.ticket = ticket;
}

disk::Ticket Journal::submit(std::string bytes) {
  const disk::Ticket ticket = disk_of(place_).submit(disk::Append{file_name(), std::move(bytes)});
  parts_of_[{place_, ticket}] = part_;
  return ticket;
}

std::string Journal::file_name() const {
  const auto& began = std::get<session::Began>(began_->event);
  const std::string part = part_ == 0 ? "" : "." + std::to_string(part_);
  return std::string(sessions_folder) + "/" + utc_for_files(began_->at) + "-" + began.device + "-" +
         began.session + part + sessions_ending;
}

}
