#include "at_pans.hpp"
#include "bench/due.hpp"
#include "bench/pans.hpp"
#include "bench/planning.hpp"
#include "bench/pours.hpp"
#include "paint/pans.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace pans_test {

using namespace bench;
using namespace hands;

namespace {

const session::Batch& batch(Hands& h) { return *h.b.pans.folded; }

template <class E>
const E& last_of(const Hands& h) {
  for (auto line = h.lines.rbegin(); line != h.lines.rend(); ++line)
    if (const E* event = std::get_if<E>(&line->event)) return *event;
  throw std::runtime_error("no such line");
}

}

TEST_CASE("without paint in a jar Pans is empty, and nothing can be tapped there") {
  Hands h;
  h.tap("pans");
  CHECK(pans_shown(h).batch.empty());
  for (const Pad& pad : layout(h.b).pads) CHECK(layout(h.b).top_bar.contains(pad.box.centre()));
}

TEST_CASE("a tap pours a pan to the brim, of the card that is shown") {
  Hands h;
  gather_for_pans(h);
  const double before = pans_shown(h).to_pour_mL;
  CHECK(before > 5);
  h.tap("new_pan");
  REQUIRE(batch(h).pans.size() == 1);
  CHECK(last_of<session::Poured>(h) == session::Poured{1, 1, "half_pan", std::nullopt});
  CHECK(batch(h).pans[0].layers[0].wet_mL == doctest::Approx(1.7));
  CHECK(pans_shown(h).to_pour_mL == doctest::Approx(before - 1.7));
  CHECK(h.shows("pan 1"));
  h.tap("pan_card");
  CHECK(pans_shown(h).card_name != "");
  h.tap("new_pan");
  CHECK(last_of<session::Poured>(h).in == "full_pan");
  CHECK(batch(h).pans[1].layers[0].wet_mL == doctest::Approx(pans_shown(h).card_mL));
  CHECK(pans_shown(h).card_mL > 2);
}

TEST_CASE("pour all fills as many new pans as the paint will have filled when it is dry") {
  Hands h;
  gather_for_pans(h);
  h.tap("pan_card"); // a size that was not planned
  const int all = pans_shown(h).all;
  const double mL = pans_shown(h).card_mL;
  const double before_mL = pans_shown(h).to_pour_mL;
  const auto fills = paint::pans_of(before_mL, mL, dry_share_to_pour(batch(h)), planned_fill);
  REQUIRE(fills);
  CHECK(all == fills->pans);
  CHECK(all < static_cast<int>(std::floor(before_mL / mL)));
  h.tap("pour_all");
  CHECK(last_of<session::Poured>(h) == session::Poured{1, all, "full_pan", std::nullopt});
  CHECK(static_cast<int>(batch(h).pans.size()) == all);
  CHECK(pans_shown(h).to_pour_mL == doctest::Approx(before_mL - all * mL));
}

TEST_CASE("a wet pan is chosen by a tap, not poured; days later it takes a layer") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.tap("new_pan");
  const auto lines = h.lines.size();
  h.tap("pan 1");
  CHECK(h.b.pans.pan == 1);
  h.tap("pour_pan");
  CHECK(h.lines.size() == lines);
  CHECK(h.b.notice.error->what == words::BenchSay::pans_still_wet);
  CHECK(pans_shown(h).all == 0);
  CHECK(pans_shown(h).wet);
  h.tap("undo"); // the second pan: what was said of the first is over
  CHECK_FALSE(h.b.notice.error);
  h.tap("new_pan");
  h.wait(3 * day);
  CHECK(pans_shown(h).all == 2);
  CHECK_FALSE(pans_shown(h).wet);
  h.tap("pour_all");
  CHECK(last_of<session::Poured>(h) == session::Poured{1, 2, "half_pan", std::nullopt});
  CHECK(batch(h).pans[0].layers.size() == 2);
  h.tap("pan 1");
  h.tap("pour_pan");
  CHECK(batch(h).pans[0].layers.size() == 2);
}

TEST_CASE("grams correct the pour just made, with a point or a comma") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.tap("pour_g");
  h.give(Key{"1", true, h.run, ++h.poll});
  h.give(Key{",", true, h.run, ++h.poll});
  h.give(Key{"5", true, h.run, ++h.poll});
  h.tap("enter");
  CHECK(h.count<session::Poured>() == 1);
  REQUIRE(batch(h).pans.size() == 1);
  CHECK(batch(h).pans[0].layers.size() == 1);
  CHECK(batch(h).pans[0].layers[0].wet_mL < 1.2);
  h.tap("undo"); // the number
  CHECK(batch(h).pans[0].layers[0].wet_mL == doctest::Approx(1.7));
  h.tap("undo"); // the pour
  CHECK(batch(h).pans.empty());
  CHECK(h.b.folded->pans.empty()); // on the slab too
}

TEST_CASE("what cannot be poured or weighed is said, and nothing is written") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  const auto lines = h.lines.size();
  h.tap("weigh_pan");
  h.tap("digit 9");
  h.tap("point");
  h.tap("point");
  h.tap("enter");
  CHECK(h.b.number->error);
  h.tap("leave");
  CHECK(h.lines.size() == lines);
}

TEST_CASE("the next layer: hours from the room, then perhaps, then now") {
  Hands h;
  gather_for_pans(h);
  CHECK(pans_shown(h).next.kind == PansView::Next::nothing);
  h.tap("new_pan");
  const auto first = pans_shown(h).next;
  CHECK(first.kind == PansView::Next::in_hours);
  CHECK_FALSE(first.weighed);
  // 12 to 48 h for 1 mL in a half pan (common practice, no source); this is 1.7 mL.
  CHECK(first.low_h > 4);
  CHECK(first.high_h > 24);
  CHECK(first.high_h < 200);
  h.wait(6 * hour);
  CHECK(pans_shown(h).next.high_h == doctest::Approx(first.high_h - 6).epsilon(0.001));
  h.wait(first.low_h * hour);
  CHECK(pans_shown(h).next.kind == PansView::Next::maybe_now);
  h.wait(first.high_h * hour);
  CHECK(pans_shown(h).next.kind == PansView::Next::now);
}

TEST_CASE("weighings replace the room's word, for pans poured alike too") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.tap("new_pan");
  const auto before = pans_shown(h).next;
  h.tap("weigh_pan");
  h.type("4.8");
  CHECK_FALSE(pans_shown(h).next.weighed); // once says nothing
  CHECK(pans_shown(h).weighings.size() == 1);
  h.wait(10 * hour);
  h.tap("pan 2");
  h.tap("weigh_pan");
  h.type("4.3");
  const auto after = pans_shown(h).next;
  CHECK(after.weighed);
  CHECK(after.high_h - after.low_h < before.high_h - before.low_h);
  h.tap("judge");
  h.tap("pan 1");
  CHECK(pans_shown(h).next.weighed);
  CHECK(last_of<session::PanWeighed>(h).pan == 2);
}

TEST_CASE("what was said last stands: of one pan it is not said of all, of all it is of each") {
  using session::Became;
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.tap("new_pan");
  h.wait(3 * day);
  h.tap("judge");
  const auto said = [&] {
    return pans_shown(h).said ? std::optional(pans_shown(h).said->as) : std::nullopt;
  };
  h.tap("pan 2");
  h.tap("became cracked");
  CHECK(last_of<session::Verdict>(h) == session::Verdict{Became::cracked, 2});
  CHECK(said() == Became::cracked);
  h.tap("all_pans");
  CHECK_FALSE(said());
  REQUIRE(pans_shown(h).apart.size() == 1);
  CHECK(pans_shown(h).apart[0].pan == 2);
  h.tap("became sunken");
  CHECK(said() == Became::sunken);
  CHECK(pans_shown(h).apart.empty());
  CHECK(pans_shown(h).pans[1].said->as == Became::sunken);
  h.tap("pan 2");
  h.tap("became good");
  CHECK(said() == Became::good);
  CHECK(pans_shown(h).pans[0].said->as == Became::sunken);
  CHECK(batch(h).verdicts.size() == 3);
}

TEST_CASE("the word that stands, tapped again, is taken back; another only follows it") {
  using session::Became;
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(3 * day);
  h.tap("judge");
  h.tap("became sunken");
  h.tap("became mould");
  h.tap("became sunken");
  CHECK(batch(h).verdicts.size() == 3);
  CHECK(pans_shown(h).said->as == Became::sunken);
  h.tap("became sunken"); // a thumb that bounced
  CHECK(batch(h).verdicts.size() == 3);
  h.wait(1);
  h.tap("became sunken");
  CHECK(batch(h).verdicts.size() == 2);
  CHECK(pans_shown(h).said->as == Became::mould);
  h.tap("undo");
  CHECK(pans_shown(h).said->as == Became::sunken);
}

TEST_CASE("sticky said of a wet layer is kept as tapped, and shown as still drying") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(hour);
  h.tap("judge");
  h.tap("became sticky");
  CHECK(last_of<session::Verdict>(h).as == session::Became::sticky);
  CHECK(pans_shown(h).said->early);
  CHECK(pans_shown(h).pans[0].said->early);
  h.wait(10 * day); // what was early stays so
  CHECK(pans_shown(h).said->early);
  h.tap("pan 1");
  h.tap("became sticky");
  CHECK_FALSE(pans_shown(h).said->early);
}

TEST_CASE("asked after 1, 3, 10 and 30 days; a verdict after the ask settles it") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  const std::string id = h.b.batch;
  CHECK(due_now(h.b, h.now()) == 0);
  h.wait(0.9 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 0);
  h.wait(0.2 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 1);
  h.wait(2 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 3);
  h.tap("pans");
  CHECK_FALSE(h.b.pans.judging); // a layer is due too, and goes first
  h.tap("judge");
  CHECK(pans_shown(h).asked_day == 3);
  h.tap("became good");
  CHECK(verdict_day_due(h.b, id, h.now()) == 0);
  h.wait(7 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 10);
  h.tap("became good"); // once more, of that day
  CHECK(verdict_day_due(h.b, id, h.now()) == 0);
  CHECK(pans_shown(h).said->as == session::Became::good);
  h.wait(1);
  h.tap("became good"); // a slip of the finger is taken back, and the ask stands again
  CHECK(verdict_day_due(h.b, id, h.now()) == 10);
  h.tap("became good");
  CHECK(verdict_day_due(h.b, id, h.now()) == 0);
  h.wait(25 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 30);
  h.wait(25 * day);
  CHECK(verdict_day_due(h.b, id, h.now()) == 30); // until it is given
  h.tap("became good");
  CHECK(due(h.b, h.now()).empty());
}

TEST_CASE("a next layer is due while paint is left and pans have room, and is counted on the tab") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(pans_shown(h).next.low_h * hour + 60);
  const auto waiting = due(h.b, h.now());
  REQUIRE_FALSE(waiting.empty());
  CHECK(std::any_of(waiting.begin(), waiting.end(),
                    [](const Due& d) { return d.what == Due::What::next_layer; }));
  CHECK(view(h.b, h.now()).top_bar.due == waiting.size());
  h.wait(day);
  h.tap("pan 1");
  h.tap("pour_pan");
  const auto then = due(h.b, h.now());
  CHECK(std::none_of(then.begin(), then.end(),
                     [](const Due& d) { return d.what == Due::What::next_layer; }));
}

TEST_CASE("the batch of the Book goes before the one on the slab; the others have pads") {
  Hands h;
  gather_for_pans(h);
  const std::string first = h.b.batch;
  h.tap("plan");
  gather_for_pans(h);
  CHECK(pans_batch(h.b) == h.b.batch);
  h.tap("other_batch " + first);
  CHECK(pans_shown(h).batch == first);
  CHECK_FALSE(h.shows("other_batch " + first));
  h.tap("new_pan");
  CHECK(h.lines.back().batch == first);
  h.tap("other_batch " + h.b.batch);
  CHECK(pans_shown(h).batch == h.b.batch);
  h.b.pans.batch.clear();
  h.tap("book");
  h.tap("batch " + first);
  h.tap("pans");
  CHECK(pans_shown(h).batch == first);
}

TEST_CASE("a pan that cannot weigh so much is not believed, and nothing is kept of it") {
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.tap("weigh_pan");
  h.type("999");
  REQUIRE(pans_shown(h).number);
  CHECK(
      pans_shown(h).number->error ==
      words::Error{words::BenchSay::pan_too_heavy, {words::Number(1.7, 1), words::Number(999, 0)}});
  CHECK(h.count<session::PanWeighed>() == 0);
}

TEST_CASE("one clock: Pans and Book count from the last pour, and without a pour from nothing") {
  Hands h;
  gather_for_pans(h);
  const std::string id = h.b.batch;
  h.tap("new_pan");
  h.wait(2.5 * day);
  h.tap("new_pan");
  h.wait(4.2 * day);
  h.tap("judge");
  CHECK(pans_shown(h).since_pour_ms / session::a_day_ms == 4);
  h.tap("became good");
  h.tap("book");
  h.tap("batch " + id);
  const auto book = [&] { return std::get<BookView>(view(h.b, h.now()).screen); };
  REQUIRE(book().verdicts.size() == 1);
  CHECK(book().verdicts[0].days == 4);
}

TEST_CASE("the tab opens what waits: a layer before a verdict") {
  Hands h;
  gather_for_pans(h); // some for a layer is left
  h.tap("new_pan");
  const std::string layered = h.b.batch;
  h.tap("plan");
  gather_for_pans(h);
  h.tap("pour_all");
  while (pans_shown(h).to_pour_mL > 0) h.tap("new_pan"); // the rest
  const std::string judged = h.b.batch;
  h.wait(3 * day);
  CHECK(due(h.b, h.now()).size() == view(h.b, h.now()).top_bar.due);
  h.b.batch.clear(); // nothing on the slab
  h.b.pans.batch.clear();
  for (const char* pad : {"plan", "pans"}) h.tap(pad);
  CHECK(pans_shown(h).batch == layered);
  CHECK_FALSE(h.b.pans.judging);
  const auto waiting = due(h.b, h.now());
  REQUIRE(waiting.size() == 3);
  CHECK(waiting[0] == Due{layered, Due::What::next_layer, 0, *h.b.index.of.at(layered).layer_at});
  h.tap("judge");
  h.tap("became good"); // which settles the layer as well
  for (const char* pad : {"plan", "pans"}) h.tap(pad);
  CHECK(pans_shown(h).batch == judged);
  CHECK(h.b.pans.judging);
}

}
