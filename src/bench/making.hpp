// Making binder, and what is done to a jar of it later: what may be done now, and what it comes to.
#pragma once

#include "bench/bench.hpp"
#include "paint/making.hpp"

namespace bench {

// Those that are neither done nor thrown away, the latest begun first.
std::vector<std::string> open_makings(const Bench& bench);
// That is looked at; null while a new one is planned.
const session::BinderMaking* making_in_hand(const Bench& bench);

// Plans a new making by the recipe of that binder; where it is none, by the shelf's first.
void plan_making(Bench& bench, const std::string& by);
void show_making(Bench& bench, const std::string& of); // one that was begun
void open_making(Bench& bench, const std::string& by); // the latest by that recipe, else a new one
void open_strength(Bench& bench, const std::string& jar);

// The binder whose recipe it goes by, wherever it lies now; null: it is gone.
const session::Card* made_by(const Bench& bench);
// The shelf's dry gum, honey and glycerin, each alone in its jar; null: there is none.
const session::Card* gum_of_shelf(const Bench& bench);
// The jar that so many g of honey or glycerin come out of: alone in it, else honey with water that
// somebody bought or weighed. No card: there is none.
struct Sweetener {
  const session::Card* card = nullptr;
  double g = 0;       // out of the jar
  double water_g = 0; // of that
};
Sweetener sweet_of_shelf(const Bench& bench, bool honey, double g);

struct GumMeasured {
  paint::Amount g;
  const session::Card* spoon = nullptr; // null: weighed
};
GumMeasured gum_measured(const Bench& bench);
// All that goes in, in g: as it was begun, or as it would be begun now.
words::Result<paint::Recipe> to_put_in(const Bench& bench);
double binder_in_jar(const Bench& bench); // g: as weighed, else about what gets there

// "Gum 1 : 2 + honey", "jar 2".
std::string name_of_jar(const Bench& bench);
std::string lot_of_jar(const Bench& bench);

// Practice has 2 to 4 weeks in the cold without a preservative, 3 to 6 months with one: the shorter
// of each, as "2027-02-27".
bool is_preserved(const Bench& bench);
struct Dose {
  double amount = 0; // 0: not said
  bool in_g = false; // else drops
};
Dose dose_of(const Bench& bench); // of the preservative: as its step has it, else as it is to be
double grams_of(const Dose& dose);
std::string keep_until(const Bench& bench, const Now& now);

// Rings once when the step that runs has had its time.
std::optional<std::int64_t> making_bell_at(const Bench& bench); // ms since 1970; absent: none runs
bool making_rings(Bench& bench, const Now& now);

// ---- a jar's strength

const session::Card* jar_in_hand(const Bench& bench);
struct JarWeighed {
  std::optional<double> counted_g; // by what went in and out
  std::optional<double> weighed_g; // now, not yet kept
  double left_g() const { return weighed_g.value_or(counted_g.value_or(0)); }
  double missing_g() const { return weighed_g && counted_g ? *counted_g - *weighed_g : 0; }
};
JarWeighed jar_weighed(const Bench& bench);
double wanted_strength(const Bench& bench); // 0 to 1, as set, else as it is
// What makes it so strong; error where nothing can, or nobody knows how much there is.
words::Result<paint::PutIn> put_in_for(const Bench& bench);
bool is_nothing(const paint::PutIn& in); // no kitchen scale shows so little

}
