// What is wanted seldom at the slab: jar, other paint, lines that were wrong, coming back.
#include "bench/corrections.hpp"
#include "bench/paints.hpp"
#include "bench/remedy.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"

namespace more_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

double pigment_on_slab(const Hands& h) {
  const auto slab = h.b.folded->places.at.find(session::Place::slab);
  return slab == h.b.folded->places.at.end() ? 0 : slab->second.sums.pigment_g;
}

double drops_of_gum(const Hands& h) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == "gum_12") return t.drops;
  return 0;
}

void mull(Hands& h) {
  h.begin();
  for (int i = 0; i < 3; ++i) h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");
}

}

TEST_CASE("half into the jar, and back") {
  Hands h;
  mull(h);
  h.tap("more");
  CHECK_FALSE(h.shows("from_jar"));
  h.tap("to_jar half");
  CHECK(pigment_on_slab(h) == Approx(6));
  CHECK(is_open<TrailPanel>(h.slab().panel));
  h.tap("more");
  h.tap("from_jar");
  CHECK(pigment_on_slab(h) == Approx(12));
}

TEST_CASE("some was lost, and the paint weighed") {
  Hands h;
  mull(h);
  h.tap("more");
  h.tap("spilt");
  h.type("1");
  CHECK(pigment_on_slab(h) < 12);
  h.tap("more");
  h.tap("weigh_paint");
  h.type("11");
  CHECK(std::get<session::Weighed>(h.lines.back().event) ==
        session::Weighed{session::Place::slab, 11, 0});
}

namespace {

// 12 g of pigment and 19.5 g of binder, weighed, in the jar.
void gather(Hands& h) {
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("19.5");
  for (int i = 0; i < 3; ++i) h.tap("pass"); // wet out, mulled, scraped
  h.tap("gather");
}

void weigh_jar(Hands& h, const std::string& g) {
  h.tap("more");
  h.tap("weigh_paint");
  h.type(g);
}

}

TEST_CASE("the jar is shown without what stayed on the glass; that figure typed changes nothing") {
  Hands h;
  gather(h);
  REQUIRE(h.slab().jar);
  CHECK(h.slab().jar->g.value == Approx(29.14).epsilon(2e-3)); // 31.5 less 7.5 %
  CHECK(h.slab().jar->on_tools == Approx(0.075));
  const session::Batch before = *h.b.folded;
  weigh_jar(h, "29.1");
  const session::Batch& now = *h.b.folded;
  CHECK(h.slab().warnings.empty());
  CHECK(now.standing.binder_ratio->value == Approx(before.standing.binder_ratio->value));
  for (std::size_t i = 0; i < now.totals.size(); ++i)
    CHECK(now.totals[i].grams.value == Approx(before.totals[i].grams.value).epsilon(1e-4));
  CHECK(paint::uncertainty(h.slab().jar->g) < 0.1);
  CHECK(paint::uncertainty(before.places.at.at(session::Place::jar).paint.contents[0].grams) > 0.1);
}

TEST_CASE("a jar that cannot weigh so much is left out with the reason, and can be put right") {
  Hands h;
  gather(h);
  weigh_jar(h, "60");
  REQUIRE(h.slab().warnings.size() == 1);
  REQUIRE(h.slab().warnings[0].why);
  CHECK(h.slab().warnings[0].why->what == words::PaintSay::weighing_contradicts_both);
  CHECK(h.slab().jar->g.value == Approx(29.14).epsilon(2e-3));
  const std::string why = words::message(*h.slab().warnings[0].why);
  CAPTURE(why);
  CHECK(why.find(words::number(h.slab().jar->g.value, 1) + " g are there") != std::string::npos);
  h.tap("undo");
  CHECK(h.slab().warnings.empty());
  weigh_jar(h, "28.5");
  CHECK(h.slab().warnings.empty());
  CHECK(h.slab().jar->g.value == Approx(28.5).epsilon(2e-3));
  weigh_jar(h, "28.5"); // once more: nothing moves
  CHECK(h.slab().jar->g.value == Approx(28.5).epsilon(2e-3));
}

TEST_CASE("an earlier line gets another amount, another moment, or goes") {
  Hands h;
  h.begin();
  h.tap("another");
  h.tap("amount 5 drops");
  h.tap("add gum_12");
  CHECK(drops_of_gum(h) == 5);
  const std::string line = arg_of(correctable(h.b).front()->ref);
  h.tap("felt too_sticky");
  const auto choose = [&] {
    h.tap("more");
    h.tap("lines");
    h.tap("line " + line);
  };
  choose();
  h.tap("other_amount");
  h.type("7");
  CHECK(drops_of_gum(h) == 7);
  choose();
  h.tap("five_earlier");
  choose();
  h.tap("five_earlier");
  const session::Entry* moved = nullptr;
  for (const session::Entry& e : h.b.folded->entries)
    if (arg_of(e.ref) == line) moved = &e;
  REQUIRE(moved);
  CHECK(moved_by_ms(h.b, *moved) == -600000);
  CHECK(drops_of_gum(h) == 7);
  h.tap("undo"); // the second correction of its moment
  choose();
  h.tap("take_back");
  CHECK(drops_of_gum(h) == 0);
}

TEST_CASE("names of lines read back, and others do not") {
  CHECK(line_named("c41e08d5 12") == session::Ref{"c41e08d5", 12});
  for (const char* none : {"", "c41e08d5", "c41e08d5 x", "c41e08d5 1x", "c41e08d5 "})
    CHECK_FALSE(line_named(none));
}

TEST_CASE("paint of another batch goes in as what it is made of") {
  Hands h;
  mull(h);
  h.tap("pass");
  h.tap("gather");
  h.tap("close");
  h.tap("plan");
  h.begin();
  h.tap("more");
  h.tap("other_paint");
  const auto paints = h.b.paints;
  REQUIRE(paints.size() == 1);
  const double in_jar = 12 * 0.925; // the rest stayed on the tools
  CHECK(std::get<session::PaintCard>(paints[0].card.facts).made_of.pigment == Approx(in_jar));
  h.tap("paint_of " + paints[0].batch);
  h.type("3");
  CHECK(h.b.folded->standing.pigment_g.value ==
        Approx(12 + 3 * in_jar / paints[0].grams).epsilon(0.001));
  CHECK(h.shows("pigments"));
}

TEST_CASE("after half an hour with nobody there the program asks once how the paint was found") {
  Hands h;
  mull(h);
  h.tap("pass"); // scraped: it rests
  const double before = h.b.folded->standing.flow_now->value;
  h.wait(1200);
  CHECK(is_open<TrailPanel>(h.slab().panel));
  h.wait(1200);
  CHECK(is_open<FoundPanel>(h.slab().panel));
  h.tap("found wet");
  CHECK(h.b.folded->standing.flow_now->value == Approx(before).epsilon(0.001));
  h.wait(3000);
  CHECK(h.slab().away_ms == Approx(3000000).epsilon(0.01));
  h.wait(3600); // nobody has answered as yet
  CHECK(h.slab().away_ms == Approx(6600000).epsilon(0.01));
  h.tap("leave");
  h.wait(3000);
  CHECK(is_open<TrailPanel>(h.slab().panel));
}

TEST_CASE("how the paint was found is asked again when the answer is taken back") {
  Hands h;
  mull(h);
  h.tap("pass"); // scraped: it rests
  h.wait(2400);
  REQUIRE(is_open<FoundPanel>(h.slab().panel));
  const auto asked_ms = static_cast<double>(h.slab().away_ms);
  h.tap("found dry");
  h.tap("undo");
  REQUIRE(is_open<FoundPanel>(h.slab().panel));
  CHECK(h.slab().away_ms == Approx(asked_ms).epsilon(0.01));
  h.tap("found wet");
  CHECK(is_open<TrailPanel>(h.slab().panel));
}

TEST_CASE("how the paint was found is asked again when what was tapped instead is taken back") {
  Hands h;
  mull(h);
  h.tap("pass");
  h.wait(2400);
  REQUIRE(is_open<FoundPanel>(h.slab().panel));
  h.tap("felt right");
  h.tap("undo");
  CHECK(is_open<FoundPanel>(h.slab().panel));
  h.tap("found wet");
  CHECK(is_open<TrailPanel>(h.slab().panel));
}

TEST_CASE("every trouble has its remedy, and a second time the stronger one") {
  for (int i = 0; i < 7; ++i) {
    Hands h;
    h.begin();
    for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
    h.type("4.5");
    for (const char* pad : {"pass", "pass"}) h.tap(pad);
    const std::string name(session::name_of(static_cast<session::TroubleKind>(i)));
    h.tap("trouble");
    h.tap("trouble_is " + name);
    REQUIRE(h.slab().remedy);
    CHECK(h.slab().remedy->way != Remedy::stronger);
    h.tap("trouble");
    h.tap("trouble_is " + name);
    CHECK(h.slab().remedy->way == Remedy::stronger);
  }
}

// Alcohol ships without a pad of its own.
TEST_CASE("a remedy that names alcohol leads to where it stands") {
  for (const char* named : {"wont_wet", "foams"}) {
    Hands h;
    mull(h);
    h.tap("trouble");
    h.tap(std::string("trouble_is ") + named);
    h.tap("materials");
    CHECK(h.shows("add alcohol_70"));
  }
  Hands h;
  mull(h);
  h.tap("trouble");
  h.tap("trouble_is gritty");
  CHECK_FALSE(h.shows("materials"));
}

TEST_CASE("a remedy makes too little gum no less, and too much no more") {
  using session::TroubleKind;
  const auto remedy = [](TroubleKind trouble, double gum_g) {
    session::Batch batch;
    batch.standing.pigment_mL.value = 1;
    batch.standing.gum_g.value = gum_g;
    return remedy_of(trouble, batch, {0.05, 0, 1}, Known{});
  };
  const paint::GumMarks marks = paint::usual_marks(session::family_of({}));
  for (const TroubleKind trouble : {TroubleKind::gelling, TroubleKind::gummy}) {
    const Remedy poor = remedy(trouble, 0.9 * marks.little);
    CHECK(poor.way == Remedy::by_gum);
    CHECK(poor.g == 0);
    CHECK(remedy(trouble, marks.enough_to).way == Remedy::usual);
  }
  CHECK(remedy(TroubleKind::gummy, marks.enough_to).way == Remedy::usual);
  CHECK(remedy(TroubleKind::separates, 0.9 * marks.little).way == Remedy::usual);
  const Remedy rich = remedy(TroubleKind::separates, 1.1 * marks.much);
  CHECK(rich.way == Remedy::by_gum);
  CHECK(is_nothing(rich.amount));
}

TEST_CASE("to loose paint that gels or pulls strings no water is added") {
  for (const char* named : {"gelling", "gummy"}) {
    Hands h;
    h.begin();
    for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
    h.type("9");
    for (const char* pad : {"pass", "pass", "felt too_loose"}) h.tap(pad);
    h.tap("trouble");
    h.tap(std::string("trouble_is ") + named);
    REQUIRE(h.slab().remedy);
    CHECK(h.slab().remedy->way == Remedy::loose);
    CHECK(is_nothing(h.slab().remedy->amount));
    CHECK(h.slab().remedy->g == 0);
  }
}

TEST_CASE("nor where the count says that there is too much liquid") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("16");
  for (const char* pad : {"pass", "pass"}) h.tap(pad);
  REQUIRE(
      (h.slab().advice.kind == Advice::past_right || h.slab().advice.kind == Advice::too_loose));
  h.tap("trouble");
  h.tap("trouble_is gummy");
  CHECK(h.slab().remedy->way == Remedy::loose);
}

TEST_CASE("the last trouble that stands is told on its pad") {
  Hands h;
  mull(h);
  CHECK_FALSE(h.slab().last_trouble);
  h.tap("trouble");
  h.tap("trouble_is gelling");
  h.tap("leave");
  h.tap("trouble");
  h.tap("trouble_is foams");
  h.tap("leave");
  CHECK(h.slab().last_trouble == session::TroubleKind::foams);
  h.tap("undo");
  CHECK(h.slab().last_trouble == session::TroubleKind::gelling);
  h.tap("undo");
  CHECK_FALSE(h.slab().last_trouble);
}

TEST_CASE("each line to correct tells the moment it was done, also after it was moved") {
  Hands h;
  mull(h);
  h.tap("more");
  h.tap("lines");
  const auto lines = h.slab().lines;
  REQUIRE(lines.size() >= 4);
  for (std::size_t i = 1; i < lines.size(); ++i) CHECK(lines[i].at <= lines[i - 1].at);
  CHECK(lines[0].at <= h.wall);
  CHECK(lines[0].at > h.wall - 5000);
  h.tap(name_of(lines[0].pad));
  h.tap("five_earlier");
  h.tap("more");
  h.tap("lines");
  for (const LineView& line : h.slab().lines)
    if (line.pad == lines[0].pad) CHECK(line.at == lines[0].at - 300000);
}

TEST_CASE("gathered paint is felt no more, and leads on to the pans") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  for (int passes = 0; passes < 3; ++passes) h.tap("pass");
  CHECK(h.shows("felt right"));
  CHECK_FALSE(h.shows("to_pans"));
  h.tap("gather");
  CHECK_FALSE(h.shows("felt right"));
  h.tap("to_pans");
  CHECK(h.b.screen == Screen::pans);
}

TEST_CASE("dry powder feels like nothing: the word is not kept, and it is said why") {
  Hands h;
  h.begin();
  h.tap("felt right");
  CHECK(h.count<session::Felt>() == 0);
  CHECK(h.slab().notice.error == words::Error{words::BenchSay::nothing_to_feel, {}});
  h.tap("add " + h.b.plan.binder);
  h.tap("felt wont_move");
  CHECK(h.count<session::Felt>() == 1);
}

}
