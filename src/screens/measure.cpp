#include "screens/measure.hpp"

#include "screens/own_faces.hpp"
#include "words/letters.hpp"
#include "words/screens_says.hpp"

#define STBTT_STATIC
#define STB_TRUETYPE_IMPLEMENTATION
#include <stb/stb_truetype.h>

#include <array>
#include <fstream>
#include <optional>

namespace screens {

namespace {

constexpr std::array<std::array<const char*, ranks>, 2> paths{
    {{SLABSIDE_FONT_REGULAR, SLABSIDE_FONT_OTHER_REGULAR, SLABSIDE_FONT_EAST_ASIAN},
     {SLABSIDE_FONT_BOLD, SLABSIDE_FONT_OTHER_BOLD, SLABSIDE_FONT_EAST_ASIAN}}};
// Where the build found none of that rank, one may have come to the system since.
constexpr std::array<const char*, 2> usual_east_asian{
    "/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf",
    "/usr/share/fonts/opentype/noto/NotoSansCJK-Regular.ttc"};

std::string& own_folder() {
  static std::string folder;
  return folder;
}

// The first that is there counts.
std::vector<std::string> places(bool bold, int rank) {
  const std::string usual = paths[static_cast<std::size_t>(bold)][static_cast<std::size_t>(rank)];
  std::vector<std::string> all{usual};
  if (!own_folder().empty())
    all.insert(all.begin(), own_folder() + '/' + usual.substr(usual.find_last_of('/') + 1));
  if (rank == ranks - 1) all.insert(all.end(), usual_east_asian.begin(), usual_east_asian.end());
  return all;
}

std::vector<unsigned char> bytes_of(const std::vector<std::string>& in_turn) {
  std::ifstream file;
  for (const std::string& place : in_turn)
    if (file.open(place, std::ios::binary | std::ios::ate); file) break;
  if (!file) return {};
  std::vector<unsigned char> bytes(static_cast<std::size_t>(file.tellg()));
  file.seekg(0);
  file.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
  return file ? bytes : std::vector<unsigned char>();
}

struct Face {
  std::vector<unsigned char> bytes;
  stbtt_fontinfo info{};
  bool there = false;
  double units_per_cap = 1;
  double units_per_size = 1;

  explicit Face(const std::vector<std::string>& in_turn) : bytes(bytes_of(in_turn)) {
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

const Face& loaded(bool bold, int rank) {
  static std::array<std::array<std::optional<Face>, ranks>, 2> faces;
  const auto weight = static_cast<std::size_t>(bold), at = static_cast<std::size_t>(rank);
  std::optional<Face>& face = faces[weight][at];
  if (!face) face.emplace(places(bold, rank));
  return *face;
}

}

void look_for_faces_in(const std::string& folder) { own_folder() = folder; }

const std::vector<unsigned char>& face(bool bold, int rank) { return loaded(bold, rank).bytes; }

std::optional<int> rank_with(char32_t letter, bool bold) {
  for (int rank = 0; rank < ranks; ++rank)
    if (loaded(bold, rank).has(letter)) return rank;
  return std::nullopt;
}

words::Result<void> faces_present() {
  for (const int rank : {0, 1})
    for (const bool bold : {false, true})
      if (!loaded(bold, rank).there)
        return words::failure(
            words::ScreensSay::font_missing,
            {paths[static_cast<std::size_t>(bold)][static_cast<std::size_t>(rank)]});
  return {};
}

namespace {

// Of one letter, in heights of a capital.
double advance_of(char32_t letter, bool bold) {
  auto rank = rank_with(letter, bold);
  if (!rank) rank = rank_with(letter = words::no_letter, bold);
  if (!rank) return 0;
  const Face& face = loaded(bold, *rank);
  int advance = 0, bearing = 0;
  stbtt_GetCodepointHMetrics(&face.info, static_cast<int>(letter), &advance, &bearing);
  return advance / face.units_per_cap;
}

// Screens are measured many times over before they are drawn: letters of Europe are looked up once.
constexpr std::size_t often = 0x180;

std::array<double, often> advances(bool bold) {
  std::array<double, often> out{};
  for (std::size_t letter = 0; letter < often; ++letter)
    out[letter] = advance_of(static_cast<char32_t>(letter), bold);
  return out;
}

}

double width_mm(std::string_view words, double cap_mm, bool bold) {
  static const std::array<std::array<double, often>, 2> known{advances(false), advances(true)};
  double width = 0;
  for (std::size_t at = 0; at < words.size();) {
    const char32_t letter = words::next_letter(words, at);
    width += letter < often ? known[bold][letter] : advance_of(letter, bold);
  }
  return width * cap_mm;
}

double cap_of_size(bool bold, int rank) {
  const Face& face = loaded(bold, rank);
  return face.units_per_cap / face.units_per_size;
}

}
