#include "screens/atlas.hpp"

#include "screens/theme.hpp"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace screens {

namespace {

// Latin for names, and the marks that the sentences use.
constexpr std::array<std::pair<char32_t, char32_t>, 10> letters{{{0x20, 0x17F},
                                                                 {0x2013, 0x2014},
                                                                 {0x2018, 0x201E},
                                                                 {0x2022, 0x2022},
                                                                 {0x2026, 0x2026},
                                                                 {0x2070, 0x209C},
                                                                 {0x2150, 0x215E},
                                                                 {0x2190, 0x2193},
                                                                 {0x2212, 0x2212},
                                                                 {no_letter, no_letter}}};
// What is said in the largest heights.
constexpr std::array<std::pair<char32_t, char32_t>, 4> figures{
    {{0x20, 0x7E}, {0x2013, 0x2013}, {0x2026, 0x2026}, {no_letter, no_letter}}};

using Ranges = std::vector<ImWchar>; // first and last, in pairs, and a 0

struct Atlas { // as ImGui's is, one a program
  double px_per_mm = 0;
  std::set<char32_t> more; // beyond those above
  bool grown = false;
  // ImGui reads these when it makes the texture.
  std::array<std::array<std::array<Ranges, ranks>, 2>, 2> ranges; // by size, weight, rank
};

Atlas& atlas() {
  static Atlas one;
  return one;
}

template <class Usual>
std::array<Ranges, ranks> ranges_of(const Usual& usual, bool bold) {
  std::array<Ranges, ranks> out;
  const auto add = [&](char32_t letter) {
    const auto rank = rank_with(letter, bold);
    if (!rank) return;
    Ranges& ranges = out[static_cast<std::size_t>(*rank)];
    if (!ranges.empty() && ranges.back() + 1 == letter)
      ranges.back() = letter;
    else
      ranges.insert(ranges.end(), {static_cast<ImWchar>(letter), static_cast<ImWchar>(letter)});
  };
  for (const auto& [first, last] : usual)
    for (char32_t letter = first; letter <= last; ++letter) add(letter);
  for (const char32_t letter : atlas().more) add(letter);
  for (Ranges& ranges : out)
    if (!ranges.empty()) ranges.push_back(0);
  return out;
}

// The size ImGui scales a face by, in pixels, for capitals of a height.
double font_px(double cap_mm, bool bold, double px_per_mm, int rank) {
  return cap_mm * px_per_mm / cap_of_size(bold, rank);
}

double whole_px(double px) { return std::max(1.0, std::floor(px)); }

bool is_large(double cap_mm) { return cap_mm > cap::head; }

void add_face(double cap_mm, bool bold, int rank, bool merged) {
  const Ranges& ranges = atlas().ranges[is_large(cap_mm)][bold][static_cast<std::size_t>(rank)];
  if (ranges.empty() || face(bold, rank).empty()) return;
  ImFontConfig config;
  config.FontDataOwnedByAtlas = false;
  config.MergeMode = merged;
  config.OversampleH = is_large(cap_mm) ? 1 : 2;
  // ImGui cuts sizes down to whole pixels; the density makes up for it.
  const double size = font_px(cap_mm, bold, atlas().px_per_mm, rank);
  config.RasterizerDensity = static_cast<float>(size / whole_px(size));
  // ImGui wants bytes it could change; it changes none.
  void* bytes = const_cast<unsigned char*>(face(bold, rank).data());
  ImGui::GetIO().Fonts->AddFontFromMemoryTTF(bytes, static_cast<int>(face(bold, rank).size()),
                                             static_cast<float>(whole_px(size)), &config,
                                             ranges.data());
}

void fill() {
  for (const bool bold : {false, true}) {
    atlas().ranges[0][bold] = ranges_of(letters, bold);
    atlas().ranges[1][bold] = ranges_of(figures, bold);
  }
  ImGui::GetIO().Fonts->Clear();
  for (const double cap_mm : cap::all)
    for (const bool bold : {false, true})
      for (int rank = 0; rank < ranks; ++rank) add_face(cap_mm, bold, rank, rank > 0);
  atlas().grown = false;
}

}

words::Result<void> load_faces(double px_per_mm) {
  if (!(px_per_mm >= 1 && px_per_mm <= 40))
    return words::failure(words::Say::not_a_number, {words::fixed(px_per_mm, 1)});
  if (auto there = faces_present(); !there) return there;
  atlas().px_per_mm = px_per_mm;
  fill();
  return {};
}

bool load_more_letters() {
  if (!atlas().grown) return false;
  fill();
  return true;
}

namespace {

std::size_t place_of(double cap_mm) {
  std::size_t i = 0;
  while (i + 1 < cap::all.size() && cap::all[i] < cap_mm - 1e-6) ++i;
  return i;
}

}

// Faces lie in the atlas in the order of cap::all, regular before bold.
ImFont* font_for(double cap_mm, bool bold) {
  const auto& fonts = ImGui::GetIO().Fonts->Fonts;
  const int at = static_cast<int>(2 * place_of(cap_mm) + (bold ? 1 : 0));
  return at < fonts.Size ? fonts[at] : ImGui::GetFont();
}

Letter letter_of(char32_t code, double cap_mm, bool bold, double px_per_mm) {
  const ImFont& font = *font_for(cap_mm, bold);
  const ImFontGlyph* glyph = font.FindGlyphNoFallback(code);
  auto rank = rank_with(code, bold);
  if (!glyph) {
    if (rank) atlas().grown |= atlas().more.insert(code).second;
    glyph = font.FallbackGlyph;
    rank = rank_with(no_letter, bold);
  }
  if (!glyph || !rank) return {};
  const double there =
      whole_px(font_px(cap::all[place_of(cap_mm)], bold, atlas().px_per_mm, *rank));
  const double scale = font_px(cap_mm, bold, px_per_mm, *rank) / there;
  const double baseline = std::round(font.Ascent); // as ImGui puts glyphs below the line's top
  return {{glyph->X0 * scale, (glyph->Y0 - baseline) * scale, glyph->U0, glyph->V0},
          {glyph->X1 * scale, (glyph->Y1 - baseline) * scale, glyph->U1, glyph->V1},
          glyph->AdvanceX * scale,
          !glyph->Visible};
}

}
