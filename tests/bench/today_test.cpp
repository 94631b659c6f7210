#include "bench/learning.hpp"
#include "bench/pans.hpp"
#include "bench/today.hpp"
#include "entries.hpp"
#include "hands.hpp"

#include <algorithm>
#include <set>

namespace today_test {

using namespace bench;
using namespace entries;
using hands::Hands;

namespace {

constexpr double minute = 60, day = 86400;

TodayView shown(Hands& h) { return std::get<TodayView>(view(h.b, h.now()).screen); }

}

TEST_CASE("a window that opens folds no paint of months ago; once looked through, it waits whole") {
  Hands h;
  h.gather();
  const std::string id = h.b.batch;
  h.tap("today");
  h.tap("due jar " + id);
  h.tap("new_pan");
  h.tap("pan 1");
  h.tap("weigh_pan");
  h.type("5");
  Hands soon, late;
  soon.open_after(h, 20 * day, Screen::today);
  CHECK(soon.b.folds.kept.count(id) == 1);
  CHECK(of(soon.b.today.waits, id, What::next_layer));
  late.open_after(h, 200 * day, Screen::today);
  CHECK(late.shows("due verdict " + id));
  late.b.folds.kept.clear();
  late.b.screen = Screen::plan;
  index_all(late.b, late.now());
  CHECK(late.b.folds.kept.empty());
  late.b.screen = Screen::today;
  late.wait(1);
  CHECK(of(late.b.today.waits, id, What::verdict));
  CHECK_FALSE(of(late.b.today.waits, id, What::next_layer));
  bool redraw = false;
  for (int i = 0; wants_to_study(late.b) && i < 100; ++i)
    redraw = step(late.b, Study{}, late.now()).redraw || redraw;
  CHECK(redraw);
  CHECK(of(late.b.today.waits, id, What::next_layer));
  CHECK(shown(late).waits[0].left_mL > least_left_mL);
}

TEST_CASE(
    "0.8 mL left after pouring: the board says so, and leads to Pans; so does a weighed pan") {
  Hands h;
  h.gather();
  const std::string id = h.b.batch;
  h.tap("today");
  h.tap("due jar " + id);
  h.tap("new_pan");
  h.tap("pan 1");
  h.tap("weigh_pan");
  h.type("5");
  REQUIRE(to_pour_mL(*h.b.pans.folded) > least_left_mL);
  h.tap("today");
  REQUIRE(shown(h).waits.size() == 1);
  CHECK(shown(h).waits[0].due.what == What::in_jar);
  CHECK(shown(h).waits[0].left_mL > least_left_mL);
  CHECK(shown(h).waits[0].due.since > h.wall); // when the next layer can go on
  CHECK(view(h.b, h.now()).top_bar.due == 0);
  h.wait(0.5 * day);
  const auto waits = shown(h).waits;
  const bool weighs = std::any_of(waits.begin(), waits.end(), [](const auto& wait) {
    return wait.due.what == What::weigh_pan && wait.due.pan == 1;
  });
  CHECK(weighs);
  h.tap("due weigh " + id);
  CHECK(h.b.screen == Screen::pans);
  CHECK(h.b.pans.pan == 1);
  CHECK_FALSE(h.b.pans.judging);
  h.tap("weigh_pan");
  h.type("4.5");
  h.tap("today");
  CHECK_FALSE(h.shows("due weigh " + id));
}

TEST_CASE("Today, Pans and the pad of another batch there say one range until the next layer") {
  Hands h;
  h.gather();
  const std::string id = h.b.batch;
  h.tap("today");
  h.tap("due jar " + id);
  h.tap("new_pan");
  h.wait(1800);
  h.tap("today");
  REQUIRE(shown(h).waits.size() == 1);
  const auto wait = shown(h).waits[0];
  CHECK(wait.low_h > 0);
  CHECK(wait.high_h > wait.low_h);
  h.tap("due jar " + id);
  const auto pans = std::get<PansView>(view(h.b, h.now()).screen);
  REQUIRE(pans.next.kind == PansView::Next::in_hours);
  CHECK(pans.next.low_h == doctest::Approx(wait.low_h).epsilon(0.001));
  CHECK(pans.next.high_h == doctest::Approx(wait.high_h).epsilon(0.001));
  h.tap("plan");
  h.gather();
  h.tap("pans");
  const auto other = std::get<PansView>(view(h.b, h.now()).screen).others.at(0);
  REQUIRE(other.what == PansView::Other::layer_later);
  CHECK(other.low_h == doctest::Approx(wait.low_h).epsilon(0.001));
  CHECK(other.high_h == doctest::Approx(wait.high_h).epsilon(0.001));
}

TEST_CASE("a batch goes over the board: slab, jar, pans, verdict, and is made again from there") {
  Hands h;
  h.begin();
  const std::string id = h.b.batch;
  h.tap("today");
  CHECK(shown(h).waits.size() == 1);
  CHECK(view(h.b, h.now()).top_bar.due == 0); // a hand is at work there
  h.wait(31 * minute);
  CHECK(view(h.b, h.now()).top_bar.due == 1);
  h.tap("due slab " + id);
  CHECK(h.b.screen == Screen::slab);
  for (const char* pad : {"another", "amount weigh", "add gum_12"}) h.tap(pad);
  h.type("9");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("gather");
  h.tap("today");
  CHECK_FALSE(h.shows("due slab " + id));
  h.tap("due jar " + id);
  CHECK(h.b.screen == Screen::pans);
  CHECK(pans_batch(h.b) == id);
  h.tap("pour_all");
  while (std::get<PansView>(view(h.b, h.now()).screen).to_pour_mL > 0) h.tap("new_pan");
  h.tap("today");
  CHECK(shown(h).waits.empty());
  h.wait(1.1 * day);
  REQUIRE(shown(h).waits.size() == 1);
  CHECK_FALSE(shown(h).waits[0].pans.empty());
  h.tap("due verdict " + id);
  CHECK(h.b.pans.judging);
  h.tap("became good");
  h.tap("today");
  CHECK(shown(h).waits.empty());
  REQUIRE(shown(h).again.size() == 1);
  h.tap("again " + id);
  CHECK(h.b.screen == Screen::plan);
  CHECK(h.b.plan.again_of == id);
  h.tap("begin");
  CHECK(h.b.folded->again_of == id);
}

TEST_CASE("a window opens on Slab where a hand was a moment ago, else on Today") {
  Hands h;
  h.begin();
  Hands soon;
  soon.open_after(h, 20 * minute, Screen::today);
  CHECK(soon.b.screen == Screen::slab);
  CHECK(soon.b.batch == h.b.batch);
  CHECK(soon.lines.empty());
  Hands later;
  later.open_after(h, 40 * minute, Screen::today);
  CHECK(later.b.screen == Screen::today);
  CHECK(later.b.batch.empty());
  REQUIRE(shown(later).waits.size() == 1);
  later.tap("due slab " + h.b.batch);
  CHECK(later.b.screen == Screen::slab);
  CHECK(later.b.batch == h.b.batch);
}

TEST_CASE("a gathered batch opens Today, however short the while") {
  Hands h;
  h.gather();
  Hands soon;
  soon.open_after(h, minute, Screen::today);
  CHECK(soon.b.screen == Screen::today);
  CHECK(soon.shows("due jar " + h.b.batch));
}

TEST_CASE("hundreds of batches: the board turns pages, and each thing stands on one of them") {
  Hands h;
  h.tap("today");
  for (int i = 0; i < 300; ++i) {
    const std::string id = "b" + std::to_string(i);
    h.b.batches.push_back(id);
    h.b.index.of[id] = lying(BookEntry::in_jar, h.wall - i);
    h.b.index.asked.insert(id);
  }
  h.wait(1);
  std::set<std::string> seen;
  for (int page = 0;; ++page) {
    REQUIRE(page < 100);
    for (const auto& wait : shown(h).waits) CHECK(seen.insert(wait.due.of).second);
    if (!h.shows("page_on")) break;
    h.tap("page_on");
  }
  CHECK(seen.size() == 300);
  h.b.index = {};
  h.wait(1);
  CHECK(shown(h).page == 0);
  CHECK(shown(h).waits.empty());
}

TEST_CASE("a card that runs low leads to itself, and away when it is put away") {
  Hands h;
  for (session::Card& card : h.b.shelf)
    if (card.id == "pb28") card.made_g = 20;
  h.begin(); // 12 g of it
  h.tap("today");
  h.tap("due low pb28");
  CHECK(h.b.screen == Screen::shelf);
  REQUIRE(h.b.shelf_page.card);
  CHECK(h.b.shelf_page.card->id == "pb28");
  h.tap("change");
  h.tap("put_away");
  h.tap("today");
  CHECK_FALSE(h.shows("due low pb28"));
}

TEST_CASE("an empty Slab says how to begin, and its tab takes up what was left there") {
  Hands h;
  h.tap("slab");
  CHECK(h.b.screen == Screen::slab);
  h.tap("to_plan");
  CHECK(h.b.screen == Screen::plan);
  h.begin();
  Hands later;
  later.open_after(h, 40 * minute, Screen::today);
  later.tap("slab");
  CHECK(later.b.batch == h.b.batch);
  CHECK(later.b.screen == Screen::slab);
}

TEST_CASE("of paints made again and again the newest good one is offered, and none that is ill") {
  Hands h;
  const auto add = [&](const std::string& id, const std::string& pigment,
                       std::vector<session::Became> as) {
    h.b.batches.push_back(id);
    BookEntry& entry = h.b.index.of[id];
    entry.pigments = {pigment};
    for (const session::Became one : as) entry.verdicts.push_back({{}, 1, {one, 0}});
  };
  using session::Became;
  add("old", "pb28", {Became::good});
  add("new", "pb28", {Became::sticky, Became::good});
  add("ill", "pb28", {Became::good, Became::mould});
  add("other", "py43", {Became::good, Became::sunken});
  add("unjudged", "pr101", {});
  CHECK(last_good(h.b) == std::vector<std::string>{"other", "new"});
}

}
