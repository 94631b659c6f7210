// What the binder's strength and the time that has passed do to what is learnt.
#include "paint/catalogue.hpp"
#include "paint/invented_notes.hpp"
#include "paint/range/helping.hpp"
#include "paint/range/learn_facts.hpp"
#include "paint/range/learn_joint.hpp"
#include "paint/range/predict.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace strength_test {

using namespace paint;

namespace {

// With binders of several strengths, drying as they are felt.
LearnProblem of_strengths(const InventedStudio& studio) {
  LearnProblem p = invented_notes(studio);
  for (std::size_t i = 0; i < p.notes.size(); ++i)
    p.notes[i].dry_gum = 0.2 + 0.03 * (p.notes[i].segment % 4) + 0.004 * static_cast<double>(i % 5);
  return p;
}

Theta centres() {
  Theta theta;
  for (std::size_t i = 0; i < theta_count; ++i) theta[i] = usual_theta()[i].centre;
  return theta;
}

Prediction of(const RangeFit& fit, const Pigment& pigment, double dry_gum = usual_dry_gum) {
  return *predict(fit, {{{-1, 1, learn_facts(pigment)}}, {}, 0, dry_gum});
}

const RangeFit& nobody() {
  static const RangeFit fit = *learn({});
  return fit;
}

const Pigment blue{.g_per_mL = 4.2, .oil_g_per_100g = 30, .family = PigmentClass::mineral};

double sd_of_strength(const RangeFit& fit) {
  Eigen::MatrixXd precision = Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(fit.z.size()),
                                                    static_cast<Eigen::Index>(fit.z.size()));
  for (const MatrixEntry& e : fit.precision)
    precision(e.row, e.column) = precision(e.column, e.row) = e.value;
  return std::sqrt(precision.inverse()(fit.strength_at, fit.strength_at));
}

}

TEST_CASE("slopes and curvatures with strength and levels are those of the value") {
  LearnProblem p = of_strengths({.pigments = 3, .batches = 14, .seed = 3, .tools = 1});
  p.segments.push_back({12, {{0, 1}, {1, 0.5}}}); // a second segment of that batch
  p.notes.push_back({14, 0.9, 0.02, {{0, 0.5}}, 1, 0.25});
  learning::Model model(p, {});
  REQUIRE(model.plan.strength_at >= 0);
  REQUIRE(model.plan.level_variances.size() == 3);
  Eigen::VectorXd z = model.start(note_model_of(centres()));
  for (Eigen::Index k = 0; k < z.size(); ++k) z[k] += 0.02 * std::sin(3.0 * static_cast<double>(k));
  const auto at = [&](const Eigen::VectorXd& where) {
    return model.joint(centres(), centres(), where);
  };
  const auto here = at(z);
  const Eigen::MatrixXd bent = here.precision;
  constexpr double h = 1e-5;
  for (Eigen::Index k = 0; k < z.size(); ++k) {
    Eigen::VectorXd up = z, down = z;
    up[k] += h;
    down[k] -= h;
    const auto above = at(up), below = at(down);
    const double slope = (above.value - below.value) / (2 * h);
    CHECK(std::abs(here.gradient[k] - slope) < 1e-5 * (1 + std::abs(slope)));
    for (Eigen::Index l = k; l < z.size(); ++l) {
      const double expected = -(above.gradient[l] - below.gradient[l]) / (2 * h);
      CHECK(std::abs(bent(l, k) - expected) < 1e-5 * (1 + std::abs(expected)));
    }
  }
}

TEST_CASE("binder that is always the same tells nothing of what its strength does") {
  const RangeFit same = *learn(invented_notes({.pigments = 4, .batches = 20, .seed = 8}));
  CHECK(std::abs(sd_of_strength(same) / 1.6 - 1) < 0.01);
  CHECK(std::abs(same.z[static_cast<std::size_t>(same.strength_at)] - 3.9) < 1e-6);
  const RangeFit several =
      *learn(of_strengths({.pigments = 4, .batches = 20, .seed = 8, .blends = 0}));
  CHECK(sd_of_strength(several) < 1.2);
}

TEST_CASE("what was felt in thinner binder is not taken for thirst in stronger") {
  const auto batches_in = [](double dry_gum) {
    LearnProblem p;
    p.pigments = {{0.1, 0.6, 0.15}};
    for (int b = 0; b < 6; ++b) {
      p.batches.push_back({0.01});
      p.segments.push_back({b, {{0, 1}}});
      for (const auto& [ln_mL, felt] : {std::pair{0.3, 1}, {0.5, 2}, {0.8, 3}})
        p.notes.push_back({b, ln_mL, 0.01, {}, felt, dry_gum});
    }
    return *learn(p);
  };
  const RangeFit thin = batches_in(0.22), usual = batches_in(usual_dry_gum);
  const auto wanted = [](const RangeFit& fit, double dry_gum) {
    return spread_of(*predict(fit, {{{0, 1, {}}}, {}, 0, dry_gum}));
  };
  CHECK(std::abs(wanted(thin, 0.22).mean - wanted(usual, usual_dry_gum).mean) < 0.05);
  CHECK(wanted(thin, usual_dry_gum).mean > wanted(thin, 0.22).mean + 0.2);
  CHECK(wanted(thin, usual_dry_gum).sd > wanted(thin, 0.22).sd + 0.02);
}

TEST_CASE("batches of like age share a level, of however many batches") {
  const auto levels = [](int batches) {
    const LearnProblem p = invented_notes({.pigments = 3, .batches = batches, .seed = 4});
    return learning::plan_of(p, {}).level_variances;
  };
  CHECK(levels(4).empty());
  CHECK(levels(5).size() == 1);
  const auto fourteen = levels(14);
  REQUIRE(fourteen.size() == 3);
  const double a_batch = 0.015 * 0.015;
  CHECK(std::abs(fourteen[0] - 4 * a_batch) < 1e-12);
  CHECK(std::abs(fourteen[2] - 3 * a_batch) < 1e-12);
  CHECK(levels(300).size() == 10);
  LearnPriors still;
  still.walk = 0;
  const LearnProblem p = invented_notes({.pigments = 3, .batches = 40, .seed = 4});
  CHECK(learning::plan_of(p, still).level_variances.empty());
}

TEST_CASE("a hand that changes is followed") {
  LearnProblem p;
  p.pigments = {{0.1, 0.6, 0.15}};
  for (int b = 0; b < 40; ++b) {
    const double right = 0.5 + 0.3 * b / 40;
    p.batches.push_back({0.01});
    p.segments.push_back({b, {{0, 1}}});
    for (const auto& [off, felt] : {std::pair{-0.2, 1}, {0.0, 2}, {0.25, 3}})
      p.notes.push_back({b, right + off, 0.01, {}, felt});
  }
  LearnPriors still;
  still.walk = 0;
  const double today = 0.8;
  CHECK(std::abs(learn(p)->pigments[0].ln_demand - today) <
        0.6 * std::abs(learn(p, still)->pigments[0].ln_demand - today));
}

TEST_CASE("paint that has dried is looser by less, and water thins it by more than binder") {
  const Prediction f = of(nobody(), blue);
  CHECK(chance_too_loose(f, {2.0, 0, 0.03}) < chance_too_loose(f, {2.0}));
  CHECK(spread_of(*after(f, {2.0, 0, 2, 0.03, 0})).mean < spread_of(*after(f, {2.0, 0, 2})).mean);
  CHECK(safe_drops(f, {0.8}, 0.02, -usual_dry_gum) < safe_drops(f, {0.8}, 0.02));
}

TEST_CASE("of who may feel a word late, dry words are believed by half") {
  const Prediction f = of(nobody(), blue);
  for (int felt = 0; felt < 4; ++felt)
    CHECK(spread_of(*after(f, {1.8, 0, felt, 0, felt_late})).mean <
          spread_of(*after(f, {1.8, 0, felt})).mean);
  CHECK(after(f, {1.8, 0, 4, 0, felt_late})->weights == after(f, {1.8, 0, 4})->weights);
  const Prediction far = *after(f, {1e-9, 0, 3, 0, felt_late});
  CHECK(std::isfinite(spread_of(far).mean));
}

TEST_CASE("a first helping leaves the chance of too loose at 4 % or less, of every pigment") {
  std::vector<PredictPart> all;
  for (const CataloguePigment& entry : catalogue())
    all.push_back({-1, 1, learn_facts(entry.facts)});
  REQUIRE(all.size() >= 50);
  const auto asked = [](const std::vector<PredictPart>& parts, double dry_gum) {
    const Prediction f = *predict(nobody(), {parts, {}, 0, dry_gum});
    const Helping first = first_helping(f);
    CHECK(chance_too_loose(f, {first.high}) <= 0.04 + 1e-6);
    CHECK(first.high <= 0.7 * mL_at_share(f, 0.5) + 1e-12);
    CHECK(first.low < first.high);
    return first;
  };
  for (const PredictPart& part : all) {
    const double usual = asked({part}, usual_dry_gum).high;
    CHECK(asked({part}, 0.22).high < usual);
    CHECK(asked({part}, 0.35).high > usual);
  }
  for (std::size_t i = 0; i < 20; ++i) asked({all[i], all[i + 20], all[i + 30]}, usual_dry_gum);
}

TEST_CASE("a blend of a pigment with itself begins as the pigment does") {
  const RangeFit fit = *learn(invented_notes({.pigments = 3, .batches = 9, .seed = 2}));
  const Helping one = first_helping(*predict(fit, {{{0, 1, {}}}, {}, 0}));
  const Helping two = first_helping(*predict(fit, {{{0, 0.3, {}}, {0, 0.7, {}}}, {}, 0}));
  CHECK(std::abs(one.low - two.low) < 1e-6);
  CHECK(std::abs(one.high - two.high) < 1e-6);
}

}
