// Paint of gum alone dries brittle and is hard to take up again: how much honey or glycerin is
// usual in it.
#pragma once

#include "bench/measures.hpp"
#include "bench/planning.hpp"
#include "session/ranges.hpp"

namespace bench {

// Of honey five to ten hundredths of the binder's weight are usual, of glycerin fifteen to forty of
// the dry gum's (common practice, no source): the lower half of that is asked for.
struct Softening {
  std::string name = {}; // of the honey, else the glycerin on the shelf; empty: there is none
  Tapped amount = {};    // of it
  double mL = 0;         // likewise
  Tapped loosens = {};   // of water, about as much; nothing: not said
  session::CardKind kind = session::CardKind::honey;
  Measures of = {}; // where there is one
};

// Of honey what is no water, as much as is usual in so much binder: g.
double usual_honey_solids_g(double binder_g);

// Of the paint on the slab, for the binder that it will likely have taken when it is right. Absent
// while it is worked in, where some is in or is still to come by its plan, and once it is gathered.
std::optional<Softening> softening_of_slab(const Bench& bench);

// Of the plan, for all of its binder. Absent where binder or extras have some.
std::optional<Softening> softening_of(const Bench& bench, const Planned& planned);

}
