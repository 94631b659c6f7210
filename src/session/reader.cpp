#include "session/reader.hpp"

#include "session/bytes.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace session {

namespace {

struct Reading {
  File file;
  std::size_t line = 0;
  std::size_t byte = 0;
  std::optional<std::uint32_t> before = 0; // check value of the line before, where it was intact
  std::optional<Line> began;               // the file's own
  bool foreign = false;                    // another session's lines follow

  void damaged(words::Error reason, bool ordinary = false) {
    file.damaged |= !ordinary;
    file.damage.push_back({file.name, line, byte, std::move(reason), ordinary});
  }
};

// True if the line is as it was written. That the line before it is there is looked at here too.
bool intact(Reading& r, std::string_view text) {
  const auto sealed = unseal(text);
  const auto before = std::exchange(r.before, std::nullopt);
  if (!sealed) return r.damaged({words::SessionSay::line_without_check, {}}), false;
  if (!is_intact(*sealed)) return r.damaged({words::SessionSay::line_check_wrong, {}}), false;
  r.before = sealed->check;
  if (before && *before != sealed->before) r.damaged({words::SessionSay::line_not_joined, {}});
  return true;
}

void take_beginning(Reading& r, const Began& began) {
  r.file.session = began.session;
  r.file.device = began.device;
  r.file.version = began.version;
  r.file.part = began.part;
  r.file.from = began.from;
  r.file.future = began.version > format_version;
  if (r.file.future)
    r.damaged({words::SessionSay::file_of_future_version, {std::to_string(began.version)}});
}

// A later part's beginning bears the number of the first line it takes over. It is not that line,
// unless it takes over the whole session.
bool is_beginning_of_part(const File& file, const Line& line) {
  return file.part > 0 && file.from > 0 && std::holds_alternative<Began>(line.event);
}

const Line* numbered(const File& file, std::uint64_t n) {
  if (file.lines.empty() || file.lines.back().n < n) return nullptr;
  const auto at = std::find_if(file.lines.begin(), file.lines.end(), [&](const Line& l) {
    return l.n == n && !is_beginning_of_part(file, l);
  });
  return at == file.lines.end() ? nullptr : &*at;
}

// Lines that stand out of order are put where they belong: what is odd about them was said.
void keep(Reading& r, Line line) {
  auto& lines = r.file.lines;
  auto at = lines.end();
  while (at != lines.begin() && std::prev(at)->n > line.n) --at;
  r.file.ended = std::holds_alternative<Left>(line.event);
  lines.insert(at, std::move(line));
}

// Where the first line is damaged the file's name still says whose it is: …-SESSION[.part].jsonl
struct Named {
  std::string session;
  std::optional<int> part;
};

Named named_by(const std::string& file) {
  const std::size_t dash = file.rfind('-');
  const std::size_t dot = file.find('.', dash == std::string::npos ? 0 : dash);
  if (dash == std::string::npos || dot == std::string::npos) return {};
  Named named{file.substr(dash + 1, dot - dash - 1), std::nullopt};
  const std::size_t end = file.find('.', dot + 1);
  const std::string part = end == std::string::npos ? "" : file.substr(dot + 1, end - dot - 1);
  const bool digits =
      !part.empty() && part.size() < 7 && part.find_first_not_of("0123456789") == std::string::npos;
  if (digits) named.part = std::stoi(part);
  return named;
}

// One `began` is the file's own: its first line, or a later one that the file's name bears out.
// That line once more, as it stands, is a copy.
void take_began(Reading& r, Line line) {
  const Began began = std::get<Began>(line.event);
  const bool own = r.file.lines.empty() || named_by(r.file.name).session == began.session;
  if (!r.began && own) {
    r.began = line;
    take_beginning(r, began);
    keep(r, std::move(line));
  } else if (r.began != line) {
    r.foreign = true;
    r.damaged({words::SessionSay::file_of_two_sessions, {began.session}});
  }
}

void take_line(Reading& r, Line line) {
  if (std::holds_alternative<Began>(line.event)) return take_began(r, std::move(line));
  const Line* there = numbered(r.file, line.n);
  if (!there) return keep(r, std::move(line));
  if (*there != line) r.damaged({words::SessionSay::line_number_twice, {std::to_string(line.n)}});
}

void read_line(Reading& r, std::string_view text) {
  if (!intact(r, text)) return;
  auto line = r.file.future ? decode_newer(text) : decode(text);
  if (!line) return r.damaged(line.error());
  take_line(r, *std::move(line));
}

void look_at_ends(Reading& r, bool any_line) {
  // A file with no whole line was being created when the power went: ordinary.
  if (!r.began) {
    r.file.damaged |= any_line;
    r.file.damage.push_back(
        {r.file.name, 1, 0, {words::SessionSay::file_without_beginning, {}}, !any_line});
  }
  if (!r.file.ended) r.damaged({words::SessionSay::file_not_ended, {}}, true);
  if (r.began || !any_line) return;
  const Named named = named_by(r.file.name);
  r.file.session = named.session;
  r.file.part = named.part.value_or(0);
  if (r.file.part > 0 && !r.file.lines.empty()) r.file.from = r.file.lines.front().n;
}

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

// A line that stands already came from a copy of the same file.
void insert_new(Log& log, File& part) {
  const bool first = log.lines.empty();
  for (Line& line : part.lines) {
    if (is_beginning_of_part(part, line)) continue;
    const auto at = first
                        ? log.lines.end()
                        : std::lower_bound(log.lines.begin(), log.lines.end(), line.n,
                                           [](const Line& l, std::uint64_t n) { return l.n < n; });
    if (at == log.lines.end() || at->n != line.n)
      log.lines.insert(at, std::move(line));
    else if (is_better(line, *at))
      *at = std::move(line);
    else if (*at != line && !is_better(*at, line))
      log.contradicted.push_back(line.n);
  }
}

Log joined(const std::string& session, std::vector<File*>& parts) {
  std::stable_sort(parts.begin(), parts.end(), [](const File* a, const File* b) {
    return std::tie(a->part, a->from) < std::tie(b->part, b->from);
  });
  Log log;
  log.session = session;
  int newest = 0;
  for (File* part : parts) {
    if (log.device.empty()) log.device = part->device;
    log.future |= part->future;
    log.damaged |= part->damaged;
    if (part->lines.empty()) continue; // from where on it takes over, nobody knows
    if (part->part > newest) std::erase_if(log.lines, [&](auto& l) { return l.n >= part->from; });
    newest = part->part;
    insert_new(log, *part);
  }
  find_missing(log);
  log.damaged |= !log.contradicted.empty();
  return log;
}

}

File read_file(std::string name, std::string_view bytes) {
  Reading r;
  r.file.name = std::move(name);
  while (r.byte < bytes.size() && !r.foreign) {
    ++r.line;
    const std::size_t end = bytes.find('\n', r.byte);
    if (end == std::string_view::npos) {
      r.damaged({words::SessionSay::line_torn, {}}, true);
      break;
    }
    read_line(r, bytes.substr(r.byte, end - r.byte));
    r.byte = end + 1;
  }
  look_at_ends(r, bytes.find('\n') != std::string_view::npos);
  return std::move(r.file);
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
