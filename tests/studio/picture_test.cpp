// Pictures are hostile until read: what their headers claim, and what the rest of them makes of it.
// Those in pictures/ were written by libjpeg-turbo's cjpeg 2.1.5 and netpbm's pnmtopng 11.1 from
// one picture of 16 x 16 pixels: the left half 200, 40, 30, the right half 30, 90, 200.
#include "disk/rig.hpp"
#include "studio/picture.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace picture_test {

using namespace studio;
using Say = words::StudioSay;

namespace {

std::string file(const std::string& name) {
  std::string bytes = rig::bytes_of(SLABSIDE_ROOT "/tests/studio/pictures/" + name);
  REQUIRE_FALSE(bytes.empty());
  return bytes;
}

// Big-endian, as both kinds have their numbers.
std::string number(std::uint32_t value, int bytes) {
  std::string out;
  for (int i = bytes - 1; i >= 0; --i) out += static_cast<char>(value >> (8 * i));
  return out;
}

std::string png_of(std::uint32_t width, std::uint32_t height) {
  std::string bytes = file("two.png");
  return bytes.replace(16, 8, number(width, 4) + number(height, 4));
}

std::string jpg_of(std::uint32_t width, std::uint32_t height) {
  std::string bytes = file("base.jpg");
  return bytes.replace(bytes.find("\xff\xc0") + 5, 4, number(height, 2) + number(width, 2));
}

words::Sentence refusal(const std::string& bytes) {
  const auto header = picture_header(bytes);
  const auto pixels = decode_picture(bytes);
  REQUIRE_FALSE(pixels);
  if (!header) CHECK(header.error() == pixels.error());
  return pixels.error().what;
}

// The largest difference of one colour in one half.
int worst(const Pixels& p, bool left, int r, int g, int b) {
  int most = 0;
  for (int y = 0; y < 2; ++y)
    for (int x = left ? 0 : 1; x < (left ? 1 : 2); ++x) {
      const std::uint8_t* at = &p.rgb[static_cast<std::size_t>(3 * (2 * y + x))];
      most = std::max({most, std::abs(at[0] - r), std::abs(at[1] - g), std::abs(at[2] - b)});
    }
  return most;
}

}

TEST_CASE("pictures that other programs wrote") {
  for (const char* name : {"two.png", "woven.png", "deep.png", "base.jpg", "prog.jpg"}) {
    CAPTURE(name);
    const bool jpg = std::string(name).find("jpg") != std::string::npos;
    const auto header = picture_header(file(name));
    REQUIRE(header);
    CHECK(header->kind == (jpg ? PictureKind::jpg : PictureKind::png));
    CHECK(header->width == 16);
    CHECK(header->height == 16);
    const auto pixels = decode_picture(file(name));
    REQUIRE(pixels);
    REQUIRE(pixels->rgb.size() == 2 * 2 * 3);
    // djpeg's own reading of base.jpg is one step off; colour kept at half the grid bleeds over the
    // edge between the halves by far more, but nowhere near to the other half's.
    const int within = !jpg ? 0 : std::string(name) == "base.jpg" ? 2 : 60;
    CHECK(worst(*pixels, true, 200, 40, 30) <= within);
    CHECK(worst(*pixels, false, 30, 90, 200) <= within);
  }
  const auto grey = decode_picture(file("gray.jpg"));
  REQUIRE(grey);
  CHECK(grey->rgb[0] == grey->rgb[1]);
}

TEST_CASE("nothing, text, and pictures of other kinds are refused, whatever they hold further on") {
  CHECK(refusal("") == Say::photo_empty);
  CHECK(refusal("\xff\xd8") == Say::photo_not_known);
  for (const std::string& start :
       {std::string(1, '\0'), std::string("GIF89a\x10\0\x10\0", 10), std::string("BM"),
        std::string("8BPS"), std::string("#?RADIANCE\n"), std::string("P6\n16 16\n255\n"),
        std::string("RIFF....WEBP"), std::string("\x89PNG\r\n"), std::string("<html>"),
        std::string(1, ' ')})
    for (const std::string& rest : {std::string(), file("two.png"), file("base.jpg")}) {
      CAPTURE(start);
      CHECK(refusal(start + rest) == Say::photo_not_known);
    }
}

TEST_CASE("of a file that is two kinds at once, only what it begins as is read") {
  const std::string png = file("two.png"), jpg = file("base.jpg");
  CHECK(picture_header(png + jpg)->kind == PictureKind::png);
  CHECK(picture_header(jpg + png)->kind == PictureKind::jpg);
  CHECK(decode_picture(jpg + png)->rgb == decode_picture(jpg)->rgb);
  CHECK(refusal(jpg.substr(0, 3) + png) == Say::photo_without_size);
  CHECK(refusal(png.substr(0, 8) + jpg) == Say::photo_without_size);
}

TEST_CASE("a size that is none or too large is refused before anything is decoded") {
  for (const auto& [width, height] : {std::pair{0u, 16u}, {16u, 0u}}) {
    CHECK(refusal(png_of(width, height)) == Say::photo_without_size);
    CHECK(refusal(jpg_of(width, height)) == Say::photo_without_size);
  }
  for (const auto& [width, height] :
       {std::pair{32769u, 1u}, {1u, 32769u}, {8001u, 8000u}, {65535u, 65535u}}) {
    CHECK(refusal(png_of(width, height)) == Say::photo_too_large);
    CHECK(refusal(jpg_of(width, height)) == Say::photo_too_large);
  }
  for (const std::uint32_t huge : {0x7fffffffu, 0x80000000u, 0xffffffffu}) {
    CHECK(refusal(png_of(huge, 1)) == Say::photo_too_large);
    CHECK(refusal(png_of(huge, huge)) == Say::photo_too_large);
  }
  CHECK(picture_header(png_of(8000, 8000)));
  CHECK(picture_header(jpg_of(32768, 1)));
  CHECK(refusal(png_of(8000, 8000)) == Say::photo_not_decoded); // the pixels do not follow
}

TEST_CASE("a file that is too long is refused for that alone") {
  std::string bytes = file("two.png");
  bytes.resize(most_picture_bytes);
  CHECK(picture_header(bytes));
  bytes += '\0';
  CHECK(refusal(bytes) == Say::photo_too_long);
}

TEST_CASE("a table of more codes than there can be is refused") {
  // Found by tests/fuzz in stb_image 2.27, which wrote them all (T.81 B.2.4.2: at most 256).
  CHECK(refusal(file("huffman.jpg")) == Say::photo_not_decoded);
}

TEST_CASE("cut anywhere, and with any byte changed: an error or a picture of its size, no more") {
  for (const char* name :
       {"two.png", "woven.png", "deep.png", "base.jpg", "prog.jpg", "arith.jpg"}) {
    const std::string whole = file(name);
    for (std::size_t at = 0; at < whole.size(); ++at) {
      CAPTURE(name);
      CAPTURE(at);
      const auto cut = decode_picture(std::string_view(whole).substr(0, at));
      if (cut) CHECK(cut->rgb.size() == 2 * 2 * 3);
      for (const int flip : {0x01, 0x80, 0xff}) {
        std::string changed = whole;
        changed[at] = static_cast<char>(changed[at] ^ flip);
        const auto header = picture_header(changed);
        // Else the whole of what a large header asks for is set aside for each.
        if (!header || header->width * header->height > 1'000'000) continue;
        if (const auto read = decode_picture(changed)) {
          CHECK(read->width == (header->width + 7) / 8);
          CHECK(read->height == (header->height + 7) / 8);
        }
      }
    }
  }
}

namespace {

std::uint32_t crc(const std::string& bytes) { // ISO/IEC 15948, annex D
  std::uint32_t c = 0xffffffff;
  for (const char byte : bytes) {
    c ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) c = c & 1 ? 0xedb88320 ^ (c >> 1) : c >> 1;
  }
  return ~c;
}

std::string chunk(const std::string& name, const std::string& data) {
  return number(static_cast<std::uint32_t>(data.size()), 4) + name + data +
         number(crc(name + data), 4);
}

// Deflate (RFC 1951) with its fixed code: one zero byte, then copies of 258 bytes from one back.
// A copy is 13 bits: 11000101 for the length of 258, 00000 for the distance of 1.
std::string zeros(std::size_t copies) {
  std::string bits = "110"
                     "00110000"; // the last block, fixed code; a literal zero
  for (std::size_t i = 0; i < copies; ++i) bits += "1100010100000";
  bits += "0000000"; // the end
  std::string out("\x78\x01", 2);
  for (std::size_t i = 0; i < bits.size(); i += 8) {
    int byte = 0;
    for (std::size_t k = 0; k < 8 && i + k < bits.size(); ++k) byte |= (bits[i + k] - '0') << k;
    out += static_cast<char>(byte);
  }
  return out + std::string(4, '\0');
}

// Grey, of so many zeros.
std::string png_with(std::size_t copies, std::uint32_t side = 1, bool interlaced = false) {
  const std::string kind = std::string("\x08\0\0\0", 4) + (interlaced ? '\1' : '\0');
  return file("two.png").substr(0, 8) + chunk("IHDR", number(side, 4) + number(side, 4) + kind) +
         chunk("IDAT", zeros(copies)) + chunk("IEND", "");
}

std::string progressive_of(std::uint32_t width, std::uint32_t height) {
  std::string bytes = file("prog.jpg");
  return bytes.replace(bytes.find("\xff\xc2") + 5, 4, number(height, 2) + number(width, 2));
}

// MB that decoding took, in a program of its own: what was taken once counts for ever. -1 where it
// did not come to `decoded`.
int megabytes_for(const std::string& bytes, bool decoded) {
  const pid_t child = ::fork();
  if (child == 0) {
    rusage before = {}, after = {};
    ::getrusage(RUSAGE_SELF, &before);
    const bool as_told = decode_picture(bytes).has_value() == decoded;
    ::getrusage(RUSAGE_SELF, &after);
    const long mb = (after.ru_maxrss - before.ru_maxrss) / 1000;
    ::_exit(as_told ? static_cast<int>(std::min(mb, 250L)) : 255);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  REQUIRE(WIFEXITED(status));
  return WEXITSTATUS(status) == 255 ? -1 : WEXITSTATUS(status);
}

}

TEST_CASE("the largest photos are read within 200 MB, their own 32 among them") {
  static constexpr int most = 200 - 32;
  constexpr std::size_t enough = 249'000; // copies for 8000 x 8000 grey pixels
  const auto within = [](int mb) {
    CHECK(mb >= 0);
    CHECK(mb < most);
  };
  within(megabytes_for(png_with(enough, 8000), true));
  within(megabytes_for(png_with(enough, 8000, true), true));
  CHECK(megabytes_for(png_with(enough / 2, 8000), false) >= 0); // cut short
  // Large ones by their header alone: what has to be held is set aside all the same.
  within(megabytes_for(jpg_of(8000, 8000), false));
  const std::int64_t per_pixel = picture_header(progressive_of(800, 800))->held_bytes / 640'000;
  CHECK(per_pixel >= 3);
  std::uint32_t side = 800;
  while (picture_header(progressive_of(side + 16, side + 16))) side += 16;
  within(megabytes_for(progressive_of(side, side), false));
  CHECK(refusal(progressive_of(side + 16, side + 16)) == Say::photo_too_large_in_scans);
  CHECK(refusal(progressive_of(8000, 8000)) == Say::photo_too_large_in_scans);
}

TEST_CASE("a small file that unpacks to very much takes memory for no more than its header says") {
  // One grey pixel and some zeros too many is a picture yet: so the packing above is right.
  const auto harmless = decode_picture(png_with(1));
  REQUIRE(harmless);
  CHECK(harmless->rgb == std::vector<std::uint8_t>{0, 0, 0});
  // 310 MB of zeros in 2 MB.
  const std::string bomb = png_with(1'200'000);
  rusage before = {}, after = {};
  REQUIRE(::getrusage(RUSAGE_SELF, &before) == 0);
  const auto pixels = decode_picture(bomb);
  REQUIRE(::getrusage(RUSAGE_SELF, &after) == 0);
  CHECK(after.ru_maxrss - before.ru_maxrss < 100'000); // kB
  if (pixels) CHECK(pixels->rgb == harmless->rgb);
}

}
