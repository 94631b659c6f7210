#include "bench/pan_times.hpp"

#include "bench/pan_said.hpp"
#include "bench/pours.hpp"
#include "paint/standing.hpp"
#include "paint/water.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace bench {

namespace {

constexpr double ms_per_h = 3'600'000;

double hours_between(std::int64_t from, std::int64_t to) {
  return static_cast<double>(to - from) / ms_per_h;
}

// What of the paint in the pans the last layer is.
std::optional<paint::Layer> last_layer(const session::Batch& batch, const session::Pan& pan) {
  const auto there = batch.places.at.find(session::Place::pans);
  if (pan.layers.empty() || there == batch.places.at.end()) return std::nullopt;
  const session::PlaceContents& all = there->second;
  paint::Wet wet = paint::wet_of(all.sums, paint::live(all.sums, all.paint));
  if (!(wet.volume_mL > 0)) return std::nullopt;
  const double share = pan.layers.back().wet_mL / wet.volume_mL;
  for (double paint::Wet::*part :
       {&paint::Wet::gum_g, &paint::Wet::glycerin_g, &paint::Wet::honey_g, &paint::Wet::water_g,
        &paint::Wet::volume_mL})
    wet.*part *= share;
  return paint::Layer{wet, area_cm2(pan.card)};
}

// Since the last layer; the first of them at the pour itself.
std::vector<paint::WeighIn> weigh_ins(const session::Pan& pan) {
  std::vector<paint::WeighIn> out;
  const std::int64_t poured = pan.layers.back().at;
  for (const session::PanReading& r : pan.readings) {
    if (r.at < poured || (out.empty() && r.at > poured + just_poured_ms)) continue;
    out.push_back({out.empty() ? 0 : hours_between(poured, r.at), r.g});
  }
  return out;
}

// The same paint in the same room, as deep to a tenth.
bool poured_alike(const session::Pan& a, const session::Pan& b) {
  const session::PouredLayer &x = a.layers.back(), &y = b.layers.back();
  return a.card.id == b.card.id && a.layers.size() == b.layers.size() &&
         std::abs(x.at - y.at) <= poured_together_ms &&
         std::abs(x.wet_mL - y.wet_mL) <= 0.1 * std::max(x.wet_mL, y.wet_mL);
}

std::optional<paint::Interval> as_weighed(const session::Batch& batch, const session::Pan& pan,
                                          const paint::Drying& drying) {
  const auto fit = [&](const session::Pan& one) -> std::optional<paint::Interval> {
    const auto hours = paint::layer_hours(drying, weigh_ins(one));
    return hours ? std::optional(*hours) : std::nullopt;
  };
  if (const auto own = fit(pan)) return own;
  for (const session::Pan& other : batch.pans)
    if (poured_alike(pan, other))
      if (const auto theirs = fit(other)) return theirs;
  return std::nullopt;
}

bool judged_since(const session::Batch& batch, std::int64_t at) {
  return std::any_of(batch.verdicts.begin(), batch.verdicts.end(),
                     [&](const session::Judged& j) { return j.at > at && j.verdict.pan == 0; });
}

}

double depth_mm(const session::Card& pan) {
  const auto* card = std::get_if<session::PanCard>(&pan.facts);
  return card && card->depth_mm > 0 ? card->depth_mm : usual_depth_mm;
}

double area_cm2(const session::Card& pan) { return volume_of(pan).mL / depth_mm(pan) * 10; }

bool is_full(const session::Pan& pan) {
  return session::dry_mL(pan) >= full_share * volume_of(pan.card).mL;
}

std::optional<LayerTime> layer_time(const session::Batch& batch, const session::Pan& pan) {
  const auto layer = last_layer(batch, pan);
  if (!layer) return std::nullopt;
  const auto drying = paint::drying_of(*layer, batch.places.room);
  if (!drying) return std::nullopt;
  const double free_mL = drying->free_g * paint::water_mL_per_g;
  if (const auto hours = as_weighed(batch, pan, *drying)) return LayerTime{*hours, true, free_mL};
  const auto hours = paint::layer_hours(*drying);
  if (!hours) return std::nullopt;
  return LayerTime{*hours, false, free_mL};
}

namespace {

struct Start {
  double hours = 0;
  std::optional<double> g; // on the scale
};

Start last_weighing(const session::Pan& pan) {
  Start start;
  const std::int64_t poured = pan.layers.back().at;
  for (const session::PanReading& r : pan.readings)
    if (r.at >= poured) start = {hours_between(poured, r.at), r.g};
  return start;
}

}

std::optional<LayerCourse> layer_course(const session::Batch& batch, const session::Pan& pan,
                                        double to_h) {
  constexpr int steps = 40;
  const auto layer = last_layer(batch, pan);
  const auto time = layer_time(batch, pan);
  if (!layer || !time) return std::nullopt;
  const auto drying = paint::drying_of(*layer, batch.places.room);
  if (!drying) return std::nullopt;
  const Start from = last_weighing(pan);
  LayerCourse out;
  out.weighed = from.g.has_value();
  const double start_g = from.g.value_or(drying->free_g);
  for (int i = 0; i <= steps; ++i) {
    const double h = from.hours + std::max(0.0, to_h - from.hours) * i / steps;
    const auto lost = paint::loses_g(*drying, time->hours, from.hours, h);
    if (!lost) return std::nullopt;
    out.points.push_back({h, start_g - lost->high, start_g - lost->middle, start_g - lost->low});
  }
  return out;
}

bool still_wet(const session::Batch& batch, const session::Pan& pan, std::int64_t wall_ms) {
  const auto time = layer_time(batch, pan);
  return time && hours_between(pan.layers.back().at, wall_ms) < time->hours.low;
}

std::int64_t dry_at(const session::Batch& batch) {
  std::int64_t at = 0;
  for (const session::Pan& pan : batch.pans)
    if (const auto time = layer_time(batch, pan))
      at = std::max(at,
                    pan.layers.back().at + static_cast<std::int64_t>(time->hours.low * ms_per_h));
  return at;
}

namespace {

std::vector<const session::Pan*> pans_to_come(const session::Batch& batch, int meant) {
  std::vector<const session::Pan*> out;
  std::int64_t last = 0;
  for (const session::Pan& pan : batch.pans) {
    if (is_full(pan) || (meant > 0 && pan.number != meant)) continue;
    out.push_back(&pan);
    last = std::max(last, pan.layers.back().at);
  }
  std::erase_if(out, [&](const session::Pan* pan) {
    return pan->layers.back().at < last - poured_together_ms;
  });
  return out;
}

}

std::optional<NextLayer> next_layer(const session::Batch& batch, int meant) {
  std::optional<NextLayer> out;
  for (const session::Pan* pan : pans_to_come(batch, meant)) {
    const auto time = layer_time(batch, *pan);
    if (!time || (out && out->weighed && !time->weighed)) continue;
    const std::int64_t poured = pan->layers.back().at;
    const NextLayer one{poured + std::llround(time->hours.low * ms_per_h),
                        poured + std::llround(time->hours.high * ms_per_h), time->weighed};
    if (!out || (one.weighed && !out->weighed)) out = one;
    out->from = std::min(out->from, one.from);
    out->to = std::max(out->to, one.to);
  }
  if (meant != 0 || !out) return out;
  for (const session::Pan& pan : batch.pans) {
    const auto time = is_full(pan) ? std::nullopt : layer_time(batch, pan);
    if (!time) continue;
    const std::int64_t from = pan.layers.back().at + std::llround(time->hours.low * ms_per_h);
    out->from = std::min(out->from, from);
  }
  return out;
}

bool settles_layer(const session::Batch& batch) {
  const auto too_early = [&](std::int64_t at) {
    return std::any_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
      return !is_full(pan) && still_wet(batch, pan, at);
    });
  };
  const auto poured = session::last_pour(batch.pans, std::numeric_limits<std::int64_t>::max());
  return std::any_of(batch.verdicts.begin(), batch.verdicts.end(), [&](const session::Judged& j) {
    const session::Became as = j.verdict.as;
    return poured && j.at > *poured && j.verdict.pan == 0 && as != session::Became::sunken &&
           as != session::Became::sticky && !(as == session::Became::good && too_early(j.at));
  });
}

std::optional<std::int64_t> next_layer_at(const session::Batch& batch) {
  if (settles_layer(batch) || bars_layer(batch) || pours_to_come(batch).layers == 0)
    return std::nullopt;
  const auto next = next_layer(batch);
  return next ? std::optional(next->from) : std::nullopt;
}

std::optional<WeighAgain> weigh_again(const session::Batch& batch) {
  constexpr double share = 0.25, least_h = 2, most_h = 12;
  std::optional<WeighAgain> soonest;
  for (const session::Pan& pan : batch.pans) {
    if (pan.layers.empty() || weigh_ins(pan).size() != 1) continue;
    const std::int64_t poured = pan.layers.back().at;
    const auto time = layer_time(batch, pan);
    if (!time || judged_since(batch, poured)) continue;
    const auto after = [](std::int64_t from, double hours) {
      return from + static_cast<std::int64_t>(hours * ms_per_h);
    };
    const std::int64_t weighed = pan.readings.back().at;
    const WeighAgain one{pan.number,
                         after(weighed, std::clamp(share * time->hours.middle, least_h, most_h)),
                         after(poured, time->hours.high)};
    if (!soonest || one.at < soonest->at) soonest = one;
  }
  return soonest;
}

session::Place poured_from(const session::Batch& batch) {
  return batch.places.at.count(session::Place::jar) ? session::Place::jar : session::Place::slab;
}

double room_mL(const session::Pan& pan) {
  return std::max(0.0, volume_of(pan.card).mL - session::dry_mL(pan));
}

double to_pour_mL(const session::Batch& batch) {
  return session::wet_mL(batch.places, poured_from(batch));
}

}
