#include "session/offsets.hpp"

#include "words/moments.hpp"

#include <iterator>

namespace session {

namespace {
const std::string* local_time_in(const Event& event) {
  if (const auto* began = std::get_if<Began>(&event)) return &began->local;
  if (const auto* jumped = std::get_if<ClockJumped>(&event)) return &jumped->local;
  return nullptr;
}
}

void note_offset(Offsets& offsets, const std::string& session, const Line& line) {
  const std::string* local = local_time_in(line.event);
  const auto offset = local ? words::utc_offset_in(*local) : std::nullopt;
  if (offset) offsets[{session, line.n}] = *offset;
}

Offsets offsets_of(const std::vector<Log>& logs) {
  Offsets offsets;
  for (const Log& log : logs)
    for (const Line& line : log.lines) note_offset(offsets, log.session, line);
  return offsets;
}

std::optional<int> offset_of(const Offsets& offsets, const Ref& line) {
  const auto after = offsets.upper_bound(line);
  if (after == offsets.begin()) return std::nullopt;
  const auto& [from, offset] = *std::prev(after);
  return from.session == line.session ? std::optional(offset) : std::nullopt;
}

std::optional<int> offset_of(const Offsets& offsets, const Batch& batch) {
  for (const Entry& e : batch.entries)
    if (std::holds_alternative<Opened>(e.event) && !e.withdrawn) return offset_of(offsets, e.ref);
  return std::nullopt;
}

}
