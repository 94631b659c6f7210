// The pads of making binder, and of a jar's strength.
#pragma once

#include "bench/pad.hpp"

namespace bench {

enum class BinderPad {
  recipe, // another binder's
  less,   // of the gum
  gum,    // a number
  more,
  measured_in, // the gum: g or spoons
  step,        // arg: its word in files; begins it
  dose,        // of the preservative, a number
  dose_in,     // drops or g
  keep,        // until when: preserved or not
  jar_holds,   // a number: weighed, without the jar
  take_back,   // the last that was done
  give_up,     // thrown away
  other,       // making, where there are several
  onto_shelf,
  empty_bottle, // a number
  bottle,       // likewise, with what is in it
  dried,        // what is missing is water
  used,         // what is missing was used
  weaker,
  stronger,
  put_in, // so much water, or gum
};

constexpr PadList list_of(BinderPad) { return PadList::binder; }

}
