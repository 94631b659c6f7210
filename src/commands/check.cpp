#include "commands/check.hpp"

#include "commands/show.hpp"

#include <ostream>

namespace commands {

namespace {

using words::Say;

struct Report {
  std::ostream& out;
  std::size_t damages = 0, notes = 0, lines = 0;

  void line(Say id, const std::vector<std::string>& args) {
    out << printable(words::say(id, args)) << '\n';
  }
  void damage(const session::Damage& d) {
    ++(d.ordinary ? notes : damages);
    line(d.ordinary ? Say::check_note : Say::check_damage,
         {d.file, std::to_string(d.line), std::to_string(d.byte), words::message(d.reason)});
  }
};

void add_warnings(Report& report, const std::vector<session::File>& files) {
  const std::vector<session::Log> logs = session::join_parts(files);
  const session::Logs all = session::all_of(logs);
  for (const std::string& id : session::batch_ids(all))
    if (const auto batch = session::fold(all, id))
      for (const session::Warning& w : batch->warnings)
        report.line(Say::check_warning, {batch->name, id, sentence(w)});
}

}

int check(const studio::Reading& reading, std::ostream& out) {
  Report report{out};
  for (const std::string& fault : reading.faults) out << printable(fault) << '\n';
  report.damages += reading.faults.size();
  for (const session::File& file : reading.files) {
    report.lines += file.lines.size();
    for (const session::Damage& d : file.damage) report.damage(d);
  }
  add_warnings(report, reading.files);
  report.line(Say::check_summary,
              {std::to_string(reading.files.size()), std::to_string(report.lines),
               std::to_string(report.damages), std::to_string(report.notes)});
  return report.damages > 0 ? 1 : 0;
}

}
