// Plan: which pigment, which binder, how much, in which room, and what to be careful about.
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "paint/catalogue.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/plan_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>

namespace screens {

using bench::PlanPad;
using bench::SharedPad;
using Say = words::PlanSay;
using words::say;

namespace {

const bench::PlanView::Row* row_of(const std::vector<bench::PlanView::Row>& rows,
                                   const bench::PadId& id) {
  for (const auto& row : rows)
    if (row.pad == id) return &row;
  return nullptr;
}

// A row with its symbol. The chosen one is ticked.
void row_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView::Row& row) {
  const Theme& t = sheet.theme;
  const bool pigment = at.id.kind == PlanPad::pigment;
  const Ground g = pad_box(sheet, at, choosable(t, row.chosen));
  const Rect& r = at.box;
  const double size = pigment ? 7 : 5.6;
  material_symbol(sheet, {r.x + 2.6 + size / 2, r.centre().y}, size,
                  pigment ? session::CardKind::pigment : session::CardKind::binder,
                  pigment ? rgb(row.colour) : t.binder, g.ink);
  const double x = r.x + size + 4, mark = row.chosen ? 6 : 0;
  const Rect words{x, r.y, r.right() - x - mark, r.h};
  const Lettering small{cap::small, false, cap::small}, small_bold{cap::small, true, cap::small};
  const bool one_line = width_mm(row.name, cap::small, true) <= words.w - 2 * padding_mm;
  // Three lines would lie on the outline of a chosen row.
  const std::string both = row.index_name.empty() ? row.name : row.name + ", " + row.index_name;
  labels(sheet, words, g,
         one_line ? std::vector<Label>{{row.name, clean_bold, false, 1},
                                       {row.index_name, small, true, 1}}
                  : std::vector<Label>{{both, small_bold, false, 2}},
         Anchor::left);
  if (row.chosen) tick(sheet, {r.right() - 4.6, r.centre().y}, 3.4, g.ink);
}

std::string want_words(bench::Want want) {
  constexpr std::array ids{Say::want_pigment, Say::want_pans, Say::want_wet, Say::want_dried};
  return say(ids[static_cast<std::size_t>(want)]);
}

// While it is not said how much.
std::string unsaid_words(bench::Want want) {
  return say(want == bench::Want::pigment_g ? Say::plan_not_weighed : Say::plan_how_many);
}

// How much: what was asked for, and what is to be weighed for it.
void wanted_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const Lettering small{cap::small, false, cap::small};
  std::string much = unsaid_words(plan.want), below;
  if (plan.want == bench::Want::pigment_g) below = say(Say::plan_weigh);
  if (plan.wanted > 0) {
    much = words::number(plan.wanted, plan.want == bench::Want::pans ? 0 : 1) + " " +
           want_words(plan.want);
    below.clear();
  }
  if (plan.planned && plan.want != bench::Want::pigment_g)
    below = say(Say::plan_weigh_grams, {grams_number(plan.planned->pigment_g)});
  pad(sheet, at, plain(sheet.theme), {{much, clean_bold, false, 1}, {below, small, true, 2}});
}

// It turns over to the next unit at each tap.
void want_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  constexpr double sign_mm = 3.2;
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  labels(sheet, {r.x, r.y, r.w - sign_mm - 1, r.h}, g,
         {{want_words(plan.want), clean_letters, false, 2}});
  chevron(sheet, {r.right() - sign_mm, r.centre().y}, sign_mm, g.ink, true);
}

void part_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  for (const auto& part : plan.blend) {
    if (part.pad != at.id) continue;
    const Ground g = pad_box(sheet, at, plain(sheet.theme));
    const Rect& r = at.box;
    const double size = 4.4;
    material_symbol(sheet, {r.x + 1.6 + size / 2, r.centre().y}, size, session::CardKind::pigment,
                    rgb(part.colour), g.ink);
    const std::string parts =
        part.parts == 1
            ? say(Say::plan_part)
            : say(Say::plan_parts, {paint::written(part.parts, part.parts < 10 ? 1 : 0)});
    const Lettering bold{cap::small, true, cap::small}, small{cap::small, false, cap::small};
    labels(
        sheet, {r.x + size + 0.6, r.y, r.w - size - 0.6, r.h}, g,
        {{parts, bold, false, 2}, {part.grams > 0 ? grams_words(part.grams) : "", small, true, 1}});
  }
}

std::string celsius_words(double celsius) {
  return say(Say::plan_celsius, {reading_words(celsius)});
}

void cautions_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const bool seen = plan.cautions_seen;
  const Ground g = pad_box(sheet, at, seen ? choosable(sheet.theme, true) : caution(sheet.theme));
  const Rect& r = at.box;
  if (seen)
    tick(sheet, {r.x + 5, r.centre().y}, 3.6, g.ink);
  else
    caution_sign(sheet, {r.x + 6, r.centre().y}, 6);
  labels(sheet, {r.x + 9, r.y, r.w - 9, r.h}, g,
         {{say(seen ? Say::plan_cautions_read : Say::plan_cautions_to_read), clean_bold, false, 2}},
         Anchor::left);
}

// How far it can be trusted: nothing where it was read just now.
std::string room_words(const bench::PlanView& plan) {
  if (plan.room_guessed) return say(words::SessionSay::plan_guess);
  constexpr std::int64_t an_hour_ms = 3'600'000, two_days_h = 48;
  const std::int64_t hours = plan.room_age_ms / an_hour_ms;
  if (hours < 1) return "";
  return hours < two_days_h ? say(Say::plan_room_hours, {std::to_string(hours)})
                            : say(Say::plan_room_days, {std::to_string(hours / 24)});
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::PlanView& plan) {
  const Ground g = plain(sheet.theme);
  const std::string guess = room_words(plan);
  const Lettering small{cap::small, false, cap::small};
  if (at.id.kind == SharedPad::page_back)
    pad(sheet, at, g, {{say(words::ScreensSay::page_back), clean_letters}});
  if (at.id.kind == SharedPad::page_on)
    pad(sheet, at, g, {{say(words::ScreensSay::page_on), clean_letters}});
  const auto own = at.id.kind.as<PlanPad>();
  if (!own) return;
  switch (*own) {
  case PlanPad::weigh: return wanted_pad(sheet, at, plan);
  case PlanPad::want: return want_pad(sheet, at, plan);
  case PlanPad::pan_size: return pad(sheet, at, g, {{plan.pan, clean_letters, false, 2}});
  case PlanPad::parts: return part_pad(sheet, at, plan);
  case PlanPad::by_volume:
    return pad(
        sheet, at, g,
        {{say(plan.by_volume ? Say::plan_by_volume : Say::plan_by_weight), small, false, 2}});
  case PlanPad::cautions: return cautions_pad(sheet, at, plan);
  case PlanPad::cautions_read:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_cautions_read), clean_bold, false, 2}});
  case PlanPad::celsius:
    return pad(sheet, at, g, {{celsius_words(plan.celsius), clean_bold}, {guess, small, true}});
  case PlanPad::humidity:
    return pad(sheet, at, g,
               {{say(Say::plan_humidity, {reading_words(plan.humidity * 100)}), clean_bold},
                {guess, small, true}});
  case PlanPad::begin:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_begin), {cap::head, true, cap::body}}});
  case PlanPad::go_on:
    return pad(sheet, at, dark(sheet.theme),
               {{say(Say::plan_go_on, {plan.go_on}), {cap::clear, true, cap::small}, false, 2},
                {say(Say::plan_go_on_what), small, true, 1}});
  case PlanPad::pigment:
  case PlanPad::binder:       // a row's each
  case PlanPad::name: return; // a text field
  }
}

// One line of the notes under the choices; returns how far down it reached.
double note(Sheet& sheet, const Rect& area, double y, const std::string& words, const Lettering& l,
            Colour colour) {
  const double step = l.cap_mm * 1.66;
  for (const std::string& line : fitted(words, area.w, l, 3, false).lines) {
    write(sheet, {area.x, y + l.cap_mm}, Anchor::left, l, colour, line, area.w);
    y += step;
  }
  return y;
}

double lines_high(const std::string& words, double width, const Lettering& l) {
  return static_cast<double>(fitted(words, width, l, 3, false).lines.size()) * l.cap_mm * 1.66;
}

// All of them, as large as has room. A bar of the caution's colour down the side says what the
// words are.
void cautions(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.main);
  const Rect area = inset(sheet.view.layout.main, 4);
  const Rect words{area.x + 4.5, area.y, area.w - 4.5, area.h};
  Lettering letters = clean_letters;
  double air = 0;
  for (const double size : {cap::clear, cap::small}) {
    letters = {size, false, size};
    double all = 0;
    for (const words::Sentence caution : plan.cautions)
      all += lines_high(say(caution), words.w, letters);
    air = (area.h - all) / static_cast<double>(plan.cautions.size());
    if (air > 0.6) break;
  }
  air = std::min(air, 2.5);
  double y = area.y;
  for (const words::Sentence caution : plan.cautions)
    y = note(sheet, words, y, say(caution), letters, t.ink) + air;
  sheet.shapes.push_back(
      Box{{area.x, area.y - 0.3, 1.8, y - air - area.y}, 0.9, t.caution, t.ink, 0.2});
}

std::string extras_words(const bench::PlanView& plan) {
  std::string list;
  for (const auto& extra : plan.extras)
    list += (list.empty() ? "" : ", ") +
            say(words::ScreensSay::to_come_one, {grams_words(extra.g), extra.name});
  return say(Say::plan_extras, {list});
}

std::string mulling_words(const bench::MullingNeeded& mulling) {
  const words::Args args{minutes_words(mulling.minutes.middle), minutes_words(mulling.minutes.low),
                         minutes_words(mulling.minutes.high),
                         words::number(std::max(1.0, mulling.passes.middle), 0)};
  return say(mulling.batches > 0 ? Say::plan_mull : Say::plan_mull_guess, args);
}

std::string last_time_words(const bench::LastTime& last) {
  using session::Became;
  const auto then = say(last.as == Became::cracked    ? Say::plan_last_cracked
                        : last.as == Became::sticky   ? Say::plan_last_sticky
                        : last.as == Became::rubs_off ? Say::plan_last_rubs_off
                                                      : Say::plan_last_wont_rewet);
  if (last.enough) return say(Say::plan_last_enough, {then});
  if (last.drops > 0)
    return say(Say::plan_last_more_drops, {then, std::to_string(last.drops), last.card});
  if (!last.card.empty()) return say(Say::plan_last_more, {then, grams_number(last.g), last.card});
  if (last.most_honey_g > 0)
    return say(Say::plan_last_less_to, {then, words::number(last.most_honey_g, 1)});
  return say(last.as == Became::sticky ? Say::plan_last_less : Say::plan_last_sweeter, {then});
}

// What the plan comes to, in sentences.
std::vector<std::string> comes_to(const bench::PlanView& plan) {
  std::vector<std::string> out;
  if (!plan.again_of.empty()) out.push_back(say(Say::plan_again_of, {plan.again_of}));
  if (!plan.planned) return out;
  const bench::Planned& p = *plan.planned;
  if (p.as_made)
    out.push_back(say(Say::plan_as_last_time, {words::number(10 * p.binder_g / p.pigment_g, 1)}));
  out.push_back(binder_words(p));
  if (plan.last_time) out.push_back(last_time_words(*plan.last_time));
  const std::string wet = words::number(p.wet_mL, 1);
  out.push_back(p.pans > 0 ? say(Say::plan_wet,
                                 {wet, std::to_string(p.pans), plan.pan, std::to_string(p.layers)})
                           : say(Say::plan_wet_no_pans, {wet}));
  if (plan.range) out.push_back(binder_range_words(*plan.range));
  if (!plan.extras.empty()) out.push_back(extras_words(plan));
  if (plan.mulling) out.push_back(mulling_words(*plan.mulling));
  if (p.portions > 1) out.push_back(say(Say::plan_portions, {std::to_string(p.portions)}));
  return out;
}

// Where a blend leaves no room for more.
std::string binder_in_short(const bench::Planned& p) {
  return say(
      Say::plan_binder_short,
      {grams_number(p.binder_g), from_to_words(p.first_helping.low_g, p.first_helping.high_g)});
}

std::string how_much_words(const bench::PlanView& plan) {
  if (plan.blend.empty()) return say(Say::plan_care_in_short);
  return say(Say::plan_how_much, {unsaid_words(plan.want)});
}

// What there is not enough of strikes the eye.
double shortages(Sheet& sheet, const Rect& area, double y, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  for (const auto& s : plan.short_of) {
    const std::string said =
        say(Say::plan_short, {s.name, grams_number(s.left_g), grams_number(s.wanted_g)});
    const double h = lines_high(said, area.w - 2, clean_bold) + 0.6;
    sheet.shapes.push_back(Box{{area.x - 1, y - 0.4, area.w + 2, h}, 1, t.caution, t.caution, 0});
    y = note(sheet, {area.x + 0.5, area.y, area.w - 1, area.h}, y, said, clean_bold,
             t.caution_ink) +
        1;
  }
  return y;
}

void notes(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  const Lettering small{cap::small, false, cap::small};
  panel(sheet, sheet.view.layout.lower);
  const Rect area = inset(sheet.view.layout.lower, 2.5);
  double y = area.y + 0.3;
  if (plan.error) y = note(sheet, area, y, words::message(*plan.error), clean_bold, t.ink) + 1;
  if (plan.why_not) y = note(sheet, area, y, words::message(*plan.why_not), clean_bold, t.ink) + 1;
  y = shortages(sheet, area, y, plan);
  const auto fits = [&](const std::string& sentence) {
    return y + lines_high(sentence, area.w, small) <= area.bottom() + 1;
  };
  std::vector<std::string> said = comes_to(plan);
  if (plan.planned && !said.empty() && !fits(said[0])) said = {binder_in_short(*plan.planned)};
  for (const std::string& sentence : said) {
    if (!fits(sentence)) break;
    y = note(sheet, area, y, sentence, small, t.ink) + 0.7;
  }
  if (!plan.planned && !plan.why_not)
    y = note(sheet, area, y, how_much_words(plan), small, t.quiet);
  const Rect& why = sheet.view.layout.note;
  if (plan.missing && why.w > 0)
    labels(sheet, why, plain(t), {{say(*plan.missing), clean_bold, false, 2}});
}

void pages(Sheet& sheet, const bench::PlanView& plan) {
  const Rect& list = sheet.view.layout.main;
  if (plan.pigments.empty())
    labels(sheet, list, plain(sheet.theme), {{say(Say::plan_nothing_found), clean_letters, true}});
}

}

void draw_plan(Sheet& sheet, const bench::PlanView& plan) {
  notes(sheet, plan);
  if (plan.number)
    draw_number(sheet, *plan.number);
  else if (plan.reading)
    cautions(sheet, plan);
  else
    pages(sheet, plan);
  for (const bench::Pad& at : sheet.view.layout.pads) {
    const auto* row = row_of(plan.pigments, at.id);
    if (!row) row = row_of(plan.binders, at.id);
    if (row)
      row_pad(sheet, at, *row);
    else
      choice_pad(sheet, at, plan);
  }
}

}
