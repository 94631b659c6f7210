// What is kept of all notes is what one after the other gives.
#include "paint/invented_notes.hpp"
#include "paint/range/notes_seen.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

namespace notes_seen_test {

using namespace paint;

namespace {

const RangeFit& nobody() {
  static const RangeFit fit = *learn({});
  return fit;
}

const RangeFit& somebody() {
  static const RangeFit fit =
      *learn(invented_notes({.pigments = 6, .batches = 20, .seed = 11, .tools = 2}));
  return fit;
}

const RangeFit& without_slips() {
  static const RangeFit fit = [] {
    LearnPriors priors;
    priors.slips = false;
    return *learn({}, priors);
  }();
  return fit;
}

Prediction one_by_one(Prediction now, double dry_gum, const std::vector<TodayNote>& notes) {
  for (TodayNote note : notes) {
    note.stronger += usual_dry_gum - dry_gum;
    if (auto after = paint::after(now, note)) now = *std::move(after);
  }
  return now;
}

double farthest(const Prediction& a, const Prediction& b) {
  REQUIRE(a.weights.size() == b.weights.size());
  double most = 0;
  for (std::size_t k = 0; k < a.weights.size(); ++k)
    most = std::max(most, std::abs(a.weights[k] - b.weights[k]));
  return most;
}

// A batch that is worked on: notes come, go and are corrected, water and binder go in between.
struct Day {
  std::mt19937 random;
  PredictBatch batch;
  std::vector<TodayNote> notes;

  Day(unsigned seed, PredictPart part) : random(seed) { batch.pigments = {part}; }
  double between(double from, double to) {
    return std::uniform_real_distribution<double>(from, to)(random);
  }
  TodayNote note() {
    const bool by_knife = random() % 3 == 0;
    return {std::exp(between(-0.5, 1.2)), std::hypot(between(0, 0.05), by_knife ? knife_sd : 0),
            static_cast<int>(random() % 5), between(-0.15, 0.2), random() % 2 ? 0 : 0.25};
  }
  void one_thing() {
    batch.dry_gum = between(0.15, 0.5);
    batch.shared_sd = between(0, 0.1);
    if (random() % 4 == 0 && !notes.empty()) notes.pop_back();
    if (random() % 9 == 0 && !notes.empty()) notes[random() % notes.size()] = note();
    if (random() % 3) notes.push_back(note());
  }
};

}

TEST_CASE("all notes at once are one after the other") {
  const PredictPart usual{-1, 1, {0.1, 0.6, 0}}, known{0, 1, {}};
  for (const RangeFit* fit : {&nobody(), &somebody(), &without_slips()}) {
    Day day(3, fit == &somebody() ? known : usual);
    NotesSeen seen;
    for (int i = 0; i < 120; ++i) {
      day.one_thing();
      const Prediction before = *predict(*fit, day.batch);
      const Prediction now = seen.weigh(before, day.batch.dry_gum, day.notes);
      CAPTURE(i);
      CHECK(farthest(now, one_by_one(before, day.batch.dry_gum, day.notes)) < 1e-9);
    }
  }
}

TEST_CASE("as many notes as nobody makes, and some of another paint, of another hand, of no kind") {
  Day day(7, {0, 1, {}});
  for (int i = 0; i < 1500; ++i) {
    day.notes.push_back(day.note());
    day.notes.back().mL = std::exp(day.between(0.2, 0.5));
  }
  for (const TodayNote& odd : {TodayNote{1e-9, 0, 4}, {1e9, 0, 0}, {1, 0, 2, 2}, {0, 0, 2}})
    day.notes.push_back(odd);
  NotesSeen seen;
  for (const RangeFit* fit : {&somebody(), &without_slips(), &somebody()}) {
    day.batch.pigments = {fit == &somebody() ? PredictPart{1, 1, {}}
                                             : PredictPart{-1, 1, {0.1, 0.6, 0}}};
    day.notes.pop_back();
    const Prediction before = *predict(*fit, day.batch);
    const Prediction now = seen.weigh(before, day.batch.dry_gum, day.notes);
    CHECK(farthest(now, one_by_one(before, day.batch.dry_gum, day.notes)) < 1e-7);
  }
}

TEST_CASE("without a note there is what was there before") {
  NotesSeen seen;
  const Prediction before = *predict(nobody(), {{{-1, 1, {0.1, 0.6, 0}}}, {}, 0});
  CHECK(farthest(seen.weigh(before, 0.3, {}), before) == 0);
  seen.weigh(before, 0.3, {{1.4, 0.01, 1}});
  CHECK(farthest(seen.weigh(before, 0.3, {}), before) == 0);
  CHECK(seen.weigh({}, 0.3, {{1.4, 0.01, 1}}).weights.empty());
}

}
