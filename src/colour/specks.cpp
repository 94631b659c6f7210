#include "colour/specks.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace colour {

namespace {

constexpr int largest_side = 1200; // fields along the region; finer ones are put together
constexpr float least_step = 3;    // of L*
constexpr float scatters = 5;
constexpr double few_from = 1, many_from = 20; // per cm2, see the header

struct Plane { // of L*, and whatever else has a value for each field
  int width = 0, height = 0;
  std::vector<float> at;

  std::size_t index(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
           static_cast<std::size_t>(x);
  }
};

float lightness(const Photo& photo, int left, int top, int side) {
  const auto& linear = photo.encoding.linear;
  const Three& weights = photo.encoding.to_xyz_d50[1];
  double sum = 0;
  for (int y = top; y < top + side; ++y) {
    const std::uint8_t* at =
        &photo.rgb[3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width) +
                        static_cast<std::size_t>(left))];
    for (int x = 0; x < side; ++x, at += 3)
      for (std::size_t i = 0; i < 3; ++i) sum += weights[i] * static_cast<double>(linear[i][at[i]]);
  }
  return static_cast<float>(lab({d50[0], sum / (side * side), d50[2]}, d50).l);
}

Plane plane_of(const Photo& photo, const Box& box, int side) {
  Plane out{box.width / side, box.height / side, {}};
  out.at.reserve(static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height));
  for (int y = 0; y < out.height; ++y)
    for (int x = 0; x < out.width; ++x)
      out.at.push_back(lightness(photo, box.x + x * side, box.y + y * side, side));
  return out;
}

// Sums over all fields above and to the left, with an empty row and column before the first.
std::vector<double> summed(const Plane& plane) {
  const auto width = static_cast<std::size_t>(plane.width) + 1;
  std::vector<double> out(width * (static_cast<std::size_t>(plane.height) + 1), 0);
  for (int y = 0; y < plane.height; ++y) {
    double row = 0;
    for (int x = 0; x < plane.width; ++x) {
      row += static_cast<double>(plane.at[plane.index(x, y)]);
      const std::size_t here =
          (static_cast<std::size_t>(y) + 1) * width + static_cast<std::size_t>(x) + 1;
      out[here] = out[here - width] + row;
    }
  }
  return out;
}

double in_box(const std::vector<double>& sums, int width, int left, int top, int right,
              int bottom) {
  const auto at = [&](int x, int y) {
    return sums[static_cast<std::size_t>(y) * (static_cast<std::size_t>(width) + 1) +
                static_cast<std::size_t>(x)];
  };
  return at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top);
}

// Each field's neighbours' mean, of those that count.
Plane mean_around(const Plane& plane, const Plane& counts, int reach) {
  Plane weighed = plane;
  for (std::size_t i = 0; i < weighed.at.size(); ++i) weighed.at[i] *= counts.at[i];
  const std::vector<double> sums = summed(weighed), counted = summed(counts);
  Plane out = plane;
  for (int y = 0; y < plane.height; ++y)
    for (int x = 0; x < plane.width; ++x) {
      const int left = std::max(0, x - reach), right = std::min(plane.width, x + reach + 1);
      const int top = std::max(0, y - reach), bottom = std::min(plane.height, y + reach + 1);
      const double count = in_box(counted, plane.width, left, top, right, bottom);
      if (count > 0)
        out.at[plane.index(x, y)] =
            static_cast<float>(in_box(sums, plane.width, left, top, right, bottom) / count);
    }
  return out;
}

// Of sizes; some thousands spread over all say enough.
float middle_size(const Plane& off) {
  std::vector<float> sizes;
  const std::size_t step = std::max<std::size_t>(1, off.at.size() / 4001);
  for (std::size_t i = 0; i < off.at.size(); i += step) sizes.push_back(std::abs(off.at[i]));
  const auto half = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
  std::nth_element(sizes.begin(), half, sizes.end());
  return *half;
}

float scatter_of(const Plane& off) { return 1.4826F * middle_size(off); }

// What differs from the paint around: once with all of it around, then without what differed.
Plane off_from_around(const Plane& plane, float& limit) {
  Plane counts = plane;
  std::fill(counts.at.begin(), counts.at.end(), 1.0F);
  const Plane smooth = mean_around(plane, counts, 1); // noise of single pixels
  const int reach = std::max(8, std::min(plane.width, plane.height) / 16);
  Plane off = smooth;
  for (int round = 0; round < 3; ++round) {
    const Plane around = mean_around(smooth, counts, reach);
    for (std::size_t i = 0; i < off.at.size(); ++i) off.at[i] = smooth.at[i] - around.at[i];
    limit = std::max(least_step, scatters * scatter_of(off));
    for (std::size_t i = 0; i < off.at.size(); ++i)
      counts.at[i] = std::abs(off.at[i]) > limit / 2 ? 0.0F : 1.0F;
  }
  return off;
}

struct Patch {
  int left = 0, right = 0, top = 0, bottom = 0;
  double area = 0, sum_x = 0, sum_y = 0;
};

// All of one sign that touch, corners too; they are taken out of the plane.
Patch take_patch(Plane& off, int x, int y, float limit) {
  const float sign = off.at[off.index(x, y)] > 0 ? 1.0F : -1.0F;
  Patch patch{x, x, y, y, 0, 0, 0};
  std::vector<std::pair<int, int>> ahead{{x, y}};
  while (!ahead.empty()) {
    const auto [i, j] = ahead.back();
    ahead.pop_back();
    if (i < 0 || j < 0 || i >= off.width || j >= off.height) continue;
    float& here = off.at[off.index(i, j)];
    if (here * sign <= limit) continue;
    here = 0;
    patch.left = std::min(patch.left, i);
    patch.right = std::max(patch.right, i);
    patch.top = std::min(patch.top, j);
    patch.bottom = std::max(patch.bottom, j);
    patch.area += 1;
    patch.sum_x += i;
    patch.sum_y += j;
    for (int dy = -1; dy <= 1; ++dy)
      for (int dx = -1; dx <= 1; ++dx)
        if (dx != 0 || dy != 0) ahead.push_back({i + dx, j + dy});
  }
  return patch;
}

bool is_speck(const Patch& patch, double longest) {
  const double wide = patch.right - patch.left + 1, high = patch.bottom - patch.top + 1;
  const double longer = std::max(wide, high), shorter = std::min(wide, high);
  return patch.area >= 3 && longer <= longest && longer <= 3 * shorter &&
         patch.area >= 0.4 * wide * high;
}

Specked word_of(double per_cm2) {
  return per_cm2 < few_from ? Specked::none : per_cm2 < many_from ? Specked::few : Specked::many;
}

}

tl::expected<Specks, Uncounted> count_specks(const Photo& photo, const Box& paint,
                                             std::optional<double> pixels_per_mm) {
  if (!lies_in(paint, photo)) return tl::make_unexpected(Uncounted::outside);
  const Box box = as_stored(paint, photo);
  if (std::min(box.width, box.height) < 40) return tl::make_unexpected(Uncounted::too_small);
  const int side = std::max(1, (std::max(box.width, box.height) + largest_side - 1) / largest_side);
  const Plane plane = plane_of(photo, box, side);
  constexpr float of_level_6 = 1.64F; // its L*
  if (middle_size(plane) < of_level_6) return tl::make_unexpected(Uncounted::too_dark);
  float limit = 0;
  Plane off = off_from_around(plane, limit);
  Specks out;
  const double longest = std::max(4, std::min(plane.width, plane.height) / 12);
  for (int y = 0; y < off.height; ++y)
    for (int x = 0; x < off.width; ++x) {
      if (std::abs(off.at[off.index(x, y)]) <= limit) continue;
      const Patch patch = take_patch(off, x, y, limit);
      if (!is_speck(patch, longest)) continue;
      const Box here =
          as_upright({box.x + static_cast<int>(patch.sum_x / patch.area) * side,
                      box.y + static_cast<int>(patch.sum_y / patch.area) * side, side, side},
                     photo);
      const double across = 2 * std::sqrt(patch.area / std::numbers::pi);
      out.found.push_back(
          {here.x + here.width / 2.0, here.y + here.height / 2.0, across * side * photo.shrunk});
    }
  const double count = static_cast<double>(out.found.size());
  if (pixels_per_mm) {
    const double mm2 =
        paint.width * static_cast<double>(paint.height) / (*pixels_per_mm * *pixels_per_mm);
    out.per_cm2 = count / mm2 * 100;
  }
  out.as_word = word_of(out.per_cm2.value_or(count));
  return out;
}

}
