#include "app/tones.hpp"

namespace app {

// Thin liquids drip upwards, thick ones sink; powder is a dull knock, the bell has a bell's third
// partial. The numbers are from memory.
window::Tone tone_of(bench::SoundCue cues) {
  using bench::SoundCue;
  switch (cues) {
  case SoundCue::pigment: return {233, 0.8, 1.6, 0.7, 0.055, 0.7};
  case SoundCue::binder: return {587, 1.25, 2, 0.25, 0.05, 0.5};
  case SoundCue::water: return {880, 1.6, 2, 0.1, 0.045, 0.45};
  case SoundCue::honey: return {392, 0.7, 2, 0.35, 0.06, 0.55};
  case SoundCue::glycerin: return {494, 0.85, 3, 0.3, 0.055, 0.5};
  case SoundCue::wetting_aid: return {1175, 1.2, 2.4, 0.3, 0.04, 0.4};
  case SoundCue::not_counted: return {147, 0.75, 2.9, 0.8, 0.09, 0.9};
  case SoundCue::bell: return {784, 1, 2.76, 0.6, 1.4, 0.7};
  case SoundCue::tap: break;
  }
  return {1976, 1, 1.5, 0.2, 0.018, 0.25};
}

}
