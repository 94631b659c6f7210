// What another studio told this one, and what this one tells.
#include "paint/catalogue.hpp"
#include "session/ranges.hpp"

#include <algorithm>

namespace session {

words::Result<SharedTold> told_in(const Logs& logs) {
  const Told* last = nullptr;
  std::tuple<std::int64_t, std::string, std::uint64_t> at;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      const auto* told = std::get_if<Told>(&line.event);
      if (!told) continue;
      std::tuple here{line.at, log->session, line.n};
      if (last && here < at) continue;
      last = told;
      at = std::move(here);
    }
  if (!last || last->range.empty()) return SharedTold();
  auto told = paint::told_from(last->range);
  if (!told) return tl::make_unexpected(told.error());
  return std::make_shared<const paint::ToldRange>(*std::move(told));
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

std::optional<paint::ToldRange> told_by(const Ranges& ranges, const std::vector<Card>& shelf) {
  std::vector<std::string> names;
  for (const std::string& id : ranges.names.pigments) {
    const paint::CataloguePigment* known = paint::in_catalogue(id);
    const auto card =
        std::find_if(shelf.begin(), shelf.end(), [&](const Card& c) { return c.id == id; });
    const bool same =
        known && card != shelf.end() && pigment_of(*card).index_name == known->ci_name;
    names.push_back(same ? id : "");
  }
  paint::ToldRange told = paint::told_by(ranges.fit, names);
  return told.pigments.empty() ? std::nullopt : std::optional(std::move(told));
}

}
