// From a photo's file to pixels whose colours mean something: which way is up, which colours, how
// coarse; and files that are no such photo.
#include "colour/difference.hpp"
#include "colour/scene.hpp"
#include "studio/decode.hpp"
#include "studio/jpg_tags.hpp"
#include "studio/photo_pixels.hpp"
#include "studio/picture.hpp"
#include "studio/profile.hpp"
#include "words/studio_says.hpp"

#include <doctest/doctest.h>
#include <lcms2.h>
#include <turbojpeg.h>

#include <cmath>
#include <fstream>
#include <iterator>

using namespace colour;
using Say = words::StudioSay;
using scene::Camera;
using scene::Dice;
using scene::Table;

namespace {

constexpr Box box{110, 70, 100, 100};
constexpr Lab ochre{55, 18, 48};

Photo photographed(int orientation) {
  Table table;
  table.swatches = {{box, ochre}};
  Camera camera;
  camera.read_noise = 0.002;
  camera.shot_noise = 0.01;
  camera.orientation = orientation;
  Dice dice(21);
  return scene::photograph(table, camera, dice);
}

Regions regions() { return {scene::inside(box, 12), scene::paper_around(box, 8, 24)}; }

std::string file(const std::string& name) {
  std::ifstream in(SLABSIDE_ROOT "/tests/studio/pictures/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

std::string bytes_of(cmsHPROFILE profile) {
  cmsUInt32Number size = 0;
  cmsSaveProfileToMem(profile, nullptr, &size);
  std::string out(size, '\0');
  cmsSaveProfileToMem(profile, out.data(), &size);
  cmsCloseProfile(profile);
  return out;
}

// Display P3's primaries with sRGB's curve, or any other curve.
std::string profile_of(double gamma) {
  cmsCIExyYTRIPLE primaries{{0.680, 0.320, 1}, {0.265, 0.690, 1}, {0.150, 0.060, 1}};
  cmsCIExyY white{0.3127, 0.3290, 1};
  cmsToneCurve* curve = cmsBuildGamma(nullptr, gamma);
  cmsToneCurve* curves[] = {curve, curve, curve};
  std::string out = bytes_of(cmsCreateRGBProfile(&white, &primaries, curves));
  cmsFreeToneCurve(curve);
  return out;
}

// The same as tables: from RGB to CIELAB.
std::string tables_of(double gamma) {
  const std::string shaper = profile_of(gamma);
  const cmsHPROFILE from =
      cmsOpenProfileFromMem(shaper.data(), static_cast<cmsUInt32Number>(shaper.size()));
  const cmsHPROFILE lab = cmsCreateLab4Profile(nullptr);
  const cmsHTRANSFORM way =
      cmsCreateTransform(from, TYPE_RGB_16, lab, TYPE_Lab_16, INTENT_RELATIVE_COLORIMETRIC, 0);
  std::string out = bytes_of(cmsTransform2DeviceLink(way, 4.3, cmsFLAGS_GUESSDEVICECLASS));
  cmsDeleteTransform(way);
  cmsCloseProfile(lab);
  cmsCloseProfile(from);
  return out;
}

// As zlib packs what it leaves as it is (RFC 1950 and 1951, 3.2.4): up to 65535 bytes.
std::string packed(const std::string& bytes) {
  const auto low = [](std::size_t n) { return static_cast<char>(n & 255); };
  const std::size_t n = bytes.size();
  std::uint32_t a = 1, b = 0;
  for (const char c : bytes) {
    a = (a + static_cast<unsigned char>(c)) % 65521;
    b = (b + a) % 65521;
  }
  std::string out = "\x78\x01\x01";
  for (const std::size_t each : {n, n >> 8, ~n, ~n >> 8}) out += low(each);
  out += bytes;
  for (const std::uint32_t each : {b >> 8, b, a >> 8, a}) out += low(each);
  return out;
}

// The same light, written down as the profile has it.
Photo in_profile(const Photo& photo, double gamma) {
  const Matrix to_p3 = [] {
    Matrix p3{};
    constexpr std::array<std::array<double, 2>, 3> xy{
        {{0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}}};
    for (std::size_t i = 0; i < 3; ++i) {
      p3[0][i] = xy[i][0] / xy[i][1];
      p3[1][i] = 1;
      p3[2][i] = (1 - xy[i][0] - xy[i][1]) / xy[i][1];
    }
    const Three strength = times(inverse(p3), d65);
    for (Three& row : p3)
      for (std::size_t i = 0; i < 3; ++i) row[i] *= strength[i];
    return product(inverse(p3), srgb_to_xyz_d65());
  }();
  Photo out = photo;
  for (std::size_t i = 0; i + 2 < photo.rgb.size(); i += 3) {
    Three light{};
    for (std::size_t k = 0; k < 3; ++k)
      light[k] = static_cast<double>(photo.encoding.linear[k][photo.rgb[i + k]]);
    const Three there = times(to_p3, light);
    for (std::size_t k = 0; k < 3; ++k)
      out.rgb[i + k] = static_cast<std::uint8_t>(
          std::lround(255 * std::pow(std::min(1.0, std::max(0.0, there[k])), 1 / gamma)));
  }
  return out;
}

words::Sentence refusal(const std::string& bytes) {
  const auto photo = studio::read_photo(bytes);
  REQUIRE_FALSE(photo);
  return photo.error().what;
}

}

TEST_CASE("a JPEG on any side is read as it is seen upright") {
  for (int orientation = 1; orientation <= 8; ++orientation) {
    CAPTURE(orientation);
    const auto photo = studio::read_photo(scene::jpeg_of(photographed(orientation), 90));
    REQUIRE(photo);
    CHECK(photo->orientation == orientation);
    CHECK(upright_size(*photo).width == 320);
    const auto reading = read_swatch(*photo, regions());
    REQUIRE(reading);
    CHECK(difference(reading->d50, ochre) < 0.8);
  }
}

TEST_CASE("a picture in black and white has no colour to read, in however many channels") {
  Photo photo = photographed(1);
  for (std::size_t i = 0; i + 2 < photo.rgb.size(); i += 3)
    photo.rgb[i + 1] = photo.rgb[i + 2] = photo.rgb[i];
  for (const std::string& bytes : {scene::png_of(photo), scene::jpeg_of(photo, 90)}) {
    const auto read = studio::read_photo(bytes);
    REQUIRE(read);
    CHECK(read->grey);
    const auto reading = read_swatch(*read, regions());
    REQUIRE_FALSE(reading);
    CHECK(reading.error() == Untold::no_colours);
  }
  CHECK_FALSE(studio::read_photo(scene::png_of(photographed(1)))->grey);
}

TEST_CASE("how coarse a JPEG is stands in its tables") {
  const auto fine = studio::jpg_tags(scene::jpeg_of(photographed(1), 95));
  const auto coarse = studio::jpg_tags(scene::jpeg_of(photographed(1), 60));
  // T.81, annex K.1: 16 and 17, of which quality 60 takes 0.8, as libjpeg counts.
  CHECK(coarse.light_step == doctest::Approx(13 / 8.0));
  CHECK(coarse.colour_step == doctest::Approx(14 / 8.0));
  CHECK(fine.light_step < coarse.light_step / 4);
  CHECK(coarse.components == 3);
  const auto read = studio::read_photo(scene::jpeg_of(photographed(1), 60));
  const auto finer = studio::read_photo(scene::jpeg_of(photographed(1), 95));
  REQUIRE((read && finer));
  CHECK(read_swatch(*read, regions())->own[2][2] > read_swatch(*finer, regions())->own[2][2]);
}

TEST_CASE("a profile is what the colours mean, in a JPEG and of a curve other than sRGB's") {
  const Photo photo = photographed(1);
  for (const double gamma : {2.2, 1.8}) {
    CAPTURE(gamma);
    const auto read =
        studio::read_photo(scene::jpeg_of(in_profile(photo, gamma), 95, profile_of(gamma)));
    REQUIRE(read);
    const auto reading = read_swatch(*read, regions());
    REQUIRE(reading);
    CHECK(difference(reading->d50, ochre) < 0.8);
    // Without it, the same pixels are another colour.
    const auto plain = studio::read_photo(scene::jpeg_of(in_profile(photo, gamma), 95));
    CHECK(difference(read_swatch(*plain, regions())->d50, ochre) > 2);
  }
}

TEST_CASE("a profile of tables turns the pixels into sRGB") {
  const Photo photo = photographed(1);
  Photo tabled = in_profile(photo, 1.8);
  const std::vector<std::uint8_t> before = tabled.rgb;
  REQUIRE(studio::take_profile(tables_of(1.8), tabled));
  CHECK(tabled.rgb != before);
  CHECK(tabled.encoding.to_xyz_d50 == photo.encoding.to_xyz_d50);
  CHECK(difference(read_swatch(tabled, regions())->d50, ochre) < 1.5);
  std::string cut = tables_of(1.8);
  cut.resize(cut.size() / 2);
  CHECK_FALSE(studio::take_profile(cut, tabled));
}

TEST_CASE("every second or fourth pixel: those of a PNG as they are, of a JPEG in their mean") {
  const Photo photo = photographed(1);
  for (const int by : {2, 4}) {
    CAPTURE(by);
    const auto png = studio::decode_part(scene::png_of(photo), by);
    const auto jpg = studio::decode_part(scene::jpeg_of(photo, 95), by);
    REQUIRE((png && jpg));
    CHECK(png->width == 320 / by);
    CHECK(png->height == 240 / by);
    CHECK(jpg->rgb.size() == png->rgb.size());
    double off = 0;
    bool as_it_is = true;
    for (int y = 0; y < png->height; ++y)
      for (int x = 0; x < png->width; ++x)
        for (int k = 0; k < 3; ++k) {
          const std::size_t to = static_cast<std::size_t>(3 * (y * png->width + x) + k);
          const auto at = [&](int dx, int dy) {
            return photo.rgb[static_cast<std::size_t>(3 * ((y * by + dy) * 320 + x * by + dx) + k)];
          };
          as_it_is = as_it_is && png->rgb[to] == at(0, 0);
          double mean = 0;
          for (int dy = 0; dy < by; ++dy)
            for (int dx = 0; dx < by; ++dx) mean += at(dx, dy) / static_cast<double>(by * by);
          off += std::abs(mean - jpg->rgb[to]);
        }
    CHECK(as_it_is);
    CHECK(off / static_cast<double>(jpg->rgb.size()) < 3);
  }
}

TEST_CASE("a profile that is damaged, or none of RGB, is said and not passed over") {
  const Photo photo = photographed(1);
  CHECK(refusal(scene::jpeg_of(photo, 90, "nonsense")) == Say::photo_bad_profile);
  std::string cut = profile_of(2.2);
  cut.resize(cut.size() / 2);
  CHECK(refusal(scene::jpeg_of(photo, 90, cut)) == Say::photo_bad_profile);
  CHECK(refusal(scene::png_of(photo, "nonsense")) == Say::photo_bad_profile);
  CHECK(refusal(scene::png_of(photo, packed(profile_of(2.2).substr(0, 200)))) ==
        Say::photo_bad_profile);
  const auto whole =
      studio::read_photo(scene::png_of(in_profile(photo, 1.8), packed(profile_of(1.8))));
  REQUIRE(whole);
  CHECK(difference(read_swatch(*whole, regions())->d50, ochre) < 0.8);
}

TEST_CASE("a PNG, woven, of 16 bits and grey") {
  for (const char* name : {"two.png", "woven.png", "deep.png"}) {
    CAPTURE(name);
    const auto photo = studio::read_photo(file(name));
    REQUIRE(photo);
    CHECK(photo->width == 16);
    CHECK(photo->height == 16);
    CHECK(photo->light_step == 0);
    for (int y = 0; y < 16; ++y)
      for (int x = 0; x < 16; ++x) {
        const std::uint8_t* at = &photo->rgb[static_cast<std::size_t>(3 * (16 * y + x))];
        CHECK(at[0] == (x < 8 ? 200 : 30));
        CHECK(at[2] == (x < 8 ? 30 : 200));
      }
  }
  const auto grey = studio::read_photo(file("gray.jpg"));
  REQUIRE(grey);
  CHECK(grey->grey);
  const Photo photo = photographed(1);
  const auto png = studio::read_photo(scene::png_of(photo));
  REQUIRE(png);
  CHECK(png->rgb == photo.rgb);
}

TEST_CASE("printing colours are refused, and say so") {
  const std::vector<std::uint8_t> ink(4 * 64 * 64, 100);
  const tjhandle coder = tjInitCompress();
  unsigned char* bytes = nullptr;
  unsigned long count = 0;
  REQUIRE(tjCompress2(coder, ink.data(), 64, 0, 64, TJPF_CMYK, &bytes, &count, TJSAMP_444, 90, 0) ==
          0);
  const std::string jpg(reinterpret_cast<const char*>(bytes), count);
  tjFree(bytes);
  tjDestroy(coder);
  CHECK(refusal(jpg) == Say::photo_for_printing);
}

TEST_CASE("nothing, a film and what is too large are no photos") {
  CHECK(refusal("") == Say::photo_empty);
  CHECK(refusal(std::string("\0\0\0\x18"
                            "ftypmp42\0\0\0\0mp42isom",
                            24) +
                std::string(1000, 'x')) == Say::photo_not_known);
  std::string large = scene::jpeg_of(photographed(1), 60);
  large.replace(large.find("\xff\xc0") + 5, 4,
                std::string("\x27\x10\x27\x10", 4)); // 10,000 x 10,000
  CHECK(refusal(large) == Say::photo_too_large);
}

TEST_CASE("cut anywhere, or with a byte changed: a photo of its size, or an error") {
  Table table;
  table.width = 48;
  table.height = 32;
  Dice dice(22);
  Camera camera;
  camera.orientation = 6;
  const std::string whole =
      scene::jpeg_of(scene::photograph(table, camera, dice), 60, profile_of(2.2));
  for (std::size_t at = 0; at < whole.size(); at += 3) {
    CAPTURE(at);
    for (const int flip : {0, 0x01, 0x80, 0xff}) {
      std::string changed = whole;
      changed[at] = static_cast<char>(changed[at] ^ flip);
      if (flip == 0) changed.resize(at);
      const auto header = studio::picture_header(changed);
      if (!header || header->width * header->height > 1'000'000) continue;
      const auto photo = studio::read_photo(changed);
      if (!photo) continue;
      CHECK(photo->rgb.size() ==
            3 * static_cast<std::size_t>(photo->width) * static_cast<std::size_t>(photo->height));
      CHECK(photo->orientation >= 1);
      CHECK(photo->orientation <= 8);
      const Size size = upright_size(*photo);
      const auto reading =
          read_swatch(*photo, {{0, 0, size.width / 2, size.height},
                               {{size.width / 2, 0, size.width / 2, size.height}}});
      if (reading) CHECK(std::isfinite(reading->d50.l + reading->d50.a + reading->d50.b));
    }
  }
}

TEST_CASE("orientations that are none, in either byte order, and where the bytes end") {
  const std::string big("MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0\6\0\0\0\0\0\0", 26);
  const std::string little("II*\0\10\0\0\0\1\0\22\1\3\0\1\0\0\0\10\0\0\0\0\0\0\0", 26);
  CHECK(studio::orientation_of(big) == 6);
  CHECK(studio::orientation_of(little) == 8);
  CHECK(studio::orientation_of("") == 1);
  for (std::size_t cut = 0; cut < 20; ++cut) CHECK(studio::orientation_of(big.substr(0, cut)) == 1);
  std::string far = big;
  far.replace(4, 4, "\xff\xff\xff\xff");
  CHECK(studio::orientation_of(far) == 1);
  std::string odd = big;
  odd[19] = 9;
  CHECK(studio::orientation_of(odd) == 1);
}
