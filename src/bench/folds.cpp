#include "bench/folds.hpp"

#include "bench/bench.hpp"
#include "bench/ghost.hpp"
#include "bench/layout_of.hpp"
#include "bench/match.hpp"
#include "bench/paint_chart.hpp"
#include "bench/paints.hpp"
#include "bench/pans.hpp"
#include "bench/record.hpp"
#include "bench/shelf_list.hpp"
#include "bench/today.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr std::size_t most_kept = 64; // more than one screen shows or one search looks at

FoldVersion version_of(const Bench& bench, const std::string& batch) {
  const auto lines = bench.folds.lines.find(batch);
  return {lines == bench.folds.lines.end() ? 0 : lines->second, bench.folds.lessons};
}

void forget_one(Folds& folds) {
  if (folds.kept.size() < most_kept) return;
  folds.kept.erase(
      std::min_element(folds.kept.begin(), folds.kept.end(), [](const auto& a, const auto& b) {
        return a.second.asked < b.second.asked;
      }));
}

Folded fold_anew(Bench& bench, const std::string& batch) {
  auto folded = batch == bench.batch
                    ? fold_of_slab(bench, std::nullopt)
                    : session::fold(logs_about(bench, batch), batch, std::nullopt, bench.lessons);
  return folded ? std::make_shared<const session::Batch>(*std::move(folded)) : nullptr;
}

Folds::Kept& keep(Bench& bench, const std::string& batch) {
  Folds& folds = bench.folds;
  const FoldVersion now = version_of(bench, batch);
  auto known = folds.kept.find(batch);
  if (known == folds.kept.end() || known->second.of != now) {
    const Folded folded = fold_anew(bench, batch);
    if (known == folds.kept.end()) forget_one(folds);
    known = folds.kept.insert_or_assign(batch, Folds::Kept{now, folded, 0, -1, {}}).first;
  }
  known->second.asked = ++folds.asks;
  return known->second;
}

void keep_left(Bench& bench, const std::string& batch) {
  const FoldVersion now = version_of(bench, batch);
  const auto known = bench.folds.left.find(batch);
  if (known != bench.folds.left.end() && known->second.first == now) return;
  const Folded folded = keep(bench, batch).batch;
  bench.folds.left[batch] = {now, folded ? left_of(*folded) : PaintLeft{}};
}

// The latest last, so that it is kept folded.
void keep_chart(Bench& bench) {
  const auto shown = paints_of_page(bench);
  for (const PaintMade& paint : shown)
    for (const std::string& batch : paint.batches) keep_left(bench, batch);
  for (const PaintMade& paint : shown) keep(bench, paint.batches.front());
}

void keep_band(Bench& bench, const std::string& batch) {
  Folds::Kept& kept = keep(bench, batch);
  if (!kept.batch || kept.ranges == bench.learning.version) return;
  kept.band = session::band_of(*kept.batch, bench.learning.ranges);
  kept.ranges = bench.learning.version;
}

struct KeepBook {
  Bench& bench;

  template <words::one_of<ListPage, ChoicePage> List>
  void operator()(const List&) const {
    if (shows_chart(bench)) return keep_chart(bench);
    for (const std::string& batch : batches_of_page(bench)) keep(bench, batch);
  }
  void operator()(const BatchPage& page) const {
    bench.book.match = match_of(bench, page.batch, matched_with(bench, page.batch));
    keep_band(bench, page.batch);
  }
  void operator()(const ComparePage& page) const {
    bench.book.match = match_of(bench, page.of.batch, page.other);
    keep_band(bench, page.of.batch);
    keep(bench, page.other);
  }
  template <words::one_of<RangesPage, StoryPage> Ranges>
  void operator()(const Ranges&) const {} // of no batch
};

void keep_today(Bench& bench) {
  for (const Due& one : waits_of_page(bench)) {
    if (one.what == Due::What::on_slab) keep_band(bench, one.of);
    if (!is_of_shelf(one)) keep(bench, one.of);
  }
  for (const std::string& batch : bench.today.again) keep(bench, batch);
}

}

void lines_came(Bench& bench, const std::string& batch) {
  ++bench.folds.lines[batch];
  bench.index.stale.insert(batch);
}

void learn_lessons(Bench& bench) {
  auto lessons = session::lessons_of(session::all_of(bench.logs));
  if (lessons == bench.lessons) return;
  bench.lessons = std::move(lessons);
  ++bench.folds.lessons;
}

Folded fold_of(Bench& bench, const std::string& batch) {
  return batch.empty() ? nullptr : keep(bench, batch).batch;
}

Folded kept_fold(const Bench& bench, const std::string& batch) {
  const auto known = bench.folds.kept.find(batch);
  return known == bench.folds.kept.end() ? nullptr : known->second.batch;
}

PaintLeft left_of(const session::Batch& batch) {
  PaintLeft left;
  left.jar_mL = session::wet_mL(batch.places, session::Place::jar);
  for (const session::Pan& pan : batch.pans) left.pans += pan.layers.empty() ? 0 : 1;
  left.on_slab = batch.places.at.count(session::Place::slab) > 0;
  return left;
}

std::optional<PaintLeft> kept_left(const Bench& bench, const std::string& batch) {
  const auto known = bench.folds.left.find(batch);
  if (known == bench.folds.left.end()) return std::nullopt;
  return known->second.second;
}

std::optional<paint::Band> kept_band(const Bench& bench, const std::string& batch) {
  const auto known = bench.folds.kept.find(batch);
  return known == bench.folds.kept.end() ? std::nullopt : known->second.band;
}

namespace {

void read_slab(Bench& bench) {
  Folds& folds = bench.folds;
  const FoldVersion version = version_of(bench, bench.batch);
  const bool grown = folds.open_batch == bench.batch && folds.open_arrivals == folds.arrivals &&
                     folds.open_of.lessons == version.lessons;
  if (grown && folds.open_of.lines == version.lines) return;
  const session::Logs logs = logs_about(bench, bench.batch);
  if (grown)
    folds.open.read_on(bench.logs.front(), logs, bench.batch, bench.lessons);
  else
    folds.open.read(logs, bench.batch, bench.lessons);
  folds.open_batch = bench.batch;
  folds.open_of = version;
  folds.open_arrivals = folds.arrivals;
}

}

LinesOfSlab lines_of_slab(Bench& bench) {
  read_slab(bench);
  return {bench.folds.open.lines(), bench.folds.open.changed_from()};
}

std::optional<session::Batch> fold_of_slab(Bench& bench,
                                           const std::optional<session::Moment>& now) {
  if (bench.batch.empty()) return std::nullopt;
  read_slab(bench);
  return bench.folds.open.at(now);
}

void fold_what_shows(Bench& bench) {
  if (bench.screen != Screen::slab) bench.earlier = {}; // it may be judged or discarded meanwhile
  bench.book.match.reset();
  switch (bench.screen) {
  case Screen::today: return keep_today(bench);
  case Screen::slab:
    find_earlier(bench);
    if (is_open<PaintsPanel>(bench.panel)) find_paints(bench);
    return;
  case Screen::pans:
    for (const std::string& batch : others_that_show(bench)) keep(bench, batch);
    return;
  case Screen::book: return std::visit(KeepBook{bench}, bench.book.page);
  case Screen::shelf:
    if (shows_batches(bench.shelf_page))
      for (const std::string& batch : batches_of_card(bench)) keep_band(bench, batch);
    return;
  case Screen::photos: keep(bench, bench.photos.batch); return;
  case Screen::plan:
  case Screen::binder:
  case Screen::tablet: return; // of no batch
  }
}

}
