#include "paint/range/learn_bytes.hpp"
#include "session/ranges.hpp"

namespace paint {
extern const std::string_view untrained_json; // by browser_untrained_main.cpp, while this is built
}

namespace session {

const Ranges& untrained_ranges() {
  static const Ranges ranges{*paint::fit_from(paint::untrained_json), {}};
  return ranges;
}

}
