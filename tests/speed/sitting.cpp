#include "speed/sitting.hpp"

#include "session/check_value.hpp"
#include "speed/race.hpp"

namespace speed {

Sitting::Sitting(std::uint32_t seed) : ids(seed << 12) {
  bench = bench::start(session::to_hex(ids), "a83f", {tablet_mm}, now());
  give(bench::Loaded{});
}

bench::Now Sitting::now() {
  return {wall, run, 60, [this] { return ++ids; }};
}

void Sitting::give(bench::Input input) {
  const bench::Effects effects = bench::step(bench, std::move(input), now());
  lines.insert(lines.end(), effects.append.begin(), effects.append.end());
}

void Sitting::pass_s(double seconds) {
  const auto ms = static_cast<std::int64_t>(seconds * 1000);
  wall += ms;
  run += ms;
}

bench::Rect Sitting::box(const std::string& pad) {
  const auto id = bench::pad_named(pad);
  need(id.has_value(), "no pad is named " + pad);
  const bench::Layout layout = bench::layout(bench);
  const bench::Pad* found = bench::pad_of(layout, *id);
  need(found, "there is no pad " + pad + " now");
  return found->box;
}

void Sitting::tap(const std::string& pad) {
  box(pad);
  give(bench::Tap{*bench::pad_named(pad)});
}

void Sitting::begin() {
  for (const char* pad : {"pigment pb28", "weigh", "digit 1", "digit 2", "enter", "begin"})
    tap(pad);
}

void Sitting::one_thing(int i) {
  if (i % 40 == 5) return tap("pass");
  if (i % 9 == 8) return tap(i < 120 ? "felt too_sticky" : "felt right");
  if (i % 33 == 20) return tap("undo");
  if (i % 27 == 13) {
    tap("dot");
    return tap("specks few");
  }
  tap(i % 15 == 0 ? "add water" : "add gum_12");
}

void Sitting::work(double minutes, std::size_t lines_in_all) {
  need(lines.size() < lines_in_all, "the beginning has too many lines");
  const double each_s = minutes * 60 / static_cast<double>(lines_in_all - lines.size());
  for (int i = 0; lines.size() < lines_in_all; ++i) {
    pass_s(each_s);
    one_thing(i);
  }
  need(lines.size() == lines_in_all, "one thing made two lines");
}

Sitting long_batch() {
  Sitting sitting(1);
  sitting.begin();
  sitting.work(40, 300);
  return sitting;
}

Sitting among_paints(int batches) {
  Sitting sitting(2);
  for (int i = 0; i < batches; ++i) {
    sitting.begin();
    sitting.work(10, sitting.lines.size() + 60);
    for (const char* pad : {"pass", "gather", "close", "plan"}) sitting.tap(pad);
  }
  sitting.begin();
  sitting.work(5, sitting.lines.size() + 30);
  for (const char* pad : {"more", "other_paint"}) sitting.tap(pad);
  return sitting;
}

}
