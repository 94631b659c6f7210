// Lists under a dragging finger: by hand on the screens, and what wet glass does to them.
#include "bench/kept_lists.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/touch.hpp"
#include "bench/view_shelf.hpp"
#include "entries.hpp"
#include "hands.hpp"

namespace scroll_test {

using namespace bench;
using hands::Hands;

namespace {

constexpr auto down = Pointer::down, move = Pointer::move, up = Pointer::up;

ListArea list_of(const Hands& h) {
  const Layout l = layout(h.b);
  REQUIRE(l.list);
  return *l.list;
}
int first(const Hands& h) { return list_of(h).first; }

// Of the Shelf, every pigment of the catalogue: two to a row.
void open_catalogue(Hands& h) {
  h.tap("shelf");
  REQUIRE(list_of(h).rows > 3 * list_of(h).shown);
}

// In steps, as a finger is seen on its way.
void pull(Hands& h, Point from, double mm, int steps, std::int64_t ms) {
  h.point(down, from);
  for (int i = 1; i <= steps; ++i) {
    h.pass_ms(ms / steps);
    h.point(move, {from.x, from.y + mm * i / steps});
  }
}

// Of a row near it.
Point middle(const Hands& h) {
  const ListArea list = list_of(h);
  return {list.box.x + list.box.w / 4, list.box.y + list.shown / 2 * list.pitch_mm + 6};
}
double rows_mm(const Hands& h, double rows) { return rows * list_of(h).pitch_mm; }

// Pulled by so many rows, held still and lifted.
void drag_rows(Hands& h, double rows) {
  const Point from = middle(h);
  pull(h, from, -rows_mm(h, rows), 12, 360);
  h.pass_ms(200);
  h.point(up, {from.x, from.y - rows_mm(h, rows)});
}

void fling(Hands& h, double rows, std::int64_t ms) {
  const Point from = middle(h);
  const double mm = -rows_mm(h, rows);
  pull(h, from, mm, 8, ms);
  h.point(up, {from.x, from.y + mm});
}

// As the window does it: sleeps until it is woken.
int let_run(Hands& h) {
  int frames = 0;
  while (h.b.shelf_page.list.towards) {
    REQUIRE(++frames < 1000);
    h.pass_ms(*h.wake - h.run);
    h.give(Tick{});
  }
  return frames;
}

}

TEST_CASE("a finger drags a list by whole rows and taps nothing") {
  Hands h;
  open_catalogue(h);
  const auto before = h.lines.size();
  drag_rows(h, 3);
  CHECK(first(h) == 3);
  CHECK(h.b.shelf_page.list == Scroll{3, {}, 0});
  CHECK_FALSE(h.b.shelf_page.card);
  CHECK_FALSE(h.b.notice.not_counted);
  drag_rows(h, -2);
  CHECK(first(h) == 1);
  CHECK(h.lines.size() == before);
}

TEST_CASE("every row that shows can be tapped where it shows, between drags") {
  Hands h;
  open_catalogue(h);
  drag_rows(h, 2);
  const auto list = list_of_shelf(h.b);
  const std::string& third_row = listed_from(h.b)[list->cards[4]].id;
  const Layout l = layout(h.b);
  const Pad* at = pad_at(l, {list_of(h).box.x + 5, list_of(h).box.y + 5});
  REQUIRE(at);
  CHECK(at->id == PadId{ShelfPad::card, third_row});
  h.tap("card " + third_row);
  CHECK(h.b.shelf_page.card->id == third_row);
}

TEST_CASE("what shows is what the layout has pads for, at every place of the list") {
  Hands h;
  open_catalogue(h);
  for (int i = 0; i < 8; ++i) {
    const auto v = std::get<ShelfView>(view(h.b, h.now()).screen);
    const Layout l = layout(h.b);
    REQUIRE_FALSE(v.rows.empty());
    for (const auto& row : v.rows) CHECK(pad_of(l, row.pad));
    drag_rows(h, 1);
  }
}

TEST_CASE("while the finger is down the list follows it, and is drawn only when a row changes") {
  Hands h;
  open_catalogue(h);
  const Point from = middle(h);
  int drawn = 0;
  h.point(down, from);
  for (double mm = 1; mm <= 40; mm += 1) {
    h.pass_ms(16);
    drawn += step(h.b, Pointer{move, {from.x, from.y - mm}, h.run, ++h.poll, 0}, h.now()).redraw;
  }
  CHECK(first(h) == static_cast<int>(std::lround(40 / list_of(h).pitch_mm)));
  CHECK(drawn <= first(h) + 1); // and once as the row it began on stopped being pressed
  CHECK_FALSE(view(h.b, h.now()).pressed);
}

TEST_CASE("a list that was flung runs on, slower and slower, comes to rest at a row, and sleeps") {
  Hands h;
  open_catalogue(h);
  fling(h, 2, 80);
  const auto towards = h.b.shelf_page.list.towards;
  REQUIRE(towards);
  CHECK(*towards > 4);
  std::vector<std::int64_t> gone;
  int at = first(h);
  const int began = at;
  while (h.b.shelf_page.list.towards) {
    const std::int64_t since = h.run;
    h.pass_ms(*h.wake - h.run);
    h.give(Tick{});
    CHECK(first(h) > at); // nobody was woken for nothing
    at = first(h);
    gone.push_back(h.run - since);
  }
  CHECK(at == *towards);
  CHECK(static_cast<int>(gone.size()) <= *towards - began);
  CHECK(gone.back() > gone.front());
  CHECK(h.b.shelf_page.list == Scroll{static_cast<double>(at), {}, 0});
  CHECK(*h.wake - h.run > 1000);
}

TEST_CASE("rows that come while a pointer passes over the glass are drawn") {
  Hands h;
  open_catalogue(h);
  fling(h, 2, 80);
  const int before = first(h);
  h.pass_ms(3000);
  CHECK(step(h.b, Pointer{move, {1, 1}, h.run, ++h.poll, 0}, h.now()).redraw);
  CHECK(first(h) > before);
  CHECK_FALSE(step(h.b, Pointer{move, {2, 1}, h.run, ++h.poll, 0}, h.now()).redraw);
}

TEST_CASE("how far a flung list runs does not hang on how often it is drawn") {
  Hands often, seldom;
  for (Hands* h : {&often, &seldom}) {
    open_catalogue(*h);
    fling(*h, 2, 80);
  }
  for (int i = 0; i < 600; ++i) often.pass_ms(5), often.give(Tick{});
  seldom.wait(3);
  CHECK(first(often) == first(seldom));
  CHECK_FALSE(often.b.shelf_page.list.towards);
  CHECK_FALSE(seldom.b.shelf_page.list.towards);
}

TEST_CASE("a tap stops a list that runs, and taps nothing; the next one taps") {
  Hands h;
  open_catalogue(h);
  fling(h, 3, 80);
  h.pass_ms(40);
  h.give(Tick{});
  REQUIRE(h.b.shelf_page.list.towards);
  const Point at = middle(h);
  h.point(down, at);
  const int stopped = first(h);
  CHECK_FALSE(h.b.shelf_page.list.towards);
  h.pass_ms(90);
  h.point(up, at);
  h.wait(2);
  CHECK(first(h) == stopped);
  CHECK_FALSE(h.b.shelf_page.card);
  h.pass_ms(300);
  h.point(down, {at.x + 4, at.y});
  h.pass_ms(90);
  h.point(up, {at.x + 4, at.y});
  CHECK(h.b.shelf_page.card);
}

TEST_CASE("a finger may take hold of a list that runs and drag it on") {
  Hands h;
  open_catalogue(h);
  fling(h, 3, 80);
  REQUIRE(h.b.shelf_page.list.towards);
  const int before = first(h);
  drag_rows(h, 2);
  CHECK(first(h) == before + 2);
}

TEST_CASE("with motion off a list stays where the finger left it, at a row") {
  Hands h;
  h.b.tablet.motion = false;
  open_catalogue(h);
  fling(h, 2.4, 80);
  CHECK(h.b.shelf_page.list == Scroll{2, {}, 0});
}

TEST_CASE("a list ends where its last page is full, and turns at once when the finger turns") {
  Hands h;
  open_catalogue(h);
  const ListArea list = list_of(h);
  for (int i = 0; i < 30; ++i) drag_rows(h, 3);
  CHECK(first(h) == list.rows - list.shown);
  CHECK_FALSE(h.shows("page_on"));
  const Point from = middle(h);
  pull(h, from, -30, 10, 300); // past the end
  for (int i = 1; i <= 10; ++i) {
    h.pass_ms(30);
    h.point(move, {from.x, from.y - 30 + 1.5 * list.pitch_mm * i / 10});
  }
  h.pass_ms(200);
  h.point(up, {from.x, from.y - 30 + 1.5 * list.pitch_mm});
  CHECK(first(h) < list.rows - list.shown);
  for (int i = 0; i < 30; ++i) drag_rows(h, -3);
  CHECK(first(h) == 0);
  CHECK_FALSE(h.shows("page_back"));
}

TEST_CASE("a list flung past its end comes to rest there") {
  Hands h;
  open_catalogue(h);
  const ListArea list = list_of(h);
  for (int i = 0; i < 4; ++i) {
    fling(h, 3, 40);
    let_run(h);
  }
  CHECK(first(h) == list.rows - list.shown);
}

TEST_CASE("a list shorter than its page stays, and a drag on it taps nothing") {
  Hands h;
  open_catalogue(h);
  h.tap("kind_of spoon");
  REQUIRE(list_of(h).rows < list_of(h).shown);
  const Rect row = h.box("card teaspoon");
  pull(h, row.centre(), 20, 8, 200);
  h.point(up, {row.centre().x, row.centre().y + 20});
  h.wait(1);
  CHECK(first(h) == 0);
  CHECK_FALSE(h.b.shelf_page.card);
}

TEST_CASE("pads turn the same list, from wherever a finger has left it") {
  Hands h;
  open_catalogue(h);
  const ListArea list = list_of(h);
  drag_rows(h, 1);
  h.tap("page_on");
  CHECK(first(h) == 1 + list.shown);
  h.tap("page_back");
  CHECK(first(h) == 1);
  h.tap("page_back");
  CHECK(first(h) == 0);
  drag_rows(h, 1);
  while (h.shows("page_on")) h.tap("page_on");
  CHECK(first(h) == list.rows - list.shown);
}

TEST_CASE("a page pad stops a list that runs") {
  Hands h;
  open_catalogue(h);
  fling(h, 2, 80);
  const int before = first(h);
  h.tap("page_on");
  CHECK(first(h) >= before + list_of(h).shown);
  const int after = first(h);
  h.wait(3);
  CHECK(first(h) == after);
}

TEST_CASE("a window that is turned while its list moves starts at the top, at rest") {
  for (const bool held : {true, false}) {
    CAPTURE(held);
    Hands h;
    open_catalogue(h);
    if (held)
      pull(h, middle(h), -40, 8, 200);
    else
      fling(h, 2, 80);
    REQUIRE(first(h) > 0);
    h.give(Resized{Display{{136, 218}, Hand::left}});
    CHECK(h.b.shelf_page.list == Scroll{});
    h.pass_ms(30);
    h.point(move, {30, 20}); // of the finger that is still there
    h.point(up, {30, 20});
    h.wait(1);
    CHECK(h.b.shelf_page.list == Scroll{});
  }
}

TEST_CASE("another list under the same finger is not moved by it") {
  Hands h;
  open_catalogue(h);
  pull(h, middle(h), -40, 8, 200);
  REQUIRE(first(h) > 0);
  h.give(Tap{*pad_named("plan")});
  h.pass_ms(30);
  h.point(move, {middle(h).x, 30});
  h.point(up, {middle(h).x, 30});
  CHECK(h.b.plan.list == Scroll{});
}

TEST_CASE("what is searched for begins at the top, also while the list runs") {
  Hands h;
  open_catalogue(h);
  fling(h, 2, 80);
  h.give(Text{{SharedPad::search, ""}, "blue"});
  h.wait(2);
  CHECK(first(h) == 0);
}

TEST_CASE("the finder of Plan, the Book and Today move under a finger too") {
  Hands h;
  h.tap("plan");
  drag_rows(h, 2);
  CHECK(first(h) == 2);
  CHECK(h.shows("page_back"));
  for (int i = 0; i < 30; ++i) {
    const std::string id = "b" + std::to_string(i);
    h.b.batches.push_back(id);
    h.b.index.of[id] = entries::lying(BookEntry::in_jar, h.wall - i);
    h.b.index.asked.insert(id);
  }
  h.tap("book");
  drag_rows(h, 2);
  CHECK(batches_of_page(h.b).front() == "b27");
  h.tap("today");
  const auto waits = h.b.today.waits;
  REQUIRE(waits.size() == 30);
  drag_rows(h, 2);
  CHECK(std::get<TodayView>(view(h.b, h.now()).screen).waits.front().due == waits[2]);
}

TEST_CASE("Slab and Pans have nothing that a wet finger could shift") {
  Hands h;
  h.begin();
  CHECK_FALSE(layout(h.b).list);
  h.tap("more");
  h.tap("lines");
  CHECK_FALSE(layout(h.b).list);
  h.tap("pans");
  CHECK_FALSE(layout(h.b).list);
}

TEST_CASE("a number that lies over a list is not dragged") {
  Hands h;
  h.tap("plan");
  h.give(Text{*pad_named("search"), "pb28"});
  h.tap("pigment pb28");
  h.tap("weigh");
  CHECK_FALSE(layout(h.b).list);
}

}
