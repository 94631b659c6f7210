// Own regression: what stands where on every screen, lying and upright, by day. A change that is
// meant is written anew with SLABSIDE_WRITE_GOLDEN=1, and then read in the diff. The top bar,
// undo and the pads round Slab's panel, which are the same in many frames, have files of their own.
#include "screens/draw.hpp"
#include "screens/listing.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace golden_test {

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

// Each look of a part once, under the names of all the frames that have it.
class Looks {
public:
  void add(const std::string& frame, const std::vector<screens::Shape>& shapes) {
    const std::string look = views::listing(shapes);
    const auto [at, is_new] = index_.insert({look, looks_.size()});
    if (is_new) looks_.push_back({"", look});
    looks_[at->second].frames += "# " + frame + "\n";
  }
  std::string text() const {
    std::string out;
    for (const Look& look : looks_) out += look.frames + look.listing + "\n";
    return out;
  }

private:
  struct Look {
    std::string frames, listing;
  };
  std::vector<Look> looks_;
  std::map<std::string, std::size_t> index_;
};

// Without what has files of its own.
std::string listing_of_screen(const screens::Layers& layers) {
  return views::listing(layers.ground) + views::listing(layers.screen) +
         views::listing(layers.above);
}

// What is to lie in the folder, by name.
std::map<std::string, std::string> all_files() {
  std::map<std::string, int> seen;
  std::map<std::string, Looks> looks;
  std::map<std::string, std::string> out;
  for (const auto& c : views::all()) {
    if (!(c.mm == bench::Size{218, 136}) && !(c.mm == bench::Size{136, 218})) continue;
    const std::string name = file_name(c.name, ++seen[c.name]);
    const auto layers = screens::layers_of(c.view);
    CHECK(out.insert({name, listing_of_screen(layers)}).second);
    const std::string lies = c.mm.h > c.mm.w ? "upright.txt" : "lying.txt";
    looks["top_bar_" + lies].add(name, layers.top_bar);
    if (!layers.undo.empty()) looks["undo_" + lies].add(name, layers.undo);
    if (!layers.slab_pads.empty()) looks["slab_pads_" + lies].add(name, layers.slab_pads);
  }
  for (const auto& [name, part] : looks) CHECK(out.insert({name, part.text()}).second);
  return out;
}

}

TEST_CASE("every shape stands where it stood") {
  const auto files = all_files();
  if (writes()) std::filesystem::create_directories(folder);
  for (const auto& [name, is] : files) {
    if (writes()) std::ofstream(folder / name, std::ios::binary) << is;
    const std::string difference = first_difference(contents(folder / name), is);
    CHECK_MESSAGE(difference.empty(), name << ", " << difference);
  }
  if (!std::filesystem::exists(folder)) return;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    const std::string name = entry.path().filename().string();
    if (files.count(name)) continue;
    if (writes())
      std::filesystem::remove(entry.path());
    else
      FAIL_CHECK(name << " belongs to no screen");
  }
}

TEST_CASE("a frame is its layers, one upon the other") {
  for (const auto& c : views::all()) {
    const auto layers = screens::layers_of(c.view);
    std::string all;
    for (const auto* layer : {&layers.ground, &layers.top_bar, &layers.screen, &layers.slab_pads,
                              &layers.undo, &layers.above})
      all += views::listing(*layer);
    CHECK_MESSAGE(views::listing(screens::draw(c.view)) == all, c.name);
  }
}

TEST_CASE("the first difference is named") {
  CHECK(first_difference("a\nb\n", "a\nb\n").empty());
  CHECK(first_difference("a\nb\n", "a\nc\n") == "line 2\n  was b\n  is  c");
  CHECK(first_difference("a\n", "a\nb\n") == "line 2\n  was (nothing)\n  is  b");
}

}
