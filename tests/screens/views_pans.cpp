// Views of Pans and of the Book's comparing and writing, as views.cpp makes the others.
#include "screens/views_pans.hpp"

#include "bench/pads_book.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pans.hpp"
#include "bench/ranges.hpp"
#include "words/bench_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>

namespace views {

using namespace bench;

namespace {

const char* const long_name = "Cerulean blue (chromium), 3";

Bench bench_on(Size mm, Hand hand, Screen screen) {
  Now now;
  now.fresh = [] { return 7u; };
  Bench b = start("s", "tablet", {mm, hand}, now);
  b.loaded = true;
  b.screen = screen;
  b.batches = {"older", "one", "newer"};
  for (const std::string& id : b.batches) b.index.of[id].has_left_slab = true;
  return b;
}

session::Card half_pan() { return {"half_pan", "half pan", session::PanCard{{1.7, 0.1}}}; }

session::Entry entry(std::uint64_t n, session::Event event) {
  session::Entry e;
  e.ref = {"s", n};
  e.at = 1;
  e.event = std::move(event);
  return e;
}

// Five pans of this session's own pouring, or so many that a page has not room for all.
session::Batch batch_of(int pans) {
  session::Batch batch;
  batch.id = "one";
  batch.name = long_name;
  batch.cards["half_pan"] = half_pan();
  batch.places.at[session::Place::jar].sums.pigment_mL = 12.3;
  for (int i = 1; i <= pans; ++i) {
    const auto n = static_cast<std::uint64_t>(i);
    batch.pans.push_back({i, half_pan(), {{{"s", n}, 0, 1, 1.7, 1}}, {}});
    batch.entries.push_back(entry(n, session::Poured{i, i, "half_pan", {}}));
  }
  return batch;
}

View around(const Bench& b) {
  View v;
  v.layout = layout(b);
  v.top_bar = {b.screen, "", 0x2266AA, 14, 32, b.night};
  v.top_bar.due = 12;
  return v;
}

PansView::Pan pan_of(const PadId& pad, int i) {
  PansView::Pan pan{pad, i, 1.7, {}, 0, false, false, {}};
  if (pad.kind == PansPad::new_pan) return pan;
  for (int layer = 0; layer <= i % 3; ++layer) pan.layers_mL.push_back(0.6);
  pan.wet_mL = i % 2 ? 0.4 : 0;
  pan.full = i % 3 == 2;
  pan.chosen = i == 2;
  if (i % 4 == 0) pan.said = {session::Became::cracked, false};
  if (i % 4 == 1) pan.said = {session::Became::good, false};
  if (i % 4 == 2) pan.said = {session::Became::sticky, true};
  return pan;
}

PansView pans_of(const Bench& b, const View& v) {
  PansView p;
  p.batch = "one";
  p.name = long_name;
  p.colour = 0x2266AA;
  p.judging = b.pans.judging;
  p.pan = b.pans.pan;
  int i = 0;
  for (const Pad& pad : v.layout.pads)
    if (pad.id.kind == PansPad::pan || pad.id.kind == PansPad::new_pan)
      p.pans.push_back(pan_of(pad.id, ++i));
  p.card_name = "half pan";
  p.card_mL = 1.7;
  p.to_pour_mL = 12.3;
  p.all = 14;
  p.next = {PansView::Next::in_hours, 9.3, 61.5, false};
  p.fill = paint::Interval{0.55, 0.62, 0.7};
  p.tack = paint::Tack::stays_sticky;
  p.weighings = {{0, 4.6}, {5, 4.3}, {20, 3.8}};
  p.since_pour_ms = 277000000;
  p.asked_day = 10;
  p.said = {session::Became::wont_rewet, false};
  p.apart = {{3, {session::Became::cracked, false}}, {14, {session::Became::sticky, true}}};
  p.waits = {{long_name, true}, {long_name, false}, {"Kiln red", false}};
  p.undo = {session::Poured{1, 14, "half_pan", {}}, "", false, false, 12};
  if (b.number) p.number = NumberView{b.number->target, "12.34", "14", {}};
  return p;
}

struct Keep {
  std::vector<Case>& out;
  Size mm;
  const std::string& on;
  void operator()(const std::string& what, const Bench& b, const PansView& p) const {
    View v = around(b);
    v.screen = p;
    out.push_back({"pans, " + what + on, mm, v});
  }
};

void add_faces(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  const Keep keep{out, mm, on};
  Bench b = bench_on(mm, hand, Screen::pans);
  keep("none", b, {});
  b.pans.batch = "one";
  b.pans.folded = std::make_shared<const session::Batch>(batch_of(4));
  b.pans.pan = 2;
  const PansView some = pans_of(b, around(b));
  keep("pouring", b, some);
  b.pans.pan = 1; // which has room
  PansView one = pans_of(b, around(b));
  one.room_guessed = true;
  keep("one chosen", b, one);
  b.pans.pan = 2;
  PansView said = some;
  said.next = {PansView::Next::full, 0, 0, false};
  said.all = 0;
  said.wet = hand == Hand::left;
  said.undo.saved = true;
  said.undo.unsaved = 0;
  said.notice.error = words::Error{words::BenchSay::pans_still_wet, {"14"}};
  keep("a wet one tapped", b, said);
  PansView maybe = some;
  maybe.next.kind = PansView::Next::maybe_now;
  maybe.first = true;
  maybe.save_failure =
      words::Error{words::SessionSay::did_added, {"no space is left", "on the device"}};
  keep("may be firm", b, maybe);
  PansView planned = some;
  planned.first = true;
  planned.next = {};
  planned.planned = {14, 3};
  keep("planned", b, planned);
  PansView unknown = some;
  unknown.next.kind = PansView::Next::unknown;
  unknown.undo = {std::nullopt, "", true, false, 0};
  keep("nothing known", b, unknown);
  b.number = NumberEntry{{PansPad::weigh_pan, ""}, "", {}};
  keep("number", b, pans_of(b, around(b)));
  b.number.reset();
  b.pans.folded = std::make_shared<const session::Batch>(batch_of(40));
  keep("many", b, pans_of(b, around(b)));
  b.pans.judging = true;
  keep("judging", b, pans_of(b, around(b)));
  PansView early = pans_of(b, around(b));
  early.said = {session::Became::sticky, true};
  keep("judged early", b, early);
  PansView unasked = pans_of(b, around(b));
  unasked.asked_day = 0;
  unasked.said.reset();
  unasked.apart.clear();
  unasked.undo = {std::nullopt, "", true, false, 0};
  keep("judged by none", b, unasked);
}

BookView::Row row_of(const PadId& pad, bool chosen) {
  BookView::Row row;
  row.pad = pad;
  row.name = long_name;
  row.colour = 0x2266AA;
  row.opened_at = 1773066720000;
  row.progress = session::Progress::gathered;
  row.ratio = paint::exact(12.34);
  row.warned = true;
  row.became = {session::Became::cracked, session::Became::wont_rewet};
  row.chosen = chosen;
  return row;
}

BookView list_of(const Bench& b, const View& v) {
  BookView list;
  list.search = b.book.search;
  list.discarded = lists_discarded(b);
  list.comparing = std::holds_alternative<ChoicePage>(b.book.page);
  list.compared = long_name;
  for (const Pad& pad : v.layout.pads)
    if (pad.id.kind == BookPad::batch) list.rows.push_back(row_of(pad.id, list.rows.empty()));
  return list;
}

BookView one_of(const Bench& b) {
  BookView one;
  session::Batch batch = batch_of(3);
  batch.entries.push_back(entry(99, session::Noted{"Less water, and a day more."}));
  one.batch = std::make_shared<const session::Batch>(std::move(batch));
  one.trail = trail();
  one.trail.whole = true;
  one.trail.gathered = 900;
  one.again_of = long_name;
  one.made_again = {long_name, long_name};
  one.verdicts = {{3, session::Became::cracked, 12},
                  {3, session::Became::sunken, 0},
                  {10, session::Became::good, 0}};
  one.note = std::get<BatchPage>(b.book.page).note;
  one.new_name = std::get<BatchPage>(b.book.page).name;
  one.discarded = is_discarded(b, "one");
  return one;
}

// Felt in three batches, the last of which says most.
PigmentStory story_of(const std::string& card) {
  using session::Feel;
  PigmentStory story;
  story.card = card;
  const auto note = [](std::uint64_t n, double flow, Feel as) {
    return PigmentStory::Note{{"0a1b2c3d", n}, flow, as};
  };
  story.steps = {
      {"", {}, 2.2, 1.1, 4.4},
      {"one", {note(1, 1.4, Feel::too_sticky), note(2, 2.1, Feel::right)}, 2.0, 1.5, 2.7},
      {"two", {note(3, 1.0, Feel::wont_move), note(4, 1.8, Feel::too_sticky)}, 2.1, 1.8, 2.5},
      {"one",
       {note(5, 2.0, Feel::right), note(6, 2.6, Feel::too_loose), note(7, 3.3, Feel::too_runny)},
       2.15,
       1.95,
       2.35}};
  story.note = story.steps[2].notes[0].line;
  return story;
}

void add_books(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand, Screen::book);
  const auto keep = [&](const std::string& what, auto screen) {
    View v = around(b);
    v.screen = std::move(screen);
    out.push_back({"book, " + what + on, mm, v});
  };
  b.book.page = RangesPage{};
  bench::refresh_ranges(b);
  RangesView wants = std::get<RangesView>(view(b, {}).screen);
  for (std::size_t i = 0; i < wants.rows.size(); i += 2)
    wants.rows[i].range.band.batches = i ? 14 : 1;
  keep("what each wants", wants);
  for (const char* const id : {"one", "two"}) {
    b.index.of[id].name = long_name;
    b.index.of[id].opened_at = 1795617120000;
  }
  StoryPage known{std::get<RangesPage>(b.book.page), story_of(wants.rows[0].range.card)};
  b.book.page = known;
  keep("how it is known", std::get<StoryView>(view(b, {}).screen));
  known.story.was = {1.1, 3.2};
  known.story.steps[2].notes[0].set_aside = true;
  b.book.page = known;
  keep("a note left out", std::get<StoryView>(view(b, {}).screen));
  known.story.steps.clear();
  b.book.page = known;
  keep("never felt", std::get<StoryView>(view(b, {}).screen));
  b.book.page = ListPage{};
  b.book.search = "zinc";
  keep("nothing found", list_of(b, around(b)));
  b.book.search.clear();
  b.book.page = BatchPage{"one", {}};
  keep("judged", one_of(b));
  b.book.page = BatchPage{"one", "less water"};
  keep("note", one_of(b));
  b.book.page = BatchPage{"one", {}, "Less water"};
  keep("name", one_of(b));
  b.book.page = BatchPage{"one", {}, ""};
  keep("no name", one_of(b));
  b.index.of["one"].discarded = true;
  b.discarded = {"one"};
  b.book.page = BatchPage{"one", {}};
  keep("discarded", one_of(b));
  b.book.page = ListPage{};
  keep("some discarded", list_of(b, around(b)));
  b.book.page = ListPage{true};
  keep("those discarded", list_of(b, around(b)));
  b.index.of.erase("one");
  b.discarded.clear();
  b.book.page = ChoicePage{{"one", {}}};
  keep("with which", list_of(b, around(b)));
}

void add_two(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand, Screen::book);
  b.book.page = ComparePage{{"one", {}}, "older"};
  CompareView both;
  both.name_a = both.name_b = long_name;
  both.colour_a = 0x2266AA;
  both.colour_b = 0x884422;
  both.trail = trail();
  both.trail.beside = both.trail.ghost;
  both.trail.ghost.clear();
  both.trail.marks.clear();
  both.trail.passes.clear();
  both.trail.now.reset();
  both.trail.next.reset();
  for (int i = 0; i < 4; ++i) {
    CompareView::Row pigment;
    pigment.name = "Cerulean blue (chromium)";
    pigment.a = paint::exact(123.4);
    if (i != 1) pigment.b = paint::exact(12.3);
    pigment.differs = true;
    both.rows.push_back(pigment);
  }
  for (int what = CompareView::ratio; what <= CompareView::became; ++what) {
    CompareView::Row row;
    row.what = static_cast<CompareView::What>(what);
    row.a = paint::Amount{12.34, 0.0004, {}};
    row.b = paint::Amount{11.22, 0.0004, {}};
    row.became_a = {session::Became::cracked, session::Became::wont_rewet};
    row.became_b = {session::Became::good};
    row.differs = what % 2 == 0;
    both.rows.push_back(row);
  }
  View v = around(b);
  v.screen = both;
  out.push_back({"two batches" + on, mm, v});
}

// What a plan says of mulling, and what of it the slab still waits for: as those that are there
// already, but for that.
void add_planned(std::vector<Case>& out, const std::string& on) {
  const auto as = [&](const std::string& there, const std::string& name) -> ScreenView& {
    const auto one =
        std::find_if(out.begin(), out.end(), [&](const Case& c) { return c.name == there + on; });
    Case copy = *one;
    copy.name = name + on;
    return out.emplace_back(std::move(copy)).view.screen;
  };
  for (const int batches : {0, 12}) {
    auto& plan = std::get<PlanView>(as("plan", "plan, mulling"));
    plan.mulling = MullingNeeded{{24, 41, 86}, {8, 12, 25}, batches};
    plan.recipe_kept = true;
    plan.recipe = "Cerulean blue (chromium), 3";
  }
  std::get<SlabView>(as("slab, empty", "slab, to be weighed out")).to_come = {
      {session::CardKind::pigment, "Cerulean blue (chromium)", 22.1, 0, false},
      {session::CardKind::pigment, "Quinacridone magenta", 12.4, 0, false}};
  for (const bool dust : {false, true}) {
    auto& slab = std::get<SlabView>(as("slab, running", "slab, still to come"));
    slab.dust = dust;
    slab.to_come = {{session::CardKind::honey, "Honey 1 : 1", 0.62, 14, false},
                    {session::CardKind::water, "Water", 12.4, 0, true},
                    {session::CardKind::wetting_aid, "Ox gall", 0.2, 4, false}};
  }
}

}

void add_pans(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  add_planned(out, on);
  add_faces(out, mm, hand, on);
  add_books(out, mm, hand, on);
  add_two(out, mm, hand, on);
}

}
