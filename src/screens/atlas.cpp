#include "screens/atlas.hpp"

#include "screens/theme.hpp"
#include "words/screens_says.hpp"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <utility>

namespace screens {

namespace {

// What the sentences are made of. To draw letters takes longer than all else before the first
// frame, so the others, and whole heights, wait until a frame wants them. So does the sign for what
// is missing: with it ImGui's table of each font has 65534 lines.
constexpr std::array<std::pair<char32_t, char32_t>, 8> usual{{{0x20, 0x7E},
                                                              {0xB0, 0xB0},
                                                              {0xB2, 0xB2},
                                                              {0xB7, 0xB7},
                                                              {0xD7, 0xD7},
                                                              {0x2013, 0x2013},
                                                              {0x2019, 0x201D},
                                                              {0x2026, 0x2026}}};
constexpr std::array<std::pair<char32_t, char32_t>, 1> none{{{0x20, 0x20}}};

using Ranges = std::vector<ImWchar>; // first and last, in pairs, and a 0

struct Font {                       // of a height and a weight
  bool wanted = false;              // else it has a blank and nothing more
  std::array<Ranges, ranks> ranges; // ImGui reads these when it makes the texture
};

struct Atlas { // as ImGui's is, one a program
  double px_per_mm = 0;
  std::array<std::array<Font, 2>, cap::all.size()> fonts;
  std::set<char32_t> more; // beyond the usual
  bool grown = false;
  bool met_unknown = false; // a letter that no face has

  Atlas() { // what the first screen has
    for (std::size_t height = 0; cap::all[height] <= cap::head; ++height)
      for (Font& font : fonts[height]) font.wanted = true;
  }
};

Atlas& atlas() {
  static Atlas one;
  return one;
}

void add_letter(std::array<Ranges, ranks>& out, char32_t letter, bool bold) {
  const auto rank = rank_with(letter, bold);
  if (!rank) return;
  Ranges& ranges = out[static_cast<std::size_t>(*rank)];
  if (!ranges.empty() && ranges.back() + 1 == letter)
    ranges.back() = letter;
  else
    ranges.insert(ranges.end(), {static_cast<ImWchar>(letter), static_cast<ImWchar>(letter)});
}

template <class Letters>
std::array<Ranges, ranks> ranges_of(const Letters& letters, const std::set<char32_t>& more,
                                    bool bold) {
  std::array<Ranges, ranks> out;
  for (const auto& [first, last] : letters)
    for (char32_t letter = first; letter <= last; ++letter) add_letter(out, letter, bold);
  for (const char32_t letter : more) add_letter(out, letter, bold);
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

void add_face(double cap_mm, bool bold, int rank, const Ranges& ranges, bool merged) {
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

void add_font(double cap_mm, bool bold, Font& font) {
  font.ranges = font.wanted ? ranges_of(usual, atlas().more, bold) : ranges_of(none, {}, bold);
  for (int rank = 0; rank < ranks; ++rank) {
    const Ranges& ranges = font.ranges[static_cast<std::size_t>(rank)];
    if (!ranges.empty()) add_face(cap_mm, bold, rank, ranges, rank > 0);
  }
}

void fill() {
  ImGui::GetIO().Fonts->Clear();
  for (std::size_t height = 0; height < cap::all.size(); ++height)
    for (const bool bold : {false, true})
      add_font(cap::all[height], bold, atlas().fonts[height][bold]);
  atlas().grown = false;
}

}

words::Result<void> load_faces(double px_per_mm) {
  if (!(px_per_mm >= least_px_per_mm && px_per_mm <= most_px_per_mm))
    return words::failure(words::ScreensSay::letters_size,
                          {words::Number(px_per_mm, 3), words::Number(least_px_per_mm, 0),
                           words::Number(most_px_per_mm, 0)});
  if (auto there = faces_present(); !there) return there;
  atlas().px_per_mm = px_per_mm;
  fill();
  return {};
}

bool wants_letters() { return atlas().grown; }

bool met_unknown_letter() { return atlas().met_unknown; }

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

namespace {

const ImFontGlyph* glyph_of(char32_t code, double cap_mm, bool bold) {
  if (const ImFontGlyph* glyph = font_for(cap_mm, bold)->FindGlyphNoFallback(code)) return glyph;
  const bool common = std::any_of(usual.begin(), usual.end(), [&](const auto& range) {
    return range.first <= code && code <= range.second;
  });
  bool& wanted = atlas().fonts[place_of(cap_mm)][bold].wanted;
  atlas().grown |= !std::exchange(wanted, true);
  atlas().grown |= !common && atlas().more.insert(code).second;
  return nullptr;
}

}

Letter letter_of(char32_t code, double cap_mm, bool bold, double px_per_mm) {
  if (!rank_with(code, bold)) {
    atlas().met_unknown = true;
    code = sign_for_none(bold);
  }
  const auto rank = rank_with(code, bold);
  const ImFontGlyph* glyph = rank ? glyph_of(code, cap_mm, bold) : nullptr;
  if (!glyph) return {};
  const double there =
      whole_px(font_px(cap::all[place_of(cap_mm)], bold, atlas().px_per_mm, *rank));
  const double scale = font_px(cap_mm, bold, px_per_mm, *rank) / there;
  const double baseline =
      std::round(font_for(cap_mm, bold)->Ascent); // as ImGui puts glyphs below the line's top
  return {{glyph->X0 * scale, (glyph->Y0 - baseline) * scale, glyph->U0, glyph->V0},
          {glyph->X1 * scale, (glyph->Y1 - baseline) * scale, glyph->U1, glyph->V1},
          glyph->AdvanceX * scale,
          !glyph->Visible};
}

}
