#include "paper/label.hpp"

#include "paint/catalogue.hpp"
#include "paper/measure.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
#include "session/amounts.hpp"
#include "session/binder_words.hpp"
#include "words/making_says.hpp"
#include "words/moments.hpp"
#include "words/paper_says.hpp"

#include <algorithm>
#include <cmath>

namespace paper {

using namespace session;
using Say = words::PaperSay;
using words::say;

namespace {

constexpr double edge = 1.6; // from the label's edge to its words
constexpr double title_mm = 4.2, words_mm = 2.3;
constexpr double least_mm = 1.6;   // 4.5 point
constexpr double line_step = 1.22; // from baseline to baseline, in sizes
constexpr double notes_mm = 3.4;   // for the line to write on
constexpr double sure = 0.9;       // of the room: words estimated wider are held to it

// What every powder asks for is no matter of the pan.
bool asks_for_care(const Card& pigment) {
  const auto cautions = paint::cautions_of(pigment.id, pigment_of(pigment).cautions);
  return std::any_of(cautions.begin(), cautions.end(),
                     [](paint::Caution c) { return c != paint::Caution::dust; });
}

// The day of a card, which is written as in files.
std::string day_of_card(const std::string& date) {
  const auto day = words::days_of(date);
  return day ? words::date(*day * a_day_ms, 0) : date;
}

// By weight, the most first, as on other goods.
std::string contents_words(const paint::Recipe& r) {
  std::vector<std::pair<double, Say>> parts{
      {r.gum, Say::contents_gum},         {r.water, Say::contents_water},
      {r.honey, Say::contents_honey},     {r.glycerin, Say::contents_glycerin},
      {r.alcohol, Say::contents_alcohol}, {r.other, Say::contents_other}};
  std::stable_sort(parts.begin(), parts.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::string out;
  for (const auto& [g, what] : parts)
    if (g > 0) out += (out.empty() ? "" : ", ") + say(what);
  return out;
}

// Dots of 0.33 mm come out of any printer and are read from a hand's breadth (common practice, no
// source).
constexpr double module_mm = 0.33;

double code_mm(const std::optional<Qr>& qr) { return qr ? qr->modules * module_mm : 0; }

// Of what stays in the pan beside the pigments; water and alcohol leave. How much of each is the
// recipe, and stays with its maker.
std::string stays_words(const Batch& batch) {
  paint::Recipe stays;
  for (const Total& total : batch.totals) {
    if (!is_liquid(total.card.kind())) continue;
    const auto material = material_of(total.card);
    if (!material) continue;
    const double g = total.grams.value;
    stays.gum += g * material->parts.gum;
    stays.honey += g * material->parts.honey;
    stays.glycerin += g * material->parts.glycerin;
    if (total.card.kind() == CardKind::binder) stays.other += g * material->parts.other;
  }
  const std::string words = contents_words(stays);
  return words.empty() ? "" : say(Say::label_in, {words});
}

std::optional<SetLabel> set_at(const std::vector<LabelText>& texts, const std::optional<Qr>& qr,
                               const Size& label, double scale) {
  constexpr double apart = 4 * module_mm; // the light border that a reader wants
  SetLabel out;
  out.qr = qr;
  const double whole = label.w - 2 * edge, beside = qr ? whole - code_mm(qr) - apart : whole;
  const double code_y = label.h - edge - code_mm(qr) - (qr ? apart : 0);
  if (code_y < 0 || beside <= 0) return std::nullopt;
  double y = edge;
  for (const LabelText& t : texts) {
    const double size = std::max(least_mm, (t.title ? title_mm : words_mm) * scale);
    auto lines = broken(t.words, whole / size, t.title);
    const double end = y + static_cast<double>(lines.size()) * size * line_step;
    const double room = end <= code_y ? whole : beside;
    if (room < whole) lines = broken(t.words, room / size, t.title);
    if (lines.empty() && t.words.find_first_not_of(' ') != std::string::npos) return std::nullopt;
    for (const std::string& line : lines) {
      out.lines.push_back({line, y + size * 0.85, size, room, t.title, t.quiet});
      y += size * line_step;
      if (y > label.h) return std::nullopt;
    }
  }
  out.notes_y = label.h - edge;
  out.notes_w = beside;
  if (y + std::max(least_mm, notes_mm * scale) > label.h - edge) return std::nullopt;
  return out;
}

struct AtScale {
  SetLabel set;
  double scale = 1;
};
std::optional<AtScale> set_as_large_as_may_be(const std::vector<LabelText>& texts,
                                              const std::optional<Qr>& qr, const Size& label,
                                              double most) {
  for (double scale = most; scale >= least_mm / title_mm; scale -= 0.02)
    if (auto set = set_at(texts, qr, label, scale)) return AtScale{*std::move(set), scale};
  return std::nullopt;
}

// A bar for each row of dark ones that touch.
Markup drawn(const Qr& qr, double x, double y) {
  std::string bars;
  const auto dark = [&](int column, int row) {
    return qr.dark[static_cast<std::size_t>(row * qr.modules + column)];
  };
  for (int row = 0; row < qr.modules; ++row)
    for (int from = 0; from < qr.modules; ++from) {
      if (!dark(from, row)) continue;
      int to = from;
      while (to < qr.modules && dark(to, row)) ++to;
      bars += "M" + mm(x + from * module_mm) + " " + mm(y + row * module_mm) + "h" +
              mm((to - from) * module_mm) + "v" + mm(module_mm) + "h" +
              mm((from - to) * module_mm) + "z";
      from = to;
    }
  return element("path", {{"d", bars}, {"fill", css(ink::text)}});
}

}

// An id that is no number is short already.
std::string short_id(const std::string& id) {
  const bool hexadecimal = id.find_first_not_of("0123456789abcdef") == std::string::npos;
  return hexadecimal ? id.substr(0, 8) : id;
}

std::vector<LabelText> binder_texts(const Card& binder, double drops, const std::string& line) {
  const paint::Recipe& r = recipe_of(binder);
  const std::string lot = binder.lot.empty() ? "" : ", " + binder.lot;
  std::vector<LabelText> out{{binder.name + lot, true, false}};
  const auto add = [&](const std::string& words) {
    if (!words.empty()) out.push_back({words, false, false});
  };
  add(r.gum > 0 ? parts_words(r) : contents_words(r));
  if (!binder.made_on.empty() || r.other > 0) // of what was bought, nobody here knows more
    add(drops > 0 ? dose_words(Unit::drops, drops) : dose_words(Unit::g, r.other));
  if (!binder.made_on.empty()) add(say(words::MakingSay::made_on, {day_of_card(binder.made_on)}));
  if (!binder.keep_until.empty())
    add(say(words::MakingSay::label_until, {day_of_card(binder.keep_until)}));
  add(say(Say::label_throw_away));
  if (!line.empty()) out.push_back({line, false, false});
  return out;
}

std::vector<LabelText> label_texts(const Handed& handed, const std::string& line) {
  const Batch& batch = handed.batch;
  std::vector<LabelText> out{{batch.name, true, false}};
  bool care = false;
  for (const Card& pigment : pigments_of(batch)) {
    out.push_back({pigment_words(pigment), false, false});
    care |= asks_for_care(pigment);
  }
  if (const std::string stays = stays_words(batch); !stays.empty())
    out.push_back({stays, false, false});
  out.push_back({say(Say::label_batch,
                     {words::date(session::made_at(batch), offset_of(handed)), short_id(batch.id)}),
                 false, true});
  if (care) out.push_back({say(Say::label_see_sheet), false, false});
  if (!line.empty()) out.push_back({line, false, false});
  return out;
}

std::optional<SetLabel> set_label(const std::vector<LabelText>& texts,
                                  const std::vector<std::string>& scanned, const Size& label,
                                  double most) {
  auto plain = set_as_large_as_may_be(texts, std::nullopt, label, most);
  if (!plain) return std::nullopt;
  constexpr double nearly = 0.7; // own choice
  for (const std::string& text : scanned) {
    const auto qr = qr_of(text);
    auto coded = qr ? set_as_large_as_may_be(texts, qr, label, most) : std::nullopt;
    if (coded && coded->scale >= nearly * plain->scale) return coded->set;
  }
  return plain->set;
}

std::vector<std::string> label_scanned(const Handed& handed) {
  const Batch& batch = handed.batch;
  const std::string day =
      say(Say::label_batch,
          {words::date(session::made_at(batch), offset_of(handed)), short_id(batch.id)});
  return {batch.name + "\n" + day, day};
}

Markup drawn(const SetLabel& set, const Size& label, double x, double y) {
  std::vector<Markup> inside{element("rect", {{"x", mm(x)},
                                              {"y", mm(y)},
                                              {"width", mm(label.w)},
                                              {"height", mm(label.h)},
                                              {"fill", "none"},
                                              {"stroke", css(ink::rule)},
                                              {"stroke-width", "0.15"}})};
  for (const SetLine& line : set.lines) {
    Attributes a{{"x", mm(x + edge)},
                 {"y", mm(y + line.baseline)},
                 {"font-size", mm(line.size)},
                 {"fill", line.quiet ? css(ink::quiet) : css(ink::text)}};
    if (line.title) a.push_back({"font-weight", "bold"});
    const double wide = width_em(line.words, line.title) * line.size;
    if (wide > line.room * sure) {
      a.push_back({"textLength", mm(std::min(wide, line.room))});
      a.push_back({"lengthAdjust", "spacingAndGlyphs"});
    }
    inside.push_back(element("text", a, line.words));
  }
  inside.push_back(element("line", {{"x1", mm(x + edge)},
                                    {"y1", mm(y + set.notes_y)},
                                    {"x2", mm(x + edge + set.notes_w)},
                                    {"y2", mm(y + set.notes_y)},
                                    {"stroke", css(ink::rule)},
                                    {"stroke-width", "0.2"}}));
  if (set.qr) {
    const double side = code_mm(set.qr);
    inside.push_back(drawn(*set.qr, x + label.w - edge - side, y + label.h - edge - side));
  }
  return element("g", {}, inside);
}

}
