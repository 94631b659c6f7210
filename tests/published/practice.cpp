// The starting guess against how much binder makers use: common practice, no source.
#include "paint/range/helping.hpp"
#include "paint/range/learn_facts.hpp"
#include "paint/range/range.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <map>
#include <string>

namespace practice_test {

using namespace paint;
using published::check, published::consistent_with;
using published::practice;

namespace {

struct Use {
  const char* what;
  PigmentClass family;
  double density; // g/mL
  double oil;     // g/100 g
  double low;     // g binder (gum 1 : water 2) to 10 g pigment
  double high;
};

// Densities and oil absorptions: handbooks (Gettens & Stout 1942; Lewis, Pigment Handbook, from
// memory); iron blue, effect and extender binder are guesses even among practice.
constexpr std::array<Use, 15> rows{{
    {"cadmium red", PigmentClass::mineral, 4.9, 19, 4, 6},
    {"cobalt blue", PigmentClass::mineral, 4.2, 30, 5, 10},
    {"titanium white", PigmentClass::mineral, 4.1, 19, 4, 7},
    {"ultramarine", PigmentClass::mineral, 2.35, 33, 6, 10},
    {"red iron oxide", PigmentClass::mineral, 5.0, 20, 5, 8},
    {"yellow ochre", PigmentClass::mineral, 3.1, 32, 6, 12},
    {"burnt sienna", PigmentClass::mineral, 3.56, 42, 6, 12},
    {"quinacridone", PigmentClass::organic, 1.5, 52, 15, 30},
    {"phthalocyanine blue", PigmentClass::organic, 1.6, 42, 15, 30},
    {"phthalocyanine green", PigmentClass::organic, 2.1, 36, 15, 30},
    {"organic yellow", PigmentClass::organic, 1.57, 48, 15, 30},
    {"iron blue", PigmentClass::fine_mineral, 1.83, 60, 10, 18},
    {"lamp black", PigmentClass::carbon, 1.8, 100, 15, 40},
    {"pearl mica", PigmentClass::effect, 3.0, 60, 8, 15},
    {"kaolin", PigmentClass::extender, 2.6, 42, 5, 12},
}};

// Before anybody has felt it.
Band guess_of(const Pigment& pigment) {
  return band_seen(*predict(*learn({}), {{{-1, 1, learn_facts(pigment)}}, {}, 0}));
}

}

TEST_CASE("The guess of each class overlaps the binder that makers use") {
  // Over r_oa a 1:2 binder is 0.814 (g binder to 1 g pigment) / (OA/100): the density cancels. The
  // middle of the guess must lie in the range in use, widened by what oil absorption differs by
  // between lots; the class as a whole must be off by less than its standard deviation.
  constexpr double between_lots = 0.15;
  struct Sum {
    double off = 0;
    double sd = 0;
  };
  std::map<PigmentClass, Sum> sum;
  for (const Use& row : rows) {
    CAPTURE(std::string(row.what));
    const Pigment p{.g_per_mL = row.density, .oil_g_per_100g = row.oil, .family = row.family};
    const Band guess = guess_of(p);
    const double point = std::log(oil_absorption_point(p));
    const double low = std::log(0.814 * row.low / 10 / (row.oil / 100));
    const double high = std::log(0.814 * row.high / 10 / (row.oil / 100));
    check({"range/class_prior", "ln of flow at right over the oil-absorption point",
           consistent_with(practice()), (low + high) / 2, guess.middle - point,
           (high - low) / 2 + between_lots,
           "the range in use, and 15 % of oil absorption between lots", row.what});
    sum[row.family].off += (low + high) / 2 - (guess.middle - point);
    sum[row.family].sd += guess.sd;
  }
  for (const auto& entry : sum) {
    CAPTURE(std::string(name_of(entry.first)));
    CHECK(std::abs(entry.second.off) < entry.second.sd);
  }
}

TEST_CASE("A guess without oil absorption still reaches the same range") {
  for (const Use& row : rows) {
    CAPTURE(std::string(row.what));
    const Band guess = guess_of({.g_per_mL = row.density, .family = row.family});
    const double point = std::log(row.oil * row.density / 93.5);
    const double low = point + std::log(0.814 * row.low / row.oil * 10);
    const double high = point + std::log(0.814 * row.high / row.oil * 10);
    CHECK(guess.middle - guess.sd < high);
    CHECK(guess.middle + guess.sd > low);
  }
}

TEST_CASE("Flow put in over r_oa by class overlaps the guess") {
  // Put in before anything dries, so the guess, which is for the live flow, lies in the lower half.
  const auto reaches = [](PigmentClass family, double low, double high) {
    const Pigment p{.g_per_mL = 3, .oil_g_per_100g = 31, .family = family};
    const Band guess = guess_of(p);
    const double a = std::exp(guess.middle) / oil_absorption_point(p);
    CHECK(a > low);
    CHECK(a < std::sqrt(low * high) * std::exp(guess.sd));
  };
  reaches(PigmentClass::mineral, 1.5, 2.8);
  reaches(PigmentClass::organic, 2.4, 4.8);
  reaches(PigmentClass::carbon, 1.0, 2.7);
}

TEST_CASE(
    "A first helping is at most seven tenths of the usual, and floods no pigment of its class") {
  for (const Use& row : rows) {
    CAPTURE(std::string(row.what));
    const Pigment p{.g_per_mL = row.density, .oil_g_per_100g = row.oil, .family = row.family};
    const Helping h = first_helping(*predict(*learn({}), {{{-1, 1, learn_facts(p)}}, {}, 0}));
    const double flow_of_1g_to_10g = 0.814 / 10 * row.density / 0.935;
    CHECK(h.low / h.high == doctest::Approx(0.5 / 0.7));
    CHECK(h.high < row.high * flow_of_1g_to_10g);
    CHECK(h.low > row.low * 0.5 * 0.5 * flow_of_1g_to_10g);
  }
}

}
