#include "session/reader.hpp"

#include "session/bytes.hpp"
#include "session/file_name.hpp"
#include "session/line_order.hpp"
#include "session/torn.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>

namespace session {

bool is_beginning_of_part(const File& file, const Line& line) {
  return file.part > 0 && file.from > 0 && std::holds_alternative<Began>(line.event);
}

namespace {

struct Raw { // a line that ends with LF
  std::string_view text;
  std::size_t byte = 0;
  std::optional<Sealed> sealed;
};

struct Candidate { // a `began` that fits the seal it asks for
  std::size_t raw = 0;
  Line line;
  std::uint32_t seed = 0;
};

struct WrittenLine { // a line as it was written
  Line line;
  std::size_t raw = 0;
  std::size_t run = 0;
};

// Lines that stand one after the other, each joined to the one before.
struct Run {
  std::uint32_t before = 0; // of its first line
  bool foreign = false;     // begins with another's beginning
  std::optional<int>
      rank; // how sure it is that it is the file's own: 0 the most; absent: it is not
  std::vector<std::size_t> entries;
};

struct Reading {
  File file;
  std::vector<Raw> raws;
  std::string_view tail; // behind the last LF
  std::size_t tail_byte = 0;
  std::vector<Candidate> candidates;
  std::optional<Candidate> began;    // the file's own
  std::optional<std::int64_t> clock; // without it: what the name says of its `at`
  std::vector<WrittenLine> entries;
  std::vector<Run> runs;

  void damaged(std::size_t raw, words::Error reason) {
    file.damaged = true;
    file.damage.push_back({file.name, raw + 1, raws[raw].byte, std::move(reason), false});
  }
};

void take_apart(Reading& r, std::string_view bytes) {
  bool any_cr = false;
  constexpr std::size_t usual_line = 160; // bytes
  r.raws.reserve(bytes.size() / usual_line + 1);
  r.tail_byte = bytes.size() - without_bom(bytes).size();
  if (r.tail_byte > 0) {
    r.file.damaged = true;
    r.file.damage.push_back({r.file.name, 1, 0, {words::SessionSay::file_has_bom, {}}, false});
  }
  for (std::size_t& at = r.tail_byte;;) {
    const std::size_t end = bytes.find('\n', at);
    if (end == std::string_view::npos) break;
    const std::string_view whole = bytes.substr(at, end - at), text = without_cr(whole);
    r.raws.push_back({text, at, unseal(text)});
    if (text.size() < whole.size() && !std::exchange(any_cr, true))
      r.damaged(r.raws.size() - 1, {words::SessionSay::line_ends_changed, {}});
    at = end + 1;
  }
  r.tail = bytes.substr(r.tail_byte);
}

// A version to come may seal its lines in either way.
std::optional<std::uint32_t> seed_that_fits(const Sealed& sealed, const Began& began) {
  const std::uint32_t seed = seed_of(began);
  if (is_intact(sealed, seed)) return seed;
  if (began.version > format_version && is_intact(sealed, 0)) return 0;
  return std::nullopt;
}

// Quotes are frequent, and b is not.
bool names_began(std::string_view text) {
  return text.find("began") != std::string_view::npos &&
         text.find("\"e\":\"began\"") != std::string_view::npos;
}

void find_candidates(Reading& r) {
  for (std::size_t i = 0; i < r.raws.size(); ++i) {
    const Raw& raw = r.raws[i];
    if (!raw.sealed || !names_began(raw.text)) continue;
    auto line = decode(raw.text);
    const auto* began = line ? std::get_if<Began>(&line->event) : nullptr;
    if (!began) continue;
    if (const auto seed = seed_that_fits(*raw.sealed, *began))
      r.candidates.push_back({i, *std::move(line), *seed});
  }
}

bool any_fits(const Reading& r, std::size_t raws, std::uint32_t seed) {
  return std::any_of(r.raws.begin(), r.raws.begin() + static_cast<std::ptrdiff_t>(raws),
                     [&](const Raw& raw) { return raw.sealed && is_intact(*raw.sealed, seed); });
}

// The beginning that the name bears out. Where a writer gave the name there is no other; else it is
// the first one, but where lines are the name's, or, of version 1, stand before it.
std::optional<Candidate> own_beginning(const Reading& r, const Named& named) {
  const auto session = [](const Candidate& c) { return std::get<Began>(c.line.event).session; };
  for (const Candidate& c : r.candidates)
    if (session(c) == named.session) return c;
  if (r.candidates.empty() || named.by_writer) return std::nullopt;
  const Candidate& first = r.candidates.front();
  if (first.seed == 0 && any_fits(r, first.raw, 0)) return std::nullopt;
  const bool others = any_fits(r, r.raws.size(), seed_of(named.session, named.part.value_or(0)));
  return others ? std::nullopt : std::optional(first);
}

void take_beginning(Reading& r) {
  const Began& began = std::get<Began>(r.began->line.event);
  r.file.seed = r.began->seed;
  r.file.session = began.session;
  r.file.device = began.device;
  r.file.version = began.version;
  r.file.part = began.part;
  r.file.from = began.from;
  r.file.future = began.version > format_version;
}

void find_whose(Reading& r) {
  find_candidates(r);
  const Named named = named_by(r.file.name);
  r.began = own_beginning(r, named);
  if (r.began) return take_beginning(r);
  r.clock = named.began_at;
  if (r.raws.empty()) return;
  r.file.session = named.session;
  r.file.part = named.part.value_or(0);
  const std::uint32_t seed = seed_of(named.session, r.file.part);
  if (!any_fits(r, r.raws.size(), seed)) return;
  r.file.seed = seed;
  r.file.version = format_version;
}

const Candidate* candidate_at(const Reading& r, std::size_t raw) {
  const auto at = std::lower_bound(r.candidates.begin(), r.candidates.end(), raw,
                                   [](const Candidate& c, std::size_t i) { return c.raw < i; });
  return at == r.candidates.end() || at->raw != raw ? nullptr : &*at;
}

bool is_foreign(const Reading& r, const Line& line) {
  return std::holds_alternative<Began>(line.event) && !(r.began && r.began->line == line);
}

void damaged_by_another(Reading& r, std::size_t raw, const Line& line) {
  r.damaged(raw, {words::SessionSay::file_of_two_sessions, {std::get<Began>(line.event).session}});
}

// True if the line is as it was written, in this file.
bool intact(Reading& r, std::size_t i) {
  const Raw& raw = r.raws[i];
  if (is_blank(raw.text)) return r.damaged(i, {words::SessionSay::line_blank, {}}), false;
  if (!raw.sealed) return r.damaged(i, {words::SessionSay::line_without_check, {}}), false;
  if (is_intact(*raw.sealed, r.file.seed)) return true;
  if (const Candidate* another = candidate_at(r, i))
    damaged_by_another(r, i, another->line);
  else
    r.damaged(i, {words::SessionSay::line_check_wrong, {}});
  return false;
}

void read_line(Reading& r, std::size_t i, bool joined) {
  auto line = r.file.future ? decode_newer(r.raws[i].text) : decode(r.raws[i].text);
  const bool foreign = line && is_foreign(r, *line);
  const bool may_go_on = r.file.seed == 0; // with lines of that other session
  const bool own = r.began && r.began->raw == i;
  if (!joined || foreign || own || r.runs.empty())
    r.runs.push_back({r.raws[i].sealed->before, foreign && may_go_on, std::nullopt, {}});
  if (!line) return r.damaged(i, line.error());
  if (foreign) return damaged_by_another(r, i, *line);
  r.runs.back().entries.push_back(r.entries.size());
  r.entries.push_back({*std::move(line), i, r.runs.size() - 1});
}

// That the line before it is there is looked at here too.
void read_lines(Reading& r) {
  std::optional<std::uint32_t> before = 0; // check value of the line before, where it was intact
  r.entries.reserve(static_cast<std::size_t>(std::count_if(
      r.raws.begin(), r.raws.end(), [](const Raw& raw) { return raw.sealed.has_value(); })));
  for (std::size_t i = 0; i < r.raws.size(); ++i) {
    const auto last = std::exchange(before, std::nullopt);
    if (!intact(r, i)) continue;
    const Sealed& sealed = *r.raws[i].sealed;
    if (last && *last != sealed.before) r.damaged(i, {words::SessionSay::line_not_joined, {}});
    before = sealed.check;
    if (r.began && r.began->raw == i && r.file.future)
      r.damaged(i, {words::SessionSay::file_of_future_version, {std::to_string(r.file.version)}});
    read_line(r, i, last == sealed.before);
  }
}

// Of lines that do not follow from the one before them, why: they stand there twice, or were moved.
void name_what_is_not_joined(Reading& r) {
  const auto is_it = [](const Damage& d) {
    return d.reason.what == words::SessionSay::line_not_joined;
  };
  if (std::none_of(r.file.damage.begin(), r.file.damage.end(), is_it)) return;
  std::unordered_map<std::uint32_t, std::size_t> first; // that bears this check value
  for (std::size_t i = 0; i < r.raws.size(); ++i)
    if (r.raws[i].sealed) first.emplace(r.raws[i].sealed->check, i);
  for (Damage& d : r.file.damage) {
    if (!is_it(d)) continue;
    const Raw& raw = r.raws[d.line - 1];
    const std::size_t same = first.at(raw.sealed->check);
    const auto before = first.find(raw.sealed->before);
    if (same + 1 < d.line && r.raws[same].text == raw.text)
      d.reason = {words::SessionSay::line_doubled, {std::to_string(same + 1)}};
    else if (before != first.end())
      d.reason = {words::SessionSay::line_moved, {std::to_string(before->second + 1)}};
  }
}

std::int64_t clock_of(const Line& line) { return line.at - line.t; }

// Both began in the same second, as far as a name and a clock that is set right now and then say
// it.
bool same_clock(std::int64_t a, std::int64_t b) {
  constexpr std::int64_t as_good_as_same_ms = 2000;
  return a - b <= as_good_as_same_ms && b - a <= as_good_as_same_ms;
}

// Of runs, that to which all others have to chain.
std::optional<std::size_t> first_own_run(const Reading& r) {
  for (const WrittenLine& e : r.entries)
    if (r.began && e.raw == r.began->raw) return e.run;
  for (const WrittenLine& e : r.entries)
    if (!r.runs[e.run].foreign && (!r.clock || same_clock(clock_of(e.line), *r.clock)))
      return e.run;
  return std::nullopt;
}

void bind_by_chain(Reading& r, std::size_t first) {
  std::multimap<std::uint32_t, std::size_t> waiting; // by what their first line follows
  for (std::size_t i = 0; i < r.runs.size(); ++i)
    if (!r.runs[i].foreign && i != first) waiting.emplace(r.runs[i].before, i);
  std::vector<std::size_t> bound{first};
  r.runs[first].rank = 0;
  while (!bound.empty()) {
    const std::size_t run = bound.back();
    bound.pop_back();
    for (const std::size_t e : r.runs[run].entries) {
      const auto [from, to] = waiting.equal_range(r.raws[r.entries[e].raw].sealed->check);
      for (auto next = from; next != to; ++next) {
        r.runs[next->second].rank = 0;
        bound.push_back(next->second);
      }
      waiting.erase(from, to);
    }
  }
}

// A run that does not chain may still be the session's own, behind what was lost: then its clock is
// the session's. That of another session is not, or both began in the same second.
void bind_by_clock(Reading& r, std::optional<std::size_t> first) {
  std::optional<std::int64_t> clock;
  if (first) clock = clock_of(r.entries[r.runs[*first].entries.front()].line);
  for (Run& run : r.runs) {
    if (run.foreign || run.entries.empty()) continue;
    const WrittenLine& head = r.entries[run.entries.front()];
    if (!run.rank && clock && same_clock(clock_of(head.line), *clock)) run.rank = 1;
    if (run.rank)
      clock = clock_of(r.entries[run.entries.back()].line);
    else
      r.damaged(head.raw, {words::SessionSay::line_of_another, {}});
  }
}

void bind_runs(Reading& r) {
  const auto first = first_own_run(r);
  const bool sealed_as_own = r.file.seed != 0 || r.file.future;
  if (sealed_as_own)
    for (Run& run : r.runs)
      if (!run.foreign) run.rank = 0;
  if (sealed_as_own) return;
  if (first) bind_by_chain(r, *first);
  bind_by_clock(r, first);
}

// Lines that stand out of order are put where they belong: what is odd about them was said. Of two
// that bear one number that counts which chains, and then the first; the same line once more, as it
// stands, is a copy.
void keep_lines(Reading& r) {
  std::vector<WrittenLine*> all, kept;
  for (WrittenLine& e : r.entries)
    if (r.runs[e.run].rank) all.push_back(&e);
  const auto place = [&](const WrittenLine* e) {
    const bool began = std::holds_alternative<Began>(e->line.event);
    return std::tuple(e->line.n, !began, *r.runs[e->run].rank, e->raw);
  };
  const auto in_order = [&](auto* a, auto* b) { return place(a) < place(b); };
  if (!std::is_sorted(all.begin(), all.end(), in_order))
    std::sort(all.begin(), all.end(), in_order);
  const WrittenLine *last = nullptr, *beginning = nullptr;
  const WrittenLine* numbered = nullptr;
  for (WrittenLine* e : all) {
    const bool of_part = is_beginning_of_part(r.file, e->line);
    const WrittenLine*& same = of_part ? beginning : numbered;
    if (same && (of_part || same->line.n == e->line.n)) {
      if (same->line != e->line)
        r.damaged(e->raw, {words::SessionSay::line_number_twice, {std::to_string(e->line.n)}});
      continue;
    }
    const WrittenLine* before = std::exchange(same, e);
    if (auto odd = before ? odd_after(before->line, e->line) : std::nullopt; odd && !r.file.future)
      r.damaged(e->raw, *std::move(odd));
    if (!last || last->raw < e->raw) last = e;
    kept.push_back(e);
  }
  r.file.ended = last && std::holds_alternative<Left>(last->line.event);
  r.file.lines.reserve(kept.size());
  for (WrittenLine* e : kept) r.file.lines.push_back(std::move(e->line));
}

bool says_left(const File& file) {
  return std::any_of(file.lines.begin(), file.lines.end(),
                     [](const Line& line) { return std::holds_alternative<Left>(line.event); });
}

// A file with no whole line was being created when the power went: ordinary.
void look_at_ends(Reading& r) {
  File& file = r.file;
  const auto say = [&](std::size_t line, std::size_t byte, words::SessionSay what, bool ordinary) {
    file.damaged |= !ordinary;
    file.damage.push_back({file.name, line, byte, {what, {}}, ordinary});
  };
  const bool any = !file.lines.empty() && !is_beginning_of_part(file, file.lines.back());
  const auto last = any ? std::optional(file.lines.back().n) : std::nullopt;
  const bool torn = r.tail.empty() || (!says_left(file) && is_torn_line(r.tail, last));
  const std::size_t end = r.raws.size() + (r.tail.empty() ? 0 : 1);
  if (!r.tail.empty())
    say(end, r.tail_byte,
        torn ? words::SessionSay::line_torn : words::SessionSay::line_no_beginning, torn);
  const bool empty = r.raws.empty() && r.tail.empty();
  if (!r.began)
    say(1, 0, empty ? words::SessionSay::file_empty : words::SessionSay::file_without_beginning,
        r.raws.empty() && torn);
  if (!file.ended) say(end, r.tail_byte, words::SessionSay::file_not_ended, true);
  if (!r.began && file.part > 0 && !file.lines.empty()) file.from = file.lines.front().n;
  std::stable_sort(file.damage.begin(), file.damage.end(),
                   [](const Damage& a, const Damage& b) { return a.line < b.line; });
}

}

namespace {

// What one file needed of memory the next will need too, unless it was unusually long.
template <class T>
void keep_for_next(std::vector<T>& used, std::vector<T>& kept) {
  constexpr std::size_t usual_lines = 2000;
  if (used.capacity() > usual_lines) return;
  used.clear();
  kept.swap(used);
}

}

File read_file(std::string name, std::string_view bytes) {
  thread_local std::vector<Raw> raws;
  thread_local std::vector<WrittenLine> entries;
  Reading r;
  r.raws.swap(raws);
  r.entries.swap(entries);
  r.file.name = std::move(name);
  take_apart(r, bytes);
  find_whose(r);
  read_lines(r);
  name_what_is_not_joined(r);
  bind_runs(r);
  keep_lines(r);
  look_at_ends(r);
  keep_for_next(r.raws, raws);
  keep_for_next(r.entries, entries);
  return std::move(r.file);
}

}
