#include "studio/engine_pixels.hpp"

#include "studio/jpg_tags.hpp"
#include "words/studio_says.hpp"

namespace studio {

bool lay_over_white(EnginePixels& pixels) {
  bool any = false;
  for (std::size_t i = 0; i + 3 < pixels.rgba.size(); i += 4) {
    const unsigned alpha = pixels.rgba[i + 3];
    if (alpha == 255) continue;
    any = true;
    for (std::size_t c = i; c < i + 3; ++c)
      pixels.rgba[c] =
          static_cast<std::uint8_t>((pixels.rgba[c] * alpha + 255 * (255 - alpha) + 127) / 255);
    pixels.rgba[i + 3] = 255;
  }
  return any;
}

words::Result<colour::Photo> photo_of(std::string_view file, EnginePixels pixels, int by) {
  const auto count =
      static_cast<std::size_t>(pixels.width) * static_cast<std::size_t>(pixels.height);
  if (pixels.width < 1 || pixels.height < 1 || pixels.rgba.size() != 4 * count)
    return words::failure(words::StudioSay::photo_not_decoded);
  colour::Photo photo;
  photo.see_through = lay_over_white(pixels);
  photo.width = pixels.width;
  photo.height = pixels.height;
  photo.shrunk = by;
  photo.rgb.reserve(3 * count);
  for (std::size_t i = 0; i < pixels.rgba.size(); i += 4)
    photo.rgb.insert(photo.rgb.end(), {pixels.rgba[i], pixels.rgba[i + 1], pixels.rgba[i + 2]});
  photo.grey = colour::is_grey(photo.rgb);
  const JpgTags tags = jpg_tags(file); // of no JPEG they are as if they were not there
  photo.light_step = tags.light_step;
  photo.colour_step = tags.colour_step;
  return photo;
}

}
