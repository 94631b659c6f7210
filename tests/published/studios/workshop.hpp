// An invented workshop whose truth is known: its hands, its pigments, and what it feels.
#pragma once

#include "paint/range/predict.hpp"

#include <cstdint>
#include <random>
#include <vector>

namespace studios {

// What differs from the model that is fitted; all 0: nothing.
struct Truth {
  double batch_sd = 0.08;
  double random_notes = 0.03; // tapped without feeling
  bool heavy_tails = false;   // batches and notes by Student's t with three degrees of freedom
  double stage = 0; // paint feels looser by so much under the knife: a batch's first notes
  double drift = 0; // of the middle of right over all batches, ln flow
};

class Chance {
public:
  explicit Chance(std::uint64_t seed) : engine(seed) {}
  double even();        // above 0, below 1
  double normal();      // Box & Muller's
  double heavy();       // Student's t, three degrees of freedom, scaled to variance 1
  int whole(int below); // 0 to below - 1

private:
  std::mt19937_64 engine;
};

struct Felt {
  int genuine = 2; // what a hand that feels would say
  int tapped = 2;  // what was tapped
};

// One batch on the slab. `t`: ln of the liquid at its true middle of right.
struct Slab {
  std::vector<std::pair<int, double>> pigments;
  double t = 0;
  double ln_mL = 0; // liquid that is truly there
  double tool_error = 0;
  int tool = 0;
};

class Workshop {
public:
  Workshop(const Truth& truth, std::uint64_t seed);

  static constexpr int pigments = 12, untried = 3, batches = 40;

  paint::LearnProblem history(); // of all its batches
  Slab batch(bool of_untried);   // a new one, begun well short of right
  Felt feel(const Slab& slab, bool knife);
  double past_edge(const Slab& slab) const; // ln flow beyond the true edge of right; below 0: not
  double demand(int pigment) const { return demands[static_cast<std::size_t>(pigment)]; }
  const std::vector<paint::LearnPigment>& facts() const { return known; }

  static constexpr double pigment_sd = 0.02, note_sd = 0.01; // of masses, of each volume
  Chance chance;

private:
  double off_batch();
  void begin(Slab& slab);
  void note_batch(paint::LearnProblem& problem, int batch);

  Truth truth;
  paint::NoteModel hand;
  double drifted = 0;
  std::vector<paint::LearnPigment> known;
  std::vector<double> demands, tools;
};

}
