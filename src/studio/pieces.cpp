#include "studio/pieces.hpp"

#include "studio/sentences.hpp"

#include <sha2.h>

#include <algorithm>
#include <array>

namespace studio {

namespace {

void add(SHA2_CTX& sum, std::string_view bytes) {
  SHA256Update(&sum, reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

std::string ended(SHA2_CTX& sum) {
  std::array<char, SHA256_DIGEST_STRING_LENGTH> hex{};
  SHA256End(&sum, hex.data());
  return hex.data();
}

}

Problem in_pieces(disk::Files& files, const std::filesystem::path& file,
                  const std::function<Problem(std::string_view)>& take, std::uint64_t most) {
  std::uint64_t at = 0;
  while (at < most) {
    const auto wanted = static_cast<std::size_t>(std::min<std::uint64_t>(longest_piece, most - at));
    const disk::Bytes piece = files.read_piece(file, at, wanted);
    if (piece.code != 0) return error(disk::Operation::read, file, piece.code);
    if (auto problem = take(piece.bytes)) return problem;
    if (piece.bytes.size() < wanted) return {}; // the file ends here
    at += wanted;
  }
  return {};
}

std::string sha256(std::string_view bytes) {
  SHA2_CTX sum;
  SHA256Init(&sum);
  add(sum, bytes);
  return ended(sum);
}

words::Result<std::string> sha256_of_file(disk::Files& files, const std::filesystem::path& file) {
  SHA2_CTX sum;
  SHA256Init(&sum);
  const auto unread = in_pieces(files, file, [&](std::string_view piece) {
    add(sum, piece);
    return Problem{};
  });
  if (unread) return tl::make_unexpected(*unread);
  return ended(sum);
}

}
