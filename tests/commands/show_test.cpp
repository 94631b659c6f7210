#include "commands/show.hpp"
#include "commands/tool.hpp"

#include <nlohmann/json.hpp>

namespace show_test {

using namespace tool;
using doctest::Approx;

namespace {

using namespace session;

Card card(std::string id, Card::Facts facts) { return {id, id, std::move(facts)}; }

// 10 g of a pigment of 2 g/mL whose oil point is 1 (46.75 * 2 / 93.5), 5 g of a "binder" of plain
// water, 4 drops of water of 0.05 mL, all in one moment, so that nothing dries.
std::vector<std::pair<std::string, Event>> tiny(const std::string& batch, const std::string& name) {
  const Card pigment =
      card("stone", PigmentCard{"", 0, {2, 0, 46.75, 0, paint::PigmentClass::mineral}});
  const Card binder = card("wash", LiquidCard{CardKind::binder, {.water = 1}});
  const Card water = card("water", LiquidCard{CardKind::water, {.water = 1}});
  const Card dropper = card("bulb", DropperCard{{0.05, 0.002}, CardKind::water});
  return {{"", began()},
          {"", LaidOut{pigment}},
          {"", LaidOut{binder}},
          {"", LaidOut{water}},
          {"", LaidOut{dropper}},
          {batch, Opened{name}},
          {batch, RoomSet{19, 0.4, false}},
          {batch, Added{"stone", Unit::g, 10, ""}},
          {batch, Added{"wash", Unit::g, 5, ""}},
          {batch, Added{"water", Unit::drops, 4, "bulb"}},
          {batch, Felt{Feel::too_sticky, By::knife}},
          {batch, Felt{Feel::right, By::muller}},
          {batch, Withdrawn{{"c41e08d5", 10}}},
          {batch, Dot{Specks::few}},
          {batch, Trouble{TroubleKind::gummy}}};
}

}

TEST_CASE("one drop is not called drops") {
  const Studio studio;
  auto events = tiny("7f3a91c2", "Stone");
  std::get<Added>(events.at(9).second).amount = 1;
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  CHECK(has(studio.read({"show", "Stone"}).out, "  1 drop\n"));
}

TEST_CASE("a discarded batch is named by its id, where its name or “last” finds no other") {
  const Studio studio;
  auto events = tiny("7f3a91c2", "Stone");
  events.push_back({"7f3a91c2", Discarded{}});
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  const auto refused = [&](std::vector<std::string> words, const char* what) {
    const Ran ran = studio.read(std::move(words));
    CHECK(ran.status == 1);
    CHECK(has(ran.err, what));
    CHECK(has(ran.err, "7f3a91c2"));
  };
  refused({"show", "Stone"}, "The batch “Stone” is discarded");
  refused({"show", "last"}, "Every batch of this studio is discarded");
  refused({"table"}, "Every batch of this studio is discarded");
  CHECK(studio.read({"show", "7f3a91c2"}).status == 0);
}

TEST_CASE("show --json gives the numbers computed by hand") {
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl", bytes_of(tiny("7f3a91c2", "Stone")));
  const Ran ran = studio.read({"show", "Stone", "--json"});
  REQUIRE(ran.status == 0);
  const auto j = nlohmann::json::parse(ran.out);
  const auto near = [](double value) { return Approx(value).epsilon(1e-6); };
  const auto& s = j["standing"];
  // Computed outside the program (Python), water 0.99821 g/mL at 20 °C (CRC Handbook), a scale of
  // 0.1 g as a rectangular distribution (JCGM 100:2008, 4.3.7): 0.1 / sqrt 12.
  CHECK(s["pigment_g"]["u"] == near(0.0288675135));
  CHECK(s["pigment_mL"]["value"] == near(5));
  CHECK(s["binder_ratio"]["value"] == near(5));
  CHECK(s["binder_ratio"]["u"] == near(0.0322748612));
  CHECK(s["flow_put_in"]["value"] == near(1.0417932098));
  CHECK(s["flow_now"]["value"] == near(1.0417932098));
  CHECK(s["over_oil_point"]["value"] == near(1.0417932098));
  CHECK(s["gum_strength"].is_null());
  CHECK(s["water_lost_mL"]["value"] == 0);
  REQUIRE(j["materials"].size() == 3);
  CHECK(j["materials"][1]["weighed_g"] == 5);
  CHECK(j["materials"][2]["drops"] == 4);
  CHECK(j["materials"][2]["g"]["value"] == near(0.199642));
  CHECK(j["materials"][2]["g"]["u"] == near(0.0094170943)); // 5 % a drop, 4 % of the dropper
  CHECK(j["room"]["celsius"] == 19);
  CHECK(j["progress"] == "open");
  REQUIRE(j["feel_notes"].size() == 1); // the other one is withdrawn
  CHECK(j["feel_notes"][0]["as"] == "right");
  CHECK(j["feel_notes"][0]["by"] == "muller");
  CHECK(j["feel_notes"][0]["line"] == nlohmann::json({"c41e08d5", 11}));
  CHECK(j["feel_notes"][0]["flow"] == near(1.0417932098));
  CHECK(j["dots"][0]["specks"] == "few");
  CHECK(j["troubles"][0]["what"] == "gummy");
  CHECK(j["warnings"].empty());
}

TEST_CASE("show for people says the same, to the digits that are known") {
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl", bytes_of(tiny("7f3a91c2", "Stone")));
  const Ran ran = studio.read({"show", "7f3a91c2"});
  REQUIRE(ran.status == 0);
  CHECK(has(ran.out, "5.000 ± 0.032 g binder to 10 g"));
  CHECK(has(ran.out, "19.0 °C, 40 %"));
  CHECK(has(ran.out, "4 drops"));
  CHECK(has(ran.out, "opened 2026-11-25 15:32"));
  CHECK_FALSE(has(ran.out, "too sticky"));
}

TEST_CASE("batches are found by id, by name, and as the last; else it is said") {
  const Studio studio;
  CHECK(has(studio.read({"show", "last"}).err, "no batch in this studio"));
  rig::put(studio.sessions / "a.jsonl", bytes_of(tiny("7f3a91c2", "Stone")));
  CHECK(studio.read({"show", "last"}).status == 0);
  CHECK(has(studio.read({"list"}).out, "7f3a91c2"));
  const Ran none = studio.read({"show", "Rose"});
  CHECK(none.status == 1);
  CHECK(has(none.err, "Rose"));
  auto second = tiny("00000002", "Stone");
  std::get<Began>(second[0].second).session = "00000001";
  rig::put(studio.sessions / "b.jsonl", bytes_of(second));
  const Ran two = studio.read({"show", "Stone"});
  CHECK(two.status == 1);
  CHECK(has(two.err, "7f3a91c2"));
  CHECK(has(two.err, "00000002"));
  CHECK(studio.read({"show", "00000002"}).status == 0);
}

TEST_CASE("a list of nothing says so") {
  const Studio studio;
  CHECK(studio.read({"list"}).out == "There is no batch in this studio yet.\n");
  auto events = tiny("7f3a91c2", "Stone");
  events.push_back({"7f3a91c2", Discarded{}});
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  CHECK(has(studio.read({"list"}).out, "is discarded. One by its id, as “7f3a91c2”"));
}

TEST_CASE("an addition of nothing known is left out, and said") {
  const Studio studio;
  auto events = tiny("7f3a91c2", "Stone");
  events.push_back({"7f3a91c2", Added{"moon", Unit::g, 3, ""}});
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  const auto j = nlohmann::json::parse(studio.read({"show", "last", "--json"}).out);
  CHECK(j["standing"]["binder_ratio"]["value"] == Approx(5));
  REQUIRE(j["warnings"].size() == 1);
  CHECK(j["warnings"][0]["kind"] == "unknown_card");
  CHECK(has(studio.read({"show", "last"}).out, "moon"));
  CHECK(has(run({"check", studio.name}).out, "moon"));
}

TEST_CASE("text from files cannot steer a terminal") {
  CHECK(commands::printable("a\x1b[2Jb\nc\x7f") == "a?[2Jb?c?");
  CHECK(commands::printable("\xc2\x9b"
                            "1m é") == "?1m é");
  const Studio studio;
  rig::put(studio.sessions / "a.jsonl", bytes_of(tiny("7f3a91c2", "St\x1b[31mone")));
  CHECK_FALSE(has(studio.read({"show", "last"}).out, "\x1b"));
  CHECK_FALSE(has(studio.read({"list"}).out, "\x1b"));
}

TEST_CASE("no studio, no crash") {
  CHECK(run({"show", "last", "--studio", "/nowhere/at/all", "--fallback", ""}).status == 1);
  CHECK(run({"list", "--studio", "/nowhere/at/all", "--fallback", ""}).status == 1);
  const Ran check = run({"check", "/nowhere/at/all"});
  CHECK(check.status == 2);
  CHECK(has(check.err, "/nowhere/at/all"));
}

TEST_CASE("a batch is found by the number on its label, unless two bear it") {
  const Studio studio;
  auto events = tiny("7f3a91c2d4e5", "Stone");
  for (const char* other : {"19aa20f7c001", "19aa20f7c002"}) {
    const auto more = tiny(other, other);
    events.insert(events.end(), more.begin() + 1, more.end());
  }
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  const Ran found = studio.read({"show", "7f3a91c2"});
  CHECK(found.status == 0);
  CHECK(found.out.find("Stone") != std::string::npos);
  CHECK(studio.read({"show", "7f3a91c2d4"}).status == 0);
  CHECK(studio.read({"show", "7f3a91c"}).status == 1); // no label has so few
  CHECK(studio.read({"show", "7f3a91c3"}).status == 1);
  const Ran two = studio.read({"show", "19aa20f7"});
  CHECK(two.status == 1);
  CHECK(two.err.find("19aa20f7c002") != std::string::npos);
  CHECK(studio.read({"show", "19aa20f7c002"}).status == 0);
}

TEST_CASE("a discarded batch is shown when it is named by its number, and listed nowhere") {
  const Studio studio;
  auto events = tiny("7f3a91c2d4e5", "Stone");
  const auto more = tiny("f9aa20f7c001", "Chalk");
  events.insert(events.end(), more.begin() + 1, more.end());
  events.push_back({"f9aa20f7c001", Discarded{}});
  rig::put(studio.sessions / "a.jsonl", bytes_of(events));
  CHECK(studio.read({"list"}).out.find("Chalk") == std::string::npos);
  CHECK(studio.read({"show", "last"}).out.find("Stone") != std::string::npos);
  CHECK(studio.read({"show", "Chalk"}).status == 1);
  const Ran shown = studio.read({"show", "f9aa20f7c001"});
  CHECK(shown.status == 0);
  CHECK(shown.out.find("discarded") != std::string::npos);
}

}
