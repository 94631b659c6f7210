// Every screen on every display, by day and by night, as PNG files in the build folder: for people,
// who see what no test looks for. No test itself, for that takes minutes. SLABSIDE_PICTURES_IN=de
// draws them in that language instead, SLABSIDE_PICTURES_OF=shelf only those with that in their
// name.
#include "screens/eyes.hpp"
#include "screens/views.hpp"
#include "words/speaking.hpp"

#include <doctest/doctest.h>
#include <png.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>

namespace {

constexpr double px_per_mm = 1280 / 218.0;
const std::filesystem::path folder = SLABSIDE_PICTURES;

// Packed quickly rather than small.
bool write_png(const std::filesystem::path& path, const window::Picture& picture) {
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wb"),
                                                             std::fclose);
  if (!file) return false;
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  png_infop info = png_create_info_struct(png);
  png_init_io(png, file.get());
  png_set_compression_level(png, 1);
  png_set_filter(png, PNG_FILTER_TYPE_BASE, PNG_FILTER_NONE);
  const auto w = static_cast<png_uint_32>(picture.size.w);
  const auto h = static_cast<png_uint_32>(picture.size.h);
  png_set_IHDR(png, info, w, h, 8, PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_write_info(png, info);
  for (std::size_t y = 0; y < h; ++y) png_write_row(png, picture.rgb.data() + y * w * 3);
  png_write_end(png, nullptr);
  png_destroy_write_struct(&png, &info);
  return true;
}

std::string file_name(std::string name, int which, bool night) {
  std::string out;
  for (const char c : name)
    if (c == ' ')
      out += out.back() == '_' ? "" : "_";
    else if (c != ',')
      out += c;
  return out + (which > 1 ? "_" + std::to_string(which) : "") + (night ? "_night" : "") + ".png";
}

bool blank(const window::Picture& picture) {
  for (const unsigned char c : picture.rgb)
    if (c != picture.rgb[0]) return false;
  return true;
}

words::Language language_wanted() {
  const char* tag = std::getenv("SLABSIDE_PICTURES_IN");
  if (!tag) return words::Language::english;
  const auto language = words::language_tagged(tag);
  REQUIRE_MESSAGE(language, "SLABSIDE_PICTURES_IN names no language: ", tag);
  return *language;
}

}

TEST_CASE("every screen is drawn and kept") {
  const words::Speaking speaking(language_wanted());
  std::filesystem::remove_all(folder);
  std::filesystem::create_directories(folder);
  std::optional<eyes::Eyes> eyes;
  bench::Size mm;
  std::map<std::string, int> seen;
  const char* part = std::getenv("SLABSIDE_PICTURES_OF");
  for (auto& c : views::all()) {
    if (part && c.name.find(part) == std::string::npos) continue;
    if (!eyes || !(c.mm == mm)) {
      eyes.reset();
      eyes.emplace(mm = c.mm, px_per_mm);
    }
    const int which = ++seen[c.name];
    for (const bool night : {false, true}) {
      c.view.top_bar.night = night;
      const window::Picture picture = eyes->look(c.view).picture;
      CAPTURE(c.name);
      CHECK_FALSE(blank(picture));
      CHECK(write_png(folder / file_name(c.name, which, night), picture));
    }
  }
}
