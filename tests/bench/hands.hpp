// A pair of hands without a window: taps pads at their places, lets time pass, keeps what was to
// be saved.
#pragma once

#include "bench/record.hpp"
#include "bench/view.hpp"

#include <doctest/doctest.h>

namespace hands {

using namespace bench;

struct Hands {
  std::int64_t wall = 1795617120000; // 2026-11-25 14:32 UTC
  std::int64_t run = 5000000;
  std::uint64_t poll = 0;
  std::uint32_t ids = 0x10000000;
  Bench b;
  std::vector<session::Line> lines;
  std::optional<std::int64_t> wake;
  std::vector<SoundCue> cues;

  explicit Hands(Display display = {});
  Hands(const Hands&);
  Hands(Hands&&) noexcept;
  Hands& operator=(const Hands&);
  Hands& operator=(Hands&&) noexcept;
  ~Hands();

  Now now();
  void give(Input input);
  void pass_ms(std::int64_t ms);
  void wait(double seconds);
  // The same studio, in a window that opens later.
  void open_after(const Hands& before, double after_s, Screen on);
  Rect box(const std::string& name);
  bool shows(const std::string& name);
  void point(Pointer::Phase phase, Point at, int finger = 0);
  void down(const std::string& name);
  void tap(const std::string& name);
  void type(const std::string& digits);
  // A pigment more in the plan, or one less.
  void choose(const std::string& pigment);
  // 12 g of cobalt blue on the slab.
  void begin();
  // Bound, mulled and off the slab.
  void gather();
  SlabView slab();
  template <class E>
  int count() const {
    int n = 0;
    for (const session::Line& line : lines) n += std::holds_alternative<E>(line.event);
    return n;
  }
};

const std::vector<Size>& displays();

}
