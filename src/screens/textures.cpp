#include "screens/textures.hpp"

#include <utility>

namespace screens {

namespace {

TextureSource& source() {
  static TextureSource one;
  return one;
}

}

void take_textures_from(TextureSource from) { source() = std::move(from); }

std::optional<Texture> texture_of(const std::string& image, bool large) {
  return source() ? source()(image, large) : std::nullopt;
}

}
