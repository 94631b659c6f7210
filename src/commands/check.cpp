#include "commands/check.hpp"

#include "commands/show.hpp"
#include "session/by_batch.hpp"
#include "session/in_words.hpp"
#include "studio/sentences.hpp"
#include "studio/watch.hpp"
#include "words/commands_says.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <map>
#include <ostream>
#include <set>

namespace commands {

namespace {

using Say = words::CommandsSay;

struct Report {
  std::ostream& out;

  void line(words::Sentence id, const words::Args& args) {
    out << printable(words::say(id, args)) << '\n';
  }
};

using Findings = std::vector<Finding>;

void add_files(Findings& found, const std::vector<session::File>& files) {
  for (const session::File& file : files)
    for (const session::Damage& d : file.damage)
      found.push_back(
          {{d.ordinary ? Say::check_note : Say::check_damage,
            {d.file, std::to_string(d.line), std::to_string(d.byte), words::Inner(d.reason)}},
           d.ordinary});
}

words::Error gone_words(const std::string& session, const session::Line& line,
                        const session::Gone& gone) {
  const std::string from = std::to_string(line.n);
  const words::Arg why = gone.why == session::gone_damaged
                             ? words::Arg(words::Inner({words::StudioSay::mend_gone, {}}))
                             : words::Arg(gone.why);
  if (gone.to == line.n) return {Say::check_gone_one, {session, from, why}};
  return {Say::check_gone, {session, from, std::to_string(gone.to), why}};
}

void add_sessions(Findings& found, const std::vector<session::Log>& logs) {
  for (const session::Log& log : logs) {
    for (const session::Span& span : log.missing)
      found.push_back({studio::missing(log.session, span), false});
    for (const std::uint64_t n : log.contradicted)
      found.push_back({{Say::session_contradicted, {log.session, std::to_string(n)}}, false});
    for (const session::Line& line : log.lines)
      if (const auto* gone = std::get_if<session::Gone>(&line.event))
        found.push_back({gone_words(log.session, line, *gone), true});
  }
}

const session::Ref* names_line(const session::Event& event) {
  return std::visit(
      [](const auto& e) -> const session::Ref* {
        if constexpr (requires { e.line; })
          return &e.line;
        else
          return nullptr;
      },
      event);
}

// A session that another names a line of, which lies behind its end: it was cut there.
void add_cut(Findings& found, const std::vector<session::Log>& logs) {
  std::map<std::string, std::uint64_t> last, named;
  for (const session::Log& log : logs)
    if (!log.lines.empty()) {
      const auto* gone = std::get_if<session::Gone>(&log.lines.back().event);
      last[log.session] = std::max(log.lines.back().n, gone ? gone->to : 0);
    }
  for (const session::Log& log : logs)
    for (const session::Line& line : log.lines)
      if (const session::Ref* ref = names_line(line.event); ref && ref->session != log.session) {
        std::uint64_t& furthest = named[ref->session];
        furthest = std::max(furthest, ref->n);
      }
  for (const auto& [session, n] : last)
    if (const auto it = named.find(session); it != named.end() && it->second > n)
      found.push_back(
          {{Say::check_cut, {session, std::to_string(n), std::to_string(it->second)}}, false});
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

std::vector<Finding> findings(const studio::Reading& reading,
                              const std::vector<session::Log>& logs) {
  Findings found;
  for (const words::Error& fault : reading.faults) found.push_back({fault, false});
  add_files(found, reading.files);
  if (const std::size_t files = adrift(reading.files); files > 0)
    found.push_back({{Say::check_adrift, {std::to_string(files)}}, true});
  add_sessions(found, logs);
  add_cut(found, logs);
  return found;
}

std::size_t damaged_places(const std::vector<Finding>& found) {
  return static_cast<std::size_t>(
      std::count_if(found.begin(), found.end(), [](const Finding& f) { return !f.ordinary; }));
}

int check(const studio::Reading& reading, std::ostream& out) {
  Report report{out};
  const std::vector<session::Log> logs = session::join_parts(reading.files);
  const Findings found = findings(reading, logs);
  for (const Finding& f : found) report.line(f.what.what, f.what.args);
  add_warnings(report, logs);
  std::size_t lines = 0;
  for (const session::File& file : reading.files) lines += file.lines.size();
  const std::size_t damages = damaged_places(found), notes = found.size() - damages;
  report.line(Say::check_summary,
              {words::counted(reading.files.size(), Say::count_file, Say::count_files),
               words::counted(lines, Say::count_line, Say::count_lines),
               words::counted(damages, Say::count_place, Say::count_places),
               words::counted(notes, Say::count_note, Say::count_notes)});
  if (reading.files.empty() && !reading.faults.empty()) return 2;
  return damages > 0 ? 1 : 0;
}

}
