// What fingers on the glass are in the middle of.
#pragma once

#include "bench/layout.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace bench {

struct Touch {
  struct Press {
    PadId pad;
    Rect box;
    std::int64_t since_ms = 0;
    int finger = 0;
    bool slid = false;
    bool operator==(const Press&) const = default;
  };
  std::optional<Press> press;
  struct Release {
    PadId pad;
    std::int64_t ms = 0;
    std::uint64_t poll = 0;
  };
  std::optional<Release> last;
  struct Drag { // of the list under the finger
    ListArea list;
    Point from, to;
    double way_mm = 0;   // that the finger went from one to the other
    double mm_per_s = 0; // down the glass
    double since_sped_mm = 0;
    std::int64_t since_ms = 0, sped_ms = 0;
    int finger = 0;
    bool pulls = false; // else it may still become a tap
  };
  std::optional<Drag> drag;
  struct Contact {
    int finger = 0;
    std::int64_t ms = 0; // when it was last heard of
  };
  std::vector<Contact> contacts; // on the glass
};

}
