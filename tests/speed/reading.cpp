// Reading a studio until its Book is shown, against a general JSON parser on the same lines.
// Usage: reading FOLDER ROUNDS BATCHES     FOLDER: empty; it becomes the studio
#include "session/bytes.hpp"
#include "speed/race.hpp"
#include "speed/sitting.hpp"
#include "studio/studio.hpp"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>

namespace {

using speed::need;
using speed::Sitting;
using speed::timed;

constexpr std::size_t lines_a_batch = 100;
constexpr std::int64_t day_ms = 86'400'000;

// One batch and one session a day. Answers with the session's lines.
std::vector<std::string> write_batch(const std::filesystem::path& sessions, std::uint32_t day) {
  Sitting sitting(day + 1);
  sitting.wall += day * day_ms;
  sitting.begin();
  sitting.work(25, lines_a_batch - 1);
  sitting.give(bench::Leaving{});
  std::vector<std::string> texts;
  std::uint32_t check = 0;
  std::ofstream file(sessions / (sitting.bench.sitting.session + ".jsonl"), std::ios::binary);
  for (const session::Line& line : sitting.lines) {
    const auto encoded = session::encode(line, check);
    need(encoded.has_value(), "a line cannot be written");
    check = encoded->check;
    file << encoded->bytes;
    texts.push_back(encoded->bytes);
  }
  need(file.flush().good() && texts.size() == lines_a_batch, "a session cannot be written");
  return texts;
}

double parse(const std::vector<std::string>& texts) {
  return timed([&] {
    for (const std::string& text : texts)
      need(nlohmann::json::parse(text).is_object(), "a line is no object");
  });
}

struct Studio {
  std::filesystem::path folder;
  std::size_t batches;
  studio::Reading reading = {};
  Sitting sitting = Sitting(0);

  double read() {
    return timed([&] { reading = studio::read_all(folder, {}); });
  }

  double load() {
    bench::Loaded loaded{reading.files, reading.faults};
    const double ms = timed([&] { sitting.give(loaded); });
    need(sitting.bench.batches.size() == batches && sitting.bench.damage.empty(),
         "not all batches are there, whole");
    return ms;
  }

  double show() {
    sitting.bench.screen = bench::Screen::book;
    bench::View view;
    const double ms = timed([&] { view = bench::view(sitting.bench, sitting.now()); });
    need(!std::get<bench::BookView>(view.screen).rows.empty(), "the Book is empty");
    return ms;
  }
};

}

int main(int count, char** words) {
  need(count == 4, "usage: reading FOLDER ROUNDS BATCHES");
  const std::filesystem::path folder = words[1];
  std::filesystem::create_directory(folder / "sessions");
  const auto batches = static_cast<std::uint32_t>(speed::count_of(words[3]));
  std::vector<std::string> texts;
  for (std::uint32_t day = 0; day < batches; ++day)
    for (std::string& text : write_batch(folder / "sessions", day))
      texts.push_back(std::move(text));
  Studio studio{folder, batches};
  studio.read();
  studio.load();
  speed::race("reading",
              {{"parse", [&] { return parse(texts); }},
               {"all", [&] { return studio.read() + studio.load() + studio.show(); }},
               {"read", [&] { return studio.read(); }},
               {"load", [&] { return studio.load(); }},
               {"show", [&] { return studio.show(); }}},
              {speed::count_of(words[2]), 1, 1});
  std::printf("about\tstudio\t%u batches, %zu lines\n", batches, texts.size());
}
