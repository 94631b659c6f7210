#include "paper/trail.hpp"

#include "paint/flow_scale.hpp"
#include "paper/measure.hpp"
#include "paper/palette.hpp"
#include "session/in_words.hpp"
#include "session/trail.hpp"
#include "words/moments.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace paper {

using namespace session;
using Say = words::SessionSay;
using words::say;

namespace {

// Across, in mm: the stages, the plot, and what is told beside it.
constexpr double certain = 0.9; // the chance that the whole colour stands for
constexpr double bar_x = 1, plot_left = 23, plot_right = 112, told_x = 118;
constexpr double top = 9, below = 10.5; // of the plot: captions above it, the axis under it
constexpr double line = 4.1;            // from one told thing to the next
constexpr double least = 106, most = 190;
constexpr double letter = 2.75, small = 2.5; // font sizes

struct Plot {
  const Handed& handed;
  std::optional<paint::Band> band;
  std::vector<Told> told;
  double bottom;
  paint::FlowScale flow;
  TimeScale time;
};

Attributes at(double x, double y, Attributes more = {}) {
  Attributes all{{"x", mm(x)}, {"y", mm(y)}};
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

Markup words_at(double x, double y, const char* anchor, const char* colour, double size,
                std::string_view words) {
  return element("text",
                 at(x, y, {{"text-anchor", anchor}, {"fill", colour}, {"font-size", mm(size)}}),
                 words);
}

Markup stroke(double x1, double y1, double x2, double y2, const char* colour, double wide,
              const char* dash = "none") {
  return element("line", {{"x1", mm(x1)},
                          {"y1", mm(y1)},
                          {"x2", mm(x2)},
                          {"y2", mm(y2)},
                          {"stroke", colour},
                          {"stroke-width", mm(wide)},
                          {"stroke-dasharray", dash}});
}

Markup polyline(const std::vector<std::pair<double, double>>& points, const char* colour,
                double wide) {
  std::string path;
  for (const auto& [x, y] : points) path += (path.empty() ? "M" : "L") + mm(x) + " " + mm(y);
  return element("path", {{"d", path},
                          {"fill", "none"},
                          {"stroke", colour},
                          {"stroke-width", mm(wide)},
                          {"stroke-linejoin", "round"},
                          {"stroke-linecap", "round"}});
}

double on_plot(double x) { return std::clamp(x, plot_left, plot_right); }

// By the chance that a hand would call it right: faint where little is known.
Markup band_of(const Plot& p) {
  if (!p.band) return {};
  constexpr int steps = 40;
  std::vector<Markup> stops;
  for (int i = 0; i <= steps; ++i) {
    const double x = plot_left + (plot_right - plot_left) * i / steps;
    const double share = paint::chance_right(*p.band, p.flow.flow(x)) / certain;
    const bool end = i == 0 || i == steps; // no edge shows where none is
    stops.push_back(element("stop", {{"offset", mm(i / double{steps})},
                                     {"stop-color", ink::right},
                                     {"stop-opacity", end ? "0" : mm(std::min(share, 1.0))}}));
  }
  Markup out = element("defs", {}, {element("linearGradient", {{"id", "wanted"}}, stops)});
  out += element("rect", at(plot_left, top - 7,
                            {{"width", mm(plot_right - plot_left)},
                             {"height", mm(p.bottom - top + 7)},
                             {"fill", "url(#wanted)"}}));
  const auto [low, high] = paint::band_edges(*p.band);
  for (const double edge : {low, high})
    out += stroke(p.flow.x(edge), top, p.flow.x(edge), p.bottom, ink::right_text, 0.2, "0.9 0.9");
  return out;
}

// Where the band lies at one end, that end's word steps aside.
Markup captions(const Plot& p) {
  Markup out;
  const double y = top - 2.6;
  double from = plot_right, to = plot_left; // of the word in the middle
  if (p.band) {
    const std::string wanted = session::right_words(p.band->batches);
    const double half = width_em(wanted, true) * letter / 2;
    const double x =
        std::clamp(p.flow.x(std::exp(p.band->middle)), plot_left + half, plot_right - half);
    out += element("g", {{"font-weight", "bold"}},
                   {words_at(x, y, "middle", ink::right_text, letter, wanted)});
    from = x - half;
    to = x + half;
  }
  const std::string sticky = say(Say::feel_too_sticky), runny = say(Say::feel_too_runny);
  if (plot_left + width_em(sticky, false) * letter + 2 < from)
    out += words_at(plot_left, y, "start", ink::quiet, letter, sticky);
  if (plot_right - width_em(runny, false) * letter - 2 > to)
    out += words_at(plot_right, y, "end", ink::quiet, letter, runny);
  return out;
}

Markup axis(const Plot& p) {
  Markup out = stroke(plot_left, p.bottom, plot_right, p.bottom, ink::quiet, 0.25);
  const auto width = [](std::string_view label) { return width_em(label, false) * small; };
  for (const paint::Tick& tick : paint::ticks(p.flow, width, small)) {
    const double x = p.flow.x(tick.flow);
    out += stroke(x, p.bottom, x, p.bottom + 1.1, ink::quiet, 0.25);
    out += words_at(x, p.bottom + 4, "middle", ink::quiet, small, tick.label);
  }
  out += words_at((plot_left + plot_right) / 2, p.bottom + 8.6, "middle", ink::quiet, small,
                  say(Say::trail_caption));
  return out;
}

Markup stages(const Plot& p) {
  Markup out;
  double said = -1e9; // the lowest word so far
  for (const Pass& pass : p.handed.batch.passes) {
    if (pass.stage == Stage::resting) continue;
    const double from = p.time.y(pass.start);
    const double to = std::max(p.time.y(pass.end.value_or(p.handed.batch.clock)) - 0.7, from + 0.5);
    out += stroke(bar_x, from, bar_x, to, ink::text, 0.8);
    const double y = (from + to) / 2 + small * 0.36;
    if (y < said + small * 1.25) continue;
    const std::string name = stage_words(pass);
    out += words_at(bar_x + 1.8, y, "start", ink::quiet, small,
                    shortened(name, (plot_left - bar_x - 3) / small));
    said = y;
  }
  return out;
}

Markup path(const Plot& p) {
  Markup out;
  std::vector<std::pair<double, double>> piece;
  const auto end_piece = [&] {
    if (!piece.empty()) out += polyline(piece, ink::text, 0.6);
  };
  for (const TrailPoint& point : p.handed.batch.trail) {
    if (!std::isfinite(point.flow)) continue;
    const double x = on_plot(p.flow.x(point.flow)), y = p.time.y(point.clock);
    if (point.after_gap && !piece.empty()) { // nobody was there: the way between is not known
      end_piece();
      out += stroke(piece.back().first, piece.back().second, x, y, ink::rule, 0.3, "0.9 0.9");
      piece.clear();
    }
    piece.push_back({x, y});
  }
  end_piece();
  return out;
}

struct Mark {
  double x, y;
  static constexpr double size = 2.6;

  Attributes outlined(Attributes a, const char* fill) const {
    a.insert(a.end(), {{"fill", fill}, {"stroke", ink::text}, {"stroke-width", "0.25"}});
    return a;
  }
  Markup disc(double cx, double cy, double r, const char* fill) const {
    return element("circle", outlined({{"cx", mm(cx)}, {"cy", mm(cy)}, {"r", mm(r)}}, fill));
  }
  Markup operator()(Put) const { return disc(x, y, 0.55, ink::paper); }
  Markup operator()(Left) const { return disc(x, y, 1.1, ink::text); }
  Markup operator()(Feel feel) const {
    const char* fill = feel == Feel::right  ? ink::right
                       : feel < Feel::right ? ink::sticky
                                            : ink::runny;
    return element("rect", outlined(at(x - size / 2, y - size / 2,
                                       {{"width", mm(size)}, {"height", mm(size)}, {"rx", "0.5"}}),
                                    fill));
  }
  Markup operator()(Specks specks) const {
    Markup out = disc(x, y, size / 2, ink::paper);
    const int count = specks == Specks::many ? 3 : specks == Specks::few ? 1 : 0;
    constexpr double places[][2]{{0, -0.5}, {0.5, 0.35}, {-0.5, 0.35}};
    for (int i = 0; i < count; ++i)
      out += element("circle", {{"cx", mm(x + places[i][0])},
                                {"cy", mm(y + places[i][1])},
                                {"r", "0.28"},
                                {"fill", ink::text}});
    return out;
  }
  Markup operator()(TroubleKind) const {
    const std::string corners = mm(x) + "," + mm(y - 1.5) + " " + mm(x + 1.6) + "," + mm(y + 1.3) +
                                " " + mm(x - 1.6) + "," + mm(y + 1.3);
    return element("polygon", outlined({{"points", corners}}, ink::caution));
  }
};

Markup told_line(const Plot& p, const Told& t, double y) {
  const int offset = offset_of(p.handed, t.line);
  const bool same_day =
      words::day_of(t.at, offset) == words::day_of(p.handed.batch.opened_at, offset_of(p.handed));
  const std::string when =
      same_day ? words::time_of_day(t.at, offset) : words::date_and_time(t.at, offset);
  const double base = y + letter * 0.36, sign_x = told_x + (same_day ? 10.5 : 25.5);
  Markup out = words_at(told_x, base, "start", ink::quiet, letter, when);
  const bool put = std::holds_alternative<Put>(t.sign);
  if (!put) out += std::visit(Mark{sign_x, y}, t.sign);
  const double x = sign_x + 2.6;
  out += words_at(x, base, "start", put ? ink::quiet : ink::text, letter,
                  shortened(t.words, (trail_width_mm - x) / letter));
  return out;
}

// What is told stands at its own height as far as there is room, and a thin line leads there.
Markup told_beside(const Plot& p) {
  std::vector<double> wanted;
  for (const Told& t : p.told) wanted.push_back(p.time.y(t.clock));
  const auto heights = spread(wanted, line, top + line / 2, p.bottom);
  Markup lines, marks;
  for (std::size_t i = 0; i < p.told.size(); ++i) {
    const Told& t = p.told[i];
    const double y = wanted[i];
    if (t.flow && std::isfinite(*t.flow) && *t.flow > 0) {
      const double x = on_plot(p.flow.x(*t.flow));
      lines +=
          polyline({{x, y}, {plot_right + 0.5, y}, {told_x - 1.5, heights[i]}}, ink::rule, 0.15);
      marks += std::visit(Mark{x, y}, t.sign);
    } else {
      lines += polyline({{plot_right + 0.5, y}, {told_x - 1.5, heights[i]}}, ink::rule, 0.15);
    }
    marks += told_line(p, t, heights[i]);
  }
  lines += path(p);
  lines += marks;
  return lines;
}

Plot plot(const Handed& handed) {
  const Batch& batch = handed.batch;
  std::vector<Told> all = told(batch);
  const auto room = static_cast<std::size_t>((most - top - below) / line);
  if (all.size() > room) all.resize(room);
  const double plot_high = std::max(least, top + below + line * static_cast<double>(all.size()));
  const double bottom = plot_high - below;
  std::vector<double> flows;
  for (const TrailPoint& point : batch.trail) flows.push_back(point.flow);
  const auto band =
      session::band_of(batch, handed.ranges ? *handed.ranges : session::nobody_taught());
  return {handed,
          band,
          std::move(all),
          bottom,
          paint::flow_scale(band, flows, plot_left, plot_right),
          time_scale(batch.trail, 0, batch.clock, true, top + 2, bottom - 2)};
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
  Markup inside = band_of(p);
  inside += captions(p);
  inside += axis(p);
  inside += stages(p);
  if (handed.batch.trail.empty())
    inside += words_at((plot_left + plot_right) / 2, (top + p.bottom) / 2, "middle", ink::quiet,
                       letter, say(Say::trail_empty));
  inside += told_beside(p);
  const double high = p.bottom + below;
  std::vector<Told> all = told(handed.batch);
  all.erase(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(p.told.size()));
  return {element("svg",
                  {{"xmlns", "http://www.w3.org/2000/svg"},
                   {"width", mm(trail_width_mm) + "mm"},
                   {"height", mm(high) + "mm"},
                   {"viewBox", "0 0 " + mm(trail_width_mm) + " " + mm(high)},
                   {"role", "img"}},
                  {inside}),
          std::move(all)};
}

}
