// Which dropper a drop comes from, and what is left of a bottle, where lines were taken back or
// corrected.
#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/hands.hpp"
#include "bench/materials.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/planning.hpp"
#include "bench/recalibration.hpp"

namespace dropper_test {

using doctest::Approx;
using namespace hands;

namespace {

session::Card shelf_that_has(const Hands& h, const std::string& id) {
  const session::Card* card = shelf_card(h.b, id);
  REQUIRE(card);
  return *card;
}

// Its id.
std::string new_dropper(Hands& h, const std::string& name) {
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("new_card");
  h.give(Text{{ShelfPad::says, "name"}, name});
  h.tap("card_done");
  h.tap("plan");
  for (const session::Card& card : h.b.shelf)
    if (card.name == name) return card.id;
  return "";
}

std::string used(const Hands& h) {
  for (auto line = h.lines.rbegin(); line != h.lines.rend(); ++line)
    if (const auto* added = std::get_if<session::Added>(&line->event)) return added->with;
  return "";
}

// The next drops come from this one.
void choose(Hands& h, const std::string& dropper) {
  h.tap("another");
  for (int i = 0; i < 5 && dropper_in_hand(h.b) != dropper; ++i) h.tap("dropper");
  CHECK(dropper_in_hand(h.b) == dropper);
  h.tap("leave");
}

std::string told(Hands& h, const std::string& card) {
  for (const MaterialView& m : h.slab().materials)
    if (m.pad.arg == card) return m.dropper;
  return "?";
}

}

TEST_CASE("of two droppers, the one used last for this material; what was taken back chose none") {
  Hands h;
  const std::string own = new_dropper(h, "green bulb");
  h.begin();
  h.tap("add gum_12");
  CHECK(used(h) == own); // the workshop's own stand first on the shelf
  CHECK(told(h, "gum_12") == "green bulb");
  choose(h, "dropper");
  CHECK(told(h, "gum_12") == "any dropper");
  h.tap("add gum_12");
  CHECK(used(h) == "dropper");
  h.tap("add gum_12");
  CHECK(used(h) == "dropper");
  h.tap("undo");
  h.tap("undo");
  h.tap("add gum_12");
  CHECK(used(h) == own);
}

TEST_CASE("a new batch goes on with what the last one dropped a material with") {
  Hands h;
  const std::string own = new_dropper(h, "green bulb");
  h.begin();
  choose(h, "dropper");
  h.tap("add water");
  h.tap("add gum_12");
  choose(h, own);
  h.tap("add gum_12");
  choose(h, "dropper");
  h.tap("add gum_12");
  h.tap("undo");
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("begin");
  CHECK(told(h, "water") == "any dropper");
  h.tap("add water");
  CHECK(used(h) == "dropper");
  h.tap("add gum_12");
  CHECK(used(h) == own);
  h.tap("add honey_11"); // never measured: with the last one used at all
  CHECK(used(h) == own);
}

TEST_CASE("a dropper that was put away is meant no more") {
  Hands h;
  const std::string own = new_dropper(h, "green bulb");
  h.begin();
  h.tap("add gum_12");
  CHECK(used(h) == own);
  h.tap("shelf");
  h.tap("kind_of dropper");
  h.tap("card " + own);
  h.tap("put_away");
  h.tap("slab");
  h.tap("add gum_12");
  CHECK(used(h) == "dropper");
  CHECK(told(h, "gum_12") == ""); // the only one
  h.tap("another");
  CHECK_FALSE(h.shows("dropper"));
}

TEST_CASE("a dropper that is calibrated with a material is plain from it") {
  Hands h;
  session::Card own = shelf_that_has(h, "dropper");
  own.id = "bulb";
  own.name = "green bulb";
  std::get<session::DropperCard>(own.facts).calibrated_with = session::CardKind::honey;
  h.b.shelf.push_back(own);
  h.begin();
  CHECK(told(h, "honey_11") == "");
  CHECK(told(h, "gum_12") == "any dropper");
  h.tap("add honey_11");
  CHECK(used(h) == "bulb");
  h.tap("add water");
  CHECK(used(h) == "bulb"); // used last at all
}

TEST_CASE("what is left of a bottle follows corrections, and what was taken back and forth") {
  Hands h;
  session::Card card = shelf_that_has(h, "gum_12");
  card.made_g = 10;
  h.begin();
  const auto weigh = [&](const std::string& g) {
    h.tap("another");
    h.tap("amount weigh");
    h.tap("add gum_12");
    h.type(g);
    return session::Ref{h.b.sitting.session, h.lines.back().n};
  };
  const session::Ref line = weigh("3");
  CHECK(*left_of(h.b, card) == Approx(7));
  h.tap("more");
  h.tap("lines");
  h.tap("line " + arg_of(line));
  h.tap("other_amount");
  h.type("2");
  CHECK(*left_of(h.b, card) == Approx(8));
  h.tap("undo");
  CHECK(*left_of(h.b, card) == Approx(7));
  h.tap("undo");
  CHECK(*left_of(h.b, card) == Approx(10));
}

namespace {

void weigh_bottle(Hands& h, const std::string& of, const std::string& g) {
  h.tap("more");
  h.tap("bottle");
  h.tap("bottle_of " + of);
  h.type(g);
}

// 100 drops of binder between two weighings of its bottle.
void drop_and_weigh(Hands& h, const std::string& before, const std::string& after) {
  weigh_bottle(h, "gum_12", before);
  for (int i = 0; i < 10; ++i) {
    h.tap("another");
    h.tap("amount 10 drops");
    h.tap("add gum_12");
  }
  weigh_bottle(h, "gum_12", after);
}

}

TEST_CASE("a bottle weighed around drops says what they weigh; one tap puts it on the card") {
  Hands h;
  h.begin();
  drop_and_weigh(h, "250", "245.5");
  const auto found = h.slab().dropper_found;
  REQUIRE(found);
  CHECK(found->drops == 100);
  CHECK(found->found_g == Approx(0.9).epsilon(0.01)); // 4.5 g / 5
  CHECK(found->was_g == Approx(0.73).epsilon(0.01));  // 20 of 0.0365 g, FORMAT.md
  const double ratio = h.b.folded->standing.binder_ratio->value;
  h.tap("keep_dropper");
  const session::Card card = shelf_that_has(h, "dropper");
  const session::Volume drop = volume_of(card);
  CHECK(drop.mL == Approx(0.045 * 0.8839).epsilon(0.01));
  CHECK(drop.mL_u < 0.02 * drop.mL);
  CHECK(std::get<session::DropperCard>(card.facts).calibrated_with == session::CardKind::binder);
  CHECK(h.b.folded->standing.binder_ratio->value == Approx(ratio)); // what was counted stays
  h.tap("add gum_12");
  const auto grams = h.b.folded->entries.back().grams;
  REQUIRE(grams);
  CHECK(grams->value == Approx(0.045).epsilon(0.01));
  CHECK_FALSE(dropper_found(h.b)); // it is on the card
  h.tap("add gum_12");
  weigh_bottle(h, "gum_12", "245.4"); // these drops have a word of their own
  const auto again = h.slab().dropper_found;
  REQUIRE(again);
  CHECK(again->drops == 2);
  CHECK(again->found_g == Approx(0.9).epsilon(0.02));
}

TEST_CASE("a bottle says nothing of a dropper where other things stand between its weighings") {
  const auto offers = [](auto between, const std::string& after) {
    Hands h;
    h.begin();
    weigh_bottle(h, "gum_12", "250");
    for (int i = 0; i < 10; ++i) {
      h.tap("another");
      h.tap("amount 10 drops");
      h.tap("add gum_12");
    }
    between(h);
    weigh_bottle(h, "gum_12", after);
    return h.slab().dropper_found.has_value();
  };
  CHECK(offers([](Hands&) {}, "245.5"));
  CHECK(offers([](Hands& h) { h.tap("add water"); }, "245.5"));
  CHECK_FALSE(offers(
      [](Hands& h) {
        h.tap("another");
        h.tap("amount 1 tsp");
        h.tap("add gum_12");
      },
      "240"));
  CHECK_FALSE(offers(
      [](Hands& h) {
        h.tap("more");
        h.tap("bottle");
        h.tap("lost_count gum_12");
      },
      "245.5"));
  CHECK_FALSE(offers([](Hands&) {}, "150")); // a hundred grams are no hundred drops
  CHECK_FALSE(offers([](Hands&) {}, "260")); // heavier than before
}

TEST_CASE("a bottle's weighing taken back says nothing of the dropper") {
  Hands h;
  h.begin();
  drop_and_weigh(h, "250", "245.5");
  h.tap("leave");
  h.tap("undo");
  CHECK_FALSE(dropper_found(h.b));
}

TEST_CASE("a batch whose name was corrected is called so everywhere") {
  Hands h;
  session::Log log;
  log.session = "19aa20f7";
  log.lines = {{0, 0, h.wall, "b1", session::Opened{"Weir bleu"}},
               {1, 0, h.wall + 1, "b1",
                session::Corrected{
                    {"19aa20f7", 0}, session::Corrected::Says{session::Opened{"Weir blue"}}, {}}}};
  h.give(Arrived{{log}, {}, {}, {}});
  CHECK(name_of_batch(h.b, "b1") == "Weir blue");
  CHECK(proposed_name(h.b, "Weir bleu") == "Weir bleu");
  CHECK(proposed_name(h.b, "Weir blue") == "Weir blue, 2");
}

}
