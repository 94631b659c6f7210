// The shelf by touch: cards edited, made, put away; what is wrong said.
#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/planning.hpp"
#include "bench/shelf_list.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <limits>

namespace shelf_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

void write(Hands& h, const std::string& field, const std::string& text) {
  h.give(Text{*pad_named("says " + field), text});
}

const session::Card& card(Hands& h, const std::string& id) {
  const session::Card* found = shelf_card(h.b, id);
  REQUIRE(found);
  return *found;
}

void fact(Hands& h, const std::string& which, const std::string& number) {
  h.tap("fact " + which);
  h.type(number);
}

}

TEST_CASE("an edit of a card is one line, once the card is done") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb29");
  h.tap("change");
  write(h, "lot", "jar 7");
  fact(h, "oil", "36");
  CHECK(h.lines.empty());
  h.tap("card_done");
  REQUIRE(h.lines.size() == 2); // with the session's beginning
  CHECK(h.lines.back().batch.empty());
  CHECK(card(h, "pb29").lot == "jar 7");
  CHECK(pigment_of(card(h, "pb29")).pigment.oil_g_per_100g == 36);
  CHECK(h.shows("change")); // read again
  h.tap("change");
  h.tap("card_done");
  CHECK(h.lines.size() == 2); // looked at, not changed
}

TEST_CASE("leaving the shelf keeps what was written") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("new_card");
  write(h, "name", "Gum of May");
  fact(h, "honey", "0.3");
  h.tap("plan");
  CHECK(h.b.screen == Screen::plan);
  const session::Card& made = h.b.shelf.front();
  CHECK(made.name == "Gum of May");
  CHECK(recipe_of(made) == paint::Recipe{.gum = 1, .water = 2, .honey = 0.3});
}

TEST_CASE("what cannot be kept so is said, and stays open") {
  Hands h; // on 2026-11-25
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("new_card");
  const auto refuses = [&](words::Sentence what) {
    h.tap("plan");
    CHECK(h.b.screen == Screen::shelf);
    REQUIRE(h.b.notice.error);
    CHECK(h.b.notice.error->what == what);
  };
  fact(h, "honey", "0.3");
  refuses(words::BenchSay::card_needs_name);
  write(h, "name", "Gum");
  write(h, "made_on", "25.11.2026"); // as English is not typed
  refuses(words::BenchSay::not_a_date);
  write(h, "made_on", "2031-01-01");
  refuses(words::BenchSay::made_in_future);
  write(h, "made_on", "2026-11-20");
  h.tap("plan");
  CHECK(h.b.screen == Screen::plan);
}

TEST_CASE("a new card can be left: by any way while nothing is written on it, else by a pad") {
  for (const std::string way : {"plan", "kind_of pigment", "card_done", "put_away", "new_card"}) {
    CAPTURE(way);
    Hands h;
    for (const char* pad : {"shelf", "kind_of binder", "new_card"}) h.tap(pad);
    const std::string first = h.b.shelf_page.card->id;
    h.tap(way);
    CHECK_FALSE(h.b.notice.error);
    CHECK((!h.b.shelf_page.card || h.b.shelf_page.card->id != first));
    CHECK(h.lines.empty());
  }
  Hands h;
  for (const char* pad : {"shelf", "kind_of binder", "new_card"}) h.tap(pad);
  fact(h, "honey", "0.3");
  h.tap("card_done");
  CHECK(h.b.notice.error);
  h.tap("put_away");
  CHECK_FALSE(h.b.shelf_page.card);
  CHECK(h.lines.empty());
}

TEST_CASE("a liquid may be alcohol, and one of nothing is not kept") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of liquid");
  h.tap("new_card");
  write(h, "name", "Spirit");
  fact(h, "honey", "0");
  fact(h, "water", "0");
  h.tap("card_done");
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::PaintSay::empty_recipe);
  CHECK(h.lines.empty());
  fact(h, "alcohol", "95");
  fact(h, "water", "5");
  h.tap("card_done");
  REQUIRE_FALSE(h.lines.empty());
  CHECK(recipe_of(h.b.shelf.front()) == paint::Recipe{.water = 5, .alcohol = 95});
}

TEST_CASE("a binder with more honey than makes paint is not kept, and the card says why") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12");
  const auto wrong = [&] { return std::get<ShelfView>(view(h.b, h.now()).screen).fault; };
  CHECK_FALSE(wrong());
  fact(h, "honey", "999");
  fact(h, "gum", "10");
  REQUIRE(wrong());
  CHECK(wrong()->what == words::PaintSay::recipe_honey);
  h.tap("card_done");
  CHECK(h.lines.empty());
  CHECK(h.b.notice.error == wrong());
  fact(h, "honey", "9.99");
  CHECK_FALSE(wrong());
  h.tap("card_done");
  CHECK(recipe_of(card(h, "gum_12")).honey == 9.99);
}

// 20 drops of water of 0.05 mL weigh 1.0 g (USP <1101>).
TEST_CASE("a dropper by what 20 drops weigh, a spoon by the water it holds") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("card dropper");
  fact(h, "drops_20_g", "0.8");
  h.tap("card_done");
  CHECK(volume_of(card(h, "dropper")).mL == Approx(0.04 / 0.99821).epsilon(1e-4));
  CHECK(volume_of(card(h, "dropper")).mL_u < 0.004);
  h.tap("kind_of spoon");
  h.tap("card teaspoon");
  fact(h, "water_g", "4.6");
  h.tap("card_done");
  CHECK(volume_of(card(h, "teaspoon")).mL == Approx(4.6 / 0.99821).epsilon(1e-3));
}

// What follows from the weight is the size of a drop, by the liquid's density.
TEST_CASE("what 20 drops weighed stays as typed, whatever they are said to be of") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("card dropper");
  fact(h, "drops_20_g", "1.14");
  const auto typed = [&] { return fact_of(*h.b.shelf_page.card, "drops_20_g"); };
  const auto drop = [&] { return volume_of(*h.b.shelf_page.card).mL; };
  const Fact first = typed();
  CHECK(first.value == Approx(1.14));
  const double of_water = drop();
  for (const double g_per_mL : {1 / 0.8839, 1.0 / 0.8, 1.2614, 0.99821}) {
    h.tap("choice with");
    CHECK(typed().value == Approx(1.14));
    CHECK(typed().u == Approx(first.u));
    if (g_per_mL == 1 / 0.8839) CHECK(drop() == Approx(of_water * 0.99821 * 0.8839).epsilon(1e-3));
  }
  CHECK(drop() == Approx(of_water));
}

TEST_CASE("a dropper nobody has weighed stays the usual one, whatever it is said to drop") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("card dropper");
  h.tap("choice with");
  const session::Card& open = *h.b.shelf_page.card;
  // As the law of drops has it: FORMAT.md, 0.0365 g of gum in twice its water.
  CHECK(volume_of(open).mL == Approx(0.0365 * 0.8839).epsilon(5e-3));
  CHECK(volume_of(open).mL_u > 0.19 * volume_of(open).mL);
  for (int i = 0; i < 3; ++i) h.tap("choice with");
  CHECK(volume_of(open) == session::Volume{0.05, 0.0095});
}

TEST_CASE("facts out of their range are refused with what can be") {
  session::Card card = blank_card(ShelfKind::pigment, "p");
  for (const double bad : {0.0, -1.0, 50.0, std::numeric_limits<double>::quiet_NaN()}) {
    const auto other = with_fact(card, "g_per_mL", bad);
    REQUIRE_FALSE(other);
    CHECK(other.error().what == words::BenchSay::fact_out_of_range);
  }
}

TEST_CASE("put away, and back") {
  Hands h;
  h.tap("shelf");
  h.tap("card pw6");
  h.tap("change");
  h.tap("put_away");
  CHECK(shelf_card(h.b, "pw6") == nullptr);
  CHECK_FALSE(h.shows("card pw6"));
  h.tap("kept_away");
  h.tap("card pw6");
  h.tap("bring_back");
  CHECK(shelf_card(h.b, "pw6") != nullptr);
}

TEST_CASE("how much is left of a binder, and a plan for more than that") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("card gum_12");
  fact(h, "made_g", "4");
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("weigh");
  h.type("12");
  const auto plan = std::get<PlanView>(view(h.b, h.now()).screen);
  REQUIRE(plan.short_of.size() == 1);
  CHECK(plan.short_of[0].left_g == Approx(4));
  CHECK(plan.past_day.empty());
  for (session::Card& card : h.b.shelf)
    if (card.id == "gum_12") card.keep_until = "2026-11-24"; // yesterday
  CHECK(std::get<PlanView>(view(h.b, h.now()).screen).past_day.size() == 1);
  h.tap("begin");
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("3");
  CHECK(*left_of(h.b, card(h, "gum_12")) == Approx(1));
}

TEST_CASE("every choice but the cautions turns over until it comes round") {
  for (const ShelfKind kind : words::all_of<ShelfKind>) {
    const session::Card first = blank_card(kind, "c");
    for (const ChoiceKind choice : choices_of(first.kind())) {
      if (choice == ChoiceKind::cautions) continue; // they open
      session::Card now = with_next(first, choice);
      CHECK(now != first);
      for (int turn = 0; turn < 20 && now != first; ++turn) now = with_next(now, choice);
      if (choice != ChoiceKind::size) CHECK(now == first);
    }
  }
}

TEST_CASE("the cautions of a pigment are chosen on its card, and the plan heeds them") {
  Hands h;
  h.tap("shelf");
  h.tap("new_card");
  write(h, "name", "Attic white");
  const auto asks = [&] { return std::get<ShelfView>(view(h.b, h.now()).screen).asks; };
  using C = std::vector<paint::Caution>;
  CHECK(asks() == C{paint::Caution::not_known});
  h.tap("choice cautions");
  CHECK(std::get<ShelfView>(view(h.b, h.now()).screen).choosing);
  CHECK_FALSE(h.shows("card_done"));
  h.tap("caution lead");
  h.tap("caution cancer");
  h.tap("caution mercury");
  h.tap("caution mercury"); // not that, after all
  h.tap("cautions_chosen");
  CHECK(asks() == C{paint::Caution::lead, paint::Caution::cancer});
  h.tap("card_done");
  const std::string id = h.b.shelf.front().id;
  CHECK(pigment_of(card(h, id)).cautions == std::vector<std::string>{"lead", "cancer"});
  h.b.plan.blend = {{id, 1}};
  h.tap("plan");
  const auto said = std::get<PlanView>(view(h.b, h.now()).screen).cautions;
  CHECK(std::count(said.begin(), said.end(), words::Sentence(words::PaintSay::caution_lead)) == 1);
  CHECK(std::count(said.begin(), said.end(), words::Sentence(words::PaintSay::caution_cancer)) ==
        1);
  CHECK(std::count(said.begin(), said.end(), words::Sentence(words::PaintSay::caution_not_known)) ==
        0);
}

TEST_CASE("each caution can be reached on every display, and the catalogue's own stay") {
  for (const Size mm : {Size{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}}) {
    Hands h(Display{mm, Hand::left});
    h.tap("shelf");
    h.b.shelf_page.search = "cadmium red";
    h.tap("card pr108");
    h.tap("change");
    h.tap("choice cautions");
    for (const paint::Caution c : paint::cautions_to_choose()) {
      const std::string pad = "caution " + std::string(paint::name_of(c));
      for (int i = 0; i < 5 && !h.shows(pad); ++i) h.tap("more_cautions");
      h.tap(pad);
    }
    h.tap("cautions_chosen");
    const auto& chosen = pigment_of(*h.b.shelf_page.card).cautions;
    CHECK(chosen.size() == paint::cautions_to_choose().size() - 3);
    CHECK(std::count(chosen.begin(), chosen.end(), "cadmium") == 0); // it asks for that anyway
  }
}

TEST_CASE("another card opens as a card, not as its cautions") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb29");
  h.tap("change");
  h.tap("choice cautions");
  h.tap("card pb28");
  CHECK_FALSE(h.b.shelf_page.choosing);
  CHECK(h.shows("change"));
}

TEST_CASE("a pigment is found by what else it is called, in plan and shelf") {
  Hands h;
  const auto found = [&](const std::string& wanted) {
    h.b.plan.search = h.b.shelf_page.search = wanted;
    std::vector<std::string> plan, shelf;
    for (const auto* c : pigments_found(h.b)) plan.push_back(c->id);
    for (const auto* c : cards_listed(h.b)) shelf.push_back(c->id);
    CHECK(plan == shelf);
    return plan;
  };
  CHECK(found("terre verte") == std::vector<std::string>{"pg23"});
  CHECK(found("Pigment Blue 28") == std::vector<std::string>{"pb28"});
  CHECK(found("pb 28") == std::vector<std::string>{"pb28"});
}

}
