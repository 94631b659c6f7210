// The photos that a frame draws, on their way from a desk to the screen. Each frame says what it
// wants by name; what is not there is noted, and comes with a later frame.
#pragma once

#include "commands/storage.hpp"
#include "window/texture.hpp"

#include <cstdint>
#include <list>
#include <optional>
#include <vector>

namespace app {

class Textures {
public:
  Textures(); // screens ask this one from now on
  ~Textures();
  Textures(const Textures&) = delete;
  Textures& operator=(const Textures&) = delete;

  void put(const commands::DrawnImage& image);
  void forget(); // all: each is wanted anew by the next frame that draws it

  // After a frame: what it lacked and was not asked for yet; absent: nothing has changed.
  std::optional<std::vector<commands::WantedImage>> take_lacking();

private:
  struct Held {
    commands::WantedImage of;
    window::Texture texture;
  };
  std::list<Held> held_; // drawn last first
  std::vector<commands::WantedImage> lacking_, asked_;
};

// 40 MB of thumbnails and two large ones of 13 MB with what makes them smaller.
inline constexpr std::size_t most_thumbs_held = 120, most_large_held = 2;

}
