#include "window/sound.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <thread>

using namespace window;

namespace {

int peak_of(const std::vector<std::int16_t>& samples) {
  int peak = 0;
  for (const std::int16_t s : samples) peak = std::max(peak, std::abs(static_cast<int>(s)));
  return peak;
}

// Turns a second, from how often it passes through nothing.
double pitch_of(const std::vector<std::int16_t>& samples) {
  int crossings = 0;
  for (std::size_t i = 1; i < samples.size(); ++i)
    crossings += (samples[i - 1] < 0) != (samples[i] < 0);
  return crossings / 2.0 / (static_cast<double>(samples.size()) / samples_per_s);
}

}

TEST_CASE(
    "a tone is as long, as high and no louder than was asked, and has no cracks at its ends") {
  const Tone tone{600, 1, 2, 0, 0.05, 0.5};
  const auto samples = wave(tone);
  CHECK(samples.size() == 2205);
  CHECK(peak_of(samples) <= 32767 * 0.5);
  CHECK(peak_of(samples) > 32767 * 0.2);
  CHECK(std::abs(pitch_of(samples) - 600) < 30);
  CHECK(std::abs(samples.front()) < 100);
  CHECK(std::abs(samples.back()) < 100);
  int steepest = 0;
  for (std::size_t i = 1; i < samples.size(); ++i)
    steepest = std::max(steepest, std::abs(samples[i] - samples[i - 1]));
  // A sine of that height climbs no faster.
  CHECK(steepest <= 32767 * 0.5 * 2 * 3.1416 * 600 / samples_per_s * 1.1);
}

TEST_CASE("a glide ends higher than it began, full colour stays within bounds") {
  const auto up = wave({400, 2, 2, 0, 0.4, 1});
  const std::vector<std::int16_t> first(up.begin(), up.begin() + 4000),
      last(up.end() - 6000, up.end() - 2000);
  CHECK(pitch_of(last) > pitch_of(first) * 1.4);
  CHECK(peak_of(wave({400, 1, 2.76, 1, 0.3, 1})) <= 32767);
}

// The library plays into a file when it is told to; what is in it has been through all of it.
TEST_CASE("what is played comes out") {
  namespace fs = std::filesystem;
  const fs::path folder = fs::temp_directory_path() / ("sound-" + std::to_string(::getpid()));
  fs::create_directories(folder);
  std::ofstream(folder / "conf") << "[general]\ndrivers=wave\n[wave]\nfile=" << folder.string()
                                 << "/out.wav\n";
  ::setenv("ALSOFT_CONF", (folder / "conf").c_str(), 1);
  ::setenv("ALSOFT_DRIVERS", "wave", 1);
  const auto cues = [&] {
    std::ifstream file(folder / "out.wav", std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    return bytes.size() > 100 &&
           std::any_of(bytes.begin() + 100, bytes.end(), [](char byte) { return byte != 0; });
  };
  {
    Sound sound;
    for (int i = 0; i < 500 && !cues(); ++i) { // it opens its device when it can
      sound.play({800, 1, 2, 0.3, 0.1, 0.8});
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
  }
  CHECK(cues());
  fs::remove_all(folder);
}
