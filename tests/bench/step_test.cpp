#include "bench/pads_plan.hpp"
#include "bench/pads_slab.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"
#include "words/studio_says.hpp"

#include <cmath>

namespace step_test {

using namespace bench;
using hands::Hands;

TEST_CASE("nothing is written before something was done") {
  Hands h;
  for (const char* pad : {"pigment pb28", "book", "plan"}) h.tap(pad);
  h.give(Leaving{});
  CHECK(h.lines.empty());
}

TEST_CASE("beginning a batch names its cards in full, once") {
  Hands h;
  h.begin();
  CHECK(h.b.screen == Screen::slab);
  REQUIRE(h.lines.size() > 3);
  CHECK(std::holds_alternative<session::Began>(h.lines[0].event));
  CHECK(std::get<session::Began>(h.lines[0].event).local == "2026-11-25T15:32:01+01:00");
  CHECK(std::holds_alternative<session::Opened>(h.lines[1].event));
  CHECK(h.slab().materials.size() == 6);
  const int laid = h.count<session::LaidOut>();
  for (const char* pad : {"add gum_12", "add water"}) h.tap(pad);
  CHECK(h.count<session::LaidOut>() == laid);
  for (std::size_t i = 0; i < h.lines.size(); ++i) CHECK(h.lines[i].n == i);
}

TEST_CASE("one tap is one line, and the numbers follow") {
  Hands h;
  h.begin();
  CHECK(h.slab().ratio->value == 0);
  CHECK(h.slab().advice.kind == Advice::first_helping);
  const auto before = h.lines.size();
  for (int i = 0; i < 7; ++i) h.tap("add gum_12");
  CHECK(h.lines.size() == before + 7);
  CHECK(h.slab().ratio->value > 0);
  CHECK(h.b.folded->totals[1].drops == 7);
}

TEST_CASE("another amount holds for one tap") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount 5 drops"}) h.tap(pad);
  CHECK(h.slab().materials[0].next.count == 5);
  h.tap("add gum_12");
  CHECK(h.slab().materials[0].next.count == 1);
  h.tap("add gum_12");
  CHECK(h.b.folded->totals[1].drops == 6);
  h.tap("another");
  h.tap("amount 1/4 tsp");
  h.tap("add gum_12");
  CHECK(h.b.folded->totals[1].spoons.at("teaspoon") == 0.25);
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("2.5");
  CHECK(h.b.folded->totals[1].weighed_g == 2.5);
  h.tap("another");
  h.tap("leave");
  CHECK(is_open<TrailPanel>(h.slab().panel));
}

TEST_CASE("undo takes back the last thing a hand did, and then the one before") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("add water");
  h.tap("felt too_sticky");
  CHECK(std::holds_alternative<session::Felt>(*h.slab().undo.target));
  h.tap("undo");
  CHECK(h.slab().undo.card_name == "Water");
  h.tap("undo");
  CHECK(h.slab().undo.card_name == "Gum 1:2");
  h.tap("undo");
  CHECK(h.slab().undo.card_name == "Cobalt blue");
  h.tap("undo");
  CHECK_FALSE(h.slab().ratio);
  CHECK(h.count<session::Withdrawn>() == 4);
  CHECK(std::holds_alternative<session::Opened>(*h.slab().undo.target));
  h.tap("undo");
  CHECK(h.b.batch.empty());
  CHECK_FALSE(h.shows("undo"));
  CHECK(h.count<session::Withdrawn>() == 5);
}

TEST_CASE("passes: wetting out, mulling, scraping, gathering, closing, and back again") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("8");
  CHECK(h.slab().pass.next == PassView::wet_out);
  CHECK(h.slab().dust);
  h.tap("pass");
  h.wait(60);
  CHECK(h.slab().pass.running == session::Stage::wetting_out);
  CHECK(h.slab().pass.seconds == doctest::Approx(60.21));
  CHECK_FALSE(h.shows("gather"));
  h.tap("pass");
  CHECK_FALSE(h.slab().dust);
  CHECK(h.slab().pass.number == 1);
  h.tap("felt right");
  CHECK(std::get<session::Felt>(h.lines.back().event).by == session::By::muller);
  CHECK(h.slab().advice.kind == Advice::keep_mulling);
  h.tap("pass");
  CHECK(h.slab().advice.kind == Advice::test_dot);
  h.tap("dot");
  h.tap("specks few");
  CHECK(h.slab().advice.kind == Advice::keep_mulling);
  h.tap("dot");
  h.tap("specks none");
  CHECK(h.slab().advice.kind == Advice::there);
  CHECK_FALSE(h.slab().pass.running);
  CHECK(h.slab().pass.number == 2);
  h.tap("gather");
  CHECK(h.slab().advice.kind == Advice::gathered);
  h.tap("back_on_slab");
  CHECK(h.slab().progress == session::Progress::open);
  h.tap("gather");
  h.tap("close");
  CHECK(h.b.screen == Screen::book);
  h.tap("take_up");
  CHECK(h.b.screen == Screen::slab);
  CHECK(h.slab().progress == session::Progress::gathered);
}

TEST_CASE("a pass wakes the window each second, an idle slab seldom, other screens by the minute") {
  Hands h;
  CHECK(*h.wake - h.run <= 60000);
  h.begin();
  h.wait(5);
  CHECK(*h.wake - h.run == 20000);
  h.tap("pass");
  h.give(Tick{});
  CHECK(*h.wake - h.run <= 1000);
  h.tap("plan");
  h.wait(5);
  CHECK(*h.wake - h.run > 20000);
}

TEST_CASE("test dots and troubles are notes") {
  Hands h;
  h.begin();
  h.tap("dot");
  h.tap("specks few");
  CHECK(h.slab().dot == session::Specks::few);
  h.tap("trouble");
  h.tap("trouble_is gelling");
  CHECK(std::get<session::Trouble>(h.lines.back().event).what == session::TroubleKind::gelling);
  REQUIRE(h.slab().remedy); // until it is put away
  CHECK(mL_of(h.slab().remedy->amount, measures_of_binder(h.b)) > 0);
  h.tap("leave");
  CHECK(is_open<TrailPanel>(h.slab().panel));
}

TEST_CASE("the bottle, before and after; a lost count") {
  Hands h;
  h.begin();
  h.tap("more");
  h.tap("bottle");
  h.tap("bottle_of gum_12");
  h.type("80");
  for (int i = 0; i < 10; ++i) h.tap("add gum_12");
  h.tap("more");
  h.tap("bottle");
  h.tap("lost_count gum_12");
  const double unsure = paint::uncertainty(*h.slab().ratio);
  h.tap("more");
  h.tap("bottle");
  h.tap("bottle_of gum_12");
  h.type("79.5");
  CHECK(h.slab().ratio->value == doctest::Approx(0.5 / 12 * 10).epsilon(1e-9));
  CHECK(paint::uncertainty(*h.slab().ratio) < unsure);
}

TEST_CASE("the number pad takes one point and refuses nonsense with words") {
  Hands h;
  h.begin();
  h.tap("add pb28");
  for (const char* digits : {"", ".", "1.2.3", "99999"}) {
    for (int i = 0; i < 9; ++i) h.tap("erase");
    h.type(digits);
    CAPTURE(digits);
    REQUIRE(h.slab().number);
    CHECK(h.slab().number->error);
    CHECK_FALSE(words::message(*h.slab().number->error).empty());
  }
  CHECK(h.count<session::Added>() == 1);
  for (int i = 0; i < 9; ++i) h.tap("erase");
  h.type(".5");
  CHECK_FALSE(h.slab().number);
  CHECK(h.b.folded->totals[0].weighed_g == 12.5);
}

TEST_CASE("the room: guessed until typed, refused where it cannot be") {
  Hands h;
  h.tap("humidity");
  h.type("140");
  auto plan = std::get<PlanView>(view(h.b, h.now()).screen);
  CHECK(plan.number->error->what == words::PaintSay::humidity_out_of_range);
  h.tap("leave");
  CHECK(plan.room_guessed);
  h.tap("humidity");
  h.type("38");
  h.tap("celsius");
  h.type("19.5");
  plan = std::get<PlanView>(view(h.b, h.now()).screen);
  CHECK(plan.humidity == doctest::Approx(0.38));
  CHECK(plan.celsius == 19.5);
  CHECK_FALSE(plan.room_guessed);
}

TEST_CASE("a batch's name: slashes, quotes and emoji stay; what is no text is refused") {
  Hands h;
  h.tap("pigment pb28");
  h.give(Text{{PlanPad::name, ""}, "a/b\\c \"d\" 🎨"});
  h.give(Text{{PlanPad::name, ""}, "broken \xC3"});
  CHECK(h.b.plan.name == "a/b\\c \"d\" 🎨");
  CHECK(h.b.notice.error->what == words::SessionSay::text_not_utf8);
  h.give(Text{{PlanPad::name, ""}, std::string(10000, 'x')});
  CHECK(h.b.plan.name.size() == 200);
  CHECK(h.b.notice.error->what == words::BenchSay::text_shortened);
  h.give(Text{{PlanPad::name, ""}, ""});
  CHECK_FALSE(h.shows("begin"));
}

TEST_CASE("what is saved and what is not") {
  Hands h;
  h.begin();
  CHECK_FALSE(h.slab().undo.saved);
  CHECK(h.slab().undo.unsaved == h.lines.size());
  h.give(Saved{h.lines.back().n, ""});
  CHECK(h.slab().undo.saved);
  h.tap("add gum_12");
  CHECK(h.slab().undo.unsaved == 1);
  const words::Error full{words::StudioSay::disk_write_failed, {"a.jsonl", "the disk is full"}};
  h.give(SaveFailed{full});
  CHECK(h.slab().save_failure == full);
  for (int i = 0; i < 50; ++i) h.tap("add gum_12");
  CHECK(h.slab().undo.unsaved == 51);
  CHECK(h.b.folded->totals[1].drops == 51);
  h.give(Saved{h.lines.back().n, "/elsewhere"});
  CHECK_FALSE(h.slab().save_failure);
  CHECK(h.slab().saved_elsewhere);
  CHECK(h.slab().undo.saved);
  h.give(Saved{h.lines.back().n, ""});
  CHECK_FALSE(h.slab().saved_elsewhere);
}

TEST_CASE("taken up by a second session, undo reaches only its own lines") {
  Hands first;
  first.begin();
  first.tap("add gum_12");
  session::File file;
  file.session = "c41e08d5";
  file.lines = first.lines;
  Hands second;
  second.b = start("d52f19e6", "a83f", Display{}, second.now());
  second.wall = first.wall + 7200000;
  second.give(Loaded{session::join_parts({file}), file.damage, {}});
  second.tap("book");
  second.tap("batch " + first.b.batch);
  second.tap("take_up");
  CHECK(second.slab().materials.size() == 6);
  CHECK_FALSE(second.slab().undo.target);
  CHECK(second.lines.empty());
  second.tap("add gum_12");
  CHECK(second.b.folded->totals[1].drops == 2);
  second.tap("undo");
  CHECK(second.b.folded->totals[1].drops == 1);
  CHECK_FALSE(second.slab().undo.target);
}

TEST_CASE("a batch of a newer format is shown and cannot be taken up") {
  Hands first;
  first.begin();
  session::Log log;
  log.session = "c41e08d5";
  log.lines = first.lines;
  for (const bool newer : {false, true}) {
    log.future = newer;
    Hands second;
    second.b = start("d52f19e6", "a83f", Display{}, second.now());
    second.give(Loaded{{log}, {}, {}});
    second.tap("book");
    second.tap("batch " + first.b.batch);
    CHECK(second.shows("take_up") == !newer);
    CHECK(std::get<BookView>(view(second.b, second.now()).screen).batch->newer == newer);
  }
}

TEST_CASE("a clock that says 1970 cannot put an undo before its addition") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.wall = 0;
  h.tap("add gum_12");
  h.tap("undo");
  CHECK(h.b.folded->totals[1].drops == 1);
  std::int64_t last = 0;
  for (const session::Line& line : h.lines) {
    if (line.batch.empty()) continue;
    CHECK(line.at > last);
    last = line.at;
  }
  REQUIRE(h.count<session::ClockJumped>() == 1);
  h.wall += 30000; // the clock's own corrections are not worth a line
  h.tap("add gum_12");
  CHECK(h.count<session::ClockJumped>() == 1);
}

TEST_CASE("the pressed pad shows where its addition would land") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.down("add gum_12");
  const auto pressed = h.slab();
  CHECK(view(h.b, h.now()).pressed == PadId{SlabPad::add, "gum_12"});
  h.pass_ms(90);
  h.point(Pointer::up, h.box("add gum_12").centre());
  h.pass_ms(glide_ms);
  // Within what dries off while the finger is down.
  CHECK(h.slab().trail.now.value() == doctest::Approx(*pressed.trail.landing).epsilon(1e-3));
}

TEST_CASE("a log that names only what it used still gives a whole slab") {
  session::File file;
  file.session = "5e1f20c7";
  const session::Card red{"kiln_red", "",
                          session::PigmentCard{"", 0, {5, 0, 20, 0, paint::PigmentClass::mineral}}};
  file.lines = {{0, 0, 1, "", session::LaidOut{red}},
                {1, 0, 1, "9a04d3e1", session::Opened{"Kiln red"}},
                {2, 0, 2, "9a04d3e1", session::Added{"kiln_red", session::Unit::g, 15, ""}}};
  Hands h;
  h.give(Loaded{session::join_parts({file}), file.damage, {}});
  h.tap("book");
  h.tap("batch 9a04d3e1");
  h.tap("take_up");
  CHECK(h.shows("add water"));
  CHECK(h.shows("add kiln_red"));
  h.tap("add water");
  CHECK(h.b.folded->warnings.empty());
  CHECK(h.slab().materials.size() == 5);
}

TEST_CASE("a closed batch is off the slab, and another size starts at its first page") {
  Hands h;
  h.tap("page_on");
  h.give(Resized{Display{{136, 218}, Hand::left}});
  CHECK(h.b.plan.list == Scroll{});
  h.begin();
  h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
  h.tap("pass");
  h.tap("gather");
  h.tap("close");
  CHECK(h.b.batch.empty());
  CHECK(std::get<BookView>(view(h.b, h.now()).screen).batch->progress == session::Progress::closed);
}

TEST_CASE("goodbye is said once, and nothing follows it") {
  Hands h;
  h.begin();
  h.give(Leaving{});
  h.give(Leaving{});
  h.wall += 7200000;
  h.give(Saved{h.lines.back().n, ""});
  CHECK(std::holds_alternative<session::Left>(h.lines.back().event));
  CHECK(h.count<session::Left>() == 1);
}

TEST_CASE("a running pass is drawn anew once a second, and hardly oftener") {
  Hands h;
  h.begin();
  h.tap("pass");
  h.give(Tick{});
  int ticks = 0;
  for (const std::int64_t until = h.run + 60'000; h.run < until; ++ticks) {
    REQUIRE(h.wake);
    REQUIRE(*h.wake > h.run);
    h.pass_ms(*h.wake - h.run);
    h.give(Tick{});
  }
  CHECK(ticks >= 60);
  CHECK(ticks <= 66); // what dries and the minute have their own
}

}
