// Short sounds, made from a few numbers: two partials that die away.
#pragma once

#include <cstdint>
#include <vector>

namespace window {

inline constexpr int samples_per_s = 44100;

struct Tone {
  double hz = 440;       // 60 to 4,000
  double glide = 1;      // by what the pitch has changed at the end
  double partial = 2;    // of the second, over the first
  double colour = 0.3;   // how loud the second is, 0 to 1
  double seconds = 0.03; // to silence; 0.005 to 3
  double loudness = 0.5; // 0 to 1
};

// Mono, -32767 to 32767; begins and ends at silence.
std::vector<std::int16_t> wave(const Tone& tone);

}
