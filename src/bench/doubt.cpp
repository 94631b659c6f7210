#include "bench/doubt.hpp"

#include "bench/card_dropper.hpp"
#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/stock.hpp"
#include "paint/slip.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr double surely = 4; // standard uncertainties, as for any weighing

bool contradicts(const session::Batch& batch, const session::Ref& line) {
  return std::any_of(batch.bottles.begin(), batch.bottles.end(),
                     [&](const auto& b) { return b.line == line && !b.stands; });
}

std::optional<words::Error> why_doubted(const session::Batch& batch, const session::Ref& line) {
  for (const session::Warning& w : batch.warnings) {
    if (!(w.ref == line)) continue;
    if (w.kind == session::WarningKind::not_weighed || contradicts(batch, line)) return w.why;
  }
  return std::nullopt;
}

void complete(Doubt& doubt, const session::Batch& batch, const session::Ref& line,
              const session::BottleWeighed& weighed) {
  const auto check = std::find_if(batch.bottles.begin(), batch.bottles.end(),
                                  [&](const auto& b) { return b.line == line; });
  if (check == batch.bottles.end()) return;
  const paint::Amount off = check->weighed - check->counted;
  doubt.meant = paint::meant(weighed.g, weighed.g + off.value, surely * paint::uncertainty(off));
  doubt.can_count = check->weighed.value >= 0;
}

void complete(Doubt& doubt, const session::Batch& batch, const session::Weighed& weighed) {
  const auto there = batch.places.at.find(weighed.place);
  if (there == batch.places.at.end()) return;
  const paint::Amount g = paint::grams_of(there->second.paint, batch.places.bench);
  doubt.meant = paint::meant(weighed.g, g.value + weighed.tare_g, surely * paint::uncertainty(g));
  doubt.can_count = weighed.g > weighed.tare_g && weighed.g < g.value + weighed.tare_g;
}

}

std::optional<Doubt> doubt_about(const Bench& bench, const session::Entry& line) {
  const auto g = amount_in(line.event);
  if (!bench.folded || line.withdrawn || !g) return std::nullopt;
  auto why = why_doubted(*bench.folded, line.ref);
  if (!why) return std::nullopt;
  Doubt doubt{*std::move(why), *g, {}, false};
  if (const auto* bottle = std::get_if<session::BottleWeighed>(&line.event))
    complete(doubt, *bench.folded, line.ref, *bottle);
  else if (const auto* paint = std::get_if<session::Weighed>(&line.event))
    complete(doubt, *bench.folded, *paint);
  else
    return std::nullopt;
  return doubt;
}

void ask_if_doubted(Bench& bench) {
  if (!bench.folded) return;
  for (auto e = bench.folded->entries.rbegin(); e != bench.folded->entries.rend(); ++e) {
    const auto* corrected = std::get_if<session::Corrected>(&e->event);
    if (e->withdrawn) continue;
    const session::Ref ref = corrected ? corrected->line : e->ref;
    for (const session::Entry& line : bench.folded->entries)
      if (line.ref == ref && doubt_about(bench, line)) bench.panel = LinePanel{ref};
    return;
  }
}

std::string grams_arg(double g) {
  std::string text = words::invariant(g, 3);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::optional<words::Error> doubt_about_drops(const session::Card& dropper, double g) {
  const DropsWeight says = weight_of_twenty(dropper);
  const bool far_off = g > 2 * says.value || g < says.value / 2;
  if (!(says.value > 0) || !far_off || !(std::abs(g - says.value) > surely * says.u))
    return std::nullopt;
  return words::Error{words::BenchSay::drops_doubted,
                      {words::Number(says.value, 2), words::Number(g, 2)}};
}

std::optional<words::Error> doubt_about_bought(double g) {
  constexpr double least_g = 0.1;
  if (!(g > 0 && g < least_g)) return std::nullopt;
  return words::Error{words::BenchSay::grams_tiny, {words::Number(g, 3)}};
}

std::optional<words::Error> doubt_about_added(const Bench& bench, const std::string& id, double g) {
  constexpr double far_too_loose = 3, of_scale = 0.05;
  const session::Card* card = shelf_card(bench, id);
  if (!card || !bench.folded) return std::nullopt;
  const auto left = stock_of(bench, *card);
  if (left && left->g > 0 && g > left->g + of_scale * left->of)
    return words::Error{words::BenchSay::more_than_left,
                        {words::Number(left->g, 1), words::Number(g, 1)}};
  const paint::Standing& s = bench.folded->standing;
  const auto material = session::material_of(*card);
  const auto& expected = bench.expected.answer;
  if (!material || card->kind() == session::CardKind::pigment || !expected || !s.flow_now)
    return std::nullopt;
  const double flow = s.flow_now->value + g * paint::mL_per_g(material->parts) / s.pigment_mL.value;
  if (!(flow > far_too_loose * std::exp(expected->band.to))) return std::nullopt;
  return words::Error{words::BenchSay::far_too_much,
                      {words::Number(g, 1), words::Number(s.pigment_g.value, 1)}};
}

std::optional<words::Error> doubt_about_pan(const session::Batch& batch, int number, double g) {
  constexpr double of_scale = 0.02, least_g = 0.05;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    if (e->withdrawn) continue;
    if (const auto* poured = std::get_if<session::Poured>(&e->event))
      if (poured->first <= number && number <= poured->last) return std::nullopt;
    const auto* weighed = std::get_if<session::PanWeighed>(&e->event);
    if (!weighed || weighed->pan != number) continue;
    if (g <= weighed->g * (1 + of_scale) + least_g) return std::nullopt;
    return words::Error{words::BenchSay::pan_heavier,
                        {words::Number(weighed->g, 2), words::Number(g, 2)}};
  }
  return std::nullopt;
}

std::optional<words::Error> doubt_about_left(const Bench& bench, const session::Card& card,
                                             double g) {
  constexpr double of_all = 0.25, of_scale = 0.05, least_g = 0.1;
  const auto left = stock_of(bench, card);
  if (!left) return doubt_about_bought(g);
  const bool contradicts =
      std::abs(g - left->g) > of_all * left->of || g > (1 + of_scale) * left->of;
  if (!contradicts) return doubt_about_bought(g);
  return words::Error{
      words::BenchSay::left_doubted,
      {words::Number(std::max(0.0, left->g), 1), words::Number(g, g > 0 && g < least_g ? 3 : 1)}};
}

}
