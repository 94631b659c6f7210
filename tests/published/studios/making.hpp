// What every invented studio does: asks, helps itself, keeps what it felt.
#pragma once

#include "paint/range/helping.hpp"
#include "published/studios/workshop.hpp"

#include <cmath>

namespace studios {

using namespace paint;

// How often something happened, or how much of it there was, studio by studio.
class Share {
public:
  void add(double happened) {
    ++asked;
    yes += happened;
  }
  void close_studio() {
    studios.emplace_back(yes, asked);
    yes = asked = 0;
  }
  double value() const {
    double sum = 0, of = 0;
    for (const auto& [y, n] : studios) {
      sum += y;
      of += n;
    }
    return of > 0 ? sum / of : 0;
  }
  double error() const { // of a ratio of clusters
    const double r = value(), count = static_cast<double>(studios.size());
    double squares = 0, of = 0;
    for (const auto& [y, n] : studios) {
      squares += (y - r * n) * (y - r * n);
      of += n;
    }
    return of > 0 && count > 1 ? std::sqrt(squares * count / (count - 1)) / of : 0;
  }

private:
  double yes = 0, asked = 0;
  std::vector<std::pair<double, double>> studios;
};

constexpr int made = 40;

// As the program learns and foresees; or otherwise, to hold that against it.
struct Model {
  LearnPriors priors;
  double knife = knife_sd, late = felt_late;
};
inline Model model;

inline bool is_early(int number) { return number < first_batches; }

inline PredictBatch asked_of(const Slab& slab) {
  PredictBatch batch;
  for (const auto& [pigment, mL] : slab.pigments) batch.pigments.push_back({pigment, mL, {}});
  batch.tools = {{slab.tool, 1, 0}};
  batch.shared_sd = Workshop::pigment_sd;
  batch.dry_gum = slab.binder_gum;
  return batch;
}

inline double sd_of(const Felt& felt) {
  return felt.knife ? std::hypot(Workshop::note_sd, model.knife) : Workshop::note_sd;
}

// What a batch leaves behind for the next fit.
inline void keep(LearnProblem& problem, const Slab& slab, const Read& read, const Felt& felt) {
  problem.notes.push_back({static_cast<int>(problem.segments.size()) - 1,
                           std::log(read.mL),
                           sd_of(felt),
                           {{slab.tool, 1}},
                           felt.tapped,
                           slab.binder_gum + read.stronger});
}

inline void open_batch(LearnProblem& problem, const Slab& slab) {
  problem.batches.push_back({Workshop::pigment_sd});
  problem.segments.push_back({static_cast<int>(problem.batches.size()) - 1, slab.pigments});
}

// Every batch begins with a helping as the program has it.
inline void begin(Workshop& shop, Slab& slab, const Prediction& prediction) {
  const Helping first = first_helping(prediction);
  shop.add(slab, first.low + (first.high - first.low) * shop.chance.even());
}

// A maker's own way: liquid is added until it is felt right, and now and then past it.
inline void go_own_way(Workshop& shop, Slab slab, const Prediction& prediction,
                       LearnProblem& problem) {
  const double stride[] = {0.30, 0.16, 0.10, 0, 0};
  const int beyond = shop.chance.even() < 0.3 ? 1 : 0;
  int rights = 0;
  open_batch(problem, slab);
  begin(shop, slab, prediction);
  for (int note = 0; note < 8; ++note) {
    const Read read = shop.read(slab);
    const Felt felt = shop.feel(slab);
    keep(problem, slab, read, felt);
    rights += felt.tapped == 2;
    if (felt.tapped > 2 || rights > beyond) return;
    shop.add(slab, read.mL * std::expm1(stride[felt.tapped] * (0.6 + 0.8 * shop.chance.even())));
  }
}

}
