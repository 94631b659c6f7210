// What another studio told this one, and what this one tells.
#include "session/told.hpp"

#include "paint/catalogue.hpp"
#include "session/ranges.hpp"

#include <algorithm>

namespace session {

namespace {

bool is_twelve_digits(const std::string& id) {
  return id.size() == 12 && id.find_first_not_of("0123456789abcdef") == std::string::npos;
}

}

std::string source_of(const std::vector<Log>& logs) {
  const Log* first = nullptr;
  for (const Log& log : logs) {
    if (log.lines.empty() || !is_twelve_digits(log.session)) continue;
    if (!first || std::pair(log.lines.front().at, log.session) <
                      std::pair(first->lines.front().at, first->session))
      first = &log;
  }
  return first ? first->session : "";
}

namespace {

bool is_from(const paint::ToldRange& told, const Log& log) {
  return !told.from.empty() && log.session == told.from;
}

}

bool is_own(const paint::ToldRange& told, const std::vector<Log>& logs) {
  return std::any_of(logs.begin(), logs.end(), [&](const Log& log) { return is_from(told, log); });
}

namespace {

// Null: nothing is to count any more.
words::Result<SharedTold> read(const Told& line) {
  if (line.range.empty()) return SharedTold();
  auto told = paint::told_from(line.range);
  if (!told) return tl::make_unexpected(told.error());
  return std::make_shared<const paint::ToldRange>(*std::move(told));
}

}

// Its own words are passed over: a device may have heard them before these sessions were joined.
words::Result<SharedTold> told_in(const Logs& logs) {
  words::Result<SharedTold> last = SharedTold();
  std::tuple<std::int64_t, std::string, std::uint64_t> at;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      const auto* told = std::get_if<Told>(&line.event);
      std::tuple here{line.at, log->session, line.n};
      if (!told || here < at) continue;
      auto heard = read(*told);
      const bool own = heard && *heard &&
                       std::any_of(logs.begin(), logs.end(),
                                   [&](const Log* one) { return is_from(**heard, *one); });
      if (own) continue;
      last = std::move(heard);
      at = std::move(here);
    }
  return last;
}

paint::ToldVariant told_variant(const RangeProblem& asked, const paint::ToldRange& told) {
  paint::ToldVariant out{{}, paint::priors_told(told)};
  for (std::size_t i = 0; i < asked.problem.pigments.size(); ++i)
    out.pigments.push_back(
        paint::facts_told(told, asked.problem.pigments[i], asked.names.pigments[i]));
  return out;
}

bool is_told(const Ranges& ranges, const Card& pigment) {
  if (!ranges.told || !ranges.fit.told) return false;
  const auto& of = ranges.told->pigments;
  return std::find(of.begin(), of.end(), pigment.id) != of.end();
}

words::Result<std::optional<paint::ToldRange>>
told_by(const paint::RangeFit& own, const RangeNames& of, const std::vector<Card>& shelf) {
  if (own.end != paint::LearnEnd::found) return words::failure(paint::sentence(own.end));
  std::vector<std::string> names;
  for (const std::string& id : of.pigments) {
    const paint::CataloguePigment* known = paint::in_catalogue(id);
    const auto card =
        std::find_if(shelf.begin(), shelf.end(), [&](const Card& c) { return c.id == id; });
    const bool same =
        known && card != shelf.end() && pigment_of(*card).index_name == known->ci_name;
    names.push_back(same ? id : "");
  }
  paint::ToldRange told = paint::told_by(own, names);
  return told.pigments.empty() ? std::nullopt : std::optional(std::move(told));
}

}
