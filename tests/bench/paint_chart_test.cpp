// What the workshop makes, by hue and lightness; what of it is put on paper; recipes found on
// Shelf.
#include "bench/colour_chart.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/paint_chart.hpp"
#include "planned.hpp"

namespace paint_chart_test {

using namespace bench;
using hands::Hands;

namespace {

BookView shown(Hands& h) { return std::get<BookView>(view(h.b, h.now()).screen); }

std::string make(Hands& h, const std::string& pigment, const std::string& name) {
  h.tap("plan");
  h.give(Text{{SharedPad::search, ""}, pigment});
  h.tap("pigment " + pigment);
  h.give(Text{{PlanPad::name, ""}, name});
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("9");
  for (const char* pad : {"pass", "pass", "pass", "gather"}) h.tap(pad);
  return h.b.batch;
}

std::vector<std::string> names(Hands& h) {
  std::vector<std::string> out;
  for (const auto& row : shown(h).rows) out.push_back(row.name);
  return out;
}

// Ochre, blue twice, white.
struct Studio : Hands {
  std::string ochre, first_blue, second_blue, white;
  explicit Studio(Display display = {}) : Hands(display) {
    b.paper.folder = "/home/maker/Slabside/paper";
    ochre = make(*this, "py43", "Quarry ochre");
    first_blue = make(*this, "pb28", "Weir blue");
    white = make(*this, "pw6", "Chalk");
    second_blue = make(*this, "pb28", "weir Blue, 2");
    tap("book");
  }
};

}

TEST_CASE("a colour stands by its hue, greys last, the light before the dark") {
  const std::uint32_t red = 0xc02030, light_red = 0xf07080, yellow = 0xe0c020, blue = 0x2040c0,
                      grey = 0x777777, black = 0x101010;
  const std::uint32_t in_order[]{light_red, red, yellow, blue, grey, black};
  for (std::size_t i = 0; i + 1 < std::size(in_order); ++i) {
    CAPTURE(i);
    CHECK(chart_place(in_order[i]) < chart_place(in_order[i + 1]));
  }
}

TEST_CASE("a colour in OKLCH is that which the chart of hues was made of") {
  // White and sRGB's red as the source gives them (Ottosson 2020).
  CHECK(shade_of(0xffffff).lightness == doctest::Approx(1).epsilon(1e-4));
  CHECK(shade_of(0xffffff).chroma < 1e-4);
  CHECK(shade_of(0xff0000).lightness == doctest::Approx(0.628).epsilon(1e-3));
  CHECK(shade_of(0xff0000).chroma == doctest::Approx(0.2577).epsilon(1e-3));
  CHECK(shade_of(0xff0000).degrees == doctest::Approx(29.23).epsilon(1e-3));
}

TEST_CASE("each paint stands once, with what is left of all its batches, and leads to the latest") {
  Studio h;
  CHECK(names(h).size() == 4);
  h.tap("by_colour");
  CHECK(names(h) == std::vector<std::string>{"Quarry ochre", "weir Blue, 2", "Chalk"});
  const BookView::Row blue = shown(h).rows[1];
  CHECK(blue.batches == 2);
  REQUIRE(blue.left);
  const Folded one = kept_fold(h.b, h.second_blue);
  REQUIRE(one);
  CHECK(blue.left->jar_mL == doctest::Approx(2 * left_of(*one).jar_mL).epsilon(0.02));
  CHECK(blue.left->pans == 0);
  h.tap("batch " + h.second_blue);
  CHECK(shown(h).batch->id == h.second_blue);
  h.tap("to_list");
  CHECK(shown(h).by_colour);
  h.tap("by_colour");
  CHECK(names(h).front() == "weir Blue, 2"); // by date again
  CHECK(names(h).size() == 4);
}

TEST_CASE("what is poured and what is discarded changes the chart") {
  Studio h;
  h.tap("by_colour");
  h.tap("pans");
  h.tap("new_pan");
  h.tap("book");
  CHECK(shown(h).rows[1].left->pans == 1);
  h.tap("batch " + h.white);
  h.tap("discard");
  h.tap("to_list");
  CHECK(names(h) == std::vector<std::string>{"Quarry ochre", "weir Blue, 2"});
}

TEST_CASE("a paint is as it was last read, though its latest batch was not") {
  Studio h;
  h.tap("by_colour");
  CHECK_FALSE(shown(h).rows[1].swatch);
  const std::string older = h.b.book.paints[1].batches.back();
  REQUIRE(older != h.second_blue);
  h.b.index.of[older].swatch = 0x2a4fb0;
  chart_paints(h.b);
  const BookView::Row blue = shown(h).rows[1];
  CHECK(blue.name == "weir Blue, 2");
  CHECK(blue.swatch);
  CHECK(blue.colour == 0x2a4fb0);
}

TEST_CASE("what is searched for is searched for among paints too") {
  Studio h;
  h.tap("by_colour");
  h.give(Text{{SharedPad::search, ""}, "weir"});
  CHECK(names(h) == std::vector<std::string>{"weir Blue, 2"});
  h.give(Text{{SharedPad::search, ""}, "nothing so named"});
  CHECK(names(h).empty());
  CHECK_FALSE(h.shows("list_paper"));
}

TEST_CASE("of all that is listed sheets, labels, a table, a list and cards are wanted") {
  Studio h;
  h.tap("list_paper");
  REQUIRE(shown(h).paper);
  CHECK(shown(h).listed == 4);
  const std::pair<const char*, PaperKind> all[] = {{"sheet", PaperKind::sheet},
                                                   {"labels", PaperKind::labels},
                                                   {"table", PaperKind::table},
                                                   {"paint_list", PaperKind::paints},
                                                   {"swatch_card", PaperKind::swatch_card}};
  for (const auto& [of, kind] : all) {
    const char* pad = of; // a name that what CAPTURE makes may hold
    CAPTURE(pad);
    const auto wanted = step(h.b, Tap{*pad_named(pad)}, h.now()).paper;
    REQUIRE(wanted);
    CHECK(wanted->kind == kind);
    CHECK(wanted->of == std::vector<std::string>{h.second_blue, h.white, h.first_blue, h.ochre});
    h.give(PaperWritten{std::string("a.html")});
  }
  h.tap("leave");
  CHECK_FALSE(shown(h).paper);
  h.tap("by_colour");
  h.tap("list_paper");
  CHECK(shown(h).listed == 3);
  const auto wanted = step(h.b, Tap{*pad_named("labels")}, h.now()).paper;
  REQUIRE(wanted);
  CHECK(wanted->of == std::vector<std::string>{h.ochre, h.second_blue, h.white});
}

TEST_CASE("some of what is listed are chosen by a tap each, and they alone go on paper") {
  Studio h;
  h.tap("by_colour");
  h.tap("list_paper");
  h.tap("mark");
  REQUIRE(shown(h).marked);
  CHECK(*shown(h).marked == 0);
  CHECK_FALSE(shown(h).by_colour);
  CHECK_FALSE(h.shows("list_paper"));
  for (const std::string& batch : {h.first_blue, h.white, h.ochre, h.white})
    h.tap("batch " + batch);
  CHECK(*shown(h).marked == 2);
  CHECK(shown(h).rows[2].chosen);
  CHECK_FALSE(shown(h).rows[1].chosen);
  h.give(Text{{SharedPad::search, ""}, "weir"}); // what is not listed stays chosen
  CHECK(*shown(h).marked == 2);
  h.tap("list_paper");
  REQUIRE(shown(h).paper);
  const auto wanted = step(h.b, Tap{*pad_named("labels")}, h.now()).paper;
  REQUIRE(wanted);
  CHECK(wanted->of == std::vector<std::string>{h.first_blue, h.ochre});
  h.tap("leave");
  CHECK(*shown(h).marked == 2);
  h.tap("leave");
  CHECK_FALSE(shown(h).marked);
  CHECK(h.shows("list_paper"));
}

TEST_CASE("paints have room for a thumb on every display") {
  for (const Size& mm : hands::displays()) {
    Display display;
    display.mm = mm;
    Studio h(display);
    h.tap("by_colour");
    CHECK(h.box("batch " + h.ochre).w >= 26);
    CHECK(h.box("batch " + h.ochre).h >= 22);
    h.tap("list_paper");
    for (const char* pad :
         {"sheet", "labels", "table", "paint_list", "swatch_card", "mark", "leave"}) {
      CAPTURE(pad);
      CHECK(h.box(pad).w >= 26);
      CHECK(h.box(pad).h >= 12);
    }
  }
}

TEST_CASE("three hundred paints are turned by pages, and none is left out") {
  Hands h;
  for (int i = 0; i < 300; ++i) {
    const std::string id = "paint" + std::to_string(i);
    h.b.batches.push_back(id);
    BookEntry entry;
    entry.name = id;
    entry.swatch = static_cast<std::uint32_t>(i * 54321 & 0xffffff);
    h.b.index.of[id] = entry;
  }
  h.b.book.by_colour = true;
  h.b.screen = Screen::book;
  chart_paints(h.b);
  std::set<std::string> seen;
  for (;;) {
    for (const PaintMade& paint : paints_of_page(h.b)) seen.insert(paint.batches.front());
    if (!h.shows("page_on")) break;
    h.tap("page_on");
  }
  CHECK(seen.size() == 300);
}

TEST_CASE("a binder's label is wanted from its card, where there is a folder") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12");
  CHECK_FALSE(h.shows("binder_label"));
  h.b.paper.folder = "/home/maker/Slabside/paper";
  const auto wanted = step(h.b, Tap{*pad_named("binder_label")}, h.now()).paper;
  REQUIRE(wanted);
  CHECK(wanted->kind == PaperKind::binder_labels);
  CHECK(wanted->of == std::vector<std::string>{"gum_12"});
}

TEST_CASE("recipes are found on Shelf by their names and by their pigments'") {
  Hands h;
  session::RecipeCard blue, earth;
  blue.pigments = {{"pb28", session::SaidIn::g, 10}};
  earth.pigments = {{"py43", session::SaidIn::g, 10}};
  hands::on_shelf(h, hands::recipe_card("r1", "Evening over the weir", blue));
  hands::on_shelf(h, hands::recipe_card("r2", "Sun on the quarry", earth));
  h.tap("shelf");
  h.tap("kind_of recipe");
  const auto listed = [&] {
    std::vector<std::string> out;
    const auto shelf = std::get<ShelfView>(view(h.b, h.now()).screen);
    for (const auto& row : shelf.rows) out.push_back(row.name);
    return out;
  };
  CHECK(listed().size() == 2);
  h.give(Text{{SharedPad::search, ""}, "WEIR"});
  CHECK(listed() == std::vector<std::string>{"Evening over the weir"});
  h.give(Text{{SharedPad::search, ""}, "ochre"});
  CHECK(listed() == std::vector<std::string>{"Sun on the quarry"});
  h.give(Text{{SharedPad::search, ""}, "nothing so named"});
  CHECK(listed().empty());
}

}
