// Views of the Book's comparing, finding and writing, as views.cpp makes the others.
#include "bench/pads_book.hpp"
#include "bench/ranges.hpp"
#include "screens/views_pans.hpp"
#include "words/photos_says.hpp"
#include "words/studio_says.hpp"

#include <array>

namespace views {

using namespace bench;

namespace {

BookView::Row row_of(const PadId& pad, bool chosen) {
  BookView::Row row;
  row.pad = pad;
  row.name = long_name;
  row.colour = 0x2266AA;
  row.made_at = 1773066720000;
  row.progress = session::Progress::gathered;
  row.ratio = paint::exact(12.34);
  row.warned = true;
  row.became = {session::Became::cracked, session::Became::wont_rewet};
  row.chosen = chosen;
  row.swatch = chosen;
  if (chosen) row.image = "photos/a.jpg";
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
  session::Batch batch = batch_of_pans(3);
  batch.entries.push_back(entry_of(99, session::Noted{"Less water, and a day more."}));
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

}

namespace {

// Of "older" and "one", so that the second is held against the first.
void read_swatches(Bench& b) {
  session::Photo photo{std::string(64, 'a'), "jpg"};
  photo.measured = session::Measured{};
  for (const char* const id : {"one", "older"}) {
    b.index.of[id].read = {photo};
    b.index.of[id].pigments = {"pb36"};
  }
  b.index.of["older"].verdicts = {{{"0a1b2c3d", 1}, 0, {session::Became::good}}};
  b.index.of["one"].opened_at = 1;
}

MatchView match_of_two() {
  using Blame = MatchView::Blame;
  MatchView match;
  match.a = {"older", long_name, "", 0x2266AA, 1773066720000, 0};
  match.b = {"one", long_name, "", 0x884422, 1795617120000, 0};
  match.match = {4.2, 1.6, 6.1, {1.2, 0.3}, {-3.6, 0.3}, {0.9, 1.2}, colour::Turned::greener};
  match.match.turned_on = colour::Turned::yellower;
  match.match.turned_back = colour::Turned::redder;
  match.repeats = 12;
  match.blame = {{Blame::lot, "Cerulean blue (chromium)", 0, 2.2},
                 {Blame::sweet, "", -0.123, 1.4},
                 {Blame::minutes, "", 12, 0.4},
                 {Blame::age, "", -123, 0.3}};
  return match;
}

}

namespace {

// As the fold of a batch that has nothing else.
void add_dot(Bench& b, const session::Photo& dot, double clock) {
  const auto& kept = b.folds.kept["one"].batch;
  session::Batch batch = kept ? *kept : session::Batch{};
  session::Entry entry;
  entry.event = dot;
  entry.clock = clock;
  entry.flow = 1.8;
  batch.entries.push_back(entry);
  batch.clock = std::max(batch.clock, clock);
  b.folds.kept["one"].batch = std::make_shared<const session::Batch>(std::move(batch));
}

}

void add_book_pages(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_with_batches(mm, hand, Screen::book);
  const auto keep = [&](const std::string& what, auto screen) {
    View v = view_around(b);
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
  keep("nothing found", list_of(b, view_around(b)));
  b.book.search.clear();
  b.book.page = BatchPage{"one", {}};
  keep("judged", one_of(b));
  BookView priced = one_of(b);
  priced.verdicts.resize(1);
  priced.again_of.clear();
  priced.made_again.clear();
  priced.currency = "EUR";
  priced.cost = session::Cost{2.9};
  session::Card unpriced;
  unpriced.name = long_name;
  priced.cost->unknown = {unpriced};
  priced.a_pan_costs = 0.24;
  priced.pvc = paint::exact(0.65);
  b.photos.there = true;
  b.paper.folder = "/home/maker/Slabside/paper";
  keep("what it cost", priced);
  b.paper = {};
  b.photos.there = false;
  BookView painted = one_of(b);
  painted.colour = 0x2E4F9A;
  painted.swatch = true;
  b.photos.there = true;
  keep("may have photos", painted);
  painted.photos = {"photos/a.jpg", "photos/b.jpg"};
  const auto before_photos = b.folds.kept["one"];
  for (const char digit : {'a', 'b', 'c'}) {
    const session::Photo dot{std::string(64, digit), "jpg", session::PhotoOf::dot};
    const double clock = 500 + 100 * (digit - 'a');
    painted.trail.photos.push_back({clock, 1.8, dot});
    add_dot(b, dot, clock);
  }
  keep("its swatch", painted);
  b.photos.no_pictures["photos/a.jpg"] = words::Error{words::PhotosSay::gone, {"photos/a.jpg"}};
  b.photos.no_pictures[image_of(painted.trail.photos.back().of)] =
      words::Error{words::StudioSay::photo_not_decoded, {}};
  keep("its swatch gone", painted);
  b.photos.no_pictures.clear();
  b.folds.kept["one"] = before_photos;
  const auto index = b.index.of;
  read_swatches(b);
  painted.match = b.book.match = match_of_two();
  keep("its match", painted);
  b.book.match.reset();
  b.index.of = index;
  b.photos.there = false;
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
  keep("some discarded", list_of(b, view_around(b)));
  b.book.page = ListPage{true};
  keep("those discarded", list_of(b, view_around(b)));
  b.index.of.erase("one");
  b.discarded.clear();
  b.book.page = ChoicePage{{"one", {}}};
  keep("with which", list_of(b, view_around(b)));
}

namespace {

BookView chart_of(const Bench& b, const View& v) {
  BookView chart = list_of(b, v);
  chart.by_colour = true;
  const PaintLeft lefts[]{{}, {23.4, 12, false}, {0, 1, false}, {0, 0, true}, {9.4, 0, false}};
  for (std::size_t i = 0; i < chart.rows.size(); ++i) {
    chart.rows[i].swatch = i % 2 == 0;
    chart.rows[i].left = lefts[i % std::size(lefts)];
    chart.rows[i].batches = i % 3 == 0 ? 14 : 1;
    chart.rows[i].chosen = false;
  }
  return chart;
}

}

void add_charts(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_with_batches(mm, hand, Screen::book);
  const auto keep = [&](const std::string& what, auto make) {
    const View around = view_around(b);
    View v = around;
    v.screen = make(b, around);
    out.push_back({"book, " + what + on, mm, v});
  };
  b.paper.folder = "/home/maker/Slabside/paper";
  keep("list, paper", list_of);
  b.book.page = ListPage{false, false, true, {"one"}};
  keep("some for paper", [](const Bench& bench, const View& around) {
    BookView chosen = list_of(bench, around);
    chosen.marked = 1;
    chosen.rows.front().chosen = true;
    return chosen;
  });
  b.book.page = ListPage{};
  b.book.by_colour = true;
  for (int i = 0; i < 40; ++i) b.book.paints.push_back({{"one" + std::to_string(i)}});
  b.book.list.at = 3;
  keep("by colour", chart_of);
  b.book.page = ListPage{false, true};
  const auto asked_of_all = [](const Bench& bench, const View&) {
    BookView asked;
    asked.by_colour = true;
    asked.listed = 40;
    asked.paper = bench.paper;
    return asked;
  };
  keep("all on paper", asked_of_all);
  b.paper = {};
  b.paper.in_browser = true;
  keep("all on paper by a browser", asked_of_all);
}

void add_two(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_with_batches(mm, hand, Screen::book);
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
  View v = view_around(b);
  v.screen = both;
  out.push_back({"two batches" + on, mm, v});
  read_swatches(b);
  both.swatch_a = both.swatch_b = true;
  both.match = b.book.match = match_of_two();
  const auto keep = [&](const std::string& what, bool trails) {
    b.book.page = ComparePage{{"one", {}}, "older", trails};
    both.trails = trails;
    View colours = view_around(b);
    colours.screen = both;
    out.push_back({"two batches, " + what + on, mm, colours});
  };
  keep("their trails", true);
  keep("their colours", false);
  b.photos.there = true;
  both.match->a.image = both.match->b.image = "photos/a.jpg";
  both.match->taken = colour::Taken::one_photo;
  both.match->match = {0.6, 0, 1.4, {0.1, 0.2}, {-0.2, 0.9}, {0.3, 0.2}, colour::Turned::greener};
  both.match->blame.clear();
  keep("no eye sees it", false);
}

}
