#include "screens/views_shelf.hpp"

#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/pads_shelf.hpp"
#include "screens/views_slab.hpp"
#include "words/bench_says.hpp"
#include "words/typed_date.hpp"

namespace views {

using namespace bench;

void add_shelves(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::shelf;
  const auto keep = [&](const std::string& what) {
    out.push_back({"shelf, " + what + on, mm, view(b, {})});
  };
  keep("list");
  b.shelf_page.ticking = true;
  b.own = {"pb36", "pw6", "py43"};
  keep("ticked off");
  std::get<ShelfView>(out.back().view.screen).notice.error =
      words::Error{words::BenchSay::card_stays_own, {"Cerulean blue (chromium)"}};
  b.shelf_page = {};
  b.own.clear();
  for (const char* id :
       {"pb36", "gum_12_glycerin", "honey_11", "dropper", "teaspoon", "half_pan"}) {
    b.shelf_page.card = *shelf_card(b, id);
    b.shelf_page.kind = shelf_kind(b.shelf_page.card->kind());
    keep(id);
  }
  std::get<ShelfView>(out.back().view.screen).notice.error =
      words::Error{words::BenchSay::not_a_date, {"5 Nov", words::typed_example()}};
  b.shelf_page.kind = ShelfKind::pigment;
  b.shelf_page.choosing = true;
  b.shelf_page.card = *shelf_card(b, "pr108");
  keep("cautions");
  b.shelf_page = {};
  b.shelf_page.kind = ShelfKind::glass;
  b.shelf_page.card = blank_card(ShelfKind::glass, "g");
  keep("new glass");
  b.shelf_page.is_new = true;
  b.shelf_page.kind = ShelfKind::binder;
  b.shelf_page.card = blank_card(ShelfKind::binder, "n");
  keep("new binder");
  b.shelf_page.card->lot = "jar 12";
  b.shelf_page.card->made_on = "2026-12-04";
  b.shelf_page.card->keep_until = "2027-03-03";
  keep("dated binder");
  b.shelf_page.is_new = false;
  b.shelf_page.kind = ShelfKind::spoon;
  b.shelf_page.card = blank_card(ShelfKind::spoon, "s");
  b.number = NumberEntry{{ShelfPad::fact, "water_g"}, "", {}};
  keep("number");
}

// A pigment of long words, known from four batches, with jars and little left.
void add_cards_read(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::shelf;
  const auto keep = [&](const std::string& what) {
    out.push_back({"shelf, " + what + on, mm, view(b, {})});
  };
  const auto open = [&](const char* id, CardPage page) {
    b.shelf_page.card = *shelf_card(b, id);
    b.shelf_page.on = page;
  };
  open("pw6", CardPage::reading);
  keep("a card nobody used");
  b.stock["pr108"].jars = {
      {{"s", 1}, 1795617120000, {"pr108", 100, 42.5, "crowns", "L 77", "2026-11-20"}},
      {{"s", 2}, 1795617180000, {"pr108", 50, 0.0, "crowns", "", ""}}};
  b.stock["pr108"].weighed = session::Stock::Weighing{{"s", 3}, 1795617240000, 9.4};
  b.stock["pb36"].jars = {{{"s", 4}, 1795617120000, {"pb36", 250}}};
  for (int i = 0; i < 4; ++i)
    b.index.took_ug["pr108"][{1795617120000 + i, "b" + std::to_string(i)}] = 12'000'000;
  open("pr108", CardPage::reading);
  keep("a card that is read");
  auto& shown = std::get<ShelfView>(out.back().view.screen);
  for (auto& batch : shown.reading.batches) {
    batch.name = "Cerulean blue (chromium), 3";
    batch.trail = trail();
    batch.became = session::Became::wont_rewet;
  }
  for (const double g : {0.9, 1.0, 1.1}) shown.reading.right.push_back(g * shown.range->g);
  shown.reading.band->batches = 12;
  shown.colour = {"Cerulean blue (chromium), 2", "", false};
  b.index.swatches["pr108"][{1795617120000, "b0"}] = 0xAA3344;
  keep("a card with a swatch");
  std::get<ShelfView>(out.back().view.screen).colour = {"", "Cerulean blue (chromium), 3", false};
  session::Card red = *shelf_card(b, "pr108");
  std::get<session::PigmentCard>(red.facts).colour = 0xAA3344;
  b.index.swatches["pr108"][{1795617130000, "b1"}] = 0xBB3344;
  b.shelf_page.card = red;
  keep("a card in its own colour");
  std::get<ShelfView>(out.back().view.screen).colour = {"Cerulean blue (chromium), 2",
                                                        "Cerulean blue (chromium), 3", true};
  open("pr108", CardPage::jars);
  b.shelf_page.jar = {"pr108", 123.4, 1234.5, "crowns", "L 77", "2026-11-25"};
  keep("jars");
  std::get<ShelfView>(out.back().view.screen).notice.error =
      words::Error{words::BenchSay::jar_needs_currency, {}};
  b.number = NumberEntry{{ShelfPad::jar_price, ""}, "12.5", {}};
  keep("price of a jar");
  b.number.reset();
  open("pr108", CardPage::hues);
  keep("hues");
  open("pr108", CardPage::shades);
  keep("shades");
}

}
