#include "commands/tell.hpp"

#include "bench/shelf.hpp"
#include "commands/alone.hpp"
#include "commands/clock.hpp"
#include "commands/inputs.hpp"
#include "commands/show.hpp"
#include "session/ranges.hpp"
#include "session/told.hpp"
#include "studio/photos.hpp"
#include "studio/studio.hpp"
#include "words/commands_says.hpp"
#include "words/studio_says.hpp"

#include <ostream>

namespace commands {

namespace {

using Say = words::CommandsSay;

// As it will be written, whoever wrote the file: with what is understood of it and no more.
words::Result<paint::ToldRange> understood(const Hearing& what,
                                           const std::vector<session::Log>& logs) {
  if (!what.text) return paint::ToldRange{};
  auto told = paint::told_from(*what.text);
  if (told && session::is_own(*told, logs)) return words::failure(words::StudioSay::told_by_itself);
  if (auto fault = told ? paint::implausible(*told) : std::nullopt)
    return tl::make_unexpected(*std::move(fault));
  return told;
}

void say_what_was_heard(const Hearing& what, const paint::ToldRange& told, std::ostream& out) {
  out << words::say(Say::hear_done,
                    {words::counted(told.pigments.size(), Say::count_pigment, Say::count_pigments),
                     words::counted(static_cast<std::size_t>(told.batches), Say::count_batch,
                                    Say::count_batches)})
      << '\n';
  const auto logs = session::join_parts(studio::read_all(what.home, what.fallback).files);
  const auto ranges = session::learn_ranges(session::all_of(logs));
  if (ranges && !ranges->fit.told) out << words::say(Say::hear_not_believed) << '\n';
}

}

words::Result<int> tell(const std::vector<session::Log>& logs, const Destination& to) {
  const auto trainings = session::trainings_of(session::all_of(logs));
  std::vector<const session::TrainingBatch*> of;
  for (const auto& training : trainings) of.push_back(&training);
  bench::Bench bench;
  bench.logs = logs;
  bench::restock(bench);
  const session::RangeProblem asked = session::range_problem(of);
  const auto own = paint::learn(asked.problem);
  if (!own) return tl::make_unexpected(own.error());
  auto told = session::told_by(*own, asked.names, bench.shelf);
  if (!told) return tl::make_unexpected(told.error());
  if (!*told) return words::failure(Say::tell_nothing);
  (*told)->from = session::source_of(logs);
  return hand_on(paint::bytes_of(**told), to);
}

words::Result<int> hear(const Hearing& what, std::ostream& out, std::ostream& err) {
  auto reading = read_studio({what.home, what.fallback});
  if (!reading) return tl::make_unexpected(reading.error());
  auto logs = session::join_parts(std::move(reading->files));
  const auto told = understood(what, logs);
  if (!told) return words::failure(Say::hear_refused, {what.file, words::Inner(told.error())});
  const auto before = session::told_in(session::all_of(logs));
  if (!what.text && before && !*before) return words::failure(Say::hear_nothing);
  const bool again = what.text && before && *before && bytes_of(**before) == bytes_of(*told);
  if (again) return out << words::say(Say::hear_already) << '\n', 0;
  if (what.text && before && *before && is_older(*told, **before))
    return words::failure(Say::hear_older, {what.file, std::to_string(told->batches),
                                            std::to_string((*before)->batches)});

  const studio::Bell bell;
  const auto disk = studio::open(what.home, what.fault, [bell] { bell.ring(); });
  const session::Told line{what.text ? paint::bytes_of(*told) : ""};
  auto lines = session_of({line}, std::move(logs), real_now());
  if (const auto failure = studio::keep_lines(*disk, bell, std::move(lines))) {
    err << printable(words::message(*failure)) << '\n';
    return 1;
  }
  if (what.text)
    say_what_was_heard(what, *told, out);
  else
    out << words::say(Say::hear_forgotten) << '\n';
  return 0;
}

}
