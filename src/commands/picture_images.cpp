#include "commands/picture_images.hpp"

#include "colour/photo.hpp"
#include "commands/picture_answers.hpp"
#include "studio/decode.hpp"
#include "studio/jpg_tags.hpp"
#include "studio/kept.hpp"
#include "studio/pieces.hpp"

#include <algorithm>
#include <cstdint>

namespace commands {

namespace {

using Path = std::filesystem::path;
using studio::Pixels;

int fineness(const studio::PictureHeader& header, int longest) {
  const auto side = std::max(header.width, header.height);
  int by = 1;
  while (by < 8 && side / (2 * by) >= longest) by *= 2;
  return by;
}

// Each pixel the mean of those that it covers.
Pixels shrunk(const Pixels& from, int longest) {
  const int side = std::max(from.width, from.height);
  if (side <= longest) return from;
  const auto part = [&](int length) { return std::max(1, length * longest / side); };
  Pixels to{part(from.width), part(from.height), {}};
  to.rgb.reserve(static_cast<std::size_t>(to.width) * static_cast<std::size_t>(to.height) * 3);
  for (int y = 0; y < to.height; ++y) {
    const int top = y * from.height / to.height;
    const int bottom = std::max(top + 1, (y + 1) * from.height / to.height);
    for (int x = 0; x < to.width; ++x) {
      const int left = x * from.width / to.width;
      const int right = std::max(left + 1, (x + 1) * from.width / to.width);
      unsigned sums[3]{};
      for (int j = top; j < bottom; ++j)
        for (int i = left; i < right; ++i)
          for (int c = 0; c < 3; ++c)
            sums[c] += from.rgb[3 * (static_cast<std::size_t>(j) * from.width + i) + c];
      const auto count = static_cast<unsigned>((bottom - top) * (right - left));
      for (const unsigned sum : sums)
        to.rgb.push_back(static_cast<std::uint8_t>((sum + count / 2) / count));
    }
  }
  return to;
}

DrawnImage upright(const Pixels& pixels, int orientation) {
  const bool turned = colour::on_its_side(orientation),
             across = colour::mirrored_across(orientation),
             down = colour::mirrored_down(orientation);
  const int w = pixels.width, h = pixels.height;
  DrawnImage out;
  out.width = turned ? h : w;
  out.height = turned ? w : h;
  out.rgba.reserve(static_cast<std::size_t>(w) * static_cast<std::size_t>(h) * 4);
  for (int y = 0; y < out.height; ++y)
    for (int x = 0; x < out.width; ++x) {
      int i = turned ? y : x, j = turned ? x : y; // column and row of the file
      if (across) i = w - 1 - i;
      if (down) j = h - 1 - j;
      const auto at = 3 * (static_cast<std::size_t>(j) * w + i);
      out.rgba.insert(out.rgba.end(),
                      {pixels.rgb[at], pixels.rgb[at + 1], pixels.rgb[at + 2], 255});
    }
  return out;
}

words::Result<DrawnImage> decoded(std::string_view bytes, int longest) {
  const auto header = studio::picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  studio::PngTags png;
  const auto pixels = studio::decode_part(bytes, *header, fineness(*header, longest), &png);
  if (!pixels) return tl::make_unexpected(pixels.error());
  const bool jpg = header->kind == studio::PictureKind::jpg;
  return upright(shrunk(*pixels, longest),
                 jpg ? studio::jpg_tags(bytes).orientation : studio::orientation_of(png.exif));
}

// ---- kept thumbs: two numbers in five bytes each, then the pixels without their fourth byte

constexpr std::size_t head = 10;

std::string number(int value) {
  std::string digits = std::to_string(value);
  return std::string(5 - digits.size(), '0') + digits;
}

std::string written(const DrawnImage& image) {
  std::string out = number(image.width) + number(image.height);
  for (std::size_t i = 0; i < image.rgba.size(); ++i)
    if (i % 4 != 3) out += static_cast<char>(image.rgba[i]);
  return out;
}

int number_at(const std::string& text, std::size_t at) {
  int value = 0;
  for (std::size_t i = at; i < at + 5; ++i) {
    if (text[i] < '0' || text[i] > '9') return 0;
    value = 10 * value + (text[i] - '0');
  }
  return value;
}

std::optional<DrawnImage> read_back(const std::string& text) {
  if (text.size() < head) return std::nullopt;
  DrawnImage out;
  out.width = number_at(text, 0);
  out.height = number_at(text, 5);
  const bool fits = out.width > 0 && out.height > 0 && out.width <= thumb_px &&
                    out.height <= thumb_px &&
                    text.size() == head + static_cast<std::size_t>(out.width) * out.height * 3;
  if (!fits) return std::nullopt;
  for (std::size_t i = head; i < text.size(); i += 3)
    for (const int c : {static_cast<int>(static_cast<unsigned char>(text[i])),
                        static_cast<int>(static_cast<unsigned char>(text[i + 1])),
                        static_cast<int>(static_cast<unsigned char>(text[i + 2])), 255})
      out.rgba.push_back(static_cast<std::uint8_t>(c));
  return out;
}

// Of what a picture was made from: where it lies, how long it is and when it was written.
Path thumb_file(const PictureHome& home, const std::string& image) {
  const bool elsewhere = image.compare(0, 5, "file:") == 0;
  const Path path = elsewhere ? Path(image.substr(5)) : home.studio / image;
  std::error_code failed;
  const auto size = std::filesystem::file_size(path, failed);
  const auto at =
      failed ? std::filesystem::file_time_type() : std::filesystem::last_write_time(path, failed);
  if (failed || home.thumbs.empty()) return {};
  const std::string of = (elsewhere ? path.string() : image) + " " + std::to_string(size) + " " +
                         std::to_string(at.time_since_epoch().count());
  return home.thumbs / studio::sha256(of).substr(0, 32);
}

constexpr std::size_t most_thumbs = 2000;

// The folder is counted for one in sixteen: names are random digits, and a few too many do no harm.
bool is_to_be_counted(const Path& file) { return file.filename().string().front() == '0'; }

std::size_t files_in(const Path& folder) {
  std::error_code ignored;
  std::size_t count = 0;
  for (std::filesystem::directory_iterator entry(folder, ignored), end; !ignored && entry != end;
       entry.increment(ignored))
    ++count;
  return count;
}

// That none is kept is no loss: it is made again.
void keep_thumb(const Path& file, const DrawnImage& image) {
  std::error_code ignored;
  std::filesystem::create_directories(file.parent_path(), ignored);
  if (is_to_be_counted(file) && files_in(file.parent_path()) > most_thumbs) {
    std::filesystem::remove_all(file.parent_path(), ignored);
    std::filesystem::create_directories(file.parent_path(), ignored);
  }
  (void)studio::keep(*disk::posix_files(), file, written(image));
}

words::Result<DrawnImage> made(const PictureHome& home, const WantedImage& wanted) {
  const Path file = wanted.large ? Path() : thumb_file(home, wanted.image);
  if (!file.empty())
    if (const auto text = studio::kept(*disk::posix_files(), file))
      if (auto image = read_back(*text)) return *std::move(image);
  const auto bytes = bytes_of_image(home, wanted.image);
  if (!bytes) return tl::make_unexpected(bytes.error());
  auto image = decoded(*bytes, wanted.large ? large_px : thumb_px);
  if (image && !file.empty()) keep_thumb(file, *image);
  return image;
}

}

words::Result<DrawnImage> make_image(const PictureHome& home, const WantedImage& wanted) {
  auto image = made(home, wanted);
  if (!image) return image;
  image->image = wanted.image;
  image->large = wanted.large;
  return image;
}

}
