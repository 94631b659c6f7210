// The board of the first day, and the list of pigments that it leads to.
#include "bench/choices.hpp"
#include "bench/stock.hpp"
#include "planned.hpp"
#include "words/bench_says.hpp"

namespace first_day_test {

using namespace bench;
using hands::Hands, hands::on_shelf, hands::recipe_card;

namespace {

TodayView shown(Hands& h) { return std::get<TodayView>(view(h.b, h.now()).screen); }

void stays_ticked(Hands& h, const std::string& pigment) {
  h.b.shelf_page.ticking = true;
  h.b.shelf_page.search = pigment;
  h.b.screen = Screen::shelf;
  h.tap("own " + pigment);
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::BenchSay::card_stays_own);
}

}

TEST_CASE("the first day: everything on the board leads somewhere, and nothing is asked") {
  Hands h;
  h.tap("today");
  CHECK(shown(h).first_day);
  const std::vector<std::pair<const char*, Screen>> ways{{"new_paint", Screen::plan},
                                                         {"have", Screen::shelf},
                                                         {"my_binder", Screen::binder},
                                                         {"bank_card", Screen::tablet}};
  for (const auto& [pad, screen] : ways) {
    h.tap(pad);
    CHECK(h.b.screen == screen);
    h.tap("today");
  }
  h.tap("hand_on right");
  CHECK(h.b.display.hand == Hand::right);
  h.tap("hand_on left");
  CHECK(h.b.tablet.hand == Hand::left);
  CHECK(h.lines.empty());
}

TEST_CASE(
    "the first day: pigments are ticked off a list, and off it again, and lie on their shelf") {
  Hands h;
  h.tap("today");
  h.tap("have");
  const auto shelf = [&] { return std::get<ShelfView>(view(h.b, h.now()).screen); };
  const auto names = [&] {
    std::vector<std::string> out;
    for (const auto& row : shelf().rows) out.push_back(row.name);
    return out;
  };
  const auto before = names();
  REQUIRE(before.size() > 3);
  const std::string one = shelf().rows[1].pad.arg, two = shelf().rows[2].pad.arg;
  h.tap("own " + one);
  h.tap("own " + two);
  CHECK(names() == before);
  CHECK(shelf().rows[1].mine);
  CHECK(shelf().ticked == 2);
  CHECK(h.count<session::LaidOut>() == 2);
  h.tap("own " + one);
  CHECK_FALSE(shelf().rows[1].mine);
  CHECK(names() == before);
  CHECK(h.b.away.empty());
  h.tap("own " + one);
  h.tap("own " + one);
  CHECK(shelf().ticked == 1);
  h.tap("own_done");
  REQUIRE(shelf().rows.size() == 1);
  CHECK(shelf().rows[0].pad.arg == two);
  CHECK(h.shows("card " + two));
}

TEST_CASE("what was taken or bought of a pigment keeps it ticked, and says so") {
  Hands h;
  h.begin();
  h.tap("today");
  h.b.shelf_page = {};
  stays_ticked(h, "pb28");
  CHECK(h.count<session::Withdrawn>() == 0);
}

TEST_CASE("the pigments of old notes are the maker's own as soon as they are brought") {
  Hands h;
  session::RecipeCard recipe;
  recipe.pigments = {{"py43", session::SaidIn::g, 6, ""}};
  const auto mine = [&] { return is_mine(h.b, *shelf_card(h.b, "py43")); };
  CHECK_FALSE(mine());
  on_shelf(h, recipe_card("r", "Old ochre", recipe));
  CHECK(mine());
  stays_ticked(h, "py43");
}

}
