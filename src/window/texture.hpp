// Pixels where GL draws from.
#pragma once

#include "window/surface.hpp"

#include <cstdint>
#include <vector>

namespace window {

// Lives and dies with a GL context that is current.
class Texture {
public:
  // rgba: four bytes a pixel, the top row first.
  Texture(Extent size, const std::vector<std::uint8_t>& rgba);
  Texture(Texture&& other) noexcept;
  Texture& operator=(Texture&& other) noexcept;
  ~Texture();

  void* id() const; // as ImGui's back end has it
  Extent size() const { return size_; }

private:
  unsigned name_ = 0;
  Extent size_;
};

}
