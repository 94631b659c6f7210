#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "session/reader.hpp"
#include "studio/mend.hpp"
#include "studio/sentences.hpp"
#include "words/session_says.hpp"
#include "words/studio_says.hpp"

#include <algorithm>
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

  // As the reader has it: a later part's beginning is a line only where it takes over everything.
  bool is_line(const Line& line) const { return file.from == 0 || !is_began(line); }
  const Line* numbered(std::uint64_t n) const {
    for (const Line& line : file.lines)
      if (line.n == n && is_line(line)) return &line;
    return nullptr;
  }
};

bool really(const session::Damage& d) { return !d.ordinary; }

std::multimap<std::uint64_t, Standing> standing_in(std::string_view bytes) {
  std::multimap<std::uint64_t, Standing> all;
  for (std::size_t number = 1; !bytes.empty(); ++number) {
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) break;
    const std::string_view text = bytes.substr(0, end);
    bytes.remove_prefix(end + 1);
    const auto sealed = session::unseal(text);
    if (!sealed || !session::is_intact(*sealed)) continue;
    if (auto line = session::decode(text)) all.insert({line->n, {*line, text, number}});
  }
  return all;
}

const Standing* find(const Work& work, const Line& line) {
  const auto [from, to] = work.standing.equal_range(line.n);
  const auto at = std::find_if(from, to, [&](const auto& s) { return s.second.line == line; });
  return at == to ? nullptr : &at->second;
}

// The line's own bytes under another seal: also what this version does not understand stays.
session::Encoded resealed(std::string_view text, std::uint32_t before) {
  const std::string_view body = session::unseal(text)->body;
  std::string bytes(body.substr(0, body.rfind(",\"p\":\"")));
  bytes += ",\"p\":\"" + session::to_hex(before) + "\"";
  const std::uint32_t check = session::crc32c(bytes, before);
  return {bytes + ",\"c\":\"" + session::to_hex(check) + "\"}\n", check};
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
  }

  MendReport run() {
    for (Work& work : works_)
      if (work.anew) make_beginning(work);
    for (const session::Log& log : joined()) settle_contradictions(log);
    for (const session::Log& log : joined()) tell_missing(log);
    for (const session::Log& log : joined()) tell_end(log);
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
    if (work.anew) work.standing = standing_in(original.bytes);
    if (!work.mendable && !work.file.future && work.file.damaged)
      lost(Say::mend_lost_file, {original.name});
    for (const session::Damage& d : work.file.damage) {
      if (d.reason.what == words::SessionSay::line_number_twice)
        lost(Say::mend_lost_telling, {original.name, d.reason.args.front()});
      if (d.reason.what == words::SessionSay::file_of_two_sessions)
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
    began.session = work.file.session;
    began.part = work.file.part;
    began.from = work.file.from;
    began.device = device_in(work.file.name);
    lost(Say::mend_lost_beginning, {work.file.name});
    lines.insert(lines.begin(), {began.from, 0, first.at - first.t, "", began});
  }

  // The line that counts is left to the file that holds it.
  void settle_contradictions(const session::Log& log) {
    for (const std::uint64_t n : std::set(log.contradicted.begin(), log.contradicted.end())) {
      const auto counts = std::find_if(log.lines.begin(), log.lines.end(),
                                       [&](const Line& line) { return line.n == n; });
      for (Work* work : works_of(log)) {
        const Line* line = counts == log.lines.end() ? nullptr : work->numbered(n);
        const bool other = line && *line != *counts && !is_began(*line);
        if (!other || std::holds_alternative<Gone>(line->event)) continue;
        std::erase(work->file.lines, Line(*line));
        change(*work);
        lost(Say::mend_lost_telling, {work->file.name, std::to_string(n)});
      }
    }
  }

  void tell_missing(const session::Log& log) {
    for (const session::Span& span : log.missing) {
      const words::Error lacks = missing(log.session, span);
      lost(lacks.what, lacks.args);
      Work* teller = nullptr; // rather one that is written anew in any case
      for (Work* work : works_of(log))
        if (counts(*work, span.from) && (!teller || (work->anew && !teller->anew))) teller = work;
      if (teller) tell(*teller, span);
    }
  }

  // Whether no later part of the session takes over what this file says about line n.
  bool counts(const Work& work, std::uint64_t n) const {
    return std::none_of(works_.begin(), works_.end(), [&](const Work& other) {
      return other.file.session == work.file.session && other.file.part > work.file.part &&
             other.file.from <= n;
    });
  }

  // What was damaged behind a file's last line is told if nothing else holds it. How many lines it
  // was is a guess.
  void tell_end(const session::Log& log) {
    for (Work* work : works_of(log)) {
      const Line* last = log.lines.empty() ? nullptr : &log.lines.back();
      const Standing* stands = last && work->anew ? find(*work, *last) : nullptr;
      if (!stands || std::holds_alternative<Left>(last->event)) continue;
      if (!counts(*work, last->n + 1)) continue;
      std::set<std::size_t> behind;
      for (const session::Damage& d : work->file.damage)
        if (really(d) && d.line > stands->number &&
            d.reason.what != words::SessionSay::file_without_beginning)
          behind.insert(d.line);
      if (behind.empty()) continue;
      lost(Say::mend_lost_end, {work->file.name, std::to_string(behind.size())});
      tell(*work, {last->n + 1, last->n + behind.size()});
    }
  }

  void tell(Work& work, const session::Span& span) {
    auto& lines = work.file.lines;
    const auto next = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
      return line.n > span.from && work.is_line(line);
    });
    const Line& beside = next == lines.end() ? lines.back() : *next;
    const Gone gone{span.to, words::say(Say::mend_gone)};
    lines.insert(next, {span.from, beside.t, beside.at, "", gone});
    change(work);
  }

  void change(Work& work) {
    work.anew = true;
    if (work.standing.empty()) work.standing = standing_in(work.original->bytes);
  }

  std::vector<Work*> works_of(const session::Log& log) {
    std::vector<Work*> some;
    for (Work& work : works_)
      if (work.mendable && work.file.session == log.session) some.push_back(&work);
    return some;
  }

  void finish(Work& work);
  std::optional<std::string> written(Work& work);

  std::vector<Work> works_;
  MendReport report_;
};

// Nothing for a name that no line can hold.
std::optional<std::string> Mender::written(Work& work) {
  auto& lines = work.file.lines;
  std::stable_partition(lines.begin(), lines.end(), is_began);
  std::string bytes;
  std::uint32_t before = 0;
  for (const Line& line : lines) {
    const Standing* stands = find(work, line);
    const auto encoded = stands ? resealed(stands->text, before) : session::encode(line, before);
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
