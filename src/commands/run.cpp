#include "commands/run.hpp"

#include "bench/match.hpp"
#include "commands/arguments.hpp"
#include "commands/bring.hpp"
#include "commands/check.hpp"
#include "commands/colour.hpp"
#include "commands/copies.hpp"
#include "commands/inputs.hpp"
#include "commands/matched.hpp"
#include "commands/photo.hpp"
#include "commands/play.hpp"
#include "commands/range.hpp"
#include "commands/run_paper.hpp"
#include "commands/show.hpp"
#include "commands/tell.hpp"
#include "paint/measure.hpp"
#include "session/bytes.hpp"
#include "studio/photos.hpp"
#include "studio/picture.hpp"
#include "studio/pieces.hpp"
#include "words/commands_says.hpp"

#include <fstream>
#include <iostream>
#include <iterator>

namespace commands {

namespace {

using Say = words::CommandsSay;

// What is wrong is wrong with that file.
Status named(const std::string& file, const Status& status) {
  if (status) return status;
  return words::failure(Say::file_refused, {file, words::Inner(status.error())});
}

words::Result<Playing> playing(const Arguments& a) {
  Playing how;
  how.studio = *a.value("--studio");
  how.fallback = a.value("--fallback").value_or("");
  how.report = a.has("--report");
  const auto fault = disk_fault_of(a);
  if (!fault) return tl::make_unexpected(fault.error());
  how.fault = *fault;
  if (const auto text = a.value("--pace")) {
    const auto pace = paint::typed_number(*text);
    if (!pace) return tl::make_unexpected(pace.error());
    if (*pace < 0.001 || *pace > 1e6) return words::failure(Say::bad_pace, {*text});
    how.pace = *pace;
  }
  return how;
}

Status run_play(const Arguments& a, Io io) {
  auto how = playing(a);
  if (!how) return tl::make_unexpected(how.error());
  how->onlooker = io.onlooker;
  const auto text = bytes_of_file(a.words[0], most_script_bytes);
  if (!text) return tl::make_unexpected(text.error());
  const auto script = read_script(*text);
  if (!script) return named(a.words[0], tl::make_unexpected(script.error()));
  return play(*script, *how, io.out, io.err);
}

Status run_show(const Arguments& a, Io io) {
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  const auto batch = find_batch(*logs, a.words[0]);
  if (!batch) return tl::make_unexpected(batch.error());
  io.out << (a.has("--json") ? shown_as_json(*batch)
                             : shown_for_people(*batch, *logs, where->home) +
                                   matched_for_people(*logs, batch->id));
  return 0;
}

Status run_range(const Arguments& a, Io io) {
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  const auto pigment = a.words.empty() ? std::nullopt : std::optional(a.words[0]);
  const auto shown = ranges_shown(*logs, pigment, a.has("--json"));
  if (!shown) return tl::make_unexpected(shown.error());
  io.out << *shown;
  return 0;
}

Status run_tell(const Arguments& a, Io io) {
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  return tell(*logs, destination(a, io));
}

Status run_hear(const Arguments& a, Io io) {
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  const auto fault = disk_fault_of(a);
  if (!fault) return tl::make_unexpected(fault.error());
  Hearing what{where->home, where->fallback, "", {}, *fault};
  if (!a.words.empty()) {
    what.file = a.words[0];
    auto text = bytes_of_file(a.words[0], paint::most_told_bytes);
    if (!text) return tl::make_unexpected(text.error());
    what.text = *std::move(text);
  }
  return hear(what, io.out, io.err);
}

// Into the usual studio also where there is none yet: that is how somebody may begin.
Status run_bring(const Arguments& a, Io io) {
  Bringing what;
  what.name = studio::Path(a.words[0]).filename().string();
  what.take = a.has("--take");
  what.home = a.value("--studio").value_or(studio::default_studio().string());
  const auto damage = disk_fault_of(a);
  if (!damage) return tl::make_unexpected(damage.error());
  what.fault = *damage;
  if (auto fault = ask(what, a)) return tl::make_unexpected(*std::move(fault));
  auto bytes = bytes_of_file(a.words[0], notes::most_bytes);
  if (!bytes) return tl::make_unexpected(bytes.error());
  what.bytes = *std::move(bytes);
  const auto where = studio_of(a);
  const bool none_yet = !where && where.error().what == Say::no_studio;
  const bool to_begin = !a.value("--studio") && !what.home.empty() && none_yet;
  auto logs = to_begin ? words::Result<std::vector<session::Log>>() : logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  return named(a.words[0], bring(std::move(what), *std::move(logs), io.out, io.err));
}

Status run_list(const Arguments& a, Io io) {
  const auto logs = logs_of(a, io.err);
  if (!logs) return tl::make_unexpected(logs.error());
  io.out << list_for_people(*logs);
  return 0;
}

// What lies elsewhere alone is not looked at and not copied without its studio.
std::optional<words::Error> fault_of_original(const studio::Path& home,
                                              const studio::Path& fallback) {
  if (auto fault = fault_of_studio(home, fallback)) return fault;
  std::error_code ignored;
  if (std::filesystem::is_directory(home, ignored)) return std::nullopt;
  return words::Error{Say::no_studio, {home.string()}};
}

Status run_check(const Arguments& a, Io io) {
  const studio::Path fallback = fallback_of(a, a.words[0]);
  if (auto fault = fault_of_original(a.words[0], fallback))
    return tl::make_unexpected(*std::move(fault));
  studio::Reading reading = studio::read_all(a.words[0], fallback);
  for (words::Error& fault : studio::photo_faults(*disk::posix_files(), a.words[0], reading.files))
    reading.faults.push_back(std::move(fault));
  return check(reading, io.out);
}

Status run_photo(const Arguments& a, Io io) {
  const auto of = session::photo_of_named(*a.value("--of"));
  if (!of) return words::failure(Say::photo_bad_of, {*a.value("--of")});
  const auto fault = disk_fault_of(a);
  if (!fault) return tl::make_unexpected(fault.error());
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  auto bytes = bytes_of_file(a.words[0], studio::most_picture_bytes);
  if (!bytes) return tl::make_unexpected(bytes.error());
  const PhotoToKeep photo{*std::move(bytes), *a.value("--batch"), *of,   {},
                          where->home,       where->fallback,     *fault};
  return named(a.words[0], keep_photo(photo, io.out, io.err));
}

bool is_file(const std::string& path) {
  std::error_code ignored;
  return std::filesystem::is_regular_file(path, ignored);
}

// The reading that was kept with the batch of that name; where none was, the swatch's photo that
// was kept last.
Status hold_against_batch(const Arguments& a, const std::vector<session::Log>& logs,
                          const bench::Bench& bench, ColourWanted& wanted) {
  const std::string& named = wanted.against_name;
  const auto batch = find_batch(logs, named);
  if (!batch && batch.error().what != Say::show_no_batch) return tl::make_unexpected(batch.error());
  if (!batch) return words::failure(Say::colour_no_such_photo, {named});
  wanted.against_read = bench::read_beside(bench, batch->id, studio::sha256(wanted.bytes));
  if (wanted.against_read) return 0;
  const auto photo = last_swatch(logs, batch->id);
  const auto where = studio_of(a);
  if (!photo) return words::failure(Say::colour_no_such_photo, {named});
  if (!where) return tl::make_unexpected(where.error());
  auto bytes = bytes_of_file((where->home / studio::photo_file(*photo)).string(),
                             studio::most_picture_bytes);
  if (!bytes) return tl::make_unexpected(bytes.error());
  wanted.against = *std::move(bytes);
  return 0;
}

// A photo by its path; else what was kept with a batch. What the studio's own photos say of two
// bears on both; without a studio two photos can be compared too.
Status hold_against(const Arguments& a, const std::string& named, ColourWanted& wanted, Io io) {
  wanted.against_name = named;
  const bool file = is_file(named);
  if (file) {
    auto bytes = bytes_of_file(named, studio::most_picture_bytes);
    if (!bytes) return tl::make_unexpected(bytes.error());
    wanted.against = *std::move(bytes);
  }
  const auto logs = logs_of(a, io.err);
  if (!logs && file && !a.value("--studio")) return 0;
  if (!logs) return tl::make_unexpected(logs.error());
  const bench::Bench bench = bench_of(*logs);
  wanted.repeats = bench::repeats_of(bench);
  return file ? 0 : hold_against_batch(a, *logs, bench, wanted);
}

// The photo with its batch, and with what was read from it: the paint's colour from now on.
Status keep_colour(const Arguments& a, const std::string& batch, std::string bytes,
                   const ColourSaid& said, Io io) {
  if (!said.chosen) return words::failure(Say::colour_which, {a.words[0]});
  const auto where = studio_of(a);
  if (!where) return tl::make_unexpected(where.error());
  return keep_photo({std::move(bytes),
                     batch,
                     session::PhotoOf::swatch,
                     said.first,
                     where->home,
                     where->fallback,
                     {}},
                    io.out, io.err);
}

Status run_colour(const Arguments& a, Io io) {
  ColourWanted wanted;
  wanted.name = a.words[0];
  for (const char* option : {"--swatch", "--paper", "--beside"}) {
    const auto text = a.value(option);
    if (!text) continue;
    const auto box = box_of(*text);
    if (!box) return tl::make_unexpected(box.error());
    const std::string which = option;
    if (which == "--swatch") wanted.swatch = *box;
    if (which == "--paper") wanted.paper.push_back(*box);
    if (which == "--beside") wanted.beside = *box;
  }
  auto bytes = bytes_of_file(wanted.name, studio::most_picture_bytes);
  if (!bytes) return tl::make_unexpected(bytes.error());
  wanted.bytes = *std::move(bytes);
  if (const auto named = a.value("--against")) {
    if (auto held = hold_against(a, *named, wanted, io); !held) return held;
  }
  const auto shown = colour_shown(wanted);
  if (!shown) return tl::make_unexpected(shown.error());
  io.out << shown->text;
  if (const auto batch = a.value("--batch"))
    return keep_colour(a, *batch, std::move(wanted.bytes), *shown, io);
  return 0;
}

// What copies are made of.
words::Result<studio::Path> original_of(const Arguments& a) {
  const studio::Path home = a.value("--studio").value_or(studio::default_studio().string());
  if (auto fault = fault_of_original(home, fallback_of(a, home)))
    return tl::make_unexpected(*std::move(fault));
  return home;
}

Status run_mend(const Arguments& a, Io io) {
  const auto studio = original_of(a);
  if (!studio) return tl::make_unexpected(studio.error());
  return mend(*studio, fallback_of(a, *studio), *a.value("--out"), io.out);
}

Status run_pack(const Arguments& a, Io io) {
  const auto studio = original_of(a);
  if (!studio) return tl::make_unexpected(studio.error());
  return pack(*studio, fallback_of(a, *studio), *a.value("--out"), io.out);
}

Status run_unpack(const Arguments& a, Io io) {
  return unpack(a.words[0], *a.value("--out"), io.out);
}

Status run_help(const Arguments&, Io io) {
  io.out << words::say(Say::help);
  return 0;
}

Status run_version(const Arguments&, Io io) {
  io.out << words::say(Say::version, {SLABSIDE_VERSION, std::to_string(session::format_version)});
  return 0;
}

struct Command {
  const char* name;
  Accepted accepted;
  Status (*does)(const Arguments&, Io);
  int status_of_error = 1;
};

using Needed = std::map<std::string, words::Error>;

Needed needs_out(const char* command) { return {{"--out", {Say::out_missing, {command}}}}; }

const Command* command_named(const std::string& name) {
  const words::Error photo_needs{Say::photo_needs_batch, {}};
  static const std::vector<Command> commands{
      {"play",
       {{"--studio", "--fallback", "--fault", "--pace"},
        {"--report"},
        1,
        1,
        {},
        {{"--studio", {Say::play_needs_studio, {}}}}},
       run_play},
      {"show", {{"--studio", "--fallback"}, {"--json"}, 1, 1}, run_show},
      {"range", {{"--studio", "--fallback"}, {"--json"}, 0, 1}, run_range},
      {"tell", {{"--studio", "--fallback", "--out"}, {}, 0, 0, {}, needs_out("tell")}, run_tell},
      {"hear",
       {{"--studio", "--fallback", "--fault"}, {"--no-more"}, 1, 1, {}, {}, "--no-more"},
       run_hear},
      {"bring",
       {{"--studio", "--fallback", "--fault", "--binder", "--decimal", "--dates", "--separator",
         "--spoons"},
        {"--take", "--new-pigments", "--mine"},
        1,
        1,
        {"--column"}},
       run_bring},
      {"list", {{"--studio", "--fallback"}, {}, 0, 0}, run_list},
      {"sheet",
       {{"--studio", "--fallback", "--batch", "--out"}, {"--with-recipes"}, 0, 0},
       run_sheet},
      {"labels",
       {{"--studio", "--fallback", "--batch", "--binder", "--count", "--mm", "--sheet", "--line",
         "--out"},
        {},
        0,
        0},
       run_labels},
      {"paints", {{"--studio", "--fallback", "--out"}, {}, 0, 0}, run_paints},
      {"card", {{"--studio", "--fallback", "--batch", "--sheet", "--out"}, {}, 0, 0}, run_card},
      {"table",
       {{"--studio", "--fallback", "--batch", "--out"}, {"--totals", "--with-recipes"}, 0, 0},
       run_table},
      {"check", {{"--fallback"}, {}, 1, 1}, run_check, 2},
      {"mend", {{"--studio", "--fallback", "--out"}, {}, 0, 0, {}, needs_out("mend")}, run_mend, 2},
      {"pack", {{"--studio", "--fallback", "--out"}, {}, 0, 0, {}, needs_out("pack")}, run_pack},
      {"unpack", {{"--out"}, {}, 1, 1, {}, needs_out("unpack")}, run_unpack},
      {"photo",
       {{"--studio", "--fallback", "--batch", "--of", "--fault"},
        {},
        1,
        1,
        {},
        {{"--batch", photo_needs}, {"--of", photo_needs}}},
       run_photo},
      {"colour",
       {{"--swatch", "--paper", "--beside", "--against", "--batch", "--studio", "--fallback"},
        {},
        1,
        1},
       run_colour},
      {"help", {{}, {}, 0, 0}, run_help},
      {"--help", {{}, {}, 0, 0}, run_help},
      {"--version", {{}, {}, 0, 0}, run_version},
  };
  for (const Command& command : commands)
    if (name == command.name) return &command;
  return nullptr;
}

}

std::optional<int> run(const std::vector<std::string>& given, std::ostream& out, std::ostream& err,
                       const Onlooker& onlooker) {
  const Command* command = given.empty() ? nullptr : command_named(given[0]);
  if (!command) return std::nullopt;
  const auto complain = [&](const words::Error& error) {
    err << "slabside: " << printable(words::message(error)) << '\n';
  };
  const auto arguments = parse({given.begin() + 1, given.end()}, command->accepted, given[0]);
  if (!arguments) {
    complain(arguments.error());
    return 2;
  }
  const Status status = command->does(*arguments, {out, err, onlooker});
  if (!status) complain(status.error());
  if (!out.flush()) {
    complain({Say::output_failed, {}});
    return 1;
  }
  return status.value_or(command->status_of_error);
}

std::optional<int> run(const std::vector<std::string>& given, const Onlooker& onlooker) {
  return run(given, std::cout, std::cerr, onlooker);
}

}
