#include "session/reader.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace session {

namespace {

// Between two lines of a joined session: what no file holds.
void find_missing(Log& log) {
  std::uint64_t next = 0;
  for (const Line& line : log.lines) {
    if (line.n > next) log.missing.push_back({next, line.n - 1});
    const auto* gone = std::get_if<Gone>(&line.event);
    next = std::max({next, line.n + 1, gone ? gone->to + 1 : 0});
    log.damaged |= gone != nullptr;
  }
  log.damaged |= !log.missing.empty();
}

// Of two files that tell one line, a mended one may only know that it is gone.
bool is_better(const Line& line, const Line& than) {
  return std::holds_alternative<Gone>(than.event) && !std::holds_alternative<Gone>(line.event);
}

using ByNumber = std::map<std::uint64_t, Line*>;

// A line that stands already came from a copy of the same file.
void insert_new(Log& log, ByNumber& lines, File& part) {
  for (Line& line : part.lines) {
    if (is_beginning_of_part(part, line)) continue;
    Line*& there = lines.emplace_hint(lines.end(), line.n, &line)->second;
    if (is_better(line, *there))
      there = &line;
    else if (*there != line && !is_better(*there, line))
      log.contradicted.push_back(line.n);
  }
}

void put_together(Log& log, std::vector<File*>& parts) {
  ByNumber lines;
  int newest = 0;
  for (File* part : parts) {
    if (part->lines.empty()) continue; // from where on it takes over, nobody knows
    if (part->part > newest) lines.erase(lines.lower_bound(part->from), lines.end());
    newest = part->part;
    insert_new(log, lines, *part);
  }
  log.lines.reserve(lines.size());
  for (const auto& [n, line] : lines) log.lines.push_back(std::move(*line));
}

Log joined(const std::string& session, std::vector<File*>& parts) {
  std::stable_sort(parts.begin(), parts.end(), [](const File* a, const File* b) {
    return std::tie(a->part, a->from) < std::tie(b->part, b->from);
  });
  Log log;
  log.session = session;
  for (const File* part : parts) {
    if (log.device.empty()) log.device = part->device;
    log.future |= part->future;
    log.damaged |= part->damaged;
  }
  const bool whole = parts.size() == 1 && parts.front()->part == 0;
  if (whole)
    log.lines = std::move(parts.front()->lines);
  else
    put_together(log, parts);
  for (File* part : parts) part->lines = {}; // so that no more than one session is there twice
  find_missing(log);
  log.damaged |= !log.contradicted.empty();
  return log;
}

}

Joined join(std::vector<File> files) {
  Joined out;
  std::map<std::string, std::vector<File*>> by_session;
  for (File& file : files) {
    std::move(file.damage.begin(), file.damage.end(), std::back_inserter(out.damage));
    if (!file.session.empty()) by_session[file.session].push_back(&file);
  }
  for (auto& [session, parts] : by_session) out.logs.push_back(joined(session, parts));
  return out;
}

std::vector<Log> join_parts(std::vector<File> files) { return join(std::move(files)).logs; }

}
