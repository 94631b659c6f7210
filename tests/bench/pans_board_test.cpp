// The board of Pans: other batches, pages of pans, the drying curve, and why paint cracked.
#include "at_pans.hpp"
#include "bench/due.hpp"
#include "bench/folds.hpp"
#include "bench/pan_times.hpp"
#include "bench/pans.hpp"
#include "words/bench_says.hpp"
#include "words/numbers.hpp"

#include <algorithm>

namespace pans_board_test {

using namespace bench;
using namespace hands;

TEST_CASE("several batches at once: what waits first, two on a page, and what each waits for") {
  using Other = PansView::Other;
  Hands h;
  std::vector<std::string> batches;
  for (int i = 0; i < 4; ++i) {
    h.tap("plan");
    gather_for_pans(h);
    batches.push_back(h.b.batch);
    if (i < 2) h.tap("new_pan");
  }
  h.tap("pour_all");
  h.b.pans.batch.clear();
  h.tap("plan");
  h.tap("pans");
  REQUIRE(pans_shown(h).others.size() == 2);
  CHECK(pans_shown(h).more_others == 1);
  CHECK(pans_shown(h).others[0].pad.arg == batches[2]); // a jar waits now, a layer later
  CHECK(pans_shown(h).others[0].what == Other::in_jar);
  CHECK(pans_shown(h).others[0].mL > 5);
  CHECK(pans_shown(h).others[1].pad.arg == batches[0]); // its layer can go on first
  CHECK(pans_shown(h).others[1].what == Other::layer_later);
  CHECK(pans_shown(h).others[1].low_h > 4);
  CHECK(pans_shown(h).others[1].pans.size() == 1);
  h.tap("more_batches");
  REQUIRE(pans_shown(h).others.size() == 1);
  CHECK(pans_shown(h).others[0].pad.arg == batches[1]);
  CHECK(pans_shown(h).others[0].what == Other::layer_later);
  h.wait(3 * day);
  CHECK(pans_shown(h).others[0].what == Other::layer_now);
  CHECK(pans_shown(h).others[0].layer == 2);
  h.tap("more_batches"); // round
  CHECK(pans_shown(h).others.size() == 2);
  h.tap("other_batch " + batches[0]);
  CHECK(pans_shown(h).batch == batches[0]);
  CHECK(pans_shown(h).others[0].pad.arg != batches[0]);
}

TEST_CASE(
    "pans over more than a page: the last place turns it, and a pan just poured is in sight") {
  for (const Display& display : {Display{}, Display{{136, 218}, Hand::left}}) {
    Hands h(display);
    gather_for_pans(h);
    const int a_page = display.upright() ? 10 : 6;
    for (int i = 0; i < a_page; ++i) {
      h.tap("new_pan");
      h.tap("pour_g");
      h.type("1");
      CHECK_FALSE(h.shows("more_pans"));
    }
    h.tap("new_pan");
    CHECK(h.shows("more_pans"));
    CHECK(h.shows("pan " + std::to_string(a_page + 1)));
    CHECK_FALSE(h.shows("pan 1"));
    h.tap("more_pans");
    CHECK(h.shows("pan 1"));
    h.tap("more_pans");
    h.tap("undo"); // the last page is gone with it
    CHECK(h.shows("pan 1"));
    CHECK_FALSE(h.shows("more_pans"));
  }
}

TEST_CASE("the chosen pan's curve: from the last weighing on, with the time for the next layer") {
  Hands h;
  gather_for_pans(h);
  CHECK(pans_shown(h).curve.pan == 0);
  h.tap("new_pan");
  h.tap("new_pan");
  const auto curve = [&] { return pans_shown(h).curve; };
  CHECK(curve().pan == 2);
  CHECK(curve().layer == 2);
  REQUIRE(curve().ready_h);
  REQUIRE(curve().ahead.size() > 10);
  CHECK(curve().ahead.front().hours == 0);
  CHECK(curve().ahead.back().g < 0.5 * curve().ahead.front().g);
  h.tap("pan 1");
  CHECK(curve().pan == 1);
  h.tap("weigh_pan");
  h.type("4.8");
  h.wait(10 * hour);
  h.tap("weigh_pan");
  h.type("4.3");
  CHECK(pans_shown(h).weighings.size() == 2);
  CHECK(curve().ahead.front().g == doctest::Approx(4.3));
  CHECK(curve().ahead.front().low_g == doctest::Approx(4.3));
  CHECK(curve().ahead.back().low_g < curve().ahead.back().high_g);
  CHECK(curve().to_h > curve().now_h);
  h.wait(30 * day);
  CHECK(curve().ahead.back().hours == doctest::Approx(curve().to_h));
  CHECK(curve().ahead.back().g > 3); // no more than its water
}

TEST_CASE("how deep the pan is decides how deep a layer lies, and how long it dries") {
  Hands h;
  const auto gathered = [&](const char* depth) {
    h.tap("shelf");
    h.tap("kind_of pan");
    h.tap("card half_pan");
    h.tap("fact depth_mm");
    h.type(depth);
    h.tap("card_done");
    h.tap("plan");
    gather_for_pans(h);
    h.tap("new_pan");
    return pans_shown(h);
  };
  const PansView shallow = gathered("5"), deep = gathered("12");
  CHECK(shallow.depth_known);
  CHECK(shallow.layer_mm == doctest::Approx(5)); // to the brim
  CHECK(deep.layer_mm == doctest::Approx(12));
  CHECK(deep.next.low_h > 1.5 * shallow.next.low_h);
}

TEST_CASE("cracked: the likely causes in order, what is seen here first") {
  using paint::CrackCause;
  Hands h;
  gather_for_pans(h);
  h.tap("new_pan");
  h.wait(3 * day);
  h.tap("judge");
  CHECK(pans_shown(h).causes.empty());
  h.tap("became cracked");
  REQUIRE(pans_shown(h).causes.size() == 4);
  CHECK(pans_shown(h).causes[0] ==
        paint::LikelyCause{CrackCause::too_hard, true}); // no honey in it
  CHECK(pans_shown(h).causes[1].cause == CrackCause::deep_layer);
  h.wait(1);
  h.tap("became cracked"); // taken back
  CHECK(pans_shown(h).causes.empty());
}

TEST_CASE("the next layer is foreseen as it is poured, to the brim, and as it dries") {
  Hands h;
  gather_for_pans(h);
  const auto before = pans_shown(h);
  CHECK(before.fresh.pour_mL == doctest::Approx(std::min(before.card_mL, before.to_pour_mL)));
  CHECK(before.fresh.next_mL > 0.4 * before.fresh.pour_mL);
  CHECK(before.fresh.next_mL < 0.7 * before.fresh.pour_mL);
  h.tap("pour_all");
  const auto after = pans_shown(h);
  double foreseen = 0;
  for (const auto& pan : after.pans) {
    CHECK(pan.pour_mL <= pan.brim_mL - pan.layers_mL.at(0) + 1e-9);
    CHECK(pan.next_mL <= pan.pour_mL);
    foreseen += pan.pour_mL;
  }
  CHECK(foreseen > 0);
  CHECK(foreseen <= after.to_pour_mL + 1e-9);
  h.wait(10 * day);
  h.tap("pour_all");
  double poured = 0;
  for (const session::Pan& pan : h.b.pans.folded->pans)
    if (pan.layers.size() > 1) poured += pan.layers[1].wet_mL;
  CHECK(poured == doctest::Approx(foreseen).epsilon(0.2)); // some water left the jar's paint
}

TEST_CASE("what is left and fills no pan is shared out between them") {
  Hands h;
  gather_for_pans(h);
  for (int i = 0; i < 5; ++i) h.tap("new_pan");
  h.wait(4 * day);
  const double left_mL = to_pour_mL(*h.b.pans.folded);
  const auto pours = pours_for_all(h.b, h.now());
  REQUIRE(pans_in(pours) > 1);
  double room_mL = 0;
  for (const session::Pan& pan : h.b.pans.folded->pans)
    room_mL += session::volume_of(pan.card).mL - session::dry_mL(pan);
  REQUIRE(left_mL < room_mL);
  std::map<int, double> foreseen;
  for (const auto& pan : pans_shown(h).pans) foreseen[pan.number] = pan.pour_mL;
  h.tap("pour_all");
  CHECK(to_pour_mL(*h.b.pans.folded) < 1e-6);
  for (const session::Pan& pan : h.b.pans.folded->pans) {
    CHECK(pan.layers.back().wet_mL == doctest::Approx(left_mL / pans_in(pours)).epsilon(0.01));
    CHECK(pan.layers.back().wet_mL == doctest::Approx(foreseen[pan.number]).epsilon(0.01));
  }
  h.tap("undo"); // all of it was one tap
  for (const session::Pan& pan : h.b.pans.folded->pans) CHECK(pan.layers.size() == 1);
  h.tap("pan 1");
  h.tap("pour_g");
  h.type("400");
  REQUIRE(h.b.number);
  CHECK(h.b.number->error->what == words::BenchSay::pan_holds_less);
}

TEST_CASE("sunken pans still take a layer; pans that are good do not") {
  for (const session::Became as : {session::Became::sunken, session::Became::good}) {
    Hands h;
    gather_for_pans(h);
    h.tap("new_pan");
    const std::string batch = h.b.pans.folded->id;
    h.wait(2 * day);
    Effects effects;
    record(h.b, batch, session::Verdict{as}, h.now(), effects);
    h.wait(2 * day);
    h.tap("today");
    const bool waits = as == session::Became::sunken;
    CHECK(next_layer_at(*fold_of(h.b, batch)).has_value() == waits);
    const auto waiting = due(h.b, h.now());
    CHECK(std::any_of(waiting.begin(), waiting.end(), [&](const Due& one) {
            return one.of == batch && one.what == Due::What::next_layer;
          }) == waits);
  }
}

namespace {

// Poured by weight until no more than so much is left, into half pans.
void pour_until(Hands& h, double left_mL) {
  const double g_per_mL = session::wet_g_per_mL(h.b.pans.folded->places, session::Place::jar);
  while (pans_shown(h).to_pour_mL > left_mL + 0.05) {
    h.tap("new_pan");
    const double poured_mL = h.b.pans.folded->pans.back().layers[0].wet_mL;
    const double over_mL = left_mL - pans_shown(h).to_pour_mL;
    if (over_mL <= 0) continue;
    h.tap("pour_g");
    h.type(words::invariant((poured_mL - over_mL) * g_per_mL, 2));
  }
}

bool waits_for_pour(Hands& h) {
  const auto all = due(h.b, h.now());
  return std::any_of(all.begin(), all.end(), [](const Due& one) {
    return one.what == Due::What::in_jar || one.what == Due::What::next_layer;
  });
}

}

TEST_CASE("a rest that fills less than a third of a pan is no job, one that fills more is") {
  for (const double left_mL : {0.5, 0.8}) {
    CAPTURE(left_mL);
    Hands h;
    gather_for_pans(h);
    pour_until(h, left_mL);
    REQUIRE(pans_shown(h).to_pour_mL == doctest::Approx(left_mL).epsilon(0.1));
    const bool is_job = left_mL > 0.6;
    for (const double days : {0.0, 6.0}) {
      h.wait(days * day);
      CHECK(waits_for_pour(h) == is_job);
    }
    CHECK((pans_shown(h).all > 0) == is_job);
    CHECK((pans_shown(h).next.kind == PansView::Next::none_left) == !is_job);
    h.tap("pan 1");
    const auto layers = h.count<session::Poured>();
    h.tap("pour_pan"); // by hand it can be poured all the same
    CHECK(h.count<session::Poured>() == layers + 1);
  }
}

TEST_CASE("one more layer is advised only where its paint is there, for all pans or for one") {
  Hands h;
  gather_for_pans(h);
  pour_until(h, 0.8);
  h.wait(3 * day);
  h.tap("judge");
  h.tap("became sunken");
  const double least_mL = 0.15 * static_cast<double>(pans_shown(h).pans.size());
  CHECK(pans_shown(h).layer_left == (0.8 > least_mL));
  h.tap("pan 1");
  CHECK(pans_shown(h).layer_left);
  h.tap("judge");
  while (pans_shown(h).to_pour_mL > 0) h.tap("new_pan");
  h.tap("judge");
  CHECK_FALSE(pans_shown(h).layer_left);
}

}
