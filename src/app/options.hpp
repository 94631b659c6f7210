// What the window and the pictures are told on the command line.
#pragma once

#include "app/parse.hpp"
#include "bench/bench.hpp"
#include "commands/clock.hpp"
#include "disk/faulty.hpp"
#include "words/error.hpp"

#include <optional>
#include <string>
#include <vector>

namespace app {

// Errors of both: those of commands::parse, option_bad_value, option_missing. Of the window:
// no_such_file, pack_or_studio; of a picture: wrong_tap.

struct WindowOptions {
  std::optional<std::string> studio; // else ~/Slabside
  std::optional<std::string> pack;   // a packed studio, to be opened instead
  window::Extent size{1280, 800};
  std::optional<bench::Size> mm;           // how large the window is on the real display
  std::optional<bench::Hand> hand;         // else as this tablet has it
  std::optional<words::Language> language; // likewise, else as the system is set
  bool night = false;
  bool full_screen = false;
  bool as_studio = false; // whatever lay under that name before
  bool report = false;    // says on stdout what happens, for tests
  std::optional<disk::Fault> fault;
};
words::Result<WindowOptions> window_options(const std::vector<std::string>& given);

struct PictureOptions {
  bench::Screen screen = bench::Screen::slab;
  std::optional<std::string> studio;
  std::optional<std::string> batch;   // as commands::find_batch; else the last, or the list of all
  std::optional<commands::Moment> at; // else now
  window::Extent size{1280, 800};
  bench::Size mm{218, 136};
  bench::Hand hand = bench::Hand::left;
  bool night = false;
  std::vector<bench::PadId> taps; // before it is taken
  std::string out;
};
// Of --taps the one that so many stand before.
words::Error wrong_tap(std::size_t before, const words::Error& why);
words::Result<PictureOptions> picture_options(const std::vector<std::string>& given);

}
