#include "bench/choices.hpp"
#include "bench/layout_parts.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_shared.hpp"
#include "bench/paint_chart.hpp"
#include "bench/record.hpp"
#include "bench/view_parts.hpp"
#include "words/lists.hpp"

#include <algorithm>

namespace bench {

int book_rows_a_page(const Display& display) { return display.upright() ? 12 : 6; }

namespace {

constexpr double told_mm = 2 * row_mm + gap_mm; // two rows while a note is written there
constexpr double figures_mm = 26;
constexpr double match_mm = 24;  // two colours beside each other, and how far apart they are
constexpr double beside_mm = 26; // the pads beside what is told

// What is searched for; beside it, while batches are chosen, what for and the way back.
void lay_out_search(const Bench& bench, const Rect& row, Layout& layout) {
  const Grid parts{10, 1, row};
  if (lists_discarded(bench)) {
    layout.more = parts.cell(0, 0, 6);
    return add(layout, BookPad::discarded, parts.cell(6, 0, 4));
  }
  if (!std::holds_alternative<ChoicePage>(bench.book.page) && !marking_of(bench.book.page)) {
    const bool some = !bench.discarded.empty();
    const Grid ways{12, 1, row};
    add_search(layout, ways.cell(0, 0, some ? 3 : 5), bench.book.search);
    add(layout, BookPad::by_colour, some ? ways.cell(3, 0, 2) : ways.cell(5, 0, 3));
    if (some) add(layout, BookPad::discarded, ways.cell(5, 0, 3));
    return add(layout, BookPad::ranges, ways.cell(8, 0, 4));
  }
  layout.more = parts.cell(0, 0, 4);
  add_search(layout, parts.cell(4, 0, 3), bench.book.search);
  add(layout, SharedPad::leave, parts.cell(7, 0, 3));
}

std::size_t batches_listed(const Bench& bench) {
  if (lists_discarded(bench)) return bench.discarded.size();
  return bench.book.search.empty() ? bench.batches.size() : bench.book.found.size();
}

// Newest first.
std::string batch_at(const Bench& bench, std::size_t place) {
  if (lists_discarded(bench)) return bench.discarded[bench.discarded.size() - 1 - place];
  if (!bench.book.search.empty()) return bench.book.found[place];
  return bench.batches[bench.batches.size() - 1 - place];
}

// Below the list: what turns its pages, and between them what puts it on paper.
void lay_out_foot(const Bench& bench, const Rect& row, Layout& layout) {
  const ListPage* marking = marking_of(bench.book.page);
  const bool some = marking ? !marking->marked.empty() : batches_listed(bench) > 0;
  const bool paper = is_there(bench.paper) && !lists_discarded(bench) &&
                     std::holds_alternative<ListPage>(bench.book.page) && some;
  if (!paper) return add_pages(layout, row);
  const Grid parts{4, 1, row};
  add_page_back(layout, parts.cell(0, 0));
  add(layout, BookPad::list_paper, parts.cell(2, 0));
  add_page_on(layout, parts.cell(3, 0));
}

void lay_out_chart(const Bench& bench, const Rect& area, Layout& layout) {
  const Size size = paints_a_page(bench.display);
  const Grid grid{static_cast<int>(size.w), static_cast<int>(size.h), area};
  const auto paints = paints_of_page(bench);
  for (std::size_t i = 0; i < paints.size(); ++i) {
    const int place = static_cast<int>(i);
    add(layout, BookPad::batch, grid.cell(place % grid.columns, place / grid.columns),
        paints[i].batches.front());
  }
  add_list(layout, bench.book.list, grid, static_cast<int>(bench.book.paints.size()));
}

// In place of the list: what of all of it can be put on paper, and the way back.
void lay_out_list_paper(const Bench& bench, Rect area, Layout& layout) {
  const Grid pads{12, 2, take_bottom(area, 3 * row_mm)};
  add(layout, BookPad::sheet, pads.cell(0, 0, 4));
  add(layout, BookPad::labels, pads.cell(4, 0, 4));
  add(layout, BookPad::table, pads.cell(8, 0, 4));
  add(layout, BookPad::paint_list, pads.cell(0, 1, 3));
  add(layout, BookPad::swatch_card, pads.cell(3, 1, 3));
  add(layout, BookPad::mark, pads.cell(6, 1, 3));
  add(layout, SharedPad::leave, pads.cell(9, 1, 3));
  add_field(layout, take_bottom(area, row_mm), {BookPad::label_line, ""}, bench.tablet.label_line);
  layout.more = area;
}

void lay_out_list(const Bench& bench, Rect area, Layout& layout) {
  const auto* list = std::get_if<ListPage>(&bench.book.page);
  if (list && list->paper) return lay_out_list_paper(bench, area, layout);
  lay_out_search(bench, take_top(area, row_mm), layout);
  layout.main = area;
  const Rect pages = take_bottom(area, row_mm);
  if (shows_chart(bench)) {
    lay_out_chart(bench, area, layout);
    return lay_out_foot(bench, pages, layout);
  }
  const int a_page = book_rows_a_page(bench.display);
  const Grid grid{1, a_page, area};
  const auto batches = batches_of_page(bench);
  for (std::size_t i = 0; i < batches.size(); ++i)
    add(layout, BookPad::batch, grid.cell(0, static_cast<int>(i)), batches[i]);
  add_list(layout, bench.book.list, grid, static_cast<int>(batches_listed(bench)));
  lay_out_foot(bench, pages, layout);
}

// In place of what is told: what can be put on paper, and the way back; above them the line that
// labels bear, until it is told where a file went.
void lay_out_paper(const Bench& bench, Rect area, Layout& layout) {
  const Grid pads{4, 1, take_bottom(area, row_mm)};
  add(layout, BookPad::sheet, pads.cell(0, 0));
  add(layout, BookPad::labels, pads.cell(1, 0));
  add(layout, BookPad::table, pads.cell(2, 0));
  add(layout, SharedPad::leave, pads.cell(3, 0));
  const PaperDesk& paper = bench.paper;
  const bool told = paper.writing || !paper.written.empty() || paper.failure;
  layout.more = told ? area : Rect{};
  if (!told) add_field(layout, area, {BookPad::label_line, ""}, bench.tablet.label_line);
}

Rect take_beside(Rect& area) {
  area.w -= beside_mm + gap_mm;
  return {area.right() + gap_mm, area.y, beside_mm, area.h};
}

void lay_out_told(const Bench& bench, const BatchPage& page, Rect area, Layout& layout) {
  layout.more = area;
  const bool has_paper = is_there(bench.paper) && !is_discarded(bench, page.batch);
  if (!page.note && !page.name) {
    if (page.paper && has_paper) return lay_out_paper(bench, area, layout);
    if (has_paper) add(layout, BookPad::paper, take_beside(area));
    const bool has_photos = bench.photos.there && !is_discarded(bench, page.batch);
    if (has_photos) add(layout, BookPad::photos, take_beside(area));
    layout.more = area;
    return;
  }
  const PadKind field = page.name ? BookPad::name_text : BookPad::note_text;
  add_field(layout, take_top(area, row_mm), {field, ""}, page.name ? *page.name : *page.note);
  const Grid halves{2, 1, area};
  add(layout, BookPad::keep, halves.cell(0, 0));
  add(layout, SharedPad::leave, halves.cell(1, 0));
}

void lay_out_ways_on(const Bench& bench, const BatchPage& page, const Rect& upper,
                     const Rect& lower, Layout& layout) {
  const Grid over{4, 1, upper}, under{4, 1, lower};
  add(layout, BookPad::to_list, under.cell(0, 0));
  if (is_discarded(bench, page.batch)) return add(layout, BookPad::have_back, under.cell(1, 0, 3));
  const bool newer = is_newer(bench, page.batch), writing = page.note || page.name;
  if (!newer) add(layout, BookPad::make_again, over.cell(0, 0));
  if (bench.batches.size() > 1) add(layout, BookPad::compare, over.cell(1, 0));
  if (!writing) add(layout, BookPad::note, over.cell(2, 0));
  if (!writing && !newer) add(layout, BookPad::rename, over.cell(3, 0));
  if (!newer) add(layout, BookPad::keep_recipe, under.cell(1, 0));
  if (!newer) add(layout, BookPad::take_up, under.cell(2, 0));
  if (!newer) add(layout, BookPad::discard, under.cell(3, 0));
}

void lay_out_batch(const Bench& bench, const BatchPage& page, const Rect& area, Layout& layout) {
  const bool upright = bench.display.upright();
  const auto& match = bench.book.match;
  const double upper_share = match ? 0.55 : 0.53;
  auto [trail, rest] = halves(area, upright, upright ? upper_share : 0.57);
  lay_out_told(bench, page, take_bottom(trail, told_mm), layout);
  if (upright) layout.title = take_top(trail, title_mm);
  if (match) {
    layout.match = take_bottom(trail, match_mm);
    add(layout, BookPad::match, layout.match,
        match->a.batch == page.batch ? match->b.batch : match->a.batch);
  }
  layout.main = trail;
  if (const Folded batch = kept_fold(bench, page.batch); batch && !batch->newer)
    add_dot_photos(bench, trail_at_slab(*batch), {18, 16}, layout);
  const Rect lower = take_bottom(rest, row_mm), upper = take_bottom(rest, row_mm);
  lay_out_ways_on(bench, page, upper, lower, layout);
  layout.lower = take_bottom(rest, figures_mm);
  layout.side = rest;
}

struct LayOut {
  const Bench& bench;
  const Rect area;
  Layout& layout;

  template <words::one_of<ListPage, ChoicePage> List>
  void operator()(const List&) const {
    lay_out_list(bench, area, layout);
  }
  void operator()(const BatchPage& page) const { lay_out_batch(bench, page, area, layout); }
  void operator()(const ComparePage& page) const { lay_out_compare(bench, page, area, layout); }
  void operator()(const RangesPage& page) const { lay_out_ranges(bench, page, layout); }
  void operator()(const StoryPage& page) const { lay_out_story(bench, page.story, layout); }
};

}

std::vector<std::string> batches_for_paper(const Bench& bench) {
  if (const ListPage* marking = marking_of(bench.book.page)) {
    std::vector<std::string> out;
    std::copy_if(bench.batches.rbegin(), bench.batches.rend(), std::back_inserter(out),
                 [&](const std::string& id) { return marking->marked.count(id) > 0; });
    return out;
  }
  if (shows_chart(bench)) {
    std::vector<std::string> out;
    for (const PaintMade& paint : bench.book.paints) out.push_back(paint.batches.front());
    return out;
  }
  return bench.book.search.empty()
             ? std::vector<std::string>{bench.batches.rbegin(), bench.batches.rend()}
             : bench.book.found;
}

std::vector<std::string> batches_of_page(const Bench& bench) {
  const int a_page = book_rows_a_page(bench.display);
  const std::size_t all = batches_listed(bench);
  const auto first =
      static_cast<std::size_t>(first_row(bench.book.list, a_page, static_cast<int>(all)));
  std::vector<std::string> out;
  for (std::size_t i = first; i < std::min(first + static_cast<std::size_t>(a_page), all); ++i)
    out.push_back(batch_at(bench, i));
  return out;
}

void lay_out_book(const Bench& bench, Layout& layout) {
  std::visit(LayOut{bench, below_top_bar(bench.display), layout}, bench.book.page);
}

}
