#include "session/shelf.hpp"

#include <algorithm>

namespace session {

namespace {

struct Edit {
  std::int64_t at = 0;
  Ref line;
  const Event* event = nullptr;
  bool operator<(const Edit& other) const {
    return std::tie(at, line) < std::tie(other.at, other.line);
  }
};

bool is_edit(const Line& line) {
  return line.batch.empty() && (std::holds_alternative<LaidOut>(line.event) ||
                                std::holds_alternative<PutAway>(line.event));
}

}

Shelf shelf_of(const Logs& logs) {
  std::vector<Edit> edits;
  std::set<Ref> withdrawn;
  for (const Log* log : logs)
    for (const Line& line : log->lines) {
      if (is_edit(line)) edits.push_back({line.at, {log->session, line.n}, &line.event});
      const auto* w = std::get_if<Withdrawn>(&line.event);
      if (w && line.batch.empty()) withdrawn.insert(w->line);
    }
  std::sort(edits.begin(), edits.end());
  Shelf shelf;
  for (const Edit& edit : edits) {
    if (withdrawn.count(edit.line)) continue;
    if (const auto* laid = std::get_if<LaidOut>(edit.event)) {
      shelf.cards[laid->card->id] = *laid->card;
      shelf.put_away.erase(laid->card->id);
    }
    if (const auto* put = std::get_if<PutAway>(edit.event)) shelf.put_away.insert(put->card);
  }
  return shelf;
}

}
