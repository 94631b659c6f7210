// What a plan comes to: grams to weigh, the first helping, drops to follow, pours.
#pragma once

#include "bench/measures.hpp"
#include "paint/range/helping.hpp"

namespace bench {

struct PlannedPigment { // or what else is weighed out
  std::string card;
  double grams = 0;
  double u = 0;       // of what was said in spoons; 0: it is weighed
  bool guess = false; // by how its powder is guessed to lie in the spoon
};

// Fill of a pan, for plans: "to the rim but for a little" (common practice, no source).
inline constexpr double planned_fill = 0.85;
// What a slab of 30 cm takes at once: 10 to 20 mL (common practice, no source).
inline constexpr double portion_mL = 15;

int portions_of(double wet_mL); // at least 1

// What the last dry paint of the plan's pigments asks for.
struct LastTime {
  session::Became as = session::Became::good;
  std::string of = {};     // card of what there should be more of; empty: nothing, or less
  std::string card = {};   // its name
  double g = 0;            // so much of it
  int drops = 0;           // where they can be counted; else 0
  bool enough = false;     // the plan differs from last time by as much already
  bool in_plan = false;    // it stands among what the plan puts in
  bool earlier = false;    // another paint was judged since
  double most_honey_g = 0; // sticky: no more than this to 10 g of dry gum; 0: not known
  double sweet_share = 1;  // sticky: of the extras' honey and glycerin, so much at most
};

struct Planned {
  std::vector<PlannedPigment> pigments;
  double pigment_g = 0;
  struct Helping {
    double low_g = 0, high_g = 0; // of binder
    Tapped amount = {};           // in spoons or drops that serve; else nothing
  } first_helping;
  double binder_g = 0; // all of it, by what is guessed, or as the batch made again took: with what
                       // dries off until the paint is right
  double rest_g = 0;   // to follow the first helping, about
  double rest_spoons = 0;   // of that, the last of it by the drop; 0: none
  int drops = 0;            // of that, where they are few enough to be counted; else 0
  double wet_mL = 0;        // when it is right
  double dry_share = 0;     // of that, dried in this room
  int pans = 0, layers = 0; // of the chosen pan
  int portions = 1;         // over the slab
  bool as_made = false;     // by the batch made again or by a recipe, not by what is guessed
  bool by_recipe = false;   // by that
  std::vector<PlannedPigment> extras = {}; // beside pigment and binder, as in that batch
  std::optional<LastTime> last_time = {};  // its dry paint was not good
};

// Errors: nothing_wanted for 0 of it; nothing_left where it goes as far as its pigments last and no
// card says how far that is; spoon_gone where an amount is said in one that is not on the shelf;
// those of paint::pans_of and grams_weighed; density_not_known for a pigment without one. Absent
// where no pigment is chosen.
std::optional<words::Result<Planned>> planned(const Bench& bench);

// Over the slab, if so many of what the plan asks for were wanted; 1 where its paint is not known.
int portions_wanted(const Bench& bench, double wanted);

bool asks_how_much(Want want); // by a number

// g of binder to put in for each g that is wanted on the slab when paint of 10 g of pigment is
// right: the rest dries off under the knife and the muller in this room. At least 1. mL: of each
// pigment, as they stand to each other, with densities; flow: mL of liquid for each mL of them
// together, above 0.
double put_in_for_each(const Bench& bench, const std::vector<session::BatchPigment>& mL,
                       const paint::Material& binder, double flow);

// What is left of a card of which it is known how much there was, in g: see stock_of.
std::optional<double> left_of(const Bench& bench, const session::Card& card);

}
