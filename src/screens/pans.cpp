// Pans: pouring, when the next layer may go on, and what became of the paint.
#include "bench/pads_pans.hpp"
#include "bench/pads_shared.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/bench_says.hpp"
#include "words/pans_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace screens {

using bench::PansPad;
using bench::PansView;
using bench::SharedPad;
using words::number;
using Say = words::PansSay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

bool is_bad(session::Became became) {
  return became != session::Became::good && became != session::Became::full;
}

bool stands(const PansView& pans, session::Became became) {
  return pans.said && pans.said->as == became;
}

// ---- a pan

std::string pan_word(const PansView::Said& said) {
  return said.early ? say(Say::pans_drying) : became_words(said.as);
}

bool words_fit(const std::string& words, double width) {
  return !words.empty() && width_mm(words, cap::body, false) <= width;
}

// Its number, and beside it how it is: full, or what was said of it, as a word where one is to be
// judged, else as a mark.
void pan_head(Sheet& sheet, const Rect& r, const PansView::Pan& pan, bool judging,
              const Ground& g) {
  const double y = r.y + 1.7 + cap::head, half = r.w / 2 - padding_mm;
  const bool fresh = pan.pad.kind == PansPad::new_pan;
  write(sheet, {r.x + padding_mm, y}, Anchor::left,
        fresh ? Lettering{cap::body, false, cap::small} : big_bold, g.ink,
        fresh ? say(Say::pans_new) : std::to_string(pan.number), fresh ? 2 * half : half * 0.8);
  const Point mark{r.right() - padding_mm - 2, y - cap::head / 2};
  const std::string word = pan.said ? pan_word(*pan.said) : pan.full ? say(Say::pans_full) : "";
  if (words_fit(word, half * 1.4) && (judging || !pan.said))
    write(sheet, {r.right() - padding_mm, y}, Anchor::right, slab_letters,
          pan.said ? g.ink : g.quiet, word, half * 1.4);
  else if (pan.said && !pan.said->early && is_bad(pan.said->as))
    caution_sign(sheet, mark, 4.4);
  else if (pan.said && !pan.said->early)
    tick(sheet, mark, 3.2, g.ink);
}

void pan_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans, const PansView::Pan& pan) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, choosable(t, pan.chosen));
  const Rect& r = at.box;
  pan_head(sheet, r, pan, pans.judging, g);
  const double top = r.y + cap::head + 3.6, side = r.w * 0.2;
  const Rect body{r.x + side, top, r.w - 2 * side, r.bottom() - 2.4 - top};
  draw_pan(sheet, body, pan, rgb(pans.colour), g);
}

// ---- the other pads

std::string all_words(const PansView& pans) {
  if (pans.all == 0) return say(pans.wet ? Say::pans_pour_wait : Say::pans_pour_none);
  if (pans.first && pans.planned.pans > 1 && pans.all == pans.planned.pans)
    return say(Say::pans_fill_planned, {std::to_string(pans.all)});
  if (pans.first)
    return pans.all == 1 ? say(Say::pans_fill_one)
                         : say(Say::pans_fill_new, {std::to_string(pans.all)});
  return pans.all == 1 ? say(Say::pans_pour_one)
                       : say(Say::pans_pour_all, {std::to_string(pans.all)});
}

void judge_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const bool asked = pans.asked_day > 0 && !pans.judging;
  std::vector<Label> words{
      {say(pans.judging ? Say::pans_pour : Say::pans_judge), big_bold, false, 1}};
  constexpr double roomy_mm = 40;
  if (at.box.w > roomy_mm)
    words.push_back(
        {say(pans.judging ? Say::pans_pour_what : Say::pans_judge_what), slab_letters, true, 2});
  pad(sheet, at, asked ? dark(sheet.theme) : plain(sheet.theme), words);
}

// The next tap turns to another one.
void card_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const double mark = 4;
  labels(sheet, {at.box.x, at.box.y, at.box.w - mark, at.box.h}, g,
         {{pans.card_name, slab_bold},
          {say(Say::pans_size, {reading_words(pans.card_mL)}), slab_letters, true}});
  chevron(sheet, {at.box.right() - mark, at.box.centre().y}, 3, g.ink, true);
}

void became_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const auto became = session::became_named(at.id.arg);
  if (!became) return;
  const bool said = stands(pans, *became);
  const Ground g = pad_box(sheet, at, choosable(sheet.theme, said));
  const bool early = said && pans.said->early;
  const double mark = said && !early ? 5 : 0; // room for the tick
  labels(sheet, {at.box.x, at.box.y + mark, at.box.w, at.box.h - mark}, g,
         {{became_words(*became), early ? slab_bold : big_bold},
          {early ? say(Say::pans_still_drying) : "", slab_letters, true, 2}});
  if (said && !early) tick(sheet, {at.box.centre().x, at.box.y + 4.4}, 4, g.ink);
}

void room_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const std::string room = say(words::SessionSay::book_room,
                               {reading_words(pans.celsius), reading_words(pans.humidity * 100)});
  pad(sheet, at, plain(sheet.theme),
      {{room, slab_letters, false, 2},
       {pans.room_guessed ? say(words::SessionSay::plan_guess) : "", slab_letters, true}});
}

void action_pad(Sheet& sheet, const bench::Pad& at, const PansView& pans) {
  const Theme& t = sheet.theme;
  const std::string number = std::to_string(pans.pan);
  const auto own = at.id.kind.as<PansPad>();
  if (!own) return;
  switch (*own) {
  case PansPad::pour_all:
    return pad(sheet, at, pans.all > 0 ? dark(t) : plain(t),
               {{all_words(pans), big_bold, false, 3}});
  case PansPad::pour_pan:
    return pad(sheet, at, plain(t), {{say(Say::pans_pour_into, {number}), slab_bold, false, 3}});
  case PansPad::pour_g:
  case PansPad::weigh_pan:
    return pad(sheet, at, plain(t),
               {{say(*own == PansPad::pour_g ? Say::pans_grams : Say::pans_weigh), slab_bold},
                {say(Say::pans_number, {number}), slab_letters, true}});
  case PansPad::pan_card: return card_pad(sheet, at, pans);
  case PansPad::judge: return judge_pad(sheet, at, pans);
  case PansPad::became: return became_pad(sheet, at, pans);
  case PansPad::all_pans:
    return pad(sheet, at, choosable(t, pans.pan == 0), {{say(Say::pans_all_meant), slab_bold}});
  case PansPad::more_pans: return pad(sheet, at, plain(t), {{say(Say::pans_more), slab_letters}});
  case PansPad::batch_back: return pad(sheet, at, plain(t), {{say(Say::pans_older), slab_letters}});
  case PansPad::batch_on: return pad(sheet, at, plain(t), {{say(Say::pans_newer), slab_letters}});
  case PansPad::room: return room_pad(sheet, at, pans);
  case PansPad::pan:
  case PansPad::new_pan: return; // one each
  }
}

// ---- what is known

// Whole hours up to three days, then whole days: the range is wide enough.
std::string span_words(double low_h, double high_h) {
  constexpr double days_from_h = 72;
  const bool days = high_h > days_from_h;
  const double unit = days ? 24 : 1;
  const double low = std::floor(std::max(unit, low_h) / unit),
               high = std::max(low + 1, std::ceil(high_h / unit));
  return say(days ? Say::pans_in_days : Say::pans_in_hours, {number(low, 0), number(high, 0)});
}

struct NextWords {
  std::string about, big, below;
};

NextWords next_words(const PansView& pans) {
  using Next = PansView::Next;
  const Next& n = pans.next;
  const std::string next = say(Say::pans_next), firm = say(Say::pans_if_firm);
  const std::string from = n.weighed                    ? say(Say::pans_from_scale)
                           : pans.weighings.size() == 1 ? say(Say::pans_weigh_again)
                           : pans.room_guessed          ? say(Say::pans_from_guess)
                                                        : say(Say::pans_from_room);
  switch (n.kind) {
  case Next::nothing: return {say(Say::pans_first), say(Say::pans_tap_one), ""};
  case Next::in_hours: return {next, span_words(n.low_h, n.high_h), from};
  case Next::maybe_now:
  case Next::now: return {next, say(Say::pans_now), firm};
  case Next::full: return {"", say(Say::pans_full), say(words::BenchSay::pans_no_more)};
  case Next::unknown: return {next, say(Say::pans_when_firm), ""};
  }
  return {};
}

NextWords ask_words(const PansView& pans) {
  const std::string meant =
      pans.pan == 0 ? say(Say::pans_all_meant) : say(Say::pans_number, {std::to_string(pans.pan)});
  return {say(Say::pans_ask), since_pour_words(pans.since_pour_ms), meant};
}

void draw_next(Sheet& sheet, const PansView& pans) {
  const Theme& t = sheet.theme;
  const Rect& r = sheet.view.layout.side;
  const Ground g = dark(t);
  sheet.shapes.push_back(Box{r, radius_mm, g.fill, clear, 0});
  const NextWords w = pans.judging ? ask_words(pans) : next_words(pans);
  const double above = w.about.empty() ? 0 : r.h * 0.24, below = r.h * (pans.judging      ? 0.22
                                                                        : w.below.empty() ? 0
                                                                                          : 0.32);
  labels(sheet, {r.x, r.y + r.h * 0.05, r.w, above}, g,
         {{w.about, {cap::head, false, cap::body}, true, 2}});
  labels(sheet, {r.x, r.y + above, r.w, r.h - above - below}, g,
         {{w.big, {cap::timer, true, cap::head}, false, 2}});
  labels(sheet, {r.x, r.bottom() - below, r.w, below * 0.94}, g,
         {{w.below, slab_letters, true, 3}});
}

words::Sentence remedy(session::Became became) {
  constexpr std::array ids{Say::remedy_good,       Say::remedy_full,   Say::remedy_sunken,
                           Say::remedy_cracked,    Say::remedy_sticky, Say::remedy_rubs_off,
                           Say::remedy_wont_rewet, Say::remedy_mould};
  return ids[static_cast<std::size_t>(became)];
}

struct Sentence {
  std::string words;
  bool bold = false, quiet = false;
  std::string head = {}; // bold, on a line of its own
};

std::string planned_words(const PansView& pans) {
  const words::Args args{std::to_string(pans.planned.pans), pans.card_name,
                         std::to_string(pans.planned.layers)};
  return say(pans.planned.layers > 1 ? Say::pans_planned_pours : Say::pans_planned, args);
}

std::string tack_words(const PansView& pans) {
  const std::string tack = say(paint::say_of(*pans.tack));
  return pans.room_guessed ? say(words::ScreensSay::by_guessed_room, {tack}) : tack;
}

std::vector<Sentence> said_of_pours(const PansView& pans) {
  std::vector<Sentence> out;
  out.push_back({pans.to_pour_mL > 0 ? say(Say::pans_left, {number(pans.to_pour_mL, 1)})
                                     : say(words::BenchSay::pans_left_none),
                 true});
  if (pans.first) {
    if (pans.planned.pans > 0) out.push_back({planned_words(pans)});
    return out;
  }
  if (pans.fill)
    out.push_back({say(Say::pans_will_fill,
                       {number(pans.fill->low * 100, 0), number(pans.fill->high * 100, 0)})});
  if (pans.tack) out.push_back({tack_words(pans)});
  std::string when = since_pour_words(pans.since_pour_ms);
  if (pans.weighings.size() > 1)
    when += " · " + say(Say::pans_weighings, {std::to_string(pans.weighings.size())});
  out.push_back({when, false, true});
  return out;
}

// What was said last, with what practice does about it; then pans of which something else was said
// since.
std::vector<Sentence> said_of_verdicts(const PansView& pans) {
  std::vector<Sentence> out;
  if (pans.said && pans.said->early)
    out.push_back({say(Say::pans_early, {became_words(pans.said->as)}), false, false,
                   say(Say::pans_still_drying)});
  else if (pans.said)
    out.push_back({say(remedy(pans.said->as)), false, false, became_words(pans.said->as)});
  for (const auto& [pan, said] : pans.apart)
    out.push_back({say(words::SessionSay::sheet_pan,
                       {std::to_string(pan),
                        said.early ? say(Say::pans_still_drying) : became_words(said.as)}),
                   true});
  if (!pans.said && pans.apart.empty()) {
    out.push_back({say(words::ScreensSay::book_no_verdict), true});
    if (pans.tack) out.push_back({tack_words(pans)});
  }
  return out;
}

// As many as there is room for, whole; returns how far down they reach.
double draw_said(Sheet& sheet, const Rect& panel_box, const std::vector<Sentence>& said) {
  const Theme& t = sheet.theme;
  panel(sheet, panel_box);
  const Rect area = inset(panel_box, 3.4);
  const double step = cap::body * line_step;
  double y = area.y + cap::body;
  for (const Sentence& s : said) {
    const Lettering l{cap::body, s.bold, cap::body};
    const Lines lines = fitted(s.words, area.w, l, 4, false);
    const double head = s.head.empty() ? 0 : step;
    const auto count = static_cast<double>(lines.lines.size());
    if (y + head + step * (count - 1) > area.bottom()) break;
    write(sheet, {area.x, y}, Anchor::left, slab_bold, t.ink, s.head, area.w);
    y += head;
    for (const std::string& line : lines.lines) {
      write(sheet, {area.x, y}, Anchor::left, l, s.quiet ? t.quiet : t.ink, line, area.w);
      y += step;
    }
    y += 0.8;
  }
  return y - cap::body;
}

// What the scale said, the pour at the left.
void draw_weighings(Sheet& sheet, const Rect& r, const std::vector<PansView::Weighing>& all) {
  const auto [least, most] = std::minmax_element(
      all.begin(), all.end(), [](const auto& a, const auto& b) { return a.g < b.g; });
  const double hours = std::max(1.0, all.back().hours), g = std::max(0.1, most->g - least->g);
  std::vector<Point> points;
  for (const auto& one : all)
    points.push_back({r.x + r.w * one.hours / hours, r.bottom() - r.h * (one.g - least->g) / g});
  sheet.shapes.push_back(Polyline{points, 0.6, sheet.theme.ink, 0});
  for (const Point& at : points)
    sheet.shapes.push_back(Disc{at, 1.1, sheet.theme.slab, sheet.theme.ink, 0.45});
}

void draw_known(Sheet& sheet, const PansView& pans) {
  draw_next(sheet, pans);
  std::vector<Sentence> said = pans.judging ? said_of_verdicts(pans) : said_of_pours(pans);
  constexpr double name_mm = 60; // the top bar has no room for the name
  if (sheet.view.layout.title.w < name_mm) said.insert(said.begin(), {pans.name, true});
  if (pans.save_failure)
    said.insert(said.begin(),
                {say(words::ScreensSay::not_saved, {words::message(*pans.save_failure)}), true});
  else if (pans.saved_elsewhere)
    said.insert(said.begin(), {say(words::ScreensSay::saved_elsewhere), true});
  if (const std::string notice = notice_words(pans.notice); !notice.empty())
    said.insert(said.begin(), {notice, true});
  const Rect& lower = sheet.view.layout.lower;
  const double from = draw_said(sheet, lower, said) + 2;
  const double left = lower.bottom() - 4 - from;
  if (!pans.judging && pans.weighings.size() > 1 && left >= 4.5)
    draw_weighings(sheet, {lower.x + 5, from, lower.w - 10, std::min(left, 14.0)}, pans.weighings);
}

const PansView::Pan* pan_of(const PansView& pans, const bench::PadId& id) {
  for (const PansView::Pan& pan : pans.pans)
    if (pan.pad == id) return &pan;
  return nullptr;
}

}

void draw_pans(Sheet& sheet, const PansView& pans) {
  if (pans.batch.empty()) {
    panel(sheet, sheet.view.layout.main);
    return labels(sheet, sheet.view.layout.main, plain(sheet.theme),
                  {{say(Say::pans_none), slab_letters, true, 4}});
  }
  draw_known(sheet, pans);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    if (const auto* pan = pan_of(pans, at.id))
      pan_pad(sheet, at, pans, *pan);
    else
      action_pad(sheet, at, pans);
  }
  if (pans.number) draw_number(sheet, *pans.number);
}

}
