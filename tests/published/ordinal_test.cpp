// The cumulative logit against R's package ordinal: wine that was tasted, and invented feel notes.
#include "ordinal/ordinal.hpp"
#include "published/columns.hpp"
#include "published/row.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace ordinal_test {

using namespace ordinal;
using namespace published;

namespace {

const Source tutorial = library(
    "R's ordinal 2022.11-16, data set wine (Randall 1989); to three figures also in its tutorial");
const Source clmm =
    library("R's ordinal 2022.11-16, clmm on simulated notes (data/range_clmm.csv)");

OrdinalData wine(bool judges) {
  const auto table = columns_of("wine.csv");
  OrdinalData data;
  if (judges) data.factor_groups = {9};
  for (std::size_t i = 0; i < table.at("rating").size(); ++i) {
    OrdinalRow row{static_cast<int>(table.at("rating")[i]) - 1,
                   {table.at("warm")[i], table.at("contact")[i]},
                   {}};
    if (judges) row.groups = {static_cast<int>(table.at("judge")[i]) - 1};
    data.rows.push_back(row);
  }
  return data;
}

// Flow over oil absorption point, by pigment and, if asked for, batch.
OrdinalData notes(bool batches) {
  const auto table = columns_of("range_clmm.csv");
  OrdinalData data;
  data.factor_groups = {8};
  if (batches) data.factor_groups.push_back(40);
  for (std::size_t i = 0; i < table.at("feel").size(); ++i) {
    OrdinalRow row{
        static_cast<int>(table.at("feel")[i]) - 1,
        {std::log(table.at("liquid_mL")[i] / table.at("pigment_mL")[i]) - table.at("ln_r_oa")[i]},
        {static_cast<int>(table.at("pigment")[i]) - 1}};
    if (batches) row.groups.push_back(static_cast<int>(table.at("batch")[i]) - 1);
    data.rows.push_back(row);
  }
  return data;
}

void compare(const std::string& of, const std::string& what, const Source& source,
             const std::vector<double>& expected, const std::vector<double>& ours, double tolerance,
             const std::string& why) {
  REQUIRE(expected.size() == ours.size());
  for (std::size_t i = 0; i < expected.size(); ++i)
    check({of, what, source, expected[i], ours[i], tolerance, why, std::to_string(i + 1)});
}

const std::string last_figure = "half of the last figure";

}

TEST_CASE("wine's bitterness, warmth and contact") {
  const auto fit = fit_ordinal(wine(false));
  REQUIRE(fit);
  CHECK(fit->end == OrdinalEnd::found);
  const std::string of = "note_chance/word_chance";
  compare(of, "thresholds of the wine's ratings", tutorial,
          {-1.344383, 1.250809, 3.466887, 5.006404}, fit->at.thresholds, 5e-7, last_figure);
  compare(of, "slopes: warm, contact", tutorial, {2.503102, 1.527798}, fit->at.slopes, 5e-7,
          last_figure);
  compare(of, "standard errors", tutorial,
          {0.517102, 0.437880, 0.597760, 0.730906, 0.528680, 0.476623}, fit->standard_errors, 5e-7,
          last_figure);
  check({of, "ln likelihood of the wine's ratings", tutorial, -86.491923, fit->log_likelihood, 5e-7,
         last_figure});
}

TEST_CASE("wine's bitterness with a judge of their own taste") {
  const auto fit = fit_ordinal(wine(true));
  REQUIRE(fit);
  CHECK(fit->end == OrdinalEnd::found);
  const std::string of = "note_chance/word_chance", stop = "R stops at a gradient of 1e-4";
  compare(of, "thresholds, judges random", tutorial, {-1.623667, 1.513365, 4.228527, 6.088773},
          fit->at.thresholds, 1e-4, stop);
  compare(of, "slopes, judges random", tutorial, {3.062997, 1.834885}, fit->at.slopes, 1e-4, stop);
  check({of, "sd between judges", tutorial, 1.131133, fit->at.sds[0], 1e-4, stop});
  check({of, "ln likelihood, judges random (Laplace)", tutorial, -81.565409, fit->log_likelihood,
         1e-5, "R's modes are sought to 1e-6"});
  compare(of, "each judge's effect", tutorial,
          {1.696178, -0.565783, 0.968808, -0.059550, 0.230510, 0.477039, -1.910973, -0.272944,
           -0.554676},
          fit->effects[0], 1e-4, stop);
}

TEST_CASE("simulated feel notes at the parameters that R found") {
  const std::string of = "note_chance/word_chance", why = "parameters rounded to nine figures";
  const auto both = ordinal_at(notes(true), {{2.832242326, 8.933202183, 13.831969957, 16.33521419},
                                             {18.610014056},
                                             {5.743360524, 1.312028935}});
  REQUIRE(both);
  check({of, "ln likelihood of 241 notes, pigment and batch random", clmm, -168.1583048,
         both->log_likelihood, 1e-6, why});
  const auto one = ordinal_at(
      notes(false),
      {{2.228274896, 7.072197355, 11.300565385, 13.468452301}, {14.950523565}, {4.697302016}});
  REQUIRE(one);
  check({of, "ln likelihood of 241 notes, pigment random", clmm, -175.7959765, one->log_likelihood,
         1e-4, "R's own is 1e-5 from the mode"});
}

TEST_CASE("simulated feel notes, fitted") {
  const auto fit = fit_ordinal(notes(true));
  REQUIRE(fit);
  CHECK(fit->end == OrdinalEnd::found);
  check({"note_chance/word_chance", "ln likelihood of 241 notes at its largest", clmm, -168.1583048,
         fit->log_likelihood, 1e-4, "where either stops"});
  check({"note_chance/word_chance", "slope of ln flow", clmm, 18.610014, fit->at.slopes[0], 0.01,
         "R stops at a gradient of 1e-4 of a slope that is known to 1.9"});
}

}
