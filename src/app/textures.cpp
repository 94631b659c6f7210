#include "app/textures.hpp"

#include "screens/textures.hpp"

#include <algorithm>
#include <utility>

namespace app {

Textures::Textures() {
  screens::take_textures_from(
      [this](const std::string& image, bool large) -> std::optional<screens::Texture> {
        const commands::WantedImage wanted{image, large};
        const auto found = std::find_if(held_.begin(), held_.end(),
                                        [&](const Held& held) { return held.of == wanted; });
        if (found == held_.end()) {
          lacking_.push_back(wanted);
          return std::nullopt;
        }
        held_.splice(held_.begin(), held_, found);
        const window::Extent size = found->texture.size();
        return screens::Texture{found->texture.id(), static_cast<double>(size.w),
                                static_cast<double>(size.h)};
      });
}

Textures::~Textures() { screens::take_textures_from({}); }

void Textures::put(const commands::DrawnImage& image) {
  const commands::WantedImage of{image.image, image.large};
  std::erase_if(held_, [&](const Held& held) { return held.of == of; });
  held_.push_front({of, window::Texture({image.width, image.height}, image.rgba)});
  const std::size_t most = image.large ? most_large_held : most_thumbs_held;
  std::size_t count = 0;
  std::erase_if(held_,
                [&](const Held& held) { return held.of.large == image.large && ++count > most; });
}

void Textures::forget() {
  held_.clear();
  asked_.clear();
}

std::optional<std::vector<commands::WantedImage>> Textures::take_lacking() {
  std::vector<commands::WantedImage> lacking = std::exchange(lacking_, {});
  if (lacking == asked_) return std::nullopt;
  asked_ = lacking;
  return lacking;
}

}
