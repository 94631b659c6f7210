// Slab: the pads for wet hands. The trail, the numbers and what opens over them have their files.
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_top_bar.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/trail.hpp"
#include "words/bench_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>

namespace screens {

using bench::SharedPad;
using bench::SlabPad;
using bench::TopBarPad;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

const bench::MaterialView* material_of(const bench::SlabView& slab, const bench::PadId& id) {
  for (const auto& m : slab.materials)
    if (m.pad == id) return &m;
  return nullptr;
}

// A dash where the word for none has no room.
std::string so_far(const bench::MaterialView& m, double room) {
  if (m.grams) return grams_words(*m.grams);
  const std::string none = say(words::SessionSay::amount_none);
  return width_mm(none, cap::body, false) <= room ? none : "–";
}

// Symbol and grams above, the name, and what the next tap adds, and with what where that has to be
// told.
void material_pad(Sheet& sheet, const bench::Pad& pad, const bench::MaterialView& m) {
  const Theme& t = sheet.theme;
  const Rect& r = pad.box;
  const Ground g = pad_box(sheet, pad, on(t, material_colour(t, m.kind)));
  constexpr double narrow_mm = 26.5, edge_mm = 1.01, least_step = 1.302, most_step = 2.0;
  const double side = r.w < narrow_mm ? 1.2 : padding_mm, width = r.w - 2 * side;
  const std::string called =
      m.several > 0 ? say(Say::pad_pigments, {std::to_string(m.several)}) : m.name;
  Lines name = fitted(called, width, slab_bold, 2);
  const bool with_dropper = !m.dropper.empty() && !name.cut;
  if ((name.shortened || name.cut) && !with_dropper) { // brackets tell two pigments apart
    const Lines whole = fitted(called, width, slab_bold, 3);
    if (!whole.cut && !whole.shortened) name = whole;
  }
  const double steps = (with_dropper ? 2.0 : 1.0) + static_cast<double>(name.lines.size());
  const double below = 0.3 * cap::body; // by which a g reaches below its line
  const double step = std::clamp((r.h - 2 * edge_mm - cap::body - below) / steps,
                                 least_step * cap::body, most_step * cap::body);
  const double high = cap::body + steps * step + below;
  double y = r.y + (r.h - high) / 2 + cap::body;
  const bool heap = m.kind == session::CardKind::pigment || m.kind == session::CardKind::paint;
  const Colour fill = heap ? rgb(m.colour) : sheet.view.pressed == pad.id ? g.fill : t.slab;
  const double symbol = std::min(7.0, cap::body + 2 * (y - cap::body - r.y) - 1.6);
  material_symbol(sheet, {r.x + side + symbol * 0.54, y - cap::body / 2}, symbol, m.kind, fill,
                  g.ink);
  write(sheet, {r.right() - side, y}, Anchor::right, m.grams ? slab_bold : slab_letters, g.ink,
        so_far(m, width - symbol - 1), width - symbol - 1);
  for (const std::string& line : name.lines)
    write(sheet, {r.x + side, y += step}, Anchor::left, slab_bold, g.ink, line, width);
  write(sheet, {r.x + side, y += step}, Anchor::left, slab_letters, g.ink,
        m.corrects      ? say(Say::pad_it_was)
        : m.several > 0 ? say(Say::pad_which)
                        : next_words(m.next),
        width);
  if (with_dropper)
    write(sheet, {r.x + side, y + step}, Anchor::left, slab_letters, g.quiet, m.dropper, width);
}

std::string pass_action(const bench::PassView& pass) {
  switch (pass.next) {
  case bench::PassView::wet_out: return say(Say::stage_wet_out);
  case bench::PassView::mull: return say(words::ScreensSay::stage_mull);
  case bench::PassView::scrape: return say(words::ScreensSay::stage_scrape);
  case bench::PassView::none: break;
  }
  return "";
}

void running_pass(Sheet& sheet, const bench::Pad& pad, const bench::PassView& pass) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, pad, dark(t));
  const bool flash = sheet.view.pressed == pad.id;
  const Rect& r = pad.box;
  const std::string stage = pass.running == session::Stage::mulling
                                ? say(words::BenchSay::stage_mulling, {std::to_string(pass.number)})
                                : say(words::BenchSay::stage_wetting_out);
  const double x = r.centre().x, width = r.w - 0.8; // 12:34 takes all of it upright
  const Lines head = fitted(stage, width, slab_letters, 2);
  const double more = (static_cast<double>(head.lines.size()) - 1) * cap::body * line_step;
  const double free = r.h - more - 2 * cap::body - cap::timer - 2.2; // shared by the air between
  double y = r.y + free * 0.2 + cap::body;
  for (const std::string& line : head.lines) {
    write(sheet, {x, y}, Anchor::centre, slab_letters, g.quiet, line, width);
    if (&line != &head.lines.back()) y += cap::body * line_step;
  }
  write(sheet, {x, y += free * 0.22 + cap::timer}, Anchor::centre, {cap::timer, true, cap::head},
        g.ink, minutes_seconds(pass.seconds), width);
  y += free * 0.17;
  progress_bar(sheet, {r.x + 3, y, r.w - 6, 2.2}, flash ? t.right : t.quiet,
               flash ? t.right_ink : t.right, pass.target_s > 0 ? pass.seconds / pass.target_s : 0);
  const double last = y + 2.2 + free * 0.21 + cap::body, lowest = r.bottom() - 1.95; // of a p
  write(sheet, {x, std::min(last, lowest)}, Anchor::centre, slab_bold, g.ink, pass_action(pass),
        width);
}

void pass_pad(Sheet& sheet, const bench::Pad& at, const bench::PassView& pass) {
  const bool works = pass.running && *pass.running != session::Stage::resting;
  if (works) return running_pass(sheet, at, pass);
  std::string what;
  if (pass.next == bench::PassView::mull)
    what = say(words::SessionSay::stage_pass, {std::to_string(pass.number)});
  if (pass.next == bench::PassView::wet_out) what = say(Say::stage_with_knife);
  pad(sheet, at, plain(sheet.theme), {{pass_action(pass), big_bold}, {what, slab_letters, true}});
}

void felt_pad(Sheet& sheet, const bench::Pad& at) {
  const auto feel = session::feel_named(at.id.arg);
  if (!feel) return;
  pad(sheet, at, on(sheet.theme, feel_colour(sheet.theme, *feel)),
      {{feel_words(*feel), slab_bold}});
}

// It can be done at any time, and is not what comes next while the paint is gritty, sticky or
// loose. What has too little gum goes into pans with a warning.
void gather_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  const bool gum_short = slab.advice.gum == paint::GumState::too_little;
  const bool ready = slab.smooth && slab.flows_right;
  const std::string what = say(!slab.flows_right ? Say::gather_not_right
                               : !slab.smooth    ? Say::gather_not_smooth
                               : gum_short       ? Say::gather_gum_short
                                                 : Say::pad_gather_what);
  pad(sheet, at, plain(sheet.theme),
      {{say(Say::pad_gather), ready ? slab_bold : slab_letters, !ready},
       {what, slab_letters, true, 3}});
}

void simple_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  const Ground g = plain(sheet.theme);
  const auto open = [&](const bench::Panel& panel) {
    return choosable(sheet.theme, slab.panel == panel);
  };
  if (at.id.kind == SharedPad::to_plan)
    pad(sheet, at, dark(sheet.theme), {{say(Say::to_plan), slab_bold, false, 2}});
  if (at.id.kind == SharedPad::to_pans)
    pad(sheet, at, dark(sheet.theme), {{say(Say::pour_into_pans), slab_bold, false, 2}});
  const auto own = at.id.kind.as<SlabPad>();
  if (!own) return;
  switch (*own) {
  case SlabPad::another:
    return pad(sheet, at, open(bench::AmountsPanel{}),
               {{say(words::ScreensSay::pad_another), slab_letters}});
  case SlabPad::more:
    return pad(sheet, at, open(bench::MorePanel{}), {{say(Say::pad_more), slab_letters}});
  case SlabPad::dot:
    return pad(sheet, at, open(bench::SpecksPanel{}),
               {{say(words::ScreensSay::pad_dot), slab_bold},
                {slab.dot ? specks_words(*slab.dot) : "", slab_letters, true}});
  case SlabPad::trouble:
    return pad(sheet, at, open(bench::TroublesPanel{}),
               {{say(Say::pad_trouble), slab_bold},
                {slab.last_trouble ? trouble_words(*slab.last_trouble) : "", slab_letters, true}});
  case SlabPad::gather: return gather_pad(sheet, at, slab);
  case SlabPad::back_on_slab: return pad(sheet, at, g, {{say(Say::pad_back), slab_bold, false, 3}});
  case SlabPad::close:
    return pad(
        sheet, at, g,
        {{say(Say::pad_close), slab_bold}, {say(Say::pad_close_what), slab_letters, true, 3}});
  case SlabPad::add:
  case SlabPad::pigments:
  case SlabPad::pass:
  case SlabPad::felt:           // have their own
  case SlabPad::bottle: return; // lies on a panel
  }
}

void locked(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  const Theme& t = sheet.theme;
  const bench::Layout& l = sheet.view.layout;
  const double bottom = std::max(l.side.bottom(), l.main.bottom()) + l.top_bar.w; // all there is
  Colour veil = t.bench;
  veil.a = 190;
  sheet.shapes.push_back(Box{{0, 0, l.top_bar.w, bottom}, 0, veil, clear, 0});
  const Ground g = plain(t);
  sheet.shapes.push_back(Box{at.box, radius_mm, g.fill, g.ink, 0.55});
  const double bar = 3;
  labels(sheet, {at.box.x, at.box.y, at.box.w, at.box.h - bar - 4}, g,
         {{say(Say::wiping_hold), {cap::head, true, cap::body}, false, 3}});
  progress_bar(sheet, {at.box.x + 4, at.box.bottom() - bar - 4, at.box.w - 8, bar}, t.right,
               t.right_ink, slab.unlocking.value_or(0));
}

}

void draw_slab(Sheet& sheet, const bench::SlabView& slab) {
  const bench::Layout& l = sheet.view.layout;
  if (is_open<bench::TrailPanel>(slab.panel)) {
    const bool batch = !sheet.view.top_bar.batch_name.empty();
    if (batch) draw_trail(sheet, l.main, slab.trail, cap::body);
    if (batch) draw_numbers(sheet, slab);
    if (!batch) {
      panel(sheet, l.main);
      labels(sheet, l.main, plain(sheet.theme), {{say(Say::no_batch), slab_letters, false, 5}});
    }
  } else {
    draw_panel(sheet, slab);
  }
}

void draw_slab_pads(Sheet& sheet) {
  const auto* slab = std::get_if<bench::SlabView>(&sheet.view.screen);
  if (!slab) return;
  const auto& pads = sheet.view.layout.pads;
  for (const bench::Pad& at : pads) {
    if (const auto* material = material_of(*slab, at.id)) material_pad(sheet, at, *material);
    if (at.id.kind == SlabPad::pass) pass_pad(sheet, at, slab->pass);
    if (at.id.kind == SlabPad::felt) felt_pad(sheet, at);
    simple_pad(sheet, at, *slab);
  }
  for (const bench::Pad& at : pads)
    if (at.id.kind == TopBarPad::unlock) locked(sheet, at, *slab);
}

}
