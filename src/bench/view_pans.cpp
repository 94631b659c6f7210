#include "bench/choices.hpp"
#include "bench/due.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pan_said.hpp"
#include "bench/pans.hpp"
#include "bench/record.hpp"
#include "bench/view_parts.hpp"
#include "paint/pans.hpp"
#include "paint/standing.hpp"

#include <algorithm>

namespace bench {

namespace {

constexpr double ms_per_h = 3'600'000;

double hours_since(std::int64_t at, const Now& now) {
  return static_cast<double>(now.wall_ms - at) / ms_per_h;
}

// Half way through its time about so much of a layer's water has gone: the straight line between is
// a picture, no number is read off it.
double still_wet_mL(const session::Batch& batch, const session::Pan& pan, const Now& now) {
  const auto time = layer_time(batch, pan);
  if (!time) return 0;
  const double gone =
      paint::ready_share * hours_since(pan.layers.back().at, now) / time->hours.middle;
  const double wet = pan.layers.back().wet_mL - pan.layers.back().dry_mL;
  return std::clamp(1 - gone, 0.0, 1.0) * std::min(wet, time->free_mL);
}

std::optional<PansView::Said> said_view(const session::Batch& batch, int pan) {
  const auto said = said_of(batch, pan);
  if (!said) return std::nullopt;
  return PansView::Said{said->verdict.as, said_early(batch, *said)};
}

PansView::Pan pan_view(const Bench& bench, const session::Pan& pan, const Now& now) {
  const session::Batch& batch = *bench.pans.folded;
  PansView::Pan v;
  v.pad = {PansPad::pan, std::to_string(pan.number)};
  v.number = pan.number;
  v.brim_mL = volume_of(pan.card).mL;
  for (const session::PouredLayer& layer : pan.layers) v.layers_mL.push_back(layer.dry_mL);
  v.wet_mL = still_wet_mL(batch, pan, now);
  v.full = is_full(pan);
  v.chosen = bench.pans.pan == pan.number;
  v.said = said_view(batch, pan.number);
  return v;
}

// Of the pan that is meant, or of all that have room; those poured last where they differ.
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

PansView::Next next_of_pan(const session::Pan& pan, const LayerTime& time, const Now& now) {
  const double since = hours_since(pan.layers.back().at, now);
  return {PansView::Next::in_hours, time.hours.low - since, time.hours.high - since, time.weighed};
}

// One range for all of them; where some are known by the scale, for those.
PansView::Next next_of(const session::Batch& batch, int meant, const Now& now) {
  using Next = PansView::Next;
  if (batch.pans.empty()) return {};
  const auto pans = pans_to_come(batch, meant);
  if (pans.empty()) return {Next::full, 0, 0, false};
  std::optional<Next> out;
  for (const session::Pan* pan : pans) {
    const auto time = layer_time(batch, *pan);
    if (!time || (out && out->weighed && !time->weighed)) continue;
    const Next one = next_of_pan(*pan, *time, now);
    if (!out || (one.weighed && !out->weighed)) out = one;
    out->low_h = std::min(out->low_h, one.low_h);
    out->high_h = std::max(out->high_h, one.high_h);
  }
  if (!out) return {Next::unknown, 0, 0, false};
  if (out->low_h <= 0) out->kind = out->high_h <= 0 ? Next::now : Next::maybe_now;
  return *out;
}

const session::Pan* fullest(const session::Batch& batch) {
  const session::Pan* out = nullptr;
  for (const session::Pan& pan : batch.pans)
    if (!out || session::dry_mL(pan) / volume_of(pan.card).mL >
                    session::dry_mL(*out) / volume_of(out->card).mL)
      out = &pan;
  return out;
}

std::optional<paint::Interval> fill_of(const session::Batch& batch) {
  const session::Pan* pan = fullest(batch);
  const auto share = session::dry_share(batch.places, session::Place::pans);
  if (!pan || !share) return std::nullopt;
  double wet = 0;
  for (const session::PouredLayer& layer : pan->layers) wet += layer.wet_mL;
  const double times = wet / volume_of(pan->card).mL;
  return paint::Interval{share->low * times, share->middle * times, share->high * times};
}

std::optional<paint::Tack> tack_of(const session::Batch& batch) {
  const auto there = batch.places.at.find(session::Place::pans);
  if (there == batch.places.at.end()) return std::nullopt;
  const paint::Standing all = paint::stand(there->second.paint, batch.places.bench);
  const auto index = paint::tack_index(all.gum_g, all.glycerin_g, all.honey_g, batch.places.room);
  const auto tack =
      index ? paint::tack(*index) : words::Result<paint::Tack>(tl::make_unexpected(index.error()));
  return tack ? std::optional(*tack) : std::nullopt;
}

std::vector<PansView::Weighing> weighings_of(const session::Batch& batch, int meant) {
  for (const session::Pan* pan : pans_in_order(batch)) {
    if (pan->readings.empty() || (meant > 0 && pan->number != meant)) continue;
    std::vector<PansView::Weighing> out;
    const std::int64_t poured = pan->layers.back().at;
    for (const session::PanReading& r : pan->readings)
      if (r.at >= poured) out.push_back({static_cast<double>(r.at - poured) / ms_per_h, r.g});
    return out;
  }
  return {};
}

PansView::Planned planned_view(const Bench& bench) {
  const session::Batch& batch = *bench.pans.folded;
  const auto card = pan_card(bench);
  PansView::Planned v;
  if (card) v.pans = pans_planned(bench, *card);
  const auto share = session::dry_share(batch.places, session::in_hand(batch.places));
  if (v.pans > 0 && share) v.layers = paint::layers_to(planned_fill, share->middle).value_or(0);
  return v;
}

void add_pans(const Bench& bench, const Now& now, PansView& v) {
  const session::Batch& batch = *bench.pans.folded;
  for (const int number : pans_of_page(bench)) {
    if (const session::Pan* pan = pan_numbered(batch, number)) {
      v.pans.push_back(pan_view(bench, *pan, now));
      continue;
    }
    PansView::Pan fresh;
    fresh.pad = {PansPad::new_pan, ""};
    fresh.number = number;
    fresh.brim_mL = v.card_mL;
    v.pans.push_back(std::move(fresh));
  }
}

}

PansView pans_view(const Bench& bench, const Now& now) {
  PansView v;
  v.notice = bench.notice;
  v.save_failure = bench.saving.failure;
  v.saved_elsewhere = !bench.saving.fallback.empty();
  if (!bench.pans.folded) return v;
  const session::Batch& batch = *bench.pans.folded;
  v.batch = batch.id;
  v.name = batch.name;
  v.colour = session::colour_of(batch);
  v.judging = bench.pans.judging;
  v.pan = bench.pans.pan;
  if (const auto card = pan_card(bench)) {
    v.card_name = card->name;
    v.card_mL = volume_of(*card).mL;
  }
  add_pans(bench, now, v);
  v.to_pour_mL = to_pour_mL(batch);
  v.all = pans_in(pours_for_all(bench, now));
  v.wet = std::any_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    return !is_full(pan) && still_wet(batch, pan, now.wall_ms);
  });
  v.first = batch.pans.empty();
  v.planned = planned_view(bench);
  v.next = next_of(batch, v.pan, now);
  v.fill = fill_of(batch);
  v.tack = tack_of(batch);
  v.room_guessed = batch.room_guessed;
  v.celsius = batch.places.room.celsius;
  v.humidity = batch.places.room.humidity;
  v.weighings = weighings_of(batch, v.pan);
  if (const auto at = session::last_pour(batch.pans, now.wall_ms))
    v.since_pour_ms = now.wall_ms - *at;
  v.asked_day = verdict_day_due(bench, batch.id, now);
  v.said = said_view(batch, v.pan);
  if (v.pan == 0)
    for (const int pan : said_apart(batch)) v.apart.push_back({pan, *said_view(batch, pan)});
  v.undo = undo_view(bench, &batch);
  v.number = number_view(bench);
  return v;
}

}
