// How an amount of a liquid is said: in spoons where they serve, the last of it by the drop; what
// nobody counts is weighed.
#pragma once

namespace session {

struct Batch;
struct Card;
struct Total;

// What one drop and one level spoon of a liquid hold, and what it weighs; 0 where there is no
// spoon.
struct Measures {
  double drop_mL = 0;
  double spoon_mL = 0;
  double g_per_mL = 1;
};
// By these tools; null: there is none.
Measures measures_of(const Card& liquid, const Card* dropper, const Card* spoon);
// By those that lay beside the batch.
Measures measures_in(const Batch& batch, const Card& liquid);

inline constexpr double any_drop_mL = 0.035; // of nobody's dropper
inline constexpr int most_counted = 30;      // drops in a row: own choice

// In what has a pad. Spoons and drops follow each other; grams stand alone.
struct Tapped {
  double spoons = 0; // quarters of one
  int drops = 0;     // up to five, or fives
  double g = 0;
};
double mL_of(const Tapped& amount, const Measures& of);
// All that went in of a liquid, where it was counted in more drops than anybody would count again,
// nothing of it was weighed, and spoons serve; else nothing.
Tapped put_in_again(const Total& total, const Measures& of);

// As much as is nearest below `most_mL`, and where that would be less than `least_mL`, as little
// as is not: spoons, drops as far as they are counted, both, or what is weighed where there is no
// spoon. Nothing of nothing.
Tapped tapped(double least_mL, double most_mL, const Measures& of);

// What goes in as one helping: spoons in the fewest taps, else as tapped() says it. Nothing where
// only the scale would do. A spoon may hold a tenth less than the least (own choice).
Tapped at_once(double low_mL, double high_mL, const Measures& of);

// So much, within a tenth or half a drop.
Tapped tapped(double mL, const Measures& of);
inline bool is_nothing(const Tapped& t) { return t.spoons <= 0 && t.drops <= 0 && t.g <= 0; }

// So many as a hand counts: fives, where one of them is not less than the least.
int drops_by_fives(int least, int most);

// Quarters of a spoon, as many as are in it; 0 where that is none, or more than twelve spoons.
double spoons_in(double mL, const Measures& of);

// Quarters of a spoon from low to high, in the fewest taps, of those the nearest to their middle; 0
// where there is none.
double spoons_between(double low_mL, double high_mL, const Measures& of);

}
