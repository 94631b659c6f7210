// One line appended and confirmed: by the journal and the disk's thread, by a bare loop of write
// and force, and by SQLite. Usage: append FOLDER ROUNDS     FOLDER: empty, on the disk in question
#include "session/bytes.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"
#include "studio/bell.hpp"
#include "studio/journal.hpp"
#include "studio/studio.hpp"

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

namespace {

using speed::need;
using speed::timed;

constexpr int burst = 20;

// The lines of a long batch over and over, numbered on.
class Lines {
public:
  session::Line next() {
    session::Line line = n_ < lines_.size() ? lines_[n_] : lines_[1 + n_ % (lines_.size() - 1)];
    line.n = n_++;
    return line;
  }

private:
  std::vector<session::Line> lines_ = speed::long_batch().lines;
  std::uint64_t n_ = 0;
};

// The bytes of those lines.
class Texts {
public:
  std::string next() {
    const auto encoded = session::encode(lines_.next(), check_);
    need(encoded.has_value(), "a line cannot be written");
    check_ = encoded->check;
    return encoded->bytes;
  }

private:
  Lines lines_;
  std::uint32_t check_ = 0;
};

class Bare {
public:
  explicit Bare(const std::string& file)
      : handle_(::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_APPEND | O_CLOEXEC, 0666)) {
    need(handle_ >= 0, "no new file " + file);
  }
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;
  ~Bare() { ::close(handle_); }

  double once() {
    const std::string text = texts_.next();
    bool done = false;
    const double ms = timed([&] {
      done = ::write(handle_, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
             ::fdatasync(handle_) == 0;
    });
    need(done, "the bare loop cannot write");
    return ms;
  }

private:
  int handle_;
  Texts texts_;
};

class Ours {
public:
  explicit Ours(const std::string& folder)
      : disk_(studio::open(folder, std::nullopt, [bell = bell_] { bell.ring(); })),
        journal_(*disk_) {}

  double once() {
    session::Line line = lines_.next();
    const std::uint64_t n = line.n;
    return timed([&] {
      journal_.append(std::move(line));
      while (!confirmed(n)) {}
    });
  }

private:
  bool confirmed(std::uint64_t n) {
    const long rings = bell_.rings();
    for (const studio::News& news : journal_.poll()) {
      const auto* saved = std::get_if<studio::Saved>(&news);
      need(saved, "the journal cannot write");
      if (saved->n == n) return true;
    }
    need(bell_.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::minutes(1)),
         "the disk does not answer");
    return false;
  }

  studio::Bell bell_;
  std::unique_ptr<disk::Disk> disk_;
  studio::Journal journal_;
  Lines lines_;
};

class Sqlite {
public:
  Sqlite(const std::string& file, const std::string& journal_mode) {
    need(sqlite3_open(file.c_str(), &base_) == SQLITE_OK, "no new base " + file);
    run("PRAGMA journal_mode=" + journal_mode);
    run("PRAGMA synchronous=FULL");
    run("CREATE TABLE lines(n INTEGER PRIMARY KEY, line TEXT NOT NULL)");
    const char* insert = "INSERT INTO lines(line) VALUES(?)";
    need(sqlite3_prepare_v2(base_, insert, -1, &insert_, nullptr) == SQLITE_OK, "no statement");
  }
  Sqlite(const Sqlite&) = delete;
  Sqlite& operator=(const Sqlite&) = delete;
  ~Sqlite() {
    sqlite3_finalize(insert_);
    sqlite3_close(base_);
  }

  double once() {
    const std::string text = texts_.next();
    bool done = false;
    const double ms = timed([&] {
      sqlite3_bind_text(insert_, 1, text.data(), static_cast<int>(text.size()), SQLITE_STATIC);
      done = sqlite3_step(insert_) == SQLITE_DONE && sqlite3_reset(insert_) == SQLITE_OK;
    });
    need(done, "SQLite cannot write");
    return ms;
  }

private:
  void run(const std::string& sql) {
    need(sqlite3_exec(base_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK, sql);
  }

  sqlite3* base_ = nullptr;
  sqlite3_stmt* insert_ = nullptr;
  Texts texts_;
};

}

int main(int count, char** words) {
  need(count == 3, "usage: append FOLDER ROUNDS");
  const std::string folder = words[1];
  Bare bare(folder + "/bare.jsonl");
  Ours ours(folder);
  Sqlite rollback(folder + "/rollback.sqlite", "DELETE"), wal(folder + "/wal.sqlite", "WAL");
  speed::race("append",
              {{"bare", [&] { return bare.once(); }},
               {"journal", [&] { return ours.once(); }},
               {"sqlite wal", [&] { return wal.once(); }},
               {"sqlite rollback", [&] { return rollback.once(); }}},
              {speed::count_of(words[2]), burst, 1});
}
