// A hand at the real program's window. Beside the program goes a mirror, a bench in the test itself
// that is given the same taps: it knows where the pads lie now and what the program must write.
#pragma once

#include "bench/bench.hpp"
#include "touch/glass.hpp"

#include <optional>
#include <string>
#include <vector>

namespace touch {

// A studio and what the program keeps elsewhere, in a folder that goes with the test.
struct Home {
  Folder folder;
  Path studio = folder.path / "studio";
  Path state = folder.path / "state"; // XDG_STATE_HOME
  Environment also;                   // of the program

  Environment environment(const std::string& display = "") const;
  std::vector<session::File> files() const; // of the studio and in the fallback
};

struct Look {
  int w = 1280, h = 800;
  bench::Size mm{218, 136};
};
inline constexpr Look lying{}, upright{800, 1280, {136, 218}};

class Hand {
public:
  // Starts the program and waits until it is ready. `more`: further options of the program. Where
  // no batch was in hand a moment ago it opens on Today; most tests begin on Plan.
  enum class Begin { on_plan, where_it_opens };
  Hand(Glass& glass, const Home& home, const Look& look = lying,
       const std::vector<std::string>& more = {}, Pixel corner = {}, Begin begin = Begin::on_plan);

  // A whole tap: put down and seen; lifted and seen, and what it made of it reported as saved.
  void tap(const std::string& pad);
  void put_down(const std::string& pad);
  void lift(const std::string& pad);    // from that pad, still where it was put down
  void type(const std::string& digits); // on the number pad, and enter
  void write(const std::string& field, const std::string& text); // on the keyboard
  void key(const std::string& name, std::uint32_t keysym);       // of a pedal, pressed and released
  void unlock(); // holds until the glass is unlocked

  // As fast as this: pressed and released after `held`, waiting for nothing.
  void flick(const std::string& pad, std::chrono::milliseconds held);

  // The bare finger; the mirror is told nothing.
  void press(Pixel at) { glass_.press(at); }
  void slide(Pixel to) { glass_.slide(to); }
  void release() { glass_.release(); }

  void turn(const Look& look);  // the window to that size
  void fills(const Look& look); // it fills the display, which is that large
  Area window() { return glass_.area_of(window_); }

  void seen();    // waits until the program has taken all that was done so far
  void drawn();   // and has drawn it
  void saved();   // and has reported every line of the mirror as saved
  Ending close(); // asks the window to close

  Pixel centre(const std::string& pad) const;
  Area middle_of(const std::string& pad) const; // a third of the pad each way
  Area pad_area(const std::string& pad) const;
  bool shows(const std::string& pad) const;
  Pixels look(const Area& area) { return glass_.picture(area); }

  bench::Bench mirror;
  std::vector<session::Line> lines; // the mirror's
  Process program;
  bool saves = true; // whether saving is to be waited for

  std::optional<std::uint64_t> reported(); // the last line reported as saved

private:
  void feed(const bench::Input& input, std::int64_t later_ms = 0);
  void rest_after(const std::string& pad); // no finger taps the same pad at once again
  void keep_picture(const std::string& of);

  Glass& glass_;
  std::uint64_t keys_ = 1000; // polls of the mirror
  Look look_;
  Pixel corner_;
  double px_per_mm_;
  Handle window_ = 0;
  std::string last_pad_;
  std::chrono::steady_clock::time_point last_seen_;
  int pictures_ = 0;
};

// What was done, line by line in the form of the file: times, random ids, the place and the hour
// taken out, the rest and the order kept.
std::vector<std::string> deeds(const std::vector<session::Line>& lines);

// Fails at the first line that differs.
void check_same(const std::vector<session::Line>& in_file,
                const std::vector<session::Line>& tapped);

// The lines of the one session of a studio that is none of these.
std::vector<session::Line> only_session(const Home& home,
                                        const std::vector<std::string>& except = {});

}
