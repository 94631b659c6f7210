// A recipe on Shelf at the real window: looked at, and planned from its card.
#include "touch/hand.hpp"

namespace shelf_test {

namespace {

using namespace touch;
using bench::Screen;

// Its card has an id of its own in every program.
std::vector<session::Line> with_one_id(std::vector<session::Line> lines, const std::string& id) {
  for (session::Line& line : lines) {
    if (auto* plan = std::get_if<session::Planned>(&line.event))
      if (plan->recipe == id) plan->recipe = "recipe";
    const auto* laid = std::get_if<session::LaidOut>(&line.event);
    if (!laid || laid->card->id != id) continue;
    session::Card card = *laid->card;
    card.id = "recipe";
    line.event = session::LaidOut{card};
  }
  return lines;
}

void recipe_leads_the_plan(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look);
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("12");
  hand.tap("keep_recipe");
  const std::string recipe = hand.mirror.plan.recipe;
  for (const std::string& pad :
       {std::string("shelf"), std::string("kind_of recipe"), "card " + recipe, std::string("make")})
    hand.tap(pad);
  CHECK(hand.mirror.screen == Screen::plan);
  CHECK(hand.mirror.plan.recipe == recipe);
  hand.tap("weigh");
  hand.type("12");
  hand.tap("begin");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  const auto lines = only_session(home);
  std::string kept, planned; // in the program's own ids
  for (const session::Line& line : lines) {
    const auto* laid = std::get_if<session::LaidOut>(&line.event);
    if (laid && line.batch.empty()) kept = laid->card->id;
    if (const auto* plan = std::get_if<session::Planned>(&line.event)) planned = plan->recipe;
  }
  CHECK(kept != "");
  CHECK(planned == kept);
  check_same(with_one_id(lines, kept), with_one_id(hand.lines, recipe));
}

}

TEST_CASE("a recipe is planned from its card, lying") { recipe_leads_the_plan(lying); }
TEST_CASE("a recipe is planned from its card, upright") { recipe_leads_the_plan(upright); }

}
