#include "bench/pans.hpp"

#include "bench/choices.hpp"
#include "bench/due.hpp"
#include "bench/layout_of.hpp"
#include "bench/pan_said.hpp"
#include "bench/planning.hpp"
#include "bench/pours.hpp"
#include "bench/record.hpp"
#include "bench/rewetting.hpp"
#include "paint/pans.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr int most_new_pans = 40;

bool may_have_paint(const Bench& bench, const std::string& batch) {
  const auto entry = bench.index.of.find(batch);
  return batch == bench.batch || (entry != bench.index.of.end() && entry->second.has_left_slab);
}

// Those that were planned, as far as the paint goes; else as many as it will have filled when dry.
int pans_filled(const Bench& bench, const session::Card& card) {
  const session::Batch& batch = *bench.pans.folded;
  const double mL = to_pour_mL(batch), full_mL = volume_of(card).mL;
  if (!(mL > 0) || !(full_mL > 0)) return 0;
  if (const int planned = pans_planned(bench, card); planned > 0)
    return std::clamp(static_cast<int>(std::floor(mL / full_mL)), 1, planned);
  const auto filled = paint::pans_of(mL, full_mL, dry_share_to_pour(batch), planned_fill);
  return filled ? std::clamp(filled->pans, 1, most_new_pans) : 0;
}

}

int pans_planned(const Bench& bench, const session::Card& card) {
  const auto& batch = bench.pans.folded;
  const bool so = batch && batch->plan && batch->plan->of.pans > 0 && batch->plan->of.in == card.id;
  return so ? batch->plan->of.pans : 0;
}

std::string pans_batch(const Bench& bench) {
  for (const std::string& chosen : {bench.pans.batch, batch_of(bench.book.page), bench.batch})
    if (!chosen.empty()) return chosen;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id)
    if (may_have_paint(bench, *id)) return *id;
  return "";
}

void refold_pans(Bench& bench, const Now& now) {
  const std::string batch = pans_batch(bench);
  if (batch.empty() || batch != bench.batch) {
    bench.pans.folded = fold_of(bench, batch);
  } else {
    auto folded = fold_of_slab(bench, moment_of(bench, now));
    bench.pans.folded =
        folded ? std::make_shared<const session::Batch>(*std::move(folded)) : nullptr;
  }
  if (bench.pans.folded) bench.pans.tack = tack_mark(bench, *bench.pans.folded);
  bench.pans.page = std::min(bench.pans.page, pan_pages(bench) - 1);
}

namespace {

std::vector<std::string> other_batches(const Bench& bench, const Now& now) {
  const std::string here = pans_batch(bench);
  std::vector<std::string> out;
  const auto put = [&](const std::string& id) {
    const bool other = id != here && may_have_paint(bench, id);
    if (other && std::find(out.begin(), out.end(), id) == out.end()) out.push_back(id);
  };
  for (const Due& one : due(bench, now))
    if (!is_of_shelf(one)) put(one.of);
  const auto lately = [&](const std::string& id) { return bench.index.asked.count(id) > 0; };
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id)
    if (lately(*id)) put(*id);
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend(); ++id) put(*id);
  return out;
}

}

std::vector<std::string> others_that_show(const Bench& bench) {
  const std::vector<std::string>& all = bench.pans.others;
  if (bench.pans.judging) return {all.begin(), all.begin() + (all.empty() ? 0 : 1)};
  const std::size_t first =
      std::min(all.size(), static_cast<std::size_t>(bench.pans.others_page) * others_a_page);
  const std::size_t last = std::min(all.size(), first + others_a_page);
  return {all.begin() + static_cast<std::ptrdiff_t>(first),
          all.begin() + static_cast<std::ptrdiff_t>(last)};
}

int other_pages(const Bench& bench) {
  return pages_for(bench.pans.others.size(), static_cast<int>(others_a_page));
}

std::vector<const session::Pan*> pans_in_order(const session::Batch& batch) {
  std::vector<const session::Pan*> out;
  for (const session::Pan& pan : batch.pans) out.push_back(&pan);
  std::sort(out.begin(), out.end(), [](auto* a, auto* b) { return a->number < b->number; });
  return out;
}

std::vector<const session::Pan*> pans_with_room(const session::Batch& batch, std::int64_t wall_ms) {
  auto out = pans_in_order(batch);
  std::erase_if(out, [&](const session::Pan* pan) { return !takes_layer(batch, *pan, wall_ms); });
  return out;
}

const session::Pan* pan_numbered(const session::Batch& batch, int number) {
  for (const session::Pan& pan : batch.pans)
    if (pan.number == number) return &pan;
  return nullptr;
}

int next_number(const session::Batch& batch) {
  int last = 0;
  for (const session::Pan& pan : batch.pans) last = std::max(last, pan.number);
  return last + 1;
}

bool may_add_pan(const Bench& bench) {
  constexpr int most = 1000; // as the file has it
  return bench.pans.folded && pan_card(bench) && next_number(*bench.pans.folded) <= most;
}

namespace {

// Where they take more than one page, its last place turns to the next.
std::size_t places_for(const Bench& bench, std::size_t pans) {
  const auto all = static_cast<std::size_t>(pans_a_page(bench.display));
  return pans > all ? all - 1 : all;
}

}

std::vector<int> pans_of_page(const Bench& bench) {
  std::vector<int> all;
  if (!bench.pans.folded) return all;
  for (const session::Pan* pan : pans_in_order(*bench.pans.folded)) all.push_back(pan->number);
  const std::size_t a_page = places_for(bench, all.size());
  const std::size_t first =
      std::min(all.size(), static_cast<std::size_t>(bench.pans.page) * a_page);
  const std::size_t last = std::min(all.size(), first + a_page);
  return {all.begin() + static_cast<std::ptrdiff_t>(first),
          all.begin() + static_cast<std::ptrdiff_t>(last)};
}

void show_pan(Bench& bench, int number) {
  int before = 0;
  for (const session::Pan& pan : bench.pans.folded->pans) before += pan.number < number;
  bench.pans.page = before / static_cast<int>(places_for(bench, bench.pans.folded->pans.size()));
}

int pan_pages(const Bench& bench) {
  const std::size_t pans = bench.pans.folded ? bench.pans.folded->pans.size() : 0;
  return pages_for(pans, static_cast<int>(places_for(bench, pans)));
}

namespace {

const session::Card* planned_pan(const Bench& bench) {
  const auto& batch = bench.pans.folded;
  if (!batch || !batch->plan || batch->plan->of.pans == 0) return nullptr;
  const auto known = batch->cards.find(batch->plan->of.in);
  const bool is_pan = known != batch->cards.end() && known->second.kind() == session::CardKind::pan;
  return is_pan ? &known->second : nullptr;
}

}

std::optional<session::Card> pan_card(const Bench& bench) {
  if (const session::Card* chosen = shelf_card(bench, bench.pans.card)) return *chosen;
  const auto& batch = bench.pans.folded;
  const session::Pan* last = nullptr;
  for (const session::Pan& pan : batch ? batch->pans : std::vector<session::Pan>{})
    if (!last || pan.layers.back().at >= last->layers.back().at)
      last = pan_numbered(*batch, pan.number);
  if (last) return last->card;
  if (const session::Card* planned = planned_pan(bench)) return *planned;
  const auto all = shelf_of(bench, session::CardKind::pan);
  return all.empty() ? std::nullopt : std::optional(*all.front());
}

bool takes_layer(const session::Batch& batch, const session::Pan& pan, std::int64_t wall_ms) {
  return !is_full(pan) && !still_wet(batch, pan, wall_ms);
}

std::optional<double> shared_mL(const session::Batch& batch,
                                const std::vector<const session::Pan*>& pans) {
  if (pans.empty()) return std::nullopt;
  const double each = to_pour_mL(batch) / static_cast<double>(pans.size());
  const bool fills = std::any_of(pans.begin(), pans.end(),
                                 [&](const session::Pan* pan) { return room_mL(*pan) < each; });
  return fills ? std::nullopt : std::optional(each);
}

namespace {

// In g rounded up, so that the last one takes the rest.
std::optional<double> shared_g(const session::Batch& batch,
                               const std::vector<const session::Pan*>& pans) {
  const auto mL = shared_mL(batch, pans);
  const double g_per_mL = session::wet_g_per_mL(batch.places, poured_from(batch));
  return mL && g_per_mL > 0 ? std::optional(std::ceil(1000 * *mL * g_per_mL) / 1000) : std::nullopt;
}

}

std::vector<session::Poured> pours_for_all(const Bench& bench, const Now& now) {
  std::vector<session::Poured> out;
  if (!bench.pans.folded || !(to_pour_mL(*bench.pans.folded) > 0)) return out;
  const session::Batch& batch = *bench.pans.folded;
  if (bars_layer(batch)) return out;
  const auto card = pan_card(bench);
  if (batch.pans.empty() && card)
    if (const int count = pans_filled(bench, *card)) return {{1, count, card->id, std::nullopt}};
  const auto pans = pans_that_share(batch, pans_with_room(batch, now.wall_ms));
  const auto g = shared_g(batch, pans);
  for (const session::Pan* pan : pans) {
    if (!out.empty() && out.back().last + 1 == pan->number && out.back().in == pan->card.id)
      out.back().last = pan->number;
    else
      out.push_back({pan->number, pan->number, pan->card.id, g});
  }
  return out;
}

int pans_in(const std::vector<session::Poured>& pours) {
  int count = 0;
  for (const session::Poured& p : pours) count += p.last - p.first + 1;
  return count;
}

std::optional<session::Ref> own_pour(const Bench& bench, int number) {
  const auto& batch = bench.pans.folded;
  const session::Pan* pan = batch ? pan_numbered(*batch, number) : nullptr;
  if (!pan || pan->layers.back().line.session != bench.sitting.session) return std::nullopt;
  for (const session::Entry& e : batch->entries) {
    const auto* poured = std::get_if<session::Poured>(&e.event);
    if (poured && e.ref == pan->layers.back().line && poured->first == poured->last) return e.ref;
  }
  return std::nullopt;
}

void open_pans(Bench& bench, const Now& now) {
  bench.pans.page = bench.pans.pan = bench.pans.others_page = 0;
  bench.pans.others = other_batches(bench, now);
  refold_pans(bench, now);
  const std::string batch = pans_batch(bench);
  bench.pans.judging = verdict_day_due(bench, batch, now) > 0 && !layer_due(bench, batch, now);
}

namespace {

// A layer before a verdict, this batch before others, else the longest due.
std::string waits_first(const Bench& bench, const std::string& here, const Now& now) {
  std::string first;
  int best = 0;
  for (const Due& one : due(bench, now)) {
    const bool layer = one.what == Due::What::next_layer;
    const int weight = 1 + (layer ? 2 : 0) + (one.of == here ? 1 : 0);
    if ((!layer && one.what != Due::What::verdict) || weight <= best) continue;
    best = weight;
    first = one.of;
  }
  return first;
}

}

void open_pans_from_top_bar(Bench& bench, const Now& now) {
  std::string batch = waits_first(bench, pans_batch(bench), now);
  if (bench.screen == Screen::slab) batch = bench.batch;
  const std::string in_book = batch_of(bench.book.page);
  if (bench.screen == Screen::book && !in_book.empty()) batch = in_book;
  if (!batch.empty() && batch != bench.pans.batch) {
    bench.pans.batch = batch;
    bench.pans.card.clear();
  }
  open_pans(bench, now);
}

}
