#include "window/damage.hpp"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <iterator>
#include <utility>

namespace window {

namespace {

Area common(const Area& a, const Area& b) {
  return {std::max(a.left, b.left), std::max(a.top, b.top), std::min(a.right, b.right),
          std::min(a.bottom, b.bottom)};
}

Area around(const Area& a, const Area& b) {
  return {std::min(a.left, b.left), std::min(a.top, b.top), std::max(a.right, b.right),
          std::max(a.bottom, b.bottom)};
}

// As ImGui's back end cuts a clip rectangle down to whole pixels, which it counts from below.
Area clip_of(const ImVec4& clip, float height) {
  const int left = static_cast<int>(clip.x);
  const int below = static_cast<int>(height - clip.w);
  const int bottom = static_cast<int>(height) - below;
  return {left, bottom - static_cast<int>(clip.w - clip.y),
          left + static_cast<int>(clip.z - clip.x), bottom};
}

std::uint64_t mixed(std::uint64_t sum, std::uint64_t next) {
  sum = (sum ^ next) * 0x9E3779B97F4A7C15u;
  return sum ^ sum >> 29;
}

std::uint64_t bits(float x, float y) {
  std::uint32_t words[2];
  std::memcpy(&words[0], &x, sizeof x);
  std::memcpy(&words[1], &y, sizeof y);
  return static_cast<std::uint64_t>(words[0]) << 32 | words[1];
}

// Reads the pieces of one command.
struct Command {
  const ImDrawList& list;
  const ImDrawCmd& command;
  Area clip;
  std::uint64_t seed;

  int index(int at) const { return list.IdxBuffer[static_cast<int>(command.IdxOffset) + at]; }
  int size() const { return static_cast<int>(command.ElemCount); }

  struct Reach {
    int to = 0, lowest = 0, highest = 0; // the index behind the last one; vertices
  };

  // Of the piece that begins at an index: ImGui gives each its own vertices, behind all that were
  // there.
  Reach reach(int from) const {
    Reach out{from, index(from), index(from)};
    for (; out.to + 2 < size(); out.to += 3) {
      const auto [least, most] = std::minmax({index(out.to), index(out.to + 1), index(out.to + 2)});
      if (out.to > from && least > out.highest) break;
      out.lowest = std::min(out.lowest, least);
      out.highest = std::max(out.highest, most);
    }
    return out;
  }

  Piece piece(int from, const Reach& reach) const {
    Piece out;
    out.first = static_cast<int>(command.IdxOffset) + from;
    out.count = reach.to - from;
    out.what = seed;
    ImVec2 least{1e9f, 1e9f}, most{-1e9f, -1e9f};
    for (int i = reach.lowest; i <= reach.highest; ++i) {
      const ImDrawVert& v = list.VtxBuffer[static_cast<int>(command.VtxOffset) + i];
      out.what = mixed(mixed(mixed(out.what, bits(v.pos.x, v.pos.y)), bits(v.uv.x, v.uv.y)), v.col);
      least = {std::min(least.x, v.pos.x), std::min(least.y, v.pos.y)};
      most = {std::max(most.x, v.pos.x), std::max(most.y, v.pos.y)};
    }
    for (int at = from; at < reach.to; ++at)
      out.what = mixed(out.what, static_cast<std::uint64_t>(index(at) - reach.lowest));
    out.area = whole_pixels(least, most);
    return out;
  }

  Area whole_pixels(ImVec2 from, ImVec2 to) const {
    const auto cut = [](float v, int least, int most) {
      return std::clamp(v, static_cast<float>(least), static_cast<float>(most));
    };
    if (clip.empty()) return {};
    return {static_cast<int>(std::floor(cut(from.x, clip.left, clip.right))),
            static_cast<int>(std::floor(cut(from.y, clip.top, clip.bottom))),
            static_cast<int>(std::ceil(cut(to.x, clip.left, clip.right))),
            static_cast<int>(std::ceil(cut(to.y, clip.top, clip.bottom)))};
  }
};

std::uint64_t seed_of(const ImDrawCmd& command, const Area& clip) {
  std::uint64_t seed = mixed(1, reinterpret_cast<std::uintptr_t>(command.TextureId));
  for (const int edge : {clip.left, clip.top, clip.right, clip.bottom})
    seed = mixed(seed, static_cast<std::uint64_t>(edge));
  return seed;
}

void add_pieces(const Command& command, int list, int number, std::vector<Piece>& out) {
  for (int from = 0; from + 2 < command.size();) {
    const auto reach = command.reach(from);
    Piece piece = command.piece(from, reach);
    piece.list = list;
    piece.command = number;
    if (!piece.area.empty()) out.push_back(piece);
    from = reach.to;
  }
}

}

std::vector<Piece> pieces_of(const ImDrawData& data) {
  std::vector<Piece> out;
  for (int l = 0; l < data.CmdListsCount; ++l) {
    const ImDrawList& list = *data.CmdLists[l];
    for (int c = 0; c < list.CmdBuffer.Size; ++c) {
      const Area clip = clip_of(list.CmdBuffer[c].ClipRect, data.DisplaySize.y);
      add_pieces({list, list.CmdBuffer[c], clip, seed_of(list.CmdBuffer[c], clip)}, l, c, out);
    }
  }
  return out;
}

namespace {

// Areas are joined that lie so near that two would cost more than one.
constexpr int near_px = 12;
constexpr std::size_t most_areas = 12;

bool are_near(const Area& a, const Area& b) {
  return a.left - near_px < b.right && b.left - near_px < a.right && a.top - near_px < b.bottom &&
         b.top - near_px < a.bottom;
}

std::int64_t waste(const Area& a, const Area& b) {
  return around(a, b).pixels() - a.pixels() - b.pixels();
}

void join(std::vector<Area>& areas, Area next) {
  const auto by_waste = [&](const Area& a, const Area& b) {
    return waste(a, next) < waste(b, next);
  };
  for (auto to = areas.begin(); to != areas.end();) {
    to = std::find_if(areas.begin(), areas.end(),
                      [&](const Area& area) { return are_near(area, next); });
    if (to == areas.end() && areas.size() >= most_areas)
      to = std::min_element(areas.begin(), areas.end(), by_waste);
    if (to == areas.end()) break;
    next = around(*to, next);
    areas.erase(to);
    to = areas.begin();
  }
  areas.push_back(next);
}

// Where each look is drawn, in order.
using Places = std::vector<std::pair<std::uint64_t, std::size_t>>;

Places places_of(const std::vector<Piece>& pieces) {
  Places out;
  for (std::size_t i = 0; i < pieces.size(); ++i) out.emplace_back(pieces[i].what, i);
  std::sort(out.begin(), out.end());
  return out;
}

}

// A pixel is what the pieces over it make of it, in their order. So pieces that both have in the
// same order leave it as it was, however they are paired; the others are the damage.
std::vector<Area> damage(const std::vector<Piece>& before, const std::vector<Piece>& now) {
  const auto by_what = [](const Piece& a, const Piece& b) { return a.what == b.what; };
  const auto start = std::mismatch(before.begin(), before.end(), now.begin(), now.end(), by_what);
  const std::vector<Piece> old(start.first, before.end());
  const Places places = places_of(old);
  std::vector<Area> out;
  std::size_t at = 0;
  for (auto piece = start.second; piece != now.end(); ++piece) {
    const auto place = std::lower_bound(places.begin(), places.end(), std::pair(piece->what, at));
    if (place == places.end() || place->first != piece->what) {
      join(out, piece->area);
      continue;
    }
    for (; at < place->second; ++at) join(out, old[at].area);
    ++at;
  }
  for (; at < old.size(); ++at) join(out, old[at].area);
  return out;
}

namespace {

struct Kept {
  ImVector<ImDrawIdx> indices;
  ImVector<ImDrawCmd> commands;
};

// What of one list reaches into an area. The pieces of a command lie side by side.
void add_within(const Area& area, const ImDrawList& list, float height, const Piece* piece,
                const Piece* end, Kept& kept) {
  for (int last = -1; piece != end; ++piece) {
    if (common(piece->area, area).empty()) continue;
    if (piece->command != last) {
      ImDrawCmd command = list.CmdBuffer[last = piece->command];
      const Area clip = common(clip_of(command.ClipRect, height), area);
      command.ClipRect = {static_cast<float>(clip.left), static_cast<float>(clip.top),
                          static_cast<float>(clip.right), static_cast<float>(clip.bottom)};
      command.IdxOffset = static_cast<unsigned>(kept.indices.Size);
      command.ElemCount = 0;
      kept.commands.push_back(command);
    }
    const int from = kept.indices.Size;
    kept.indices.resize(from + piece->count);
    std::copy_n(list.IdxBuffer.Data + piece->first, piece->count, kept.indices.Data + from);
    kept.commands.back().ElemCount += static_cast<unsigned>(piece->count);
  }
}

}

void keep_within(ImDrawData& data, const std::vector<Piece>& pieces,
                 const std::vector<Area>& areas) {
  const Piece* from = pieces.data();
  const Piece* const end = from + pieces.size();
  for (int l = 0; l < data.CmdListsCount; ++l) {
    ImDrawList& list = *data.CmdLists[l];
    const Piece* to = std::find_if(from, end, [&](const Piece& p) { return p.list != l; });
    Kept kept;
    for (const Area& area : areas) add_within(area, list, data.DisplaySize.y, from, to, kept);
    list.IdxBuffer.swap(kept.indices);
    list.CmdBuffer.swap(kept.commands);
    from = to;
  }
}

}
