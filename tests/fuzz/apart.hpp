// A studio's session files as one input, and taken apart so that they can be changed and sealed
// again: changed bytes alone never get past the check value.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

// 0xFF stands between two files: it is nowhere in UTF-8. Each file bears the name of its place.
std::vector<std::string_view> files_in(std::string_view input);
std::string name_of_file(std::size_t place);

struct Piece {
  std::string text;      // without LF; without its seal if it is sealed
  bool sealed = false;   // will be sealed, behind the one before
  bool torn_off = false; // will be sealed as if the one before were another
};
using Pieces = std::vector<std::vector<Piece>>; // by file

Pieces taken_apart(std::string_view input);
std::string put_together(const Pieces& files);

// One random change: of a line's bytes, of its place, of which lines there are.
void change(Pieces& files, std::uint32_t seed);

}
