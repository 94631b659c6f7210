// What another studio told, obeyed at the slab.
#include "bench/planning.hpp"
#include "obeying.hpp"
#include "paint/catalogue.hpp"
#include "paint/range/learn_facts.hpp"
#include "studying.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace heard_test {

using namespace bench;
using hands::Hands;

namespace {

double usual_of_blue() {
  const paint::LearnPigment usual = paint::learn_facts(paint::in_catalogue("pb28")->facts);
  return std::exp(usual.ln_oil + usual.kappa);
}

// That blue, or all there is, wants so many times as much as is usual.
paint::ToldRange far_off(double times, bool all) {
  paint::ToldRange told;
  told.pigments = {"pb28"};
  told.ln_demands = {std::log(times * usual_of_blue())};
  told.covariance = {0.01};
  told.class_offset = {all ? std::log(times) : 0, 0.1};
  told.strength = {3.9, 1};
  const auto hand = paint::usual_theta();
  for (std::size_t i = 0; i < paint::theta_count; ++i) told.hand[i] = {hand[i].centre, 0.1};
  told.batches = 40;
  told.from = "5e1f20c70b94";
  return told;
}

void hear(Hands& h, const paint::ToldRange& told) {
  h.tap("tablet");
  h.b.sharing.folder = "told";
  h.tap("other_studios");
  h.give(FriendsFound{FriendsFile{"friend.json", 1795617120000, told}});
  h.tap("take_told");
  studying::study_all(h);
  REQUIRE(h.b.learning.ranges.fit.told);
}

double first_helping_g(const Hands& h) {
  const auto plan = planned(h.b);
  REQUIRE(plan);
  REQUIRE(*plan);
  return (*plan)->first_helping.high_g;
}

void plan_blue(Hands& h) {
  h.tap("plan");
  h.tap("pigment pb28");
  h.tap("weigh");
  h.type("12");
}

}

TEST_CASE("obeyed with a word of far more than is usual, paint never gets to be soup") {
  Hands alone;
  plan_blue(alone);
  for (const double times : {2.0, 4.8})
    for (const bool all : {true, false}) {
      CAPTURE(times);
      CAPTURE(all);
      Hands h;
      hear(h, far_off(times, all));
      plan_blue(h);
      CHECK(first_helping_g(h) <= 1.0001 * first_helping_g(alone));
      h.tap("begin");
      const double wants = usual_of_blue();
      double loosest = 0;
      for (int i = 0; i < 60 && h.slab().advice.kind != Advice::there; ++i) {
        obeying::do_what_is_said(h, wants);
        loosest = std::max(loosest, std::log(h.b.folded->standing.flow_now->value / wants));
      }
      CHECK(loosest < 0.25);
    }
}

}
