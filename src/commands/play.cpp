#include "commands/play.hpp"

#include "bench/pads_number.hpp"
#include "bench/record.hpp"
#include "commands/show.hpp"
#include "session/check_value.hpp"
#include "words/commands_says.hpp"

#include <algorithm>
#include <ostream>
#include <set>
#include <utility>

namespace commands {

namespace {

using Say = words::CommandsSay;
using Played = words::Result<void>;
using Steady = std::chrono::steady_clock;

constexpr std::int64_t press_ms = 90;
constexpr std::int64_t most_ticks = 600; // in one wait: a longer one is slept through
constexpr std::chrono::seconds patience{10};

class Player {
public:
  Player(const Playing& how, std::ostream& out) : how_(how), out_(out) {}

  Played perform(const Action& action) {
    return std::visit([this](const auto& a) { return perform(a); }, action);
  }
  // What the program told the hand since it was asked last.
  std::vector<words::Error> said() { return std::exchange(said_, {}); }
  bool over() const { return stopped_ || enough_ || twice_; }

  // Says goodbye unless the script wanted none. Nothing, if all is saved.
  std::optional<words::Error> finish() {
    start();
    if (!stopped_) feed(bench::Leaving{});
    const bool saved =
        runner_->settle(clock().now(), patient_ ? patience : std::chrono::seconds(0));
    report();
    if (twice_) return twice_;
    if (saved && runner_->unsaved() == 0) return std::nullopt;
    const words::Error why = runner_->last_failure().value_or(words::Error{});
    const std::size_t unsaved = runner_->unsaved();
    return words::Error{unsaved == 1 ? Say::play_unsaved_one : Say::play_unsaved,
                        {std::to_string(unsaved), words::Inner(why)}};
  }

  void print_ids() const {
    const bench::Bench& bench = runner_->bench();
    if (bench.logs.front().lines.empty()) return;
    out_ << "session " << bench.sitting.session << '\n';
    std::set<std::string> seen;
    for (const session::Line& line : bench.logs.front().lines) {
      if (line.batch.empty() || !seen.insert(line.batch).second) continue;
      const auto* opened = std::get_if<session::Opened>(&line.event);
      out_ << "batch " << line.batch << (opened ? " " + printable(opened->name) : "") << '\n';
    }
  }

  const EffectRunner* runner() const { return runner_.get(); }

private:
  ScriptedClock& clock() {
    if (!clock_) {
      clock_.emplace(seed_.value_or(real_now().fresh()));
      const bench::Now now = real_now();
      const Moment start = start_.value_or(Moment{now.wall_ms, now.utc_offset_min});
      clock_->set_wall(start.wall_ms, start.utc_offset_min);
    }
    return *clock_;
  }

  // The bench begins with the first line that does something; what stands before it sets it up.
  void start() {
    if (runner_) return;
    Setup setup;
    setup.studio = how_.studio;
    setup.fallback = how_.fallback;
    setup.fault = how_.fault;
    setup.home_files = how_.home_files;
    setup.fallback_files = how_.fallback_files;
    setup.display = display_;
    setup.looks_again = false; // a script is the only hand
    if (how_.report)
      setup.hears_failure = [this](const words::Error& why) {
        out_ << "failed " << printable(words::message(why)) << std::endl;
      };
    setup.session = session_ ? *session_ : bench::fresh_id(clock().now());
    if (is_there(setup.session)) twice_ = words::Error{Say::script_twice, {setup.session}};
    setup.device = device_ ? *device_ : session::to_hex(clock().fresh()).substr(4);
    started_ = Steady::now();
    runner_ = std::make_unique<EffectRunner>(setup, clock().now());
    runner_->settle(clock().now(), patience); // no hand taps before the studio was read
    report();
  }

  // The program passes over its own session's files, whoever wrote them.
  bool is_there(const std::string& session) const {
    const auto names = how_.home_files()->list(how_.studio / studio::sessions_folder).names;
    return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
      return name.find("-" + session + ".") != std::string::npos;
    });
  }

  // Everything waits for the disk, so that the same script gives the same files even where saving
  // fails; a disk that never answers is waited for once.
  void settle() {
    if (how_.pace == 0 && patient_) {
      const auto began = Steady::now();
      runner_->settle(clock().now(), patience);
      patient_ = Steady::now() - began < patience;
    } else {
      runner_->poll(clock().now());
    }
    report();
  }

  void report() {
    if (!how_.report) return;
    if (runner_->saved() == reported_) return;
    reported_ = runner_->saved();
    if (reported_) out_ << "saved " << *reported_ << std::endl;
  }

  void feed(const bench::Input& input) {
    if (twice_) return;
    if (how_.overhears) how_.overhears(runner_->bench(), input, clock().now());
    const bench::Notice before = runner_->bench().notice;
    runner_->feed(input, clock().now());
    listen(before);
    runner_->take_cues(); // nobody listens to a script
    settle();
    if (how_.onlooker && runner_->take_redraw())
      enough_ = enough_ || !how_.onlooker(runner_->bench(), clock().now());
  }

  void listen(const bench::Notice& before) {
    const bench::Notice& now = runner_->bench().notice;
    if (now.error && (now.error != before.error || now.until_ms != before.until_ms))
      said_.push_back(*now.error);
  }

  // A number that the program doubts stands when it is entered once more; another does not go in.
  Played look_at_number(const std::string& digits) {
    const auto& number = runner_->bench().number;
    if (!number || !number->error) return {};
    if (number->asked != number->text)
      return words::failure(Say::script_refused, {digits, words::Inner(*number->error)});
    said_.push_back(*number->error);
    return {};
  }

  void pass(std::int64_t ms) {
    if (how_.pace > 0) {
      const double then_ms = static_cast<double>(clock().run_ms() + ms) / how_.pace;
      const auto then = started_ + std::chrono::duration_cast<Steady::duration>(
                                       std::chrono::duration<double, std::milli>(then_ms));
      runner_->sleep_until(then, clock().now());
      report();
    }
    clock().pass(ms);
  }

  void wait(std::int64_t ms) {
    const std::int64_t until = clock().run_ms() + ms;
    const std::int64_t finest = std::max<std::int64_t>(1, ms / most_ticks);
    while (clock().run_ms() < until && !enough_) {
      const std::int64_t soonest = clock().run_ms() + finest;
      const std::int64_t wake = std::max(runner_->wake_at().value_or(until), soonest);
      pass(std::min(wake, until) - clock().run_ms());
      if (wake <= until) feed(bench::Tick{});
    }
  }

  void point(bench::Pointer::Phase phase, bench::Point at) {
    feed(bench::Pointer{phase, at, clock().run_ms(), ++polls_, 0});
  }

  words::Result<bench::Point> centre_of(const bench::PadId& id) {
    const bench::Layout layout = bench::layout(runner_->bench());
    if (const bench::Pad* pad = bench::pad_of(layout, id)) return pad->box.centre();
    return tl::make_unexpected(not_there(id, layout));
  }

  Played tap(const bench::PadId& pad, std::int64_t every_ms) {
    const auto at = centre_of(pad);
    if (!at) return tl::make_unexpected(at.error());
    const std::int64_t press = std::min(press_ms, every_ms / 2);
    point(bench::Pointer::down, *at);
    wait(press);
    point(bench::Pointer::up, *at);
    wait(every_ms - press);
    return {};
  }

  Played only_before_start() {
    if (runner_ || clock_) return words::failure(Say::script_too_late);
    return {};
  }

  Played perform(const At& a) {
    start_ = a.moment;
    if (clock_) clock_->set_wall(a.moment.wall_ms, a.moment.utc_offset_min);
    return {};
  }
  Played perform(const Shown& a) {
    display_ = a.display;
    if (runner_) feed(bench::Resized{a.display});
    return {};
  }
  Played perform(const Seed& a) {
    seed_ = a.value;
    return only_before_start();
  }
  Played perform(const Named& a) {
    (a.what == Named::session ? session_ : device_) = a.id;
    return only_before_start();
  }
  Played perform(const Tapped& a) {
    start();
    for (int i = 0; i < a.times && !enough_; ++i)
      if (const Played done = tap(a.pad, a.every_ms); !done) return done;
    return {};
  }
  Played perform(const Typed& a) {
    start();
    for (const char c : a.digits) {
      const bench::PadId pad = c == '.' || c == ','
                                   ? bench::PadId{bench::NumberPad::point, ""}
                                   : bench::PadId{bench::NumberPad::digit, std::string(1, c)};
      if (const Played done = tap(pad, Tapped{}.every_ms); !done) return done;
    }
    if (const Played done = tap({bench::NumberPad::enter, ""}, Tapped{}.every_ms); !done)
      return done;
    return look_at_number(a.digits);
  }
  Played perform(const Written& a) {
    start();
    const auto at = centre_of(a.field);
    if (!at) return tl::make_unexpected(at.error());
    feed(bench::Text{a.field, a.text});
    return {};
  }
  Played perform(const Pressed& a) {
    start();
    feed(bench::Key{a.key, true, clock().run_ms(), ++polls_});
    wait(press_ms);
    feed(bench::Key{a.key, false, clock().run_ms(), ++polls_});
    wait(Tapped{}.every_ms - press_ms);
    return {};
  }
  Played perform(const Waited& a) {
    start();
    wait(a.ms);
    return {};
  }
  Played perform(const Down& a) {
    start();
    const auto at = centre_of(a.pad);
    if (!at) return tl::make_unexpected(at.error());
    finger_ = *at;
    point(bench::Pointer::down, *finger_);
    return {};
  }
  Played perform(const Slide&) {
    if (!finger_) return words::failure(Say::script_nothing_down);
    finger_ = {-1, -1}; // off every pad
    point(bench::Pointer::move, *finger_);
    return {};
  }
  Played perform(const Up&) {
    if (!finger_) return words::failure(Say::script_nothing_down);
    point(bench::Pointer::up, *std::exchange(finger_, std::nullopt));
    return {};
  }
  Played perform(const Stop&) {
    stopped_ = true;
    return {};
  }

  const Playing& how_;
  std::ostream& out_;
  std::optional<Moment> start_;
  std::optional<std::uint32_t> seed_;
  std::optional<std::string> session_, device_;
  bench::Display display_;
  std::optional<ScriptedClock> clock_;
  std::unique_ptr<EffectRunner> runner_;
  Steady::time_point started_;
  std::optional<std::uint64_t> reported_;
  std::optional<words::Error> twice_; // the session is there already
  std::uint64_t polls_ = 0;
  std::optional<bench::Point> finger_; // while it is down
  std::vector<words::Error> said_;
  bool patient_ = true;
  bool stopped_ = false; // by the script, as if killed
  bool enough_ = false;  // for the onlooker
};

}

int play(const std::vector<ScriptLine>& script, const Playing& how, std::ostream& out,
         std::ostream& err) {
  Player player(how, out);
  int status = 0;
  const auto complain = [&](const words::Error& error) {
    err << printable(words::message(error)) << '\n';
    status = 1;
  };
  for (const ScriptLine& line : script) {
    const Played done = player.perform(line.action);
    const auto at_line = [&](const words::Error& what) {
      return words::Error{Say::script_line, {std::to_string(line.number), words::Inner(what)}};
    };
    for (const words::Error& said : player.said())
      err << printable(words::message(at_line(said))) << '\n';
    if (!done) complain(at_line(done.error()));
    if (!done || player.over()) break;
  }
  if (const auto unsaved = player.finish()) complain(*unsaved);
  for (const words::Error& said : player.said()) err << printable(words::message(said)) << '\n';
  player.print_ids();
  for (const words::Error& said : player.runner()->came_home())
    err << printable(words::message(said)) << '\n';
  if (status == 0 && player.runner()->on_fallback())
    err << words::say(Say::play_fallback, {how.fallback.string()}) << '\n';
  return status;
}

}
