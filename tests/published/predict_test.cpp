// What is foreseen of three batches, and after notes of the day, against the same model written
// apart.
#include "paint/range/predict.hpp"
#include "published/feel_notes.hpp"

#include <doctest/doctest.h>

namespace predict_test {

using namespace paint;
using namespace published;

namespace {

struct Asked {
  std::string name;
  std::vector<PredictPart> pigments;
  double mL_now = 0;
};

const Asked blue{"1.5 mL PB29", {{0, 1.5, {}}}, 2.0};
const Asked brown{"1.5 mL PBr7", {{2, 1.5, {}}}, 2.6};
const Asked three{"0.6 mL each of three", {{0, 0.6, {}}, {1, 0.6, {}}, {3, 0.6, {}}}, 2.0};

struct Expected {
  double middle_mL = 0, sd = 0, limit_5 = 0, limit_4 = 0, drops_4 = 0;
  std::vector<double> words;
};

const std::string limits = "0.5 % of a limit; two theta 1e-5 apart, two grids";

// drops_4: 0 where it was not worked out.
void compare(const Prediction& ours, const Asked& asked, const Expected& expected,
             const std::string& of, const std::string& how) {
  const auto row = [&](const std::string& what, double value, double mine, double tolerance,
                       const std::string& why, const std::string& at = {}) {
    check({of, what + " " + how, prototype, value, mine, tolerance, why,
           asked.name + (at.empty() ? "" : ", " + at)});
  };
  row("middle of right, mL", expected.middle_mL, std::exp(spread_of(ours).mean),
      0.005 * expected.middle_mL, limits);
  row("sd of its ln", expected.sd, spread_of(ours).sd, 0.01 * expected.sd, "1 % of an error");
  row("mL where too loose has 5 %", expected.limit_5, mL_at_chance_too_loose(ours, 0.05),
      0.005 * expected.limit_5, limits);
  if (expected.drops_4 > 0) {
    row("mL where too loose has 4 %", expected.limit_4, mL_at_chance_too_loose(ours, 0.04),
        0.005 * expected.limit_4, limits);
    row("safe drops of 0.05 mL", expected.drops_4, safe_drops(ours, {asked.mL_now}, 0.05), 0,
        "exact");
  }
  const auto words = chances(ours, {asked.mL_now});
  for (std::size_t j = 0; j < words.size(); ++j)
    row("chance of a word", expected.words[j], words[j], 0.005,
        "0.5 % in the limits moves a chance by so much", std::to_string(j));
}

Prediction prediction(const Asked& asked, bool slips) {
  return *predict(*learn(feel_notes(), feel_priors(slips)), {asked.pigments, {}, 0});
}

}

TEST_CASE("three batches foreseen, each note taken as it was meant") {
  const std::string of = "predict/predict", how = "(no slips)";
  compare(prediction(blue, false), blue,
          {2.765135864,
           0.120985126,
           2.393932396,
           2.349331473,
           6,
           {0.145805088, 0.777133837, 0.071194720, 0.005099335, 0.000767020}},
          of, how);
  compare(prediction(brown, false), brown,
          {4.235854445,
           0.113481219,
           3.723521490,
           3.660337096,
           21,
           {0.516016577, 0.475849389, 0.007661635, 0.000427604, 0.000044795}},
          of, how);
  compare(prediction(three, false), three,
          {3.901957168,
           0.110885516,
           3.433628602,
           3.374847243,
           27,
           {0.904084966, 0.095078581, 0.000792021, 0.000040847, 0.000003584}},
          of, how);
}

TEST_CASE("three batches foreseen, some notes being slips") {
  const std::string of = "predict/predict", how = "(with slips)";
  compare(prediction(blue, true), blue,
          {2.763428356,
           0.121765289,
           2.394750164,
           2.349991714,
           6,
           {0.144668989, 0.777835742, 0.071305151, 0.005245851, 0.000944265}},
          of, how);
  compare(prediction(brown, true), brown,
          {4.234687994,
           0.114133992,
           3.725931750,
           3.662534916,
           21,
           {0.516220132, 0.475368560, 0.007830449, 0.000515820, 0.000065042}},
          of, how);
  compare(prediction(three, true), three,
          {3.899602280,
           0.111637519,
           3.434936832,
           3.375998743,
           27,
           {0.904133060, 0.094863119, 0.000936963, 0.000060763, 0.000006095}},
          of, how);
}

TEST_CASE("two and three notes of the day") {
  const std::string of = "predict/after";
  for (const bool slips : {false, true}) {
    const std::string how = slips ? "(with slips)" : "(no slips)";
    Asked now = blue;
    Prediction today = *after(*after(prediction(blue, slips), {2.0, 0, 0}), {2.4, 0, 1});
    now.mL_now = 2.4;
    compare(today, now,
            slips ? Expected{3.168164071,
                             0.081205433,
                             2.883647449,
                             0,
                             0,
                             {0.053351234, 0.865722798, 0.077445995, 0.003097245, 0.000382728}}
                  : Expected{3.174529217,
                             0.079856165,
                             2.892048657,
                             0,
                             0,
                             {0.054833962, 0.867382188, 0.074606728, 0.002856255, 0.000320867}},
            of, "after two notes " + how);
    today = *after(today, {2.75, 0, 1});
    now.mL_now = 2.75;
    compare(today, now,
            slips ? Expected{3.272850766,
                             0.069788422,
                             3.022940999,
                             0,
                             0,
                             {0.007074880, 0.735991875, 0.245898147, 0.010080211, 0.000954887}}
                  : Expected{3.275254597,
                             0.069476343,
                             3.023008810,
                             0,
                             0,
                             {0.007235859, 0.738108165, 0.243736247, 0.010042292, 0.000877437}},
            of, "after three notes " + how);
  }
}

}
