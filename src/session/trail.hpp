// A batch's trail as numbers: what is shown of it, what it is drawn against, and where its moments
// stand.
#pragma once

#include "paint/range/range.hpp"
#include "session/batch.hpp"
#include "session/signs.hpp"

#include <utility>

namespace session {

struct TrailMark { // a flag on the trail
  Clock clock = 0;
  double flow = 0;
  NoteSign what;
};

struct TrailPhoto { // of a dot, at the moment it was kept
  Clock clock = 0;
  double flow = 0;
  Photo of;
};

struct TrailView {
  std::vector<TrailPoint> points;
  std::vector<TrailPoint> ghost; // of the last good batch, by its own clock
  std::vector<TrailMark> marks;
  std::vector<TrailPhoto> photos;
  std::vector<Pass> passes;
  std::optional<paint::Band> band; // today's notes counted in
  std::optional<double> now;       // live flow
  std::optional<double> landing;   // where the pressed pad's addition would land
  std::optional<double> next;      // where the advised addition would land
  Clock from = 0, to = 0;          // the stretch of time to show
  bool whole = false;              // all of the batch, with its gaps shortened
  std::optional<Clock> gathered;
  std::vector<TrailPoint> beside; // of another batch, to compare with
  std::int64_t opened_at = 0;     // ms since 1970, for times of day
  std::optional<Ref> gathered_by; // line
  std::optional<int> offset_min;  // by the clock there, where it is known
};

// Each picture once, where it was kept first.
std::vector<TrailPhoto> dot_photos(const Batch& batch);

TrailView trail_view(const Batch& batch); // the whole of it, without a band

// Time down. In a whole batch the stretches where nobody was there are short and equal.
struct TimeScale {
  std::vector<std::pair<Clock, double>> knots; // clock -> y, both rising
  double y(Clock clock) const;                 // beyond the ends: the end's slope
};
inline constexpr double gap_in_time_mm = 4;

// From `from` at y = top to `to` at y = bottom, but at least two minutes of it.
TimeScale time_scale(const std::vector<TrailPoint>& points, Clock from, Clock to, bool whole,
                     double top, double bottom);

}
