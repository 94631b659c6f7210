// What the real program plays, caught in a file by the library that plays it.
#include "touch/hand.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>

namespace sound_test {

namespace {

using namespace touch;

class Recording {
public:
  explicit Recording(Home& home) : file_(home.folder.path / "heard.wav") {
    const Path conf = home.folder.path / "alsoft.conf";
    std::ofstream(conf) << "[wave]\nfile=" << file_.string() << "\n";
    home.also = {{"ALSOFT_CONF", conf.string()}, {"ALSOFT_DRIVERS", "wave"}};
  }

  std::size_t size() const {
    std::error_code none_yet;
    const auto size = std::filesystem::file_size(file_, none_yet);
    return none_yet ? 0 : static_cast<std::size_t>(size);
  }

  // Half a second of stereo, whatever is in it.
  void goes_on() const {
    const std::size_t from = size();
    wait_until("more of the recording", [&] { return size() > from + 2 * 2 * 22050; });
  }

  bool sounds_from(std::size_t from) const {
    std::ifstream in(file_, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    from = std::clamp<std::size_t>(from, header, bytes.size());
    return std::any_of(bytes.begin() + static_cast<std::ptrdiff_t>(from), bytes.end(),
                       [](char byte) { return byte != 0; });
  }

private:
  static constexpr std::size_t header = 100; // of the file's kind, at most
  Path file_;
};

}

TEST_CASE("a tap is heard, and none after the pad that turns sound off") {
  Glass glass(1280, 800);
  Home home;
  const Recording recording(home);
  Hand hand(glass, home, lying, {}, {}, Hand::Begin::where_it_opens);
  recording.goes_on(); // its device is open
  CHECK_FALSE(recording.sounds_from(0));
  hand.tap("plan");
  recording.goes_on();
  CHECK(recording.sounds_from(0));
  hand.tap("sound");
  recording.goes_on();
  const std::size_t off = recording.size();
  hand.tap("pigment pb28");
  recording.goes_on();
  CHECK_FALSE(recording.sounds_from(off));
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
}

}
