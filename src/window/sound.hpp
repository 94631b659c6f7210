// Sounds to whatever the system plays through (OpenAL Soft: PipeWire, PulseAudio, ALSA; in a
// browser Web Audio). Where there is nothing to play through, silence, and no word of it: eyes and
// hands do without.
#pragma once

#include "window/waves.hpp"

#include <memory>

namespace window {

class Sound {
public:
  // Begins to look for a device on a thread of its own. Sets environment variables: comes before
  // every other thread.
  Sound();
  ~Sound();
  Sound(const Sound&) = delete;
  Sound& operator=(const Sound&) = delete;

  // Returns at once. What comes while no device is there yet is not caught up with.
  void play(const Tone& tone);

private:
  struct Player;
  std::unique_ptr<Player> player_;
};

}
