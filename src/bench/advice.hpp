// The one sentence of advice, as a kind with numbers. It names binder or water, never a command:
// until three batches of this studio have taught the range, it is a hint.
#pragma once

#include "bench/measures.hpp"
#include "bench/smooth.hpp"
#include "paint/film.hpp"
#include "paint/gum.hpp"
#include "paint/mull_time.hpp"
#include "session/ranges.hpp"

namespace bench {

struct Advice {
  enum Kind {
    weigh_pigment,  // nothing on the slab yet
    first_helping,  // low_g to high_g of binder, or what of it is still to come
    add_drops,      // so much, then mull and judge
    mull_and_judge, // what was asked for is there, or one drop more is already a risk
    work_in,        // the powder is not wetted out yet: nothing is known of it before that
    soak,           // water was given back a moment ago
    keep_mulling,   // last felt right, and is not smooth
    test_dot,       // last felt right, and nobody has looked whether it is smooth
    there,          // last felt right, likely still so, and smooth
    judge_again,    // the last note says more liquid than there is for it
    right_by_now,   // last felt too loose, and has dried since
    too_loose,      // let it dry, or more of the pigments
    past_right,     // more went in than it likely wants, and nobody has felt it since
    a_wash,         // so much liquid that no powder in steps makes a paint of it
    give_back,      // found dry: so much water, before anything else
    gathered        // the batch is off the slab
  } kind = weigh_pigment;
  Tapped amount = {};      // of binder, or of water
  std::string binder = {}; // by name, where another one is meant than the batch's own
  bool water = false;      // it is of that
  bool several = false;    // rounds of so much and a pass it may take until right
  double mL = 0;           // of water to give back, or past right
  bool by_knife = false;   // no mulling pass has begun yet
  int wait_min = 0;        // to work it in, or to let it soak, before it can be judged
  bool too_early = false;  // it was felt before that
  bool not_begun = false;  // the pass that it asks for: its pad is to be tapped
  bool sticky_now = false; // nothing was added since it was felt to be too sticky
  bool felt_loose = false; // the note that is to be made again said too loose, or runnier
  SpecksStay specks = SpecksStay::no;
  bool judge_now = false; // the work that comes before judging is done
  bool rest = false;      // a part of the first helping has gone in
  double low_g = 0, high_g = 0;
  // Mulled out wide, until it has dried as far as it should; 0: not soon enough to wait for. What
  // is too loose is judged after the longest of that.
  int dry_min = 0;
  bool dried = false; // that far already, or nearly so
  struct Pigment {
    std::string card, name;
    double g = 0;
  };
  std::vector<Pigment> pigments =
      {}; // that would bring it there or nearer, as they stand to each other
  std::optional<MullingNeeded> mulling = {}; // until it is smooth, as far as that is learnt
  bool hint = true;                          // too little is known for more
  std::optional<paint::GumState> gum = {};   // binder or water; silent where absent
  std::optional<paint::Tack> sticky =
      {};                         // honey and glycerin stand at their stop mark, or beyond it
  double times_without_honey = 0; // as much paint without any takes that up; 0: not said. A fifth
                                  // of its pigment at most is added here instead: `pigments` and
                                  // `amount` of `binder`
};

inline constexpr int taught_enough = 3; // batches of this studio: until then, hints

// What is known beside the batch itself.
struct Known {
  session::GumVerdicts verdicts;
  paint::TackMark tack;                      // likewise, of paint like this
  double took_first = 0;                     // flow; of the batch that is made again, 0: none
  double takes_in_all = 0;                   // flow; of binder, by the plan, 0: not said
  std::optional<MullingNeeded> mulling_left; // of this paint
  double pass_s = paint::usual_pass_s;       // as this studio makes them
  Measures water{0.05, 0, 1};
  struct Binder {
    std::string name;
    Measures of;
    double gum = 0; // dry, of its mass
  };
  std::optional<Binder> without_honey = {}; // or glycerin, where the batch's own has some
  std::optional<Binder> plain = {};         // likewise, or its own where that has none
};

Advice advise(const session::Batch& batch, const std::optional<session::Expectation>& expected,
              const Measures& of, const Known& known = {});

// It flows right, and is not known to be smooth yet.
bool is_nearly_done(const Advice& advice);
// mL that it says to add; 0 where it says so of none.
double advised_mL(const Advice& advice, const Measures& binder, const Known& known = {});

// The flow that a batch's first helping brought; 0 where it had none, or too much of one.
double took_first(const session::Batch& batch);

}
