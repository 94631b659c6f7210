// Binder in the making, folded from the lines of its steps.
#include "make.hpp"
#include "session/shelf.hpp"

#include <doctest/doctest.h>

namespace making_test {

using doctest::Approx;

namespace {

using namespace make;
using Step = MakingStep;

constexpr std::int64_t minute_ms = 60000;

Making gum_in(std::string of = "jar5") {
  Making m{Step::gum_in, std::move(of),
           Making::Start{"gum_12", {.gum = 60, .water = 120, .honey = 15}}};
  m.takes = {{"gum_arabic", 60}};
  return m;
}

Making sweeten() {
  Making m{Step::sweeten, "jar5"};
  m.takes = {{"honey", 15}};
  return m;
}

Making to_jar(Step step, double g, double had_g) {
  Making m{step, "jar5"};
  m.g = g;
  m.had_g = had_g;
  return m;
}

Card jar5() {
  Card card = liquid("jar5", CardKind::binder, {.gum = 60, .water = 120});
  card.made_g = 120;
  card.made_on = "2026-11-20";
  return card;
}

Stock bought(double g) {
  Stock stock;
  stock.jars = {{{"a", 1}, 1795000000000, Bought{"gum_arabic", g, {}, "", "", "2026-11-01"}}};
  return stock;
}

Shelf folded(const Writer& w) { return shelf_of(all_of({w.log})); }

}

TEST_CASE("each step begins once, the gum first, and takes from the shelf when it begins") {
  Writer w;
  w.put("", Bought{"gum_arabic", 250});
  w.wait(60);
  w.put("", Making{Step::steep, "jar5"}); // of a making that never began
  w.put("", gum_in());
  w.wait(600);
  w.put("", Making{Step::steep, "jar5"});
  w.wait(600);
  w.put("", Making{Step::steep, "jar5"}); // once more
  w.put("", gum_in());                    // likewise
  const Shelf shelf = folded(w);
  REQUIRE(shelf.makings.count("jar5") == 1);
  const BinderMaking& making = shelf.makings.at("jar5");
  REQUIRE(making.steps.size() == 2);
  CHECK(making.plan.start->parts.honey == 15);
  CHECK(ends_at(making) == making.steps[1].at + 24 * 60 * minute_ms);
  CHECK(next_step(making) == Step::strain);
  const Card gum = liquid("gum_arabic", CardKind::other, {.gum = 1});
  CHECK(left_of(gum, shelf.stock.at("gum_arabic"), {})->g == Approx(190));
}

TEST_CASE("steps in any order, on two devices, and one that is taken back") {
  Writer a("aaaaaaaa"), b("bbbbbbbb");
  a.put("", gum_in());
  b.wait(1200);
  const Ref slip = b.put("", sweeten());
  b.wait(5);
  b.put("", Withdrawn{slip});
  a.wait(90000);
  a.put("", Making{Step::into_jar, "jar5"});
  b.wait(90000);
  b.put("", Making{Step::strain, "jar5"});
  const Shelf shelf = shelf_of(all_of({a.log, b.log}));
  const BinderMaking& making = shelf.makings.at("jar5");
  REQUIRE(making.steps.size() == 3);
  CHECK(making.steps[1].step == Step::into_jar);
  CHECK(making.steps[2].step == Step::strain);
  CHECK(begun(making, Step::sweeten) == nullptr);
  CHECK(next_step(making) == Step::steep);
  CHECK(shelf.stock.count("honey") == 0);
}

TEST_CASE("a making whose gum was taken back is none, and its gum is there again") {
  Writer w;
  const Ref gum = w.put("", gum_in());
  w.wait(60);
  w.put("", Making{Step::steep, "jar5"});
  w.put("", Withdrawn{gum});
  const Shelf shelf = folded(w);
  CHECK(shelf.makings.empty());
  CHECK(shelf.stock.count("gum_arabic") == 0);
}

TEST_CASE("what was thrown away is over, and its gum is gone") {
  Writer w;
  w.put("", gum_in());
  w.put("", Making{Step::given_up, "jar5"});
  w.put("", Making{Step::steep, "jar5"});
  w.put("", Making{Step::given_up, "another"}); // that never began
  const Shelf shelf = folded(w);
  CHECK(shelf.makings.at("jar5").given_up);
  CHECK(shelf.makings.at("jar5").steps.size() == 1);
  CHECK(shelf.makings.size() == 1);
  CHECK(shelf.stock.at("gum_arabic").taken.size() == 1);
}

// By hand: of 120 g (40 gum, 80 water) 12 g of water go; then 20 g come to 108 g; then 6 g of gum.
TEST_CASE("a jar that dried, was thinned and made stronger, and back again") {
  Writer w;
  w.put("", LaidOut{jar5()});
  w.wait(60);
  w.put("", to_jar(Step::dried, 12, 120));
  w.wait(60);
  w.put("", to_jar(Step::thinned, 20, 108));
  w.wait(60);
  Making gum = to_jar(Step::thickened, 6, 128);
  gum.takes = {{"gum_arabic", 6}};
  const Ref last = w.put("", gum);
  const auto recipe = [](const Shelf& shelf) { return recipe_of(shelf.cards.at("jar5")); };
  const Shelf shelf = folded(w);
  CHECK(recipe(shelf).gum == Approx(46));
  CHECK(recipe(shelf).water == Approx(88));
  CHECK(left_of(shelf.cards.at("jar5"), shelf.stock.at("jar5"), {})->g == Approx(134));
  CHECK(shelf.stock.at("gum_arabic").taken.size() == 1);
  w.wait(60);
  w.put("", Withdrawn{last});
  CHECK(recipe(folded(w)).gum == Approx(40));
  CHECK(folded(w).stock.at("jar5").weighed->g == Approx(128));
}

TEST_CASE("more water gone than there was, and a jar that nobody knows, change nothing") {
  Writer w;
  w.put("", LaidOut{jar5()});
  w.put("", to_jar(Step::dried, 81, 120));
  w.put("", to_jar(Step::thinned, 20, 0));
  Making stranger = to_jar(Step::thinned, 20, 100);
  stranger.of = "nobody's";
  w.put("", stranger);
  const Shelf shelf = folded(w);
  CHECK(recipe_of(shelf.cards.at("jar5")) == paint::Recipe{.gum = 60, .water = 120});
  CHECK_FALSE(shelf.stock.at("jar5").weighed);
  CHECK(shelf.stock.size() == 1);
}

TEST_CASE("what binder took counts beside what batches took, and only since the weighing") {
  Stock stock = bought(250);
  const std::int64_t at = 1795617120000;
  stock.taken[at] = 60'000'000;
  const Card gum = liquid("gum_arabic", CardKind::other, {.gum = 1});
  CHECK(left_of(gum, stock, {{at, 5'000'000}})->g == Approx(185));
  stock.weighed = Stock::Weighing{{"a", 2}, at + minute_ms, 170};
  CHECK(left_of(gum, stock, {})->g == Approx(170));
}

TEST_CASE("a dose that is said begins no step and ends none; the last that is said counts") {
  Writer w;
  w.put("", Making{Step::dose, "jar5", {}, 3}); // of a making that never began
  w.put("", gum_in());
  w.put("", Making{Step::steep, "jar5"});
  w.put("", Making{Step::dose, "jar5", {}, 9});
  const Ref slip = w.put("", Making{Step::dose, "jar5", {}, 0, 0.4});
  const BinderMaking making = folded(w).makings.at("jar5");
  CHECK(making.steps.size() == 2);
  CHECK(making.dose_g == 0.4);
  CHECK(making.dose_drops == 0);
  w.put("", Withdrawn{slip});
  CHECK(folded(w).makings.at("jar5").dose_drops == 9);
}

TEST_CASE("a binder without honey and glycerin is sweetened by nothing") {
  CHECK(steps_of({.gum = 1, .water = 2}).size() == 5);
  CHECK(steps_of({.gum = 1, .water = 2, .glycerin = 0.2}).size() == 6);
  for (const MakingStep step : steps_of({.gum = 1, .water = 2, .honey = 1}))
    CHECK(usual_minutes(step) > 0);
}

}
