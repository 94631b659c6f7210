// The learnt range: a whole fit, one more batch, one more note. Usage: learn ROUNDS FITS
// range_clmm.csv
#include "ordinal/ordinal.hpp"
#include "paint/invented_notes.hpp"
#include "paint/range/predict.hpp"
#include "paint/range/range.hpp"
#include "speed/race.hpp"

#include <cmath>
#include <fstream>
#include <sstream>

namespace {

using namespace paint;
using speed::timed;

// 500 pigments, 2,000 batches of five notes, two in five under the knife, each batch in binder of
// its own strength.
struct Years {
  LearnProblem notes, before; // before: without the last batch
  RangeFit learnt_before;

  Years()
      : notes(invented_notes(
            {.pigments = 500, .batches = 2000, .seed = 1, .knife = 0.4, .own_binder = true})),
        before(notes) {
    before.notes.resize(before.notes.size() - 5);
    learnt_before = *learn(before);
    speed::need(learnt_before.end == LearnEnd::found, "nothing was learnt");
  }
};

double fit(const LearnProblem& notes, const LearnPriors& priors = {},
           const RangeFit* earlier = nullptr) {
  bool found = false;
  const double ms = timed([&] {
    const auto fit = learn(notes, priors, earlier);
    found = fit && fit->end == LearnEnd::found;
  });
  speed::need(found, "nothing was learnt");
  return ms;
}

// A studio's 40 batches, and the same for a model to which all binders, days and tools are one.
struct Months {
  LearnProblem notes = invented_notes(
      {.pigments = 12, .batches = 40, .seed = 1, .tools = 2, .knife = 0.4, .own_binder = true});
  LearnProblem plain_notes = notes;
  LearnPriors plain;

  Months() {
    for (LearnNote& note : plain_notes.notes) note.sd = std::min(note.sd, 0.01);
    plain.strength.sd = plain.walk = 0;
  }
};

// As many chances as one look at all those notes on all nodes takes, two logistics each.
double chances_of_all() {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < 10000; ++i)
      for (int k = 0; k < 31; ++k) {
        const double x = 1e-4 * i + 0.1 * k;
        sum += 1 / (1 + std::exp(-x)) - 1 / (1 + std::exp(1 - x));
      }
  });
  speed::need(sum > 0, "chances make no sense");
  return ms;
}

double exponentials() {
  double sum = 0;
  const double ms = timed([&] {
    for (int i = 0; i < 1000; ++i) sum += std::exp(-1e-3 * i);
  });
  speed::need(sum > 0, "exponentials make no sense");
  return ms;
}

double note_of_today(const Prediction& prediction, double late = 0) {
  double weight = 0;
  const double ms = timed([&] { weight = after(prediction, {1.4, 0.01, 1, 0, late})->weights[0]; });
  speed::need(std::isfinite(weight), "the note makes no sense");
  return ms;
}

double asked_anew(const RangeFit& fit) {
  std::size_t points = 0;
  const double ms = timed([&] {
    points = predict(fit, {{{0, 1, {}}, {1, 0.5, {}}}, {}, 0})->points.size();
  });
  speed::need(points > 0, "nothing is foreseen");
  return ms;
}

double band_drawn(const Prediction& prediction) {
  std::size_t samples = 0;
  const double ms = timed([&] { samples = band_seen(prediction).right.size(); });
  speed::need(samples > 0, "there is no band");
  return ms;
}

double safe_drops_now(const Prediction& prediction) {
  int drops = 0;
  const double ms = timed([&] { drops = safe_drops(prediction, {1.0}, 0.05); });
  speed::need(drops >= 0, "the drops make no sense");
  return ms;
}

// note,batch,pigment,ln_r_oa,pigment_mL,liquid_mL,feel below lines of # and of names.
ordinal::OrdinalData simulated(const std::string& file) {
  ordinal::OrdinalData data;
  data.factor_groups = {8, 40};
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line.empty() || line.find_first_not_of("0123456789.,-") != std::string::npos) continue;
    std::vector<double> x;
    std::istringstream cells(line);
    for (std::string cell; std::getline(cells, cell, ',');) x.push_back(std::stod(cell));
    data.rows.push_back({static_cast<int>(x.at(6)) - 1,
                         {std::log(x.at(5) / x.at(4)) - x.at(3)},
                         {static_cast<int>(x.at(2)) - 1, static_cast<int>(x.at(1)) - 1}});
  }
  speed::need(data.rows.size() == 241, file + " is not there, or another");
  return data;
}

double fit_ordinal_once(const ordinal::OrdinalData& data) {
  double height = 0;
  const double ms = timed([&] { height = ordinal::fit_ordinal(data)->log_likelihood; });
  speed::need(std::abs(height + 168.1583) < 1e-3, "another likelihood than R's");
  return ms;
}

}

int main(int count, char** words) {
  speed::need(count == 4, "usage: learn ROUNDS FITS range_clmm.csv");
  const Years years;
  speed::race("learn",
              {{"chances", chances_of_all},
               {"full", [&] { return fit(years.notes); }},
               {"one batch more", [&] { return fit(years.notes, {}, &years.learnt_before); }}},
              {speed::count_of(words[2]), 1, 1});
  const Months months;
  speed::race("learn 40",
              {{"plain", [&] { return fit(months.plain_notes, months.plain); }},
               {"all", [&] { return fit(months.notes); }}},
              {speed::count_of(words[2]), 5, 1});
  const Prediction known = *predict(years.learnt_before, {{{0, 1, {}}, {1, 0.5, {}}}, {}, 0});
  const Prediction unknown = *predict(*learn({}), {{{-1, 1, {0.1, 0.6, 0}}}, {}, 0});
  speed::race("foresee",
              {{"exponentials", exponentials},
               {"note", [&] { return note_of_today(known); }},
               {"first note", [&] { return note_of_today(unknown, felt_late); }},
               {"anew", [&] { return asked_anew(years.learnt_before); }},
               {"band", [&] { return band_drawn(unknown); }},
               {"drops", [&] { return safe_drops_now(unknown); }}},
              {speed::count_of(words[1])});
  const ordinal::OrdinalData data = simulated(words[3]);
  speed::race("ordinal", {{"ours", [&] { return fit_ordinal_once(data); }}},
              {speed::count_of(words[2])});
}
