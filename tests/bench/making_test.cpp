// Making binder by touch: amounts, steps and their timer, undone, out of order, on two devices.
#include "bench/choices.hpp"
#include "bench/making.hpp"
#include "bench/stock.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"

namespace making_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;
using Say = words::BenchSay;
using Step = session::MakingStep;

namespace {

BinderView shown(Hands& h) { return std::get<BinderView>(view(h.b, h.now()).screen); }

const BinderView::Step& step_of(const BinderView& v, Step step) {
  for (const BinderView::Step& one : v.steps)
    if (one.step == step) return one;
  FAIL("no such step");
  return v.steps.front();
}

// From the card of the binder with honey.
void open_making_of_honey(Hands& h) {
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12_honey");
  h.tap("make_binder");
  REQUIRE(h.b.screen == Screen::binder);
}

void buy_gum(Hands& h, double g) {
  h.b.stock["gum_arabic"].jars = {{{"s", 1}, h.wall - 1000, session::Bought{"gum_arabic", g}}};
}

const session::Making& last_making(const Hands& h) {
  const session::Making* last = nullptr;
  for (const session::Line& line : h.lines)
    if (const auto* making = std::get_if<session::Making>(&line.event)) last = making;
  REQUIRE(last);
  return *last;
}

bool says(const Hands& h, Say say) {
  return h.b.notice.error && h.b.notice.error->what == words::Sentence(say);
}

void all_steps(Hands& h) {
  for (const char* step :
       {"step gum", "step steep", "step strain", "step sweeten", "step preserve", "step jar"}) {
    h.tap(step);
    h.wait(3600);
  }
}

}

TEST_CASE("the recipe goes by the gum there is, in fives, typed or in spoons") {
  Hands h;
  open_making_of_honey(h);
  CHECK(shown(h).gum_g == 60);
  h.tap("more_gum");
  h.tap("less_gum");
  h.tap("less_gum");
  CHECK(shown(h).gum_g == 55);
  h.tap("gum");
  h.type("33");
  h.tap("more_gum");
  CHECK(shown(h).gum_g == 35);
  CHECK(shown(h).parts.water == Approx(70));
  CHECK(shown(h).parts.honey == Approx(8.75));
  CHECK(shown(h).makes_g == Approx(105)); // of 113.75
  h.tap("measured_in");
  CHECK(shown(h).spoons == 14); // of 2.5 g
  CHECK(shown(h).gum_u == Approx(10.5));
  h.tap("less_gum");
  CHECK(shown(h).parts.gum == Approx(32.5));
  h.tap("measured_in");
  CHECK(shown(h).spoon == "");
  CHECK(h.lines.empty());
}

TEST_CASE("no gum, more than anybody has, and letters are told so") {
  Hands h;
  open_making_of_honey(h);
  for (const char* typed : {"0", "99999"}) {
    h.tap("gum");
    h.type(typed);
    REQUIRE(h.b.number);
    CHECK(h.b.number->error->what == words::Sentence(Say::fact_out_of_range));
    h.tap("leave");
  }
  for (int i = 0; i < 20; ++i) h.tap("less_gum");
  CHECK(shown(h).gum_g == 5);
}

TEST_CASE("what is left of the gum is what there is, and it goes with the first step") {
  Hands h;
  buy_gum(h, 47.6);
  open_making_of_honey(h);
  CHECK(shown(h).gum_g == 47);
  h.tap("gum");
  h.type("50");
  CHECK(*shown(h).gum_left_g == Approx(47.6));
  h.tap("step gum");
  CHECK(last_making(h).start->parts.gum == 50);
  REQUIRE(last_making(h).takes.size() == 1);
  CHECK(last_making(h).takes[0].of == "gum_arabic");
  CHECK(last_making(h).takes[0].g == 50);
  CHECK(shown(h).dust); // it is being poured
  CHECK_FALSE(h.shows("gum"));
  h.tap("step steep");
  CHECK_FALSE(shown(h).dust);
}

TEST_CASE("a step begins with a tap, runs, rings, and is done when the next one begins") {
  Hands h;
  open_making_of_honey(h);
  CHECK(step_of(shown(h), Step::gum_in).main);
  h.tap("step gum");
  h.wait(600);
  CHECK(step_of(shown(h), Step::steep).main);
  h.tap("step steep");
  CHECK(step_of(shown(h), Step::steep).left_min == 24 * 60);
  h.cues.clear();
  h.wait(20 * 3600 + 44 * 60);
  CHECK(step_of(shown(h), Step::steep).left_min == 3 * 60 + 16);
  CHECK(h.cues.empty());
  h.wait(3 * 3600 + 16 * 60);
  CHECK(h.cues == std::vector<SoundCue>{SoundCue::bell});
  CHECK(step_of(shown(h), Step::steep).left_min == 0);
  CHECK(step_of(shown(h), Step::strain).main);
  h.cues.clear();
  h.wait(60);
  CHECK(h.cues.empty());
  h.tap("step strain");
  CHECK_FALSE(step_of(shown(h), Step::steep).runs);
  CHECK(h.count<session::Making>() == 3);
}

TEST_CASE("the program is woken when a step has had its time") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  h.wait(9 * 60 + 30);
  REQUIRE(h.wake);
  const std::int64_t ends = session::ends_at(*making_in_hand(h.b));
  CHECK(*h.wake - h.run <= ends - h.wall);
}

TEST_CASE("steps twice, before the gum, and back") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step strain");
  CHECK(says(h, Say::making_gum_first));
  CHECK(h.lines.empty());
  h.tap("step gum");
  h.tap("step gum");
  CHECK(says(h, Say::making_step_twice));
  CHECK(h.count<session::Making>() == 1);
  h.tap("step strain"); // before the steeping: a maker may
  CHECK(making_in_hand(h.b)->steps.size() == 2);
  h.tap("onto_shelf");
  CHECK(says(h, Say::making_not_in_jar));
  h.tap("take_step_back");
  CHECK(making_in_hand(h.b)->steps.size() == 1);
  h.tap("take_step_back");
  CHECK(making_in_hand(h.b) == nullptr);
  CHECK(shown(h).gum_g == 60);
  CHECK(shown(h).recipe == shelf_card(h.b, "gum_12_honey")->name);
  CHECK_FALSE(h.shows("take_step_back"));
}

TEST_CASE("done, it is a card of the shelf, which the plan takes") {
  Hands h;
  open_making_of_honey(h);
  h.tap("dose");
  h.type("3");
  all_steps(h);
  h.tap("jar_holds");
  h.type("178.5");
  h.tap("onto_shelf");
  CHECK(h.b.screen == Screen::shelf);
  CHECK(h.b.makings.empty());
  const session::Card* jar = shelf_card(h.b, h.b.plan.binder);
  REQUIRE(jar);
  CHECK(jar->kind() == session::CardKind::binder);
  CHECK(jar->made_on == "2026-11-25");
  CHECK(jar->keep_until == "2027-02-25");
  CHECK(jar->made_g == 178.5);
  CHECK(jar->lot != "");
  CHECK(recipe_of(*jar).honey == Approx(15));
  CHECK(recipe_of(*jar).other == Approx(0.15)); // three drops of preservative
  CHECK(stock_of(h.b, *jar)->g == Approx(178.5));
  REQUIRE(h.b.shelf_page.card);
  CHECK(h.b.shelf_page.card->id == jar->id);
}

TEST_CASE("without a preservative it keeps two weeks, and a tap says otherwise") {
  Hands h;
  open_making_of_honey(h);
  CHECK(shown(h).keep_until == "2026-12-09"); // none is in yet
  h.tap("step gum");
  h.tap("step preserve"); // ticked, and nobody says how much: it may be none
  CHECK(shown(h).keep_until == "2026-12-09");
  h.tap("dose"); // said afterwards it counts as well, and stands in the file
  h.type("3");
  CHECK(std::get<session::Making>(h.lines.back().event).drops == 3);
  CHECK(shown(h).dose == 3);
  CHECK(shown(h).keep_until == "2027-02-25");
  h.tap("take_step_back");
  CHECK(shown(h).keep_until == "2026-12-09");
  h.tap("step preserve");
  CHECK(shown(h).keep_until == "2027-02-25");
  h.tap("take_step_back");
  h.tap("step jar");
  CHECK(shown(h).keep_until == "2026-12-09");
  h.tap("keep_cold_until");
  CHECK(shown(h).keep_until == "2027-02-25");
}

TEST_CASE("the last day of a month is three months later the last of that one") {
  Hands h;
  h.wall = 1796030000000; // 2026-11-30
  open_making_of_honey(h);
  h.tap("keep_cold_until");
  CHECK(shown(h).keep_until == "2027-02-28");
}

TEST_CASE("the step that runs says when it ends") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  const std::int64_t since_tap = 210; // ms, see Hands::tap
  CHECK(shown(h).steps[0].ends_at == h.wall - since_tap + 10 * 60000);
  h.tap("step steep");
  CHECK(shown(h).steps[0].ends_at == 0);
  CHECK(shown(h).steps[1].ends_at == h.wall - since_tap + 24 * 3600000);
}

TEST_CASE("steps survive the program, wait on Today and lead back") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  h.tap("step steep");
  const std::string of = h.b.binder.of;
  Hands later;
  later.wall = h.wall + 3600 * 1000;
  session::Log log = h.b.logs.front();
  log.session = "0ther";
  later.give(Loaded{{log}, {}, {}});
  later.tap("today");
  CHECK(due_now(later.b, later.now()) == 0); // it steeps
  later.wait(24 * 3600);
  CHECK(due_now(later.b, later.now()) == 1);
  later.tap("due making " + of);
  CHECK(later.b.screen == Screen::binder);
  CHECK(step_of(shown(later), Step::strain).main);
  CHECK_FALSE(shown(later).stood);
  later.wait(70.0 * 24 * 3600);
  later.tap("today");
  CHECK(later.shows("due making " + of));    // until it is done or given up
  CHECK(due_now(later.b, later.now()) == 0); // though it is no work of this week
  later.tap("due making " + of);
  CHECK(shown(later).stood);
  CHECK(words::days_of(shown(later).keep_until) < words::day_number(later.wall, 0));
}

TEST_CASE("another device begins the next step of what was begun here") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  const std::string of = h.b.binder.of;
  session::Log log;
  log.session = "0ther";
  session::Line line;
  line.at = h.wall + 60000;
  line.event = session::Making{Step::steep, of};
  log.lines = {line};
  h.give(Arrived{{log}, {}, {}, {}});
  CHECK(step_of(shown(h), Step::steep).runs);
  h.tap("step steep");
  CHECK(says(h, Say::making_step_twice));
  h.wall -= 3600 * 1000; // and by a clock that was set back it lasts no longer than it does
  CHECK(step_of(shown(h), Step::steep).left_min == 24 * 60);
}

TEST_CASE("two at a time, turned through, and one thrown away") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  const std::string first = h.b.binder.of;
  h.tap("shelf");
  h.tap("card gum_12_honey");
  h.tap("make_binder");
  CHECK(h.b.binder.of == first); // which is not done
  CHECK_FALSE(h.shows("other_making"));
  h.tap("shelf");
  h.tap("card gum_12");
  h.tap("make_binder");
  CHECK(h.b.binder.of == "");
  h.tap("step gum");
  const std::string second = h.b.binder.of;
  h.tap("other_making");
  CHECK(h.b.binder.of == first);
  h.tap("other_making");
  CHECK(h.b.binder.of == ""); // a third
  h.tap("other_making");
  CHECK(h.b.binder.of == second);
  h.tap("give_up");
  CHECK(h.b.makings.size() == 1);
  CHECK(h.b.binder.of == "");
}

TEST_CASE("the binder whose recipe it goes by is put away while it steeps") {
  Hands h;
  open_making_of_honey(h);
  h.tap("step gum");
  h.tap("shelf");
  h.tap("card gum_12_honey");
  h.tap("put_away");
  h.tap("today");
  h.tap("due making " + h.b.makings.begin()->first);
  CHECK(shown(h).parts.honey == 15);
  CHECK(shown(h).name != "");
  h.tap("step steep");
  CHECK(making_in_hand(h.b)->steps.size() == 2);
}

TEST_CASE("no binder on the shelf: it says what to write first") {
  Hands h;
  std::erase_if(h.b.shelf,
                [](const session::Card& c) { return c.kind() == session::CardKind::binder; });
  h.b.plan.binder.clear();
  h.tap("today");
  h.tap("my_binder");
  CHECK(shown(h).why_not->what == words::Sentence(Say::making_no_recipe));
  CHECK_FALSE(h.shows("step gum"));
}

TEST_CASE("a binder that suffices for one more batch leads to making it; of one name all counts") {
  Hands h;
  for (session::Card& card : h.b.shelf)
    if (card.id == "gum_12") card.made_g = 10, card.made_on = "2026-11-20";
  h.b.index.took_ug["gum_12"][{1, "b"}] = 8'000'000;
  h.tap("today");
  h.tap("due low gum_12");
  CHECK(h.b.screen == Screen::binder);
  CHECK(h.b.binder.by == "gum_12");
  session::Card full = *shelf_card(h.b, "gum_12");
  full.id = "full";
  full.made_on = "2026-11-24";
  full.made_g = 100;
  h.b.shelf.push_back(full);
  h.tap("today");
  CHECK_FALSE(h.shows("due low gum_12"));
  CHECK_FALSE(h.shows("due low full"));
}

TEST_CASE("honey out of a syrup goes off its jar with its water; unmixed honey goes first") {
  Hands h;
  h.b.stock["honey_11"].jars = {{{"s", 1}, h.wall - 1000, session::Bought{"honey_11", 200}}};
  open_making_of_honey(h);
  CHECK(shown(h).syrup == shelf_card(h.b, "honey_11")->name);
  CHECK(shown(h).syrup_g == Approx(30));
  CHECK(shown(h).syrup_water_g == Approx(15));
  for (const char* step : {"step gum", "step steep", "step strain"}) h.tap(step);
  h.b.stock["honey_11"].jars = {{{"s", 1}, h.wall - 1000, session::Bought{"honey_11", 200}}};
  h.tap("step sweeten");
  REQUIRE(last_making(h).takes.size() == 1);
  CHECK(last_making(h).takes[0].of == "honey_11");
  CHECK(last_making(h).takes[0].g == Approx(30));
  session::Card alone = *shelf_card(h.b, "honey_11");
  alone.id = "own_honey";
  alone.facts = session::LiquidCard{session::CardKind::honey, {.honey = 1}};
  h.b.shelf.push_back(alone);
  CHECK(sweet_of_shelf(h.b, true, 15).card->id == "own_honey");
  CHECK(sweet_of_shelf(h.b, true, 15).g == 15);
}

TEST_CASE("a syrup nobody bought or weighed gives no honey: its card is but what ships") {
  Hands h;
  open_making_of_honey(h);
  CHECK(shown(h).syrup.empty());
  CHECK_FALSE(sweet_of_shelf(h.b, true, 15).card);
}

}
