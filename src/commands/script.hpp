// A script of taps, read. Scripts come from anywhere: everything in them is bounded and checked
// before the first tap.
#pragma once

#include "bench/bench.hpp"
#include "bench/layout.hpp"
#include "commands/clock.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace commands {

inline constexpr std::size_t most_script_bytes = 4'000'000;
inline constexpr std::size_t longest_script_line = 1000;
inline constexpr double most_taps = 100'000;
inline constexpr double most_script_s = 1e7;

// One struct for each kind of line.
struct At { // at 2026-11-20T14:02:00+01:00
  Moment moment;
};
struct Shown { // display 218x136 [right]
  bench::Display display;
};
struct Seed { // seed 7
  std::uint32_t value = 0;
};
struct Named { // session c41e08d5 | device a83f
  enum What { session, device } what = session;
  std::string id;
};
struct Tapped { // tap PAD [xN] [every S]
  bench::PadId pad;
  int times = 1;
  std::int64_t every_ms = 600; // from press to press
};
struct Typed { // type 12.5
  std::string digits;
};
struct Written { // write name Some text | write search blu | write note Less water
  bench::PadId field;
  std::string text;
};
struct Waited { // wait 90 | wait 5m | wait 2h
  std::int64_t ms = 0;
};
struct Pressed { // key b | key Page Down
  std::string key;
};
struct Down { // down PAD
  bench::PadId pad;
};
struct Slide {}; // slide: off the pad
struct Up {};    // up
struct Stop {};  // stop: no goodbye, as if killed

using Action = std::variant<At, Shown, Seed, Named, Tapped, Typed, Written, Pressed, Waited, Down,
                            Slide, Up, Stop>;

struct ScriptLine {
  std::size_t number = 0; // 1 for the first
  Action action;
};

// Error: script_no_such_pad.
words::Result<bench::PadId> pad_of_name(const std::string& name);
// What to say of a pad that does not lie there now, with those that do.
words::Error not_there(const bench::PadId& pad, const bench::Layout& layout);

// Error: script_line with the line's number and what is wrong with it; script_too_long.
words::Result<std::vector<ScriptLine>> read_script(std::string_view text);

}
