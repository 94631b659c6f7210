#include "app/tones.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdlib>
#include <numbers>

using bench::SoundCue;

namespace {

constexpr SoundCue all[] = {SoundCue::tap,         SoundCue::pigment,     SoundCue::binder,
                            SoundCue::water,       SoundCue::honey,       SoundCue::glycerin,
                            SoundCue::wetting_aid, SoundCue::not_counted, SoundCue::bell};

using Samples = std::vector<std::int16_t>;

Samples samples_of(SoundCue cues) { return window::wave(app::tone_of(cues)); }

// How strong each quarter tone from 80 Hz to 5 kHz is, as a direction of length 1.
std::vector<double> spectrum(const Samples& samples) {
  constexpr int steps = 144;
  std::vector<double> out(steps);
  double square = 0;
  for (int k = 0; k < steps; ++k) {
    const double turn = 2 * std::numbers::pi * 80 * std::exp2(k / 24.0) / window::samples_per_s;
    std::complex<double> sum = 0;
    for (std::size_t i = 0; i < samples.size(); ++i)
      sum += static_cast<double>(samples[i]) * std::polar(1.0, turn * static_cast<double>(i));
    out[k] = std::abs(sum);
    square += out[k] * out[k];
  }
  for (double& strength : out) strength /= std::sqrt(square);
  return out;
}

// 1: the same mixture of pitches; 0: none in common.
double likeness(SoundCue one, SoundCue other) {
  const auto a = spectrum(samples_of(one)), b = spectrum(samples_of(other));
  double sum = 0;
  for (std::size_t k = 0; k < a.size(); ++k) sum += a[k] * b[k];
  return sum;
}

}

TEST_CASE("clicks are short, the bell alone lingers") {
  for (const SoundCue cues : all) {
    const double s = app::tone_of(cues).seconds;
    CAPTURE(static_cast<int>(cues));
    CHECK(s >= 0.015);
    CHECK(s <= (cues == SoundCue::bell ? 2 : cues == SoundCue::not_counted ? 0.1 : 0.06));
  }
}

TEST_CASE("none is clipped, none begins or ends with a crack") {
  for (const SoundCue cues : all) {
    const Samples samples = samples_of(cues);
    CAPTURE(static_cast<int>(cues));
    int peak = 0;
    for (const std::int16_t s : samples) peak = std::max(peak, std::abs(static_cast<int>(s)));
    CHECK(peak < 32767);
    CHECK(peak > 32767 / 10);
    CHECK(std::abs(samples.front()) < 100);
    CHECK(std::abs(samples.back()) < 100);
  }
}

// Two of a semitone's distance and the same timbre are 0.99 alike, as the first line says.
TEST_CASE("each has its own mixture of pitches") {
  for (const SoundCue one : all)
    for (const SoundCue other : all) {
      if (one >= other) continue;
      CAPTURE(static_cast<int>(one));
      CAPTURE(static_cast<int>(other));
      const double l = likeness(one, other);
      MESSAGE(l);
      CHECK(l < 0.9);
    }
}
