#include "commands/check.hpp"

#include "commands/show.hpp"
#include "session/by_batch.hpp"
#include "session/in_words.hpp"
#include "studio/sentences.hpp"
#include "studio/watch.hpp"
#include "words/commands_says.hpp"

#include <algorithm>
#include <ostream>
#include <set>

namespace commands {

namespace {

using Say = words::CommandsSay;

struct Report {
  std::ostream& out;
  std::size_t damages = 0, notes = 0, lines = 0;

  void line(words::Sentence id, const words::Args& args) {
    out << printable(words::say(id, args)) << '\n';
  }
  void damage(words::Sentence id, const words::Args& args) {
    ++damages;
    line(id, args);
  }
  void note(words::Sentence id, const words::Args& args) {
    ++notes;
    line(id, args);
  }
  void damage(const session::Damage& d) {
    const words::Args args{d.file, std::to_string(d.line), std::to_string(d.byte),
                           words::message(d.reason)};
    d.ordinary ? note(Say::check_note, args) : damage(Say::check_damage, args);
  }
};

void add_sessions(Report& report, const std::vector<session::Log>& logs) {
  for (const session::Log& log : logs) {
    for (const session::Span& span : log.missing) {
      const words::Error lacks = studio::missing(log.session, span);
      report.damage(lacks.what, lacks.args);
    }
    for (const std::uint64_t n : log.contradicted)
      report.damage(Say::session_contradicted, {log.session, std::to_string(n)});
    for (const session::Line& line : log.lines)
      if (const auto* gone = std::get_if<session::Gone>(&line.event))
        gone->to == line.n
            ? report.note(Say::check_gone_one, {log.session, std::to_string(line.n), gone->why})
            : report.note(Say::check_gone, {log.session, std::to_string(line.n),
                                            std::to_string(gone->to), gone->why});
  }
}

void add_warnings(Report& report, const std::vector<session::Log>& logs) {
  const session::Logs all = session::all_of(logs);
  const auto about = session::by_batch(all);
  for (const std::string& id : session::batch_ids(all))
    if (const auto batch = session::fold(about.at(id), id))
      for (const session::Warning& w : batch->warnings)
        report.line(Say::check_warning, {batch->name, id, session::warning_words(w)});
}

// What lies in the fallback folder and not at home as well.
std::size_t adrift(const std::vector<session::File>& files) {
  const std::string prefix = studio::fallback_prefix;
  std::set<std::string> home;
  for (const session::File& file : files) home.insert(file.name);
  return static_cast<std::size_t>(
      std::count_if(files.begin(), files.end(), [&](const session::File& file) {
        return file.name.starts_with(prefix) && !home.count(file.name.substr(prefix.size()));
      }));
}

}

int check(const studio::Reading& reading, std::ostream& out) {
  Report report{out};
  for (const words::Error& fault : reading.faults) out << printable(words::message(fault)) << '\n';
  report.damages += reading.faults.size();
  for (const session::File& file : reading.files) {
    report.lines += file.lines.size();
    for (const session::Damage& d : file.damage) report.damage(d);
  }
  const std::vector<session::Log> logs = session::join_parts(reading.files);
  if (const std::size_t files = adrift(reading.files); files > 0)
    report.note(Say::check_adrift, {std::to_string(files)});
  add_sessions(report, logs);
  add_warnings(report, logs);
  report.line(Say::check_summary,
              {std::to_string(reading.files.size()), std::to_string(report.lines),
               std::to_string(report.damages), std::to_string(report.notes)});
  if (reading.files.empty() && !reading.faults.empty()) return 2;
  return report.damages > 0 ? 1 : 0;
}

}
