#include "paper/trail.hpp"

#include "paper/measure.hpp"
#include "paper/palette.hpp"
#include "paper/svg.hpp"
#include "session/signs.hpp"
#include "session/trail_shapes.hpp"
#include "words/moments.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace paper {

using namespace session;
using namespace session::shapes;
using Say = words::SessionSay;
using words::say;

namespace {

// Across, in mm: the stages, the plot, and what is told beside it.
constexpr double bar_x = 1, plot_left = 23, plot_right = 112, told_x = 118;
constexpr double top = 9, below = 10.5; // of the plot: captions above it, the axis under it
constexpr double line_step = 4.1;       // from one told thing to the next
constexpr double least = 106, most = 190;
constexpr double letter = 2.75, small = 2.5; // font sizes
constexpr double cap = letter * capital_em;
constexpr double sign_mm = 2.6;

double width_mm(std::string_view words, double cap_mm, bool bold) {
  return width_em(words, bold) * cap_mm / capital_em;
}

Text fitted(Text text, double least_mm) {
  const double room_em = text.max_mm * capital_em; // of letters whose capitals are 1 mm high
  const double wide_em = width_em(text.words, text.bold);
  if (wide_em * text.cap_mm > room_em) text.cap_mm = std::max(least_mm, room_em / wide_em);
  text.words = shortened(text.words, room_em / text.cap_mm + 1e-9);
  return text;
}

TrailStyle style_of(double bottom) {
  TrailStyle s;
  s.inside = {plot_left, top, plot_right - plot_left, bottom - top};
  s.area = {plot_left - trail_edge_mm, 1, s.inside.w + 2 * trail_edge_mm, bottom + below - 1};
  s.head = s.foot = 2;
  s.cap_mm = cap;
  s.least_mm = small * capital_em;
  s.bar_x = bar_x;
  s.trail_mm = 0.6;
  s.ground = ink::paper;
  s.ink = ink::text;
  s.quiet = ink::quiet;
  s.rule = ink::rule;
  s.right = ink::right;
  s.right_ink = ink::right_text;
  s.width_mm = width_mm;
  s.fitted = fitted;
  return s;
}

const SignColours sign_colours{ink::paper, ink::text,    ink::right, ink::sticky,
                               ink::runny, ink::caution, ink::text};

struct Plot {
  const Handed& handed;
  std::vector<TimelineItem> told;
  double bottom;
  TrailView view;
};

double on_plot(double x) { return std::clamp(x, plot_left, plot_right); }

Text words_at(double x, double y, Colour colour, const std::string& words) {
  return {{x, y}, Anchor::left, cap, false, colour, words};
}

struct Mark {
  std::vector<Shape>& out;
  Point at;
  void operator()(Put) const { out.push_back(Disc{at, 0.55, ink::paper, ink::text, 0.25}); }
  void operator()(OffSlab) const { out.push_back(Disc{at, 1.1, ink::text}); }
  template <class Note>
  void operator()(Note note) const {
    add_sign(out, note, at, sign_mm, sign_colours);
  }
};

void add_told_line(std::vector<Shape>& out, const Plot& p, const TimelineItem& t, double y) {
  const int offset = offset_of(p.handed, t.line);
  const bool same_day = words::day_of(t.at, offset) ==
                        words::day_of(session::made_at(p.handed.batch), offset_of(p.handed));
  const std::string when =
      same_day ? words::time_of_day(t.at, offset) : words::date_and_time(t.at, offset);
  const double base = y + cap / 2, sign_x = told_x + (same_day ? 10.5 : 25.5);
  out.push_back(words_at(told_x, base, ink::quiet, when));
  const bool put = std::holds_alternative<Put>(t.sign);
  if (!put) std::visit(Mark{out, {sign_x, y}}, t.sign);
  const double x = sign_x + 2.6;
  out.push_back(words_at(x, base, put ? ink::quiet : ink::text,
                         shortened(t.words, (trail_width_mm - x) / letter)));
}

// What is told stands at its own height as far as there is room, and a thin line leads there: lines
// under the way, signs upon it.
struct Beside {
  std::vector<Shape> lines, signs;
};

Beside told_beside(const Plot& p, const TrailPlot& plot) {
  std::vector<double> wanted;
  for (const TimelineItem& t : p.told) wanted.push_back(plot.time.y(t.clock));
  const auto heights = spread(wanted, line_step, top + line_step / 2, p.bottom);
  Beside out;
  for (std::size_t i = 0; i < p.told.size(); ++i) {
    const TimelineItem& t = p.told[i];
    const double y = wanted[i];
    std::vector<Point> line{{plot_right + 0.5, y}, {told_x - 1.5, heights[i]}};
    if (t.flow && std::isfinite(*t.flow) && *t.flow > 0) {
      const Point at{on_plot(plot.flow.x(*t.flow)), y};
      line.insert(line.begin(), at);
      std::visit(Mark{out.signs, at}, t.sign);
    }
    out.lines.push_back(shapes::Polyline{line, 0.15, ink::rule});
    add_told_line(out.signs, p, t, heights[i]);
  }
  return out;
}

Plot plot(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::vector<TimelineItem> all = timeline(batch);
  const auto room = static_cast<std::size_t>((most - top - below) / line_step);
  if (all.size() > room) all.resize(room);
  const double plot_high =
      std::max(least, top + below + line_step * static_cast<double>(all.size()));
  TrailView view = trail_view(batch);
  view.band = session::band_of(batch, handed.ranges ? *handed.ranges : session::untrained_ranges());
  return {handed, std::move(all), plot_high - below, std::move(view)};
}

std::vector<Shape> shapes_of(const Plot& p) {
  const TrailStyle style = style_of(p.bottom);
  const TrailPlot plot = trail_plot(p.view, style);
  std::vector<Shape> out = trail_ground(plot);
  const auto add = [&](const std::vector<Shape>& more) {
    out.insert(out.end(), more.begin(), more.end());
  };
  add(trail_stages(plot));
  if (p.view.points.empty())
    out.push_back(
        Text{style.inside.centre(), Anchor::centre, cap, false, ink::quiet, say(Say::trail_empty)});
  const Beside beside = told_beside(p, plot);
  add(beside.lines);
  out.push_back(Clip{trail_window(plot)});
  add(trail_way(plot));
  out.push_back(Clip{});
  add(beside.signs);
  return out;
}

}

std::vector<double> spread(std::vector<double> wanted, double step, double top_y, double bottom) {
  double free = top_y;
  for (double& y : wanted) {
    y = std::max(y, free);
    free = y + step;
  }
  double end = bottom;
  for (auto y = wanted.rbegin(); y != wanted.rend() && *y > end; ++y) {
    *y = end;
    end -= step;
  }
  free = top_y; // what was pushed out above comes back, if need be below the bottom
  for (double& y : wanted) {
    y = std::max(y, free);
    free = y + step;
  }
  return wanted;
}

Trail trail(const Handed& handed) {
  const Plot p = plot(handed);
  std::vector<TimelineItem> rest = timeline(handed.batch);
  rest.erase(rest.begin(), rest.begin() + static_cast<std::ptrdiff_t>(p.told.size()));
  const std::string name = handed.place > 0 ? "trail-" + std::to_string(handed.place) : "trail";
  return {drawing(name, {trail_width_mm, p.bottom + below}, shapes_of(p)), std::move(rest)};
}

}
