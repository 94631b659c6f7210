// What is shown of binder while it is made, and of a jar whose strength is looked at.
#pragma once

#include "bench/view_pans.hpp"
#include "paint/making.hpp"
#include "session/making.hpp"

namespace bench {

// A jar of binder, weighed, and another strength.
struct StrengthView {
  bool gone = false; // its card was put away
  paint::Recipe recipe;
  double strength = 0, wanted = 0; // dry gum, 0 to 1
  std::optional<double> counted_g, weighed_g;
  double tare_g = 0;
  double missing_g = 0;      // by which it weighs less than was counted
  double dried_strength = 0; // were that water; 0: it cannot be
  paint::PutIn put_in;       // that makes it as strong as wanted
  paint::Recipe becomes;     // with that
  std::optional<words::Error> why_not;
  bool typed = false; // and not yet kept
};

struct BinderView {
  struct Step {
    PadId pad;
    session::MakingStep step = session::MakingStep::gum_in;
    std::int64_t began_at = 0; // ms since 1970; 0: not yet
    std::int64_t ends_at = 0;  // likewise, while it runs
    bool runs = false;         // the last that began
    double left_min = 0;       // of it
    bool main = false;         // the one thing to do now
  };
  std::string name, lot; // of the jar
  bool begun = false;
  std::string recipe; // whose
  double gum_g = 0, gum_u = 0, spoons = 0;
  std::string spoon;                // empty: weighed
  std::optional<double> gum_left_g; // on the shelf, where that is less
  paint::Recipe parts;              // what goes in, in g
  std::string syrup;                // card, where the honey goes in with its water; empty: alone
  double syrup_g = 0, syrup_water_g = 0;
  double makes_g = 0;
  bool jar_weighed = false;
  std::optional<double> a_gram, batches; // costs; like the last ones
  std::string currency;
  std::vector<Step> steps;
  double dose = 0;
  bool dose_in_g = false;
  bool preserved = true;
  std::string keep_until;              // "2027-02-27"
  std::int64_t now_ms = 0;             // since 1970
  std::size_t others = 0;              // that were begun
  bool in_jar = false;                 // so that it can go onto the shelf
  bool dust = true;                    // dry gum is about
  bool stood = false;                  // too long for gum in water
  std::optional<words::Error> why_not; // it comes to nothing
  std::optional<StrengthView> strength;
  std::optional<NumberView> number;
  Notice notice;
};

}
