// A photo as its file has it, with what the file says of its colours and of which way is up.
#pragma once

#include "colour/cielab.hpp"

#include <array>
#include <cstdint>
#include <vector>

namespace colour {

// What a pixel's three numbers mean: a curve for each to linear light, and a matrix to XYZ as it
// looks under D50. A photo in a wider space than sRGB is so read without loss. In a browser the
// engine has made sRGB of every photo by the time its pixels are had.
struct Encoding {
  std::array<std::array<float, 256>, 3> linear{}; // 1 for the brightest
  Matrix to_xyz_d50{};
};
const Encoding& srgb();

struct Photo {
  int width = 0, height = 0;     // as the file has it, which may lie on its side
  std::vector<std::uint8_t> rgb; // 3 bytes a pixel, row by row
  Encoding encoding = srgb();
  int orientation = 1; // EXIF's tag 0x0112, 1 to 8
  int shrunk = 1;      // of the file's pixels, each shrunk x shrunk are one here
  // Of a JPEG, by how much the middle of a block of 8 x 8 (of colour: 16 x 16) could be told apart,
  // in levels of 255. 0: not at all coarser than the levels.
  double light_step = 0, colour_step = 0;
  bool grey = false;        // the file has no colours at all
  bool see_through = false; // parts of it were, and were laid over white
};

// In the file's pixels, the photo turned upright; from the upper left.
struct Box {
  int x = 0, y = 0, width = 0, height = 0;
  bool operator==(const Box&) const = default;
};

struct Size {
  int width = 0, height = 0;
};
// How the picture stands that the file's rows and columns make. EXIF 2.3, 4.6.4 A, tag 0x0112.
bool on_its_side(int orientation); // rows are columns; mirrored is told of the file's own
bool mirrored_across(int orientation);
bool mirrored_down(int orientation);

// The file has no colours at all, whatever number of channels it is stored in.
bool is_grey(const std::vector<std::uint8_t>& rgb);

Size upright_size(const Photo& photo);
bool lies_in(const Box& box, const Photo& photo); // and has an area
bool overlap(const Box& one, const Box& other);

// The same place in the pixels that are here, and back.
Box as_stored(const Box& upright, const Photo& photo);
Box as_upright(const Box& stored, const Photo& photo);

}
