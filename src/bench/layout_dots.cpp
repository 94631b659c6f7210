#include "bench/layout_parts.hpp"
#include "bench/pads_shared.hpp"

#include <algorithm>

namespace bench {

void add_dot_photos(const Bench& bench, const session::TrailView& trail, const Size& pad,
                    Layout& layout) {
  std::vector<session::TrailPhoto> shown;
  for (const session::TrailPhoto& photo : trail.photos)
    if (photo.clock >= trail.from && photo.clock <= trail.to) shown.push_back(photo);
  if (!bench.photos.there || shown.empty()) return;
  Rect& main = layout.main;
  main.w -= pad.w + gap_mm;
  const session::TimeScale time =
      session::time_scale(trail.points, trail.from, trail.to, trail.whole, main.y, main.bottom());
  double below = main.bottom() + gap_mm;
  for (auto photo = shown.rbegin(); photo != shown.rend(); ++photo) {
    const double lowest = below - gap_mm - pad.h;
    if (lowest < main.y) return;
    const double y = std::clamp(time.y(photo->clock) - pad.h / 2, main.y, lowest);
    add(layout, SharedPad::dot_photo, {main.right() + gap_mm, y, pad.w, pad.h}, key_of(photo->of));
    below = y;
  }
}

}
