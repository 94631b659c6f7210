#include "studio/photo_pixels.hpp"

#include "studio/decode.hpp"
#include "studio/jpg_tags.hpp"
#include "studio/profile.hpp"
#include "words/studio_says.hpp"

namespace studio {

namespace {
using Say = words::StudioSay;
}

words::Result<colour::Photo> read_photo(std::string_view bytes) {
  const auto header = picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  const bool jpg = header->kind == PictureKind::jpg;
  const JpgTags tags = jpg ? jpg_tags(bytes) : JpgTags{};

  colour::Photo photo;
  photo.shrunk = shrunk_for(*header, most_read_pixels);
  PngTags png;
  auto pixels = decode_part(bytes, *header, photo.shrunk, &png);
  if (!pixels) return tl::make_unexpected(pixels.error());
  photo.width = pixels->width;
  photo.height = pixels->height;
  photo.rgb = std::move(pixels->rgb);
  photo.orientation = jpg ? tags.orientation : orientation_of(png.exif);
  photo.see_through = pixels->see_through;
  photo.grey = colour::is_grey(photo.rgb);
  // Made fewer, pixels are means of several blocks, or of parts of one.
  photo.light_step = tags.light_step;
  photo.colour_step = tags.colour_step;
  const std::string& profile = jpg ? tags.profile : png.profile;
  const bool bad =
      !photo.grey && (profile.empty() ? png.bad_profile : !take_profile(profile, photo));
  if (bad) return words::failure(Say::photo_bad_profile);
  return photo;
}

}
