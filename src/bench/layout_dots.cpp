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
  const double step = pad.h + gap_mm;
  const auto room = static_cast<std::size_t>((main.h + gap_mm) / step);
  std::size_t before = std::min(room, shown.size()); // that still have to lie above
  double below = main.bottom() + gap_mm;
  for (auto photo = shown.rbegin(); before > 0; ++photo) {
    const double highest = main.y + static_cast<double>(--before) * step;
    const double y = std::clamp(time.y(photo->clock) - pad.h / 2, highest, below - step);
    add(layout, SharedPad::dot_photo, {main.right() + gap_mm, y, pad.w, pad.h}, key_of(photo->of));
    below = y;
  }
}

}
