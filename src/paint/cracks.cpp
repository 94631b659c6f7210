#include "paint/cracks.hpp"

#include <algorithm>

namespace paint {

namespace {

constexpr double deep_mm = 6;
constexpr double fast_h = 8;

}

std::vector<LikelyCause> crack_causes(const Cracked& known) {
  std::vector<LikelyCause> out{{CrackCause::deep_layer, known.layer_mm > deep_mm}};
  if (known.gum == GumState::too_much)
    out.push_back({CrackCause::much_gum, true});
  else
    out.push_back({CrackCause::little_gum, known.gum == GumState::too_little});
  out.push_back({CrackCause::too_hard, known.index > 0 && known.index < known.hard_below});
  out.push_back({CrackCause::dried_fast, known.firm_h > 0 && known.firm_h < fast_h});
  std::stable_partition(out.begin(), out.end(), [](const LikelyCause& c) { return c.seen; });
  return out;
}

}
