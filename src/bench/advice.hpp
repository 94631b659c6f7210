// The one sentence of advice, as a kind with numbers. It names binder or water, never a command:
// until three batches of this studio have taught the range, it is a hint.
#pragma once

#include "bench/measures.hpp"
#include "bench/smooth.hpp"
#include "paint/film.hpp"
#include "paint/gum.hpp"
#include "session/ranges.hpp"

namespace bench {

struct Advice {
  enum Kind {
    weigh_pigment,  // nothing on the slab yet
    first_helping,  // low_g to high_g of binder, or what of it is still to come
    add_drops,      // so many drops, or spoons where there are any; then mull and judge
    mull_and_judge, // one drop more is already a risk
    keep_going,     // that too, but too little is known to stop a hand
    work_in,        // stiff, and the powder is not wetted out yet: nothing is known from that
    keep_mulling,   // last felt right, and is not smooth
    test_dot,       // last felt right, and nobody has looked whether it is smooth
    there,          // last felt right, likely still so, and smooth
    judge_again,    // the last note says more liquid than there is for it
    right_by_now,   // last felt too loose, and has dried since
    too_loose,      // let it dry, or more of the pigments
    give_back,      // found dry: so much water, before anything else
    gathered        // the batch is off the slab
  } kind = weigh_pigment;
  int drops = 0;
  double spoons = 0;     // quarters of one that it would fill, of binder or of water; else 0
  double g = 0;          // of binder, where there are more drops than anybody counts, and no spoon
  double mL = 0;         // of water to give back
  bool by_knife = false; // no mulling pass has begun yet
  bool sticky_now = false; // nothing was added since it was felt to be too sticky
  bool rest = false;       // a part of the first helping has gone in
  double low_g = 0, high_g = 0;
  int dry_min =
      0; // mulled out wide, until it has dried to the middle of right; 0: not in two hours
  struct Pigment {
    std::string card, name;
    double g = 0;
  };
  std::vector<Pigment> pigments =
      {}; // that would bring it there or nearer, as they stand to each other
  std::optional<MullingLeft> mulling = {}; // until it is smooth, as far as that is learnt
  bool hint = true;                        // too little is known for more
  std::optional<paint::GumState> gum = {}; // binder or water; silent where absent
  std::optional<paint::Tack> sticky =
      {}; // honey and glycerin stand at their stop mark, or beyond it
};

inline constexpr int taught_enough = 3; // batches of this studio: until then, hints

// What is known beside the batch itself.
struct Known {
  session::GumVerdicts verdicts;
  double took_first = 0;                   // flow; of the batch that is made again, 0: none
  std::optional<MullingLeft> mulling_left; // of this paint
  double water_drop_mL = 0.05;
};

Advice advise(const session::Batch& batch, const std::optional<session::Expectation>& expected,
              const Measures& of, const Known& known = {});

// mL that it says to add; 0 where it says so of none.
double advised_mL(const Advice& advice, const Measures& of);

// The flow that a batch's first helping brought; 0 where it had none, or too much of one.
double took_first(const session::Batch& batch);

}
