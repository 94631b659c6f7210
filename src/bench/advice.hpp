// The one sentence of advice, as a kind with numbers. It names binder or water, never a command:
// until three batches of this studio have taught the range, it is a hint.
#pragma once

#include "paint/film.hpp"
#include "paint/gum.hpp"
#include "session/ranges.hpp"

namespace bench {

struct Advice {
  enum Kind {
    weigh_pigment,  // nothing on the slab yet
    first_helping,  // low_g to high_g of binder
    add_drops,      // so many drops, or spoons where there are any; then mull and judge
    mull_and_judge, // one drop more is already a risk
    keep_going,     // that too, but too little is known to stop a hand
    work_in,        // stiff, and the powder is not wetted out yet: nothing is known from that
    there,          // last felt right, and likely still so
    too_loose,      // let it dry, or more of the pigments
    gathered,       // the batch is off the slab
  } kind = weigh_pigment;
  int drops = 0;
  double spoons = 0;     // quarters of one that the drops would fill, to one whole; else 0
  bool by_knife = false; // no mulling pass has begun yet
  double low_g = 0, high_g = 0;
  int dry_min = 0; // until it has dried to the middle of right; 0: not within two hours
  struct Pigment {
    std::string card, name;
    double g = 0;
  };
  std::vector<Pigment> pigments;      // that would bring it there, in the proportions it has
  bool hint = true;                   // too little is known for more
  std::optional<paint::GumState> gum; // binder or water; silent where absent
  std::optional<paint::Tack> sticky;  // honey and glycerin stand at their stop mark, or beyond it
};

inline constexpr int taught_enough = 3; // batches of this studio: until then, hints

// What one drop, and one level spoon, of the batch's binder add; 0 where there is no spoon.
struct Measures {
  double drop_mL = 0;
  double spoon_mL = 0;
};
Advice advise(const session::Batch& batch, const std::optional<session::Expectation>& expected,
              const Measures& of, const session::GumVerdicts& verdicts = {});

// mL that it says to add; 0 where it says so of none.
double advised_mL(const Advice& advice, const Measures& of);

}
