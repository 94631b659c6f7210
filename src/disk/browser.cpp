#include "disk/browser.hpp"

#include "disk/browser_questions.hpp"

#include <emscripten/emscripten.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <deque>
#include <utility>

extern "C" { // browser_store.js
void slabside_store_append(int id, const char* file, const char* bytes, std::size_t count,
                           double records, double size);
void slabside_store_keep(int id, const char* file, const char* bytes, std::size_t count);
void slabside_store_list(int id, const char* beginning);
void slabside_store_read(int id, const char* file);
char* slabside_small_text(const char* name);
char* slabside_keep_small_text(const char* name, const char* text);
}

namespace disk {
namespace {

struct Outcome {
  std::string failure; // empty: none
  std::string bytes;
};
using Then = std::function<void(Outcome)>;

// A page has one.
BrowserQuestions<Outcome>& questions() {
  static BrowserQuestions<Outcome> all;
  return all;
}

struct Job {
  Ticket ticket = 0;
  Request request;
};

struct Reading {
  Ticket ticket = 0;
  std::string folder;
  std::deque<std::string> names; // not read yet, without the folder
  Answer answer;                 // gathers until it is large enough
  std::size_t bytes = 0;         // in it
};

// So much at once, that an append need not wait long behind a reading.
constexpr std::size_t piece_bytes = std::size_t{1} << 20;

class BrowserDisk final : public Disk {
public:
  explicit BrowserDisk(std::function<void()> wake) : wake_(std::move(wake)) {}
  BrowserDisk(const BrowserDisk&) = delete;
  BrowserDisk& operator=(const BrowserDisk&) = delete;
  ~BrowserDisk() override { questions().drop(asked_); }

  Ticket submit(Request request) override {
    waiting_.push_back({++last_ticket_, std::move(request)});
    go_on();
    return last_ticket_;
  }

  std::vector<Answer> answers() override { return std::exchange(answers_, {}); }

private:
  struct Kept { // a file that was begun here
    double records = 0, bytes = 0;
    std::optional<Failure> failure; // once set, the file is closed for ever
  };

  // One question at a time. Appends do not wait for a folder to be read to its end.
  void go_on() {
    if (asked_ != 0) return;
    const bool append =
        !waiting_.empty() && std::holds_alternative<Append>(waiting_.front().request);
    if (append) return append_waiting();
    if (reading_) return read_on();
    if (waiting_.empty()) return;
    Job job = std::move(waiting_.front());
    waiting_.pop_front();
    if (auto* keep = std::get_if<Keep>(&job.request)) return keep_whole(job.ticket, *keep);
    list(job.ticket, std::move(std::get<ReadFolder>(job.request)));
  }

  int ask(Then then) {
    asked_ = questions().ask([this, then = std::move(then)](Outcome outcome) {
      asked_ = 0;
      then(std::move(outcome));
      go_on();
      if (!answers_.empty() && wake_) wake_();
    });
    return asked_;
  }

  // All that wait for the same file, together.
  void append_waiting() {
    const std::string file = std::get<Append>(waiting_.front().request).file;
    std::vector<Ticket> tickets;
    std::string bytes;
    while (!waiting_.empty()) {
      const auto* append = std::get_if<Append>(&waiting_.front().request);
      if (!append || append->file != file) break;
      bytes += append->bytes;
      tickets.push_back(waiting_.front().ticket);
      waiting_.pop_front();
    }
    const Kept& kept = kept_[file];
    if (kept.failure) { // never written again
      appended(file, tickets, bytes, "");
      if (wake_) wake_();
      return go_on();
    }
    const int id = ask([this, file, tickets, bytes](const Outcome& outcome) {
      appended(file, tickets, bytes, outcome.failure);
    });
    slabside_store_append(id, file.c_str(), bytes.data(), bytes.size(), kept.records, kept.bytes);
  }

  void appended(const std::string& file, const std::vector<Ticket>& tickets,
                const std::string& bytes, const std::string& failure) {
    Kept& kept = kept_[file];
    const Operation operation = failure == "gone" ? Operation::gone : Operation::write;
    if (!kept.failure && !failure.empty()) kept.failure = failed(operation, file, failure);
    if (!kept.failure) {
      kept.records += static_cast<double>(std::count(bytes.begin(), bytes.end(), '\n'));
      kept.bytes += static_cast<double>(bytes.size());
    }
    for (const Ticket ticket : tickets) {
      answers_.push_back({ticket, {}, {}});
      if (kept.failure) answers_.back().failures.push_back(*kept.failure);
    }
  }

  void keep_whole(Ticket ticket, const Keep& keep) {
    const int id = ask([this, ticket, file = keep.file](const Outcome& outcome) {
      answers_.push_back({ticket, {}, {}});
      if (outcome.failure.empty()) return;
      const Operation operation = outcome.failure == "keep" ? Operation::keep : Operation::write;
      answers_.back().failures.push_back(failed(operation, file, outcome.failure));
    });
    slabside_store_keep(id, keep.file.c_str(), keep.bytes.data(), keep.bytes.size());
  }

  void list(Ticket ticket, ReadFolder wanted) {
    const std::string beginning = wanted.folder + "/";
    const int id = ask([this, ticket, wanted = std::move(wanted)](const Outcome& outcome) {
      reading_ = Reading{ticket, wanted.folder, {}, {ticket, {}, {}}};
      if (!outcome.failure.empty())
        reading_->answer.failures.push_back(
            failed(Operation::list, wanted.folder, outcome.failure));
      reading_->names = to_read(outcome.bytes, wanted);
      if (reading_->names.empty()) hand_over();
    });
    slabside_store_list(id, beginning.c_str());
  }

  // The names of a list that end as they should and are not known at that size, sorted.
  static std::deque<std::string> to_read(const std::string& rows, const ReadFolder& wanted) {
    std::deque<std::string> names;
    for (std::size_t at = 0; at < rows.size();) {
      const std::size_t space = rows.find(' ', at), end = rows.find('\n', at);
      const std::uint64_t size = std::stoull(rows.substr(at, space - at));
      std::string name = rows.substr(space + 1, end - space - 1).substr(wanted.folder.size() + 1);
      at = end + 1;
      const auto known = wanted.known.find(name);
      const bool same = known != wanted.known.end() && known->second == size;
      const bool below = name.find('/') != std::string::npos;
      if (!same && !below && name.ends_with(wanted.ending)) names.push_back(std::move(name));
    }
    std::sort(names.begin(), names.end());
    return names;
  }

  void read_on() {
    const std::string name = reading_->names.front(), file = reading_->folder + "/" + name;
    reading_->names.pop_front();
    const int id = ask([this, name, file](Outcome outcome) {
      Answer& answer = reading_->answer;
      reading_->bytes += outcome.bytes.size();
      if (outcome.failure.empty())
        answer.files.push_back({name, std::move(outcome.bytes)});
      else
        answer.failures.push_back(failed(Operation::read, file, outcome.failure));
      if (reading_->names.empty() || reading_->bytes >= piece_bytes) hand_over();
    });
    slabside_store_read(id, file.c_str());
  }

  void hand_over() {
    reading_->answer.to_come = reading_->names.size();
    answers_.push_back(std::exchange(reading_->answer, {reading_->ticket, {}, {}}));
    reading_->bytes = 0;
    if (reading_->names.empty()) reading_.reset();
  }

  static Failure failed(Operation operation, const std::string& path, const std::string& reason) {
    constexpr std::pair<const char*, int> named[] = {
        {"EIO", EIO}, {"EBUSY", EBUSY}, {"EEXIST", EEXIST}, {"ENOTSUP", ENOTSUP}};
    for (const auto& [name, code] : named)
      if (reason == name) return {operation, path, code, {}};
    if (reason.starts_with("QuotaExceeded")) return {operation, path, EDQUOT, {}};
    return {operation, path, EIO, reason};
  }

  const std::function<void()> wake_;
  std::deque<Job> waiting_;
  std::vector<Answer> answers_;
  std::map<std::string, Kept> kept_;
  std::optional<Reading> reading_;
  Ticket last_ticket_ = 0;
  int asked_ = 0; // the question under way; 0: none
};

// Of a text that JavaScript left in the program's memory.
std::optional<std::string> taken(char* text) {
  if (!text) return std::nullopt;
  std::string out = text;
  std::free(text);
  return out;
}

}

std::unique_ptr<Disk> open_browser_disk(std::function<void()> wake) {
  return std::make_unique<BrowserDisk>(std::move(wake));
}

std::optional<std::string> small_text(const std::string& name) {
  return taken(slabside_small_text(name.c_str()));
}

std::optional<std::string> keep_small_text(const std::string& name, const std::string& text) {
  return taken(slabside_keep_small_text(name.c_str(), text.c_str()));
}

}

extern "C" EMSCRIPTEN_KEEPALIVE void slabside_store_answered(int id, char* failure, char* bytes,
                                                             std::size_t count) {
  disk::Outcome outcome{disk::taken(failure).value_or(""), std::string(bytes, count)};
  std::free(bytes);
  disk::questions().answer(id, std::move(outcome));
}
