#include "session/reader.hpp"

#include "session/bytes.hpp"
#include "session/check_value.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace session {

namespace {

// The check value that the next line may be chained to. After a damaged line that is either the
// value it bears or, when just that value was hit, the one its text gives.
struct Chain {
  std::vector<std::uint32_t> candidates{0};
};

struct Reading {
  File file;
  Chain chain;
  std::size_t line = 0;
  std::size_t byte = 0;

  void damaged(words::Error reason, bool ordinary = false) {
    file.damage.push_back({file.name, line, byte, std::move(reason), ordinary});
  }
};

// The line's body, if its check value fits the chain.
std::optional<std::string_view> verified(Reading& r, std::string_view text) {
  const auto sealed = unseal(text);
  if (!sealed) {
    r.damaged({words::Say::line_without_check, {}});
    const std::string_view body = text.substr(0, text.size() - std::min(text.size(), seal_length));
    for (std::uint32_t& before : r.chain.candidates) before = crc32c(body, before);
    return std::nullopt;
  }
  std::vector<std::uint32_t> next{sealed->check};
  bool fits = false;
  for (const std::uint32_t before : r.chain.candidates) {
    const std::uint32_t own = crc32c(sealed->body, before);
    fits |= own == sealed->check;
    if (own != sealed->check) next.push_back(own);
  }
  if (fits) next.resize(1);
  r.chain.candidates = next;
  if (fits) return sealed->body;
  r.damaged({words::Say::line_check_wrong, {}});
  return std::nullopt;
}

void take_beginning(Reading& r, const Began& began) {
  r.file.session = began.session;
  r.file.device = began.device;
  r.file.version = began.version;
  r.file.part = began.part;
  r.file.from = began.from;
  r.file.future = began.version > format_version;
  if (r.file.future)
    r.damaged({words::Say::file_of_future_version, {std::to_string(began.version)}});
}

// The beginning of a later part bears the number of the first line it takes over.
std::uint64_t least_number(const File& file) {
  if (file.lines.empty()) return 0;
  const bool only_began = file.lines.size() == 1 && file.part > 0;
  return file.lines.back().n + (only_began ? 0 : 1);
}

void read_line(Reading& r, std::string_view text) {
  if (!verified(r, text)) return;
  auto line = decode(text);
  if (!line) return r.damaged(line.error());
  if (const auto* began = std::get_if<Began>(&line->event)) take_beginning(r, *began);
  if (const auto least = least_number(r.file); line->n < least)
    return r.damaged(
        {words::Say::line_order_wrong, {std::to_string(line->n), std::to_string(least)}});
  r.file.ended = std::holds_alternative<Left>(line->event);
  r.file.lines.push_back(*std::move(line));
}

// Where the first line is damaged the file's name still says whose it is: …-SESSION[.part].jsonl
std::string session_in(const std::string& name) {
  const std::size_t dash = name.rfind('-');
  const std::size_t dot = name.find('.', dash == std::string::npos ? 0 : dash);
  if (dash == std::string::npos || dot == std::string::npos) return "";
  return name.substr(dash + 1, dot - dash - 1);
}

// A line that stands already came from a copy of the same file.
void insert_new(Log& log, const File& part) {
  std::set<std::uint64_t> there;
  for (const Line& line : log.lines) there.insert(line.n);
  for (const Line& line : part.lines) {
    const bool takes_over = part.from > 0 && std::holds_alternative<Began>(line.event);
    if (!takes_over && there.insert(line.n).second) log.lines.push_back(line);
  }
}

}

File read_file(std::string name, std::string_view bytes) {
  Reading r;
  r.file.name = std::move(name);
  while (r.byte < bytes.size()) {
    ++r.line;
    const std::size_t end = bytes.find('\n', r.byte);
    if (end == std::string_view::npos) {
      r.damaged({words::Say::line_torn, {}}, true);
      break;
    }
    read_line(r, bytes.substr(r.byte, end - r.byte));
    r.byte = end + 1;
  }
  const bool began =
      !r.file.lines.empty() && std::holds_alternative<Began>(r.file.lines.front().event);
  // A file with no whole line was being created when the power went: ordinary.
  const bool any_line = bytes.find('\n') != std::string_view::npos;
  if (!began) r.damaged({words::Say::file_without_beginning, {}}, !any_line);
  if (!began && any_line) r.file.session = session_in(r.file.name);
  if (!r.file.ended) r.damaged({words::Say::file_not_ended, {}}, true);
  return std::move(r.file);
}

std::vector<Log> join_parts(const std::vector<File>& files) {
  std::map<std::string, std::vector<const File*>> by_session;
  for (const File& file : files)
    if (!file.future && !file.session.empty()) by_session[file.session].push_back(&file);
  std::vector<Log> logs;
  for (auto& [session, parts] : by_session) {
    std::sort(parts.begin(), parts.end(),
              [](const File* a, const File* b) { return a->part < b->part; });
    Log log{session, parts.front()->device, {}, false};
    int newest = 0;
    for (const File* part : parts) {
      if (part->part > newest) std::erase_if(log.lines, [&](auto& l) { return l.n >= part->from; });
      newest = part->part;
      log.damaged |= std::any_of(part->damage.begin(), part->damage.end(),
                                 [](const Damage& d) { return !d.ordinary; });
      insert_new(log, *part);
    }
    std::stable_sort(log.lines.begin(), log.lines.end(),
                     [](const Line& x, const Line& y) { return x.n < y.n; });
    logs.push_back(std::move(log));
  }
  return logs;
}

}
