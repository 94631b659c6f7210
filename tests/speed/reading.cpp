// Reading a studio until its Book is shown, against a general JSON parser on the same lines, and
// against SQLite asked from one table what Book shows of every batch.
// Usage: reading GROUP FOLDER ROUNDS BATCHES     FOLDER: empty; it becomes the studio
//        reading peak sqlite|studio FOLDER BATCHES     what one go takes of memory at most, in MB,
//                                                      in a process of its own; FOLDER as made
//                                                      above
#include "bench/pads_shared.hpp"
#include "bench/pads_top_bar.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"
#include "studio/bell.hpp"
#include "studio/studio.hpp"
#include "studio/watch.hpp"

#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <filesystem>
#include <fstream>

namespace {

using speed::need;
using speed::Sitting;
using speed::timed;
using Path = std::filesystem::path;

constexpr std::size_t lines_a_batch = 100;
constexpr std::int64_t day_ms = 86'400'000;
constexpr std::uint32_t evenings = 20; // that are tapped; the others are the same on other days

std::vector<session::Line> evening(std::uint32_t seed) {
  Sitting sitting(seed);
  sitting.begin();
  sitting.work(25, lines_a_batch - 1);
  sitting.give(bench::Leaving{});
  need(sitting.lines.size() == lines_a_batch, "an evening has other lines than it should");
  return sitting.lines;
}

// One table of all lines, with what a query needs in columns of its own.
class Table {
public:
  explicit Table(const Path& file) : file_(file.string()) {}
  void begin() {
    open();
    run("PRAGMA synchronous=OFF");
    run("CREATE TABLE lines(session TEXT, n INTEGER, at INTEGER, batch TEXT, e TEXT, name TEXT, "
        "line TEXT)");
    run("BEGIN");
    const char* insert = "INSERT INTO lines VALUES(?,?,?,?,?,?,?)";
    need(sqlite3_prepare_v2(base_, insert, -1, &insert_, nullptr) == SQLITE_OK, "no statement");
  }
  ~Table() { sqlite3_close(base_); }
  Table(const Table&) = delete;
  Table& operator=(const Table&) = delete;

  void add(const std::string& session, const session::Line& line, const std::string& text) {
    const auto json = nlohmann::json::parse(text);
    const std::string e = json["e"];
    const std::string name = e == "opened" ? json["name"].get<std::string>() : "";
    sqlite3_bind_int64(insert_, 2, static_cast<sqlite3_int64>(line.n));
    sqlite3_bind_int64(insert_, 3, line.at);
    const std::pair<int, const std::string*> texts[] = {
        {1, &session}, {4, &line.batch}, {5, &e}, {6, &name}, {7, &text}};
    for (const auto& [column, value] : texts)
      sqlite3_bind_text(insert_, column, value->c_str(), static_cast<int>(value->size()),
                        SQLITE_TRANSIENT);
    need(sqlite3_step(insert_) == SQLITE_DONE && sqlite3_reset(insert_) == SQLITE_OK,
         "SQLite cannot write");
  }
  void finish() {
    sqlite3_finalize(insert_);
    run("COMMIT");
    sqlite3_close(base_);
    base_ = nullptr;
  }

  // Opened anew: every batch with its name, its first and last moment, how many additions, whether
  // it was closed.
  double ask(std::size_t batches) {
    std::size_t rows = 0;
    const double ms = timed([&] {
      open();
      const char* question =
          "SELECT batch, MAX(name), MIN(at), MAX(at), SUM(e='added'), MAX(e='closed') FROM lines "
          "WHERE batch<>'' GROUP BY batch ORDER BY MIN(at) DESC";
      sqlite3_stmt* asked = nullptr;
      need(sqlite3_prepare_v2(base_, question, -1, &asked, nullptr) == SQLITE_OK, "no question");
      while (sqlite3_step(asked) == SQLITE_ROW) ++rows;
      sqlite3_finalize(asked);
      sqlite3_close(base_);
      base_ = nullptr;
    });
    need(rows == batches, "SQLite knows other batches");
    return ms;
  }

private:
  void open() { need(sqlite3_open(file_.c_str(), &base_) == SQLITE_OK, "no base " + file_); }
  void run(const std::string& sql) {
    need(sqlite3_exec(base_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK, sql);
  }

  const std::string file_;
  sqlite3* base_ = nullptr;
  sqlite3_stmt* insert_ = nullptr;
};

struct Writing {
  Path sessions;
  Table& table;
  std::vector<std::string> texts;

  // The evening on another day, as a session and a batch of its own.
  void write(std::vector<session::Line> lines, std::uint32_t day) {
    const std::string id = session::to_hex(day), session = "5e55" + id, batch = "ba7c" + id;
    auto& began = std::get<session::Began>(lines.front().event);
    began.session = session;
    std::ofstream file(sessions / ("2026-11-25T143200Z-a83f-" + session + ".jsonl"),
                       std::ios::binary);
    std::uint32_t check = 0;
    for (session::Line& line : lines) {
      line.at += day * day_ms;
      if (!line.batch.empty()) line.batch = batch;
      if (auto* back = std::get_if<session::Withdrawn>(&line.event)) back->line.session = session;
      const auto encoded = session::encode(line, check, session::seed_of(began));
      need(encoded.has_value(), "a line cannot be written");
      check = encoded->check;
      file << encoded->bytes;
      table.add(session, line, encoded->bytes);
      texts.push_back(encoded->bytes);
    }
    need(file.flush().good(), "a session cannot be written");
  }
};

double parse(const std::vector<std::string>& texts) {
  return timed([&] {
    for (const std::string& text : texts)
      need(nlohmann::json::parse(text).is_object(), "a line is no object");
  });
}

struct Studio {
  Path folder;
  std::size_t batches;
  studio::Found found = {};
  Sitting sitting = Sitting(0);

  // As the program reads it: by the disk's thread and another.
  double read() {
    const studio::Bell bell;
    const auto disk = studio::open(folder, std::nullopt, [bell] { bell.ring(); });
    studio::Watch watch(*disk, nullptr, "0123456789ab", [bell] { bell.ring(); });
    return timed([&] {
      watch.look();
      for (;;) {
        const long rings = bell.rings();
        for (disk::Answer& answer : disk->answers())
          watch.take(studio::Location::home, std::move(answer));
        if (auto all = watch.poll()) {
          found = *std::move(all);
          return;
        }
        bell.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::minutes(1));
      }
    });
  }

  double load() {
    const double ms = timed([&] {
      sitting.give(bench::Loaded{std::move(found.logs), std::move(found.damage), {}});
    });
    need(sitting.bench.batches.size() == batches && sitting.bench.damage.empty(),
         "not all batches are there, whole");
    return ms;
  }

  double show() {
    bench::View view;
    const double ms = timed([&] {
      sitting.give(bench::Tap{{bench::TopBarPad::book, ""}});
      view = bench::view(sitting.bench, sitting.now());
    });
    need(!std::get<bench::BookView>(view.screen).rows.empty(), "the Book is empty");
    return ms;
  }

  // The first letter of a search over all batches, and the page that it shows.
  double search() {
    bench::View view;
    const double ms = timed([&] {
      sitting.give(bench::Text{{bench::SharedPad::search, ""}, "c"});
      view = bench::view(sitting.bench, sitting.now());
    });
    need(!std::get<bench::BookView>(view.screen).rows.empty(), "nothing is found");
    sitting.bench.book.search.clear();
    return ms;
  }

  std::map<std::string, double> parts = {}; // of the last time it was opened
  double open() {
    parts["read"] = read();
    parts["load"] = load();
    parts["show"] = show();
    parts["search"] = search();
    return parts["read"] + parts["load"] + parts["show"];
  }
};

constexpr const char* table_name = "lines.sqlite";

// Not getrusage's, which knows of what was there before this program.
std::string peak_kB() {
  std::ifstream status("/proc/self/status");
  std::string word;
  while (status >> word && word != "VmHWM:") {}
  status >> word;
  return word;
}

void peak(const std::string& what, const Path& folder, std::size_t batches) {
  if (what == "sqlite")
    Table(folder / table_name).ask(batches);
  else
    Studio{folder, batches}.open();
  std::printf("%.1f\n", std::stod(peak_kB()) / 1024);
}

}

int main(int count, char** words) {
  need(count == 5, "usage: reading GROUP FOLDER ROUNDS BATCHES");
  const auto batches = static_cast<std::uint32_t>(speed::count_of(words[4]));
  if (words[1] == std::string("peak")) {
    peak(words[2], words[3], batches);
    return 0;
  }
  const Path folder = words[2];
  std::filesystem::create_directory(folder / "sessions");
  Table table(folder / table_name);
  table.begin();
  Writing writing{folder / "sessions", table, {}};
  std::vector<std::vector<session::Line>> some;
  for (std::uint32_t i = 0; i < std::min(batches, evenings); ++i) some.push_back(evening(i + 1));
  for (std::uint32_t day = 0; day < batches; ++day) writing.write(some[day % some.size()], day);
  table.finish();
  Studio studio{folder, batches};
  speed::race(words[1],
              {{"parse", [&] { return parse(writing.texts); }},
               {"sqlite", [&] { return table.ask(batches); }},
               {"all", [&] { return studio.open(); }},
               {"read", [&] { return studio.parts["read"]; }},
               {"load", [&] { return studio.parts["load"]; }},
               {"show", [&] { return studio.parts["show"]; }},
               {"search", [&] { return studio.parts["search"]; }}},
              {speed::count_of(words[3]), 1, 1});
  std::printf("about\t%s\t%u batches, %zu lines\n", words[1], batches, writing.texts.size());
}
