// When a poured pan may take the next layer.
#pragma once

#include "paint/layer_time.hpp"
#include "session/batch.hpp"

namespace bench {

// A pan's area is its volume over its depth. Where its card does not say how deep it is: so much,
// by which a half pan of 1.7 mL has the 3 cm2 open to the air that paint::Layer takes one for
// (common practice, no source).
inline constexpr double usual_depth_mm = 17.0 / 3;
double depth_mm(const session::Card& pan);
double area_cm2(const session::Card& pan);

// To the rim but for a little (common practice, no source).
inline constexpr double full_share = 0.85;

// Weighed so soon after the pour, nothing has left that a kitchen scale would show: a half pan
// gives off some 0.015 g in that time (evaporation_rate).
inline constexpr std::int64_t just_poured_ms = 1'800'000;

// Layers poured within this of each other are one evening's work, and one range is said for them.
inline constexpr std::int64_t poured_together_ms = 6 * 3'600'000;

bool is_full(const session::Pan& pan);

struct LayerTime {
  paint::Interval hours; // after the pan's last layer was poured
  bool weighed = false;  // this pan, or one poured alike on the same evening
  double free_mL = 0;    // of water that its last layer gives off before it is dry
};

// The paint of all pans is taken as one, since every pour of a batch is from the same jar. Absent
// for a pan without a layer, and where the paint or the room says nothing of its drying.
std::optional<LayerTime> layer_time(const session::Batch& batch, const session::Pan& pan);

// How its last layer dries: from its last weighing on, else from the pour, at even steps of time.
struct LayerCourse {
  struct Point {
    double hours = 0; // since the pour
    double low_g = 0, g = 0, high_g = 0;
  };
  std::vector<Point> points; // by the scale pan and paint; never weighed: the water still to go
  bool weighed = false;      // by the scale
};
// Until `to_h` hours after the pour, which is later than the last weighing. Absent as LayerTime is.
std::optional<LayerCourse> layer_course(const session::Batch& batch, const session::Pan& pan,
                                        double to_h);

// Its last layer cannot be firm yet at that moment.
bool still_wet(const session::Batch& batch, const session::Pan& pan, std::int64_t wall_ms);

// When the last layers of all its pans may be dry at the soonest, ms since 1970; 0: not known.
std::int64_t dry_at(const session::Batch& batch);

// A verdict on all pans since the last pour says that they are done with. Sunken paint wants a
// layer, one that is not dry yet may still have it, and of wet pans nobody knows that they are
// good.
bool settles_layer(const session::Batch& batch);

// From when, in ms since 1970, some pan may take another layer; absent where all are full, no paint
// is left to pour, or a verdict on all of them has settled it since. Else what next_layer says.
std::optional<std::int64_t> next_layer_at(const session::Batch& batch);

// When the next layer may go on, in ms since 1970: one range for the pan that is meant, or for all
// that have room (0), of those poured last where they differ; where some are known by the scale,
// for those. Absent where none has room, and where nothing says how they dry.
struct NextLayer {
  std::int64_t from = 0, to = 0;
  bool weighed = false;
};
std::optional<NextLayer> next_layer(const session::Batch& batch, int meant = 0);

// A pan that was weighed once since its last layer: a second weighing a quarter of its time later,
// but after two to twelve hours, says how it dries; when it is dry, none does. In ms since 1970.
struct WeighAgain {
  int pan = 0;
  std::int64_t at = 0, until = 0;
  bool operator==(const WeighAgain&) const = default;
};
std::optional<WeighAgain> weigh_again(const session::Batch& batch); // the soonest of them

// Less is what stays on the glass of an empty jar.
inline constexpr double least_left_mL = 0.1;

// Where it would be poured from, and how much of it is there.
session::Place poured_from(const session::Batch& batch);
double to_pour_mL(const session::Batch& batch);
double room_mL(const session::Pan& pan); // up to the brim, above what is dry in it

}
