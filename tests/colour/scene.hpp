// Photos of swatches whose colours are known: painted on paper, lit, seen by a camera that is not
// quite true, noisy, out of focus, coarsened by JPEG and lying on any side. All of it invented.
#pragma once

#include "colour/reading.hpp"

#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace scene {

// Numbers that are the same with every library.
class Dice {
public:
  explicit Dice(std::uint64_t seed) : next_(seed) {}
  double even(double low, double high) {
    return low + (high - low) * static_cast<double>(next_() >> 11) / 9007199254740992.0;
  }
  double normal();
  int whole(int low, int high) {
    return low + static_cast<int>(even(0, 1) * (high - low + 0.999999));
  }

private:
  std::mt19937_64 next_;
};

struct Swatch {
  colour::Box box;    // upright
  colour::Lab colour; // D50, beside the paper
};

struct Speck {
  double x = 0, y = 0, across = 0; // pixels
  double light = 0.4;              // of the paint's
};

struct Table {
  int width = 320, height = 240; // upright
  std::vector<Swatch> swatches;
  std::vector<Speck> specks;
  colour::Three paper{0.86, 0.85, 0.82}; // linear RGB
};

struct Camera {
  double exposure = 0.85;                      // linear, of a perfect white in the middle
  double across = 0, down = 0, bow = 0;        // of the light, relative, from the middle to an edge
  colour::Three white{1, 1, 1};                // what each colour is multiplied with
  double white_way = 1;                        // 1: in the photo's own colours, 0: in Bradford's
  double curve = 0, liveliness = 0, black = 0; // as in colour/reading.hpp
  double read_noise = 0, shot_noise = 0;       // sd of linear light, of its root
  int blur = 0;                                // pixels either side
  int orientation = 1;
};

// Upright linear light to what the camera's file holds, lying as its orientation says.
colour::Photo photograph(const Table& table, const Camera& camera, Dice& dice);

// As a file with its orientation named, colours at half the grid, and a profile where one is given.
std::string jpeg_of(const colour::Photo& photo, int quality, const std::string& profile = {});
// `profile` is what its chunk holds behind the name of it: a profile packed, or nonsense.
std::string png_of(const colour::Photo& photo, const std::string& profile = {});

// Linear RGB, 1 as the paper; below 0 or above 1 where it cannot be.
colour::Three ratio_of(const colour::Lab& colour);
bool can_be_painted(const colour::Lab& colour);

// Around a swatch, so far away from it and so wide.
std::vector<colour::Box> paper_around(const colour::Box& swatch, int away, int wide);
colour::Box inside(const colour::Box& box, int seam);

}
