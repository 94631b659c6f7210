// What one studio tells another: the file, and what becomes of it.
#include "paint/catalogue.hpp"
#include "paint/invented_notes.hpp"
#include "paint/range/helping.hpp"
#include "paint/range/learn_bytes.hpp"
#include "paint/range/predict.hpp"
#include "paint/range/told.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace told_test {

using namespace paint;
using doctest::Approx;
using Say = words::PaintSay;

namespace {

const std::vector<std::string> names{"pb28", "pb29", "py43", "pr108", "pg17", "pg18"};

LearnProblem notes(int batches = 30) {
  return invented_notes({.pigments = 6, .batches = batches, .seed = 5});
}

const RangeFit& fit() {
  static const RangeFit one = *learn(notes());
  return one;
}

ToldRange told() {
  for (const std::string& name : names) REQUIRE(in_catalogue(name));
  return told_by(fit(), names);
}

std::string with(const std::string& from, const std::string& to) {
  std::string bytes = bytes_of(told());
  const std::size_t at = bytes.find(from);
  REQUIRE_MESSAGE(at != std::string::npos, from);
  return bytes.replace(at, from.size(), to);
}

words::Sentence fault(const std::string& bytes) {
  const auto read = told_from(bytes);
  REQUIRE_FALSE(read);
  CHECK_FALSE(message(read.error()).empty());
  return read.error().what;
}

ToldVariant variant(const LearnProblem& of, const ToldRange& by) {
  ToldVariant out{{}, priors_told(by)};
  for (std::size_t i = 0; i < of.pigments.size(); ++i)
    out.pigments.push_back(facts_told(by, of.pigments[i], names[i]));
  return out;
}

LnSpread next_of(const RangeFit& by, int pigment) {
  const auto prediction = predict(by, {{{pigment, 1, {}}}, {}, 0});
  REQUIRE(prediction);
  return spread_of(*prediction);
}

}

TEST_CASE("what is told is what was learnt") {
  const ToldRange t = told();
  REQUIRE(t.pigments == names);
  CHECK(t.batches == 30);
  for (std::size_t i = 0; i < names.size(); ++i) {
    CHECK(t.ln_demands[i] == fit().pigments[i].ln_demand);
    // The diagonal of the covariance as the fit itself has it, and what rounding may take.
    const double sd = fit().pigments[i].sd;
    CHECK(t.covariance[i * (i + 1) / 2 + i] ==
          Approx(sd * sd + 2e-6 * static_cast<double>(names.size())));
  }
  CHECK(t.hand[at_slope].centre == fit().theta[at_slope]);
  CHECK(t.strength.sd > 0);
}

TEST_CASE("pigments without a name, and such as were never felt, are not told of") {
  std::vector<std::string> some = names;
  some[1].clear();
  const ToldRange t = told_by(fit(), some);
  CHECK(t.pigments.size() == 5);
  CHECK(t.covariance.size() == 15);
  CHECK(bytes_of(t).find("pb29") == std::string::npos);
  LearnProblem more = notes();
  more.pigments.push_back(more.pigments.front());
  some = names;
  some.push_back("pw6");
  CHECK(told_by(*learn(more), some).pigments == names);
  CHECK(told_by(*learn({}), names).pigments.empty());
}

TEST_CASE("a file reads back as it was told, to six digits behind the point") {
  const std::string bytes = bytes_of(told());
  CHECK(bytes.size() < 2000);
  const auto back = told_from(bytes);
  REQUIRE(back);
  CHECK(back->pigments == names);
  CHECK(back->ln_demands[2] == Approx(told().ln_demands[2]).epsilon(1e-5));
  CHECK(bytes_of(*back) == bytes);                              // passed on, it stays what it was
  CHECK(told_from(with("\"notes\"", "\"hm\":[{}],\"notes\""))); // what nobody knows is passed over
}

TEST_CASE("whose a file is stands in it as a number, where that is known") {
  CHECK(told_from(bytes_of(told()))->from.empty());
  ToldRange of_a_studio = told();
  of_a_studio.from = "1234abcdabcd";
  CHECK(told_from(bytes_of(of_a_studio))->from == "1234abcdabcd");
  CHECK(fault(with("\"notes\"", "\"from\":\"Weir\",\"notes\"")) == Say::told_field);
  CHECK(fault(with("\"notes\"", "\"from\":7,\"notes\"")) == Say::told_field);
}

TEST_CASE("a file that is wrong is refused by what is wrong with it") {
  CHECK(fault("") == Say::told_not_json);
  CHECK(fault(std::string("\x89PNG\r\n\x1a\n\0\0", 10)) == Say::told_not_json);
  CHECK(fault("[]") == Say::told_not_json);
  CHECK(fault(std::string(100'000'000, ' ')) == Say::told_too_large);
  CHECK(fault(std::string(40'000, '[')) == Say::told_not_json);
  CHECK(fault("{}") == Say::told_format);
  CHECK(fault(with("\"notes\"", "\"notes\":1,\"notes\"")) == Say::told_field_twice);
  CHECK(fault(with("\"notes\"", "\"hm\":[{\"a\":1,\"b\":{},\"a\":2}],\"notes\"")) ==
        Say::told_field_twice);
  CHECK(fault(bytes_of(told()) + std::string(1, '\0')) == Say::told_not_json);
  CHECK(fault(bytes_of(told()) + std::string(1, '\0') + "}") == Say::told_not_json);
  CHECK(fault(with("slabside-range", "slabside-session")) == Say::told_format);
  CHECK(fault(with("\"version\":1", "\"version\":2")) == Say::told_version);
  CHECK(fault(with("\"version\":1", "\"version\":\"1\"")) == Say::told_field);
  CHECK(fault(with("\"batches\":30", "\"batches\":-30")) == Say::told_field);
  CHECK(fault(with("\"batches\":30", "\"batches\":30000000")) == Say::told_out_of_range);
  CHECK(fault(with("pb29", "px99")) == Say::told_unknown_pigment);
  CHECK(fault(with("pb29", "pb28")) == Say::told_twice);
  CHECK(fault(with("\"pb29\"", "7")) == Say::told_field);
  CHECK(fault(with("\"pb29\",", "")) == Say::told_field);
  CHECK(fault(with("\"ln_demands\":[", "\"ln_demands\":[NaN,")) == Say::told_not_json);
  CHECK(fault(with("\"ln_demands\":[", "\"ln_demands\":[1e999,")) == Say::told_not_json);
  CHECK(fault(with("\"ln_demands\":[", "\"ln_demands\":[1e9,")) == Say::told_out_of_range);
  CHECK(fault(with("\"ln_demands\":[", "\"ln_demands\":[null,")) == Say::told_field);
  CHECK(fault(with("\"covariance\":[[", "\"covariance\":[[1e9,")) == Say::told_row);
  CHECK(fault(with("\"covariance\":[[", "\"covariance\":[[0.1],[")) == Say::told_field);
  CHECK(fault(with("\"covariance\":[[", "\"covariance\":[[-")) == Say::told_not_positive);
  CHECK(fault(with("\"strength\":[", "\"strength\":[1,")) == Say::told_field);
  CHECK(fault(with("\"hand\":[[", "\"hand\":[[0,1],[")) == Say::told_field);
}

TEST_CASE("surer than six digits tell is as sure as nothing is") {
  ToldRange certain = told();
  for (double& one : certain.covariance) one *= 1e-9;
  CHECK(fault(bytes_of(certain)) == Say::told_not_positive);
}

TEST_CASE("of no paint and of no hand, however well it is written") {
  CHECK_FALSE(implausible(told()));
  ToldRange absurd = told();
  absurd.ln_demands[0] = 4.9;
  CHECK(implausible(absurd)->what == words::Sentence(Say::told_implausible));
  absurd = told();
  absurd.class_offset.centre = -5;
  CHECK(implausible(absurd)->what == words::Sentence(Say::told_implausible_offset));
  absurd = told();
  absurd.hand.fill({9, 0.001});
  CHECK(implausible(absurd)->what == words::Sentence(Say::told_no_hand));
  for (const double strength : {-9.0, 20.0}) {
    absurd = told();
    absurd.strength = {strength, 0.01};
    CHECK(implausible(absurd)->what == words::Sentence(Say::told_implausible_strength));
  }
  CHECK(message(*implausible(absurd)).find("18.9 times the liquid") != std::string::npos);
  absurd.strength = {3.9, 0};
  CHECK(implausible(absurd)->what == words::Sentence(Say::told_certain_strength));
  CHECK(told_from(bytes_of(absurd))); // what was kept once is read
}

TEST_CASE("half a file is none") {
  const std::string bytes = bytes_of(told());
  for (std::size_t n = 0; n + 2 < bytes.size(); n += 13) CHECK_FALSE(told_from(bytes.substr(0, n)));
}

// Doubled, and widened by what studios differ by.
TEST_CASE(
    "a new studio that was told begins nearer than one that was not, and less sure than told") {
  LearnProblem nothing = notes();
  nothing.notes.clear();
  const RangeFit without = *learn(nothing), heard = *learn_told(nothing, variant(nothing, told()));
  CHECK(heard.told);
  for (int k = 0; k < 6; ++k) {
    const double demand = fit().pigments[static_cast<std::size_t>(k)].ln_demand;
    CHECK(next_of(heard, k).mean == Approx(demand).epsilon(0.02));
    CHECK(next_of(heard, k).sd < 0.7 * next_of(without, k).sd);
    CHECK(next_of(heard, k).sd > std::sqrt(2.0) * fit().pigments[static_cast<std::size_t>(k)].sd);
  }
}

TEST_CASE("a studio whose notes speak against what it was told goes by its notes") {
  const LearnProblem own = notes(12);
  ToldRange other = told();
  for (std::size_t i = 0; i < names.size(); ++i) other.ln_demands[i] += i % 2 ? 1.2 : -1.2;
  const RangeFit by_itself = *learn(own), heard = *learn_told(own, variant(own, other));
  CHECK_FALSE(heard.told);
  CHECK(heard.z == by_itself.z);
  CHECK(learn_told(own, variant(own, told()))->told);
}

TEST_CASE("another studio's gum is believed as far as this one's may be like it") {
  const NormalPrior usual = LearnPriors{}.strength;
  ToldRange other = told();
  other.strength = {6.5, 0.01};
  const NormalPrior sure = priors_told(other).strength;
  CHECK(sure.sd == Approx(0.8).epsilon(0.001));
  CHECK(sure.centre == Approx(usual.centre + 0.8 * (6.5 - usual.centre)).epsilon(0.001));
  other.strength.sd = 0.7;
  CHECK(priors_told(other).strength.sd == Approx(std::sqrt(2 * 0.49 + 0.64)));
  CHECK(priors_told(other).strength.centre < sure.centre);
  other.strength.sd = usual.sd;
  CHECK(priors_told(other).strength.sd == usual.sd);
}

TEST_CASE("the strength of another studio's gum floods no first helping") {
  LearnProblem nothing = notes();
  nothing.notes.clear();
  ToldRange word = told();
  const auto helping = [&](const NormalPrior& strength, double dry_gum) {
    word.strength = strength;
    const RangeFit heard = *learn_told(nothing, variant(nothing, word));
    return first_helping(*predict(heard, {{{0, 1, {}}}, {}, 0, dry_gum})).high;
  };
  for (const double strength : {1.3, 6.5})      // of other gums, as 40 batches tell it
    for (const double dry_gum : {0.22, 0.44}) { // gum 1 : 3 and 1 : 1
      CAPTURE(strength);
      CAPTURE(dry_gum);
      CHECK(helping({strength, 0.7}, dry_gum) < 1.5 * helping(LearnPriors{}.strength, dry_gum));
    }
}

namespace {

// Says that every pigment, or the first alone, wants so many times as much as is usual.
ToldRange far_off(double times, bool all) {
  ToldRange word = told();
  const double more = std::log(times);
  for (std::size_t k = 0; k < names.size(); ++k) {
    const LearnPigment usual = notes().pigments[k];
    word.ln_demands[k] = usual.ln_oil + usual.kappa + (all || k == 0 ? more : 0);
    for (std::size_t l = 0; l <= k; ++l)
      word.covariance[covariance_entry(k, l)] = k == l ? 0.01 : 0;
  }
  word.class_offset = {all ? more : 0, 0.05};
  return word;
}

Prediction first_of(const RangeFit& fit) {
  return *predict_told(fit, {{{0, 1, {}}}, {}, 0}, {{{0, 1, {}}}, {}, 0});
}

// Drop by drop as it is said, and felt by a hand that finds right where it is usual.
double obeyed(Prediction now, double wants) {
  double mL = first_helping(now).high;
  for (int step = 0; step < 30; ++step) {
    const double off = std::log(mL / wants);
    const int felt = off < -0.42 ? 0 : off < -0.12 ? 1 : off < 0.12 ? 2 : 3;
    if (felt > 1) break;
    now = *after(now, {mL, 0.05, felt, 0, felt_late});
    const int drops = safe_drops(now, {mL, 0.01}, 0.02);
    if (drops == 0) break;
    mL += 0.02 * drops;
  }
  return mL;
}

}

TEST_CASE("no word makes a first helping more than it is without, and none makes soup") {
  LearnProblem nothing = notes();
  nothing.notes.clear();
  const RangeFit without = *learn(nothing);
  const double wants = mL_at_share(first_of(without), 0.5);
  for (const double times : {2.0, 4.0, 4.9})
    for (const bool all : {true, false}) {
      CAPTURE(times);
      CAPTURE(all);
      const ToldRange word = far_off(times, all);
      const Prediction heard = first_of(*learn_told(nothing, variant(nothing, word)));
      const FirstLiquid usual = first_liquid(first_of(without));
      CHECK(first_liquid(heard).cap_mL <= 1.0001 * usual.cap_mL);
      CHECK(first_helping(heard).high <= 1.0001 * usual.cap_mL);
      CHECK(std::log(obeyed(heard, wants) / wants) < 0.25);
    }
}

TEST_CASE("what is told without being known changes nothing much") {
  LearnProblem nothing = notes();
  nothing.notes.clear();
  const RangeFit without = *learn(nothing);
  ToldRange vague = told();
  for (std::size_t k = 0; k < names.size(); ++k) vague.covariance[covariance_entry(k, k)] = 4;
  vague.class_offset.sd = 2;
  const RangeFit heard = *learn_told(nothing, variant(nothing, vague));
  for (int k = 0; k < 6; ++k) {
    CHECK(next_of(heard, k).sd < 1.3 * next_of(without, k).sd);
    const auto helping = [&](const RangeFit& by) {
      return first_helping(*predict(by, {{{k, 1, {}}}, {}, 0})).high;
    };
    CHECK(helping(heard) > 0.6 * helping(without));
  }
}

TEST_CASE("a file that rests on no batch is nothing to begin from") {
  ToldRange t = told();
  CHECK_FALSE(implausible(t));
  t.batches = 0;
  REQUIRE(implausible(t));
  CHECK(implausible(t)->what == Say::told_of_nothing);
}

TEST_CASE("what was told goes to the worker and back in bytes") {
  const LearnProblem own = notes(12);
  const ToldVariant by = variant(own, told());
  const auto bytes = learn_bytes(bytes_of(own, {}, nullptr, &by));
  REQUIRE(bytes);
  const RangeFit direct = *learn_told(own, by);
  CHECK(*bytes == bytes_of(direct));
  CHECK(fit_from(*bytes)->told);
  CHECK(fit_from(*bytes)->pigments[0].facts == direct.pigments[0].facts);
}

}
