// What is known of poured paint, in words, and the panels that say it.
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

using bench::PansView;
using words::number;
using Say = words::PansSay;
using words::say;

namespace {

// Which pan, and from when.
std::string weigh_words(const Sheet& sheet, const PansView& pans) {
  const std::string pan = std::to_string(pans.weigh_again->pan);
  if (pans.weigh_now) return say(Say::pans_weigh_now, {pan});
  return say(Say::pans_weigh_again,
             {pan, time_of_day(pans.weigh_again->at, sheet.view.utc_offset_min)});
}

// In thirds and quarters: how far it sinks is not known closer.
std::string fill_words(const paint::Interval& fill) {
  struct Part {
    double share;
    Say say;
  };
  constexpr std::array parts{Part{0.25, Say::pans_fill_quarter},
                             Part{1.0 / 3, Say::pans_fill_third},
                             Part{0.5, Say::pans_fill_half},
                             Part{2.0 / 3, Say::pans_fill_two_thirds},
                             Part{0.75, Say::pans_fill_three_quarters},
                             Part{1, Say::pans_fill_full}};
  const Part* best = &parts.front();
  for (const Part& part : parts)
    if (std::abs(part.share - fill.middle) < std::abs(best->share - fill.middle)) best = &part;
  return say(best->say);
}

std::string barred_words(session::Became by) {
  if (by == session::Became::sticky) return say(Say::pans_while_tacky);
  return say(by == session::Became::rubs_off ? Say::pans_while_rubs : Say::pans_while_hard);
}

}

NextWords next_words(const Sheet& sheet, const PansView& pans) {
  using Next = PansView::Next;
  const Next& n = pans.next;
  const std::string next = pans.curve.layer > 0 && pans.pan > 0
                               ? say(Say::pans_layer, {std::to_string(pans.curve.layer)})
                               : say(Say::pans_next),
                    firm = say(Say::pans_if_firm);
  const std::string from = n.weighed           ? say(Say::pans_from_scale)
                           : pans.weigh_again  ? weigh_words(sheet, pans)
                           : pans.room_guessed ? say(Say::pans_from_guess)
                                               : say(Say::pans_from_room);
  switch (n.kind) {
  case Next::nothing: return {say(Say::pans_first), "", ""};
  case Next::in_hours: return {next, span_words(n.low_h, n.high_h), from};
  case Next::maybe_now:
  case Next::now: return {next, say(Say::pans_now), firm};
  case Next::full: return {"", say(Say::pans_full), say(words::BenchSay::pans_no_more)};
  case Next::none_left:
    return {"",
            say(pans.to_pour_mL > 0 ? Say::pans_left_little
                                    : words::Sentence(words::BenchSay::pans_left_none)),
            ""};
  case Next::barred: return {say(Say::pans_no_layer), barred_words(*n.barred_by), ""};
  case Next::unknown: return {next, say(Say::pans_when_firm), ""};
  }
  return {};
}

namespace {

NextWords ask_words(const PansView& pans) {
  const std::string meant =
      pans.pan == 0 ? say(Say::pans_all_meant) : say(Say::pans_number, {std::to_string(pans.pan)});
  return {say(Say::pans_ask), since_pour_words(pans.since_pour_ms), meant};
}

// Where no pad pours: why not, or what is asked.
void draw_next(Sheet& sheet, const PansView& pans) {
  const Theme& t = sheet.theme;
  const Rect& r = sheet.view.layout.side;
  if (!(r.w > 0)) return;
  panel(sheet, r);
  const NextWords w = pans.judging ? ask_words(pans)
                      : pans.to_pour_mL > 0
                          ? NextWords{"", say(Say::pans_no_pan_card), ""}
                          : NextWords{"", say(words::BenchSay::pans_left_none), ""};
  labels(sheet, r, plain(t),
         {{w.about, slab_bold, false, 3},
          {w.big, slab_letters, false, 4},
          {w.below, slab_letters, true, 2}});
}

words::Sentence remedy(const PansView& pans) {
  const session::Became became = pans.said->as;
  if (became == session::Became::sunken && !pans.layer_left) return Say::remedy_sunken_no_paint;
  constexpr std::array ids{Say::remedy_good,       Say::remedy_full,   Say::remedy_sunken,
                           Say::crack_causes,      Say::remedy_sticky, Say::remedy_rubs_off,
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

// What must be read first.
std::vector<Sentence> urgent(const PansView& pans) {
  std::vector<Sentence> out;
  if (const std::string notice = notice_words(pans.notice); !notice.empty())
    out.push_back({notice, true});
  if (pans.save_failure)
    out.push_back({say(words::ScreensSay::not_saved, {words::message(*pans.save_failure)}), true});
  else if (pans.saved_elsewhere)
    out.push_back({say(words::ScreensSay::saved_elsewhere), true});
  return out;
}

std::string tack_words(const PansView& pans) {
  const std::string tack = say(paint::say_of(*pans.tack));
  return pans.room_guessed ? say(words::ScreensSay::by_guessed_room, {tack}) : tack;
}

std::vector<Sentence> said_of_pours(const Sheet& sheet, const PansView& pans) {
  std::vector<Sentence> out;
  if (pans.first && pans.planned.pans > 0) out.push_back({planned_words(pans), true});
  if (pans.tack) out.push_back({tack_words(pans)});
  const bool dotted = std::any_of(pans.pans.begin(), pans.pans.end(),
                                  [](const auto& pan) { return pan.pour_mL > 0; });
  const Sentence how_dotted{say(Say::pans_dotted), false, true};
  if (pans.first) {
    if (pans.all > 0) out.push_back(how_dotted);
    return out;
  }
  if (pans.next.kind == PansView::Next::in_hours)
    out.push_back({next_words(sheet, pans).below, false, true});
  if (pans.fill) out.push_back({fill_words(*pans.fill)});
  if (pans.depth_known) out.push_back({say(Say::pans_deep, {number(pans.layer_mm, 1)})});
  std::string when = since_pour_words(pans.since_pour_ms);
  if (pans.weighings.size() > 1)
    when += " · " + say(Say::pans_weighings, {std::to_string(pans.weighings.size())});
  out.push_back({when, false, true});
  if (dotted) out.push_back(how_dotted);
  return out;
}

std::string cause_words(const PansView& pans, const paint::LikelyCause& likely) {
  using paint::CrackCause;
  const auto words = [&] {
    switch (likely.cause) {
    case CrackCause::deep_layer:
      return pans.depth_known ? say(Say::crack_deep_mm, {number(pans.layer_mm, 1)})
                              : say(Say::crack_deep);
    case CrackCause::little_gum: return say(Say::crack_little_gum);
    case CrackCause::much_gum: return say(Say::crack_much_gum);
    case CrackCause::too_hard: return say(Say::crack_hard);
    case CrackCause::dried_fast: return say(Say::crack_fast);
    }
    return std::string();
  };
  return likely.seen ? say(Say::crack_seen, {words()}) : words();
}

// What was said last, with what practice does about it; then pans of which something else was said
// since.
std::vector<Sentence> said_of_verdicts(const PansView& pans) {
  std::vector<Sentence> out;
  if (pans.said && pans.said->early)
    out.push_back({say(Say::pans_early, {became_words(pans.said->as)}), false, false,
                   say(Say::pans_still_drying)});
  else if (pans.said)
    out.push_back({say(remedy(pans)), false, false, became_words(pans.said->as)});
  for (const paint::LikelyCause& cause : pans.causes)
    out.push_back({cause_words(pans, cause), cause.seen});
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

constexpr double said_step = cap::body * line_step;

// Those that go whole into the area; returns how far down they reach.
double draw_said(Sheet& sheet, const Rect& area, const std::vector<Sentence>& said) {
  const Theme& t = sheet.theme;
  double y = area.y + cap::body;
  for (const Sentence& s : said) {
    const Lettering l{cap::body, s.bold, cap::body};
    const Lines lines = fitted(s.words, area.w, l, 4, false);
    const double head = s.head.empty() ? 0 : said_step;
    const auto count = static_cast<double>(lines.lines.size());
    if (y + head + said_step * (count - 1) > area.bottom()) break;
    write(sheet, {area.x, y}, Anchor::left, slab_bold, t.ink, s.head, area.w);
    y += head;
    for (const std::string& line : lines.lines) {
      write(sheet, {area.x, y}, Anchor::left, l, s.quiet ? t.quiet : t.ink, line, area.w);
      if (&line == &lines.lines.front()) heard_apart(sheet);
      y += said_step;
    }
    y += 0.8;
  }
  return y - cap::body;
}

void draw_said_panel(Sheet& sheet, const Rect& box, const std::vector<Sentence>& said) {
  if (said.empty()) return;
  panel(sheet, box);
  draw_said(sheet, inset(box, 3.4), said);
}

std::string since_words(const Sheet& sheet, const PansView::Curve& curve) {
  constexpr double ms_per_h = 3'600'000;
  const auto after = [&](double hours) {
    return curve.poured_at + static_cast<std::int64_t>(hours * ms_per_h);
  };
  return say(Say::pans_firm_since, {words::lately(after(curve.ready_h->middle), after(curve.now_h),
                                                  sheet.view.utc_offset_min)});
}

// When the pan whose curve it is can take a layer.
std::string ready_words(const Sheet& sheet, const PansView::Curve& curve) {
  if (!curve.ready_h || curve.layer == 0) return "";
  const double low = curve.ready_h->low - curve.now_h, high = curve.ready_h->high - curve.now_h;
  if (low > 0) return span_words(low, high);
  return high > 0 ? say(Say::pans_maybe_firm) : since_words(sheet, curve);
}

std::string curve_words(const PansView& pans) {
  const words::Args pan{std::to_string(pans.curve.pan)};
  using Next = PansView::Next;
  if (pans.curve.layer == 0 && pans.next.kind != Next::barred) return say(Say::pan_is_full, pan);
  return say(pans.weighings.empty() ? Say::pan_water : Say::pan_dries, pan);
}

// The curve, and above it as much as leaves it room.
void draw_curve(Sheet& sheet, const Rect& box, const PansView& pans, bool says) {
  constexpr double least_mm = 21;
  const Theme& t = sheet.theme;
  panel(sheet, box);
  const Rect area = inset(box, 3.4);
  const double half = area.w / 2 - 1, y = area.y + cap::body;
  const std::string ready = ready_words(sheet, pans.curve);
  write(sheet, {area.x, y}, Anchor::left, slab_bold, t.ink, curve_words(pans),
        ready.empty() ? area.w : half);
  write(sheet, {area.right(), y}, Anchor::right, slab_bold, t.right_ink, ready, half);
  const double top = y + 2.4;
  const Rect left{area.x, top, area.w, area.bottom() - top};
  double to = draw_said(sheet, left, urgent(pans));
  const bool drawn = pans.curve.ahead.size() > 1 || pans.weighings.size() > 1;
  const double room = drawn ? least_mm : 0;
  if (says)
    to = draw_said(sheet, {area.x, to, area.w, area.bottom() - to - room},
                   said_of_pours(sheet, pans));
  to += 1;
  if (drawn && area.bottom() - to >= least_mm - 5)
    draw_pan_curve(sheet, {area.x + 1.2, to, area.w - 2.4, area.bottom() + 1 - to}, pans);
}

std::vector<Sentence> of_both(std::vector<Sentence> first, const std::vector<Sentence>& then) {
  first.insert(first.end(), then.begin(), then.end());
  return first;
}

}

void draw_known(Sheet& sheet, const PansView& pans) {
  const bench::Layout& l = sheet.view.layout;
  const bool alone = l.lower.w > 0; // no other batch has pads: words have a panel of their own
  if (pans.number)
    return pans.curve.pan > 0 ? draw_curve(sheet, l.more, pans, true) : panel(sheet, l.more);
  draw_next(sheet, pans);
  if (pans.judging)
    return draw_said_panel(sheet, l.more, of_both(urgent(pans), said_of_verdicts(pans)));
  if (alone) draw_said_panel(sheet, l.lower, said_of_pours(sheet, pans));
  if (pans.first)
    draw_said_panel(
        sheet, l.more,
        of_both(urgent(pans), alone ? std::vector<Sentence>{} : said_of_pours(sheet, pans)));
  else
    draw_curve(sheet, l.more, pans, !alone);
}

}
