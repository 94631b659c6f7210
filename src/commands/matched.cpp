#include "commands/matched.hpp"

#include "bench/match.hpp"
#include "bench/match_words.hpp"
#include "commands/show.hpp"
#include "words/commands_says.hpp"
#include "words/say.hpp"

namespace commands {

using Say = words::CommandsSay;
using words::Number;

bench::Bench bench_of(const std::vector<session::Log>& logs, const bench::Now& now) {
  bench::Bench bench = bench::start("0", "", {}, now);
  bench::step(bench, bench::Loaded{logs, {}, {}}, now);
  return bench;
}

bench::Bench bench_of(const std::vector<session::Log>& logs) {
  bench::Now now;
  now.fresh = [] { return 0u; }; // nothing is written
  return bench_of(logs, now);
}

std::string matched_for_people(const std::vector<session::Log>& logs, const std::string& batch) {
  bench::Bench all = bench_of(logs);
  const std::string other = bench::matched_with(all, batch);
  const auto match = bench::match_of(all, batch, other);
  if (!match) return "";
  const auto line = [](words::Sentence id, const words::Args& args) {
    return printable(words::say(id, args)) + "\n";
  };
  const colour::Match& m = match->match;
  std::string out =
      line(Say::show_matched, {match->a.name, Number(m.difference, 1), Number(m.low, 1),
                               Number(m.high, 1), bench::seen_words(m)});
  if (const std::string ways = bench::ways_words(m); !ways.empty())
    out += line(Say::show_ways, {ways});
  for (const auto& one : match->blame)
    out += line(Say::show_blame, {bench::blame_words(one), bench::unusual_words(one)});
  return out;
}

}
