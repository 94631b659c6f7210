#include "screens/trail.hpp"

#include "bench/pads_shared.hpp"
#include "bench/photos.hpp"
#include "screens/measure.hpp"
#include "screens/phrases.hpp"
#include "screens/trail_geometry.hpp"
#include "session/in_words.hpp"
#include "session/signs.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using session::trail_edge_mm;
using session::TrailPlot;
using session::TrailStyle;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr double marker_mm = 1.8; // radius of what is now and of what comes next
constexpr double ghost_mm = 0.5;
// Of what was told the last are named, and before them stand signs alone: more words than these lie
// across the way and the range.
constexpr std::size_t most_named = 4, most_named_of_whole = 8;
constexpr double latest_mm = 28; // how far the words of the latest may stand, with a leader
constexpr double bar_mm = 3.2;   // from the panel's edge to the bars of the stages

// The words of the stages stand beside their bars.
double room_for_stages(const bench::TrailView& trail, double cap) {
  double widest = 0;
  for (const session::Pass& pass : trail.passes)
    widest = std::max(widest, width_mm(stage_words(pass), cap, false));
  return bar_mm + 2 + std::min(widest, cap * 8) + 3;
}

TrailStyle style_of(const Theme& t, const Rect& area, const bench::TrailView& trail, double cap) {
  const bool bars = trail.whole && !trail.passes.empty();
  const double left = area.x + (bars ? room_for_stages(trail, cap) : trail_edge_mm);
  const double top = area.y + cap * 3.4, bottom = area.bottom() - cap * 4.7;
  TrailStyle s;
  s.area = area;
  s.inside = {left, top, area.right() - trail_edge_mm - left, bottom - top};
  s.head = 1;
  s.foot = marker_mm + cap * 2.2; // for the word of a note just made
  s.cap_mm = cap;
  s.least_mm = cap::small;
  s.bar_x = area.x + bar_mm;
  s.trail_mm = trail_line_mm;
  s.fade_mm = trail_edge_mm - radius_mm; // keeps the panel's corners round
  s.ground = t.slab;
  s.ink = t.ink;
  s.quiet = t.quiet;
  s.rule = t.rule;
  s.right = t.right;
  s.right_ink = t.right_ink;
  s.width_mm = width_mm;
  s.fitted = one_line;
  return s;
}

double now_y(const TrailPlot& p) {
  return p.trail.points.empty() ? p.style.inside.bottom() : p.time.y(p.trail.points.back().clock);
}

void add(Sheet& sheet, const std::vector<Shape>& more) {
  sheet.shapes.insert(sheet.shapes.end(), more.begin(), more.end());
}

// Of the other batch: dashes cut out of the whole way, however short its steps are. Where it ended
// there is a ring; the first batch's end is a disc.
void draw_beside(Sheet& sheet, const TrailPlot& p) {
  if (p.trail.beside.empty()) return;
  const auto other = trail_pieces(p.trail.beside, p.flow, p.time);
  for (const auto& piece : other)
    for (const auto& dash : dashes(piece, trail_dash_mm))
      sheet.shapes.push_back(Polyline{dash, trail_line_mm, sheet.theme.ink, 0});
  if (!other.empty())
    sheet.shapes.push_back(
        Disc{other.back().back(), marker_mm * 0.75, sheet.theme.slab, sheet.theme.ink, 0.6});
  if (!p.pieces.empty())
    sheet.shapes.push_back(
        Disc{p.pieces.back().back(), marker_mm * 0.75, sheet.theme.ink, clear, 0});
}

constexpr double goes_on_mm = 4; // above which the way is dotted, where it began earlier

bool goes_on(const TrailPlot& p) { return !p.trail.whole && p.trail.from > 0; }

// What is older than all that is shown has left at the top: there the way is dotted, so that it
// does not seem to be cut.
void draw_way(Sheet& sheet, const TrailPlot& p) {
  Rect window = trail_window(p);
  sheet.shapes.push_back(Clip{window});
  for (const auto& piece : ghost_pieces(p.trail, p.flow, p.time))
    sheet.shapes.push_back(Polyline{piece, ghost_mm, sheet.theme.rule, 0});
  if (goes_on(p)) {
    sheet.shapes.push_back(Clip{{window.x, window.y, window.w, goes_on_mm}});
    for (const auto& piece : p.pieces)
      for (const auto& dash : dashes(piece, 0.9))
        sheet.shapes.push_back(Polyline{dash, p.style.trail_mm, p.style.ink, 0});
    window.y += goes_on_mm;
    window.h -= goes_on_mm;
    sheet.shapes.push_back(Clip{window});
  }
  add(sheet, trail_way(p));
}

bool inside(const Rect& r, Point p) {
  return p.x >= r.x && p.x <= r.right() && p.y >= r.y && p.y <= r.bottom();
}

Rect around(Point c, double r) { return {c.x - r, c.y - r, 2 * r, 2 * r}; }

// What the words of the flags have to keep clear of.
Taken taken_of(const TrailPlot& p) {
  Taken taken;
  taken.within = {p.style.inside.x - 2, p.style.inside.y - p.style.cap_mm * 0.4,
                  p.style.inside.w + 4, p.style.inside.h + p.style.cap_mm * 0.4};
  const auto line = [&](Point a, Point b) { taken.lines.push_back({a, b}); };
  const auto& pieces = p.pieces;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) line(pieces[i - 1].back(), pieces[i].front());
    for (std::size_t j = 1; j < pieces[i].size(); ++j) line(pieces[i][j - 1], pieces[i][j]);
  }
  for (const auto& piece : ghost_pieces(p.trail, p.flow, p.time))
    for (std::size_t j = 1; j < piece.size(); ++j) line(piece[j - 1], piece[j]);
  if (p.trail.band) {
    const auto [low, high] = band_edges(*p.trail.band);
    for (const double edge : {low, high})
      line({p.flow.x(edge), p.style.inside.y}, {p.flow.x(edge), p.style.inside.bottom()});
  }
  for (const auto& flow : {p.trail.now, p.trail.landing, p.trail.next})
    if (flow) taken.boxes.push_back(around({p.flow.x(*flow), now_y(p)}, marker_mm + 0.6));
  if (p.trail.now && p.trail.next)
    line({p.flow.x(*p.trail.now), now_y(p)}, {p.flow.x(*p.trail.next), now_y(p)});
  return taken;
}

// A sign is there as long as it is there whole.
bool leaves(const TrailPlot& p, Point at, double size) {
  return goes_on(p) && at.y < p.style.inside.y + size / 2;
}

struct Flags { // the latest first
  std::vector<Flag> flags;
  std::vector<const bench::TrailMark*> marks;
};

double furthest_mm(const TrailPlot& p) { // words further off seem to be another's
  return p.trail.whole ? 28 : 7;
}

// Where the paint is now, and the way from there to what comes next: drawn over all signs, and so
// none stands there.
std::vector<Point> kept_free(const TrailPlot& p, double size) {
  std::vector<Point> out;
  if (!p.trail.now || p.trail.gathered) return out;
  const double y = now_y(p), from = p.flow.x(*p.trail.now);
  const double to = p.flow.x(p.trail.landing.value_or(p.trail.next.value_or(*p.trail.now)));
  const double steps = std::ceil(std::abs(to - from) / size);
  for (double i = 0; i <= steps; ++i)
    out.push_back({from + (steps > 0 ? (to - from) * i / steps : 0), y});
  return out;
}

// Signs at one place stand beside each other.
Flags flags_of(const TrailPlot& p) {
  const double size = p.style.cap_mm * 1.1;
  Flags out;
  auto& [flags, marks] = out;
  std::vector<Point> signs = kept_free(p, size);
  const std::size_t most = p.trail.whole ? most_named_of_whole : most_named;
  for (auto mark = p.trail.marks.rbegin(); mark != p.trail.marks.rend(); ++mark) {
    const Point at{p.flow.x(mark->flow), p.time.y(mark->clock)};
    if (!inside(p.style.inside, at) || leaves(p, at, size)) continue;
    const Point beside = session::beside_others(at, size, signs);
    if (!inside(p.style.inside, beside)) continue; // no room is left for one more
    signs.push_back(beside);
    flags.push_back({signs.back(), size, marks.size() < most ? mark_words(*mark) : ""});
    marks.push_back(&*mark);
  }
  return out;
}

void draw_flags(Sheet& sheet, const TrailPlot& p, const Flags& all, Taken& taken) {
  const auto& flags = all.flags;
  const auto places = place_labels(flags, taken, p.style.cap_mm, furthest_mm(p), latest_mm);
  for (const auto& place : places)
    if (place) taken.boxes.push_back(place->box);
  for (std::size_t i = flags.size(); i-- > 0;)
    session::add_sign(sheet.shapes, all.marks[i]->what, flags[i].at, flags[i].size,
                      sign_colours(sheet.theme));
  for (std::size_t i = 0; i < flags.size(); ++i)
    if (places[i] && places[i]->leader)
      sheet.shapes.push_back(
          Polyline{{places[i]->leader->a, places[i]->leader->b}, 0.25, sheet.theme.quiet, 0});
  for (std::size_t i = 0; i < flags.size(); ++i)
    if (places[i])
      sheet.shapes.push_back(Text{places[i]->at, Anchor::left, p.style.cap_mm, false,
                                  sheet.theme.ink, flags[i].words, places[i]->box.w});
}

// Of dots, on the pads that lie beside the trail; a line leads to the moment.
void draw_photos(Sheet& sheet, const TrailPlot& p, Taken& taken) {
  for (const session::TrailPhoto& photo : p.trail.photos) {
    const bench::PadId id{bench::SharedPad::dot_photo, bench::key_of(photo.of)};
    const bench::Pad* pad = bench::pad_of(sheet.view.layout, id);
    if (!pad) continue;
    const Point at{p.flow.x(photo.flow), p.time.y(photo.clock)};
    const double clear_of_corners = 3;
    const Point end{pad->box.x, std::clamp(at.y, pad->box.y + clear_of_corners,
                                           pad->box.bottom() - clear_of_corners)};
    if (inside(p.style.inside, at)) {
      sheet.shapes.push_back(Polyline{{{at.x + 1.5, at.y}, end}, 0.25, sheet.theme.quiet, 0});
      taken.lines.push_back({at, end});
    }
    const Ground g = pad_box(sheet, *pad, plain(sheet.theme));
    framed(sheet, inset(pad->box, 1.4), bench::image_of(photo.of), g.ink);
  }
}

// Where the paint is, where it would land, and where the advice would bring it.
void draw_now(Sheet& sheet, const TrailPlot& p) {
  const Theme& t = sheet.theme;
  if (!p.trail.now || p.trail.gathered) return;
  const double y = now_y(p), x = p.flow.x(*p.trail.now);
  const auto on_scale = [&](double at) {
    return at >= p.style.inside.x && at <= p.style.inside.right();
  };
  const auto ring = [&](double flow, Colour colour, double thick) {
    sheet.shapes.push_back(Disc{{p.flow.x(flow), y}, marker_mm, clear, colour, thick});
  };
  if (p.trail.next && !p.trail.landing) {
    const double there = p.flow.x(*p.trail.next);
    if (on_scale(there)) ring(*p.trail.next, t.right_ink, 0.6);
    const double from = std::max(x, p.style.inside.x) + marker_mm;
    const double to = std::min(there - marker_mm, p.style.inside.right());
    if (to - from > 1.2) {
      sheet.shapes.push_back(Polyline{{{from, y}, {to - 0.5, y}}, 0.5, t.right_ink, 0});
      chevron(sheet, {to - 0.7, y}, 2.2, t.right_ink, true);
    }
  }
  if (p.trail.landing &&
      on_scale(p.flow.x(
          *p.trail.landing))) { // one drop is a small step: a plumb line shows it beside the marker
    const double to = p.flow.x(*p.trail.landing);
    sheet.shapes.push_back(
        Polyline{{{to, p.style.inside.y}, {to, p.style.inside.bottom()}}, 0.4, t.ink, 0.6});
    sheet.shapes.push_back(Disc{{to, y}, marker_mm, t.slab, t.ink, 0.5});
  }
  if (on_scale(x)) {
    sheet.shapes.push_back(Disc{{x, y}, marker_mm, t.ink, clear, 0});
    return;
  }
  const bool high = x > p.style.inside.right(); // off the scale: it points to where it is
  chevron(sheet, {high ? p.style.inside.right() - 2 : p.style.inside.x + 2, y}, 4, t.ink, high);
}

// Beside its line, as near its end as there is room; further off they seem to be another's, and
// close to where the paint is now they would name that.
void name_ghost(Sheet& sheet, const TrailPlot& p, Taken taken) {
  const std::string words = say(Say::trail_last_time);
  if (p.trail.now) taken.boxes.push_back(around({p.flow.x(*p.trail.now), now_y(p)}, 3 * marker_mm));
  const auto pieces = ghost_pieces(p.trail, p.flow, p.time);
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece)
    for (auto at = piece->rbegin(); at != piece->rend(); ++at) {
      if (!inside(p.style.inside, *at)) continue;
      const auto place = place_beside({*at, ghost_mm, words}, taken, p.style.cap_mm);
      if (!place) continue;
      sheet.shapes.push_back(Text{place->at, Anchor::left, p.style.cap_mm, false, sheet.theme.ink,
                                  words, place->box.w});
      return;
    }
}

void draw_gathered(Sheet& sheet, const TrailPlot& p, Taken& taken) {
  if (!p.trail.gathered || p.trail.points.empty()) return;
  const auto at_ms = p.trail.opened_at + static_cast<std::int64_t>(*p.trail.gathered * 1000);
  const Point at{p.flow.x(p.trail.points.back().flow), p.time.y(*p.trail.gathered)};
  const double thick = marker_mm * 0.75;
  sheet.shapes.push_back(Disc{at, thick, sheet.theme.ink, clear, 0});
  const Flag flag{
      at, 2 * thick,
      say(Say::trail_gathered,
          {time_of_day(at_ms, p.trail.offset_min.value_or(sheet.view.utc_offset_min))})};
  const auto place = place_labels({flag}, taken, p.style.cap_mm)[0];
  if (!place) return;
  taken.boxes.push_back(place->box);
  sheet.shapes.push_back(Text{place->at, Anchor::left, p.style.cap_mm, false, sheet.theme.ink,
                              flag.words, place->box.w});
}

}

void draw_trail(Sheet& sheet, const Rect& area, const bench::TrailView& trail, double cap_mm) {
  const Theme& t = sheet.theme;
  panel(sheet, area);
  const TrailStyle style = style_of(t, area, trail, cap_mm);
  const TrailPlot p = trail_plot(trail, style);
  add(sheet, trail_ground(p));
  if (trail.points.empty() && trail.ghost.empty()) { // which would strike the words through
    const Rect middle{p.style.inside.x + 0.15 * p.style.inside.w,
                      p.style.inside.centre().y - 4 * cap_mm, 0.7 * p.style.inside.w, 8 * cap_mm};
    labels(sheet, middle, plain(sheet.theme),
           {{say(words::SessionSay::trail_empty), {cap_mm, false, cap_mm}, false, 3}});
  }
  draw_way(sheet, p);
  draw_beside(sheet, p);
  sheet.shapes.push_back(Clip{});
  add(sheet, trail_stages(p));
  Taken taken = taken_of(p);
  const Flags flags = flags_of(p);
  for (const Flag& flag : flags.flags) taken.boxes.push_back(around(flag.at, flag.size / 2));
  draw_photos(sheet, p, taken);
  draw_gathered(sheet, p, taken);
  draw_flags(sheet, p, flags, taken);
  name_ghost(sheet, p, taken);
  draw_now(sheet, p);
}

}
