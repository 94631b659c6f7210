#include "screens/measure.hpp"

#define STBTT_STATIC
#define STB_TRUETYPE_IMPLEMENTATION
#include <stb/stb_truetype.h>

#include <fstream>
#include <iterator>

namespace screens {

namespace {

std::vector<unsigned char> bytes_of(const char* path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

struct Face {
  std::vector<unsigned char> bytes;
  stbtt_fontinfo info{};
  bool there = false;
  double units_per_cap = 1;
  double units_per_size = 1;

  explicit Face(const char* path) : bytes(bytes_of(path)) {
    there = !bytes.empty() && stbtt_InitFont(&info, bytes.data(), 0);
    if (!there) return;
    int ascent = 0, descent = 0, gap = 0, x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    stbtt_GetFontVMetrics(&info, &ascent, &descent, &gap);
    stbtt_GetCodepointBox(&info, 'H', &x0, &y0, &x1, &y1);
    units_per_size = ascent - descent;
    units_per_cap = y1;
  }
};

const Face& loaded(bool bold) {
  static const Face regular(SLABSIDE_FONT_REGULAR);
  static const Face heavy(SLABSIDE_FONT_BOLD);
  return bold ? heavy : regular;
}

}

const std::vector<unsigned char>& face(bool bold) { return loaded(bold).bytes; }

words::Result<void> faces_present() {
  if (!loaded(false).there)
    return words::failure(words::Say::font_missing, {SLABSIDE_FONT_REGULAR});
  if (!loaded(true).there) return words::failure(words::Say::font_missing, {SLABSIDE_FONT_BOLD});
  return {};
}

char32_t next_letter(std::string_view words, std::size_t& at) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(words[i]); };
  const unsigned char first = byte(at++);
  if (first < 0x80) return first;
  const int more = first >= 0xF0 ? 3 : first >= 0xE0 ? 2 : first >= 0xC2 ? 1 : 0;
  if (more == 0 || first > 0xF4 || at + static_cast<std::size_t>(more) > words.size())
    return 0xFFFD;
  char32_t letter = first & (0x3F >> more);
  for (int i = 0; i < more; ++i) {
    const unsigned char next = byte(at + static_cast<std::size_t>(i));
    if ((next & 0xC0) != 0x80) return 0xFFFD;
    letter = letter << 6 | (next & 0x3F);
  }
  at += static_cast<std::size_t>(more);
  return letter;
}

double width_mm(std::string_view words, double cap_mm, bool bold) {
  const Face& face = loaded(bold);
  if (!face.there) return 0;
  double units = 0;
  for (std::size_t at = 0; at < words.size();) {
    int advance = 0, bearing = 0;
    stbtt_GetCodepointHMetrics(&face.info, static_cast<int>(next_letter(words, at)), &advance,
                               &bearing);
    units += advance;
  }
  return units * cap_mm / face.units_per_cap;
}

double cap_of_size(bool bold) {
  const Face& face = loaded(bold);
  return face.units_per_cap / face.units_per_size;
}

}
