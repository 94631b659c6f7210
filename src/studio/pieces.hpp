// Files read piece by piece, so that a large one takes no more memory than a small one.
#pragma once

#include "disk/files.hpp"
#include "words/error.hpp"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>

namespace studio {

using Problem = std::optional<words::Error>; // absent: done

inline constexpr std::size_t longest_piece = std::size_t{1} << 20; // bytes

// Gives a plain file's bytes to `take` in order, at most `most` of them. Ends with the first
// problem, the disk's or that of `take`.
Problem in_pieces(disk::Files& files, const std::filesystem::path& file,
                  const std::function<Problem(std::string_view)>& take,
                  std::uint64_t most = std::numeric_limits<std::uint64_t>::max());

// FIPS 180-4, as 64 lower-case hexadecimal digits.
std::string sha256(std::string_view bytes);
words::Result<std::string> sha256_of_file(disk::Files& files, const std::filesystem::path& file);

}
