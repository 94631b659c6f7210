#include "paint/mixture.hpp"

#include "paint/tools_loss.hpp"
#include "random.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <random>

namespace mixture_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

const Pigment blue{.g_per_mL = 4, .g_per_mL_u = 0.1, .oil_g_per_100g = 30, .oil_u = 3};
const Material powder{Kind::pigment, {.pigment = 1}, blue};
const Material water{Kind::water, {.water = 1}, {}};
const Material binder{Kind::binder, *parts_of({.gum = 1, .water = 2, .honey = 0.3}), {}};
const Material spirit{Kind::wetting_aid, *parts_of({.water = 0.3, .alcohol = 0.7}), {}};
const Room air = *room(21, 50);

Mixture usual() {
  Mixture m;
  put(m, "p", powder, {10, 0.0016, {}});
  put(m, "b", binder, {6, 0.01, {{"dropper", 0.3}}});
  put(m, "w", water, {1, 0.001, {{"dropper", 0.05}}});
  return m;
}

Mixture anything() {
  Mixture m;
  const auto amount = [] {
    return Amount{between(0.5, 20), between(0, 0.1), {{"dropper", between(-0.5, 0.5)}}};
  };
  put(m, "p", powder, amount());
  put(m, "b", binder, amount());
  put(m, "s", spirit, amount());
  m.water_gone = {between(-0.1, 0.3), between(0, 0.01), {{"scale", between(-0.05, 0.05)}}};
  m.since = {between(0, 0.2), between(0, 0.2), 1};
  m.alcohol_g.low = m.alcohol_g.middle * between(0, 1);
  return m;
}

bool same(double a, double b) { return std::abs(a - b) <= 1e-9 * (1 + std::abs(a) + std::abs(b)); }

bool same(const Amount& a, const Amount& b) {
  return same(a.value, b.value) && same(uncertainty(a), uncertainty(b));
}

Mixture rested(Mixture m, Spread spread, double seconds, const BenchRate& bench = {}) {
  dry(m, *dried(m, sums_of(m.contents), spread, air, seconds, bench));
  return m;
}

}

TEST_CASE("nothing weighs nothing, and stands nowhere") {
  CHECK(is_empty(Mixture{}));
  CHECK(grams_of({}, {}).value == 0);
  CHECK_FALSE(stand(Mixture{}).flow_now);
  CHECK(weighed({}, {}, exact(1), {}, "w").error().what == Say::nothing_there);
  CHECK(share_of({}, exact(1), {}, "w").error().what == Say::nothing_there);
}

TEST_CASE("parted and joined again is what it was, errors and all") {
  holds("part, then join", [] {
    const Mixture m = anything();
    const auto two = part(m, {between(0, 1), between(0, 0.01), {}}, "move");
    RC_ASSERT(two.has_value());
    const Mixture again = joined(two->left, two->taken);
    const BenchRate bench;
    RC_ASSERT(same(grams_of(again, bench), grams_of(m, bench)));
    const Standing a = stand(again), b = stand(m);
    for (const auto which : {&Standing::liquid_mL_now, &Standing::gum_g, &Standing::water_g,
                             &Standing::pigment_mL, &Standing::alcohol_g})
      RC_ASSERT(same(a.*which, b.*which));
    RC_ASSERT(same(*a.flow_now, *b.flow_now));
    RC_ASSERT(same(*a.binder_ratio, *b.binder_ratio));
  });
}

TEST_CASE("both parts stand where the whole stood") {
  holds("a mixed paint is the same everywhere", [] {
    const Mixture m = anything();
    const double share = between(0.01, 0.99);
    const auto two = part(m, exact(share), "move");
    const Standing whole = stand(m), taken = stand(two->taken), left = stand(two->left);
    for (const Standing* s : {&taken, &left}) {
      RC_ASSERT(same(*s->flow_now, *whole.flow_now));
      RC_ASSERT(same(*s->gum_strength, *whole.gum_strength));
      RC_ASSERT(same(*s->over_oil_point, *whole.over_oil_point));
    }
    RC_ASSERT(same(grams_of(two->taken, {}), scaled(grams_of(m, {}), share)));
  });
}

TEST_CASE("all and nothing leave an empty place") {
  const auto all = part(usual(), exact(1), "move");
  CHECK(is_empty(all->left));
  CHECK(grams_of(all->taken, {}).value == doctest::Approx(17));
  CHECK(is_empty(part(usual(), exact(0), "move")->taken));
  CHECK(part(usual(), exact(1.01), "move").error().what == Say::not_a_share);
  CHECK(part(usual(), exact(std::nan("")), "move").error().what == Say::not_a_number);
}

TEST_CASE("half by eye: what one place has more the other has less") {
  const auto two = part(usual(), half_by_eye(), "move");
  const Amount here = grams_of(two->left, {}), there = grams_of(two->taken, {});
  CHECK(there.shares.at("move") == doctest::Approx(0.05 * 17));
  CHECK(here.shares.at("move") == doctest::Approx(-0.05 * 17));
  CHECK(there.value == doctest::Approx(8.5));
}

TEST_CASE("so many grams of it") {
  const Mixture m = usual();
  const auto share = share_of(m, {5, 0.0009, {}}, {}, "move");
  REQUIRE(share);
  CHECK(share->value == doctest::Approx(5.0 / 17));
  // What was taken was weighed: it is known to the scale, whatever the drops were.
  const auto two = part(m, *share, "move");
  CHECK(grams_of(two->taken, {}).value == doctest::Approx(5));
  CHECK(uncertainty(grams_of(two->taken, {})) == doctest::Approx(0.03));
  CHECK(share_of(m, exact(17.5), {}, "move")->value == 1);
  CHECK(share_of(m, exact(30), {}, "move").error().what == Say::amount_too_large);
  CHECK(share_of(m, exact(std::nan("")), {}, "move").error().what == Say::not_a_number);
}

TEST_CASE("so many grams taken weigh so much, and both parts the whole") {
  holds("grams", [] {
    const Mixture m = anything();
    const double all = grams_of(m, {}).value, wanted = between(0.01, 0.99) * all;
    const auto two = part(m, *share_of(m, exact(wanted), {}, "move"), "move");
    RC_ASSERT(same(grams_of(two->taken, {}).value, wanted));
    RC_ASSERT(same(grams_of(two->left, {}).value, all - wanted));
  });
}

TEST_CASE("the longer it lies open the less it is; nothing leaves in no time") {
  holds("falls", [] {
    Mixture m = usual();
    put(m, "s", spirit, exact(between(0, 3)));
    const double time = between(0, 7200), more = time + between(0, 7200);
    const double now = grams_of(m, {}).value;
    const double soon = grams_of(rested(m, Spread::mulling, time), {}).value;
    const double later = grams_of(rested(m, Spread::mulling, more), {}).value;
    RC_ASSERT(now >= soon - 1e-12);
    RC_ASSERT(soon >= later - 1e-12);
    RC_ASSERT(same(grams_of(rested(m, Spread::mulling, 0), {}).value, now));
  });
}

TEST_CASE("alcohol leaves on its own clock, a covered jar keeps it") {
  Mixture m = usual();
  put(m, "s", spirit, exact(2));
  const Mixture after = rested(m, Spread::mulling, 120);
  CHECK(after.alcohol_g.middle < m.alcohol_g.middle * 0.9);
  CHECK(after.alcohol_g.low < after.alcohol_g.middle);
  CHECK(after.alcohol_g.high > after.alcohol_g.middle);
  CHECK(stand(after).alcohol_g.shares.at("alcohol") > 0);
  const Mixture kept = rested(m, Spread::covered, 1e6);
  CHECK(kept.alcohol_g.middle == m.alcohol_g.middle);
  CHECK(kept.since.lost_g == 0);
}

TEST_CASE("what the bench foretells in two stretches it foretells in one") {
  holds("the foretelling is of the whole time", [] {
    Mixture m = usual();
    const double first = between(10, 3000), second = between(10, 3000);
    const Mixture once = rested(m, Spread::mulling, first + second);
    const Mixture twice = rested(rested(m, Spread::mulling, first), Spread::mulling, second);
    RC_ASSERT(same(once.since.lost_g, twice.since.lost_g));
    RC_ASSERT(std::abs(once.since.per_ln_factor - twice.since.per_ln_factor) <
              1e-6 * (1 + once.since.lost_g));
    const DryingPrediction later = since(rested(m, Spread::mulling, first).since, twice.since);
    const DryingPrediction itself = *predict_drying(
        wet_of(sums_of(m.contents), live(sums_of(m.contents), rested(m, Spread::mulling, first))),
        Spread::mulling, air, second);
    RC_ASSERT(same(later.lost_g, itself.lost_g));
    RC_ASSERT(std::abs(later.per_ln_factor - itself.per_ln_factor) < 1e-6);
  });
}

TEST_CASE("how much the water lost changes with the bench is its slope") {
  const double h = 1e-4;
  for (double seconds : {60.0, 600.0, 3000.0}) {
    const auto lost = [&](double ln_factor) {
      const BenchRate bench{ln_factor};
      return rested(rested(usual(), Spread::knife, seconds, bench), Spread::mulling, seconds, bench)
          .since;
    };
    const double slope = (lost(h).lost_g - lost(-h).lost_g) / (2 * h);
    CHECK(lost(0).per_ln_factor == doctest::Approx(slope).epsilon(1e-3));
  }
}

TEST_CASE("paint weighed where it lies says what has left, and teaches the bench") {
  Mixture m = rested(usual(), Spread::mulling, 600);
  const double predicted = m.since.lost_g;
  REQUIRE(predicted > 0.3);
  // Drops known to 5 % hide half a gram of water; a binder weighed in does not.
  m.contents[1].grams = {6, 0.0016, {}};
  const double really = predicted * 0.6;
  const auto w = weighed(m, {}, {17 - really, 0.0016, {}}, {}, "weighing");
  REQUIRE(w);
  CHECK(w->there.water_gone.value == doctest::Approx(really).epsilon(0.1));
  CHECK(uncertainty(w->there.water_gone) < 0.1);
  CHECK(w->bench.observations == 1);
  CHECK(std::exp(w->bench.ln_factor) < 0.85);
  CHECK(std::exp(w->bench.ln_factor) > 0.6);
  CHECK(grams_of(w->there, w->bench).value == doctest::Approx(17 - really).epsilon(1e-3));
  CHECK(w->there.since == DryingPrediction{});
}

TEST_CASE("paint weighed in its jar corrects the drops, less what stayed on the tools") {
  const Mixture m = usual();
  const auto gathered = part(m, {0.075, 0.0144 * 0.0144, {}}, "gathered");
  const double expected = 17 * (1 - 0.075);
  const auto w = weighed(gathered->left, gathered->taken, {expected - 0.5, 0.0016, {}}, {}, "jar");
  REQUIRE(w);
  const Mixture all = joined(w->there, w->on_tools);
  // The dropper is the worst known: it gives most of the half gram.
  CHECK(all.contents[1].grams.value < 6 - 0.2);
  CHECK(all.contents[0].grams.value == doctest::Approx(10).epsilon(0.01));
  CHECK(uncertainty(all.contents[1].grams) < uncertainty(m.contents[1].grams));
  CHECK(grams_of(w->there, w->bench).value == doctest::Approx(expected - 0.5).epsilon(1e-3));
  CHECK(w->stayed_on_tools.value == doctest::Approx(0.075 + 0.5 / 17));
  CHECK(w->bench.observations == 0); // nothing was left to dry
  CHECK(weighed(gathered->left, gathered->taken, exact(40), {}, "jar").error().what ==
        Say::weighing_contradicts_both);
}

TEST_CASE("a jar that holds all that went in left nothing on the tools, and no more") {
  const auto gathered = part(usual(), foretold({}), "gathered");
  for (const double g : {17.0, 17.3}) {
    const auto w = weighed(gathered->left, gathered->taken, {g, 0.0016, {}}, {}, "jar");
    REQUIRE(w);
    const double stayed = grams_of(w->on_tools, {}).value;
    CHECK(stayed >= 0);
    CHECK(stayed < 0.5);
    CHECK(grams_of(w->there, {}).value == doctest::Approx(g).epsilon(2e-3));
  }
}

namespace {

// The paint, and what it left on the tools, after time under the muller.
Parting gathered() {
  const Mixture m = rested(anything(), Spread::mulling, between(0, 600));
  return *part(m, foretold({between(0.02, 0.12), between(0.001, 0.03), 0}), "gathered");
}

}

TEST_CASE("weighing exactly what is expected changes nothing, and narrows") {
  holds("expected", [] {
    const Parting m = gathered();
    const BenchRate bench{between(-0.5, 0.5)};
    const Amount before = grams_of(m.left, bench);
    const auto w = weighed(m.left, m.taken, {before.value, 0.0016, {}}, bench, "jar");
    RC_ASSERT(w.has_value());
    const auto unmoved = [](const Amount& known, const Amount& was) {
      RC_ASSERT(same(known.value, was.value));
    };
    const auto not_wider = [](const Amount& known, const Amount& was) {
      RC_ASSERT(uncertainty(known) <= uncertainty(was) * (1 + 1e-9) + 1e-12);
    };
    const Amount after = grams_of(w->there, w->bench);
    unmoved(after, before);
    not_wider(after, before);
    unmoved(grams_of(w->on_tools, w->bench), grams_of(m.taken, bench));
    const Standing now = stand(w->there, w->bench), was = stand(m.left, bench);
    for (const auto which : {&Standing::gum_g, &Standing::honey_g, &Standing::pigment_mL,
                             &Standing::liquid_mL, &Standing::liquid_mL_now,
                             &Standing::water_lost_mL, &Standing::water_g, &Standing::alcohol_g}) {
      unmoved(now.*which, was.*which);
      not_wider(now.*which, was.*which);
    }
    for (const auto which : {&Standing::binder_ratio, &Standing::flow_now, &Standing::flow_put_in,
                             &Standing::gum_strength, &Standing::gum_per_pigment})
      if (was.*which) not_wider(*(now.*which), *(was.*which));
    for (std::size_t i = 0; i < m.left.contents.size(); ++i)
      not_wider(w->there.contents[i].grams, m.left.contents[i].grams);
    RC_ASSERT(same(now.binder_ratio->value, was.binder_ratio->value));
    RC_ASSERT(same(w->bench.ln_factor, bench.ln_factor));
    RC_ASSERT(uncertainty(after) < 0.041);
  });
}

TEST_CASE("a weighing never moves an amount away from itself") {
  holds("towards", [] {
    const Parting m = gathered();
    const Amount before = grams_of(m.left, {});
    const double weighs = before.value + between(-2, 2) * uncertainty(before);
    const auto w = weighed(m.left, m.taken, {weighs, 0.0016, {}}, {}, "jar");
    if (!w) return; // contradicted, and said
    const double now = grams_of(w->there, w->bench).value;
    RC_ASSERT(now >= std::min(before.value, weighs) - 1e-9);
    RC_ASSERT(now <= std::max(before.value, weighs) + 1e-9);
  });
}

TEST_CASE("water back to where it was is the water that had left") {
  const Mixture before = usual();
  Mixture now = rested(before, Spread::gathered, 3600);
  const double predicted = now.since.lost_g;
  put(now, "w", water, {predicted * 1.3, 0.0004, {}});
  const auto back = brought_back(before, now, {}, "back");
  REQUIRE(back);
  CHECK(stand(back->there, back->bench).water_g.value ==
        doctest::Approx(stand(before).water_g.value));
  CHECK(back->there.since == DryingPrediction{});
  Mixture more = now;
  put(more, "b", binder, exact(1));
  CHECK(brought_back(before, more, {}, "back").error().what == Say::not_only_water);
  CHECK(brought_back(before, before, {}, "back").error().what == Say::nothing_lost);
}

TEST_CASE("brought back, there is as much water as there was") {
  holds("back", [] {
    const Mixture before = anything();
    Mixture now = rested(before, Spread::gathered, between(600, 20000));
    put(now, "w", water, exact(between(0.01, 3)));
    const auto back = brought_back(before, now, {}, "back");
    RC_ASSERT(back.has_value());
    RC_ASSERT(same(stand(back->there).water_g.value, stand(before).water_g.value));
    RC_ASSERT(back->bench.ln_u <= BenchRate{}.ln_u);
  });
}

TEST_CASE("many returns narrow what is known of the bench to the truth") {
  const double truth = std::log(1.5);
  std::mt19937 random(7);
  std::normal_distribution<double> sitting(0, 0.2), hand(0, 0.05);
  BenchRate bench;
  for (int i = 0; i < 40; ++i) {
    const Mixture before = usual();
    Mixture now = rested(before, Spread::mulling, 1500, bench);
    const double lost =
        rested(before, Spread::mulling, 1500, {truth + sitting(random)}).since.lost_g;
    put(now, "w", water, exact(std::max(0.05, lost * (1 + hand(random)))));
    bench = brought_back(before, now, bench, "back")->bench;
  }
  CHECK(bench.ln_u < 0.15);
  CHECK(std::abs(bench.ln_factor - truth) < 3 * bench.ln_u);
}

}
