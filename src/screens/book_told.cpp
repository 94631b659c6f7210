// Book: what became of a batch, what it cost, and what was written of it.
#include "screens/book_parts.hpp"
#include "screens/lettering.hpp"
#include "screens/phrases.hpp"
#include "session/dry_film.hpp"
#include "words/book_says.hpp"
#include "words/screens_says.hpp"

#include <algorithm>
#include <functional>
#include <map>

namespace screens {

using Say = words::BookSay;
using words::say;

namespace {

struct NoteLine {
  std::string words;
  bool bold = false;
  bool may_be_cut = false;  // what somebody wrote may be of any length
  std::string shorter = {}; // where all of it has no room
};

// One line a day, the latest first.
std::vector<std::string> verdict_words(const bench::BookView& book) {
  std::map<std::optional<std::int64_t>, std::string, std::greater<>> days;
  for (const auto& v : book.verdicts) {
    std::string& said = days[v.days];
    const std::string word = became_words(v.as);
    said += (said.empty() ? "" : ", ") +
            (v.pan > 0 ? say(Say::book_of_pan, {word, std::to_string(v.pan)}) : word);
  }
  std::vector<std::string> out;
  for (const auto& [day, said] : days)
    out.push_back(day ? say(Say::book_verdict, {days_since_pour_words(*day), said}) : said);
  return out;
}

std::vector<NoteLine> told_of(const bench::BookView& book) {
  const session::Batch& batch = *book.batch;
  std::vector<NoteLine> out;
  if (book.discarded) out.push_back({say(Say::book_is_discarded), true});
  for (const std::string& day : verdict_words(book)) out.push_back({day, true});
  if (out.empty()) out.push_back({say(words::ScreensSay::book_no_verdict), true});
  const CostSaid cost = book.cost ? cost_said(book) : CostSaid{};
  out.push_back({cost.sum});
  if (book.pvc) out.push_back({session::pvc_words(*book.pvc)});
  if (!book.again_of.empty()) out.push_back({say(Say::book_again_of, {book.again_of})});
  std::string made;
  for (const std::string& name : book.made_again) made += (made.empty() ? "" : ", ") + name;
  if (!made.empty()) out.push_back({say(Say::book_made_again, {made})});
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e)
    if (const auto* note = std::get_if<session::Noted>(&e->event); note && !e->withdrawn)
      out.push_back({note->text, false, true});
  out.push_back({cost.without, false, false, cost.without_how_many});
  out.push_back({cost.shares});
  std::erase_if(out, [](const NoteLine& one) { return one.words.empty(); });
  return out;
}

// In as many lines as it takes; none where those have no room.
std::vector<std::string> lines_of(const NoteLine& one, double width, const Lettering& l, int room) {
  const int most = std::min(one.bold ? room : 3, room);
  for (const std::string& words : {one.words, one.shorter}) {
    if (most < 1 || words.empty()) continue;
    const Lines lines = fitted(words, width, l, most, false);
    if (!lines.cut || one.may_be_cut) return lines.lines;
  }
  return {};
}

struct LineSaid {
  std::string words;
  bool bold = false;
  bool first = false; // of what it belongs to
};

struct AllSaid {
  std::vector<LineSaid> lines;
  bool whole = true; // nothing was left out
};

// The first before all others; what has no room whole is left out.
AllSaid all_said(const std::vector<NoteLine>& told, const Rect& area, double cap_mm) {
  const double step = cap_mm * line_step;
  const auto room = static_cast<std::size_t>((area.h - cap_mm) / step + 1.0001);
  AllSaid out;
  for (const NoteLine& one : told) {
    const int left = static_cast<int>(room - out.lines.size());
    const auto lines = lines_of(one, area.w, {cap_mm, one.bold, cap_mm}, left);
    out.whole &= !lines.empty();
    for (std::size_t i = 0; i < lines.size(); ++i)
      out.lines.push_back({lines[i], one.bold, i == 0});
  }
  return out;
}

}

// In smaller letters where that is all of it, or more of it; notes the latest first.
void draw_told(Sheet& sheet, const bench::BookView& book) {
  if (book.note || book.new_name) return; // its field is there
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.more);
  const Rect area = inset(sheet.view.layout.more, 3.2);
  const std::vector<NoteLine> all = told_of(book);
  double cap_mm = cap::clear;
  AllSaid said = all_said(all, area, cap_mm);
  if (!said.whole) said = all_said(all, area, cap_mm = cap::small);
  double y = area.y + cap_mm;
  for (const LineSaid& line : said.lines) {
    write(sheet, {area.x, y}, Anchor::left, {cap_mm, line.bold, cap_mm}, t.ink, line.words, area.w);
    if (line.first) heard_apart(sheet);
    y += cap_mm * line_step;
  }
}

}
