#include "bench/pads_shared.hpp"
#include "hands.hpp"

namespace search_test {

using namespace bench;
using hands::Hands;

TEST_CASE("what is searched for is emptied by one tap, on every screen that searches") {
  for (const char* screen : {"plan", "shelf", "book"}) {
    CAPTURE(screen);
    Hands h;
    h.tap(screen);
    CHECK_FALSE(h.shows("clear"));
    const Layout before = layout(h.b);
    h.give(Text{{SharedPad::search, ""}, "no such powder"});
    CHECK(layout(h.b).pads != before.pads);
    h.tap("clear");
    CHECK(layout(h.b).pads == before.pads);
  }
}

TEST_CASE("a batch is found by any name of its pigment") {
  Hands h;
  h.tap("plan");
  h.give(Text{{SharedPad::search, ""}, "limonite"});
  h.tap("pigment py43");
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  h.tap("book");
  h.give(Text{{SharedPad::search, ""}, "Limonite"});
  CHECK(h.shows("batch " + h.b.batch));
  h.give(Text{{SharedPad::search, ""}, "indigo"});
  CHECK_FALSE(h.shows("batch " + h.b.batch));
}

TEST_CASE("what stands in a field is emptied by one tap, wherever one can be written in") {
  Hands h;
  const auto clears = [&](const char* field, const auto& text) {
    CAPTURE(field);
    const std::string cross = std::string("clear ") + field;
    h.give(Text{*pad_named(field), ""});
    CHECK_FALSE(h.shows(cross));
    const Rect whole = h.box(field);
    h.give(Text{*pad_named(field), "2026-11-25"});
    CHECK(h.box(field).w < whole.w);
    CHECK(text() == "2026-11-25");
    h.tap(cross);
    CHECK(text() == "");
    CHECK(h.box(field).w == whole.w);
  };
  h.gather();
  h.tap("book");
  h.tap("batch " + h.b.batches.back());
  h.tap("note");
  clears("note_text", [&] { return *std::get<BatchPage>(h.b.book.page).note; });
  h.tap("leave");
  h.tap("rename");
  clears("name_text", [&] { return *std::get<BatchPage>(h.b.book.page).name; });
  h.tap("plan");
  h.choose("pb28");
  clears("name", [&] { return h.b.plan.name; });
  h.tap("shelf");
  h.give(Text{*pad_named("search"), "pb28"});
  h.tap("card pb28");
  h.tap("jars");
  clears("jar_says currency", [&] { return h.b.shelf_page.jar.currency; });
  clears("jar_says lot", [&] { return h.b.shelf_page.jar.lot; });
  clears("jar_says on", [&] { return h.b.shelf_page.jar.on; });
  h.tap("to_card");
  h.tap("change");
  clears("says name", [&] { return h.b.shelf_page.card->name; });
  clears("says lot", [&] { return h.b.shelf_page.card->lot; });
}

}
