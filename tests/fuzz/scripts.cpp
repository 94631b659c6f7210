// Scripts of taps: what is read of one can be played, and what the bench then says can be written,
// read again, folded without a warning, and shown.
#include "bench/pads_number.hpp"
#include "bench/record.hpp"
#include "bench/view.hpp"
#include "commands/script.hpp"
#include "fuzz/must.hpp"
#include "session/bytes.hpp"

#include <algorithm>
#include <cstdint>

using fuzz::must;
using namespace commands;

namespace {

constexpr int most_inputs = 400;

// The hands of a script without a disk, and without the patience for a long one.
class Hands {
public:
  bool tired() const { return inputs_ >= most_inputs || stopped_; }
  const std::string& bytes() const { return bytes_; } // of the session's file

  void perform(const At& a) { clock_.set_wall(a.moment.wall_ms, a.moment.utc_offset_min); }
  void perform(const Shown& a) { feed(bench::Resized{a.display}); }
  void perform(const Seed&) {}
  void perform(const Named&) {}
  void perform(const Tapped& a) {
    for (int i = 0; i < a.times && !tired(); ++i) tap(a.pad, a.every_ms);
  }
  void perform(const Typed& a) {
    for (const char c : a.digits)
      tap(c == '.' ? bench::PadId{bench::NumberPad::point, ""}
                   : bench::PadId{bench::NumberPad::digit, std::string(1, c)},
          600);
    tap({bench::NumberPad::enter, ""}, 600);
  }
  void perform(const Written& a) { feed(bench::Text{a.field, a.text}); }
  void perform(const Pressed& a) {
    feed(bench::Key{a.key, true, clock_.run_ms(), ++polls_});
    clock_.pass(90);
    feed(bench::Key{a.key, false, clock_.run_ms(), ++polls_});
    clock_.pass(510);
  }
  void perform(const Waited& a) {
    clock_.pass(a.ms);
    feed(bench::Tick{});
  }
  void perform(const Down& a) {
    if (const auto at = centre_of(a.pad)) point(bench::Pointer::down, finger_ = *at);
  }
  void perform(const Slide&) { point(bench::Pointer::move, finger_ = {-1, -1}); }
  void perform(const Up&) { point(bench::Pointer::up, finger_); }
  void perform(const Stop&) { stopped_ = true; }

  void leave() { feed(bench::Leaving{}); }

private:
  void feed(const bench::Input& input) {
    ++inputs_;
    const bench::Effects effects = bench::step(bench_, input, clock_.now());
    for (const session::Line& line : effects.append) write(line);
    bench::view(bench_, clock_.now());
  }

  void write(const session::Line& line) {
    must(line.n == next_n_++, "lines are numbered one after the other");
    must((line.n == 0) == std::holds_alternative<session::Began>(line.event),
         "a session begins with its beginning");
    must(line.t >= last_t_, "the running clock never goes back");
    last_t_ = line.t;
    const auto encoded = session::encode(line, check_, session::seed_of("c41e08d55a10", 0));
    must(encoded.has_value(), "what the bench says can be written");
    check_ = encoded->check;
    bytes_ += encoded->bytes;
    const auto again =
        session::decode(std::string_view(encoded->bytes).substr(0, encoded->bytes.size() - 1));
    must(again && *again == line, "what was written is read the same");
  }

  void point(bench::Pointer::Phase phase, bench::Point at) {
    feed(bench::Pointer{phase, at, clock_.run_ms(), ++polls_, 0});
  }

  std::optional<bench::Point> centre_of(const bench::PadId& id) {
    const bench::Layout layout = bench::layout(bench_);
    const bench::Pad* pad = bench::pad_of(layout, id);
    return pad ? std::optional(pad->box.centre()) : std::nullopt;
  }

  void tap(const bench::PadId& pad, std::int64_t every_ms) {
    const auto at = centre_of(pad);
    if (!at) return;
    const std::int64_t press = std::min<std::int64_t>(90, every_ms / 2);
    point(bench::Pointer::down, *at);
    clock_.pass(press);
    point(bench::Pointer::up, *at);
    clock_.pass(every_ms - press);
  }

  ScriptedClock clock_{7};
  bench::Bench bench_ = bench::start("c41e08d55a10", "a83f", {}, clock_.now());
  bench::Point finger_;
  std::uint64_t polls_ = 0;
  int inputs_ = 0;
  bool stopped_ = false;
  std::uint64_t next_n_ = 0;
  std::int64_t last_t_ = 0;
  std::uint32_t check_ = 0;
  std::string bytes_;
};

// The file that the hands made.
void check_file(const std::string& bytes) {
  if (bytes.empty()) return;
  const session::File file = session::read_file("a.jsonl", bytes);
  for (const session::Damage& d : file.damage) must(d.ordinary, "what the bench says is whole");
  const auto logs = session::join_parts({file});
  must(logs.size() == 1 && !logs[0].damaged, "a session of the bench is whole");
  const session::Logs all = session::all_of(logs);
  for (const std::string& id : session::batch_ids(all)) {
    const auto batch = session::fold(all, id);
    must(batch.has_value(), "a batch of the bench is opened");
    must(batch->warnings.empty(), "the bench says nothing that a reader warns of");
  }
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const auto script = read_script({reinterpret_cast<const char*>(data), size});
  if (!script) {
    must(!words::message(script.error()).empty(), "a fault has words");
    return 0;
  }
  Hands hands;
  for (const ScriptLine& line : *script) {
    if (hands.tired()) break;
    std::visit([&](const auto& action) { hands.perform(action); }, line.action);
  }
  hands.leave();
  check_file(hands.bytes());
  return 0;
}
