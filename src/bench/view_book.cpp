#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/record.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>

namespace bench {

namespace {

BookView::Row book_row(const Bench& bench, const std::string& id) {
  BookView::Row row;
  row.pad = {PadKind::batch, id};
  const auto batch = session::fold(logs_about(bench, id), id, std::nullopt, bench.lessons);
  if (!batch) return row;
  row.name = batch->name;
  row.opened_at = batch->opened_at;
  row.progress = batch->progress;
  row.warned = batch->damaged || batch->newer || !batch->warnings.empty();
  row.ratio = batch->standing.binder_ratio;
  row.colour = colour_of(*batch);
  return row;
}

}

BookView book_view(const Bench& bench) {
  BookView v;
  v.damages =
      static_cast<std::size_t>(std::count_if(bench.damage.begin(), bench.damage.end(),
                                             [](const session::Damage& d) { return !d.ordinary; }));
  v.faults = bench.faults;
  if (!bench.loaded) v.reading = bench.reading;
  v.page = bench.book.page;
  v.pages = pages_for(bench.batches.size(), book_rows_a_page(bench.display));
  if (bench.book.batch.empty()) {
    for (const Pad& pad : layout(bench).pads)
      if (pad.id.kind == PadKind::batch) v.rows.push_back(book_row(bench, pad.id.arg));
    return v;
  }
  v.batch = session::fold(logs_about(bench, bench.book.batch), bench.book.batch, std::nullopt,
                          bench.lessons);
  if (!v.batch) return v;
  v.colour = colour_of(*v.batch);
  v.trail = trail_view(*v.batch);
  return v;
}

}
