// Own regression: what stands where on every screen, lying and upright, by day. A change that is
// meant is written anew with SLABSIDE_WRITE_GOLDEN=1, and then read in the diff.
#include "screens/draw.hpp"
#include "screens/listing.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <sstream>

namespace {

const std::filesystem::path folder = SLABSIDE_ROOT "/tests/screens/golden";

bool writes() { return std::getenv("SLABSIDE_WRITE_GOLDEN") != nullptr; }

std::string file_name(const std::string& name, int which) {
  std::string out;
  for (const char c : name)
    if (c == ' ')
      out += out.back() == '_' ? "" : "_";
    else if (c != ',')
      out += c;
  return out + (which > 1 ? "_" + std::to_string(which) : "") + ".txt";
}

std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

// The first line that differs, as it was and as it is.
std::string first_difference(const std::string& was, const std::string& is) {
  std::istringstream old_lines(was), new_lines(is);
  std::string a, b;
  for (int n = 1;; ++n) {
    const bool more_a = static_cast<bool>(std::getline(old_lines, a));
    const bool more_b = static_cast<bool>(std::getline(new_lines, b));
    if (!more_a && !more_b) return "";
    if (!more_a) a = "(nothing)";
    if (!more_b) b = "(nothing)";
    if (a != b) return "line " + std::to_string(n) + "\n  was " + a + "\n  is  " + b;
  }
}

}

TEST_CASE("every shape stands where it stood") {
  std::map<std::string, int> seen;
  std::set<std::filesystem::path> known;
  if (writes()) std::filesystem::create_directories(folder);
  for (const auto& c : views::all()) {
    if (!(c.mm == bench::Size{218, 136}) && !(c.mm == bench::Size{136, 218})) continue;
    const auto path = folder / file_name(c.name, ++seen[c.name]);
    known.insert(path);
    const std::string is = views::listing(screens::draw(c.view));
    if (writes()) std::ofstream(path, std::ios::binary) << is;
    const std::string difference = first_difference(contents(path), is);
    CHECK_MESSAGE(difference.empty(), path.filename().string() << ", " << difference);
  }
  if (!std::filesystem::exists(folder)) return;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (known.count(entry.path())) continue;
    if (writes())
      std::filesystem::remove(entry.path());
    else
      FAIL_CHECK(entry.path().filename().string() << " belongs to no screen");
  }
}

TEST_CASE("the first difference is named") {
  CHECK(first_difference("a\nb\n", "a\nb\n").empty());
  CHECK(first_difference("a\nb\n", "a\nc\n") == "line 2\n  was b\n  is  c");
  CHECK(first_difference("a\n", "a\nb\n") == "line 2\n  was (nothing)\n  is  b");
}
