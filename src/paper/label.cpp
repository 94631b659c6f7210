#include "paper/label.hpp"

#include "paint/catalogue.hpp"
#include "paint/in_words.hpp"
#include "paper/measure.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
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

std::string binder_words(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::string names;
  for (const Total& total : batch.totals)
    if (total.card.kind() == CardKind::binder)
      names += (names.empty() ? "" : " + ") + total.card.name;
  const auto& ratio = batch.standing.binder_ratio;
  if (names.empty() || !ratio || !std::isfinite(ratio->value) || handed.keeps_amounts) return names;
  return say(Say::label_binder, {names, paint::number_words(*ratio, 2)});
}

// What every powder asks for is no matter of the pan.
bool asks_for_care(const Card& pigment) {
  const auto cautions = paint::cautions_of(pigment.id, pigment_of(pigment).cautions);
  return std::any_of(cautions.begin(), cautions.end(),
                     [](paint::Caution c) { return c != paint::Caution::dust; });
}

// Eight signs tell batches of one studio apart; an id that is no number is short already.
std::string short_id(const std::string& id) {
  const bool hexadecimal = id.find_first_not_of("0123456789abcdef") == std::string::npos;
  return hexadecimal ? id.substr(0, 8) : id;
}

std::optional<SetLabel> set_at(const std::vector<LabelText>& texts, const Size& label,
                               double scale) {
  SetLabel out;
  const double room = label.w - 2 * edge;
  double y = edge;
  for (const LabelText& t : texts) {
    const double size = std::max(least_mm, (t.title ? title_mm : words_mm) * scale);
    const auto lines = broken(t.words, room / size, t.title);
    if (lines.empty() && t.words.find_first_not_of(' ') != std::string::npos) return std::nullopt;
    for (const std::string& line : lines) {
      out.lines.push_back({line, y + size * 0.85, size, room, t.title, t.quiet});
      y += size * line_step;
      if (y > label.h) return std::nullopt;
    }
  }
  out.notes_y = label.h - edge;
  if (y + std::max(least_mm, notes_mm * scale) > label.h - edge) return std::nullopt;
  return out;
}

}

std::vector<LabelText> label_texts(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::vector<LabelText> out{{batch.name, true, false}};
  bool care = false;
  for (const Card& pigment : pigments_of(batch)) {
    out.push_back({pigment_words(pigment), false, false});
    care |= asks_for_care(pigment);
  }
  if (const std::string binder = binder_words(handed); !binder.empty())
    out.push_back({binder, false, false});
  out.push_back(
      {say(Say::label_batch, {words::date(batch.opened_at, offset_of(handed)), short_id(batch.id)}),
       false, true});
  if (care) out.push_back({say(Say::label_see_sheet), false, false});
  return out;
}

std::optional<SetLabel> set_label(const std::vector<LabelText>& texts, const Size& label) {
  for (double scale = 1; scale >= least_mm / title_mm; scale -= 0.02)
    if (auto set = set_at(texts, label, scale)) return set;
  return std::nullopt;
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
                                    {"x2", mm(x + label.w - edge)},
                                    {"y2", mm(y + set.notes_y)},
                                    {"stroke", css(ink::rule)},
                                    {"stroke-width", "0.2"}}));
  return element("g", {}, inside);
}

}
