#include "colour/fields.hpp"

#include <algorithm>

namespace colour {

namespace {

Three field(const Photo& photo, int left, int top, int side) {
  const auto& linear = photo.encoding.linear;
  const int step = (side + 7) / 8;
  Three sum{};
  int count = 0;
  for (int y = top; y < top + side; y += step)
    for (int x = left; x < left + side; x += step, ++count) {
      const std::uint8_t* at =
          &photo.rgb[3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width) +
                          static_cast<std::size_t>(x))];
      for (std::size_t i = 0; i < 3; ++i) sum[i] += static_cast<double>(linear[i][at[i]]);
    }
  for (double& s : sum) s /= count;
  return sum;
}

}

Fields fields_of(const Photo& photo, int most) {
  Fields out;
  out.side = std::max(1, (std::max(photo.width, photo.height) + most - 1) / most);
  out.width = photo.width / out.side;
  out.height = photo.height / out.side;
  for (int y = 0; y < out.height; ++y)
    for (int x = 0; x < out.width; ++x)
      out.light.push_back(field(photo, x * out.side, y * out.side, out.side));
  return out;
}

}
