#include "colour/card.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>

namespace colour {

namespace {

constexpr double neutral = 14, alike = 3;     // chroma; between fields of one patch
constexpr double least_side = 3;              // fields
constexpr double largest_share = 0.06;        // of the photo
constexpr double least_apart = 12, most = 45; // in L*, the two greys
constexpr double may_be_bare = 6;             // L* and chroma from the paper
constexpr CardPlaces card = card_places;

struct Patch {
  Spot middle;
  double side = 0; // of a square of its area, in fields
  Lab look;
};

double square(double x) { return x * x; }

double far_apart(const Lab& one, const Lab& other) {
  return std::sqrt(square(one.l - other.l) + square(one.a - other.a) + square(one.b - other.b));
}

// Fields as they are taken, one patch after the other.
struct Ground {
  const Fields& fields;
  const std::vector<Lab>& looks;
  std::vector<char> taken;

  std::size_t at(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(fields.width) +
           static_cast<std::size_t>(x);
  }
  bool is_grey(int x, int y) const {
    const Lab& look = looks[at(x, y)];
    return look.l > 25 && look.l < 90 && chroma(look) < neutral;
  }
};

struct Sums {
  double n = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0, l = 0, a = 0, b = 0;
};

void add_field(Sums& s, int x, int y, const Lab& look) {
  s.n += 1;
  s.x += x;
  s.y += y;
  s.xx += static_cast<double>(x) * x;
  s.yy += static_cast<double>(y) * y;
  s.xy += static_cast<double>(x) * y;
  s.l += look.l;
  s.a += look.a;
  s.b += look.b;
}

// From field to field that look alike.
Sums grown_from(Ground& ground, int x, int y) {
  Sums sums;
  std::vector<std::pair<int, int>> ahead{{x, y}};
  ground.taken[ground.at(x, y)] = 1;
  while (!ahead.empty()) {
    const auto [i, j] = ahead.back();
    ahead.pop_back();
    const Lab& here = ground.looks[ground.at(i, j)];
    add_field(sums, i, j, here);
    for (const auto& [dx, dy] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      const int u = i + dx, v = j + dy;
      if (u < 0 || v < 0 || u >= ground.fields.width || v >= ground.fields.height) continue;
      const std::size_t next = ground.at(u, v);
      if (ground.taken[next] || !ground.is_grey(u, v)) continue;
      if (far_apart(here, ground.looks[next]) > alike) continue;
      ground.taken[next] = 1;
      ahead.push_back({u, v});
    }
  }
  return sums;
}

// A square on whichever corner it stands: each way it spreads as a square of its area does.
std::optional<Patch> as_square(const Sums& s) {
  if (s.n < square(least_side)) return std::nullopt;
  const double x = s.x / s.n, y = s.y / s.n;
  const double xx = s.xx / s.n - x * x + 1.0 / 12, yy = s.yy / s.n - y * y + 1.0 / 12;
  const double xy = s.xy / s.n - x * y;
  const double middle = (xx + yy) / 2, off = std::sqrt(square(xx - yy) / 4 + xy * xy);
  const double even = s.n / 12; // variance of a square of this area
  if (middle - off < 0.7 * even || middle + off > 1.45 * even) return std::nullopt;
  return Patch{{x + 0.5, y + 0.5}, std::sqrt(s.n), {s.l / s.n, s.a / s.n, s.b / s.n}};
}

std::vector<Patch> grey_squares(const Fields& fields, const std::vector<Lab>& looks) {
  Ground ground{fields, looks, std::vector<char>(looks.size(), 0)};
  const double largest = largest_share * static_cast<double>(looks.size());
  std::vector<Patch> out;
  for (int y = 0; y < fields.height; ++y)
    for (int x = 0; x < fields.width; ++x) {
      if (ground.taken[ground.at(x, y)] || !ground.is_grey(x, y)) continue;
      const Sums sums = grown_from(ground, x, y);
      const auto patch = as_square(sums);
      if (patch && sums.n < largest) out.push_back(*patch);
    }
  return out;
}

Spot middle_of(const Place& place) { return {place.x + place.w / 2, place.y + place.h / 2}; }

CardOnPhoto laid_by(const Patch& light, const Patch& dark, bool mirrored) {
  const Spot on = middle_of(card.light);
  const double mm = middle_of(card.dark).y - on.y;
  CardOnPhoto out;
  out.down = {(dark.middle.x - light.middle.x) / mm, (dark.middle.y - light.middle.y) / mm};
  const double turned = mirrored ? -1 : 1;
  out.right = {turned * out.down.y, -turned * out.down.x};
  out.fields_mm2 = square(out.down.x) + square(out.down.y);
  out.corner = {light.middle.x - on.x * out.right.x - on.y * out.down.x,
                light.middle.y - on.x * out.right.y - on.y * out.down.y};
  return out;
}

const Lab* look_at(const Fields& fields, const std::vector<Lab>& looks, const Spot& spot) {
  const int x = static_cast<int>(std::floor(spot.x)), y = static_cast<int>(std::floor(spot.y));
  if (x < 0 || y < 0 || x >= fields.width || y >= fields.height) return nullptr;
  return &looks[static_cast<std::size_t>(y) * static_cast<std::size_t>(fields.width) +
                static_cast<std::size_t>(x)];
}

// The middle of the place for bare paper is bare, and all corners of the field are on the photo.
bool stands(const Fields& fields, const std::vector<Lab>& looks, const CardOnPhoto& on) {
  const Spot white = middle_of(card.white);
  for (const double dx : {-2.5, 0.0, 2.5})
    for (const double dy : {-2.5, 0.0, 2.5}) {
      const Lab* look = look_at(fields, looks, on_photo(on, {white.x + dx, white.y + dy}));
      if (!look || far_apart(*look, {100, 0, 0}) > may_be_bare) return false;
    }
  constexpr double slack = 4; // a lens, or a card seen from the side
  const Place& field = card.paint;
  for (const double x : {field.x + slack, field.x + field.w - slack})
    for (const double y : {field.y + slack, field.y + field.h - slack})
      if (!look_at(fields, looks, on_photo(on, {x, y}))) return false;
  return true;
}

// The edge of a patch is no field of it: it seems up to two smaller than it is.
bool are_a_pair(const Patch& light, const Patch& dark, double fields_to_mm) {
  const double darker = light.look.l - dark.look.l;
  const double hue = std::hypot(light.look.a - dark.look.a, light.look.b - dark.look.b);
  if (darker < least_apart || darker > most || hue > neutral / 2) return false;
  const auto as_wide = [&](const Patch& patch) {
    const double side = card.light.w * fields_to_mm;
    return patch.side > 0.9 * side - 2.2 && patch.side < 1.12 * side;
  };
  return as_wide(light) && as_wide(dark);
}

}

Spot on_photo(const CardOnPhoto& on, Spot mm) {
  return {on.corner.x + mm.x * on.right.x + mm.y * on.down.x,
          on.corner.y + mm.x * on.right.y + mm.y * on.down.y};
}

Spot on_card(const CardOnPhoto& on, Spot field) {
  const double x = field.x - on.corner.x, y = field.y - on.corner.y;
  return {(x * on.right.x + y * on.right.y) / on.fields_mm2,
          (x * on.down.x + y * on.down.y) / on.fields_mm2};
}

std::vector<CardOnPhoto> find_cards(const Fields& fields, const std::vector<Lab>& looks,
                                    bool mirrored) {
  const std::vector<Patch> squares = grey_squares(fields, looks);
  std::vector<CardOnPhoto> out;
  for (const Patch& light : squares)
    for (const Patch& dark : squares) {
      if (&light == &dark) continue;
      const CardOnPhoto on = laid_by(light, dark, mirrored);
      if (are_a_pair(light, dark, std::sqrt(on.fields_mm2)) && stands(fields, looks, on))
        out.push_back(on);
    }
  return out;
}

}
