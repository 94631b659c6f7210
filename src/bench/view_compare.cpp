// Two batches beside each other: their trails, and what differs between them.
#include "bench/record.hpp"
#include "bench/view_parts.hpp"
#include "session/dry_film.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using Row = CompareView::Row;
using paint::Amount;

// Standard uncertainties, own estimates: a pass is tapped some seconds early or late; an instrument
// on the wall reads to half a degree, a guess to 2 degrees.
constexpr double minutes_u = 0.25;
constexpr double celsius_u = 0.5, celsius_guessed_u = 2;

Amount known_to(double value, double u) { return {value, u * u, {}}; }

// By more than twice what is not known of the difference; errors of one tool cancel in it.
bool differ(const std::optional<Amount>& a, const std::optional<Amount>& b) {
  if (!a || !b) return a.has_value() != b.has_value();
  const Amount apart = *a - *b;
  return std::abs(apart.value) > 2 * paint::uncertainty(apart) + 1e-9;
}

Row row(CompareView::What what, std::optional<Amount> a, std::optional<Amount> b) {
  Row r;
  r.what = what;
  r.differs = differ(a, b);
  r.a = std::move(a);
  r.b = std::move(b);
  return r;
}

const session::Total* pigment_of(const session::Batch& batch, const std::string& card) {
  for (const session::Total& t : batch.totals)
    if (t.card.id == card && t.card.kind() == session::CardKind::pigment && t.grams.value > 0)
      return &t;
  return nullptr;
}

std::optional<Amount> grams_of(const session::Total* total) {
  return total ? std::optional(total->grams) : std::nullopt;
}

void add_pigments(const session::Batch& a, const session::Batch& b, std::vector<Row>& rows) {
  std::set<std::string> done;
  for (const session::Batch* batch : {&a, &b})
    for (const session::Total& t : batch->totals) {
      if (!pigment_of(*batch, t.card.id) || !done.insert(t.card.id).second) continue;
      rows.push_back(row(CompareView::pigment, grams_of(pigment_of(a, t.card.id)),
                         grams_of(pigment_of(b, t.card.id))));
      rows.back().name = t.card.name;
    }
}

Amount minutes(const session::Batch& batch) {
  return known_to(session::seconds_of(batch, session::Stage::mulling) / 60, minutes_u);
}

Amount passes(const session::Batch& batch) {
  return paint::exact(static_cast<double>(
      std::count_if(batch.passes.begin(), batch.passes.end(),
                    [](const auto& p) { return p.stage == session::Stage::mulling; })));
}

Amount celsius(const session::Batch& batch) {
  return known_to(batch.places.room.celsius, batch.room_guessed ? celsius_guessed_u : celsius_u);
}

Amount humidity(const session::Batch& batch) {
  return known_to(batch.places.room.humidity * 100, 100 * session::humidity_u(batch));
}

std::vector<session::Became> became(const session::Batch& batch) {
  std::set<session::Became> out;
  for (const session::Judged& judged : batch.verdicts) out.insert(judged.verdict.as);
  return {out.begin(), out.end()};
}

std::vector<Row> rows_of(const session::Batch& a, const session::Batch& b) {
  std::vector<Row> rows;
  add_pigments(a, b, rows);
  const paint::Standing &x = a.standing, &y = b.standing;
  rows.push_back(row(CompareView::ratio, x.binder_ratio, y.binder_ratio));
  rows.push_back(row(CompareView::flow, x.flow_now, y.flow_now));
  rows.push_back(row(CompareView::gum, x.gum_per_pigment, y.gum_per_pigment));
  rows.push_back(row(CompareView::sweet, x.humectant_to_gum, y.humectant_to_gum));
  rows.push_back(row(CompareView::mulled, minutes(a), minutes(b)));
  rows.push_back(row(CompareView::passes, passes(a), passes(b)));
  rows.push_back(row(CompareView::celsius, celsius(a), celsius(b)));
  rows.push_back(row(CompareView::humidity, humidity(a), humidity(b)));
  Row verdicts;
  verdicts.what = CompareView::became;
  verdicts.became_a = became(a);
  verdicts.became_b = became(b);
  verdicts.differs = !verdicts.became_a.empty() && !verdicts.became_b.empty() &&
                     verdicts.became_a != verdicts.became_b;
  rows.push_back(std::move(verdicts));
  return rows;
}

// By the time that somebody was there: of a break, a minute is left.
std::vector<session::TrailPoint> without_breaks(std::vector<session::TrailPoint> points) {
  constexpr session::Clock kept_s = 60;
  session::Clock away = 0, before = 0;
  for (session::TrailPoint& point : points) {
    const session::Clock at = point.clock;
    if (point.after_gap) away += std::max(0.0, at - before - kept_s);
    point.clock -= away;
    before = at;
  }
  return points;
}

std::set<std::string> pigments_in(const session::Batch& batch) {
  std::set<std::string> out;
  for (const session::Total& t : batch.totals)
    if (pigment_of(batch, t.card.id)) out.insert(t.card.id);
  return out;
}

// What is right is drawn where it is the same for both.
TrailView both_trails(const Bench& bench, const session::Batch& a, const session::Batch& b) {
  TrailView t;
  if (pigments_in(a) == pigments_in(b)) t.band = kept_band(bench, a.id);
  t.points = without_breaks(trail_at_slab(a).points);
  t.beside = without_breaks(trail_at_slab(b).points);
  t.opened_at = a.opened_at;
  for (const auto* points : {&t.points, &t.beside})
    if (!points->empty()) t.to = std::max(t.to, points->back().clock);
  return t;
}

}

CompareView compare_view(const Bench& bench, const ComparePage& page) {
  CompareView v;
  const Folded a = kept_fold(bench, page.of.batch), b = kept_fold(bench, page.other);
  if (!a || !b) return v;
  v.name_a = a->name;
  v.name_b = b->name;
  v.colour_a = session::colour_of(*a);
  v.colour_b = session::colour_of(*b);
  v.swatch_a = a->swatch.has_value();
  v.swatch_b = b->swatch.has_value();
  v.trail = both_trails(bench, *a, *b);
  v.rows = rows_of(*a, *b);
  v.match = bench.book.match;
  v.trails = page.trails || !v.match;
  return v;
}

}
