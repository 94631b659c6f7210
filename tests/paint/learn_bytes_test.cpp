#include "paint/invented_notes.hpp"
#include "paint/range/learn_bytes.hpp"
#include "paint/range/predict.hpp"
#include "words/paint_says.hpp"

#include <doctest/doctest.h>

#include <limits>

namespace learn_bytes_test {

using namespace paint;
using Say = words::PaintSay;

namespace {

LearnProblem problem() {
  return invented_notes({.pigments = 4, .batches = 9, .seed = 21, .tools = 1});
}

}

TEST_CASE("bytes learn what the structs learn, to the last bit") {
  const auto bytes = learn_bytes(bytes_of(problem()));
  REQUIRE(bytes);
  const auto fit = fit_from(*bytes);
  REQUIRE(fit);
  const RangeFit direct = *learn(problem());
  CHECK(fit->theta == direct.theta);
  CHECK(fit->z == direct.z);
  CHECK(bytes_of(*fit) == bytes_of(direct));
  const PredictBatch batch{{{0, 1, {}}, {1, 0.5, {}}}, {{0, 1, 0}}, 0.01};
  CHECK(predict(*fit, batch)->weights == predict(direct, batch)->weights);
}

TEST_CASE("an earlier result goes along") {
  LearnProblem before = problem();
  before.notes.resize(before.notes.size() - 5);
  const RangeFit earlier = *learn(before);
  const auto bytes = learn_bytes(bytes_of(problem(), {}, &earlier));
  REQUIRE(bytes);
  CHECK(*bytes == bytes_of(*learn(problem(), {}, &earlier)));
}

TEST_CASE("priors go along") {
  LearnPriors priors;
  priors.slips = false;
  priors.alpha = {0.5, 0.3};
  priors.theta[at_slope] = {-2, 0};
  const RangeFit fit = *fit_from(*learn_bytes(bytes_of(problem(), priors)));
  CHECK(fit.theta[at_slope] == -2);
  CHECK_FALSE(fit.priors.slips);
  CHECK(fit.priors.alpha.sd == 0.3);
}

TEST_CASE("bytes that are cut, spoilt or of another kind give an error in words") {
  const std::string good = bytes_of(problem());
  for (std::size_t n = 0; n < good.size(); n += 97)
    CHECK(learn_bytes(good.substr(0, n)).error().what == Say::learn_not_json);
  for (const char* bad : {"null", "[]", "7", "{}", "\"x\""})
    CHECK(learn_bytes(bad).error().what == Say::learn_field);
  const std::vector<std::pair<std::string, std::string>> spoils = {
      {"\"felt\":", "\"melt\":"},
      {"\"felt\":", "\"felt\":0.5,\"x\":"},
      {"\"notes\":", "\"notes\":7,\"x\":"},
      {"\"slips\":true", "\"slips\":1"},
      {"\"batch\":0", "\"batch\":99999999999"},
      {"\"sd\":", "\"sd\":null,\"x\":"},
      {"\"alpha\":[", "\"alpha\":[1,"},
      {"\"pigments\":[[", "\"pigments\":[7,["}};
  for (const auto& each : spoils) {
    const auto from = each.first, to = each.second;
    std::string bytes = good;
    REQUIRE(bytes.find(from) != std::string::npos);
    bytes.replace(bytes.find(from), from.size(), to);
    const auto out = learn_bytes(bytes);
    CHECK_MESSAGE(!out.has_value(), from);
    if (!out) CHECK_FALSE(message(out.error()).empty());
  }
  std::string bytes = good;
  bytes.replace(bytes.find("\"batch\":0"), 9, "\"batch\":-1");
  CHECK(learn_bytes(bytes).error().what == Say::learn_not_there);
}

TEST_CASE("a result that was spoilt is not taken") {
  const std::string good = bytes_of(*learn(problem()));
  REQUIRE(fit_from(good));
  for (std::size_t n = 0; n < good.size(); n += 311)
    CHECK(fit_from(good.substr(0, n)).error().what == Say::learn_not_json);
  std::string bytes = good;
  bytes.replace(bytes.find("\"found\""), 7, "\"lost\"");
  CHECK(fit_from(bytes).error() == words::Error{Say::learn_field, {"end"}});
  for (const char* bad : {"null", "[]", "{}"})
    CHECK(fit_from(bad).error().what == Say::learn_field);
}

TEST_CASE("a result that came to nothing still goes along as such") {
  RangeFit fit = *learn(problem());
  fit.end = LearnEnd::no_peak;
  fit.log_posterior = fit.log_marginal = -std::numeric_limits<double>::infinity();
  const auto read = fit_from(bytes_of(fit));
  REQUIRE(read);
  CHECK(read->end == LearnEnd::no_peak);
  CHECK(read->log_posterior == fit.log_posterior);
}

}
