// A whole batch tapped at the real window, from the choice of the pigment to the closed lid.
#include "commands/show.hpp"
#include "touch/hand.hpp"

#include <nlohmann/json.hpp>

namespace batch_test {

namespace {

using namespace touch;
using Json = nlohmann::json;

void lay_out(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("binder gum_12");
  hand.write("name", "Evening blue");
  hand.tap("celsius");
  hand.type("19.5");
  hand.tap("weigh");
  hand.type("12");
  hand.tap("begin");
}

void add(Hand& hand, const std::string& amount, const std::string& pad) {
  hand.tap("another");
  hand.tap("amount " + amount);
  hand.tap(pad);
}

void wet_out(Hand& hand) {
  add(hand, "weigh", "add gum_12");
  hand.type("5.5");
  hand.tap("pass");
  hand.tap("felt wont_move");
  add(hand, "1/4 tsp", "add gum_12");
  for (int i = 0; i < 4; ++i) hand.tap("add gum_12");
  add(hand, "5 drops", "add water");
  hand.tap("felt too_sticky");
  hand.tap("trouble");
  hand.tap("trouble_is wont_wet");
}

void weigh_bottle(Hand& hand, const std::string& grams) {
  hand.tap("more");
  hand.tap("bottle");
  hand.tap("bottle_of gum_12");
  hand.type(grams);
}

void mull(Hand& hand) {
  weigh_bottle(hand, "80.25");
  hand.tap("pass");
  hand.tap("add gum_12");
  hand.tap("add gum_12");
  weigh_bottle(hand, "80.15");
  hand.tap("add honey_11");
  hand.tap("undo");
  hand.tap("more");
  hand.tap("bottle");
  hand.tap("lost_count gum_12");
  hand.tap("dot");
  hand.tap("specks few");
  hand.tap("pass"); // scraped together
  hand.tap("pass"); // the second pass
  hand.tap("felt right");
  hand.tap("dot");
  hand.tap("specks none");
}

// While the glass is wiped nothing counts, wherever the cloth goes.
void wipe(Hand& hand) {
  const Pixel drop = hand.centre("add water"), undo = hand.centre("undo");
  hand.tap("wipe");
  for (const Pixel at : {drop, undo, drop}) {
    hand.press(at);
    hand.seen();
    hand.release();
    hand.seen();
  }
  hand.unlock();
}

void put_away(Hand& hand) {
  hand.tap("pass");
  hand.tap("gather");
  hand.tap("back_on_slab");
  hand.tap("undo");
  hand.tap("close");
}

Json shown(const Home& home, const std::string& batch) {
  Process show({SLABSIDE_PROGRAM, "show", batch, "--json", "--studio", home.studio.string()},
               home.environment());
  CHECK(show.wait().number == 0);
  CHECK(show.err() == "");
  return Json::parse(show.out());
}

// The program and the mirror have two clocks, so what time does to the paint is left out.
Json without_time(Json batch) {
  for (const char* key : {"batch", "opened_at", "last_at", "clock_s", "places", "on_tools"})
    batch.erase(key);
  for (const char* key : {"flow_now", "liquid_mL_now", "water_lost_mL", "water_g", "over_oil_point",
                          "gum_strength", "pigment_fraction"})
    batch["standing"].erase(key);
  batch["plan"]["line"].erase(0);
  for (Json& pass : batch["passes"]) {
    pass.erase("start_s");
    pass["end_s"] = !pass["end_s"].is_null();
  }
  for (const char* notes : {"feel_notes", "dots", "troubles"})
    for (Json& note : batch[notes]) {
      note["line"].erase(0);
      note.erase("clock_s");
      note.erase("flow");
    }
  return batch;
}

const Json& material(const Json& batch, const std::string& card) {
  for (const Json& m : batch["materials"])
    if (m["card"] == card) return m;
  FAIL("no ", card);
  return batch;
}

// Counted here from the taps above.
void check_counts(const Json& batch) {
  CHECK(batch["name"] == "Evening blue");
  CHECK(batch["progress"] == "closed");
  CHECK(batch["room"]["celsius"] == 19.5);
  CHECK(material(batch, "pb29")["weighed_g"] == 12.0);
  const Json& gum = material(batch, "gum_12");
  CHECK(gum["drops"] == 6.0);
  CHECK(gum["spoons"]["teaspoon"] == 0.25);
  CHECK(gum["weighed_g"] == 5.5);
  CHECK(gum["count_lost"] == true);
  CHECK(material(batch, "water")["drops"] == 5.0);
  for (const Json& m : batch["materials"]) CHECK(m["card"] != "honey_11");
  CHECK(batch["feel_notes"].size() == 3);
  CHECK(batch["dots"].size() == 2);
  CHECK(batch["troubles"].size() == 1);
  CHECK(batch["passes"].size() == 3);
}

std::vector<session::Line> whole_batch(const Look& look, Server server = Server::xvfb) {
  Glass glass(look.w, look.h, server);
  const Home home;
  // Under a window manager only a window that fills the display is as large as was asked for.
  const std::vector<std::string> more(server == Server::xwayland ? 1 : 0, "--full-screen");
  Hand hand(glass, home, look, more);
  lay_out(hand);
  wet_out(hand);
  hand.tap("night");
  mull(hand);
  hand.tap("night");
  wipe(hand);
  put_away(hand);
  const auto folded = session::fold(session::all_of(hand.mirror.logs), hand.mirror.batches.at(0));
  REQUIRE(folded);
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");

  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  const Json batch = shown(home, "Evening blue");
  CHECK(without_time(batch) == without_time(Json::parse(commands::shown_as_json(*folded))));
  check_counts(batch);
  return lines;
}

}

TEST_CASE("a whole batch by taps, lying") { whole_batch(lying); }
TEST_CASE("a whole batch by taps, upright") { whole_batch(upright); }

// Real touches, which Weston hands to XWayland and XWayland to the window as its pointer.
TEST_CASE("a whole batch by touch on a Wayland desktop, and the same lines as on an X server") {
  CHECK(deeds(whole_batch(lying, Server::xwayland)) == deeds(whole_batch(lying)));
}

}
