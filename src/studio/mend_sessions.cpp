#include "session/bytes.hpp"
#include "session/reader.hpp"
#include "studio/mend.hpp"
#include "studio/sentences.hpp"
#include "words/session_says.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
#include <iterator>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace studio {

namespace {

using session::Began;
using session::Gone;
using session::Left;
using session::Line;
using Say = words::StudioSay;

bool is_began(const Line& line) { return std::holds_alternative<Began>(line.event); }

// A line as it stands in a file.
struct Standing {
  Line line;
  std::string_view text;
  std::size_t number = 0; // 1 for the first
};

struct Work {
  SessionFile* original = nullptr;
  session::File file;
  std::multimap<std::uint64_t, Standing> standing; // by n; of a damaged file
  bool mendable = true;                            // no newer format, and a session
  bool anew = false;
  std::uint64_t void_from = std::numeric_limits<std::uint64_t>::max(); // by a later part
  std::vector<Line> told;                                              // to be put among its lines

  // As the reader has it: a later part's beginning is a line only where it takes over everything.
  bool is_line(const Line& line) const { return file.from == 0 || !is_began(line); }
  std::vector<Line>::const_iterator at_or_behind(std::uint64_t n) const {
    return std::lower_bound(file.lines.begin(), file.lines.end(), n,
                            [](const Line& line, std::uint64_t m) { return line.n < m; });
  }
};

bool really(const session::Damage& d) { return !d.ordinary; }

std::multimap<std::uint64_t, Standing> standing_in(std::string_view bytes, std::uint32_t seed) {
  std::multimap<std::uint64_t, Standing> all;
  bytes = session::without_bom(bytes);
  for (std::size_t number = 1; !bytes.empty(); ++number) {
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) break;
    const std::string_view text = session::without_cr(bytes.substr(0, end));
    bytes.remove_prefix(end + 1);
    const auto sealed = session::unseal(text);
    if (!sealed || !session::is_intact(*sealed, seed)) continue;
    if (auto line = session::decode(text)) all.insert({line->n, {*line, text, number}});
  }
  return all;
}

const Standing* find(const Work& work, const Line& line) {
  const auto [from, to] = work.standing.equal_range(line.n);
  const auto at = std::find_if(from, to, [&](const auto& s) { return s.second.line == line; });
  return at == to ? nullptr : &at->second;
}

// "…-DEVICE-SESSION.jsonl": what the reader took the session from says the device too.
std::string device_in(const std::string& name) {
  const std::size_t end = name.rfind('-');
  const std::size_t start = end == std::string::npos || end == 0 ? end : name.rfind('-', end - 1);
  return start == std::string::npos ? "" : name.substr(start + 1, end - start - 1);
}

class Mender {
public:
  explicit Mender(std::vector<SessionFile>& sessions) {
    for (SessionFile& s : sessions) works_.push_back(taken(s));
    for (Work& work : works_) by_session_[work.file.session].push_back(&work);
    for (auto& [session, works] : by_session_) say_what_is_void(works);
  }

  MendReport run() {
    for (Work& work : works_)
      if (work.anew) make_beginning(work);
    for (const session::Log& log : joined()) settle_contradictions(log);
    for (const session::Log& log : joined()) tell_missing(log);
    put_what_was_told();
    for (const session::Log& log : joined()) tell_end(log);
    put_what_was_told();
    for (Work& work : works_) finish(work);
    return std::move(report_);
  }

private:
  Work taken(SessionFile& original) {
    Work work;
    work.original = &original;
    work.file = session::read_file(original.name, original.bytes);
    work.mendable = !work.file.future && !work.file.session.empty() && !work.file.lines.empty();
    work.anew = work.mendable && work.file.damaged;
    if (work.anew) work.standing = standing_in(original.bytes, work.file.seed);
    if (!work.mendable && !work.file.future && work.file.damaged)
      lost(Say::mend_lost_file, {original.name});
    for (const session::Damage& d : work.file.damage) {
      if (d.reason.what == words::SessionSay::line_torn) report_.torn.push_back(d);
      if (d.reason.what == words::SessionSay::line_number_twice)
        lost(Say::mend_lost_telling, {original.name, d.reason.args.front()});
      if (d.reason.what == words::SessionSay::file_of_two_sessions)
        lost(Say::mend_lost_rest, {original.name, std::to_string(d.line)});
      if (d.reason.what == words::SessionSay::line_of_another)
        lost(Say::mend_lost_rest, {original.name, std::to_string(d.line)});
    }
    return work;
  }

  void lost(words::Sentence what, words::Args args) {
    report_.lost.push_back({what, std::move(args)});
  }

  std::vector<session::Log> joined() const {
    std::vector<session::File> files;
    for (const Work& work : works_) files.push_back(work.file);
    return session::join_parts(std::move(files));
  }

  void make_beginning(Work& work) {
    auto& lines = work.file.lines;
    if (std::any_of(lines.begin(), lines.end(), is_began)) return;
    const Line& first = lines.front();
    const bool taken = work.file.part == 0 && first.n == 0; // by a line that should be none
    if (taken) work.mendable = work.anew = false;
    if (taken) return lost(Say::mend_lost_file, {work.file.name});
    Began began;
    began.version = work.file.version;
    began.session = work.file.session;
    began.part = work.file.part;
    began.from = work.file.from;
    began.device = device_in(work.file.name);
    lost(Say::mend_lost_beginning, {work.file.name});
    lines.insert(lines.begin(), {began.from, 0, first.at - first.t, "", began});
  }

  // The line that counts is left to the file that holds it.
  void settle_contradictions(const session::Log& log) {
    const std::set<std::uint64_t> contradicted(log.contradicted.begin(), log.contradicted.end());
    if (contradicted.empty()) return;
    std::map<std::uint64_t, const Line*> count;
    for (const Line& line : log.lines) count[line.n] = &line;
    for (Work* work : works_of(log)) {
      const auto told_otherwise = [&](const Line& line) {
        if (!contradicted.count(line.n) || !work->is_line(line) || is_began(line)) return false;
        const auto counts = count.find(line.n);
        const bool other = counts != count.end() && line != *counts->second;
        if (!other || std::holds_alternative<Gone>(line.event)) return false;
        lost(Say::mend_lost_telling, {work->file.name, std::to_string(line.n)});
        return true;
      };
      if (std::erase_if(work->file.lines, told_otherwise) > 0) change(*work);
    }
  }

  void tell_missing(const session::Log& log) {
    for (const session::Span& span : log.missing) {
      const words::Error lacks = missing(log.session, span);
      lost(lacks.what, lacks.args);
      if (Work* teller = teller_of(log, span.from)) tell(*teller, span);
    }
  }

  // Rather one that is written anew in any case. The latest part that there is says most.
  Work* teller_of(const session::Log& log, std::uint64_t n) {
    Work* teller = nullptr;
    for (Work* work : works_of(log)) {
      if (work->void_from <= n) continue;
      if (!teller || (work->anew && !teller->anew)) teller = work;
      if (teller->anew) break;
    }
    return teller;
  }

  // From where on a later part of the session takes over what a file says.
  static void say_what_is_void(std::vector<Work*> works) {
    std::stable_sort(works.begin(), works.end(),
                     [](const Work* a, const Work* b) { return a->file.part > b->file.part; });
    std::uint64_t later = std::numeric_limits<std::uint64_t>::max(), same = later;
    for (std::size_t i = 0; i < works.size(); ++i) {
      if (i > 0 && works[i]->file.part != works[i - 1]->file.part) later = std::min(later, same);
      works[i]->void_from = later;
      if (!works[i]->file.lines.empty()) same = std::min(same, works[i]->file.from);
    }
  }

  // What was damaged behind a file's last line is told if nothing else holds it. How many lines it
  // was is a guess.
  void tell_end(const session::Log& log) {
    const std::uint64_t next = log.lines.empty() ? 0 : log.lines.back().n + 1;
    for (Work* work : works_of(log)) {
      const Line& last = work->file.lines.back(); // of a part nothing else may be left but this
      const Standing* stands = work->anew ? find(*work, last) : nullptr;
      if (!stands || std::holds_alternative<Left>(last.event)) continue;
      const std::uint64_t from = work->is_line(last) ? last.n + 1 : last.n;
      if (next > from || work->void_from <= from) continue;
      std::set<std::size_t> behind;
      for (const session::Damage& d : work->file.damage)
        if (really(d) && d.line > stands->number &&
            d.reason.what != words::SessionSay::file_without_beginning &&
            d.reason.what != words::SessionSay::line_blank)
          behind.insert(d.line);
      if (behind.empty()) continue;
      lost(Say::mend_lost_end, {work->file.name, std::to_string(behind.size())});
      tell(*work, {from, from + behind.size() - 1});
    }
  }

  void tell(Work& work, const session::Span& span) {
    auto next = work.at_or_behind(span.from + 1);
    while (next != work.file.lines.end() && !work.is_line(*next)) ++next;
    const Line& beside = next == work.file.lines.end() ? work.file.lines.back() : *next;
    const Gone gone{span.to, session::gone_damaged};
    work.told.push_back({span.from, beside.t, beside.at, "", gone});
    change(work);
  }

  void put_what_was_told() {
    for (Work& work : works_) {
      auto& lines = work.file.lines;
      std::move(work.told.begin(), work.told.end(), std::back_inserter(lines));
      if (work.told.empty()) continue;
      work.told.clear();
      std::stable_sort(lines.begin(), lines.end(),
                       [](const Line& a, const Line& b) { return a.n < b.n; });
    }
  }

  void change(Work& work) {
    work.anew = true;
    if (work.standing.empty()) work.standing = standing_in(work.original->bytes, work.file.seed);
  }

  std::vector<Work*> works_of(const session::Log& log) {
    std::vector<Work*> some = by_session_[log.session];
    std::erase_if(some, [](const Work* work) { return !work->mendable; });
    return some;
  }

  void finish(Work& work);
  std::optional<std::string> written(Work& work);

  std::vector<Work> works_;
  std::map<std::string, std::vector<Work*>> by_session_;
  MendReport report_;
};

// Nothing for a name that no line can hold.
std::optional<std::string> Mender::written(Work& work) {
  auto& lines = work.file.lines;
  std::stable_partition(lines.begin(), lines.end(), is_began);
  std::string bytes;
  std::uint32_t before = 0;
  const std::uint32_t seed = work.file.seed;
  for (const Line& line : lines) {
    const Standing* stands = find(work, line);
    const auto encoded = stands ? session::resealed(*session::unseal(stands->text), before, seed)
                                : session::encode(line, before, seed);
    if (!encoded) return std::nullopt;
    bytes += encoded->bytes;
    before = encoded->check;
  }
  return bytes;
}

void Mender::finish(Work& work) {
  const std::string& name = work.original->name;
  const bool as_it_is = !work.mendable && (work.file.damaged || work.file.future);
  const auto bytes = work.anew ? written(work) : std::nullopt;
  if (bytes) {
    report_.files.push_back({Say::mend_anew, {name, std::to_string(work.file.lines.size())}});
    work.original->bytes = *bytes;
  } else if (as_it_is || work.anew) {
    report_.files.push_back({Say::mend_as_it_is, {name}});
  } else {
    report_.files.push_back({Say::mend_whole, {name}});
  }
}

}

MendReport mend_sessions(std::vector<SessionFile>& sessions) { return Mender(sessions).run(); }

}
