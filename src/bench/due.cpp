#include "bench/due.hpp"

#include <algorithm>

namespace bench {

namespace {

std::optional<Due> verdict_due(const std::string& batch, const BookEntry& entry,
                               std::int64_t now_ms) {
  std::optional<Due> out;
  for (const int day : asked_days) {
    const std::int64_t asked = entry.poured_at + day * session::a_day_ms;
    const bool settled =
        std::any_of(entry.verdicts.begin(), entry.verdicts.end(),
                    [&](const session::Judged& judged) { return judged.at >= asked; });
    if (now_ms >= asked && !settled) out = Due{batch, Due::verdict, day, asked};
  }
  return out;
}

bool asks(const BookEntry& entry, std::int64_t now_ms) {
  return !entry.discarded && entry.poured_at > 0 && entry.poured_at <= now_ms &&
         now_ms - entry.poured_at < asks_lapse_ms;
}

bool takes_layer(const BookEntry& entry, std::int64_t now_ms) {
  return entry.layer_at && *entry.layer_at <= now_ms;
}

}

std::vector<Due> due(const Bench& bench, const Now& now) {
  std::vector<Due> out;
  for (const std::string& batch : bench.index.poured) {
    const BookEntry& entry = bench.index.of.at(batch);
    if (!asks(entry, now.wall_ms)) continue;
    if (const auto verdict = verdict_due(batch, entry, now.wall_ms)) out.push_back(*verdict);
    if (takes_layer(entry, now.wall_ms))
      out.push_back({batch, Due::next_layer, 0, *entry.layer_at});
  }
  std::sort(out.begin(), out.end(), [](const Due& a, const Due& b) {
    return std::tie(a.since, a.batch, a.what) < std::tie(b.since, b.batch, b.what);
  });
  return out;
}

int verdict_day_due(const Bench& bench, const std::string& batch, const Now& now) {
  const auto entry = bench.index.of.find(batch);
  if (entry == bench.index.of.end() || !asks(entry->second, now.wall_ms)) return 0;
  const auto verdict = verdict_due(batch, entry->second, now.wall_ms);
  return verdict ? verdict->day : 0;
}

bool layer_due(const Bench& bench, const std::string& batch, const Now& now) {
  const auto entry = bench.index.of.find(batch);
  return entry != bench.index.of.end() && asks(entry->second, now.wall_ms) &&
         takes_layer(entry->second, now.wall_ms);
}

}
