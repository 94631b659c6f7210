#include "bench/learning.hpp"

#include "bench/mulling.hpp"
#include "bench/ranges.hpp"
#include "bench/record.hpp"
#include "bench/rewetting.hpp"
#include "paint/range/learn_bytes.hpp"
#include "session/told.hpp"
#include "words/bench_says.hpp"

namespace bench {

namespace {

constexpr std::size_t lines_at_once = 2000; // a few ms of folding

// Its own notes of today are counted in as they are felt; learnt from, they would count twice.
std::string at_work(const Bench& bench) {
  const bool open = bench.folded && bench.folded->progress == session::Progress::open;
  return open ? bench.batch : "";
}

std::size_t lines_of(const session::Logs& logs) {
  std::size_t lines = 0;
  for (const session::Log* log : logs) lines += log->lines.size();
  return lines;
}

void forget(Learning& learning, const std::string& batch) {
  if (learning.training.erase(batch) > 0) learning.changed = true;
}

void look_through(Bench& bench, const std::string& id) {
  const Folded batch = fold_of(bench, id);
  learn_mulling(bench, id, batch.get());
  learn_dried(bench, id, batch.get());
  look_at_pans(bench, id, batch.get());
  auto training = batch ? session::training_of(*batch) : std::nullopt;
  if (!training) return forget(bench.learning, id);
  session::TrainingBatch& known = bench.learning.training[id];
  if (known == *training) return;
  known = *std::move(training);
  bench.learning.changed = true;
}

// A batch that came to the slab is left out from now on; the one that lay there before is not.
void mind_the_slab(Bench& bench) {
  Learning& learning = bench.learning;
  const std::string now = at_work(bench);
  if (now != learning.at_work && !learning.at_work.empty()) learning.stale.insert(learning.at_work);
  learning.at_work = now;
  learning.stale.erase(now);
  forget(learning, now);
  learn_mulling(bench, now, nullptr);
  learn_dried(bench, now, nullptr);
}

void ask(Bench& bench, Effects& effects) {
  Learning& learning = bench.learning;
  learning.verdicts.clear();
  for (const auto& [id, training] : learning.training)
    if (training.gum) learning.verdicts[training.family].push_back(*training.gum);
  std::vector<const session::TrainingBatch*> all;
  for (const auto& [id, training] : learning.training) all.push_back(&training);
  session::RangeProblem asked = session::range_problem(all);
  const bool goes_on = session::continues(learning.ranges.names, asked.names);
  const auto told =
      learning.told ? std::optional(session::told_variant(asked, *learning.told)) : std::nullopt;
  effects.learn = LearnWanted{paint::bytes_of(
      asked.problem, {}, goes_on ? &learning.ranges.fit : nullptr, told ? &*told : nullptr)};
  learning.asked = std::move(asked.names);
  learning.told_asked = learning.told;
  learning.changed = false;
}

// Of its own notes alone, also those of the batch on the slab: what a friend told is not told on.
void ask_to_tell(Bench& bench, Effects& effects) {
  std::vector<const session::TrainingBatch*> all;
  for (const auto& [id, training] : bench.learning.training) all.push_back(&training);
  const auto today = at_work(bench).empty() ? std::nullopt : session::training_of(*bench.folded);
  if (today) all.push_back(&*today);
  session::RangeProblem asked = session::range_problem(all);
  effects.learn = LearnWanted{paint::bytes_of(asked.problem), true};
  bench.sharing.asked = std::move(asked.names);
  bench.sharing.preparing = false;
}

void hand_out(Bench& bench, const Fitted& input, Effects& effects) {
  Sharing& sharing = bench.sharing;
  if (!sharing.asked) return;
  const session::RangeNames names = *std::exchange(sharing.asked, std::nullopt);
  const auto fit =
      input.result ? paint::fit_from(*input.result) : tl::make_unexpected(input.result.error());
  auto told = fit ? session::told_by(*fit, names, bench.shelf) : tl::make_unexpected(fit.error());
  if (!told || !*told) {
    sharing.failure =
        told ? words::Error{words::BenchSay::told_nothing, {}} : std::move(told.error());
    return;
  }
  (*told)->from = session::source_of(bench.logs);
  effects.tell = **std::move(told);
}

}

void found_told(Bench& bench, FriendsFile file) {
  Sharing& sharing = bench.sharing;
  const session::SharedTold& counts = bench.learning.told;
  sharing.failure = std::move(file.passed_over);
  const bool newer =
      !counts || (bytes_of(*counts) != bytes_of(file.told) && !is_older(file.told, *counts));
  if (!newer)
    sharing.failure = words::Error{words::BenchSay::told_counts_already, {file.name}};
  else
    sharing.found = std::move(file);
}

void hear(Bench& bench) {
  Learning& learning = bench.learning;
  auto told = session::told_in(session::all_of(bench.logs));
  learning.not_heard = told ? std::nullopt : std::optional(told.error());
  session::SharedTold now = told.value_or(nullptr);
  const bool same =
      now && learning.told ? bytes_of(*now) == bytes_of(*learning.told) : now == learning.told;
  if (same) return;
  learning.told = std::move(now);
  learning.changed = true;
}

bool wants_to_study(const Bench& bench) {
  const Learning& learning = bench.learning;
  if (!bench.loaded) return false;
  const std::string now = at_work(bench);
  const bool stale = learning.stale.size() > learning.stale.count(now);
  return stale || now != learning.at_work || (learning.changed && !learning.asked) ||
         (bench.sharing.preparing && !bench.sharing.asked);
}

void study(Bench& bench, Effects& effects) {
  mind_the_slab(bench);
  Learning& learning = bench.learning;
  for (std::size_t lines = 0; lines < lines_at_once && !learning.stale.empty();) {
    const std::string id = *learning.stale.begin();
    learning.stale.erase(learning.stale.begin());
    look_through(bench, id);
    lines += lines_of(logs_about(bench, id));
  }
  if (!learning.stale.empty()) return;
  if (learning.changed && !learning.asked)
    ask(bench, effects);
  else if (bench.sharing.preparing && !bench.sharing.asked)
    ask_to_tell(bench, effects);
}

void take_fit(Bench& bench, const Fitted& input, Effects& effects) {
  if (input.to_tell) return hand_out(bench, input, effects);
  Learning& learning = bench.learning;
  if (!learning.asked) return;
  session::RangeNames names = *std::exchange(learning.asked, std::nullopt);
  auto fit =
      input.result ? paint::fit_from(*input.result) : tl::make_unexpected(input.result.error());
  learning.failure.reset();
  if (!fit)
    learning.failure = fit.error();
  else if (fit->end != paint::LearnEnd::found)
    learning.failure = words::Error{paint::sentence(fit->end), {}};
  if (learning.failure) return;
  learning.ranges = {*std::move(fit), std::move(names), learning.told_asked};
  ++learning.version;
  expect(bench);
  refresh_ranges(bench);
}

void expect(Bench& bench) {
  if (!bench.folded) {
    bench.expected = {};
    return;
  }
  Expected& expected = bench.expected;
  const session::Ranges& ranges = bench.learning.ranges;
  session::RangeQuestion question = session::range_question(ranges, *bench.folded);
  if (!expected.answer || expected.version != bench.learning.version ||
      expected.question != question) {
    expected.answer = session::expectation(ranges, question, expected.seen);
    expected.version = bench.learning.version;
    expected.question = std::move(question);
  }
  if (expected.answer) session::take_strength(*expected.answer, *bench.folded);
}

}
