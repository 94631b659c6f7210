#include "window/sound.hpp"

extern "C" void slabside_play(const std::int16_t* samples, int count, int rate); // browser_page.js

namespace window {

struct Sound::Player {};

Sound::Sound() = default;
Sound::~Sound() = default;

void Sound::play(const Tone& tone) {
  const auto samples = wave(tone);
  slabside_play(samples.data(), static_cast<int>(samples.size()), samples_per_s);
}

}
