#include "session/trail.hpp"

#include <algorithm>

namespace session {

namespace {

// What is said of it later, from a pan to a photo, makes the time at the slab no longer.
Clock end_at_slab(const TrailView& t) {
  Clock end = *t.gathered;
  for (const TrailMark& mark : t.marks) end = std::max(end, mark.clock);
  for (const Pass& pass : t.passes) end = std::max(end, pass.end.value_or(end));
  return end;
}

// Where it was opened long before anything went in, the wait is left out.
Clock begin_at_slab(const TrailView& trail) {
  constexpr Clock long_before_s = 600, lead_s = 60; // own choices
  const Clock first = trail.points.empty() ? 0 : trail.points.front().clock;
  return first > long_before_s ? first - lead_s : 0;
}

}

std::vector<TrailPhoto> dot_photos(const Batch& batch) {
  std::vector<TrailPhoto> out;
  for (const Entry& e : batch.entries) {
    const auto* photo = e.withdrawn || !e.flow ? nullptr : std::get_if<Photo>(&e.event);
    if (!photo || photo->of != PhotoOf::dot) continue;
    const bool known = std::any_of(out.begin(), out.end(), [&](const TrailPhoto& one) {
      return one.of.sha256 == photo->sha256;
    });
    if (!known) out.push_back({e.clock, *e.flow, *photo});
  }
  return out;
}

TrailView trail_view(const Batch& batch) {
  TrailView t;
  t.points = batch.trail;
  t.passes = batch.passes;
  t.photos = dot_photos(batch);
  t.to = batch.clock;
  t.whole = true;
  t.opened_at = batch.opened_at;
  if (batch.standing.flow_now && batch.standing.liquid_mL.value > 0)
    t.now = batch.standing.flow_now->value;
  for (const Entry& e : batch.entries) {
    if (e.withdrawn) continue;
    if (std::holds_alternative<Gathered>(e.event)) {
      t.gathered = e.clock;
      t.gathered_by = e.ref;
    }
    if (!e.flow) continue;
    if (const auto* f = std::get_if<Felt>(&e.event)) t.marks.push_back({e.clock, *e.flow, f->as});
    if (const auto* d = std::get_if<Dot>(&e.event))
      t.marks.push_back({e.clock, *e.flow, d->specks});
    if (const auto* x = std::get_if<Trouble>(&e.event))
      t.marks.push_back({e.clock, *e.flow, x->what});
  }
  if (t.gathered && batch.progress != Progress::open) t.to = end_at_slab(t);
  t.from = begin_at_slab(t);
  return t;
}

double TimeScale::y(Clock clock) const {
  if (knots.size() < 2) return knots.empty() ? 0 : knots[0].second;
  std::size_t i = 1;
  while (i + 1 < knots.size() && clock > knots[i].first) ++i;
  const auto& [c0, y0] = knots[i - 1];
  const auto& [c1, y1] = knots[i];
  return y0 + (y1 - y0) * (clock - c0) / (c1 - c0);
}

TimeScale time_scale(const std::vector<TrailPoint>& points, Clock from, Clock until, bool whole,
                     double top, double bottom) {
  const Clock to = std::max(until, from + 120);
  std::vector<std::pair<Clock, Clock>> gaps;
  double away = 0;
  if (whole)
    for (std::size_t i = 1; i < points.size(); ++i) {
      const Clock start = points[i - 1].clock, end = points[i].clock;
      if (!points[i].after_gap || end <= start || start < from || end > to) continue;
      gaps.push_back({start, end});
      away += end - start;
    }
  const auto count = static_cast<double>(gaps.size());
  const double gap_mm = std::min(gap_in_time_mm, (bottom - top) / 3 / std::max(1.0, count));
  const double there = std::max(to - from - away, 1.0);
  const double mm_per_s = (bottom - top - gap_mm * count) / there;
  TimeScale scale;
  const auto knot = [&](Clock clock, double y) {
    if (scale.knots.empty() || clock > scale.knots.back().first) scale.knots.push_back({clock, y});
  };
  knot(from, top);
  Clock clock = from;
  double y = top;
  for (const auto& [start, end] : gaps) {
    y += (start - clock) * mm_per_s;
    knot(start, y);
    knot(end, y += gap_mm);
    clock = end;
  }
  knot(to, bottom);
  return scale;
}

}
