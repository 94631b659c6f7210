// What each thing that is heard sounds like.
#pragma once

#include "bench/bench.hpp"
#include "window/waves.hpp"

namespace app {

window::Tone tone_of(bench::SoundCue cues);

}
