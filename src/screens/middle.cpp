// What opens in the middle of the slab: amounts, bottles, specks, troubles, the number pad.
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <array>
#include <cmath>

namespace screens {

using bench::Middle;
using bench::PadKind;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

words::Sentence question(Middle middle) {
  switch (middle) {
  case Middle::amounts: return Say::ask_amount;
  case Middle::bottles: return Say::ask_bottle;
  case Middle::specks: return Say::ask_specks;
  case Middle::troubles: return Say::ask_trouble;
  case Middle::more: return Say::ask_more;
  case Middle::pigments: return Say::ask_pigment;
  case Middle::paints: return Say::ask_paint;
  case Middle::lines: return Say::ask_line;
  case Middle::line: return Say::ask_how_wrong;
  case Middle::found: return Say::ask_found;
  default: return {};
  }
}

const bench::MaterialView* material_named(const bench::SlabView& slab, const std::string& card) {
  for (const auto& m : slab.materials)
    if (m.pad.arg == card) return &m;
  return nullptr;
}

void bottle_pad(Sheet& sheet, const bench::Pad& at, const bench::MaterialView& m) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, on(t, material_colour(t, m.kind)));
  const Rect& r = at.box;
  const double size = 6;
  material_symbol(sheet, {r.centre().x, r.y + 2.2 + size / 2}, size, m.kind,
                  sheet.view.pressed == at.id ? g.fill : t.slab, g.ink);
  labels(sheet, {r.x, r.y + size + 2.4, r.w, r.h - size - 3}, g, {{m.name, slab_bold, false, 2}});
}

// Specks as they look on the paper: a dot with many, few or none in it.
void specks_pad(Sheet& sheet, const bench::Pad& at, session::Specks specks) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, plain(t));
  const Rect& r = at.box;
  const double radius = std::min(r.w, r.h) * 0.24;
  const Point c{r.centre().x, r.y + r.h * 0.4};
  sheet.shapes.push_back(Disc{c, radius, clear, g.ink, 0.5});
  const int count = specks == session::Specks::many ? 17 : specks == session::Specks::few ? 3 : 0;
  for (int i = 0; i < count; ++i) { // on a sunflower's spiral: even, and the same every time
    const double out = radius * 0.82 * std::sqrt((i + 0.6) / (count + 0.2)), a = 2.39996 * i;
    sheet.shapes.push_back(
        Disc{{c.x + out * std::cos(a), c.y + out * std::sin(a)}, 0.6, g.ink, clear, 0});
  }
  labels(sheet, {r.x, r.y + r.h * 0.68, r.w, r.h * 0.28}, g, {{specks_words(specks), slab_bold}});
}

// Name, heap and grams so far of one of several pigments.
void pigment_pad(Sheet& sheet, const bench::Pad& at, const std::string& name, std::uint32_t colour,
                 const std::string& below) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, plain(t));
  const Rect& r = at.box;
  const double size = 6.5;
  material_symbol(sheet, {r.x + 2.2 + size / 2, r.y + r.h / 2}, size, session::CardKind::pigment,
                  rgb(colour), g.ink);
  labels(sheet, {r.x + size + 2, r.y, r.w - size - 2, r.h}, g,
         {{name, slab_bold, false, 2}, {below, slab_letters, true, 1}});
}

// Which one the next drops come from; a tap takes another.
void dropper_pad(Sheet& sheet, const bench::Pad& at, const std::string& name) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Rect& r = at.box;
  const double size = 6.5;
  material_symbol(sheet, {r.x + 2.2 + size / 2, r.y + r.h / 2}, size, session::CardKind::dropper,
                  sheet.theme.slab, g.ink);
  labels(sheet, {r.x + size + 2, r.y, r.w - size - 2, r.h}, g, {{name, slab_bold, false, 2}});
}

void paint_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  for (const bench::PaintView& p : slab.paints)
    if (p.pad == at.id)
      pigment_pad(sheet, at, p.name, p.colour,
                  say(p.place == session::Place::jar ? words::SessionSay::place_jar
                                                     : words::SessionSay::place_pans) +
                      ", " + grams_words(p.grams));
}

void line_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  for (const bench::LineView& line : slab.lines)
    if (line.pad == at.id)
      pad(sheet, at, plain(sheet.theme),
          {{event_words(line.event, line.card_name), slab_bold, false, 2},
           {time_to_second(line.at, sheet.view.utc_offset_min) +
                (line.corrected ? ", " + say(Say::corrected) : ""),
            slab_letters, true, 1}});
}

struct PadWords {
  PadKind kind;
  std::string_view arg;
  words::Sentence words, below;
};
constexpr std::array simple_choices{
    PadWords{PadKind::bottle, "", Say::pad_bottle, {}},
    PadWords{PadKind::lines, "", Say::pad_lines, {}},
    PadWords{PadKind::other_paint, "", Say::pad_other_paint, {}},
    PadWords{PadKind::weigh_paint, "", Say::pad_weigh_paint, Say::pad_weigh_paint_what},
    PadWords{PadKind::to_jar, "all", Say::pad_to_jar, {}},
    PadWords{PadKind::to_jar, "half", Say::pad_half_to_jar, {}},
    PadWords{PadKind::from_jar, "", Say::pad_from_jar, {}},
    PadWords{PadKind::spilt, "", Say::pad_spilt, {}},
    PadWords{PadKind::earlier, "", Say::pad_earlier, {}},
    PadWords{PadKind::other_amount, "", Say::pad_other_amount, {}},
    PadWords{PadKind::five_earlier, "", Say::pad_five_earlier, {}},
    PadWords{PadKind::take_back, "", Say::pad_take_back, {}},
    PadWords{PadKind::found, "wet", Say::found_wet, Say::found_wet_what},
    PadWords{PadKind::found, "dry", Say::found_dry, Say::found_dry_what}};

void simple_choice(Sheet& sheet, const bench::Pad& at) {
  for (const PadWords& c : simple_choices) {
    if (c.kind != at.id.kind || c.arg != at.id.arg) continue;
    const std::string below = c.below == words::Sentence{} ? "" : say(c.below);
    pad(sheet, at, plain(sheet.theme),
        {{say(c.words), slab_bold, false, 3}, {below, slab_letters, true, 3}});
  }
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  const Theme& t = sheet.theme;
  switch (at.id.kind) {
  case PadKind::amount: {
    const std::string words = amount_pad_words(at.id.arg);
    const bool chosen = words == next_words(slab.amount);
    return pad(sheet, at, chosen ? dark(t) : plain(t), {{words, big_bold}});
  }
  case PadKind::bottle_of:
    if (const auto* m = material_named(slab, at.id.arg)) bottle_pad(sheet, at, *m);
    return;
  case PadKind::lost_count:
    if (const auto* m = material_named(slab, at.id.arg))
      pad(sheet, at, plain(t),
          {{say(Say::pad_lost_count), slab_letters}, {m->name, slab_letters, true, 2}});
    return;
  case PadKind::specks:
    if (const auto specks = session::specks_named(at.id.arg)) specks_pad(sheet, at, *specks);
    return;
  case PadKind::trouble_is:
    if (const auto trouble = session::trouble_named(at.id.arg))
      pad(sheet, at, plain(t), {{trouble_words(*trouble), slab_bold, false, 3}});
    return;
  case PadKind::add:
    for (const auto& m : slab.pigments)
      if (m.pad == at.id)
        pigment_pad(sheet, at, m.name, m.colour, m.grams ? grams_words(*m.grams) : "–");
    return;
  case PadKind::dropper: return dropper_pad(sheet, at, slab.dropper);
  case PadKind::paint_of: return paint_pad(sheet, at, slab);
  case PadKind::line: return line_pad(sheet, at, slab);
  case PadKind::leave: return pad(sheet, at, plain(t), {{say(Say::pad_leave), slab_bold}});
  default: return simple_choice(sheet, at);
  }
}

}

namespace {

// What to do about a trouble, large, with the trouble's name over it.
void remedy(Sheet& sheet, const bench::Remedy& r) {
  const Theme& t = sheet.theme;
  const Rect& area = sheet.view.layout.main;
  panel(sheet, area);
  labels(sheet, inset(area, 2), plain(t),
         {{trouble_words(r.trouble), {cap::head, true, cap::head}, false, 1},
          {trouble_sign(r.trouble), slab_letters, true, 2},
          {remedy_words(r), {cap::body, false, cap::body}, false, 9},
          {say(Say::remedy_common), slab_letters, true, 2}},
         Anchor::left);
}

// The question, or that there is nothing to ask about.
std::string asked(const bench::SlabView& slab, int utc_offset_min) {
  if (slab.middle == Middle::paints && slab.paints.empty()) return say(Say::ask_no_paint);
  if (slab.middle == Middle::lines && slab.lines.empty()) return say(Say::ask_no_lines);
  if (slab.middle == Middle::line && !slab.lines.empty())
    return event_words(slab.lines[0].event, slab.lines[0].card_name) + ", " +
           time_to_second(slab.lines[0].at, utc_offset_min) + ": " + say(Say::ask_how_wrong);
  return say(question(slab.middle));
}

}

void draw_middle(Sheet& sheet, const bench::SlabView& slab) {
  if (slab.middle == Middle::number) {
    if (slab.number) draw_number(sheet, *slab.number);
    return;
  }
  if (slab.remedy) {
    remedy(sheet, *slab.remedy);
    for (const bench::Pad& at : sheet.view.layout.pads) choice_pad(sheet, at, slab);
    return;
  }
  const Rect& head = sheet.view.layout.main;
  panel(sheet, head);
  std::vector<Label> lines{{asked(slab, sheet.view.utc_offset_min), big_bold, false, 2}};
  if (const std::string notice = notice_words(slab.notice); !notice.empty())
    lines.push_back({notice, slab_letters, true, 2});
  labels(sheet, head, plain(sheet.theme), lines);
  for (const bench::Pad& at : sheet.view.layout.pads) choice_pad(sheet, at, slab);
}

}
