#include "window/waves.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace window {

namespace {

constexpr double attack_s = 0.0015, release_s = 0.004;
constexpr double fallen = 5; // e-foldings from the first sample to the last

// Rises and falls as half a cosine, so that neither end is heard as a crack.
double ramp(double share) {
  return 0.5 - 0.5 * std::cos(std::numbers::pi * std::clamp(share, 0.0, 1.0));
}

}

std::vector<std::int16_t> wave(const Tone& tone) {
  const auto count = static_cast<std::size_t>(std::lround(tone.seconds * samples_per_s));
  std::vector<std::int16_t> out(count);
  double turns = 0; // of the first partial
  for (std::size_t i = 0; i < count; ++i) {
    const double t = static_cast<double>(i) / samples_per_s, share = t / tone.seconds;
    const double second = std::exp(-fallen * share * 1.6) * tone.colour;
    const double sum = std::sin(2 * std::numbers::pi * turns) +
                       second * std::sin(2 * std::numbers::pi * turns * tone.partial);
    const double ends = ramp(t / attack_s) * ramp((tone.seconds - t) / release_s);
    const double level = tone.loudness * std::exp(-fallen * share) * ends / (1 + tone.colour);
    out[i] = static_cast<std::int16_t>(std::lround(32767 * level * sum));
    turns += tone.hz * std::pow(tone.glide, share) / samples_per_s;
  }
  return out;
}

}
