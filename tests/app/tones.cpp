#include "app/tones.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdlib>
#include <numbers>

using bench::Heard;

namespace {

constexpr Heard all[] = {Heard::tap,         Heard::pigment,     Heard::binder,
                         Heard::water,       Heard::honey,       Heard::glycerin,
                         Heard::wetting_aid, Heard::not_counted, Heard::bell};

using Samples = std::vector<std::int16_t>;

Samples samples_of(Heard heard) { return window::wave(app::tone_of(heard)); }

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
double likeness(Heard one, Heard other) {
  const auto a = spectrum(samples_of(one)), b = spectrum(samples_of(other));
  double sum = 0;
  for (std::size_t k = 0; k < a.size(); ++k) sum += a[k] * b[k];
  return sum;
}

}

TEST_CASE("clicks are short, the bell alone lingers") {
  for (const Heard heard : all) {
    const double s = app::tone_of(heard).seconds;
    CAPTURE(static_cast<int>(heard));
    CHECK(s >= 0.015);
    CHECK(s <= (heard == Heard::bell ? 2 : heard == Heard::not_counted ? 0.1 : 0.06));
  }
}

TEST_CASE("none is clipped, none begins or ends with a crack") {
  for (const Heard heard : all) {
    const Samples samples = samples_of(heard);
    CAPTURE(static_cast<int>(heard));
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
  for (const Heard one : all)
    for (const Heard other : all) {
      if (one >= other) continue;
      CAPTURE(static_cast<int>(one));
      CAPTURE(static_cast<int>(other));
      const double l = likeness(one, other);
      MESSAGE(l);
      CHECK(l < 0.9);
    }
}
