#include "bench/ghost.hpp"

#include "bench/again.hpp"
#include "bench/pan_said.hpp"
#include "bench/record.hpp"

#include <algorithm>
#include <set>

namespace bench {

namespace {

constexpr std::size_t most_tried = 30; // each has to be folded

// That went in.
std::set<std::string> pigments_in(const session::Batch& batch) {
  std::set<std::string> ids;
  for (const session::BatchPigment& one : session::pigments(batch))
    if (one.volume_share > 0) ids.insert(one.card->id);
  return ids;
}

// Until it is wet, those that are still to be weighed too.
std::set<std::string> pigments_meant(const session::Batch& batch) {
  std::set<std::string> ids = pigments_in(batch);
  if (batch.standing.liquid_mL.value > 0 && !ids.empty()) return ids;
  for (const auto& [id, card] : batch.cards)
    if (card.kind() == session::CardKind::pigment) ids.insert(id);
  return ids;
}

bool ended_right(const session::Batch& batch) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (const auto* felt = std::get_if<session::Felt>(&e->event); felt && !e->withdrawn)
      return felt->as == session::Feel::right;
  return false;
}

}

namespace {

enum class Worth { bad, unjudged, good };

Worth worth_of(const session::Batch& batch) {
  Worth worth = Worth::unjudged;
  for (const session::Judged& judged : batch.verdicts) {
    if (said_early(batch, judged)) continue;
    switch (judged.verdict.as) {
    case session::Became::good: worth = Worth::good; break;
    case session::Became::full:
    case session::Became::sunken: break; // speak of the pan, not of the paint
    case session::Became::cracked:
    case session::Became::sticky:
    case session::Became::rubs_off:
    case session::Became::wont_rewet:
    case session::Became::mould: return Worth::bad;
    }
  }
  return worth;
}

}

std::vector<session::TrailPoint> ghost_of(Bench& bench, const session::Batch& batch) {
  const auto wanted = pigments_meant(batch);
  std::size_t tried = 0;
  std::vector<session::TrailPoint> unjudged;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend() && tried < most_tried; ++id) {
    if (*id == batch.id) continue;
    ++tried;
    const Folded other = fold_of(bench, *id);
    const bool ended = other && other->progress != session::Progress::open && !other->newer &&
                       !other->damaged && other->opened_at <= batch.opened_at;
    if (!ended || pigments_in(*other) != wanted) continue;
    const Worth worth = worth_of(*other);
    if (worth == Worth::good) return other->trail;
    const bool may_be = worth == Worth::unjudged && ended_right(*other);
    if (may_be && unjudged.empty()) unjudged = other->trail;
  }
  return unjudged;
}

namespace {

// The batch that it makes again, or that its recipe was kept from.
std::string made_from(const session::Batch& batch) {
  if (!batch.again_of.empty() || !batch.plan) return batch.again_of;
  const auto card = batch.cards.find(batch.plan->of.recipe);
  const auto* recipe =
      card == batch.cards.end() ? nullptr : std::get_if<session::RecipeCard>(&card->second.facts);
  return recipe ? recipe->batch : "";
}

}

void find_earlier(Bench& bench) {
  if (!bench.folded) return void(bench.earlier = {});
  auto pigments = pigments_meant(*bench.folded);
  EarlierBatches& known = bench.earlier;
  const int ranges = bench.learning.version;
  const bool same = known.of == bench.batch && known.pigments == pigments;
  if (!same)
    known = {bench.batch, std::move(pigments), ghost_of(bench, *bench.folded),
             fold_of(bench, made_from(*bench.folded))};
  if (std::exchange(known.ranges, ranges) != ranges) known.portions = portions_planned(bench);
}

}
