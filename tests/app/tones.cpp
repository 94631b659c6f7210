#include "app/tones.hpp"

#include <doctest/doctest.h>

#include <cmath>

using bench::Heard;

TEST_CASE("every sound is short and differs from every other") {
  constexpr Heard all[] = {Heard::tap,         Heard::pigment,     Heard::binder,
                           Heard::water,       Heard::honey,       Heard::glycerin,
                           Heard::wetting_aid, Heard::not_counted, Heard::bell};
  for (const Heard one : all) {
    const window::Tone a = app::tone_of(one);
    CHECK(a.seconds < (one == Heard::bell ? 2 : 0.1));
    for (const Heard other : all) {
      if (one == other) continue;
      const window::Tone b = app::tone_of(other);
      // A semitone and a half apart, where they begin or where they end.
      const double begins = std::abs(std::log2(a.hz / b.hz)) * 12;
      const double ends = std::abs(std::log2(a.hz * a.glide / (b.hz * b.glide))) * 12;
      CHECK(std::max(begins, ends) > 1.5);
    }
  }
}
