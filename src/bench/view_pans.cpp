#include "bench/choices.hpp"
#include "bench/due.hpp"
#include "bench/layout_of.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pan_said.hpp"
#include "bench/pans.hpp"
#include "bench/pours.hpp"
#include "bench/record.hpp"
#include "bench/rewetting.hpp"
#include "bench/view_parts.hpp"
#include "paint/pans.hpp"
#include "paint/standing.hpp"

#include <algorithm>
#include <map>

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

// What one more pour gives each pan that takes it now, or, where none does, each that has room; by
// their numbers.
std::map<int, double> next_pour(const session::Batch& batch, const Now& now) {
  auto pans = pans_with_room(batch, now.wall_ms);
  if (pans.empty()) {
    pans = pans_in_order(batch);
    std::erase_if(pans, [](const session::Pan* pan) { return is_full(*pan); });
  }
  pans = pans_that_share(batch, std::move(pans));
  const auto shared = shared_mL(batch, pans);
  std::map<int, double> out;
  double left = to_pour_mL(batch);
  for (const session::Pan* pan : pans) {
    const double mL = std::min(left, shared.value_or(room_mL(*pan)));
    out[pan->number] = mL;
    left -= mL;
  }
  return out;
}

PansView::Pan pan_view(const session::Batch& batch, const session::Pan& pan, const Now& now) {
  PansView::Pan v;
  v.pad = {PansPad::pan, std::to_string(pan.number)};
  v.number = pan.number;
  v.brim_mL = volume_of(pan.card).mL;
  for (const session::PouredLayer& layer : pan.layers) v.layers_mL.push_back(layer.dry_mL);
  v.wet_mL = still_wet_mL(batch, pan, now);
  v.full = is_full(pan);
  v.said = said_view(batch, pan.number);
  return v;
}

PansView::Next next_of(const session::Batch& batch, int meant, const Now& now) {
  using Next = PansView::Next;
  if (batch.pans.empty()) return {};
  const bool full = std::all_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    return is_full(pan) || (meant > 0 && pan.number != meant);
  });
  if (full) return {Next::full, 0, 0, false};
  if (const auto by = bars_layer(batch)) return {.kind = Next::barred, .barred_by = by};
  if (pours_to_come(batch).layers == 0) return {Next::none_left, 0, 0, false};
  const auto layer = next_layer(batch, meant);
  if (!layer) return {Next::unknown, 0, 0, false};
  Next out{Next::in_hours, -hours_since(layer->from, now), -hours_since(layer->to, now),
           layer->weighed};
  if (out.low_h <= 0) out.kind = out.high_h <= 0 ? Next::now : Next::maybe_now;
  return out;
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

std::optional<paint::Tack> tack_of(const session::Batch& batch, const paint::TackMark& mark) {
  const auto there = batch.places.at.find(session::Place::pans);
  if (there == batch.places.at.end()) return std::nullopt;
  const paint::Standing all = paint::stand(there->second.paint, batch.places.bench);
  const auto index = paint::tack_index(all.gum_g, all.glycerin_g, all.honey_g, batch.places.room);
  const auto tack = index ? paint::tack(*index, mark)
                          : words::Result<paint::Tack>(tl::make_unexpected(index.error()));
  return tack ? std::optional(*tack) : std::nullopt;
}

// By now its last layer has had all the time that it may take.
bool is_all_dry(const session::Batch& batch, const Now& now) {
  return std::all_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    const auto time = layer_time(batch, pan);
    return time && hours_since(pan.layers.back().at, now) > time->hours.high;
  });
}

std::vector<PansView::Weighing> weighings_of(const session::Pan& pan) {
  std::vector<PansView::Weighing> out;
  const std::int64_t poured = pan.layers.back().at;
  for (const session::PanReading& r : pan.readings)
    if (r.at >= poured) out.push_back({static_cast<double>(r.at - poured) / ms_per_h, r.g});
  return out;
}

// The pan that is meant, else the first that was weighed, else the first.
const session::Pan* pan_to_watch(const session::Batch& batch, int meant) {
  const session::Pan* first = nullptr;
  for (const session::Pan* pan : pans_in_order(batch)) {
    if (meant > 0 ? pan->number == meant : !pan->readings.empty()) return pan;
    if (!first) first = pan;
  }
  return first;
}

PansView::Curve curve_of(const session::Batch& batch, const session::Pan& pan, const Now& now) {
  PansView::Curve v;
  const auto time = layer_time(batch, pan);
  v.pan = pan.number;
  v.poured_at = pan.layers.back().at;
  v.now_h = std::max(0.0, hours_since(v.poured_at, now));
  v.to_h = std::max({6.0, 1.2 * v.now_h, time ? 1.15 * time->hours.high : 0});
  if (!is_full(pan) && pours_to_come(batch).layers > 0 && !bars_layer(batch))
    v.layer = static_cast<int>(pan.layers.size()) + 1;
  if (time && v.layer > 0) v.ready_h = time->hours;
  if (auto course = layer_course(batch, pan, v.to_h)) v.ahead = std::move(course->points);
  return v;
}

// What other batches wait for, the first of it.
PansView::Other other_view(const Bench& bench, const PadId& pad, const Now& now) {
  using Other = PansView::Other;
  Other v;
  v.pad = pad;
  v.name = name_of_batch(bench, pad.arg);
  const auto folded = kept_fold(bench, pad.arg);
  if (!folded) return v;
  v.colour = session::colour_of(*folded);
  v.swatch = folded->swatch.has_value();
  v.pans = pans_seen(*folded, now);
  const bool to_come = pours_to_come(*folded).layers > 0;
  for (const session::Pan& pan : folded->pans)
    if (!is_full(pan) && to_come)
      v.layer = std::max(v.layer, static_cast<int>(pan.layers.size()) + 1);
  if (const auto at = session::last_pour(folded->pans, now.wall_ms))
    v.since_pour_ms = now.wall_ms - *at;
  v.mL = to_pour_mL(*folded);
  const auto next = to_come ? next_layer(*folded) : std::nullopt;
  if (layer_due(bench, pad.arg, now)) return v.what = Other::layer_now, v;
  if (verdict_day_due(bench, pad.arg, now) > 0) return v.what = Other::look, v;
  if (next && v.layer > 0 && next->from > now.wall_ms) {
    v.what = Other::layer_later;
    v.low_h = -hours_since(next->from, now);
    v.high_h = -hours_since(next->to, now);
  } else if (v.pans.empty()) {
    v.what = folded->places.at.count(session::Place::slab) ? Other::on_slab : Other::in_jar;
  }
  return v;
}

double deepest_mm(const session::Batch& batch, int meant) {
  double mm = 0;
  for (const session::Pan& pan : batch.pans)
    for (const session::PouredLayer& layer : pan.layers)
      if (meant == 0 || pan.number == meant)
        mm = std::max(mm, layer.wet_mL / area_cm2(pan.card) * 10);
  return mm;
}

std::vector<paint::LikelyCause> causes_of(const Bench& bench, int meant, double layer_mm) {
  const session::Batch& batch = *bench.pans.folded;
  const auto there = batch.places.at.find(session::Place::pans);
  if (there == batch.places.at.end()) return {};
  const session::PlaceContents& all = there->second;
  const paint::Wet wet = paint::wet_of(all.sums, paint::live(all.sums, all.paint));
  const auto family = session::family_of(batch);
  paint::Cracked known;
  known.layer_mm = layer_mm;
  known.gum = paint::gum_state(wet.gum_g, all.sums.pigment_mL,
                               session::marks_of(bench.learning.verdicts, family));
  known.index = paint::tack_index(wet, batch.places.room).value_or(0);
  known.hard_below = hard_below(bench, family);
  if (const session::Pan* pan = pan_to_watch(batch, meant))
    if (const auto time = layer_time(batch, *pan)) known.firm_h = time->hours.middle;
  return paint::crack_causes(known);
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
  const auto page = pans_of_page(bench);
  v.pans = pans_seen(batch, now);
  std::erase_if(v.pans, [&](const PansView::Pan& pan) {
    return std::find(page.begin(), page.end(), pan.number) == page.end();
  });
  for (PansView::Pan& pan : v.pans) pan.chosen = pan.number == bench.pans.pan;
  for (const session::Pan& pan : batch.pans)
    if (v.pan == 0 || pan.number == v.pan)
      v.layer = std::max(v.layer, static_cast<int>(pan.layers.size()));
  const PoursToCome to_come = pours_to_come(batch);
  if (to_come.layers > 0) v.layers_in_all = to_come.last;
}

// All but a last one, which a single pan alone may be, are filled to the brim.
PansView::Pan fresh_pan(const session::Batch& batch, double mL) {
  PansView::Pan v;
  const auto share = session::dry_share(batch.places, poured_from(batch));
  v.brim_mL = mL;
  v.pour_mL = std::min(mL, to_pour_mL(batch));
  v.next_mL = share ? v.pour_mL * share->middle : 0;
  return v;
}

void add_pours(const Bench& bench, const Now& now, PansView& v) {
  const session::Batch& batch = *bench.pans.folded;
  const auto pours = pours_for_all(bench, now);
  v.all = pans_in(pours);
  for (const session::Poured& p : pours)
    for (int number = p.first; number <= p.last; ++number) {
      const session::Pan* pan = pan_numbered(batch, number);
      const int layer = pan ? static_cast<int>(pan->layers.size()) + 1 : 1;
      v.all_layer = v.all_layer == 0 || v.all_layer == layer ? layer : -1;
    }
  v.all_layer = std::max(0, v.all_layer);
}

void add_others(const Bench& bench, const Now& now, PansView& v) {
  const auto shown = others_that_show(bench);
  for (const std::string& id : shown)
    v.others.push_back(other_view(bench, {PansPad::batch, id}, now));
  v.more_others = bench.pans.others.size() - shown.size();
}

// What is known of the pan that is meant, or of all.
void add_known(const Bench& bench, const Now& now, PansView& v) {
  const session::Batch& batch = *bench.pans.folded;
  v.said = said_view(batch, v.pan);
  v.layer_left = is_enough_for_layer(batch, v.pan);
  if (v.pan == 0)
    for (const int pan : said_apart(batch)) v.apart.push_back({pan, *said_view(batch, pan)});
  v.layer_mm = deepest_mm(batch, v.pan);
  if (v.said && v.said->as == session::Became::cracked)
    v.causes = causes_of(bench, v.pan, v.layer_mm);
  const session::Pan* watched = pan_to_watch(batch, v.pan);
  if (!watched) return;
  v.curve = curve_of(batch, *watched, now);
  v.weighings = weighings_of(*watched);
  const auto* card = std::get_if<session::PanCard>(&watched->card.facts);
  v.depth_known = card && card->depth_mm > 0;
}

}

std::vector<PansView::Pan> pans_seen(const session::Batch& batch, const Now& now) {
  std::vector<PansView::Pan> out;
  const auto pours = next_pour(batch, now);
  const auto share = session::dry_share(batch.places, poured_from(batch));
  for (const session::Pan* pan : pans_in_order(batch)) {
    out.push_back(pan_view(batch, *pan, now));
    const auto pour = pours.find(pan->number);
    if (!share || pour == pours.end()) continue;
    out.back().pour_mL = pour->second;
    out.back().next_mL = pour->second * share->middle;
  }
  return out;
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
  v.swatch = batch.swatch.has_value();
  v.judging = bench.pans.judging;
  v.pan = bench.pans.pan;
  if (const auto card = pan_card(bench)) {
    v.card_name = card->name;
    v.card_mL = volume_of(*card).mL;
  }
  add_pans(bench, now, v);
  v.to_pour_mL = to_pour_mL(batch);
  add_pours(bench, now, v);
  v.wet = std::any_of(batch.pans.begin(), batch.pans.end(), [&](const session::Pan& pan) {
    return !is_full(pan) && still_wet(batch, pan, now.wall_ms);
  });
  v.first = batch.pans.empty();
  v.fresh = fresh_pan(batch, v.card_mL);
  v.planned = planned_view(bench);
  v.next = next_of(batch, v.pan, now);
  v.weigh_again = weigh_again(batch);
  v.weigh_now = v.weigh_again && v.weigh_again->at <= now.wall_ms;
  v.fill = fill_of(batch);
  v.room_guessed = batch.room_guessed;
  v.celsius = batch.places.room.celsius;
  v.humidity = batch.places.room.humidity;
  if (const auto at = session::last_pour(batch.pans, now.wall_ms))
    v.since_pour_ms = now.wall_ms - *at;
  v.asked_day = verdict_day_due(bench, batch.id, now);
  add_known(bench, now, v);
  if (!v.said || v.said->early)
    v.tack = tack_of(batch, bench.pans.tack); // else it is known what it became
  if (v.tack == paint::Tack::dries && is_all_dry(batch, now)) v.tack.reset();
  add_others(bench, now, v);
  v.undo = undo_view(bench, &batch);
  v.number = number_view(bench);
  return v;
}

}
