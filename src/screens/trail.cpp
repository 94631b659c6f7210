#include "screens/trail.hpp"

#include "screens/measure.hpp"
#include "screens/phrases.hpp"
#include "screens/trail_geometry.hpp"
#include "session/in_words.hpp"
#include "words/session_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using Say = words::SlabSay;
using words::say;

namespace {

constexpr double marker_mm = 2.0; // radius of what is now and of what comes next
constexpr double ghost_mm = 0.5;
constexpr double bar_mm = 3.2; // from the panel's edge to the bars of the stages
constexpr double edge_mm = 4;  // from the panel's edge to the scale's ends

struct Plot {
  const bench::TrailView& trail;
  Rect area;   // the panel
  Rect inside; // where the trail runs
  double cap;
  FlowScale flow;
  TimeScale time;
  double now_y() const {
    return trail.points.empty() ? inside.bottom() : time.y(trail.points.back().clock);
  }
};

// The words of the stages stand beside their bars.
double room_for_stages(const bench::TrailView& trail, double cap) {
  double widest = 0;
  for (const session::Pass& pass : trail.passes)
    widest = std::max(widest, width_mm(stage_words(pass), cap, false));
  return bar_mm + 2 + std::min(widest, cap * 8) + 3;
}

Plot plot_of(const Rect& area, const bench::TrailView& trail, double cap) {
  const bool bars = trail.whole && !trail.passes.empty();
  const double left = area.x + (bars ? room_for_stages(trail, cap) : edge_mm);
  const double top = area.y + cap * 3.4, bottom = area.bottom() - cap * 4.7;
  const Rect inside{left, top, area.right() - edge_mm - left, bottom - top};
  const double air = marker_mm + cap * 2.2; // for the word of a note just made
  return {trail,
          area,
          inside,
          cap,
          flow_scale(trail, inside.x, inside.right()),
          time_scale(trail, inside.y + 1, inside.bottom() - air)};
}

void draw_band(Sheet& sheet, const Plot& p) {
  const Theme& t = sheet.theme;
  if (!p.trail.band) return;
  const double fade = edge_mm - radius_mm; // keeps the panel's corners round
  const Rect r{p.inside.x - fade, p.area.y, p.inside.w + 2 * fade, p.inside.bottom() - p.area.y};
  sheet.shapes.push_back(Gradient{r, band_stops(*p.trail.band, p.flow, fade, t.slab, t.right)});
  const auto [low, high] = band_edges(*p.trail.band);
  for (const double edge : {low, high})
    sheet.shapes.push_back(Line{{{p.flow.x(edge), p.inside.y}, {p.flow.x(edge), p.inside.bottom()}},
                                0.3,
                                t.right_ink,
                                0.9});
}

// The captions above; where the band lies at one end, that end's word steps aside.
void draw_captions(Sheet& sheet, const Plot& p) {
  const Theme& t = sheet.theme;
  const double y = p.area.y + p.cap + 3.2, air = 3;
  double from = p.inside.right(), to = p.inside.x; // of the word in the middle
  if (p.trail.band) {
    const std::string words = session::right_words(p.trail.band->batches);
    const double half = width_mm(words, p.cap, true) / 2;
    const double x = std::clamp(p.flow.x(std::exp(p.trail.band->middle)), p.inside.x + half,
                                p.inside.right() - half);
    sheet.shapes.push_back(Text{{x, y}, Anchor::centre, p.cap, true, t.right_ink, words, 2 * half});
    from = x - half;
    to = x + half;
  }
  const std::string sticky = say(words::SessionSay::feel_too_sticky),
                    runny = say(words::SessionSay::feel_too_runny);
  if (p.area.x + edge_mm + width_mm(sticky, p.cap, false) + air < from)
    write(sheet, {p.area.x + edge_mm, y}, Anchor::left, {p.cap, false, p.cap}, t.quiet, sticky,
          from);
  if (p.inside.right() - width_mm(runny, p.cap, false) - air > to)
    write(sheet, {p.inside.right(), y}, Anchor::right, {p.cap, false, p.cap}, t.quiet, runny, 60);
}

void draw_axis(Sheet& sheet, const Plot& p) {
  const Theme& t = sheet.theme;
  const double y = p.inside.bottom();
  sheet.shapes.push_back(Line{{{p.inside.x, y}, {p.inside.right(), y}}, 0.3, t.quiet, 0});
  for (const Tick& tick : ticks(p.flow, p.cap)) {
    const double x = p.flow.x(tick.flow);
    sheet.shapes.push_back(Line{{{x, y}, {x, y + 1.3}}, 0.3, t.quiet, 0});
    const double half = width_mm(tick.label, p.cap, false) / 2;
    const double at = std::clamp(x, p.area.x + 2 + half, p.area.right() - 2 - half);
    sheet.shapes.push_back(Text{
        {at, y + 2.4 + p.cap}, Anchor::centre, p.cap, false, t.quiet, tick.label, 2 * half + 1});
  }
  write(sheet, {p.inside.right(), p.area.bottom() - p.cap * 0.8}, Anchor::right,
        {p.cap, false, p.cap}, t.quiet, say(words::SessionSay::trail_caption), p.inside.w);
}

void draw_stages(Sheet& sheet, const Plot& p) {
  if (!p.trail.whole) return;
  const double x = p.area.x + bar_mm;
  double said = p.inside.y - p.cap; // the lowest word so far
  for (const session::Pass& pass : p.trail.passes) {
    if (pass.stage == session::Stage::resting) continue;
    const double top = p.time.y(pass.start), end = p.time.y(pass.end.value_or(p.trail.to));
    const double bottom = std::max(end - 1.5, top + 0.6);
    sheet.shapes.push_back(Line{{{x, top}, {x, bottom}}, trail_line_mm, sheet.theme.ink, 0});
    const double y = (top + bottom) / 2 + p.cap / 2;
    if (y < said + p.cap * 1.5) continue;
    write(sheet, {x + 2, y}, Anchor::left, {p.cap, false, cap::small}, sheet.theme.quiet,
          stage_words(pass), p.inside.x - x - 3);
    said = y;
  }
}

void draw_pieces(Sheet& sheet, const std::vector<std::vector<Point>>& pieces) {
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) // nobody was there: the way between is not known
      sheet.shapes.push_back(
          Line{{pieces[i - 1].back(), pieces[i].front()}, 0.4, sheet.theme.rule, 0.8});
    sheet.shapes.push_back(Line{pieces[i], trail_line_mm, sheet.theme.ink, 0});
  }
}

// Of the other batch: dashes cut out of the whole way, however short its steps are. Where it ended
// there is a ring; the first batch's end is a disc.
void draw_beside(Sheet& sheet, const Plot& p) {
  if (p.trail.beside.empty()) return;
  const auto other = trail_pieces(p.trail.beside, p.flow, p.time);
  for (const auto& piece : other)
    for (const auto& dash : dashes(piece, trail_dash_mm))
      sheet.shapes.push_back(Line{dash, trail_line_mm, sheet.theme.ink, 0});
  if (!other.empty())
    sheet.shapes.push_back(
        Disc{other.back().back(), marker_mm * 0.75, sheet.theme.slab, sheet.theme.ink, 0.6});
  const auto own = trail_pieces(p.trail.points, p.flow, p.time);
  if (!own.empty())
    sheet.shapes.push_back(Disc{own.back().back(), marker_mm * 0.75, sheet.theme.ink, clear, 0});
}

struct MarkShape {
  Sheet& sheet;
  Point at;
  double size;
  void operator()(session::Feel feel) const { feel_sign(sheet, at, size, feel); }
  void operator()(session::Specks specks) const {
    sheet.shapes.push_back(Disc{at, size * 0.52, sheet.theme.slab, sheet.theme.ink, 0.34});
    const int count = specks == session::Specks::many ? 3 : specks == session::Specks::few ? 1 : 0;
    constexpr Point places[]{{0, -0.2}, {0.2, 0.14}, {-0.2, 0.14}};
    for (int i = 0; i < count; ++i)
      sheet.shapes.push_back(Disc{{at.x + places[i].x * size, at.y + places[i].y * size},
                                  size * 0.12,
                                  sheet.theme.ink,
                                  clear,
                                  0});
  }
  void operator()(session::TroubleKind) const { caution_sign(sheet, at, size * 1.15); }
};

bool inside(const Rect& r, Point p) {
  return p.x >= r.x && p.x <= r.right() && p.y >= r.y && p.y <= r.bottom();
}

Rect around(Point c, double r) { return {c.x - r, c.y - r, 2 * r, 2 * r}; }

// What the words of the flags have to keep clear of.
Taken taken_of(const Plot& p, const std::vector<std::vector<Point>>& pieces) {
  Taken taken;
  taken.within = {p.inside.x - 2, p.inside.y - p.cap * 0.4, p.inside.w + 4,
                  p.inside.h + p.cap * 0.4};
  const auto line = [&](Point a, Point b) { taken.lines.push_back({a, b}); };
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i > 0) line(pieces[i - 1].back(), pieces[i].front());
    for (std::size_t j = 1; j < pieces[i].size(); ++j) line(pieces[i][j - 1], pieces[i][j]);
  }
  for (const auto& piece : ghost_pieces(p.trail, p.flow, p.time))
    for (std::size_t j = 1; j < piece.size(); ++j) line(piece[j - 1], piece[j]);
  if (p.trail.band) {
    const auto [low, high] = band_edges(*p.trail.band);
    for (const double edge : {low, high})
      line({p.flow.x(edge), p.inside.y}, {p.flow.x(edge), p.inside.bottom()});
  }
  for (const auto& flow : {p.trail.now, p.trail.landing, p.trail.next})
    if (flow) taken.boxes.push_back(around({p.flow.x(*flow), p.now_y()}, marker_mm + 0.6));
  if (p.trail.now && p.trail.next)
    line({p.flow.x(*p.trail.now), p.now_y()}, {p.flow.x(*p.trail.next), p.now_y()});
  return taken;
}

void draw_flags(Sheet& sheet, const Plot& p, Taken taken) {
  const double size = p.cap * 1.1;
  std::vector<Flag> flags;
  std::vector<const bench::TrailMark*> marks;
  for (auto mark = p.trail.marks.rbegin(); mark != p.trail.marks.rend(); ++mark) {
    const Point at{p.flow.x(mark->flow), p.time.y(mark->clock)};
    if (!inside(p.inside, at)) continue;
    flags.push_back({at, size, mark_words(*mark)});
    marks.push_back(&*mark);
  }
  const auto places = place_labels(flags, std::move(taken), p.cap);
  for (std::size_t i = flags.size(); i-- > 0;)
    std::visit(MarkShape{sheet, flags[i].at, size}, marks[i]->what);
  for (std::size_t i = 0; i < flags.size(); ++i)
    if (places[i] && places[i]->leader)
      sheet.shapes.push_back(
          Line{{places[i]->leader->a, places[i]->leader->b}, 0.25, sheet.theme.quiet, 0});
  for (std::size_t i = 0; i < flags.size(); ++i)
    if (places[i])
      sheet.shapes.push_back(Text{places[i]->at, Anchor::left, p.cap, false, sheet.theme.ink,
                                  flags[i].words, places[i]->box.w});
}

// Where the paint is, where it would land, and where the advice would bring it.
void draw_now(Sheet& sheet, const Plot& p) {
  const Theme& t = sheet.theme;
  if (!p.trail.now || p.trail.gathered) return;
  const double y = p.now_y(), x = p.flow.x(*p.trail.now);
  const auto ring = [&](double flow, Colour colour, double thick) {
    sheet.shapes.push_back(Disc{{p.flow.x(flow), y}, marker_mm, clear, colour, thick});
  };
  if (p.trail.next && !p.trail.landing) {
    const double there = p.flow.x(*p.trail.next);
    const bool on_scale = there <= p.inside.right();
    if (on_scale) ring(*p.trail.next, t.right_ink, 0.6);
    const double from = x + marker_mm, to = on_scale ? there - marker_mm : p.inside.right();
    if (to - from > 1.2) {
      sheet.shapes.push_back(Line{{{from, y}, {to - 0.5, y}}, 0.5, t.right_ink, 0});
      chevron(sheet, {to - 0.7, y}, 2.2, t.right_ink, true);
    }
  }
  if (p.trail.landing) { // one drop is a small step: a plumb line shows it beside the marker
    const double to = p.flow.x(*p.trail.landing);
    sheet.shapes.push_back(Line{{{to, p.inside.y}, {to, p.inside.bottom()}}, 0.4, t.ink, 0.6});
    sheet.shapes.push_back(Disc{{to, y}, marker_mm, t.slab, t.ink, 0.5});
  }
  if (x >= p.inside.x && x <= p.inside.right()) {
    sheet.shapes.push_back(Disc{{x, y}, marker_mm, t.ink, clear, 0});
    return;
  }
  const bool high = x > p.inside.right(); // off the scale: it points to where it is
  chevron(sheet, {high ? p.inside.right() - 2 : p.inside.x + 2, y}, 4, t.ink, high);
}

void draw_gathered(Sheet& sheet, const Plot& p, Taken& taken) {
  if (!p.trail.gathered || p.trail.points.empty()) return;
  const auto at_ms = p.trail.opened_at + static_cast<std::int64_t>(*p.trail.gathered * 1000);
  const Point at{p.flow.x(p.trail.points.back().flow), p.time.y(*p.trail.gathered)};
  const double thick = marker_mm * 0.75;
  sheet.shapes.push_back(Disc{at, thick, sheet.theme.ink, clear, 0});
  const Flag flag{at, 2 * thick,
                  say(Say::trail_gathered, {time_of_day(at_ms, sheet.view.utc_offset_min)})};
  const auto place = place_labels({flag}, taken, p.cap)[0];
  if (!place) return;
  taken.boxes.push_back(place->box);
  sheet.shapes.push_back(
      Text{place->at, Anchor::left, p.cap, false, sheet.theme.ink, flag.words, place->box.w});
}

}

void draw_trail(Sheet& sheet, const Rect& area, const bench::TrailView& trail, double cap_mm) {
  const Theme& t = sheet.theme;
  panel(sheet, area);
  const Plot p = plot_of(area, trail, cap_mm);
  draw_band(sheet, p);
  draw_captions(sheet, p);
  draw_axis(sheet, p);
  if (trail.points.empty()) { // on a ground of its own: the band's edges would strike it through
    const Rect ground{p.inside.x + 0.15 * p.inside.w, p.inside.centre().y - 4 * cap_mm,
                      0.7 * p.inside.w, 8 * cap_mm};
    sheet.shapes.push_back(Box{ground, 0, t.slab, clear, 0});
    labels(sheet, ground, plain(sheet.theme),
           {{say(words::SessionSay::trail_empty), {cap_mm, false, cap_mm}, true, 3}});
  }
  const auto pieces = trail_pieces(trail.points, p.flow, p.time);
  sheet.shapes.push_back(Clip{{p.inside.x - 2, p.inside.y, p.inside.w + 4, p.inside.h}});
  for (const auto& piece : ghost_pieces(trail, p.flow, p.time))
    sheet.shapes.push_back(Line{piece, ghost_mm, t.rule, 0});
  draw_pieces(sheet, pieces);
  draw_beside(sheet, p);
  sheet.shapes.push_back(Clip{});
  draw_stages(sheet, p);
  Taken taken = taken_of(p, pieces);
  draw_gathered(sheet, p, taken);
  draw_flags(sheet, p, std::move(taken));
  draw_now(sheet, p);
}

}
