#include "bench/learning.hpp"
#include "bench/pans.hpp"
#include "bench/stock.hpp"
#include "bench/today.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"

#include <algorithm>
#include <set>

using namespace bench;
using hands::Hands;

namespace {

constexpr std::int64_t day_ms = session::a_day_ms;
constexpr double minute = 60, day = 86400;
constexpr std::int64_t first = 20000 * day_ms; // a day of 2024, by UTC

using What = Due::What;

const Due* of(const std::vector<Due>& all, const std::string& id, What what) {
  for (const Due& one : all)
    if (one.of == id && one.what == what) return &one;
  return nullptr;
}

BookEntry poured(std::int64_t at) {
  BookEntry entry;
  entry.poured_at = at;
  entry.layer_at = at + 2 * day_ms;
  return entry;
}

BookEntry lying(BookEntry::Lies where, std::int64_t since) {
  BookEntry entry;
  entry.lies = where;
  entry.lies_since = since;
  return entry;
}

BookIndex index_of(const std::vector<std::pair<std::string, BookEntry>>& entries) {
  BookIndex index;
  for (const auto& [id, entry] : entries) {
    index.of[id] = entry;
    index.asked.insert(id);
  }
  return index;
}

std::int64_t on_day(int day) { return session::use_minute(day * day_ms); }

int asked_on(int days_dry) { // counted by hand
  if (days_dry < 1) return 0;
  return days_dry < 3 ? 1 : days_dry < 10 ? 3 : days_dry < 30 ? 10 : 30;
}

bool in_order(const std::vector<Due>& all, std::int64_t now) {
  const auto place = [&](const Due& d) {
    if (d.what == What::on_slab) return 0;
    if (d.what == What::runs_low) return 2;
    return d.what != What::use_up && now - d.since >= 60 * day_ms ? 3 : 1;
  };
  return std::is_sorted(all.begin(), all.end(), [&](const Due& a, const Due& b) {
    return std::pair(place(a), a.since) < std::pair(place(b), b.since);
  });
}

session::Card binder_until(const std::string& date) {
  session::Card card{"gum", "Gum 1:2", session::LiquidCard{session::CardKind::binder, {}}};
  card.keep_until = date;
  return card;
}

void gather(Hands& h) {
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("9");
  for (int i = 0; i < 3; ++i) h.tap("pass");
  h.tap("gather");
}

TodayView shown(Hands& h) { return std::get<TodayView>(view(h.b, h.now()).screen); }

// The same studio, in a window that opens later.
void open_window(Hands& h, Hands& later, double after_s) {
  later.wall = h.wall + static_cast<std::int64_t>(after_s * 1000);
  session::Log log = h.b.logs.front();
  log.session = "0ther";
  later.b.screen = Screen::today;
  later.give(Loaded{{log}, {}, {}});
}

}

TEST_CASE("a year of days: each thing is due from its day until it is dealt with, in order") {
  const BookIndex index = index_of({{"p", poured(first)},
                                    {"s", lying(BookEntry::on_slab, first + 20 * day_ms)},
                                    {"j", lying(BookEntry::in_jar, first)}});
  const std::vector<session::Card> shelf{binder_until(words::date_of(20200))}; // the 200th day
  for (int d = 0; d < 366; ++d) {
    CAPTURE(d);
    const std::int64_t now = first + d * day_ms + 1000;
    const auto all = due(index, shelf, {}, now, 0);
    CHECK(in_order(all, now));
    const Due* verdict = of(all, "p", What::verdict);
    CHECK((verdict ? verdict->day : 0) == asked_on(d));
    CHECK((of(all, "p", What::next_layer) != nullptr) == (d >= 2));
    CHECK(of(all, "j", What::in_jar) != nullptr);
    CHECK(of(all, "s", What::on_slab) != nullptr); // by a clock set back too
    CHECK((of(all, "gum", What::use_up) != nullptr) == (d >= 186));
    if (const Due* slab = of(all, "s", What::on_slab)) CHECK(slab == &all.front());
  }
}

TEST_CASE("what was dealt with is not due: judged, discarded, poured, put away, used up") {
  const std::int64_t now = first + 12 * day_ms;
  BookEntry judged = poured(first);
  judged.verdicts = {{{"s", 1}, first + 11 * day_ms, {session::Became::good, 0}}};
  BookEntry discarded = poured(first);
  discarded.discarded = true;
  BookEntry jar = lying(BookEntry::in_jar, first);
  jar.verdicts = judged.verdicts;
  const auto all = due(index_of({{"a", judged}, {"b", discarded}, {"c", jar}}), {}, {}, now, 0);
  REQUIRE(all.size() == 1); // the day of a layer is another matter
  CHECK(all[0].what == What::next_layer);
  session::Card gum = binder_until(words::date_of(20013));
  CHECK(due({}, {gum}, {}, now, 0).size() == 1);
  CHECK(due({}, {}, {}, now, 0).empty());
  BookIndex used;
  gum.made_g = 50;
  used.used_ug["gum"] = {{on_day(20005), 50'000'000}};
  CHECK(due(used, {gum}, {}, now, 0).empty());
}

TEST_CASE("poured paint is done with when its last verdict was given, sixty days after the pour") {
  BookEntry early = poured(first), last = poured(first);
  early.left_mL = last.left_mL = 0.8;
  early.verdicts = {{{"s", 1}, first + 29 * day_ms, {session::Became::good, 0}}};
  last.verdicts = {{{"s", 1}, first + 31 * day_ms, {session::Became::good, 0}}};
  const BookIndex index = index_of({{"early", early}, {"last", last}});
  for (int d = 32; d < 400; ++d) {
    CAPTURE(d);
    const auto all = due(index, {}, {}, first + d * day_ms + 1000, 0);
    CHECK(of(all, "early", What::verdict) != nullptr);
    CHECK(of(all, "early", What::next_layer) != nullptr);
    CHECK(of(all, "last", What::verdict) == nullptr);
    CHECK((of(all, "last", What::next_layer) != nullptr) == (d < 60));
  }
}

TEST_CASE("what nobody dealt with for months stands after what came due this week") {
  std::vector<std::pair<std::string, BookEntry>> entries{{"new", poured(first + 395 * day_ms)}};
  for (int i = 0; i < 20; ++i)
    entries.push_back({"old" + std::to_string(i), poured(first + i * day_ms)});
  const auto all = due(index_of(entries), {}, {}, first + 400 * day_ms, 0);
  REQUIRE(all.size() == 42);
  CHECK(all[0].of == "new");
  CHECK(all[1].of == "new");
  CHECK(all[2].of == "old0");
}

TEST_CASE("a window that opens folds no paint of months ago; once looked through, it waits whole") {
  Hands h;
  gather(h);
  const std::string id = h.b.batch;
  h.tap("today");
  h.tap("due jar " + id);
  h.tap("new_pan");
  h.tap("pan 1");
  h.tap("weigh_pan");
  h.type("5");
  Hands soon, late;
  open_window(h, soon, 20 * day);
  CHECK(soon.b.folds.kept.count(id) == 1);
  CHECK(of(soon.b.today.waits, id, What::next_layer));
  open_window(h, late, 200 * day);
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
    "what was left in the jar waits: until the next layer, or where no pan has room at once") {
  BookEntry some = poured(first), full = poured(first);
  some.left_mL = full.left_mL = 0.8;
  full.layer_at.reset();
  const BookIndex index = index_of({{"some", some}, {"full", full}});
  for (int d = 0; d < 70; ++d) {
    CAPTURE(d);
    const auto all = due(index, {}, {}, first + d * day_ms + 1000, 0);
    CHECK(of(all, "full", What::in_jar) != nullptr);
    CHECK((of(all, "some", What::in_jar) != nullptr) == (d < 2));
    if (const Due* jar = of(all, "some", What::in_jar)) CHECK(jar->since == *some.layer_at);
    CHECK((of(all, "some", What::next_layer) != nullptr) == (d >= 2));
  }
  some.left_mL = 0.05; // on the glass of an empty jar
  CHECK(due(index_of({{"some", some}}), {}, {}, first + 1000, 0).empty());
}

TEST_CASE("a pan that was weighed once is to be weighed again, in its time, and after it no more") {
  BookEntry entry = poured(first);
  entry.layer_at.reset();
  entry.weigh_again = WeighAgain{3, first + day_ms / 4, first + day_ms};
  const BookIndex index = index_of({{"p", entry}});
  for (int h = 0; h < 30; ++h) {
    CAPTURE(h);
    const auto all = due(index, {}, {}, first + h * day_ms / 24, 0);
    const Due* weigh = of(all, "p", What::weigh_pan);
    CHECK((weigh != nullptr) == (h >= 6 && h < 24));
    if (weigh) CHECK(weigh->pan == 3);
  }
}

TEST_CASE(
    "0.8 mL left after pouring: the board says so, and leads to Pans; so does a weighed pan") {
  Hands h;
  gather(h);
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
  gather(h);
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
  gather(h);
  h.tap("pans");
  const auto other = std::get<PansView>(view(h.b, h.now()).screen).others.at(0);
  REQUIRE(other.what == PansView::Other::layer_later);
  CHECK(other.low_h == doctest::Approx(wait.low_h).epsilon(0.001));
  CHECK(other.high_h == doctest::Approx(wait.high_h).epsilon(0.001));
}

TEST_CASE("lines from the future are not due before their day") {
  const auto all = due(index_of({{"p", poured(first + 5 * day_ms)}}), {}, {}, first, 0);
  CHECK(all.empty());
}

TEST_CASE("a pigment runs low where two batches like its last ones take more than is left") {
  session::Card ochre{"ochre", "Yellow ochre", session::PigmentCard{}};
  ochre.made_g = 105;
  BookIndex index;
  CHECK(due(index, {ochre}, {}, first, 0).empty()); // never used: nobody knows what a batch takes
  index.used_ug["ochre"] = {{on_day(20000), 20'000'000}, {on_day(20005), 40'000'000}};
  index.took_ug["ochre"] = {{{1, "a"}, 20'000'000}, {{2, "b"}, 40'000'000}};
  CHECK(low_mark(index, "ochre") == doctest::Approx(30));
  CHECK(stock_of(index, {}, ochre)->g == doctest::Approx(45));
  REQUIRE(due(index, {ochre}, {}, first, 0).size() == 1);
  CHECK(due(index, {ochre}, {}, first, 0)[0] == Due{"ochre", What::runs_low, 0, 0});
  session::Stocks jar;
  jar["ochre"].jars = {{{"s", 1}, 20006 * day_ms, {"ochre", 50}}};
  CHECK(due(index, {ochre}, jar, first, 0).empty()); // one more was bought
  ochre.made_on = words::date_of(20004);             // a new jar, that only the last batch was of
  CHECK(due(index, {ochre}, {}, first, 0).empty());
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
  open_window(h, soon, 20 * minute);
  CHECK(soon.b.screen == Screen::slab);
  CHECK(soon.b.batch == h.b.batch);
  CHECK(soon.lines.empty());
  Hands later;
  open_window(h, later, 40 * minute);
  CHECK(later.b.screen == Screen::today);
  CHECK(later.b.batch.empty());
  REQUIRE(shown(later).waits.size() == 1);
  later.tap("due slab " + h.b.batch);
  CHECK(later.b.screen == Screen::slab);
  CHECK(later.b.batch == h.b.batch);
}

TEST_CASE("a gathered batch opens Today, however short the while") {
  Hands h;
  gather(h);
  Hands soon;
  open_window(h, soon, minute);
  CHECK(soon.b.screen == Screen::today);
  CHECK(soon.shows("due jar " + h.b.batch));
}

TEST_CASE("the first day: everything on the board leads somewhere, and nothing is asked") {
  Hands h;
  h.tap("today");
  CHECK(shown(h).first_day);
  const std::vector<std::pair<const char*, Screen>> ways{{"new_paint", Screen::plan},
                                                         {"have", Screen::shelf},
                                                         {"my_binder", Screen::binder},
                                                         {"bank_card", Screen::tablet}};
  for (const auto& [pad, screen] : ways) {
    h.tap(pad);
    CHECK(h.b.screen == screen);
    h.tap("today");
  }
  h.tap("hand_on right");
  CHECK(h.b.display.hand == Hand::right);
  h.tap("hand_on left");
  CHECK(h.b.tablet.hand == Hand::left);
  CHECK(h.lines.empty());
}

TEST_CASE(
    "the first day: pigments are ticked off a list, and off it again, and lie on their shelf") {
  Hands h;
  h.tap("today");
  h.tap("have");
  const auto shelf = [&] { return std::get<ShelfView>(view(h.b, h.now()).screen); };
  const auto names = [&] {
    std::vector<std::string> out;
    for (const auto& row : shelf().rows) out.push_back(row.name);
    return out;
  };
  const auto before = names();
  REQUIRE(before.size() > 3);
  const std::string one = shelf().rows[1].pad.arg, two = shelf().rows[2].pad.arg;
  h.tap("own " + one);
  h.tap("own " + two);
  CHECK(names() == before);
  CHECK(shelf().rows[1].mine);
  CHECK(shelf().ticked == 2);
  CHECK(h.count<session::LaidOut>() == 2);
  h.tap("own " + one);
  CHECK_FALSE(shelf().rows[1].mine);
  CHECK(names() == before);
  CHECK(h.b.away.empty());
  h.tap("own " + one);
  h.tap("own " + one);
  CHECK(shelf().ticked == 1);
  h.tap("own_done");
  REQUIRE(shelf().rows.size() == 1);
  CHECK(shelf().rows[0].pad.arg == two);
  CHECK(h.shows("card " + two));
}

TEST_CASE("what was taken or bought of a pigment keeps it ticked, and says so") {
  Hands h;
  h.begin();
  h.tap("today");
  h.b.shelf_page = {};
  h.b.shelf_page.ticking = true;
  h.b.shelf_page.search = "pb28";
  h.b.screen = Screen::shelf;
  h.tap("own pb28");
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::BenchSay::card_stays_own);
  CHECK(h.count<session::Withdrawn>() == 0);
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
  open_window(h, later, 40 * minute);
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
