// Joins the window, the bench and the ears. Whoever has the window calls: one loop that waits, or a
// browser that never does.
#pragma once

#include "app/textures.hpp"
#include "commands/effect_runner.hpp"
#include "window/awake.hpp"
#include "window/sound.hpp"
#include "window/window.hpp"

#include <map>
#include <optional>
#include <string>

namespace app {

struct Manner {
  std::optional<double> px_per_mm; // said by somebody; else as the system reports it
  std::optional<bench::Hand> hand; // else as this tablet has it
};

class Loop {
public:
  // All of them outlive it. `px_per_mm`: what the faces were loaded with.
  Loop(window::Window& window, window::Sound& sound, commands::EffectRunner& runner,
       const Manner& manner, double px_per_mm);

  void begin(const bench::Now& now); // before the first turn

  // Takes what the window brought, asks the disks, and lets time pass.
  void process_input(const window::Poll& poll, const bench::Now& now);
  // Draws once, if there is anything new to see.
  void render(const bench::Now& now);

  bool wants_render() const { return stale_ || settling_ > 0; } // for show()
  std::optional<std::int64_t> process_at() const;               // run_ms, at the latest
  bool is_stale() const { return stale_; }
  bool may_end(const bench::Now& now) const; // all is said, and saved or not to be saved

  std::uint64_t drawn() const { return drawn_; } // frames
  double px_per_mm() const { return px_per_mm_; }

private:
  void take(const window::Event& event, std::uint64_t poll, const bench::Now& now);
  void point(const window::Pointer& pointer, std::uint64_t poll, const bench::Now& now);
  void key(const window::Key& key, std::uint64_t poll, const bench::Now& now);
  void fit_display(const bench::Now& now);
  void fill_display();
  void leave(const bench::Now& now);
  void draw(const bench::Now& now);
  void process_typing(const bench::Now& now);
  void take_images();

  window::Window& window_;
  window::Sound& sound_;
  commands::EffectRunner& runner_;
  const Manner manner_;
  window::Awake awake_;
  Textures textures_;         // of photos; goes before the window does
  double reported_px_per_mm_; // or as somebody said, before the card corrects it
  double px_per_mm_;
  int settling_ = 0;                     // frames due although the bench has not changed
  std::map<std::string, double> scales_; // the tablet's, as they were last applied
  bool typed_ = false;                   // letters came since the last press
  bool stale_ = true;                    // the window shows something else than the bench
  void say_goodbye(const bench::Now& now);

  std::optional<std::int64_t> leaving_until_;
  bool said_goodbye_ = false; // the session's last line is on its way
  std::uint64_t drawn_ = 0;
};

// How long a goodbye may take.
inline constexpr std::int64_t leaving_ms = 5000;

// Where the system reports no size: CSS's pixel.
inline constexpr double usual_px_per_mm = 96 / 25.4;

}
