// A picture that stays, and of which a frame draws what has changed: nothing where nothing has.
#pragma once

#include "window/damage.hpp"
#include "window/surface.hpp"

#include <cstdint>
#include <vector>

namespace window {

class Canvas {
public:
  // Ends ImGui's frame and brings the bound framebuffer up to it, which must still hold what was
  // drawn last, or have been forgotten. Where it drew.
  std::vector<Area> draw(Extent size, Colour clear);

  void forget() { whole_ = true; } // the next one is drawn whole

private:
  Extent size_;
  Colour clear_;
  std::uint64_t fonts_ = 0;
  bool whole_ = true;
  std::vector<Piece> pieces_; // of the picture as it is
};

// A framebuffer that keeps a picture where the window's own does not. Lives and dies with a GL
// context that is current.
class Kept {
public:
  Kept();
  ~Kept();
  Kept(const Kept&) = delete;
  Kept& operator=(const Kept&) = delete;

  bool bind(Extent size); // for drawing; false: it is new and holds nothing
  void show() const;      // copies all of it onto the context's own framebuffer, and binds that one

private:
  unsigned pixels_ = 0, frame_ = 0;
  Extent size_;
};

}
