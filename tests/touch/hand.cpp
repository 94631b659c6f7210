#include "touch/hand.hpp"

#include "commands/clock.hpp"
#include "session/bytes.hpp"
#include "studio/studio.hpp"
#include "touch/pictures.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>
#include <utility>

namespace touch {

namespace {

using namespace std::chrono_literals;
using Steady = std::chrono::steady_clock;

// The bench ignores the same pad for 80 ms; the rest is for the moment between the program's look
// at its queue and at its clock.
constexpr auto same_pad_rest = 200ms;

std::vector<std::string> program_words(const Home& home, const Look& look,
                                       const std::vector<std::string>& more) {
  std::ostringstream mm;
  mm << look.mm.w << 'x' << look.mm.h;
  std::vector<std::string> words{SLABSIDE_PROGRAM,
                                 "--studio",
                                 home.studio.string(),
                                 "--size",
                                 std::to_string(look.w) + "x" + std::to_string(look.h),
                                 "--mm",
                                 mm.str(),
                                 "--report"};
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

bench::PadId id_of(const std::string& name) {
  const auto id = bench::pad_named(name);
  REQUIRE_MESSAGE(id, name);
  return *id;
}

}

Environment Home::environment(const std::string& display) const {
  Environment all{{"DISPLAY", display},
                  {"HOME", folder.path.string()},
                  {"XDG_STATE_HOME", state.string()},
                  {"XAUTHORITY", "/dev/null"},
                  {"LC_ALL", "C.UTF-8"}};
  all.insert(all.end(), also.begin(), also.end());
  return all;
}

std::vector<session::File> Home::files() const {
  return studio::read_all(studio, studio::fallback_folder(state / "slabside", studio)).files;
}

Hand::Hand(Glass& glass, const Home& home, const Look& look, const std::vector<std::string>& more,
           Pixel corner, Begin begin)
    : program(program_words(home, look, more), home.environment(glass.name())), glass_(glass),
      look_(look), corner_(corner), px_per_mm_(std::min(look.w / look.mm.w, look.h / look.mm.h)) {
  const bench::Display display{{look.w / px_per_mm_, look.h / px_per_mm_}};
  mirror = bench::start("0a0a0a0a", "0b0b", display, commands::real_now());
  mirror.screen = bench::Screen::today;
  mirror.full_screen = std::count(more.begin(), more.end(), "--full-screen") > 0;
  mirror.sharing.folder = (home.studio / "told").string(); // so that this tablet has its pad
  mirror.paper.folder = (home.studio / "paper").string();  // and Book
  session::Joined joined = session::join(home.files());
  feed(bench::Loaded{std::move(joined.logs), std::move(joined.damage), {}});
  wait_until("ready", [&] {
    REQUIRE_MESSAGE(program.running(), program.err());
    return program.out().find("ready\n") != std::string::npos;
  });
  window_ = glass_.window_of(program.pid());
  glass_.place(window_, corner);
  glass_.focus(window_);
  drawn();
  if (begin == Begin::on_plan && mirror.screen == bench::Screen::today) tap("plan");
}

void Hand::feed(const bench::Input& input, std::int64_t later_ms) {
  bench::Now now = commands::real_now();
  now.run_ms += later_ms;
  now.wall_ms += later_ms;
  const bench::Effects effects = bench::step(mirror, input, now);
  lines.insert(lines.end(), effects.append.begin(), effects.append.end());
}

Area Hand::pad_area(const std::string& pad) const {
  const bench::Layout layout = bench::layout(mirror);
  const bench::Pad* at = bench::pad_of(layout, id_of(pad));
  REQUIRE_MESSAGE(at, "no pad ", pad);
  const auto px = [&](double mm) { return static_cast<int>(std::lround(mm * px_per_mm_)); };
  return {corner_.x + px(at->box.x), corner_.y + px(at->box.y), px(at->box.w), px(at->box.h)};
}

Pixel Hand::centre(const std::string& pad) const {
  const Area area = pad_area(pad);
  return {area.x + area.w / 2, area.y + area.h / 2};
}

Area Hand::middle_of(const std::string& pad) const {
  const Area area = pad_area(pad);
  return {area.x + area.w / 3, area.y + area.h / 3, area.w / 3, area.h / 3};
}

bool Hand::shows(const std::string& pad) const {
  const bench::Layout layout = bench::layout(mirror);
  return bench::pad_of(layout, id_of(pad)) != nullptr;
}

void Hand::rest_after(const std::string& pad) {
  if (pad == last_pad_) std::this_thread::sleep_until(last_seen_ + same_pad_rest);
  last_pad_ = pad;
}

void Hand::tap(const std::string& pad) {
  CAPTURE(pad);
  put_down(pad);
  lift(pad);
}

void Hand::put_down(const std::string& pad) {
  rest_after(pad);
  glass_.press(centre(pad));
  seen();
}

void Hand::lift(const std::string& pad) {
  glass_.release();
  feed(bench::Tap{id_of(pad)});
  seen();
  if (saves) saved(); // Weston's touches come by another way than what seen() asks by
  last_seen_ = Steady::now();
  keep_picture(pad);
}

void Hand::flick(const std::string& pad, std::chrono::milliseconds held) {
  glass_.press(centre(pad));
  std::this_thread::sleep_for(held);
  glass_.release();
  feed(bench::Tap{id_of(pad)});
  last_pad_.clear();
}

void Hand::type(const std::string& digits) {
  for (const char c : digits) tap(c == '.' ? "point" : std::string("digit ") + c);
  tap("enter");
}

// One key after the other, each drawn: ImGui deals out what was typed over several frames.
void Hand::write(const std::string& field, const std::string& text) {
  const auto stroke = [&](std::uint32_t keysym) {
    glass_.key(keysym, true);
    glass_.key(keysym, false);
    drawn();
  };
  tap(field);
  glass_.key(control_key, true);
  stroke('a');
  glass_.key(control_key, false);
  drawn();
  for (const char c : text) {
    const bool capital = c >= 'A' && c <= 'Z';
    if (capital) glass_.key(shift_key, true);
    stroke(static_cast<std::uint32_t>(capital ? c - 'A' + 'a' : c));
    if (capital) glass_.key(shift_key, false);
  }
  drawn();
  feed(bench::Text{id_of(field), text});
  keep_picture("written " + field);
}

void Hand::key(const std::string& name, std::uint32_t keysym) {
  CAPTURE(name);
  rest_after("key " + name);
  glass_.key(keysym, true);
  seen();
  glass_.key(keysym, false);
  feed(bench::Key{name, true, commands::real_now().run_ms, ++keys_});
  feed(bench::Key{name, false, commands::real_now().run_ms, ++keys_});
  seen();
  if (saves) saved();
  last_seen_ = Steady::now();
  keep_picture("key " + name);
}

// That it is unlocked shows where the pads come back.
void Hand::unlock() {
  constexpr std::int64_t long_enough_ms = 1300; // bench::unlock_ms is 1200
  const Pixel at = centre("unlock");
  drawn();
  const auto now = commands::real_now().run_ms;
  feed(bench::Pointer{bench::Pointer::down, {at.x / px_per_mm_, at.y / px_per_mm_}, now, 1, 0});
  feed(bench::Tick{}, long_enough_ms);
  REQUIRE_FALSE(mirror.locked);
  const Area undo = middle_of("undo");
  const Pixels locked = look(undo);
  glass_.press(at);
  wait_until("the unlocked pads", [&] { return look(undo) != locked; });
  glass_.release();
  drawn();
  keep_picture("unlocked");
}

void Hand::turn(const Look& look) {
  glass_.resize(window_, look.w, look.h);
  fills(look);
}

void Hand::fills(const Look& look) {
  look_ = look;
  drawn();
  feed(bench::Resized{bench::Display{{look.w / px_per_mm_, look.h / px_per_mm_}}});
}

void Hand::seen() {
  const std::uint32_t ping = glass_.ping(window_);
  wait_until("an answer from the program", [&] {
    REQUIRE_MESSAGE(program.running(), program.err());
    return glass_.has_ponged(ping);
  });
}

// An answer is given in the look at the queue with which a turn of the loop begins, and its frame
// ends the turn; ImGui may need three frames more.
void Hand::drawn() {
  for (int i = 0; i < 5; ++i) seen();
}

std::optional<std::uint64_t> Hand::reported() {
  const std::string& out = program.out();
  const std::string word = "saved ";
  const std::size_t whole = out.rfind('\n');
  if (whole == std::string::npos) return std::nullopt;
  const std::size_t at = out.rfind(word, whole);
  if (at == std::string::npos) return std::nullopt;
  return std::stoull(out.substr(at + word.size()));
}

void Hand::saved() {
  if (lines.empty()) return;
  const std::uint64_t last = lines.back().n;
  wait_until("saved " + std::to_string(last), [&] {
    REQUIRE_MESSAGE(program.running(), program.err());
    return reported() && *reported() >= last;
  });
}

Ending Hand::close() {
  feed(bench::Leaving{});
  glass_.ask_to_close(window_);
  return program.wait();
}

void Hand::keep_picture(const std::string& of) {
  if (!pictures_wanted()) return;
  drawn();
  touch::keep_picture(glass_.picture({corner_.x, corner_.y, look_.w, look_.h}), ++pictures_, of);
}

std::vector<std::string> deeds(const std::vector<session::Line>& lines) {
  std::map<std::string, std::string> batches, jars;
  std::string own;
  std::vector<std::string> out;
  for (session::Line line : lines) {
    line.t = line.at = 0;
    if (!line.batch.empty())
      line.batch =
          batches.try_emplace(line.batch, "batch" + std::to_string(batches.size())).first->second;
    if (auto* began = std::get_if<session::Began>(&line.event)) {
      own = std::exchange(began->session, "own");
      began->device = began->local = "";
    }
    if (auto* making = std::get_if<session::Making>(&line.event)) {
      if (making->step == session::MakingStep::gum_in)
        jars.try_emplace(making->of, "jar" + std::to_string(jars.size()));
      if (const auto jar = jars.find(making->of); jar != jars.end()) making->of = jar->second;
    }
    if (auto* laid = std::get_if<session::LaidOut>(&line.event))
      if (const auto jar = jars.find(laid->card->id); jar != jars.end()) {
        session::Card card = *laid->card;
        card.id = jar->second;
        laid->card = session::Immutable(std::move(card));
      }
    if (auto* withdrawn = std::get_if<session::Withdrawn>(&line.event))
      if (withdrawn->line.session == own) withdrawn->line.session = "own";
    if (auto* corrected = std::get_if<session::Corrected>(&line.event))
      if (corrected->line.session == own) corrected->line.session = "own";
    const auto encoded = session::encode(line, 0);
    REQUIRE(encoded);
    out.push_back(encoded->bytes);
  }
  return out;
}

void check_same(const std::vector<session::Line>& in_file,
                const std::vector<session::Line>& tapped) {
  const auto is = deeds(in_file), should_be = deeds(tapped);
  const auto differ = std::mismatch(is.begin(), is.end(), should_be.begin(), should_be.end());
  const std::string none = "nothing";
  CHECK((differ.first == is.end() ? none : *differ.first) ==
        (differ.second == should_be.end() ? none : *differ.second));
}

std::vector<session::Line> only_session(const Home& home, const std::vector<std::string>& except) {
  std::vector<session::Log> logs = session::join_parts(home.files());
  std::erase_if(logs, [&](const session::Log& log) {
    return std::find(except.begin(), except.end(), log.session) != except.end();
  });
  REQUIRE(logs.size() == 1);
  return logs[0].lines;
}

}
