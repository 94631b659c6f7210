#include "commands/measured.hpp"

#include <algorithm>
#include <cmath>

namespace commands {

std::uint32_t on_screen(const colour::Lab& d65) {
  const colour::Three linear =
      colour::times(colour::inverse(colour::srgb_to_xyz_d65()), colour::xyz(d65, colour::d65));
  std::uint32_t rgb = 0;
  for (const double each : linear) {
    const long level = std::lround(255 * colour::linear_to_srgb(std::clamp(each, 0.0, 1.0)));
    rgb = rgb << 8 | static_cast<std::uint32_t>(level);
  }
  return rgb;
}

session::Measured measured_of(const colour::Reading& r) {
  const colour::Three sd = colour::uncertainty(r);
  const auto as_kept = [](double value) { return std::round(value * 100) / 100; };
  // Its own part may be a few hundredths, where what is shared is one or two.
  const auto finely = [](double value) { return std::round(value * 1000) / 1000; };
  const auto own = [&](std::size_t i) { return finely(std::sqrt(r.own[i][i])); };
  const colour::Three& white = r.shared[static_cast<std::size_t>(colour::Shared::white)];
  session::Measured m{on_screen(r.d65), as_kept(r.d50.l), as_kept(r.d50.a), as_kept(r.d50.b),
                      as_kept(sd[0]),   as_kept(sd[1]),   as_kept(sd[2])};
  m.parts = {own(0), own(1), own(2), finely(white[0]), finely(white[1]), finely(white[2])};
  return m;
}

}
