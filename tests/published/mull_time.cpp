// How long mulling takes, against R's regression for censored times, and against invented studios
// whose truth is known.
#include "paint/mull_time.hpp"

#include "published/columns.hpp"
#include "published/draws.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace mull_time_test {

using namespace paint;
using namespace published;

namespace {

MullPigment one_dot_a_batch() {
  auto table = columns_of("mull_dots.csv");
  MullPigment out;
  for (std::size_t i = 0; i < table["minutes"].size(); ++i)
    out.push_back({{table["minutes"][i], static_cast<SpeckWord>(table["specks"][i])}});
  return out;
}

}

// Many is T beyond a longer time, few T between two, none T before one: censored times. A batch's
// scatter and that of judging are one there, sqrt(0.25^2 + 0.25^2).
//   survreg(Surv(low, high, type = "interval2") ~ 1, dist = "lognormal", scale = sqrt(0.125))
TEST_CASE("one dot a batch: the same as a regression for censored times") {
  const Source survreg = library("survreg of survival 3.5.3, R 4.2.2, on data/mull_dots.csv");
  constexpr double mean = 2.941910541, error = 0.08440293903;
  MullScatter known; // and before it as good as nothing
  known.of_batches = {0.25};
  known.of_pigments = {0.15};
  known.of_classes = 20;
  known.slips = 0;
  const auto time = mull_time(PigmentClass::mineral, {one_dot_a_batch()}, 0, known);
  const Interval minutes = mull_minutes(*time);
  check({"mull_time/mull_time", "ln of the minutes that half of all batches need", survreg, mean,
         std::log(minutes.middle), 0.1 * error, "a tenth of its standard error: flat before it"});
  check({"mull_time/mull_time", "half width of ln minutes, eight in ten", survreg,
         1.28155 * std::hypot(0.25, error), std::log(minutes.high / minutes.low) / 2, 0.006,
         "a tenth of a cell of the grid"});
}

namespace {

// An invented studio: what it does not know of itself.
class Studio {
public:
  explicit Studio(std::uint64_t seed)
      : random(seed), of_class(std::log(10) + 0.4 * random.normal()) {}

  double pigment() { return of_class + 0.3 * random.normal(); }
  double batch(double pigment) { return std::exp(pigment + 0.25 * random.normal()); }

  // A dot after each pass until it shows none; one in four is gathered at the first few.
  MullBatch dots(double minutes) {
    const bool hasty = random.even() < -0.5;
    MullBatch out;
    for (double at = pass(); out.size() < 60; at += pass()) {
      out.push_back({at, word(at, minutes)});
      if (out.back().specks == SpeckWord::none || (hasty && out.back().specks == SpeckWord::few))
        break;
    }
    return out;
  }

private:
  double pass() { return 3.25 + 0.75 * random.even(); }
  double judged(double minutes) { return minutes * std::exp(0.2 * random.normal()); }
  SpeckWord word(double at, double minutes) {
    if (at > judged(minutes)) return SpeckWord::none;
    return at > 0.27 * judged(minutes) ? SpeckWord::few : SpeckWord::many;
  }

  Random random;
  double of_class;
};

struct Held {
  int of = 0, in = 0;
  void count(const Interval& said, double truth) {
    ++of;
    if (truth >= said.low && truth <= said.high) ++in;
  }
  double share() const { return static_cast<double>(in) / of; }
};

// Three pigments of four batches each, then one more of the first.
void one_studio(std::uint64_t seed, Held& planned, Held& left) {
  Studio studio(seed);
  std::vector<MullPigment> known(3);
  double first = 0;
  for (MullPigment& pigment : known) {
    const double middle = studio.pigment();
    if (&pigment == &known[0]) first = middle;
    for (int batch = 0; batch < 4; ++batch) pigment.push_back(studio.dots(studio.batch(middle)));
  }
  const MullTime time = *mull_time(PigmentClass::mineral, known, 0);
  const double truth = studio.batch(first);
  planned.count(mull_minutes(time), truth);
  const MullBatch today{studio.dots(truth).front()};
  if (today[0].specks == SpeckWord::none || truth <= today[0].minutes) return;
  left.count(*mull_minutes_left(time, today, today[0].minutes), truth - today[0].minutes);
}

}

TEST_CASE("eight in ten are eight in ten, of studios whose truth is known") {
  Held planned, left;
  for (std::uint64_t seed = 1; seed <= 200; ++seed) one_studio(seed, planned, left);
  const Source invented = apart("200 invented studios of known truth, mt19937_64");
  const std::string why = "twice the binomial error of so many";
  check({"mull_time/mull_minutes", "share of batches within eight in ten", invented, 0.8,
         planned.share(), 2 * std::sqrt(0.16 / planned.of), why});
  check({"mull_time/mull_minutes_left", "likewise of what is left after the first dot", invented,
         0.8, left.share(), 2 * std::sqrt(0.16 / left.of), why});
}

}
