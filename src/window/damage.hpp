// What of a picture has changed since the one before, told from what ImGui wants drawn. Pure.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

struct ImDrawData;

namespace window {

struct Area { // pixels from the top left corner; up to, not including, right and bottom
  int left = 0, top = 0, right = 0, bottom = 0;
  bool operator==(const Area&) const = default;
  bool empty() const { return right <= left || bottom <= top; }
  std::int64_t pixels() const {
    return empty() ? 0 : static_cast<std::int64_t>(right - left) * (bottom - top);
  }
};

// Triangles that share vertices: a letter, a line, a filled box.
struct Piece {
  std::uint64_t what = 0;                          // a number made of all that tells how it looks
  Area area;                                       // nothing of it lies outside
  int list = 0, command = 0, first = 0, count = 0; // where its indices lie
};

// In the order in which they are drawn. A unit of ImGui's is a pixel.
std::vector<Piece> pieces_of(const ImDrawData& data);

// Areas that lie apart from each other; outside them both draw the same pixels.
std::vector<Area> damage(const std::vector<Piece>& before, const std::vector<Piece>& now);

// Leaves of what is drawn the pieces that reach into the areas, and clips them to those.
void keep_within(ImDrawData& data, const std::vector<Piece>& pieces,
                 const std::vector<Area>& areas);

}
