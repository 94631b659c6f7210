// What one tap costs on a batch that has grown long: the step with its line, its fold and its
// numbers, and the journal's part of saving it. In ms of this thread's own time, so that what else
// runs on the machine does not count. Usage: taps FOLDER ROUNDS     FOLDER: empty
#include "speed/race.hpp"
#include "speed/sitting.hpp"
#include "studio/bell.hpp"
#include "studio/journal.hpp"
#include "studio/studio.hpp"

#include <ctime>

namespace {

using speed::need;
using speed::Sitting;

double thread_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

template <class What>
double taken_ms(What what) {
  const double before = thread_ms();
  what();
  return thread_ms() - before;
}

// Another device has written all of it but the beginning, so that it is there at once.
session::Log written_before(const Sitting& begun, std::size_t lines) {
  Sitting evening(3);
  evening.begin();
  evening.work(25, 300);
  session::Log log;
  log.session = evening.bench.sitting.session;
  log.device = "b7c1";
  const std::string batch = begun.bench.batch;
  const std::size_t head = 8; // the session's beginning and the batch's
  const std::int64_t round = evening.lines.back().t - evening.lines[head].t + 5000;
  for (std::size_t n = 0; n < lines; ++n) {
    const std::size_t again = n < head ? 0 : (n - head) / (evening.lines.size() - head);
    const std::size_t from = n < head ? n : head + (n - head) % (evening.lines.size() - head);
    session::Line line = evening.lines[from];
    line.n = n;
    line.t += static_cast<std::int64_t>(again) * round;
    line.at = begun.wall + 1000 + line.t;
    if (!line.batch.empty()) line.batch = batch;
    if (std::holds_alternative<session::Opened>(line.event)) line.event = session::Noted{"begun"};
    if (auto* back = std::get_if<session::Withdrawn>(&line.event)) back->line.n += n - from;
    log.lines.push_back(std::move(line));
  }
  return log;
}

class LongBatch {
public:
  LongBatch(const std::string& folder, std::size_t lines)
      : disk_(studio::open(folder + "/" + std::to_string(lines), std::nullopt,
                           [bell = bell_] { bell.ring(); })),
        journal_(*disk_) {
    sitting_.begin();
    session::Log before = written_before(sitting_, lines);
    sitting_.run += before.lines.back().t + 10000;
    sitting_.wall += before.lines.back().t + 10000;
    sitting_.give(bench::Arrived{{std::move(before)}, {}, {}, {}});
    tap("add gum_12"); // lays out what the others find laid out
  }

  double tap(const std::string& pad) {
    sitting_.pass_s(2);
    const auto id = bench::pad_named(pad);
    double ms = taken_ms([&] { sitting_.give(bench::Tap{*id}); });
    ms += taken_ms([&] { journal_.append(std::exchange(sitting_.lines, {})); });
    while (journal_.unsaved() > 0) {
      const long rings = bell_.rings();
      ms += taken_ms([&] { journal_.poll(); });
      if (journal_.unsaved() > 0)
        bell_.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::seconds(1));
    }
    return ms;
  }

private:
  studio::Bell bell_;
  std::unique_ptr<disk::Disk> disk_;
  studio::Journal journal_;
  Sitting sitting_{1};
};

}

int main(int count, char** words) {
  need(count == 3, "usage: taps FOLDER ROUNDS");
  std::vector<std::unique_ptr<LongBatch>> batches;
  std::vector<speed::Contender> drops, undos, notes;
  for (const std::size_t lines : {200, 2000, 20000}) {
    LongBatch& batch = *batches.emplace_back(std::make_unique<LongBatch>(words[1], lines));
    const std::string name = std::to_string(lines);
    drops.push_back({name, [&batch] { return batch.tap("add gum_12"); }});
    undos.push_back({name, [&batch] { return batch.tap("undo"); }});
    notes.push_back({name, [&batch] { return batch.tap("felt right"); }});
  }
  const int rounds = speed::count_of(words[2]);
  speed::race("drop on", drops, {rounds, 5, 1});
  speed::race("undo on", undos, {rounds, 3, 0});
  speed::race("note on", notes, {rounds, 1, 0});
}
