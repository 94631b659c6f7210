#include "bench/choices.hpp"
#include "bench/here_alone.hpp"
#include "bench/making.hpp"
#include "bench/pads_today.hpp"
#include "bench/stock.hpp"
#include "bench/today.hpp"
#include "bench/view_parts.hpp"
#include "words/bench_says.hpp"
#include "words/calendar.hpp"
#include "words/say.hpp"

#include <algorithm>

namespace bench {

namespace {

// With what is to come only where that is what waits.
std::vector<PansView::Pan> pans_of(const session::Batch& batch, Due::What what, const Now& now) {
  std::vector<PansView::Pan> out = pans_seen(batch, now);
  for (PansView::Pan& pan : out)
    if (what != Due::What::next_layer) pan.pour_mL = pan.next_mL = 0;
  return out;
}

double hours_until(std::int64_t at, const Now& now) {
  return std::max(0.0, static_cast<double>(at - now.wall_ms) / 3'600'000);
}

void add_poured(const Bench& bench, const Due& due, const session::Batch& batch, const Now& now,
                TodayView::Wait& v) {
  const auto entry = bench.index.of.find(due.of);
  if (entry == bench.index.of.end() || entry->second.poured_at == 0) return;
  v.left_mL = entry->second.left_mL;
  if (const auto layer = next_layer(batch); layer && due.since > now.wall_ms) {
    v.low_h = hours_until(layer->from, now);
    v.high_h = hours_until(layer->to, now);
  }
  const std::int64_t open_ms = now.wall_ms - entry->second.poured_at;
  if (open_ms >= waits_lapse_ms) v.open_days = static_cast<int>(open_ms / session::a_day_ms);
}

void add_batch(const Bench& bench, const Due& due, const Now& now, TodayView::Wait& v) {
  const Folded batch = kept_fold(bench, due.of);
  v.name = name_of_batch(bench, due.of);
  const auto entry = bench.index.of.find(due.of);
  if (due.what == Due::What::on_slab && entry != bench.index.of.end())
    v.since = std::min(v.since, entry->second.lies_from);
  if (!batch) return;
  v.colour = session::colour_of(*batch);
  if (bench.photos.there && entry != bench.index.of.end() && entry->second.photo)
    v.image = image_of(*entry->second.photo);
  if (due.what == Due::What::on_slab) {
    v.trail = trail_at_slab(*batch);
    v.trail.photos.clear(); // too small there
    v.trail.band = kept_band(bench, due.of);
  }
  v.pans = pans_of(*batch, due.what, now);
  add_poured(bench, due, *batch, now, v);
}

void add_card(const Bench& bench, const session::Card& card, const Now& now, TodayView::Wait& v) {
  v.name = card.name;
  v.kind = card.kind();
  v.colour = pigment_of(card).colour;
  if (const auto left = stock_of(bench, card)) {
    v.left_g = left->g;
    v.of_g = left->of;
  }
  v.takes_g = low_mark(bench, card.id).value_or(0);
  if (const auto last = words::days_of(card.keep_until))
    v.days = static_cast<int>(*last - words::day_number(now.wall_ms, now.utc_offset_min));
}

void add_making(const Bench& bench, const std::string& of, const Now& now, TodayView::Wait& v) {
  v.kind = session::CardKind::binder;
  const auto making = bench.makings.find(of);
  if (making == bench.makings.end()) return;
  const session::Card* by = card_anywhere(bench, making->second.plan.start->by);
  v.name = by ? by->name : words::say(words::BenchSay::making_nameless);
  v.step = making->second.steps.back().step;
  v.next = session::next_step(making->second);
  v.stood = session::stood_too_long(making->second, now.wall_ms);
  v.honey = making->second.plan.start->parts.honey > 0;
}

TodayView::Again again_view(const Bench& bench, const std::string& id) {
  TodayView::Again v{{TodayPad::again, id}, name_of_batch(bench, id)};
  if (const Folded batch = kept_fold(bench, id)) v.colour = session::colour_of(*batch);
  if (const auto entry = bench.index.of.find(id); entry != bench.index.of.end()) {
    v.made_at = made_at(entry->second);
    v.offset_min = entry->second.offset_min;
    const auto& photo = entry->second.photo;
    if (bench.photos.there && photo && photo->of == session::PhotoOf::swatch)
      v.image = image_of(*photo);
  }
  return v;
}

}

TodayView today_view(const Bench& bench, const Now& now) {
  TodayView v;
  for (const Due& one : waits_of_page(bench)) {
    TodayView::Wait wait{{TodayPad::due, name_of(one)}, one};
    wait.since = one.since;
    if (one.what == Due::What::hand_on)
      wait.days = static_cast<int>((now.wall_ms - one.since + hand_on_ms) / session::a_day_ms);
    else if (one.what == Due::What::making)
      add_making(bench, one.of, now, wait);
    else if (!is_of_shelf(one))
      add_batch(bench, one, now, wait);
    else if (const session::Card* card = shelf_card(bench, one.of))
      add_card(bench, *card, now, wait);
    v.waits.push_back(std::move(wait));
  }
  v.page =
      page_of(bench.today.list, waits_shown(bench), static_cast<int>(bench.today.waits.size()));
  v.pages = waits_pages(bench);
  for (const std::string& batch : bench.today.again) v.again.push_back(again_view(bench, batch));
  v.first_day = is_first_day(bench);
  v.hand = bench.tablet.hand;
  v.now_ms = now.wall_ms;
  if (!bench.loaded) v.reading = bench.reading;
  v.notice = bench.notice;
  return v;
}

}
