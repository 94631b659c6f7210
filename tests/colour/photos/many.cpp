#include "colour/photos/many.hpp"

#include "colour/propose.hpp"
#include "colour/scene.hpp"
#include "studio/photo_pixels.hpp"

#include <cmath>
#include <optional>

namespace scene {

namespace {

using colour::Box;
using colour::Lab;

constexpr Box left{40, 70, 90, 100}, right{190, 70, 90, 100};

Lab any_paint(Dice& dice) {
  for (;;) {
    const double chroma = dice.even(0, 60), hue = dice.even(0, 6.283185307);
    const Lab lab{dice.even(22, 85), chroma * std::cos(hue), chroma * std::sin(hue)};
    if (can_be_painted(lab) && colour::difference(lab, {100, 0, 0}) > 8) return lab;
  }
}

// None, some or a clear difference.
Lab another(const Lab& one, Dice& dice) {
  const double size = dice.even(0, 1) < 0.2 ? 0 : dice.even(0, 4);
  for (;;) {
    const Lab lab{one.l + size * dice.normal(), one.a + size * dice.normal(),
                  one.b + size * dice.normal()};
    if (can_be_painted(lab) && colour::difference(lab, {100, 0, 0}) > 8) return lab;
  }
}

// The four things that are said to be unknown of a camera are as wide as they are said to be.
Camera any_camera(Dice& dice) {
  Camera c;
  c.exposure = dice.even(0.45, 0.8);
  c.across = dice.even(-0.2, 0.2);
  c.down = dice.even(-0.2, 0.2);
  c.bow = -std::abs(0.06 * dice.normal());
  c.white = {std::exp(0.12 * dice.normal()), 1, std::exp(0.2 * dice.normal())};
  const double most = std::max({c.white[0], c.white[2], 1.0});
  for (double& w : c.white) w /= most;
  c.white_way = dice.even(0, 1);
  c.curve = 0.03 * dice.normal();
  c.liveliness = 0.03 * dice.normal();
  c.black = 0.004 * dice.normal();
  c.read_noise = dice.even(0.001, 0.004);
  c.shot_noise = dice.even(0.004, 0.02);
  c.blur = dice.whole(0, 2);
  c.orientation = dice.whole(1, 8);
  return c;
}

std::optional<colour::Photo> taken(const std::vector<Swatch>& swatches, Dice& dice) {
  Table table;
  table.swatches = swatches;
  for (double& p : table.paper) p *= 1 - std::abs(0.02 * dice.normal());
  const Camera camera = any_camera(dice);
  const int quality = dice.whole(0, 2) == 0 ? 85 : 60;
  auto photo = studio::read_photo(jpeg_of(photograph(table, camera, dice), quality));
  return photo ? std::optional(*std::move(photo)) : std::nullopt;
}

std::optional<colour::Reading> read(const colour::Photo& photo, const Box& swatch, bool proposed) {
  colour::Regions regions{inside(swatch, 10), paper_around(swatch, 6, 24)};
  if (proposed) {
    const auto found = colour::propose_regions(photo);
    for (const colour::Regions& r : found)
      if (colour::overlap(r.swatch, inside(swatch, 30))) regions = r;
    if (found.empty()) return std::nullopt;
  }
  const auto reading = colour::read_swatch(photo, regions);
  return reading ? std::optional(*reading) : std::nullopt;
}

using Pair = std::pair<std::optional<colour::Reading>, std::optional<colour::Reading>>;

Pair read_both(colour::Taken how, const Lab& one, const Lab& other, bool proposed, Dice& dice) {
  if (how == colour::Taken::one_photo) {
    const auto photo = taken({{left, one}, {right, other}}, dice);
    if (!photo) return {};
    return {read(*photo, left, proposed), read(*photo, right, proposed)};
  }
  const auto first = taken({{left, one}}, dice), second = taken({{right, other}}, dice);
  if (!first || !second) return {};
  return {read(*first, left, proposed), read(*second, right, proposed)};
}

}

Held many(colour::Taken how, int pairs, std::uint64_t seed, bool proposed) {
  Held held;
  held.photos = pairs;
  for (int i = 0; i < pairs; ++i) {
    Dice dice(seed + static_cast<std::uint64_t>(i));
    const Lab one = any_paint(dice), other = another(one, dice);
    const auto [first, second] = read_both(how, one, other, proposed, dice);
    if (!first || !second) continue;
    const colour::Match match = colour::match(*first, *second, how);
    const double truth = colour::difference(one, other);
    held.told += 1;
    held.below += truth < match.low;
    held.above += truth > match.high;
    held.held += truth >= match.low && truth <= match.high;
    held.wide += match.high - match.low;
  }
  held.wide /= std::max(1, held.told);
  return held;
}

}
