#include "bench/today.hpp"

#include "bench/act.hpp"
#include "bench/choices.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr int most_waits = 5; // on one page

bool is_ill(session::Became as) {
  switch (as) {
  case session::Became::good:
  case session::Became::full:
  case session::Became::sunken: return false; // speak of the pan, not of the paint
  case session::Became::cracked:
  case session::Became::sticky:
  case session::Became::rubs_off:
  case session::Became::wont_rewet:
  case session::Became::mould: return true;
  }
  return true;
}

}

// Later words count: what was sticky on the first day may be good on the tenth.
bool ended_good(const BookEntry& entry) {
  bool good = false;
  for (const session::Judged& judged : entry.verdicts) {
    if (judged.verdict.as == session::Became::good) good = true;
    if (is_ill(judged.verdict.as)) good = false;
  }
  return good;
}

std::vector<std::string> last_good(const Bench& bench) {
  std::vector<std::string> out;
  std::set<std::set<std::string>> made;
  for (auto id = bench.batches.rbegin(); id != bench.batches.rend() && out.size() < most_again;
       ++id) {
    const auto entry = bench.index.of.find(*id);
    if (entry == bench.index.of.end() || !ended_good(entry->second)) continue;
    if (made.insert(entry->second.pigments).second) out.push_back(*id);
  }
  return out;
}

bool is_first_day(const Bench& bench) {
  return bench.loaded && bench.batches.empty() && bench.discarded.empty() &&
         bench.today.waits.empty();
}

int waits_a_page() { return most_waits; }

namespace {

// The last place of a page turns it, where there are several.
std::size_t places(const Bench& bench) {
  constexpr std::size_t most = most_waits;
  return bench.today.waits.size() > most ? most - 1 : most;
}

}

int waits_shown(const Bench& bench) { return static_cast<int>(places(bench)); }

int first_wait(const Bench& bench) {
  return first_row(bench.today.list, waits_shown(bench),
                   static_cast<int>(bench.today.waits.size()));
}

std::vector<Due> waits_of_page(const Bench& bench) {
  const auto& all = bench.today.waits;
  const std::size_t first = static_cast<std::size_t>(first_wait(bench));
  std::vector<Due> out;
  for (std::size_t i = first; i < std::min(first + places(bench), all.size()); ++i)
    out.push_back(all[i]);
  return out;
}

int waits_pages(const Bench& bench) {
  return pages_for(bench.today.waits.size(), static_cast<int>(places(bench)));
}

void refresh_today(Bench& bench, const Now& now) {
  bench.today.waits = due(bench, now);
  bench.today.again = last_good(bench);
}

bool today_changes(Bench& bench, const Now& now) {
  const std::vector<Due> before = bench.today.waits;
  refresh_today(bench, now);
  fold_what_shows(bench);
  return bench.today.waits != before;
}

void open_at_hand(Bench& bench, const Now& now, Effects& effects) {
  if (bench.screen != Screen::today || !bench.batch.empty()) return;
  const Due* last = nullptr;
  const auto all = due(bench, now);
  for (const Due& one : all)
    if (one.what == Due::What::on_slab && (!last || one.since > last->since)) last = &one;
  if (last && now.wall_ms - last->since <= at_slab_ms)
    take_up(bench, std::string(last->of), now, effects);
}

}
