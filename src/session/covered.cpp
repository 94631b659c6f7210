#include "session/covered.hpp"

namespace session {

bool is_taken_back(const Entry& e) {
  return e.withdrawn || std::holds_alternative<Withdrawn>(e.event);
}

bool was_covered(const Grown<Entry>& entries, std::size_t i) {
  while (i + 1 < entries.size() && is_taken_back(entries[i]) &&
         entries[i + 1].clock - entries[i].clock < gap_s)
    ++i;
  const auto* found = std::get_if<Found>(&entries[i].event);
  return found && !entries[i].withdrawn && found->as == State::wet;
}

std::size_t first_taken_back(const Grown<Entry>& entries, std::size_t i) {
  while (i > 0 && is_taken_back(entries[i - 1])) --i;
  return i;
}

}
