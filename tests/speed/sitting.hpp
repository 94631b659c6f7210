// An invented sitting at a bench without a window: what the measurements are made on.
#pragma once

#include "bench/view.hpp"

#include <string>
#include <vector>

namespace speed {

inline constexpr bench::Size tablet_mm{218, 136};

struct Sitting {
  std::int64_t wall = 1795617120000; // 2026-11-25 14:32 UTC
  std::int64_t run = 5000000;
  std::uint32_t ids;
  bench::Bench bench;
  std::vector<session::Line> lines;

  // Sittings with different seeds have different ids.
  explicit Sitting(std::uint32_t seed);

  bench::Now now();
  void give(bench::Input input);
  void pass_s(double seconds);
  bench::Rect box(const std::string& pad); // ends the program where there is no such pad
  void tap(const std::string& pad);
  void begin(); // 12 g of cobalt blue on the slab

  // Goes on for so long, until there are so many lines: drops mostly, feel notes, passes, dots,
  // something taken back.
  void work(double minutes, std::size_t lines_in_all);

private:
  void one_thing(int i);
};

// 40 minutes and 300 lines, the batch still on the slab.
Sitting long_batch();

// So many batches in their jars, the next one on the slab, and what it may take of them lies open.
Sitting among_paints(int batches);

}
