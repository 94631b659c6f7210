#include "studio/journal.hpp"

#include "session/bytes.hpp"
#include "studio/sentences.hpp"
#include "studio/utc.hpp"
#include "words/session_says.hpp"

#include <iterator>
#include <limits>
#include <utility>

namespace studio {

namespace {

constexpr std::size_t little = 65536;
constexpr std::size_t everything = std::numeric_limits<std::size_t>::max();
constexpr int parts_at_once = 6;

}

Journal::Journal(disk::Disk& home, disk::Disk* fallback) : home_(home), fallback_(fallback) {}

void Journal::append(std::vector<session::Line> lines) {
  bool leaving = false;
  for (session::Line& line : lines) {
    leaving |= std::holds_alternative<session::Left>(line.event);
    take_in(std::move(line));
  }
  if (stuck_ && leaving) retry();
  if (!stuck_ && !trying_) send({}, everything);
}

// What can never be written is not taken. It has no ticket yet.
void Journal::take_in(session::Line line) {
  if (!began_ && !std::holds_alternative<session::Began>(line.event))
    return refuse(line, {words::SessionSay::file_without_beginning, {}});
  const auto encoded = session::encode(line, 0);
  if (!encoded) return refuse(line, encoded.error());
  if (!began_) began_ = line;
  waiting_.push_back({std::move(line), 0});
}

// It can never be written, so that this session is whole can never be said again.
void Journal::refuse(const session::Line& line, words::Error reason) {
  if (!refused_) refused_ = line.n;
  news_.emplace_back(Failed{std::move(reason)});
}

void Journal::retry() {
  if (!stuck_) return;
  stuck_ = false;
  begin_part(little);
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
  calm_down();
  std::uint64_t last = 0;
  bool any = false;
  while (!waiting_.empty() && waiting_.front().ticket != 0 && waiting_.front().ticket <= ticket) {
    const std::uint64_t n = waiting_.front().line.n;
    safe_.push_back(std::move(waiting_.front().line));
    waiting_.pop_front();
    if (refused_ && n > *refused_) continue;
    last = n;
    any = true;
  }
  if (any) news_.emplace_back(Saved{last});
  if (std::exchange(trying_, false)) send({}, everything);
}

// A disk that fails now and then is trusted less each time, so that even it gets few parts.
void Journal::calm_down() {
  if (++calm_ < calm_enough_) return;
  calm_ = 0;
  if (at_once_ == parts_at_once) return;
  at_once_ = parts_at_once;
  calm_enough_ *= 2;
}

void Journal::fail(const disk::Failure& failure) {
  const bool gone = failure.operation == disk::Operation::gone;
  news_.emplace_back(Failed{error(failure), gone});
  if (gone) take_back();
  ++failures_;
  ++part_;
  calm_ = 0;
  trying_ = false;
  if (fallback_ && failures_ > 1)
    place_ = place_ == Location::home ? Location::fallback : Location::home;
  const int tries = fallback_ ? 2 : 1; // of a new part before somebody has to ask
  stuck_ = failures_ > tries || at_once_ == 0;
  if (stuck_) return;
  --at_once_;
  begin_part(everything);
}

// Of earlier parts nobody knows either, since they lay beside it.
void Journal::take_back() {
  for (auto line = safe_.rbegin(); line != safe_.rend(); ++line)
    waiting_.push_front({std::move(*line), 0});
  safe_.clear();
}

// One append for all of it, up to so many bytes: the part stands with what it takes over, or not at
// all.
void Journal::begin_part(std::size_t most_bytes) {
  const session::Line& first = waiting_.front().line;
  session::Line beginning{first.n, first.t, first.at, "", began_->event};
  auto& began = std::get<session::Began>(beginning.event);
  began.part = part_;
  began.from = first.n;
  for (Waiting& w : waiting_) w.ticket = 0;
  trying_ = most_bytes != everything;
  const auto encoded = session::encode(beginning, 0, seed()); // was possible before
  check_ = encoded->check;
  send(encoded->bytes, most_bytes);
}

// Behind `bytes`, which may be a part's beginning, those lines that were not sent yet.
void Journal::send(std::string bytes, std::size_t most_bytes) {
  const bool begins = !bytes.empty();
  auto from = waiting_.end();
  while (from != waiting_.begin() && std::prev(from)->ticket == 0) --from;
  auto to = from;
  for (; to != waiting_.end() && bytes.size() < most_bytes; ++to) {
    if (begins && std::holds_alternative<session::Began>(to->line.event)) continue;
    const auto encoded = session::encode(to->line, check_, seed());
    if (!encoded) continue; // was possible before
    bytes += encoded->bytes;
    check_ = encoded->check;
  }
  if (bytes.empty()) return;
  const disk::Ticket ticket = disk_of(place_).submit(disk::Append{file_name(), std::move(bytes)});
  parts_of_[{place_, ticket}] = part_;
  for (; from != to; ++from) from->ticket = ticket;
}

std::uint32_t Journal::seed() const {
  session::Began began = std::get<session::Began>(began_->event);
  began.part = part_;
  return session::seed_of(began);
}

std::string Journal::file_name() const {
  const auto& began = std::get<session::Began>(began_->event);
  const std::string part = part_ == 0 ? "" : "." + std::to_string(part_);
  return std::string(sessions_folder) + "/" + utc_for_files(began_->at) + "-" + began.device + "-" +
         began.session + part + sessions_ending;
}

}
