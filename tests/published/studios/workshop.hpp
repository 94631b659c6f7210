// An invented workshop whose truth is known: its hands, its pigments, and what it feels.
#pragma once

#include "paint/range/predict.hpp"

#include <cstdint>
#include <random>
#include <vector>

namespace studios {

inline constexpr double gum_1_to_2 = 0.2933, gum_1_to_3 = 0.22; // dry gum's share of the liquid

// What may differ from the model that is fitted. As it stands: nothing.
struct Truth {
  double batch_sd = 0.08;
  double random_notes = 0.03; // tapped without feeling
  bool heavy_tails = false;   // batches and notes by Student's t with three degrees of freedom
  double knife = 0;           // paint feels looser by so much under the knife
  double knife_sd = paint::knife_sd;      // of a note there, beside the hand's own
  double drift = 0;                       // of the middle of right over 40 batches, ln flow
  double gamma = 3.9;                     // ln flow that a unit of the dry gum's share is worth
  bool thinner = false;                   // gum is 1 : 3, not 1 : 2, from a batch on:
  int change = 20;                        // this one, from 0
  double dries = 0.01;                    // share of the liquid that leaves before each note
  double late = 0;                        // in the first eight batches paint feels drier by so much
  double follows = 0.5, follows_sd = 0.2; // how far demand follows ln oil absorption, by studio
  double other_hand = 0;        // every third batch is made by one who likes it looser by so much
  double wrong_label = 0;       // sd of the dry gum's share from what the bottle says, by bottle
  double looser_by_mulling = 0; // in the end; six minutes are 63 % of it
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
  int genuine = 2; // what a hand that feels, and is not late, would say
  int tapped = 2;  // what was tapped
  bool knife = false;
};

// One batch on the slab. `t`: ln of the liquid at its true middle of right, gum being 1 : 2.
struct Slab {
  std::vector<std::pair<int, double>> pigments;
  double t = 0;
  double ln_mL = -30;    // liquid that is truly there
  double dry_gum = 0;    // its share, as the bottle has it
  double label_off = 0;  // what it truly has beyond that
  double binder_gum = 0; // of what goes in
  double tool_error = 0;
  int tool = 0;
  int number = 0; // of the batch, from 0
  int notes = 0;
};

// What the program is told of it at one moment.
struct Read {
  double mL = 0;
  double stronger = 0; // dry gum's share, less that of what was put in
};

class Workshop {
public:
  Workshop(const Truth& truth, std::uint64_t seed);
  // With the pigments of another, from other lots (sd `lots`), and hands that call it right drier
  // or looser than there (by sd `hands`, and `off` for sure).
  Workshop(const Truth& truth, std::uint64_t seed, const Workshop& friends, double hands,
           double lots, double off);

  static constexpr int pigments = 12, untried = 3;

  Slab batch(int number, bool of_untried);
  void add(Slab& slab, double mL); // as the tool says; some water leaves while it is worked in
  Felt feel(Slab& slab);
  Read read(const Slab& slab);
  double past_edge(const Slab& slab) const; // ln flow beyond the true edge of right; below 0: not
  double asked_of(const Slab& slab) const;  // ln mL at its middle of right as the tool says
  // A pigment's demand on the day of that batch, in that day's binder.
  double demand(int pigment, int number) const;
  double binder_gum(int number) const {
    return truth.thinner && number >= truth.change ? gum_1_to_3 : gum_1_to_2;
  }
  const std::vector<paint::LearnPigment>& facts() const { return known; }
  paint::LearnProblem nothing_yet() const; // its pigments and tools, no notes

  static constexpr double pigment_sd = 0.02, note_sd = 0.01; // of masses, of each volume
  Chance chance;

private:
  void add_pigments();
  double off_batch();
  double middle(const Slab& slab) const; // ln mL, with what its gum does
  double drifted(int number) const { return truth.drift * (number + 1) / 40; }

  Truth truth;
  paint::NoteModel hand;
  std::vector<paint::LearnPigment> known;
  std::vector<double> demands, tools, bottles;
};

}
