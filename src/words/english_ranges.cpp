#include "words/ranges_says.hpp"

namespace words {

std::string_view english(RangesSay id) {
  using Say = RangesSay;
  switch (id) {
  case Say::range_wants: return "wants {0}, likely {1} to {2}";
  case Say::range_not_felt: return "Nobody has felt it here yet.";
  case Say::range_note: return "{0}, {1}: {2}";
  case Say::range_note_back: return "note before";
  case Say::range_note_on: return "next note";
  case Say::range_set_aside: return "leave this note out";
  case Say::range_take_in: return "count it again";
  case Say::range_left_out: return "left out";
  case Say::range_was: return "it was";
  case Say::range_to_all: return "all pigments";
  case Say::range_in_told:
    return "{0}: to every 10 g put {1} g, likely {2} to {3}, as another studio told; not felt here "
           "yet.";
  case Say::range_unfelt:
    return "{0}: to every 10 g put {1} g, likely {2} to {3}: a guess by its class, not felt here "
           "yet.";
  case Say::range_in_binder: return "{0}: to every 10 g put {1} g, likely {2} to {3}.";
  case Say::range_in_stronger:
    return "{0}: to every 10 g put {1} g, likely {2} to {3}; stronger than felt so far, so less "
           "sure.";
  case Say::range_in_thinner:
    return "{0}: to every 10 g put {1} g, likely {2} to {3}; thinner than felt so far, so less "
           "sure.";
  case Say::binder_stronger: return "stronger than felt so far";
  case Say::binder_thinner: return "thinner than felt so far";
  case Say::range_not_learnt: return "Not learnt anew: {0}";
  }
  return "";
}

}
