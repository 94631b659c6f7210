// What opens over the trail: amounts, bottles, specks, troubles, the number pad.
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <array>
#include <cmath>

namespace screens {

using bench::ChoicePad;
using bench::MorePad;
using bench::SharedPad;
using bench::SlabPad;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

// The question that stands over the pads.
struct Question {
  words::Sentence operator()(const bench::AmountsPanel&) const { return Say::ask_amount; }
  words::Sentence operator()(const bench::BottlesPanel&) const { return Say::ask_bottle; }
  words::Sentence operator()(const bench::SpecksPanel&) const { return Say::ask_specks; }
  words::Sentence operator()(const bench::TroublesPanel&) const { return Say::ask_trouble; }
  words::Sentence operator()(const bench::MorePanel&) const { return Say::ask_more; }
  words::Sentence operator()(const bench::PigmentsPanel&) const { return Say::ask_pigment; }
  words::Sentence operator()(const bench::MaterialsPanel& panel) const {
    switch (panel.why) {
    case bench::MaterialsPanel::add: return Say::ask_material;
    case bench::MaterialsPanel::was: return Say::ask_material_was;
    case bench::MaterialsPanel::choose: return Say::ask_pads;
    }
    return {};
  }
  words::Sentence operator()(const bench::PaintsPanel&) const { return Say::ask_paint; }
  words::Sentence operator()(const bench::LinesPanel&) const { return Say::ask_line; }
  words::Sentence operator()(const bench::LinePanel&) const { return Say::ask_how_wrong; }
  template <words::one_of<bench::TrailPanel, bench::FoundPanel, bench::RemedyPanel,
                          bench::NumberPanel, bench::DropperPanel>
                Other>
  words::Sentence operator()(const Other&) const {
    return {};
  }
};

std::string away_words(std::int64_t away_ms) {
  const double hours = static_cast<double>(away_ms) / 3'600'000;
  if (hours >= 48) return say(Say::ask_found_days, {words::number(hours / 24, 0)});
  if (hours < 1.5) return say(Say::ask_found_minutes, {minutes_words(60 * hours)});
  return say(Say::ask_found_hours, {words::number(hours, hours < 1.95 ? 1 : 0)});
}

const bench::MaterialView* material_named(const bench::SlabView& slab, const std::string& card) {
  for (const auto& m : slab.materials)
    if (m.pad.arg == card) return &m;
  return nullptr;
}

void bottle_pad(Sheet& sheet, const bench::Pad& at, const bench::MaterialView& m) {
  const Theme& t = sheet.theme;
  Ground ground = on(t, material_colour(t, m.kind));
  if (m.has_pad) ground.outline = choosable(t, true).outline;
  const Ground g = pad_box(sheet, at, ground);
  const Rect& r = at.box;
  const double size = 6;
  material_symbol(sheet, {r.centre().x, r.y + 2.2 + size / 2}, size, m.kind,
                  sheet.view.pressed == at.id ? g.fill : t.slab, g.ink);
  labels(sheet, {r.x, r.y + size + 2.4, r.w, r.h - size - 3}, g, {{m.name, slab_bold, false, 2}});
  if (m.has_pad) tick(sheet, {r.right() - 5, r.y + 4.6}, 3.4, g.ink);
}

void card_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  for (const bench::MaterialView& m : slab.cards)
    if (m.pad == at.id) bottle_pad(sheet, at, m);
}

int specks_drawn(session::Specks specks) {
  switch (specks) {
  case session::Specks::many: return 17;
  case session::Specks::few: return 3;
  case session::Specks::none: return 0;
  }
  return 0;
}

// Specks as they look on the paper: a dot with many, few or none in it.
void specks_pad(Sheet& sheet, const bench::Pad& at, session::Specks specks) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, plain(t));
  const Rect& r = at.box;
  const double radius = std::min(r.w, r.h) * 0.24;
  const Point c{r.centre().x, r.y + r.h * 0.4};
  sheet.shapes.push_back(Disc{c, radius, clear, g.ink, 0.5});
  const int count = specks_drawn(specks);
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

std::string when_words(const bench::LineView& line, int utc_offset_min) {
  std::string out = time_to_second(line.at, line.offset_min.value_or(utc_offset_min));
  const auto took_s = static_cast<double>(line.took_ms) / 1000;
  if (took_s > 0) out = say(Say::lines_in_time, {minutes_seconds(took_s), out});
  return line.corrected ? out + ", " + say(Say::corrected) : out;
}

void line_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  for (const bench::LineView& line : slab.lines)
    if (line.pad == at.id)
      pad(sheet, at, plain(sheet.theme),
          {{event_words(line.event, line.card_name), slab_bold, false, 2},
           {when_words(line, sheet.view.utc_offset_min), slab_letters, true, 2}});
}

void simple(Sheet& sheet, const bench::Pad& at, words::Sentence words,
            words::Sentence below = words::Sentence{}) {
  pad(sheet, at, plain(sheet.theme),
      {{say(words), slab_bold, false, 3},
       {below == words::Sentence{} ? "" : say(below), slab_letters, true, 3}});
}

void found_pad(Sheet& sheet, const bench::Pad& at) {
  const auto state = session::state_named(at.id.arg);
  if (!state) return;
  switch (*state) {
  case session::State::wet: return simple(sheet, at, Say::found_wet, Say::found_wet_what);
  case session::State::dry: return simple(sheet, at, Say::found_dry, Say::found_dry_what);
  }
}

void doubted_pad(Sheet& sheet, const bench::Pad& at, words::Sentence words, std::string g) {
  if (const auto point = g.find('.'); point != std::string::npos)
    g.replace(point, 1, words::decimal_sign());
  pad(sheet, at, plain(sheet.theme), {{say(words, {g}), slab_bold, false, 3}});
}

std::string grams_of_line(const bench::SlabView& slab) {
  return slab.doubt ? bench::grams_arg(slab.doubt->g) : "";
}

void more_pad(Sheet& sheet, const bench::Pad& at, MorePad pad, const bench::SlabView& slab) {
  switch (pad) {
  case MorePad::lines:
    return simple(sheet, at,
                  is_open<bench::LinesPanel>(slab.panel) ? Say::pad_all_lines : Say::pad_lines);
  case MorePad::other_paint: return simple(sheet, at, Say::pad_other_paint);
  case MorePad::weigh_paint:
    return simple(sheet, at, Say::pad_weigh_paint, Say::pad_weigh_paint_what);
  case MorePad::to_jar:
    return simple(sheet, at, at.id.arg == "half" ? Say::pad_half_to_jar : Say::pad_to_jar);
  case MorePad::from_jar: return simple(sheet, at, Say::pad_from_jar);
  case MorePad::spilt: return simple(sheet, at, Say::pad_spilt);
  case MorePad::earlier: return simple(sheet, at, Say::pad_earlier);
  case MorePad::other_amount: return simple(sheet, at, Say::pad_other_amount);
  case MorePad::five_earlier: return simple(sheet, at, Say::pad_five_earlier);
  case MorePad::take_back: return simple(sheet, at, Say::pad_take_back);
  case MorePad::it_is: return doubted_pad(sheet, at, Say::pad_it_is, grams_of_line(slab));
  case MorePad::was_meant: return doubted_pad(sheet, at, Say::pad_was_meant, at.id.arg);
  case MorePad::found: return found_pad(sheet, at);
  case MorePad::room: return simple(sheet, at, Say::pad_room);
  case MorePad::later: return simple(sheet, at, Say::pad_later);
  case MorePad::other_material: return simple(sheet, at, Say::pad_other_material);
  case MorePad::materials: return simple(sheet, at, Say::pad_materials);
  case MorePad::more_materials: return simple(sheet, at, Say::pad_more);
  case MorePad::choose_pads: return simple(sheet, at, Say::pad_choose_pads);
  case MorePad::it_was:
  case MorePad::on_pad: return card_pad(sheet, at, slab);
  case MorePad::paint_of: return paint_pad(sheet, at, slab);
  case MorePad::run:
  case MorePad::line: return line_pad(sheet, at, slab);
  }
}

void choice_pad(Sheet& sheet, const bench::Pad& at, ChoicePad choice, const bench::SlabView& slab) {
  const Theme& t = sheet.theme;
  switch (choice) {
  case ChoicePad::amount: {
    const std::string words = amount_pad_words(at.id.arg);
    const bool chosen = words == next_words(slab.amount);
    return pad(sheet, at, choosable(t, chosen), {{words, big_bold}});
  }
  case ChoicePad::dropper: return dropper_pad(sheet, at, slab.dropper);
  case ChoicePad::bottle_of:
    if (const auto* m = material_named(slab, at.id.arg)) bottle_pad(sheet, at, *m);
    return;
  case ChoicePad::lost_count:
    if (const auto* m = material_named(slab, at.id.arg))
      pad(sheet, at, plain(t),
          {{say(Say::pad_lost_count), slab_letters}, {m->name, slab_letters, true, 2}});
    return;
  case ChoicePad::keep_dropper:
    return simple(sheet, at, Say::pad_keep_dropper, Say::pad_keep_dropper_what);
  case ChoicePad::specks:
    if (const auto specks = session::specks_named(at.id.arg)) specks_pad(sheet, at, *specks);
    return;
  case ChoicePad::trouble_is:
    if (const auto trouble = session::trouble_named(at.id.arg))
      pad(sheet, at, plain(t), {{trouble_words(*trouble), slab_bold, false, 3}});
    return;
  }
}

void add_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  card_pad(sheet, at, slab);
  for (const auto& m : slab.pigments)
    if (m.pad == at.id)
      pigment_pad(sheet, at, m.name, m.colour, m.grams ? grams_words(*m.grams) : "–");
}

void panel_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  if (const auto choice = at.id.kind.as<ChoicePad>()) choice_pad(sheet, at, *choice, slab);
  if (const auto more = at.id.kind.as<MorePad>()) more_pad(sheet, at, *more, slab);
  if (at.id.kind == SlabPad::add) add_pad(sheet, at, slab);
  if (at.id.kind == SlabPad::bottle) simple(sheet, at, Say::pad_bottle);
  if (at.id.kind == SharedPad::leave)
    pad(sheet, at, plain(sheet.theme), {{say(Say::pad_leave), slab_bold}});
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

void dropper_found(Sheet& sheet, const bench::DropperFound& f) {
  const Rect& area = sheet.view.layout.main;
  panel(sheet, area);
  labels(sheet, inset(area, 2), plain(sheet.theme),
         {{say(Say::dropper_by_bottle,
               {f.of, words::number(f.found_g, 2), f.card.name, words::number(f.was_g, 2)}),
           {cap::body, true, cap::body},
           false,
           5},
          {say(Say::dropper_right, {paint::count_words(f.drops)}), slab_letters, true, 3}},
         Anchor::left);
}

// The question, or that there is nothing to ask about.
std::string asked(const bench::SlabView& slab, int utc_offset_min) {
  if (is_open<bench::PaintsPanel>(slab.panel) && slab.paints.empty()) return say(Say::ask_no_paint);
  if (is_open<bench::LinesPanel>(slab.panel) && slab.lines.empty()) return say(Say::ask_no_lines);
  if (slab.doubt) return words::message(slab.doubt->why);
  if (is_open<bench::LinePanel>(slab.panel) && !slab.lines.empty())
    return event_words(slab.lines[0].event, slab.lines[0].card_name) + ", " +
           time_to_second(slab.lines[0].at, slab.lines[0].offset_min.value_or(utc_offset_min)) +
           ": " + say(Say::ask_how_wrong);
  if (is_open<bench::FoundPanel>(slab.panel)) return away_words(slab.away_ms);
  return say(std::visit(Question{}, slab.panel));
}

}

void draw_panel(Sheet& sheet, const bench::SlabView& slab) {
  if (is_open<bench::NumberPanel>(slab.panel)) {
    if (slab.number) draw_number(sheet, *slab.number);
    return;
  }
  if (slab.remedy) {
    remedy(sheet, *slab.remedy);
    for (const bench::Pad& at : sheet.view.layout.pads) panel_pad(sheet, at, slab);
    return;
  }
  if (slab.dropper_found) {
    dropper_found(sheet, *slab.dropper_found);
    for (const bench::Pad& at : sheet.view.layout.pads) panel_pad(sheet, at, slab);
    return;
  }
  const Rect& head = sheet.view.layout.main;
  panel(sheet, head);
  std::vector<Label> lines{{asked(slab, sheet.view.utc_offset_min), big_bold, false, 2}};
  if (const std::string notice = notice_words(slab.notice); !notice.empty())
    lines.push_back({notice, slab_letters, true, 2});
  labels(sheet, head, plain(sheet.theme), lines);
  for (const bench::Pad& at : sheet.view.layout.pads) panel_pad(sheet, at, slab);
}

}
