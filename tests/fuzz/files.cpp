// Session files: nothing is believed that does not fit its check value, nothing that is missing
// goes unsaid, and whatever is believed can be joined, folded and shown.
#include "commands/show.hpp"
#include "fuzz/apart.hpp"
#include "fuzz/must.hpp"
#include "fuzz/seal.hpp"
#include "session/bytes.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <map>
#include <set>

using fuzz::must;
using session::File;
using session::Line;
using session::Log;

namespace {

struct Raw { // a line that ends with LF
  std::string_view text;
  std::size_t byte = 0;
  std::optional<fuzz::Seal> seal; // where it fits
  std::optional<Line> line;       // where it fits and can be read
};

std::vector<Raw> raw_lines(std::string_view bytes, const File& file) {
  std::vector<Raw> lines;
  for (std::size_t at = bytes.size() - session::without_bom(bytes).size(); at < bytes.size();) {
    const std::size_t end = bytes.find('\n', at);
    if (end == std::string_view::npos) break;
    Raw raw{bytes.substr(at, end - at), at, {}, {}};
    const std::string_view line = raw.text.substr(0, std::max<std::size_t>(raw.text.size(), 1) - 1);
    if (!raw.text.empty() && raw.text.back() == '\r' && fuzz::seal_of(line)) raw.text = line;
    const auto seal = fuzz::seal_of(raw.text);
    if (seal && fuzz::fits(raw.text, *seal, file.seed)) {
      raw.seal = seal;
      if (auto line = file.future ? session::decode_newer(raw.text) : session::decode(raw.text))
        raw.line = *std::move(line);
    }
    lines.push_back(std::move(raw));
    at = end + 1;
  }
  return lines;
}

bool is_among(const Line& line, const std::vector<Line>& lines) {
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

// Lines from here on, as long as they are joined, belong to another.
bool are_of_another(const session::Damage& d) {
  return d.reason.what == words::SessionSay::file_of_two_sessions ||
         d.reason.what == words::SessionSay::line_of_another;
}

// Said of the file as a whole, or of what stands behind its last line.
bool is_of_all(const session::Damage& d) {
  return d.ordinary || d.reason.what == words::SessionSay::file_has_bom ||
         d.reason.what == words::SessionSay::file_without_beginning ||
         d.reason.what == words::SessionSay::line_no_beginning;
}

void check_each_line(const std::vector<Raw>& raws, const File& file) {
  std::set<std::size_t> damaged, of_another;
  for (const session::Damage& d : file.damage) {
    damaged.insert(d.line);
    if (are_of_another(d)) of_another.insert(d.line);
    must(is_of_all(d) || (d.line >= 1 && d.line <= raws.size() && d.byte == raws[d.line - 1].byte),
         "damage is where it is said to be");
  }
  bool passed_over = false;
  for (std::size_t i = 0; i < raws.size(); ++i) {
    const Raw& raw = raws[i];
    const bool goes_on =
        i > 0 && raws[i - 1].seal && raw.seal && raws[i - 1].seal->c == raw.seal->p;
    passed_over = of_another.count(i + 1) || (passed_over && goes_on);
    if (damaged.count(i + 1) || (passed_over && file.seed == 0)) continue;
    must(raw.seal.has_value(), "a line that does not fit its check value is damage");
    must(raw.line.has_value(), "a line that cannot be read is damage");
    must(is_among(*raw.line, file.lines), "a line is believed or its damage is said");
    const bool first = i == 0;
    const bool joined =
        first ? raw.seal->p == 0 : !raws[i - 1].seal || raws[i - 1].seal->c == raw.seal->p;
    must(joined, "a line that does not follow the one before is damage");
  }
}

File read(std::string name, std::string_view bytes) {
  const File file = session::read_file(std::move(name), bytes);
  const std::vector<Raw> raws = raw_lines(bytes, file);
  for (std::size_t i = 0; i < file.lines.size(); ++i) {
    const Line& line = file.lines[i];
    must(std::any_of(raws.begin(), raws.end(), [&](const Raw& r) { return r.line == line; }),
         "a line that is believed is there and fits its check value");
    must(i == 0 || file.lines[i - 1].n <= line.n, "lines are in order");
  }
  must(file.ended || !file.damage.empty(), "a file without its end says so");
  check_each_line(raws, file);
  return file;
}

void check_log(const Log& log, const std::vector<File>& files) {
  std::uint64_t next = 0; // the first number not accounted for
  auto missing = log.missing.begin();
  for (const Line& line : log.lines) {
    must(std::any_of(
             files.begin(), files.end(),
             [&](const File& f) { return f.session == log.session && is_among(line, f.lines); }),
         "a line of a session comes from one of its files");
    if (line.n > next) {
      must(missing != log.missing.end() && *missing == session::Span{next, line.n - 1},
           "what no file holds is missing");
      ++missing;
    }
    const auto* gone = std::get_if<session::Gone>(&line.event);
    if (gone) must(log.damaged, "lines that are gone are damage");
    next = std::max({next, line.n + 1, gone ? gone->to + 1 : 0});
  }
  must(missing == log.missing.end(), "what is missing is named once");
  must(log.damaged || (log.missing.empty() && log.contradicted.empty()),
       "a session that is not whole is damaged");
}

bool same_lines(const std::vector<Log>& a, const std::vector<Log>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Log& x, const Log& y) {
    return x.session == y.session && x.lines == y.lines && x.missing == y.missing;
  });
}

bool is_contradicted(const std::vector<Log>& logs) {
  return std::any_of(logs.begin(), logs.end(),
                     [](const Log& log) { return !log.contradicted.empty(); });
}

// No writer makes two files of one part that begin at different lines.
bool is_impossible(const std::vector<File>& files) {
  std::map<std::pair<std::string, int>, std::uint64_t> from;
  return std::any_of(files.begin(), files.end(), [&](const File& f) {
    return from.try_emplace({f.session, f.part}, f.from).first->second != f.from;
  });
}

void check_order(const std::vector<File>& files, const std::vector<Log>& logs) {
  if (is_impossible(files)) return;
  std::vector<File> other(files.rbegin(), files.rend());
  const auto reversed = session::join_parts(other);
  other.insert(other.end(), files.begin(), files.end());
  const auto doubled = session::join_parts(other);
  if (is_contradicted(logs) || is_contradicted(reversed) || is_contradicted(doubled)) return;
  must(same_lines(logs, reversed), "files may come in any order");
  must(same_lines(logs, doubled), "a copy adds nothing");
}

void fold_all(const std::vector<Log>& logs) {
  const session::Logs all = session::all_of(logs);
  for (const std::string& id : session::batch_ids(all)) {
    const auto batch = session::fold(all, id);
    if (!batch) continue;
    for (const Log& log : logs) {
      const bool speaks = std::any_of(log.lines.begin(), log.lines.end(),
                                      [&](const Line& line) { return line.batch == id; });
      if (speaks && log.damaged) must(batch->damaged, "a batch of a damaged session says so");
      if (speaks && log.future) must(batch->newer, "a batch of a newer format says so");
    }
    if (batch->newer) must(batch->totals.empty(), "nothing is summed of a newer format");
    commands::shown_as_json(*batch);
    commands::shown_for_people(*batch, logs, {});
  }
  commands::list_for_people(logs);
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view input(reinterpret_cast<const char*>(data), size);
  std::vector<File> files;
  for (const std::string_view bytes : fuzz::files_in(input)) {
    if (files.size() == 6) break;
    files.push_back(read(fuzz::name_of_file(files.size()), bytes));
  }
  const auto logs = session::join_parts(files);
  for (const Log& log : logs) check_log(log, files);
  check_order(files, logs);
  fold_all(logs);
  return 0;
}

// Half of the changes are of bytes, so that damage is met as well.
extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned seed) {
  if (seed % 4 == 0) return LLVMFuzzerMutate(data, size, most);
  fuzz::Pieces files = fuzz::taken_apart({reinterpret_cast<const char*>(data), size});
  for (unsigned i = 0; i <= seed / 4 % 3; ++i) fuzz::change(files, seed + i);
  const std::string changed = fuzz::put_together(files);
  if (changed.empty() || changed.size() > most) return LLVMFuzzerMutate(data, size, most);
  std::copy(changed.begin(), changed.end(), data);
  return changed.size();
}
