#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_book.hpp"
#include "bench/paint_chart.hpp"
#include "bench/recipes.hpp"
#include "bench/record.hpp"
#include "bench/stock.hpp"
#include "bench/view_parts.hpp"
#include "session/dry_film.hpp"

#include <algorithm>

namespace bench {

namespace {

std::vector<session::Became> words_of(const session::Batch& batch) {
  std::vector<session::Became> out;
  for (const session::Judged& judged : batch.verdicts)
    if (std::find(out.begin(), out.end(), judged.verdict.as) == out.end())
      out.push_back(judged.verdict.as);
  return out;
}

BookView::Row book_row(const Bench& bench, const std::string& id) {
  BookView::Row row;
  row.pad = {BookPad::batch, id};
  const Folded batch = kept_fold(bench, id);
  if (!batch) return row;
  row.name = batch->name;
  row.made_at = session::made_at(*batch);
  if (const auto entry = bench.index.of.find(id); entry != bench.index.of.end())
    row.offset_min = entry->second.offset_min;
  row.progress = batch->progress;
  row.warned = batch->damaged || batch->newer || !batch->warnings.empty();
  row.ratio = batch->standing.binder_ratio;
  row.colour = session::colour_of(*batch);
  row.swatch = batch->swatch.has_value();
  if (const auto entry = bench.index.of.find(id);
      bench.photos.there && entry != bench.index.of.end() && entry->second.photo)
    row.image = image_of(*entry->second.photo);
  row.became = words_of(*batch);
  const auto* choice = std::get_if<ChoicePage>(&bench.book.page);
  const ListPage* marking = marking_of(bench.book.page);
  row.chosen = (choice && id == choice->of.batch) || (marking && marking->marked.count(id) > 0);
  return row;
}

void add_chart(const Bench& bench, BookView& v) {
  v.listed = bench.book.paints.size();
  for (const PaintMade& paint : paints_of_page(bench)) {
    BookView::Row row = book_row(bench, paint.batches.front());
    row.batches = static_cast<int>(paint.batches.size());
    const auto read = swatch_of(bench, paint);
    row.swatch = read.has_value();
    row.colour = read.value_or(row.colour);
    row.left = kept_left(bench, paint);
    v.rows.push_back(std::move(row));
  }
}

void add_list(const Bench& bench, BookView& v) {
  const auto& book = bench.book;
  v.search = book.search;
  v.discarded = lists_discarded(bench);
  if (const auto* choice = std::get_if<ChoicePage>(&book.page)) {
    v.comparing = true;
    v.compared = name_of_batch(bench, choice->of.batch);
  }
  if (const ListPage* marking = marking_of(book.page)) v.marked = marking->marked.size();
  v.by_colour = shows_chart(bench);
  if (v.by_colour) return add_chart(bench, v);
  const std::size_t count = v.discarded           ? bench.discarded.size()
                            : book.search.empty() ? bench.batches.size()
                                                  : book.found.size();
  const int a_page = book_rows_a_page(bench.display);
  v.listed = count;
  v.page = page_of(book.list, a_page, static_cast<int>(count));
  v.pages = pages_for(count, a_page);
  for (const std::string& batch : batches_of_page(bench)) v.rows.push_back(book_row(bench, batch));
}

std::vector<BookView::Verdict> verdicts_of(const session::Batch& batch) {
  std::vector<BookView::Verdict> out;
  for (const session::Judged& judged : batch.verdicts) {
    BookView::Verdict v{{}, judged.verdict.as, judged.verdict.pan};
    if (const auto from = session::last_pour(batch.pans, judged.at))
      v.days = (judged.at - *from) / session::a_day_ms;
    out.push_back(v);
  }
  return out;
}

void add_lineage(const Bench& bench, BookView& v) {
  v.again_of = name_of_batch(bench, v.batch->again_of);
  for (const std::string& id : bench.batches) {
    const auto entry = bench.index.of.find(id);
    if (entry != bench.index.of.end() && entry->second.again_of == v.batch->id)
      v.made_again.push_back(entry->second.name);
  }
}

void add_cost(const Bench& bench, BookView& v) {
  v.cost = cost_of(bench, *v.batch);
  if (!v.cost) return;
  v.a_pan_costs = session::cost_of_a_pan(*v.batch, *v.cost);
  v.currency = prices(bench).currency;
}

}

TrailView trail_at_slab(const session::Batch& batch) {
  TrailView t = trail_view(batch);
  if (!t.gathered || batch.progress == session::Progress::open) return t;
  constexpr session::Clock still_s = 600; // what comes later is no work at the slab
  t.to = std::min(t.to, *t.gathered + still_s);
  std::erase_if(t.points, [&](const auto& point) { return point.clock > t.to; });
  return t;
}

void add_offset(const Bench& bench, TrailView& trail) {
  if (trail.gathered_by) trail.offset_min = session::offset_of(bench.offsets, *trail.gathered_by);
}

namespace {

std::map<std::string, Measures> measures_today(const Bench& bench, const session::Batch& batch) {
  std::map<std::string, Measures> out;
  for (const session::Total& total : batch.totals)
    out[total.card.id] = measures_of(bench, total.card);
  return out;
}

}

BookView book_view(const Bench& bench) {
  BookView v;
  v.damages =
      static_cast<std::size_t>(std::count_if(bench.damage.begin(), bench.damage.end(),
                                             [](const session::Damage& d) { return !d.ordinary; }));
  v.faults = bench.faults;
  v.label_line = bench.tablet.label_line;
  if (!bench.loaded) v.reading = bench.reading;
  const auto* page = std::get_if<BatchPage>(&bench.book.page);
  if (!page) {
    add_list(bench, v);
    const auto* list = std::get_if<ListPage>(&bench.book.page);
    if (list && list->paper) v.paper = bench.paper;
    return v;
  }
  v.batch = kept_fold(bench, page->batch);
  if (!v.batch) return v;
  v.colour = session::colour_of(*v.batch);
  v.swatch = v.batch->swatch.has_value();
  v.trail = trail_at_slab(*v.batch);
  add_offset(bench, v.trail);
  if (!bench.photos.there) v.trail.photos.clear();
  v.trail.band = kept_band(bench, v.batch->id);
  v.verdicts = verdicts_of(*v.batch);
  v.measures = measures_today(bench, *v.batch);
  v.note = page->note;
  v.new_name = page->name;
  v.discarded = v.batch->discarded;
  if (page->paper && !v.discarded) v.paper = bench.paper;
  for (const session::Photo& photo : photos_of(*v.batch)) v.photos.push_back(image_of(photo));
  v.pvc = session::pvc_of(*v.batch);
  v.match = bench.book.match;
  v.recipe_kept = !recipe_of_batch(bench, v.batch->id).empty();
  add_lineage(bench, v);
  add_cost(bench, v);
  return v;
}

}
