// What is told beside the trail, in order: runs of additions, feel notes, dots, troubles, and when
// the paint left the slab.
#pragma once

#include "session/batch.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace paper {

struct Put {};     // one or more additions of one material, with nothing told between them
struct OffSlab {}; // off the slab
using Sign = std::variant<Put, OffSlab, session::Feel, session::Specks, session::TroubleKind>;

struct TimelineItem {
  session::Ref line; // the last one it speaks of
  session::Clock clock = 0;
  std::int64_t at = 0;
  std::optional<double> flow; // just after it
  Sign sign;
  std::string words;
};

std::vector<TimelineItem> timeline(const session::Batch& batch);

}
