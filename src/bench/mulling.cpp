#include "bench/mulling.hpp"

#include "bench/choices.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Mulled;
using session::MulledPigment;

void learn_passes(MullingModel& mulling) {
  std::vector<double> passes;
  for (const auto& [id, batch] : mulling.of)
    passes.insert(passes.end(), batch.passes_s.begin(), batch.passes_s.end());
  constexpr double whole_s = 15; // no clock at a slab is read closer
  mulling.pass_s = whole_s * std::round(paint::usual_pass_after(passes) / whole_s);
}

std::vector<const Mulled*> with_dots(const MullingModel& mulling) {
  std::vector<const Mulled*> out;
  for (const auto& [id, batch] : mulling.of)
    if (!batch.dots.empty() && !batch.pigments.empty()) out.push_back(&batch);
  return out;
}

struct Class {
  std::vector<std::string> cards;
  std::vector<paint::MullPigment> pigments;
};

// Batches of one pigment each: which of a blend's left the specks, nobody knows.
Class class_of(const MullingModel& mulling, paint::PigmentClass family) {
  Class out;
  for (const Mulled* batch : with_dots(mulling)) {
    if (batch->pigments.size() != 1 || batch->pigments[0].family != family) continue;
    const auto known = std::find(out.cards.begin(), out.cards.end(), batch->pigments[0].card);
    const auto at = static_cast<std::size_t>(known - out.cards.begin());
    if (known == out.cards.end()) {
      out.cards.push_back(batch->pigments[0].card);
      out.pigments.emplace_back();
    }
    out.pigments[at].push_back(batch->dots);
  }
  return out;
}

void add_pigment(const MullingModel& mulling, const MulledPigment& pigment,
                 std::vector<paint::MullTime>& times, int& batches) {
  const Class known = class_of(mulling, pigment.family);
  const auto at = std::find(known.cards.begin(), known.cards.end(), pigment.card);
  const auto which = at == known.cards.end()
                         ? std::nullopt
                         : std::optional(static_cast<std::size_t>(at - known.cards.begin()));
  const auto time = paint::mull_time(pigment.family, known.pigments, which);
  const int taught = which ? static_cast<int>(known.pigments[*which].size()) : 0;
  batches = times.empty() ? taught : std::min(batches, taught);
  if (time) times.push_back(*time);
}

void ask(const MullingModel& mulling, std::vector<MulledPigment> pigments,
         MullingModel::Expected& out) {
  if (out.version == mulling.version && out.pigments == pigments) return;
  out = {mulling.version, std::move(pigments), std::nullopt, 0};
  std::vector<paint::MullTime> times;
  for (const MulledPigment& p : out.pigments) add_pigment(mulling, p, times, out.batches);
  if (times.empty()) return;
  if (out.pigments.size() == 1) {
    out.time = times[0];
    return;
  }
  paint::MullPigment own;
  for (const Mulled* batch : with_dots(mulling))
    if (batch->pigments == out.pigments) own.push_back(batch->dots);
  out.time = paint::mull_time_of_blend(times, own);
  out.batches += static_cast<int>(own.size());
}

std::vector<MulledPigment> pigments_planned(const Bench& bench) {
  std::vector<MulledPigment> out;
  for (const BlendPart& part : bench.plan.blend)
    if (const session::Card* card = shelf_card(bench, part.card))
      out.push_back({card->id, pigment_of(*card).pigment.family});
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.card < b.card; });
  return out;
}

std::vector<MulledPigment> pigment_read(const Bench& bench) {
  const ShelfState& page = bench.shelf_page;
  if (bench.screen != Screen::shelf || !page.card || page.on != CardPage::reading) return {};
  return {{page.card->id, pigment_of(*page.card).pigment.family}};
}

MullingNeeded needed(const MullingModel& mulling, const paint::Interval& minutes, int batches) {
  const auto passes = [&](double m) {
    return std::max(0.0, std::ceil(m * 60 / mulling.pass_s - 0.25));
  };
  return {minutes, {passes(minutes.low), passes(minutes.middle), passes(minutes.high)}, batches};
}

}

void learn_mulling(Bench& bench, const std::string& batch, const session::Batch* folded) {
  MullingModel& mulling = bench.mulling;
  Mulled now = folded ? session::mulled(*folded) : Mulled{};
  const auto known = mulling.of.find(batch);
  if (now.dots.empty() && now.passes_s.empty()) {
    if (known == mulling.of.end()) return;
    mulling.of.erase(known);
  } else {
    if (known != mulling.of.end() && known->second == now) return;
    mulling.of[batch] = std::move(now);
  }
  ++mulling.version;
  learn_passes(mulling);
}

void expect_mulling(Bench& bench) {
  ask(bench.mulling,
      bench.folded ? session::pigments_mulled(*bench.folded) : std::vector<MulledPigment>{},
      bench.mulling.slab);
  ask(bench.mulling, pigments_planned(bench), bench.mulling.plan);
  ask(bench.mulling, pigment_read(bench), bench.mulling.card);
}

std::optional<MullingNeeded> mulling_planned(const Bench& bench) {
  const MullingModel::Expected& plan = bench.mulling.plan;
  if (!plan.time) return std::nullopt;
  return needed(bench.mulling, paint::mull_minutes(*plan.time), plan.batches);
}

SpecksStay specks_last_time(const Bench& bench) {
  const auto pigments = pigments_planned(bench);
  const Mulled* last = nullptr;
  std::int64_t last_at = 0;
  for (const auto& [id, batch] : bench.mulling.of) {
    if (batch.pigments != pigments || batch.dots.empty()) continue;
    const auto entry = bench.index.of.find(id);
    const std::int64_t at = entry == bench.index.of.end() ? 0 : entry->second.opened_at;
    if (!last || at >= last_at) last = &batch, last_at = at;
  }
  if (!last || last->dots.back().specks != paint::SpeckWord::many) return SpecksStay::no;
  const bool coarse = std::any_of(pigments.begin(), pigments.end(),
                                  [](const MulledPigment& p) { return is_often_coarse(p.family); });
  return coarse ? SpecksStay::coarse : SpecksStay::as_it_is;
}

std::optional<MullingNeeded> mulling_of_card(const Bench& bench) {
  const MullingModel::Expected& card = bench.mulling.card;
  if (!card.time) return std::nullopt;
  return needed(bench.mulling, paint::mull_minutes(*card.time), card.batches);
}

std::optional<MullingNeeded> mulling_left(const Bench& bench, paint::SpeckWord until) {
  const MullingModel::Expected& slab = bench.mulling.slab;
  if (!slab.time || !bench.folded) return std::nullopt;
  const Mulled today = session::mulled(*bench.folded);
  const auto left = paint::mull_minutes_left(*slab.time, today.dots, today.minutes, until);
  if (!left) return std::nullopt;
  return needed(bench.mulling, *left, slab.batches);
}

}
