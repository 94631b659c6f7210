#include "session/reader.hpp"

#include "session/bytes.hpp"
#include "session/check_value.hpp"

#include <algorithm>
#include <map>

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
    return std::nullopt; // the chain stays: the next line cannot be hung on this one
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
  if (!began) r.damaged({words::Say::file_without_beginning, {}});
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
    Log log{session, parts.front()->device, {}};
    for (const File* part : parts) {
      const auto superseded = [&](const Line& line) {
        return part->part > 0 && line.n >= part->from;
      };
      log.lines.erase(std::remove_if(log.lines.begin(), log.lines.end(), superseded),
                      log.lines.end());
      const auto own = part->lines.begin() + (part->part > 0 && !part->lines.empty() ? 1 : 0);
      log.lines.insert(log.lines.end(), own, part->lines.end());
    }
    logs.push_back(std::move(log));
  }
  return logs;
}

}
