// Batches as the index has them, without one line of a session, and what is due of them.
#pragma once

#include "bench/due.hpp"

namespace entries {

using namespace bench;

inline constexpr std::int64_t day_ms = session::a_day_ms;

using What = Due::What;

inline const Due* of(const std::vector<Due>& all, const std::string& id, What what) {
  for (const Due& one : all)
    if (one.of == id && one.what == what) return &one;
  return nullptr;
}

inline BookEntry poured(std::int64_t at) {
  BookEntry entry;
  entry.poured_at = at;
  entry.layer_at = at + 2 * day_ms;
  return entry;
}

inline BookEntry lying(BookEntry::Lies where, std::int64_t since) {
  BookEntry entry;
  entry.lies = where;
  entry.lies_since = since;
  return entry;
}

inline BookIndex index_of(const std::vector<std::pair<std::string, BookEntry>>& entries) {
  BookIndex index;
  for (const auto& [id, entry] : entries) {
    index.of[id] = entry;
    index.asked.insert(id);
  }
  return index;
}

}
