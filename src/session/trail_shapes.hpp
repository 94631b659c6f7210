// A batch's trail as a picture: flow across on a log scale, time down, the working range a soft
// band. Laid out once for every medium, which says how large, in which colours and in whose
// letters; what only one medium shows it draws upon this.
#pragma once

#include "paint/flow_scale.hpp"
#include "session/shapes.hpp"
#include "session/trail.hpp"

#include <functional>
#include <string_view>
#include <vector>

namespace session {

inline constexpr double trail_edge_mm = 4; // from the picture's edge to the scale's ends

struct TrailStyle {
  Rect area;              // with the captions above and the axis below
  Rect inside;            // where the trail runs
  double head = 0;        // from the top of `inside` to the first moment shown
  double foot = 0;        // from the last one to its bottom
  double cap_mm = 2.9;    // height of a capital
  double least_mm = 2.9;  // words of the stages may be made smaller down to this
  double bar_x = 0;       // the bars of the stages
  double trail_mm = 0.85; // how wide the trail is drawn
  double fade_mm = 1.8;   // beyond the scale's ends, within which the band fades out
  shapes::Colour ground, ink, quiet, rule, right, right_ink;

  std::function<double(std::string_view words, double cap_mm, bool bold)> width_mm;
  // Made to fit its max_mm: smaller, down to least_mm, and cut if it must.
  std::function<shapes::Text(shapes::Text text, double least_mm)> fitted;
};

struct TrailPlot {
  const TrailView& trail;
  const TrailStyle& style;
  paint::FlowScale flow; // of all the flows that the trail shows
  TimeScale time;
  std::vector<std::vector<Point>> pieces; // trail_pieces of the trail's own points
};
TrailPlot trail_plot(const TrailView& trail, const TrailStyle& style);
paint::FlowScale flow_scale(const TrailView& trail, double left, double right);
TimeScale time_scale(const TrailView& trail, double top, double bottom);

// Behind the trail: the band with its edges, the captions above, the axis below.
std::vector<shapes::Shape> trail_ground(const TrailPlot& plot);
// The way itself: where nobody was there it is dashed.
std::vector<shapes::Shape> trail_way(const TrailPlot& plot);
// Of a whole trail: bars at its left, with their names as far as they have room.
std::vector<shapes::Shape> trail_stages(const TrailPlot& plot);
// What the way is clipped to: a little wider than where it runs, for the breadth of a line.
Rect trail_window(const TrailPlot& plot);

// Where a sign may stand without covering others: at its place, or a step or a few to a side of it,
// left of those that are right of it.
Point beside_others(Point at, double size, const std::vector<Point>& others);

// The lines of a trail, cut where nobody was there; the last pieces between cuts.
std::vector<std::vector<Point>> trail_pieces(const std::vector<TrailPoint>& points,
                                             const paint::FlowScale& flow, const TimeScale& time);

// The band from the ground to the colour of right, by the chance that a hand would call it right:
// where little is known that is small everywhere, and the band is faint and wide. The whole colour
// stands for a chance of `certain`.
// Beyond the scale's ends it fades out within margin_mm, so that no edge shows where none is.
std::vector<shapes::Stop> band_stops(const paint::Band& band, const paint::FlowScale& scale,
                                     double margin_mm, shapes::Colour away, shapes::Colour right);
inline constexpr double certain = 0.9;

}
