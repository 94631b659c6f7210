#include "app/loop.hpp"

#include "app/frame.hpp"
#include "app/tones.hpp"
#include "screens/paint.hpp"
#include "words/app_says.hpp"
#include "words/lists.hpp"

#include <algorithm>
#include <cstdio>
#include <utility>

namespace app {

namespace {

constexpr std::int64_t for_the_last_line_ms = 2000; // of leaving_ms

using Say = words::AppSay;

// ImGui needs so many frames after the last event until a press on a text field has had its effect.
constexpr int frames_to_settle = 3;
constexpr int most_frames_of_typing = 32;

void say_it_may_sleep(const std::string& answer) {
  std::fprintf(stderr, "slabside: %s\n", words::say(Say::display_may_sleep, {answer}).c_str());
}

}

Loop::Loop(window::Window& window, window::Sound& sound, commands::EffectRunner& runner,
           const Manner& manner, double px_per_mm)
    : window_(window), sound_(sound), runner_(runner), manner_(manner),
      awake_(words::say(Say::display_kept_awake), say_it_may_sleep), reported_px_per_mm_(px_per_mm),
      px_per_mm_(px_per_mm) {}

void Loop::begin(const bench::Now& now) {
  fill_display();
  fit_display(now);
}

void Loop::fill_display() {
  const std::optional<bool> wanted = runner_.bench().full_screen;
  if (wanted && *wanted != window_.fills_display()) window_.fill_display(*wanted);
}

void Loop::process_input(const window::Poll& poll, const bench::Now& now) {
  for (const window::Event& event : poll.events) take(event, poll.number, now);
  runner_.poll(now);
  say_goodbye(now);
  if (runner_.wake_at() && now.run_ms >= *runner_.wake_at()) runner_.feed(bench::Tick{}, now);
  if (runner_.bench().tablet.scales != scales_) fit_display(now);
  fill_display();
  for (const bench::SoundCue cues : runner_.take_cues()) sound_.play(tone_of(cues));
  awake_.keep(runner_.bench().folded &&
              runner_.bench().folded->progress == session::Progress::open);
  take_images();
  stale_ = runner_.take_redraw() || stale_;
}

// A picture may come under the number of one that is gone: what was drawn is told apart by it.
void Loop::take_images() {
  bool any = false;
  for (const commands::DrawnImage& image : runner_.take_images()) {
    textures_.put(image);
    any = true;
  }
  if (!any) return;
  window_.forget();
  stale_ = true;
}

void Loop::render(const bench::Now& now) {
  if (wants_render()) draw(now);
}

void Loop::take(const window::Event& event, std::uint64_t poll, const bench::Now& now) {
  std::visit(words::Overloaded{
                 [&](const window::Resized&) { fit_display(now); },
                 [&](const window::CloseAsked&) { leave(now); },
                 [&](const window::Dropped& d) {
                   if (!leaving_until_) runner_.feed(bench::Dropped{d.files}, now);
                 },
                 [&](const window::Exposed&) { stale_ = true; },
                 [&](const window::Restored&) {
                   textures_.forget();
                   stale_ = true;
                 },
                 [&](const window::Character&) {
                   settling_ = frames_to_settle;
                   typed_ = true;
                 },
                 [&](const window::Key& k) { key(k, poll, now); },
                 [&](const window::Pointer& p) { point(p, poll, now); },
             },
             event);
}

namespace {
bench::Pointer::Phase phase_of(window::Pointer::Phase phase) {
  switch (phase) {
  case window::Pointer::down: return bench::Pointer::down;
  case window::Pointer::move: return bench::Pointer::move;
  case window::Pointer::up: return bench::Pointer::up;
  case window::Pointer::lost: break;
  }
  return bench::Pointer::lost;
}
}

void Loop::point(const window::Pointer& p, std::uint64_t poll, const bench::Now& now) {
  settling_ = frames_to_settle;
  if (leaving_until_) return; // after `left` a session has no further lines
  if (p.phase == window::Pointer::down) process_typing(now);
  const std::int64_t ms = now.run_ms - static_cast<std::int64_t>(p.ago_ms);
  runner_.feed(
      bench::Pointer{phase_of(p.phase), {p.x / px_per_mm_, p.y / px_per_mm_}, ms, poll, p.finger},
      now);
}

// A text field answers some frames after its letters came, a pad at once: after a stall the letters
// before a press, or before the window is closed, must not come behind it.
void Loop::process_typing(const bench::Now& now) {
  if (!std::exchange(typed_, false)) return;
  for (int frame = 0; frame < most_frames_of_typing && window::input_waits(); ++frame) draw(now);
}

// Letters belong to the text field that has them.
void Loop::key(const window::Key& key, std::uint64_t poll, const bench::Now& now) {
  settling_ = frames_to_settle;
  if (leaving_until_ || (key.down && window::text_is_typed())) return;
  runner_.feed(bench::Key{key.name, key.down, now.run_ms, poll}, now);
}

// The window may have another size or have come to another monitor, or a card was held to the
// glass.
void Loop::fit_display(const bench::Now& now) {
  const window::Extent size = window_.size();
  if (size.w <= 0 || size.h <= 0) return;
  const bench::Tablet& tablet = runner_.bench().tablet;
  const std::string monitor = window_.monitor();
  if (!manner_.px_per_mm) reported_px_per_mm_ = window_.px_per_mm().value_or(reported_px_per_mm_);
  scales_ = tablet.scales;
  const double true_px_per_mm = reported_px_per_mm_ / scale_of(tablet, monitor);
  const double px_per_mm = fitting_px_per_mm(size, true_px_per_mm);
  if (px_per_mm != px_per_mm_ && screens::load_faces(px_per_mm)) {
    px_per_mm_ = px_per_mm;
    window::rebuild_font_texture();
  }
  bench::Display display = display_of(size, px_per_mm_, manner_.hand.value_or(tablet.hand));
  display.monitor = monitor;
  display.drawn_at = px_per_mm_ / true_px_per_mm;
  runner_.feed(bench::Resized{std::move(display)}, now);
}

void Loop::leave(const bench::Now& now) {
  if (leaving_until_) return;
  process_typing(now);
  leaving_until_ = now.run_ms + leaving_ms;
  say_goodbye(now);
}

// A photo that is being kept is a line still: it comes before the last one, while there is time.
void Loop::say_goodbye(const bench::Now& now) {
  if (!leaving_until_ || said_goodbye_) return;
  if (runner_.is_handing_on() && now.run_ms < *leaving_until_ - for_the_last_line_ms) return;
  said_goodbye_ = true;
  runner_.feed(bench::Leaving{}, now);
}

bool Loop::may_end(const bench::Now& now) const {
  const bool settled = runner_.unsaved() == 0 || runner_.stuck();
  return leaving_until_ && ((said_goodbye_ && settled) || now.run_ms >= *leaving_until_);
}

std::optional<std::int64_t> Loop::process_at() const {
  const auto until = runner_.poll_at(); // a photo that is kept wakes the loop by itself
  if (!leaving_until_) return until;
  const std::int64_t next = *leaving_until_ - (said_goodbye_ ? 0 : for_the_last_line_ms);
  return std::min(until.value_or(next), next);
}

void Loop::draw(const bench::Now& now) {
  stale_ = false;
  settling_ = std::max(settling_ - 1, 0);
  ++drawn_;
  if (window_.size() == window::Extent{}) return; // minimised; an Exposed will come
  const bench::View view = bench::view(runner_.bench(), now);
  const std::vector<bench::Text> typed = app::show(window_, view, px_per_mm_);
  if (auto lacking = textures_.take_lacking()) runner_.want_images(*std::move(lacking));
  if (window::input_waits()) settling_ = frames_to_settle;
  if (leaving_until_) return;
  for (const bench::Text& text : typed) runner_.feed(text, now);
  stale_ = runner_.take_redraw();
}

}
