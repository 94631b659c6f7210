// A frame without a display: a surfaceless EGL context (Mesa) that draws into memory.
#pragma once

#include "window/surface.hpp"

#include <tl/expected.hpp>

#include <memory>
#include <string>

namespace window {

// One at a time, and not beside a Window: ImGui and GL each know one current context.
class Offscreen {
public:
  // Sizes from 1 to 16384. The error names the call of EGL or GL that failed.
  static tl::expected<Offscreen, std::string> open(Extent size);

  Offscreen(Offscreen&&) noexcept;
  Offscreen& operator=(Offscreen&&) noexcept;
  ~Offscreen();

  void begin_frame(); // from here on ImGui may be drawn with
  Picture end_frame(Colour clear);

private:
  struct State;
  explicit Offscreen(std::unique_ptr<State> state);
  std::unique_ptr<State> state;
};

}
