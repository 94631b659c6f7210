// What a frame costs before any pixel: folding, stepping, view and shapes, on a batch of 40 minutes
// and 300 lines. Usage: shapes ROUNDS
#include "bench/pads_slab.hpp"
#include "screens/draw.hpp"
#include "session/bytes.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"

#include <nlohmann/json.hpp>

#include <memory>

namespace {

using speed::Sitting;
using speed::timed;

std::vector<std::string> texts_of(const std::vector<session::Line>& lines) {
  std::vector<std::string> texts;
  std::uint32_t check = 0;
  for (const session::Line& line : lines) {
    const auto encoded = session::encode(line, check);
    speed::need(encoded.has_value(), "a line cannot be written");
    texts.push_back(encoded->bytes);
    check = encoded->check;
  }
  return texts;
}

double parse(const std::vector<std::string>& texts) {
  return timed([&] {
    for (const std::string& text : texts)
      speed::need(nlohmann::json::parse(text).is_object(), "a line is no object");
  });
}

double fold(const Sitting& sitting) {
  std::optional<session::Batch> batch;
  const double ms = timed(
      [&] { batch = session::fold(session::all_of(sitting.bench.logs), sitting.bench.batch); });
  speed::need(batch && batch->entries.size() > 250, "the batch is not there");
  return ms;
}

double drop(const Sitting& sitting, const bench::Now& now) {
  bench::Bench bench = sitting.bench;
  bench::Effects effects;
  const double ms = timed([&] {
    effects = bench::step(bench, bench::Tap{{bench::SlabPad::add, "gum_12"}}, now);
  });
  speed::need(effects.append.size() == 1, "a drop is one line");
  return ms;
}

double pads_alone(const bench::Bench& bench) {
  bench::Layout pads;
  const double ms = timed([&] { pads = bench::layout(bench); });
  speed::need(pads.pads.size() > 15, "the pads are not there");
  return ms;
}

double view_alone(const bench::Bench& bench, const bench::Now& now) {
  bench::View view;
  const double ms = timed([&] { view = bench::view(bench, now); });
  speed::need(std::holds_alternative<bench::SlabView>(view.screen), "Slab is not there");
  return ms;
}

// A finger down and up on a pad that leaves open what is open, and what shows after each.
double finger(const Sitting& sitting, const bench::Rect& box, const bench::Now& now) {
  using bench::Pointer;
  bench::Bench bench = sitting.bench;
  const bool night = bench.night;
  bench::View view;
  const double ms = timed([&] {
    bench::step(bench, Pointer{Pointer::down, box.centre(), now.run_ms, 1, 0}, now);
    view = bench::view(bench, now);
    bench::step(bench, Pointer{Pointer::up, box.centre(), now.run_ms + 90, 2, 0}, now);
    view = bench::view(bench, now);
  });
  speed::need(bench.night != night, "nothing was tapped");
  return ms;
}

double shapes(const bench::Bench& bench, const bench::Now& now) {
  std::vector<screens::Shape> shapes;
  const double ms = timed([&] { shapes = screens::draw(bench::view(bench, now)); });
  speed::need(shapes.size() > 50, "the screen is empty");
  return ms;
}

}

int main(int count, char** words) {
  speed::need(count == 2, "usage: shapes ROUNDS");
  Sitting sitting = speed::long_batch();
  const bench::Now now = sitting.now();
  const auto texts = texts_of(sitting.lines);
  bench::Bench book = sitting.bench;
  book.screen = bench::Screen::book;
  book.book.page = bench::BatchPage{book.batch, {}};
  bench::step(book, bench::Tick{}, now);
  Sitting paints = speed::among_paints(30);
  const bench::Now later = paints.now();
  const bench::Rect night = paints.box("night");
  speed::race("bench",
              {{"parse", [&] { return parse(texts); }},
               {"fold", [&] { return fold(sitting); }},
               {"drop", [&] { return drop(sitting, now); }},
               {"layout", [&] { return pads_alone(sitting.bench); }},
               {"view", [&] { return view_alone(sitting.bench, now); }},
               {"among paints", [&] { return finger(paints, night, later); }},
               {"shapes", [&] { return shapes(sitting.bench, now); }},
               {"shapes of Book", [&] { return shapes(book, now); }}},
              {speed::count_of(words[1])});
}
