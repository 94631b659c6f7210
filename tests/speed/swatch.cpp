// A photo of 12 megapixels from its bytes to the colour of its swatch, beside a bare decoder.
// Usage: swatch ROUNDS          a race, its first contender the decoder
//        swatch write FILE     that photo
//        swatch peak decode|read FILE  what one go takes of memory at most, in MB, in a process of
//                              its own
#include "colour/propose.hpp"
#include "commands/picture_images.hpp"
#include "speed/race.hpp"
#include "studio/photo_pixels.hpp"

#include <turbojpeg.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace {

constexpr int width = 4000, height = 3000;

// Paper with a swatch on it and a grain that costs a decoder something.
std::vector<unsigned char> pixels() {
  std::vector<unsigned char> rgb(3ULL * width * height);
  unsigned noise = 1;
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x) {
      noise = noise * 1664525u + 1013904223u;
      const int grain = static_cast<int>(noise >> 28) - 8;
      const bool swatch = x > 1200 && x < 2800 && y > 800 && y < 2200;
      unsigned char* at =
          &rgb[3 * (static_cast<std::size_t>(y) * width + static_cast<std::size_t>(x))];
      at[0] = static_cast<unsigned char>((swatch ? 40 : 215) + grain);
      at[1] = static_cast<unsigned char>((swatch ? 80 : 212) + grain);
      at[2] = static_cast<unsigned char>((swatch ? 160 : 205) + grain);
    }
  return rgb;
}

std::string photo() {
  const std::vector<unsigned char> rgb = pixels();
  const tjhandle coder = tjInitCompress();
  unsigned char* bytes = nullptr;
  unsigned long count = 0;
  speed::need(tjCompress2(coder, rgb.data(), width, 0, height, TJPF_RGB, &bytes, &count, TJSAMP_420,
                          90, 0) == 0,
              "no photo was made");
  std::string out(reinterpret_cast<const char*>(bytes), count);
  tjFree(bytes);
  tjDestroy(coder);
  return out;
}

void decode(const std::string& bytes) {
  std::vector<unsigned char> rgb(3ULL * width * height);
  const tjhandle decoder = tjInitDecompress();
  speed::need(tjDecompress2(decoder, reinterpret_cast<const unsigned char*>(bytes.data()),
                            bytes.size(), rgb.data(), width, 0, height, TJPF_RGB, 0) == 0,
              "the photo is not decoded");
  tjDestroy(decoder);
}

void read(const std::string& bytes) {
  const auto photo = studio::read_photo(bytes);
  speed::need(photo.has_value(), "the photo is not read");
  const auto regions = colour::propose_regions(*photo);
  speed::need(regions.size() == 1, "the swatch is not found");
  const auto reading = colour::read_swatch(*photo, regions.front());
  speed::need(reading && std::abs(reading->d50.l - 43) < 2, "the colour is not read");
}

// Made anew each time: no folder keeps it.
void thumbnail(const std::filesystem::path& file) {
  const commands::PictureHome home{file.parent_path(), disk::posix_files, {}, {}};
  const auto image = commands::make_image(home, {"file:" + file.string(), false});
  speed::need(image && image->width == commands::thumb_px, "the thumbnail is not made");
}

void print_peak() {
  std::ifstream status("/proc/self/status");
  std::string word;
  while (status >> word && word != "VmHWM:") {}
  status >> word;
  std::printf("%.1f\n", std::stod(word) / 1024);
}

}

int main(int count, char** words) {
  if (count == 4 && words[1] == std::string("peak")) {
    std::ifstream file(words[3], std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    words[2] == std::string("decode") ? decode(bytes) : read(bytes);
    print_peak();
    return 0;
  }
  if (count == 3 && words[1] == std::string("write")) {
    std::ofstream(words[2], std::ios::binary) << photo();
    return 0;
  }
  speed::need(count == 2, "usage: swatch ROUNDS");
  const std::string bytes = photo();
  const auto file = std::filesystem::temp_directory_path() / ("swatch-" + std::to_string(getpid()));
  std::ofstream(file, std::ios::binary) << bytes;
  speed::race("swatch",
              {{"decode", [&] { return speed::timed([&] { decode(bytes); }); }},
               {"read", [&] { return speed::timed([&] { read(bytes); }); }},
               {"thumb", [&] { return speed::timed([&] { thumbnail(file); }); }}},
              {speed::count_of(words[1]), 1, 1});
  std::filesystem::remove(file);
}
