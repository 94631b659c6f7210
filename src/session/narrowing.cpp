#include "session/narrowing.hpp"

#include <algorithm>

namespace session {

namespace {

bool felt(const Taught& taught, const std::string& card) {
  return taught.pigments.count(card) > 0 && teaches(taught);
}

bool before(const Taught* a, const Taught* b) {
  return std::tie(a->opened_at, a->batch) < std::tie(b->opened_at, b->batch);
}

std::optional<paint::LnSpread>
demand_from(const Ranges& today, const std::vector<const Taught*>& taught, const Card& pigment) {
  RangeProblem asked = range_problem(taught);
  auto learnt = paint::learnt_at(asked.problem, today.learnt.priors, today.learnt.theta);
  if (!learnt || learnt->end != paint::LearnEnd::found) return std::nullopt;
  return demand_in({*std::move(learnt), std::move(asked.names)}, pigment);
}

}

std::vector<Narrowed> narrowing(const Ranges& ranges, const std::vector<const Taught*>& all,
                                const Card& pigment, std::size_t most) {
  std::vector<const Taught*> others, own;
  for (const Taught* taught : all) (felt(*taught, pigment.id) ? own : others).push_back(taught);
  std::sort(own.begin(), own.end(), before);
  std::vector<Narrowed> out;
  if (own.empty()) return out;
  const std::size_t first = own.size() > most ? own.size() - most : 0;
  for (std::size_t known = first; known <= own.size(); ++known) {
    std::vector<const Taught*> taught = others;
    taught.insert(taught.end(), own.begin(), own.begin() + static_cast<std::ptrdiff_t>(known));
    const auto demand =
        known == own.size() ? demand_in(ranges, pigment) : demand_from(ranges, taught, pigment);
    if (demand) out.push_back({known == 0 ? nullptr : own[known - 1], *demand});
  }
  return out;
}

}
