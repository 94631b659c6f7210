// What the maker owns: jars bought and weighed by touch, the list in order of use, a card read.
#include "bench/choices.hpp"
#include "bench/colour_chart.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/planning.hpp"
#include "bench/shelf_list.hpp"
#include "bench/stock.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

#include <algorithm>

namespace jars_test {

using namespace bench;
using doctest::Approx;
using hands::Hands;

namespace {

void write(Hands& h, const std::string& field, const std::string& text) {
  h.give(Text{*pad_named("jar_says " + field), text});
}

void open_jars_of(Hands& h, const std::string& card) {
  h.tap("shelf");
  h.b.shelf_page.search = card == "pb28" ? "cobalt blue" : "";
  h.tap("card " + card);
  h.tap("jars");
}

void buy(Hands& h, const std::string& g, const std::string& price) {
  h.tap("jar_g");
  h.type(g);
  if (!price.empty()) {
    h.tap("jar_price");
    h.type(price);
  }
  h.tap("jar_in");
}

ShelfView shelf(Hands& h) { return std::get<ShelfView>(view(h.b, h.now()).screen); }

std::vector<std::string> listed(Hands& h) {
  std::vector<std::string> out;
  for (const session::Card* card : cards_listed(h.b)) out.push_back(card->id);
  return out;
}

const session::Card& card(Hands& h, const std::string& id) { return *shelf_card(h.b, id); }

// Grams of the invented batch, and back to the shelf.
void use(Hands& h, const std::string& pigment, const std::string& name, const std::string& g) {
  h.tap("plan");
  h.give(Text{*pad_named("search"), name});
  h.tap("pigment " + pigment);
  h.tap("weigh");
  h.type(g);
  h.tap("begin");
  h.tap("add gum_12");
  for (const char* pad : {"pass", "pass", "pass", "gather", "close"}) h.tap(pad);
  h.wait(1);
}

}

TEST_CASE("a jar bought is counted, and what batches take goes off by itself") {
  Hands h;
  open_jars_of(h, "pb28");
  write(h, "currency", "crowns");
  write(h, "lot", "L 7");
  buy(h, "100", "42");
  const auto& bought = std::get<session::Bought>(h.lines.back().event);
  CHECK(bought == session::Bought{"pb28", 100, 42.0, "crowns", "L 7", "2026-11-25"});
  CHECK(h.lines.back().batch.empty());
  CHECK(h.count<session::LaidOut>() == 1); // whoever reads of the jar can read what is in it
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(100));
  CHECK(*shelf(h).stock.a_gram == Approx(0.42));
  use(h, "pb28", "cobalt blue", "12");
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(88));
  CHECK(*low_mark(h.b, "pb28") == Approx(12));
  open_jars_of(h, "pb28");
  CHECK(shelf(h).jars.jar.currency == "crowns"); // as the last time
  buy(h, "50", "");
  CHECK_FALSE(std::get<session::Bought>(h.lines.back().event).price);
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(138));
  CHECK(*shelf(h).stock.a_gram == Approx(0.42));
}

TEST_CASE("a plan costs what its jars cost, and names what nobody knows the price of") {
  Hands h;
  const auto plan = [&] { return std::get<PlanView>(view(h.b, h.now()).screen); };
  h.tap("plan");
  h.choose("pb28");
  h.tap("weigh");
  h.type("12");
  CHECK_FALSE(plan().cost); // no price was ever said
  open_jars_of(h, "pb28");
  write(h, "currency", "crowns");
  buy(h, "100", "42");
  h.tap("plan");
  REQUIRE(plan().cost);
  CHECK(plan().currency == "crowns");
  CHECK(plan().cost->pigment == Approx(5.04));
  REQUIRE(plan().cost->unknown.size() == 1);
  CHECK(plan().cost->unknown[0].id == h.b.plan.binder);
}

TEST_CASE("a jar that cannot be entered so is said, and nothing is lost") {
  Hands h;
  open_jars_of(h, "pb28");
  const auto refuses = [&](words::Sentence what) {
    h.tap("jar_in");
    REQUIRE(h.b.notice.error);
    CHECK(h.b.notice.error->what == what);
    CHECK(h.lines.empty());
  };
  refuses(words::BenchSay::jar_needs_g);
  for (const char* bad : {"0", "100001"}) {
    h.tap("jar_g");
    h.type(bad);
    REQUIRE(h.b.number);
    REQUIRE(h.b.number->error);
    CHECK(h.b.number->error->what == words::BenchSay::fact_out_of_range);
    h.tap("leave");
  }
  h.tap("jar_g");
  h.type("99.5");
  h.tap("jar_price");
  h.type("12");
  write(h, "currency", "");
  refuses(words::BenchSay::jar_needs_currency);
  write(h, "currency", "marks");
  write(h, "on", "25.11.2026");
  refuses(words::BenchSay::not_a_date);
  write(h, "on", "2031-01-01");
  refuses(words::BenchSay::bought_in_future);
  write(h, "on", "2026-11-20");
  h.tap("jar_in");
  CHECK(std::get<session::Bought>(h.lines.back().event).g == 99.5);
}

TEST_CASE("a jar for nothing is a gift: its price is known, and is 0") {
  Hands h;
  open_jars_of(h, "pb28");
  buy(h, "20", "0");
  CHECK(std::get<session::Bought>(h.lines.back().event).price == 0.0);
  CHECK(*shelf(h).stock.a_gram == 0);
}

TEST_CASE("what is left is set right by weighing it, and a slip is taken back") {
  Hands h;
  open_jars_of(h, "pb28");
  CHECK_FALSE(h.shows("jar_back"));
  buy(h, "100", "");
  h.wait(60);
  h.tap("left_g");
  h.type("83");
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(83));
  h.wait(60);
  h.tap("left_g");
  h.type("0");
  h.tap("enter"); // counted, there is more: asked about, and it is so
  CHECK(*left_of(h.b, card(h, "pb28")) == 0);
  h.tap("jar_back");
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(83));
  h.tap("jar_back");
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(100));
  h.tap("jar_back");
  CHECK_FALSE(left_of(h.b, card(h, "pb28")));
  CHECK_FALSE(h.shows("jar_back"));
}

TEST_CASE("a jar weighed against what was counted is asked about once, and keeps what was typed") {
  Hands h;
  open_jars_of(h, "pb28");
  buy(h, "300", "");
  const std::size_t lines = h.lines.size();
  const auto asks = [&](const std::string& g, words::BenchSay why) {
    h.tap("left_g");
    h.type(g);
    REQUIRE(h.b.number);
    REQUIRE(h.b.number->error);
    CHECK(h.b.number->error->what == why);
    CHECK(h.b.number->text == g);
    CHECK(h.lines.size() == lines);
    h.tap("leave");
    CHECK(*left_of(h.b, card(h, "pb28")) == Approx(300));
  };
  asks("170", words::BenchSay::left_doubted);
  asks("5000", words::BenchSay::left_doubted);
  asks("320", words::BenchSay::left_doubted);
  asks("0.001", words::BenchSay::left_doubted);
  h.tap("left_g");
  h.type("170");
  h.tap("erase");
  h.type("1"); // another number is asked about again
  REQUIRE(h.b.number);
  CHECK(h.lines.size() == lines);
  h.tap("enter");
  CHECK_FALSE(h.b.number);
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(171));
  h.tap("left_g");
  h.type("150");
  CHECK_FALSE(h.b.number);
  h.tap("left_g");
  h.type("60");
  REQUIRE(h.b.number);
  h.type("60"); // all of it once more, as was asked
  CHECK_FALSE(h.b.number);
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(60));
}

TEST_CASE("next to nothing bought, or left of what nobody counted, is asked about") {
  Hands h;
  open_jars_of(h, "pb28");
  for (const char* pad : {"jar_g", "left_g"}) {
    h.tap(pad);
    h.type("0.001");
    REQUIRE(h.b.number);
    REQUIRE(h.b.number->error);
    CHECK(h.b.number->error->what == words::BenchSay::grams_tiny);
    h.tap("enter");
    CHECK_FALSE(h.b.number);
  }
}

TEST_CASE("two devices buy and weigh: all of it counts") {
  Hands h;
  open_jars_of(h, "pb28");
  buy(h, "100", "");
  session::Log other;
  other.session = "d52f19e60002";
  other.lines.push_back({0, 0, h.wall + 1, "", session::Bought{"pb28", 50}});
  h.give(Arrived{{other}, {}, {}, {}});
  CHECK(*left_of(h.b, card(h, "pb28")) == Approx(150));
}

TEST_CASE(
    "an empty studio lists everything; then the maker's own stand apart, the last used first") {
  Hands h;
  h.tap("shelf");
  const std::size_t all = listed(h).size();
  CHECK(all > 20);
  CHECK_FALSE(h.shows("others"));
  h.b.shelf_page.search = "titanium";
  h.tap("card pw6");
  h.tap("tick");
  h.b.shelf_page.search.clear();
  CHECK(listed(h) == std::vector<std::string>{"pw6"});
  use(h, "pb28", "cobalt blue", "12");
  h.wait(60);
  use(h, "py43", "ochre", "10");
  h.tap("shelf");
  CHECK(listed(h) == std::vector<std::string>{"py43", "pb28", "pw6"});
  CHECK(shelf(h).not_listed == all - 3);
  h.tap("others");
  CHECK(listed(h).size() == all - 3);
  CHECK(shelf(h).not_listed == 3);
  h.tap("others");
  CHECK(listed(h).size() == 3);
  h.give(Text{*pad_named("search"), "cobalt"}); // looks through all of them, one's own first
  CHECK(listed(h).size() > 1);
  CHECK(listed(h).front() == "pb28");
}

TEST_CASE("a card that is read leads to a plan, and to the Book") {
  Hands h;
  use(h, "pb28", "cobalt blue", "12");
  const std::string batch = h.b.batches.back();
  h.tap("shelf");
  h.tap("card pb28");
  const ShelfView read = shelf(h);
  REQUIRE(read.reading.batches.size() == 1);
  CHECK(read.reading.batches[0].name == h.b.index.of.at(batch).name);
  CHECK(read.range);
  CHECK(read.reading.mulling);
  h.tap("batch_of " + batch);
  CHECK(h.b.screen == Screen::book);
  CHECK(batch_of(h.b.book.page) == batch);
  h.tap("shelf");
  h.tap("make");
  CHECK(h.b.screen == Screen::plan);
  REQUIRE(h.b.plan.blend.size() == 1);
  CHECK(h.b.plan.blend[0].card == "pb28");
}

TEST_CASE("a card put away while it is planned leaves the plan") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb28");
  h.tap("make");
  h.tap("shelf");
  h.tap("change");
  h.tap("put_away");
  CHECK(h.b.plan.blend.empty());
}

TEST_CASE("a colour is chosen from the chart, its hue first") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb28");
  h.tap("change");
  h.tap("chart");
  CHECK(shelf(h).chart == chart_hues());
  h.tap("hue 9");
  CHECK(shelf(h).chart == chart_shades(9));
  h.tap("shade 4");
  CHECK(h.lines.empty()); // until the card is done
  h.tap("card_done");
  CHECK(pigment_of(card(h, "pb28")).colour == chart_shades(9)[4]);
  CHECK(h.count<session::LaidOut>() == 1);
}

TEST_CASE("every colour of the chart can be told from its neighbours, from light to dark") {
  const auto grey = chart_shades(15);
  CHECK(grey.front() > 0xE0E0E0);
  CHECK(grey.back() < 0x303030);
  for (int hue = 0; hue < static_cast<int>(chart_hues().size()); ++hue) {
    const auto shades = chart_shades(hue);
    for (std::size_t i = 2; i < shades.size(); ++i) CHECK(shades[i] != shades[i - 2]);
  }
}

// 12 g of blue at 0.42: 5.04. The binder's gum and water are not bought: it is named.
TEST_CASE("the Book says what a batch cost, and what is not in it") {
  Hands h;
  open_jars_of(h, "pb28");
  buy(h, "100", "42");
  h.tap("plan");
  h.give(Text{*pad_named("search"), "cobalt blue"});
  h.begin();
  h.tap("add gum_12");
  h.wait(1);
  const std::string batch = h.b.batch;
  const auto cost = [&] {
    h.b.book.page = BatchPage{batch, {}};
    h.tap("book");
    h.b.book.page = BatchPage{batch, {}};
    h.wait(1);
    return std::get<BookView>(view(h.b, h.now()).screen).cost;
  };
  REQUIRE(cost());
  CHECK(cost()->sum() == Approx(5.04));
  REQUIRE(cost()->unknown.size() == 1);
  CHECK(cost()->unknown[0].id == "gum_12");
  h.tap("shelf");
  h.tap("kind_of liquid");
  h.tap("card gum_arabic");
  h.tap("jars");
  buy(h, "1000", "30");
  CHECK(cost()->unknown.empty());
  CHECK(cost()->gum > 0);
}

TEST_CASE("dry gum is for making binder: it is not laid beside a slab") {
  Hands h;
  h.begin();
  for (const session::Line& line : h.lines)
    if (const auto* laid = std::get_if<session::LaidOut>(&line.event))
      CHECK(laid->card->id != "gum_arabic");
}

}
