// The top bar along the top, for clean hands.
#include "bench/pads_top_bar.hpp"
#include "bench/screens.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "words/moments.hpp"
#include "words/tablet_says.hpp"

#include <algorithm>

namespace screens {

using bench::TopBarPad;
using Say = words::TabletSay;
using words::say;

namespace {

void tab(Sheet& sheet, const bench::Pad& pad, words::Sentence name, bench::Screen screen) {
  const Theme& t = sheet.theme;
  const bool here = sheet.view.top_bar.screen == screen;
  Ground g = here ? dark(t) : Ground{t.slab, t.quiet, t.quiet};
  if (sheet.view.pressed == pad.id) g = pressed(g);
  if (here || sheet.view.pressed == pad.id)
    sheet.shapes.push_back(Box{pad.box, radius_mm, g.fill, here ? t.ink : clear, outline_mm});
  const Point c = pad.box.centre();
  const auto fits_in = [&](double width, bool bold) {
    return !fitted(say(name), width, {cap::body, bold, cap::small}, 1).cut;
  };
  const double airy = pad.box.w - 2; // one alone has an edge
  const double width = here && fits_in(airy, false) ? airy : pad.box.w - 1;
  const bool fits = fits_in(width, true);
  write(sheet, {c.x, c.y + cap::body / 2}, Anchor::centre, {cap::body, here && fits, cap::small},
        g.ink, say(name), width);
}

// How many wait there, on the tab's corner.
void due_count(Sheet& sheet, const bench::Pad& pad) {
  const Theme& t = sheet.theme;
  const std::size_t due = sheet.view.top_bar.due;
  if (due == 0 || sheet.view.top_bar.screen == bench::Screen::today) return; // which shows them
  const bool dark_tab = sheet.view.pressed == pad.id;
  const double h = 4.2;
  const std::string count = due > 9 ? "9+" : std::to_string(due);
  const double w = std::max(h, width_mm(count, cap::small, true) + 2.2);
  const Rect pill{pad.box.right() - w - 0.3, pad.box.y + 0.3, w, h};
  const Ground g = dark_tab ? plain(t) : dark(t);
  sheet.shapes.push_back(Box{pill, h / 2, g.fill, clear, 0});
  write(sheet, {pill.centre().x, pill.centre().y + cap::small / 2}, Anchor::centre,
        {cap::small, true, cap::small}, g.ink, count, w);
}

void night_pad(Sheet& sheet, const bench::Pad& pad) {
  const Theme& t = sheet.theme;
  Ground g = plain(t);
  if (sheet.view.pressed == pad.id) {
    g = pressed(g);
    sheet.shapes.push_back(Box{pad.box, radius_mm, g.fill, clear, 0});
  }
  if (sheet.view.top_bar.night)
    sun(sheet, pad.box.centre(), 7, g.ink);
  else
    moon(sheet, pad.box.centre(), 6, g.ink, g.fill);
}

// A bell, struck through while nothing is to be heard.
void sound_pad(Sheet& sheet, const bench::Pad& pad) {
  Ground g = plain(sheet.theme);
  if (sheet.view.pressed == pad.id) {
    g = pressed(g);
    sheet.shapes.push_back(Box{pad.box, radius_mm, g.fill, clear, 0});
  }
  bell(sheet, pad.box.centre(), 6, g.ink, g.fill, sheet.view.top_bar.sound);
}

void tablet_pad(Sheet& sheet, const bench::Pad& pad) {
  const Theme& t = sheet.theme;
  const bool here = sheet.view.top_bar.screen == bench::Screen::tablet;
  Ground g = here ? dark(t) : plain(t);
  if (sheet.view.pressed == pad.id) g = pressed(g);
  if (here || sheet.view.pressed == pad.id)
    sheet.shapes.push_back(Box{pad.box, radius_mm, g.fill, clear, 0});
  const Point c = pad.box.centre();
  sheet.shapes.push_back(Box{{c.x - 4, c.y - 2.6, 8, 5.2}, 0.8, clear, g.ink, 0.6});
  sheet.shapes.push_back(Disc{{c.x + 2.8, c.y}, 0.45, g.ink, clear, 0});
}

void wipe_pad(Sheet& sheet, const bench::Pad& pad) {
  const Theme& t = sheet.theme;
  const Ground g = sheet.view.pressed == pad.id ? pressed(plain(t)) : plain(t);
  sheet.shapes.push_back(
      Box{inset(pad.box, outline_mm / 2), radius_mm, g.fill, t.rule, outline_mm});
  labels(sheet, pad.box, g, {{say(Say::wipe_glass), {cap::body, false, cap::small}}});
}

// The batch on the slab; in the Book the one that is looked at. Pans says it over the pans.
struct Title {
  std::string name;
  std::uint32_t colour = 0;
  session::CardKind kind = session::CardKind::pigment;
  bool swatch = false;
};

Title title_of(const bench::View& view) {
  if (std::holds_alternative<bench::PansView>(view.screen)) return {};
  if (const auto* binder = std::get_if<bench::BinderView>(&view.screen)) {
    const std::string lot = binder->lot.empty() ? "" : ", " + binder->lot;
    return {binder->name + lot, 0, session::CardKind::binder};
  }
  const auto* book = std::get_if<bench::BookView>(&view.screen);
  if (!book || !book->batch)
    return {view.top_bar.batch_name, view.top_bar.batch_colour, session::CardKind::pigment,
            view.top_bar.batch_swatch};
  Title title{book->batch->name};
  title.colour = book->colour;
  title.swatch = book->swatch;
  return title;
}

void draw_date(Sheet& sheet, const Rect& r, std::int64_t now_ms) {
  const std::string date = words::weekday_and_date(now_ms, sheet.view.utc_offset_min);
  if (fitted(date, r.w - 2 * padding_mm, slab_bold, 2).cut) return;
  labels(sheet, r, plain(sheet.theme), {{date, slab_bold, false, 2}}, Anchor::left);
}

// The name beside its heap, as far left as it goes; over a trail at the slab it is read from afar.
void draw_title(Sheet& sheet) {
  const Rect& r = sheet.view.layout.title;
  if (const auto* today = std::get_if<bench::TodayView>(&sheet.view.screen))
    return draw_date(sheet, r, today->now_ms);
  const Title title = title_of(sheet.view);
  const bool in_bar = r.bottom() <= sheet.view.layout.top_bar.bottom();
  if (!in_bar) { // on a ground of its own: what lies behind the pads turns green when time is up
    const double end = std::max(r.right(), sheet.view.layout.clock.right());
    panel(sheet, {r.x, r.y, end - r.x, r.h});
  }
  if (title.name.empty() || r.w < 14) return;
  const double heap = std::min(7.0, r.h - 1), x = r.x + (r.w > 60 ? 5 : 2);
  const int lines = r.h < 2 * heap ? 1 : 2;
  const Rect words{x + heap + 1.5, r.y, r.right() - x - heap - 2, r.h};
  const Point at{x + heap / 2, r.centre().y};
  if (title.kind == session::CardKind::pigment)
    paint_symbol(sheet, at, heap, rgb(title.colour), title.swatch, sheet.theme.ink);
  else
    material_symbol(sheet, at, heap, title.kind, material_colour(sheet.theme, title.kind),
                    sheet.theme.ink);
  const double width = words.w - 2 * padding_mm;
  const Lettering letters{cap::body, true, in_bar ? cap::small : cap::body};
  const bool cut = fitted(title.name, width, letters, lines).cut;
  const Lettering least{cap::small, false, cap::small}; // a blend's name is long
  labels(sheet, words, plain(sheet.theme), {{title.name, cut ? least : letters, false, 2}},
         Anchor::left);
}

void clock(Sheet& sheet) {
  const auto& top_bar = sheet.view.top_bar;
  const Rect& r = sheet.view.layout.clock;
  constexpr double least_mm = 9,
                   whole_mm = 12; // that the time takes, in small letters and in usual
  if (r.w < least_mm) return;
  const std::string time = (top_bar.hour < 10 ? "0" : "") + std::to_string(top_bar.hour) +
                           (top_bar.minute < 10 ? ":0" : ":") + std::to_string(top_bar.minute);
  const double size = r.w < whole_mm ? cap::small : cap::body;
  const double edge = r.bottom() <= sheet.view.layout.top_bar.bottom() ? 0.6 : 1;
  write(sheet, {r.right() - edge, r.centre().y + size / 2}, Anchor::right, {size, false, size},
        sheet.theme.ink, time, r.w - 1.2);
}

}

void draw_top_bar(Sheet& sheet) {
  const Theme& t = sheet.theme;
  const Rect& top_bar = sheet.view.layout.top_bar;
  sheet.shapes.push_back(Box{top_bar, 0, t.slab, clear, 0});
  sheet.shapes.push_back(Polyline{
      {{top_bar.x, top_bar.bottom()}, {top_bar.right(), top_bar.bottom()}}, outline_mm, t.rule, 0});
  for (const bench::Pad& pad : sheet.view.layout.pads) {
    const auto screen = bench::screens.find(&bench::ScreenRow::pad, pad.id.kind);
    if (screen && bench::screens[*screen].tab != words::Sentence{})
      tab(sheet, pad, bench::screens[*screen].tab, *screen);
    if (pad.id.kind == TopBarPad::today) due_count(sheet, pad);
    if (pad.id.kind == TopBarPad::tablet) tablet_pad(sheet, pad);
    if (pad.id.kind == TopBarPad::sound) sound_pad(sheet, pad);
    if (pad.id.kind == TopBarPad::night) night_pad(sheet, pad);
    if (pad.id.kind == TopBarPad::wipe) wipe_pad(sheet, pad);
  }
  draw_title(sheet);
  clock(sheet);
}

}
