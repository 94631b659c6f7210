#include "bench/photo_regions.hpp"

#include "bench/act.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr double thumb_mm = 6; // around a region a thumb still finds it
// Under 12 pixels wide or 400 in all nothing is read, and large photos are made smaller for it.
int least_px(const ImageFacts& facts) {
  return std::max(24, std::max(facts.width, facts.height) / 100);
}
constexpr double most_of_picture = 0.8; // a swatch with bare paper around it fills no more

int whole(double value) { return static_cast<int>(std::lround(value)); }

// Within the picture, whole.
colour::Box kept_within(colour::Box box, const ImageFacts& facts) {
  const int least = least_px(facts);
  const auto side = [least](int of_box, int of_picture) {
    const int most = std::max(whole(most_of_picture * of_picture), std::min(least, of_picture));
    return std::clamp(of_box, std::min(least, most), most);
  };
  box.width = side(box.width, facts.width);
  box.height = side(box.height, facts.height);
  box.x = std::clamp(box.x, 0, facts.width - box.width);
  box.y = std::clamp(box.y, 0, facts.height - box.height);
  return box;
}

colour::Box box_of(const session::PhotoPart& p) {
  return {static_cast<int>(p.x), static_cast<int>(p.y), static_cast<int>(p.width),
          static_cast<int>(p.height)};
}

session::PhotoPart part_of(const colour::Box& b) { return {b.x, b.y, b.width, b.height}; }

// Nobody has proposed anything.
std::vector<colour::Box> in_the_middle(const ImageFacts& facts) {
  const int w = facts.width / 4, h = facts.height / 4;
  const colour::Box paint{(facts.width - w) / 2, (facts.height - h) / 2, w, h};
  const colour::Box paper{facts.width / 16, paint.y, w / 2, h};
  return {kept_within(paint, facts), kept_within(paper, facts)};
}

double away(const Rect& r, Point p) {
  const double x = std::max({r.x - p.x, 0.0, p.x - r.right()});
  const double y = std::max({r.y - p.y, 0.0, p.y - r.bottom()});
  return std::hypot(x, y);
}

// The nearest within reach of a thumb; of those that are as near, the smallest.
std::optional<std::size_t> region_at(const PhotosState& state, const Rect& place, Point at) {
  std::optional<std::size_t> best;
  double nearest = thumb_mm, area = 0;
  for (std::size_t i = 0; i < state.regions.size(); ++i) {
    const Rect r = on_glass(state.regions[i], *state.facts, place);
    const double d = away(r, at);
    if (d > nearest || (best && d == nearest && r.w * r.h >= area)) continue;
    best = i;
    nearest = d;
    area = r.w * r.h;
  }
  return best;
}

void put_middle(PhotosState& state, const Rect& place, Point at) {
  colour::Box& box = state.regions[state.region];
  const double scale = state.facts->width / place.w;
  box.x = whole((at.x - place.x) * scale - box.width / 2.0);
  box.y = whole((at.y - place.y) * scale - box.height / 2.0);
  box = kept_within(box, *state.facts);
  state.reading.reset();
  state.at_fault.clear();
}

// Of two swatches, a tap on the one that has no frame takes all frames there.
bool take_other(PhotosState& state, const Rect& place, Point at) {
  const ImageFacts& facts = *state.facts;
  const auto lies_on = [&](const colour::Box& box) {
    return on_glass(box, facts, place).contains(at);
  };
  if (facts.others.empty() || std::any_of(state.regions.begin(), state.regions.end(), lies_on))
    return false;
  for (const std::vector<colour::Box>& found : {facts.regions, facts.others}) {
    if (!lies_on(found.front())) continue;
    state.regions = found;
    state.region = 0;
    state.reading.reset();
    state.at_fault.clear();
    return true;
  }
  return false;
}

void take_hold(PhotosState& state, const Rect& place, const Pointer& pointer) {
  if (!take_other(state, place, pointer.at)) {
    if (const auto there = region_at(state, place, pointer.at))
      state.region = *there;
    else
      put_middle(state, place, pointer.at);
  }
  const Point middle = on_glass(state.regions[state.region], *state.facts, place).centre();
  state.hold = {pointer.finger, {middle.x - pointer.at.x, middle.y - pointer.at.y}};
}

}

session::ReadAt written_down(const std::vector<colour::Box>& regions) {
  session::ReadAt at;
  at.paint = part_of(regions.front());
  for (std::size_t i = 1; i < regions.size(); ++i) at.paper.push_back(part_of(regions[i]));
  return at;
}

std::vector<colour::Box> regions_at_first(const session::Photo& photo, const ImageFacts& facts) {
  if (!photo.read_at) return facts.regions.empty() ? in_the_middle(facts) : facts.regions;
  std::vector<colour::Box> out{kept_within(box_of(photo.read_at->paint), facts)};
  for (const session::PhotoPart& paper : photo.read_at->paper)
    out.push_back(kept_within(box_of(paper), facts));
  return out;
}

void choose_region(PhotosState& state, bool paper) {
  if (!paper || state.regions.size() < 2)
    state.region = 0;
  else
    state.region = state.region + 1 < state.regions.size() ? state.region + 1 : 1;
}

void scale_region(PhotosState& state, double by) {
  if (!state.facts || state.region >= state.regions.size()) return;
  colour::Box& box = state.regions[state.region];
  const int w = whole(box.width * by), h = whole(box.height * by);
  box =
      kept_within({box.x + (box.width - w) / 2, box.y + (box.height - h) / 2, w, h}, *state.facts);
  state.reading.reset();
  state.at_fault.clear();
}

bool move_region(Bench& bench, const Pointer& pointer) {
  PhotosState& state = bench.photos;
  const bool ends = pointer.phase != Pointer::down && pointer.phase != Pointer::move;
  if (ends && state.hold && state.hold->finger == pointer.finger) {
    state.hold.reset();
    return bench.screen == Screen::photos;
  }
  const bool movable = bench.screen == Screen::photos && state.page == PhotosPage::open &&
                       state.facts && !state.waits && state.region < state.regions.size();
  if (!movable || bench.locked) return false;
  const Rect place = place_of_picture(*state.facts, layout(bench).main);
  if (pointer.phase == Pointer::down) {
    if (!place.contains(pointer.at)) return false;
    if (!state.hold) take_hold(state, place, pointer);
    return true; // a second finger there moves nothing
  }
  if (!state.hold || state.hold->finger != pointer.finger) return false;
  const Point by = state.hold->from;
  put_middle(state, place, {pointer.at.x + by.x, pointer.at.y + by.y});
  return true;
}

}
