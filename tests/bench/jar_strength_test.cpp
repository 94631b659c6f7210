// A jar of binder: weighed with its bottle, dried out, thinned and made stronger by touch.
#include "bench/choices.hpp"
#include "bench/making.hpp"
#include "bench/stock.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

namespace jar_strength_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;
using Say = words::BenchSay;

namespace {

// 120 g of gum 1 : 2 that were made this week.
void open_strength_of_jar(Hands& h) {
  for (session::Card& card : h.b.shelf)
    if (card.id == "gum_12") card.made_g = 120, card.made_on = "2026-11-20";
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12");
  h.tap("strength");
  REQUIRE(h.b.screen == Screen::binder);
}

StrengthView shown(Hands& h) { return *std::get<BinderView>(view(h.b, h.now()).screen).strength; }

void weigh(Hands& h, const std::string& empty, const std::string& full) {
  h.tap("empty_bottle");
  h.type(empty);
  h.tap("weigh_bottle");
  h.type(full);
}

double strength(const Hands& h) {
  return paint::strength_of(recipe_of(*shelf_card(h.b, "gum_12")));
}

}

// By hand: 29.33 g of dry gum in 100 g; of 120 g 12 g of water go: 35.2 g in 108 g are 32.6 %.
TEST_CASE("a bottle that weighs less than was counted has lost water, or was used") {
  Hands h;
  open_strength_of_jar(h);
  CHECK(*shown(h).counted_g == Approx(120));
  weigh(h, "21.4", "129.4");
  CHECK(*shown(h).weighed_g == Approx(108));
  CHECK(shown(h).missing_g == Approx(12));
  CHECK(shown(h).dried_strength == Approx(0.3259).epsilon(1e-3));
  h.tap("water_gone");
  CHECK(strength(h) == Approx(0.3259).epsilon(1e-3));
  CHECK(*shown(h).counted_g == Approx(108));
  CHECK_FALSE(shown(h).typed);
  h.tap("take_step_back");
  CHECK(strength(h) == Approx(0.88 / 3));
  CHECK(*shown(h).counted_g == Approx(108)); // that was weighed
  h.tap("take_step_back");
  CHECK(*shown(h).counted_g == Approx(120));
  weigh(h, "21.4", "129.4");
  h.tap("was_used");
  CHECK(strength(h) == Approx(0.88 / 3));
  CHECK(*shown(h).counted_g == Approx(108));
}

TEST_CASE("the empty bottle is remembered") {
  Hands h;
  open_strength_of_jar(h);
  weigh(h, "21.4", "129.4");
  h.tap("was_used");
  h.tap("shelf");
  h.tap("card gum_12");
  h.tap("strength");
  CHECK(shown(h).tare_g == 21.4);
}

// By hand: from 29.33 to 25 g in 100 g: 120 x (29.333 / 25 - 1) = 20.8 g of water; to 33 g: with x
// g of gum 35.2 + 0.88 x = 0.33 (120 + x), so x = 8 g.
TEST_CASE("thinner with water, stronger with gum, and the gum's stock goes down") {
  Hands h;
  h.b.stock["gum_arabic"].jars = {{{"s", 1}, h.wall - 1000, session::Bought{"gum_arabic", 50}}};
  open_strength_of_jar(h);
  for (int i = 0; i < 4; ++i) h.tap("weaker");
  CHECK(shown(h).wanted == Approx(0.25));
  CHECK(shown(h).put_in.water_g == Approx(20.8).epsilon(1e-3));
  for (int i = 0; i < 8; ++i) h.tap("stronger");
  CHECK(shown(h).wanted == Approx(0.33));
  CHECK(shown(h).put_in.gum_g == Approx(8).epsilon(1e-3));
  h.tap("put_in");
  CHECK(strength(h) == Approx(0.33));
  CHECK(*shown(h).counted_g == Approx(128));
  const auto* made = std::get_if<session::Making>(&h.lines.back().event);
  REQUIRE(made);
  CHECK(made->step == session::MakingStep::thickened);
  REQUIRE(made->takes.size() == 1);
  CHECK(made->takes[0].g == Approx(8).epsilon(1e-3));
  h.tap("take_step_back");
  CHECK(strength(h) == Approx(0.88 / 3));
}

TEST_CASE("the strength that it has, one that cannot be, and a jar that nobody counted") {
  Hands h;
  open_strength_of_jar(h);
  h.tap("put_in");
  CHECK(h.b.notice.error->what == words::Sentence(Say::strength_as_it_is));
  for (int i = 0; i < 40; ++i) h.tap("stronger");
  CHECK(shown(h).wanted == Approx(0.5));
  for (int i = 0; i < 60; ++i) h.tap("weaker");
  CHECK(shown(h).wanted == Approx(0.05));
  Hands other;
  other.tap("shelf");
  other.tap("kind_of binder");
  other.tap("card gum_13");
  other.tap("strength");
  CHECK(shown(other).why_not->what == words::Sentence(Say::strength_weigh_first));
  other.tap("put_in");
  CHECK(other.b.notice.error->what == words::Sentence(Say::strength_weigh_first));
  CHECK(other.lines.empty());
}

TEST_CASE("a bottle lighter than empty, and one that lost more water than it had") {
  Hands h;
  open_strength_of_jar(h);
  h.tap("empty_bottle");
  h.type("21.4");
  h.tap("weigh_bottle");
  h.type("20");
  REQUIRE(h.b.number);
  CHECK(h.b.number->error->what == words::Sentence(Say::bottle_below_empty));
  h.tap("leave");
  h.tap("weigh_bottle");
  h.type("31.4");
  CHECK(shown(h).dried_strength == 0);
  h.tap("water_gone");
  CHECK(h.b.notice.error);
  CHECK(h.lines.empty());
}

TEST_CASE("a batch on the slab is told of a jar's new strength before it takes of it again") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  open_strength_of_jar(h);
  for (int i = 0; i < 4; ++i) h.tap("weaker");
  h.tap("put_in");
  const auto known = [&] { return recipe_of(h.b.folded->cards.at("gum_12")); };
  CHECK(paint::strength_of(known()) == Approx(0.25));
  h.tap("slab");
  h.tap("add gum_12");
  CHECK(paint::strength_of(known()) == Approx(0.25));
}

TEST_CASE("the jar is put away while its strength is looked at") {
  Hands h;
  open_strength_of_jar(h);
  std::erase_if(h.b.shelf, [](const session::Card& c) { return c.id == "gum_12"; });
  CHECK(shown(h).gone);
  CHECK_FALSE(h.shows("put_in"));
}

}
