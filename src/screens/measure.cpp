#include "screens/measure.hpp"

#include "screens/face_files.hpp"
#include "words/letters.hpp"
#include "words/screens_says.hpp"

#define STBTT_STATIC
#define STB_TRUETYPE_IMPLEMENTATION
#include <stb/stb_truetype.h>

#include <array>
#include <optional>

namespace screens {

namespace {

struct Face {
  std::vector<unsigned char> bytes;
  stbtt_fontinfo info{};
  bool there = false;
  double units_per_cap = 1;
  double units_per_size = 1;

  Face(bool bold, int rank) : bytes(bytes_of_face(bold, rank)) {
    there = !bytes.empty() && stbtt_InitFont(&info, bytes.data(), 0);
    if (!there) return;
    int ascent = 0, descent = 0, gap = 0, x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    stbtt_GetFontVMetrics(&info, &ascent, &descent, &gap);
    units_per_size = ascent - descent;
    // A face without Latin letters is set as large as those that have them mostly are beside it:
    // capitals of 0.72 em (common practice, no source).
    units_per_cap = 0.72 / stbtt_ScaleForMappingEmToPixels(&info, 1);
    if (has('H') && stbtt_GetCodepointBox(&info, 'H', &x0, &y0, &x1, &y1)) units_per_cap = y1;
  }

  bool has(char32_t letter) const {
    return there && stbtt_FindGlyphIndex(&info, static_cast<int>(letter)) != 0;
  }
};

using Faces = std::array<std::array<std::optional<Face>, ranks>, 2>;

Faces& faces() {
  static Faces all;
  return all;
}

const Face& loaded(bool bold, int rank) {
  std::optional<Face>& face =
      faces()[static_cast<std::size_t>(bold)][static_cast<std::size_t>(rank)];
  if (!face) face.emplace(bold, rank);
  return *face;
}

}

const std::vector<unsigned char>& face(bool bold, int rank) { return loaded(bold, rank).bytes; }

std::optional<int> rank_with(char32_t letter, bool bold) {
  for (int rank = 0; rank < ranks; ++rank)
    if (loaded(bold, rank).has(letter)) return rank;
  return std::nullopt;
}

char32_t sign_for_none(bool bold) {
  constexpr char32_t box = 0x2610;
  return rank_with(words::no_letter, bold) ? words::no_letter : box;
}

words::Result<void> faces_present() {
  for (const int rank : {0, 1})
    for (const bool bold : {false, true})
      if (!comes_later(rank) && !loaded(bold, rank).there)
        return words::failure(words::ScreensSay::font_missing, {place_of_face(bold, rank)});
  return {};
}

namespace {

// Of one letter, in heights of a capital.
double advance_of(char32_t letter, bool bold) {
  auto rank = rank_with(letter, bold);
  if (!rank) rank = rank_with(letter = sign_for_none(bold), bold);
  if (!rank) return 0;
  const Face& face = loaded(bold, *rank);
  int advance = 0, bearing = 0;
  stbtt_GetCodepointHMetrics(&face.info, static_cast<int>(letter), &advance, &bearing);
  return advance / face.units_per_cap;
}

// Screens are measured many times over before they are drawn: letters of Europe are looked up once.
constexpr std::size_t often = 0x180;

using Advances = std::array<double, often>;

Advances advances(bool bold) {
  Advances out{};
  for (std::size_t letter = 0; letter < often; ++letter)
    out[letter] = advance_of(static_cast<char32_t>(letter), bold);
  return out;
}

std::array<std::optional<Advances>, 2>& known() {
  static std::array<std::optional<Advances>, 2> of_weights;
  return of_weights;
}

const Advances& known(bool bold) {
  std::optional<Advances>& out = known()[static_cast<std::size_t>(bold)];
  if (!out) out = advances(bold);
  return *out;
}

}

void look_again_for_faces() {
  for (auto& of_weight : faces())
    for (std::optional<Face>& face : of_weight)
      if (face && !face->there) face.reset();
  known() = {};
}

double width_mm(std::string_view words, double cap_mm, bool bold) {
  const Advances& usual = known(bold);
  double width = 0;
  for (std::size_t at = 0; at < words.size();) {
    const char32_t letter = words::next_letter(words, at);
    width += letter < often ? usual[letter] : advance_of(letter, bold);
  }
  return width * cap_mm;
}

double cap_of_size(bool bold, int rank) {
  const Face& face = loaded(bold, rank);
  return face.units_per_cap / face.units_per_size;
}

}
