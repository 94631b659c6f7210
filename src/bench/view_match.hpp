// Whether two batches are of one colour, and what in them differs that may be why.
#pragma once

#include "colour/match.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bench {

struct MatchView {
  struct Of {
    std::string batch, name, image; // image: of the photo that was read
    std::uint32_t colour = 0;
    std::int64_t made_at = 0; // ms since 1970
    std::optional<int> offset_min;
  };
  // What makers blame, of the later one against the earlier one.
  struct Blame {
    enum What { binder, gum, sweet, minutes, passes, lot, age };
    What what = binder;
    std::string name;   // lot: of what
    double by = 0;      // binder, gum, sweet: relative; minutes; passes; age: days of the binder
    double unusual = 0; // against how much it differs here from batch to batch; lot: 0
  };
  Of a, b;             // a was begun before b
  colour::Match match; // of b against a
  colour::Taken taken = colour::Taken::two_photos;
  std::size_t repeats = 0;  // photos of a paint read before, that the doubt rests on
  std::vector<Blame> blame; // the most unusual first
};

}
