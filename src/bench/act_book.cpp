#include "bench/act.hpp"
#include "bench/again.hpp"
#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_shared.hpp"
#include "bench/paint_chart.hpp"
#include "bench/ranges.hpp"
#include "bench/recipes.hpp"
#include "bench/record.hpp"
#include "words/lists.hpp"

#include <utility>

namespace bench {

void offer_to_go_on(Bench& bench, const Now& now) {
  constexpr std::int64_t lately_ms = 3 * session::a_day_ms;
  bench.plan.go_on.clear();
  if (bench.batches.empty()) return;
  const std::string& latest = bench.batches.back();
  const Folded batch = fold_of(bench, latest);
  if (batch && batch->progress == session::Progress::open &&
      now.wall_ms - batch->last_at <= lately_ms)
    bench.plan.go_on = latest;
}

namespace {

// Each device may have closed it.
void open_again(Bench& bench, const Now& now, Effects& effects) {
  if (bench.folded->progress != session::Progress::closed) return;
  for (const session::Entry& e : bench.folded->entries)
    if (!e.withdrawn && std::holds_alternative<session::Closed>(e.event))
      record(bench, bench.batch, session::Withdrawn{e.ref}, now, effects);
}

}

void take_up(Bench& bench, const std::string& batch, const Now& now, Effects& effects) {
  if (bench.batch != batch) bench.begun.reset();
  bench.batch = batch;
  refold(bench, now);
  if (!bench.folded) return;
  bench.plan.go_on.clear();
  open_again(bench, now, effects);
  bench.amount = {};
  bench.dropper.clear();
  refold(bench, now);
  go_to(bench, Screen::slab);
  ask_how_found(bench, now);
}

namespace {

void choose(Bench& bench, const std::string& batch) {
  BookPage& page = bench.book.page;
  if (auto* list = std::get_if<ListPage>(&page); list && list->marking) {
    if (list->marked.erase(batch) == 0) list->marked.insert(batch);
    return;
  }
  const auto* choice = std::get_if<ChoicePage>(&page);
  if (!choice)
    page = BatchPage{batch, {}};
  else if (batch != choice->of.batch)
    page = ComparePage{BatchPage(choice->of), batch};
}

// What lies behind a page; from one batch, and from the ranges, that is the list.
std::optional<BookPage> behind(const BookPage& page) {
  using Behind = std::optional<BookPage>;
  return std::visit(words::Overloaded{[](const ListPage&) { return Behind(); },
                                      [](const BatchPage&) { return Behind(); },
                                      [](const RangesPage&) { return Behind(); },
                                      [](const ChoicePage& p) { return Behind(p.of); },
                                      [](const ComparePage& p) { return Behind(p.of); },
                                      [](const StoryPage& p) { return Behind(p.ranges); }},
                    page);
}

void step_back(Bench& bench) {
  if (auto page = behind(bench.book.page))
    bench.book.page = *std::move(page);
  else
    to_all_batches(bench);
}

void keep_note(Bench& bench, BatchPage& page, const Now& now, Effects& effects) {
  const std::string note = page.note.value_or("");
  page.note.reset();
  if (note.empty()) return;
  record(bench, page.batch, session::Noted{note}, now, effects);
  if (page.batch == bench.batch) refold(bench, now);
}

const session::Entry* standing(const session::Batch& batch, bool (*is)(const session::Event&)) {
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (!e->withdrawn && is(e->event)) return &*e;
  return nullptr;
}

template <class E>
bool is_a(const session::Event& event) {
  return std::holds_alternative<E>(event);
}

// A correction of what it was opened as.
void keep_name(Bench& bench, BatchPage& page, const Now& now, Effects& effects) {
  const std::string name = std::exchange(page.name, std::nullopt).value_or("");
  const Folded batch = fold_of(bench, page.batch);
  const session::Entry* opened = batch ? standing(*batch, is_a<session::Opened>) : nullptr;
  if (!opened || name == batch->name) return;
  if (name.empty()) return void(page.name = name); // the field says that it needs one
  const session::Corrected::Says says = session::Opened{name, batch->again_of};
  record(bench, page.batch, session::Corrected{opened->ref, says, {}}, now, effects);
  if (page.batch == bench.batch) refold(bench, now);
}

void keep(Bench& bench, BatchPage& page, const Now& now, Effects& effects) {
  page.name ? keep_name(bench, page, now, effects) : keep_note(bench, page, now, effects);
}

bool stays_with_its_text(BookPad pad) {
  return pad == BookPad::keep || pad == BookPad::note_text || pad == BookPad::name_text;
}

void begin_note(BatchPage& page) {
  page.paper = false;
  page.note = "";
}

void begin_rename(Bench& bench, BatchPage& page) {
  page.paper = false;
  page.note.reset();
  page.name = name_of_batch(bench, page.batch);
}

void forget_slab(Bench& bench, const Now& now) {
  bench.batch.clear();
  refold(bench, now);
}

// Its page stays open, so that it can be had back at once.
void discard(Bench& bench, BatchPage& page, const Now& now, Effects& effects) {
  const std::string batch = page.batch;
  page.paper = false;
  record(bench, batch, session::Discarded{}, now, effects);
  if (batch == bench.batch) forget_slab(bench, now);
  if (batch == bench.plan.go_on) bench.plan.go_on.clear();
  if (batch == bench.pans.batch) bench.pans = {};
  learn_lessons(bench);
}

// Each device may have discarded it.
void have_back(Bench& bench, const BatchPage& page, const Now& now, Effects& effects) {
  const Folded batch = fold_of(bench, page.batch);
  if (!batch) return;
  for (const session::Entry& e : batch->entries)
    if (!e.withdrawn && is_a<session::Discarded>(e.event))
      record(bench, page.batch, session::Withdrawn{e.ref}, now, effects);
  learn_lessons(bench);
}

void turn_list(Bench& bench) {
  auto* list = std::get_if<ListPage>(&bench.book.page);
  bench.book.page = ListPage{!list || !list->discarded, false};
  bench.book.list = {};
  bench.book.search.clear();
}

void turn_order(Bench& bench) {
  bench.book.by_colour = !bench.book.by_colour;
  bench.book.list = {};
  chart_paints(bench);
}

void open_ranges(Bench& bench) {
  bench.book.page = RangesPage{};
  bench.book.list = {};
  refresh_ranges(bench);
}

void turn_ranges(Bench& bench, int by) {
  if (auto* ranges = std::get_if<RangesPage>(&bench.book.page)) ranges->page += by;
}

void choose_other(Bench& bench, const BatchPage& page) {
  bench.book.page = ChoicePage{BatchPage(page)};
  bench.book.list = {};
}

// Once; after that it leads to Plan with it.
void keep_recipe(Bench& bench, const BatchPage& page, const Now& now, Effects& effects) {
  const std::string kept = recipe_of_batch(bench, page.batch);
  if (kept.empty()) return keep_recipe_of(bench, page.batch, now, effects);
  use_recipe(bench, kept, now);
  go_to(bench, Screen::plan);
}

template <class Page> // a batch's, or the list
void ask_for_paper(Bench& bench, Page& page) {
  page.paper = true;
  bench.paper.written.clear();
  bench.paper.failure.reset();
}

// A second tap before the first is answered writes nothing twice.
void put_on_paper(Bench& bench, PaperKind kind, Effects& effects) {
  const auto* batch = std::get_if<BatchPage>(&bench.book.page);
  auto of = batch ? std::vector<std::string>{batch->batch} : batches_for_paper(bench);
  if (bench.paper.writing || of.empty()) return;
  bench.paper.writing = true;
  bench.paper.written.clear();
  bench.paper.failure.reset();
  effects.paper = PaperWanted{kind, std::move(of), bench.tablet.label_line};
  effects.keep_tablet = true; // with that line
}

// By date: by colour a paint may be of several batches.
void mark_some(Bench& bench, ListPage& list) {
  list.paper = false;
  list.marking = true;
  bench.book.by_colour = false;
  bench.book.list = {};
}

void leave_list(ListPage& list) {
  if (list.paper)
    list.paper = false;
  else
    list = ListPage{list.discarded};
}

// Neither another batch nor a note is wanted.
void leave(Bench& bench) {
  if (auto* list = std::get_if<ListPage>(&bench.book.page)) leave_list(*list);
  if (const std::string batch = batch_of(bench.book.page); !batch.empty())
    bench.book.page = BatchPage{batch, {}};
}

// Those of one batch and of one story lie only on their pages.
void act_on(Bench& bench, BookPad pad, const std::string& arg, const Now& now, Effects& effects) {
  auto* batch = std::get_if<BatchPage>(&bench.book.page);
  auto* list = std::get_if<ListPage>(&bench.book.page);
  auto* open = std::get_if<StoryPage>(&bench.book.page);
  auto* both = std::get_if<ComparePage>(&bench.book.page);
  if (!stays_with_its_text(pad)) keep_what_is_typed(bench, now, effects);
  switch (pad) {
  case BookPad::batch: return choose(bench, arg);
  case BookPad::to_list: return step_back(bench);
  case BookPad::ranges: return open_ranges(bench);
  case BookPad::range_of: return open_story(bench, arg);
  case BookPad::note_before: return open ? choose_note(open->story, -1) : void();
  case BookPad::note_after: return open ? choose_note(open->story, 1) : void();
  case BookPad::set_aside: return open ? set_aside(bench, open->story, now, effects) : void();
  case BookPad::make_again: return make_again(bench, both ? arg : batch_of(bench.book.page), now);
  case BookPad::compare: return batch ? choose_other(bench, *batch) : void();
  case BookPad::note: return batch ? begin_note(*batch) : void();
  case BookPad::keep: return batch ? keep(bench, *batch, now, effects) : void();
  case BookPad::rename: return batch ? begin_rename(bench, *batch) : void();
  case BookPad::discard: return batch ? discard(bench, *batch, now, effects) : void();
  case BookPad::have_back: return batch ? have_back(bench, *batch, now, effects) : void();
  case BookPad::discarded: return turn_list(bench);
  case BookPad::keep_recipe: return batch ? keep_recipe(bench, *batch, now, effects) : void();
  case BookPad::paper: return batch ? ask_for_paper(bench, *batch) : void();
  case BookPad::list_paper: return list ? ask_for_paper(bench, *list) : void();
  case BookPad::mark: return list ? mark_some(bench, *list) : void();
  case BookPad::by_colour: return turn_order(bench);
  case BookPad::sheet: return put_on_paper(bench, PaperKind::sheet, effects);
  case BookPad::labels: return put_on_paper(bench, PaperKind::labels, effects);
  case BookPad::table: return put_on_paper(bench, PaperKind::table, effects);
  case BookPad::paint_list: return put_on_paper(bench, PaperKind::paints, effects);
  case BookPad::swatch_card: return put_on_paper(bench, PaperKind::swatch_card, effects);
  case BookPad::photos: return; // see screens.hpp
  case BookPad::match:
    if (batch) bench.book.page = ComparePage{BatchPage(*batch), arg};
    return;
  case BookPad::trails: return both ? void(both->trails = !both->trails) : void();
  case BookPad::take_up: return batch ? take_up(bench, batch->batch, now, effects) : void();
  case BookPad::label_line:
  case BookPad::name_text:
  case BookPad::note_text: return; // text fields
  }
}

}

void to_all_batches(Bench& bench) { bench.book.page = ListPage{}; }

void keep_what_is_typed(Bench& bench, const Now& now, Effects& effects) {
  auto* page = std::get_if<BatchPage>(&bench.book.page);
  if (page && page->name) keep_name(bench, *page, now, effects);
  if (page && page->note) keep_note(bench, *page, now, effects);
}

void act_on_book(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (pad.kind == SharedPad::page_back) return turn_ranges(bench, -1);
  if (pad.kind == SharedPad::page_on) return turn_ranges(bench, 1);
  if (pad.kind == SharedPad::leave) return leave(bench);
  if (const auto own = pad.kind.as<BookPad>()) act_on(bench, *own, pad.arg, now, effects);
}

}
