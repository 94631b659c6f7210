// What is put on paper from a batch's page.
#include "bench/pads_book.hpp"
#include "bench/record.hpp"
#include "bench/tablet.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

#include <doctest/doctest.h>

namespace paper_test {

using namespace bench;
using hands::Hands;

namespace {

// The page of a batch that was gathered; there is a folder.
struct Page : Hands {
  std::string batch;
  explicit Page(Display display = {}) : Hands(display) {
    b.paper.folder = "/home/maker/Slabside/paper";
    tap("plan");
    gather();
    tap("book");
    batch = b.batches.back();
    tap("batch " + batch);
  }
  // What a tap wants written.
  std::optional<PaperWanted> wanted(const std::string& pad) {
    return step(b, Tap{*pad_named(pad)}, now()).paper;
  }
  BookView book() { return std::get<BookView>(view(b, now()).screen); }
};

}

TEST_CASE("a sheet, labels and a table are wanted of the batch whose page is open") {
  Page h;
  h.tap("paper");
  REQUIRE(h.book().paper);
  const std::size_t lines = h.lines.size();
  const std::pair<const char*, PaperKind> all[] = {
      {"sheet", PaperKind::sheet}, {"labels", PaperKind::labels}, {"table", PaperKind::table}};
  for (const auto& [of, kind] : all) {
    const char* pad = of; // a name that what CAPTURE makes may hold
    CAPTURE(pad);
    const auto wanted = h.wanted(pad);
    REQUIRE(wanted);
    CHECK(wanted->kind == kind);
    CHECK(wanted->of == std::vector<std::string>{h.batch});
    CHECK(h.book().paper->writing);
    CHECK_FALSE(h.wanted(pad)); // not twice before it is answered
    h.give(PaperWritten{std::string("/home/maker/Slabside/paper/") + pad});
    CHECK_FALSE(h.book().paper->writing);
    CHECK(h.book().paper->written == std::string("/home/maker/Slabside/paper/") + pad);
  }
  CHECK(h.lines.size() == lines); // nothing of the batch has changed
}

TEST_CASE("a line of one's own is written once, goes on labels, and stays on this tablet") {
  Page h;
  h.tap("paper");
  REQUIRE(h.shows("label_line"));
  h.give(Text{{BookPad::label_line, ""}, "Weir workshop, by the old mill"});
  CHECK(h.book().label_line == "Weir workshop, by the old mill");
  const Effects asked = step(h.b, Tap{*pad_named("labels")}, h.now());
  REQUIRE(asked.paper);
  CHECK(asked.paper->line == "Weir workshop, by the old mill");
  CHECK(asked.keep_tablet);
  CHECK(read_tablet(written(h.b.tablet))->label_line == "Weir workshop, by the old mill");
}

TEST_CASE("what could not be written or shown stays said until something else is asked for") {
  Page h;
  h.tap("paper");
  const words::Error why{words::BenchSay::told_nothing, {}};
  REQUIRE(h.wanted("sheet"));
  h.give(PaperWritten{tl::make_unexpected(why)});
  CHECK(h.book().paper->written == "");
  REQUIRE(h.book().paper->failure);
  CHECK(h.book().paper->failure->what == why.what);
  REQUIRE(h.wanted("sheet")); // once more
  CHECK_FALSE(h.book().paper->failure);
  h.give(PaperWritten{std::string("a.html")});
  h.give(PaperNotShown{why});
  CHECK(h.book().paper->failure);
  h.tap("leave");
  CHECK_FALSE(h.book().paper);
  h.tap("paper");
  CHECK_FALSE(h.book().paper->failure);
  CHECK(h.book().paper->written == "");
}

TEST_CASE("nothing is put on paper where no folder is, nor of what was discarded") {
  Page h;
  CHECK(h.shows("paper"));
  h.tap("note"); // its field is there
  CHECK_FALSE(h.shows("paper"));
  h.tap("leave");
  h.tap("paper");
  h.tap("rename");
  CHECK_FALSE(h.shows("sheet"));
  h.tap("leave");
  h.tap("paper");
  h.tap("discard");
  CHECK_FALSE(h.shows("paper"));
  CHECK_FALSE(h.book().paper); // but that it was discarded
  h.tap("have_back");
  CHECK(h.shows("paper"));
  h.b.paper.folder.clear();
  CHECK_FALSE(h.shows("paper"));
}

TEST_CASE("a browser has no folder, and puts on paper all the same") {
  Page h;
  h.b.paper = {};
  h.b.paper.in_browser = true;
  REQUIRE(h.shows("paper"));
  h.tap("paper");
  REQUIRE(h.wanted("sheet"));
  h.give(PaperWritten{std::string("blue-sheet"), PaperWay::to_print});
  CHECK(h.book().paper->written == "blue-sheet");
  CHECK(h.book().paper->way == PaperWay::to_print);
  REQUIRE(h.wanted("table"));
  h.give(PaperWritten{std::string("blue-table.csv"), PaperWay::saved});
  CHECK(h.book().paper->way == PaperWay::saved);
  for (const char* const pad : {"leave", "to_list", "list_paper"}) h.tap(pad);
  CHECK(h.shows("swatch_card"));
  for (const char* const pad : {"shelf", "kind_of binder", "others", "card gum_13"}) h.tap(pad);
  CHECK(h.shows("binder_label"));
}

TEST_CASE("the pads for paper have room for a thumb on every display") {
  for (const Size& mm : hands::displays()) {
    Display display;
    display.mm = mm;
    Page h(display);
    CHECK(h.box("paper").w >= 12);
    h.tap("paper");
    for (const char* pad : {"sheet", "labels", "table", "leave"}) {
      CAPTURE(pad);
      CHECK(h.box(pad).w >= 12);
      CHECK(h.box(pad).h >= 12);
    }
  }
}

}
