// Where things stand on the trail: flow across on a log scale, time down. Pure.
#pragma once

#include "bench/view.hpp"
#include "screens/shapes.hpp"
#include "session/trail_shapes.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace screens {

using paint::band_edges;
using paint::FlowScale;
using paint::Tick;
using session::band_stops;
using session::flow_scale;
using session::gap_in_time_mm;
using session::time_scale;
using session::TimeScale;
using session::trail_pieces;

// As many as keep their labels apart.
std::vector<Tick> ticks(const FlowScale& scale, double cap_mm);

struct Segment {
  Point a, b;
};
bool touches(const Rect& rect, const Segment& segment); // ends and touching count
bool overlap(const Rect& a, const Rect& b);

// A line cut into dashes of one length, with as much between them.
std::vector<std::vector<Point>> dashes(const std::vector<Point>& line, double length_mm);

// A ghost's lines, as far as the time that is shown reaches.
std::vector<std::vector<Point>> ghost_pieces(const bench::TrailView& trail, const FlowScale& flow,
                                             const TimeScale& time);

struct Flag {
  Point at;
  double size = 3; // of its mark
  std::string words;
};
struct Placed {
  Rect box;                      // what the words cover, with a little air
  Point at;                      // baseline, left end
  std::optional<Segment> leader; // from the words to the mark, where they stand apart
};
struct Taken {
  std::vector<Segment> lines; // must not be touched
  std::vector<Rect> boxes;    // must not be covered
  Rect within;
};
// For each flag where its words can stand without touching anything: beside its mark, or further
// off on a leader; absent where there is no such place. Earlier flags choose first, and none covers
// another's mark. The first may go as far as latest_mm.
std::vector<std::optional<Placed>> place_labels(const std::vector<Flag>& flags, Taken taken,
                                                double cap_mm, double furthest_mm = 28,
                                                double latest_mm = 0);

// Beside its mark alone.
std::optional<Placed> place_beside(const Flag& flag, const Taken& taken, double cap_mm);

}
