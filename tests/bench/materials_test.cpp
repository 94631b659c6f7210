// Every material can be reached, however many there are.
#include "bench/materials.hpp"
#include "bench/shelf.hpp"
#include "hands.hpp"
#include "paint/material.hpp"
#include "session/amounts.hpp"

#include <algorithm>

namespace materials_test {

using namespace bench;
using hands::Hands;

namespace {

const std::vector<std::string> own{"clove_oil", "alcohol_70", "honey_own", "rose_water"};

// A shelf with more liquids than there are pads.
Hands full_shelf() {
  Hands h;
  const session::CardKind kinds[] = {session::CardKind::other, session::CardKind::other,
                                     session::CardKind::honey, session::CardKind::water};
  session::Log log;
  log.session = "d52f19e60002";
  for (std::size_t i = 0; i < own.size(); ++i) {
    const session::LiquidCard facts{kinds[i], {.water = 1}};
    log.lines.push_back(
        {i, 0, h.wall - 1000, "", session::LaidOut{session::Card{own[i], own[i], facts}}});
  }
  h.give(Loaded{{log}, {}, {}});
  h.begin();
  return h;
}

bool has_pad(const Hands& h, const std::string& card) {
  const auto pads = material_pads(h.b);
  return std::any_of(pads.begin(), pads.end(), [&](const PadId& pad) { return pad.arg == card; });
}

// Through the panel of those that have no pad.
void add_from_panel(Hands& h, const std::string& card) {
  h.tap("more");
  h.tap("materials");
  for (int page = 0; !h.shows("add " + card); ++page) {
    REQUIRE(page < 5);
    h.tap("more_materials");
  }
  h.tap("add " + card);
}

double drops_of(const Hands& h, const std::string& card) {
  for (const session::Total& t : h.b.folded->totals)
    if (t.card.id == card) return t.drops;
  return 0;
}

}

// Remedies name it. 0.886 g/mL at 62.4 % by mass (OIML R 22, from memory); that both shrink as they
// are mixed, 3 %, is left out.
TEST_CASE("alcohol ships beside the six pads, and is to be kept from flames while it is there") {
  Hands h;
  h.begin();
  CHECK_FALSE(has_pad(h, "alcohol_70"));
  CHECK_FALSE(h.slab().flammable);
  add_from_panel(h, "alcohol_70");
  CHECK(drops_of(h, "alcohol_70") == 1);
  CHECK(h.slab().flammable);
  const auto parts = session::material_of(*card_of(h.b, "alcohol_70"))->parts;
  CHECK(1 / paint::mL_per_g(parts) == doctest::Approx(0.886).epsilon(0.04));
  CHECK(parts.alcohol * 0.886 / 0.7893 == doctest::Approx(0.70).epsilon(0.003));
  h.wait(3600);
  CHECK_FALSE(h.slab().flammable);
}

TEST_CASE("what comes to the slab later takes one place, and no other pad moves") {
  for (const char* later : {"gum_13", "alcohol_70"}) {
    Hands h;
    h.begin();
    h.tap("add gum_12");
    const auto before = material_pads(h.b);
    REQUIRE_FALSE(has_pad(h, later));
    add_from_panel(h, later);
    CAPTURE(later);
    CHECK(has_pad(h, later));
    const auto now = material_pads(h.b);
    REQUIRE(now.size() == before.size());
    std::vector<std::string> gone, come;
    for (std::size_t i = 0; i < now.size(); ++i)
      if (now[i] != before[i]) gone.push_back(before[i].arg), come.push_back(now[i].arg);
    CHECK(come == std::vector<std::string>{later});
    CHECK(gone == std::vector<std::string>{"ox_gall"});
  }
}

TEST_CASE("each liquid of the shelf goes in, with a pad of its own or without") {
  Hands h = full_shelf();
  CHECK(material_pads(h.b).size() == most_materials);
  CHECK(has_pad(h, "pb28"));
  std::vector<std::string> liquids;
  for (const session::Card& card : h.b.shelf)
    if (session::is_liquid(card.kind()) && !makes_binder(card)) liquids.push_back(card.id);
  REQUIRE(liquids.size() > most_materials + 2);
  for (const std::string& card : liquids) {
    if (has_pad(h, card))
      h.tap("add " + card);
    else
      add_from_panel(h, card);
    CAPTURE(card);
    CHECK(drops_of(h, card) == 1);
    CHECK(is_open<TrailPanel>(h.b.panel));
  }
}

TEST_CASE("the pads are of one's own choice, and the tablet remembers it") {
  Hands h = full_shelf();
  REQUIRE_FALSE(has_pad(h, "alcohol_70"));
  h.tap("more");
  h.tap("materials");
  h.tap("choose_pads");
  const auto turn_to = [&](const std::string& card) {
    for (int page = 0; !h.shows("on_pad " + card) && page < 5; ++page) h.tap("more_materials");
    h.tap("on_pad " + card);
  };
  turn_to("alcohol_70");
  CHECK(has_pad(h, "alcohol_70"));
  CHECK(has_pad(h, "pb28"));
  CHECK(material_pads(h.b).size() == most_materials);
  for (const MaterialView& m : h.slab().cards) CHECK(m.has_pad == has_pad(h, m.pad.arg));
  const auto kept = read_tablet(written(h.b.tablet));
  REQUIRE(kept);
  CHECK(kept->materials == std::vector<std::string>{"alcohol_70"});
  turn_to("alcohol_70"); // off again
  CHECK_FALSE(has_pad(h, "alcohol_70"));
}

TEST_CASE("of more than six chosen the first one makes way, and the pigment never") {
  Hands h = full_shelf();
  h.b.tablet.materials.clear();
  h.tap("more");
  h.tap("materials");
  h.tap("choose_pads");
  int chosen = 0;
  for (int page = 0; page < material_pages(h.b, std::get<MaterialsPanel>(h.b.panel)); ++page) {
    for (const MaterialView& m : h.slab().cards) {
      h.tap(name_of(m.pad));
      ++chosen;
    }
    h.tap("more_materials");
  }
  CHECK(chosen > most_materials);
  CHECK(h.b.tablet.materials.size() == most_materials);
  CHECK(material_pads(h.b).size() == most_materials);
  CHECK(has_pad(h, "pb28"));
}

TEST_CASE("a tablet's file with nonsense for materials reads without them") {
  CHECK(read_tablet(R"({"materials": 7})")->materials.empty());
  CHECK(read_tablet(R"({"materials": ["a", 3, null, "b"]})")->materials ==
        std::vector<std::string>{"a", "b"});
}

}
