#include "colour/scene.hpp"

#include <png.h>
#include <turbojpeg.h>

#include <algorithm>
#include <cmath>
#include <cstring>

namespace scene {

using colour::Box;
using colour::Three;

double Dice::normal() {
  const double radius = std::sqrt(-2 * std::log(1 - even(0, 1)));
  return radius * std::cos(6.283185307179586 * even(0, 1));
}

Three ratio_of(const colour::Lab& lab) {
  static const colour::Matrix back = colour::inverse(colour::srgb_to_xyz_d50());
  return colour::times(back, colour::xyz(lab, colour::d50));
}

bool can_be_painted(const colour::Lab& lab) {
  const Three r = ratio_of(lab);
  return std::all_of(r.begin(), r.end(), [](double v) { return v > 0.006 && v < 0.97; });
}

std::vector<Box> paper_around(const Box& s, int away, int wide) {
  return {{s.x - away - wide, s.y, wide, s.height},
          {s.x + s.width + away, s.y, wide, s.height},
          {s.x, s.y - away - wide, s.width, wide},
          {s.x, s.y + s.height + away, s.width, wide}};
}

Box inside(const Box& box, int seam) {
  return {box.x + seam, box.y + seam, box.width - 2 * seam, box.height - 2 * seam};
}

namespace {

struct Sheet { // linear light, upright
  int width = 0, height = 0;
  std::vector<Three> at;
  Three& cell(int x, int y) {
    return at[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
              static_cast<std::size_t>(x)];
  }
};

// What the camera makes of paint beside paper.
Three as_seen(Three r, const Camera& camera) {
  const double light = colour::times(colour::srgb_to_xyz_d50(), r)[1];
  for (double& v : r) {
    v = v + camera.liveliness * (v - light);
    v = std::max(0.0, (v + camera.black) / (1 + camera.black));
    v = std::pow(v, 1 + camera.curve);
  }
  const Three own{r[0] * camera.white[0], r[1] * camera.white[1], r[2] * camera.white[2]};
  const Three paper = colour::times(colour::srgb_to_xyz_d50(), camera.white);
  static const colour::Matrix back = colour::inverse(colour::srgb_to_xyz_d50());
  const Three other =
      colour::times(back, colour::times(colour::adaptation(colour::d50, paper),
                                        colour::times(colour::srgb_to_xyz_d50(), r)));
  Three out{};
  for (std::size_t i = 0; i < 3; ++i)
    out[i] = camera.white_way * own[i] + (1 - camera.white_way) * other[i];
  return out;
}

Sheet painted(const Table& table, const Camera& camera) {
  Sheet sheet{table.width, table.height, {}};
  sheet.at.assign(static_cast<std::size_t>(table.width) * static_cast<std::size_t>(table.height),
                  camera.white);
  for (const Swatch& swatch : table.swatches) {
    const Three seen = as_seen(ratio_of(swatch.colour), camera);
    for (int y = swatch.box.y; y < swatch.box.y + swatch.box.height; ++y)
      for (int x = swatch.box.x; x < swatch.box.x + swatch.box.width; ++x) sheet.cell(x, y) = seen;
  }
  for (const Speck& speck : table.specks) {
    const double r = speck.across / 2;
    for (int y = static_cast<int>(speck.y - r); y <= static_cast<int>(speck.y + r) + 1; ++y)
      for (int x = static_cast<int>(speck.x - r); x <= static_cast<int>(speck.x + r) + 1; ++x)
        if (std::hypot(x - speck.x, y - speck.y) <= r)
          for (double& v : sheet.cell(x, y)) v *= speck.light;
  }
  return sheet;
}

void lit(Sheet& sheet, const Table& table, const Camera& camera) {
  const double half = std::max(sheet.width, sheet.height) / 2.0;
  for (int y = 0; y < sheet.height; ++y)
    for (int x = 0; x < sheet.width; ++x) {
      const double u = (x - sheet.width / 2.0) / half, v = (y - sheet.height / 2.0) / half;
      const double light = camera.exposure *
                           (1 + camera.across * u + camera.down * v + camera.bow * (u * u + v * v));
      for (std::size_t i = 0; i < 3; ++i) sheet.cell(x, y)[i] *= light * table.paper[i];
    }
}

// A running mean along one direction.
void blur_line(std::vector<Three>& line, int reach) {
  const std::vector<Three> before = line;
  const int n = static_cast<int>(line.size());
  for (int i = 0; i < n; ++i) {
    Three sum{};
    for (int k = i - reach; k <= i + reach; ++k)
      for (std::size_t c = 0; c < 3; ++c)
        sum[c] += before[static_cast<std::size_t>(std::clamp(k, 0, n - 1))][c];
    for (std::size_t c = 0; c < 3; ++c)
      line[static_cast<std::size_t>(i)][c] = sum[c] / (2 * reach + 1);
  }
}

void blur(Sheet& sheet, int reach) {
  if (reach == 0) return;
  std::vector<Three> line;
  for (int y = 0; y < sheet.height; ++y) {
    line.clear();
    for (int x = 0; x < sheet.width; ++x) line.push_back(sheet.cell(x, y));
    blur_line(line, reach);
    for (int x = 0; x < sheet.width; ++x) sheet.cell(x, y) = line[static_cast<std::size_t>(x)];
  }
  for (int x = 0; x < sheet.width; ++x) {
    line.clear();
    for (int y = 0; y < sheet.height; ++y) line.push_back(sheet.cell(x, y));
    blur_line(line, reach);
    for (int y = 0; y < sheet.height; ++y) sheet.cell(x, y) = line[static_cast<std::size_t>(y)];
  }
}

// EXIF 4.6.4, table of orientations: where row 0 and column 0 of what is stored lie.
std::pair<int, int> stored_place(int u, int v, int width, int height, int orientation) {
  const int right = width - 1 - u, bottom = height - 1 - v; // upright, from the other sides
  switch (orientation) {
  case 2: return {right, v};
  case 3: return {right, bottom};
  case 4: return {u, bottom};
  case 5: return {v, u};
  case 6: return {v, right};
  case 7: return {bottom, right};
  case 8: return {bottom, u};
  default: return {u, v};
  }
}

// By a table: the curve is asked for each pixel.
std::uint8_t level_of(double linear) {
  static const std::vector<std::uint8_t> table = [] {
    std::vector<std::uint8_t> out;
    for (int i = 0; i <= 16384; ++i)
      out.push_back(static_cast<std::uint8_t>(
          std::lround(255 * std::clamp(colour::linear_to_srgb(i / 16384.0), 0.0, 1.0))));
    return out;
  }();
  return table[static_cast<std::size_t>(std::clamp(linear, 0.0, 1.0) * 16384 + 0.5)];
}

}

colour::Photo photograph(const Table& table, const Camera& camera, Dice& dice) {
  Sheet sheet = painted(table, camera);
  lit(sheet, table, camera);
  blur(sheet, camera.blur);
  const bool turned = camera.orientation >= 5;
  colour::Photo photo;
  photo.width = turned ? table.height : table.width;
  photo.height = turned ? table.width : table.height;
  photo.orientation = camera.orientation;
  photo.rgb.resize(3 * sheet.at.size());
  for (int y = 0; y < sheet.height; ++y)
    for (int x = 0; x < sheet.width; ++x) {
      const auto [i, j] = stored_place(x, y, table.width, table.height, camera.orientation);
      std::uint8_t* to =
          &photo.rgb[3 * (static_cast<std::size_t>(j) * static_cast<std::size_t>(photo.width) +
                          static_cast<std::size_t>(i))];
      for (std::size_t c = 0; c < 3; ++c) {
        const double light = std::max(0.0, sheet.cell(x, y)[c]);
        const double sd = camera.read_noise + camera.shot_noise * std::sqrt(light);
        to[c] = level_of(sd > 0 ? light + sd * dice.normal() : light);
      }
    }
  return photo;
}

namespace {

std::string segment(char marker, const std::string& body) {
  const std::size_t length = body.size() + 2;
  return std::string("\xff") + marker + static_cast<char>(length >> 8) +
         static_cast<char>(length & 255) + body;
}

// One entry: 0x0112, a short.
std::string exif(int orientation) {
  return std::string("Exif\0\0MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0", 25) +
         static_cast<char>(orientation) + std::string(6, '\0');
}

void append_bytes(png_structp png, png_bytep bytes, png_size_t count) {
  static_cast<std::string*>(png_get_io_ptr(png))
      ->append(reinterpret_cast<const char*>(bytes), count);
}

}

std::string jpeg_of(const colour::Photo& photo, int quality, const std::string& profile) {
  const tjhandle coder = tjInitCompress();
  unsigned char* bytes = nullptr;
  unsigned long count = 0;
  tjCompress2(coder, photo.rgb.data(), photo.width, 0, photo.height, TJPF_RGB, &bytes, &count,
              TJSAMP_420, quality, 0);
  std::string out(reinterpret_cast<const char*>(bytes), count);
  tjFree(bytes);
  tjDestroy(coder);
  std::string tags = segment('\xe1', exif(photo.orientation));
  if (!profile.empty()) tags += segment('\xe2', std::string("ICC_PROFILE\0\1\1", 14) + profile);
  return out.insert(2, tags);
}

std::string png_of(const colour::Photo& photo, const std::string& profile) {
  std::string out;
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
  png_infop info = png_create_info_struct(png);
  png_set_write_fn(png, &out, append_bytes, nullptr);
  png_set_IHDR(png, info, static_cast<png_uint_32>(photo.width),
               static_cast<png_uint_32>(photo.height), 8, PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  png_write_info(png, info);
  const std::string chunk = std::string("a\0\0", 3) + profile;
  if (!profile.empty())
    png_write_chunk(png, reinterpret_cast<png_const_bytep>("iCCP"),
                    reinterpret_cast<png_const_bytep>(chunk.data()), chunk.size());
  for (int y = 0; y < photo.height; ++y)
    png_write_row(
        png, &photo.rgb[3 * static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width)]);
  png_write_end(png, info);
  png_destroy_write_struct(&png, &info);
  return out;
}

}
