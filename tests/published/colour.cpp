// CIELAB and CIEDE2000 beside the paper that tests every turn of the formula, the standard's
// printed numbers and a library of colour profiles.
#include "colour/difference.hpp"
#include "published/columns.hpp"
#include "published/row.hpp"
#include "words/numbers.hpp"

#include <doctest/doctest.h>
#include <lcms2.h>

#include <random>

namespace colour_test {

using namespace colour;
using namespace published;

namespace {

constexpr const char* sharma =
    "Sharma, Wu & Dalal 2005, Color Research and Application 30(1), table 1";
constexpr const char* little_cms = "Little CMS 2.14 (Debian's liblcms2)";
constexpr const char* primaries = "IEC 61966-2-1, from linear sRGB to XYZ";

double even(std::mt19937_64& next, double low, double high) {
  return low + (high - low) * static_cast<double>(next() >> 11) / 9007199254740992.0;
}

cmsCIELab as_theirs(const Lab& lab) { return {lab.l, lab.a, lab.b}; }

std::string spelt(const Lab& lab) {
  return words::invariant(lab.l, 2) + " " + words::invariant(lab.a, 2) + " " +
         words::invariant(lab.b, 2);
}

}

TEST_CASE("The pairs that try every turn of CIEDE2000") {
  auto c = columns_of("ciede2000.csv");
  REQUIRE(c["dE00"].size() == 34);
  for (std::size_t i = 0; i < 34; ++i) {
    const Lab one{c["L1"][i], c["a1"][i], c["b1"][i]}, other{c["L2"][i], c["a2"][i], c["b2"][i]};
    for (const double ours : {difference(one, other), difference(other, one)})
      check({"difference/difference", "CIEDE2000 of 34 pairs, either way round", printed(sharma),
             c["dE00"][i], ours, 0.00005 + 1e-9, "half of the last figure",
             "pair " + std::to_string(i + 1)});
  }
}

TEST_CASE("CIEDE2000 as a library of colour profiles has it") {
  std::mt19937_64 next(34);
  for (int i = 0; i < 1000; ++i) {
    const double l = even(next, 0, 100), a = even(next, -100, 100);
    const Lab one{l, a, even(next, -100, 100)};
    const double step = i % 2 == 0 ? 3 : 60;
    const double dl = even(next, -step, step), da = even(next, -step, step);
    const Lab other{l + dl, a + da, one.b + even(next, -step, step)};
    const cmsCIELab first = as_theirs(one), second = as_theirs(other);
    check({"difference/difference", "CIEDE2000 of random colours, near and far",
           library(little_cms), cmsCIE2000DeltaE(&first, &second, 1, 1, 1), difference(one, other),
           1e-6, "the same formula: rounding", spelt(one) + " and " + spelt(other)});
  }
}

TEST_CASE("CIELAB as a library of colour profiles has it") {
  std::mt19937_64 next(50);
  const cmsCIEXYZ white{d50[0], d50[1], d50[2]};
  for (int i = 0; i < 1000; ++i) {
    const double x = even(next, 0, 1), y = even(next, 0, 1);
    const Three xyz_here{x, y, even(next, 0, i % 2 == 0 ? 1 : 0.01)};
    const cmsCIEXYZ theirs_in{xyz_here[0], xyz_here[1], xyz_here[2]};
    cmsCIELab theirs{};
    cmsXYZ2Lab(&white, &theirs, &theirs_in);
    const Lab ours = lab(xyz_here, d50);
    for (const auto& [expected, got] :
         {std::pair{theirs.L, ours.l}, {theirs.a, ours.a}, {theirs.b, ours.b}})
      check({"cielab/lab", "CIELAB of a random XYZ", library(little_cms), expected, got, 1e-4,
             "its constants are printed to fewer digits",
             words::invariant(x, 3) + " " + words::invariant(y, 3)});
  }
}

TEST_CASE("sRGB to CIELAB as a library of colour profiles has it") {
  const cmsHPROFILE srgb = cmsCreate_sRGBProfile(), to = cmsCreateLab4Profile(nullptr);
  const cmsHTRANSFORM change =
      cmsCreateTransform(srgb, TYPE_RGB_DBL, to, TYPE_Lab_DBL, INTENT_RELATIVE_COLORIMETRIC,
                         cmsFLAGS_NOOPTIMIZE | cmsFLAGS_NOCACHE);
  REQUIRE(change);
  std::mt19937_64 next(61966);
  for (int i = 0; i < 1000; ++i) {
    Three rgb{};
    for (double& v : rgb) v = even(next, 0, 1);
    cmsCIELab theirs{};
    cmsDoTransform(change, rgb.data(), &theirs, 1);
    const Three linear{srgb_to_linear(rgb[0]), srgb_to_linear(rgb[1]), srgb_to_linear(rgb[2])};
    const Lab ours = lab(times(srgb_to_xyz_d50(), linear), d50);
    for (const auto& [expected, got] :
         {std::pair{theirs.L, ours.l}, {theirs.a, ours.a}, {theirs.b, ours.b}})
      check({"cielab/lab", "CIELAB under D50 of a random sRGB", library(little_cms), expected, got,
             0.03, "a profile has its numbers to 16 bits, its white to four digits",
             words::invariant(rgb[0], 3) + " " + words::invariant(rgb[1], 3) + " " +
                 words::invariant(rgb[2], 3)});
  }
  cmsDeleteTransform(change);
  cmsCloseProfile(to);
  cmsCloseProfile(srgb);
}

TEST_CASE("sRGB's matrix as it is printed") {
  constexpr Matrix as_printed{
      {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
  const char* const names[] = {"red", "green", "blue"};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k)
      check({"cielab/srgb_to_xyz_d65", "XYZ of the primaries at 1", remembered(primaries),
             as_printed[i][k], srgb_to_xyz_d65()[i][k], 0.00005 + 1e-9, "half of the last figure",
             names[k]});
}

}
