// One evening as the bytes of its file.
#pragma once

#include "make.hpp"
#include "session/bytes.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace make {

inline std::string written(const std::vector<session::Line>& lines) {
  std::string bytes;
  std::uint32_t before = 0;
  for (const session::Line& line : lines) {
    const auto encoded = session::encode(line, before);
    REQUIRE(encoded);
    bytes += encoded->bytes;
    before = encoded->check;
  }
  return bytes;
}

// began, five notes, left
inline std::vector<session::Line> evening() {
  Writer w;
  using session::Feel;
  for (const Feel feel :
       {Feel::wont_move, Feel::wont_move, Feel::too_sticky, Feel::right, Feel::too_loose}) {
    w.wait(10);
    w.put("7f3a91c2", session::Felt{feel, session::By::knife});
  }
  w.put("", session::Left{});
  return w.log.lines;
}

inline std::size_t start_of_line(const std::string& bytes, std::size_t line) {
  std::size_t at = 0;
  for (; line > 1; --line) at = bytes.find('\n', at) + 1;
  return at;
}

}
