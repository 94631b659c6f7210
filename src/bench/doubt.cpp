#include "bench/doubt.hpp"

#include "bench/act.hpp"
#include "bench/advice_parts.hpp"
#include "bench/card_dropper.hpp"
#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/making.hpp"
#include "bench/materials.hpp"
#include "bench/pans.hpp"
#include "bench/planning.hpp"
#include "bench/stock.hpp"
#include "paint/slip.hpp"
#include "session/amounts.hpp"
#include "session/plan.hpp"
#include "words/bench_says.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

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
  doubt.can_count = weighed.g > weighed.tare_g && g.value > 0;
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

namespace {

constexpr int most_portions = 10; // over one slab, one after the other: an evening and more

double with_its_liquid_mL(const session::Card& card, double g) {
  constexpr double by_volume = 2; // of the pigment's own: about what paint of it is
  const auto material = session::material_of(card);
  const double density = session::pigment_of(card).pigment.g_per_mL;
  if (card.kind() == session::CardKind::pigment) return density > 0 ? by_volume * g / density : g;
  return material ? g * paint::mL_per_g(material->parts) : g;
}

std::optional<words::Error> more_than_left(const Bench& bench, const session::Card& card, double g,
                                           double was_g) {
  constexpr double of_scale = 0.05;
  const auto left = stock_of(bench, card);
  if (!left || !(left->g + was_g > 0) || g <= left->g + was_g + of_scale * left->of)
    return std::nullopt;
  return words::Error{words::BenchSay::more_than_left,
                      {words::Number(left->g + was_g, 1), words::Number(g, 1)}};
}

std::optional<words::Error> far_too_loose(const Bench& bench, const session::Card& card, double g,
                                          double was_g) {
  const paint::Standing& s = bench.folded->standing;
  const auto material = session::material_of(card);
  const auto& expected = bench.expected.answer;
  if (!material || card.kind() == session::CardKind::pigment || !expected || !s.flow_now)
    return std::nullopt;
  const double more_mL = (g - was_g) * paint::mL_per_g(material->parts);
  const double flow = s.flow_now->value + more_mL / s.pigment_mL.value;
  if (!(more_mL > 0 && flow > times_too_loose * std::exp(expected->band.to))) return std::nullopt;
  return words::Error{words::BenchSay::far_too_much,
                      {words::Number(g, 1), words::Number(s.pigment_g.value, 1)}};
}

// A point that was forgotten makes ten times as much; weighed at the slab once more, what was
// counted as it was begun, makes twice as much.
std::optional<words::Error> past_the_plan(const session::Batch& batch, const session::Card& card,
                                          double g, double was_g) {
  constexpr double times = 2, nearly_all = 0.9, again = 1.4;
  if (!batch.plan || card.kind() != session::CardKind::pigment) return std::nullopt;
  double before = 0;
  for (const session::Total& total : batch.totals)
    if (total.card.id == card.id) before += total.grams.value;
  const double there = before + g - was_g;
  for (const session::Planned::Take& take : batch.plan->of.takes) {
    const auto planned = session::grams_planned(batch, take);
    if (take.of != card.id || !planned) continue;
    const bool was_there = was_g <= 0 && before >= nearly_all * *planned;
    if (there > (was_there ? again : times) * *planned)
      return words::Error{
          was_there ? words::BenchSay::past_what_counts : words::BenchSay::past_the_plan,
          {words::Number(was_there ? before : *planned, 1), words::Number(there, 1)}};
  }
  return std::nullopt;
}

std::optional<words::Error> so_many_portions(double mL) {
  const int portions = portions_of(mL);
  if (portions <= most_portions) return std::nullopt;
  return words::Error{words::BenchSay::so_many_portions, {words::Number(portions, 0)}};
}

}

std::optional<words::Error> doubt_about_so_much(const session::Card& card, double g) {
  return so_many_portions(with_its_liquid_mL(card, g));
}

std::optional<words::Error> doubt_about_wanted(const Bench& bench, double wanted) {
  const int portions = portions_wanted(bench, wanted);
  return so_many_portions(portions * portion_mL);
}

std::optional<words::Error> doubt_about_added(const Bench& bench, const std::string& id, double g,
                                              double was_g) {
  const auto card = card_of(bench, id);
  if (!card || !bench.folded || !(g > was_g)) return std::nullopt;
  if (shelf_card(bench, id))
    if (auto doubt = more_than_left(bench, *card, g, was_g)) return doubt;
  if (auto doubt = far_too_loose(bench, *card, g, was_g)) return doubt;
  if (auto doubt = past_the_plan(*bench.folded, *card, g, was_g)) return doubt;
  return doubt_about_so_much(*card, g);
}

namespace {

// g of pigment in one pan, by its share of what was poured.
double powder_in(const session::Batch& batch, int number) {
  double all_mL = 0, here_mL = 0;
  for (const session::Pan& pan : batch.pans)
    for (const session::PouredLayer& layer : pan.layers) {
      all_mL += layer.wet_mL;
      if (pan.number == number) here_mL += layer.wet_mL;
    }
  const auto poured = batch.places.at.find(session::Place::pans);
  if (!(all_mL > 0) || poured == batch.places.at.end()) return 0;
  return poured->second.sums.pigment_g * here_mL / all_mL;
}

}

std::optional<words::Error> doubt_about_pan(const session::Batch& batch, int number, double g,
                                            const session::Entry* line) {
  constexpr double of_scale = 0.02, least_g = 0.05, of_powder = 0.8;
  const double powder_g = powder_in(batch, number);
  if (g < of_powder * powder_g)
    return words::Error{words::BenchSay::pan_lighter,
                        {words::Number(powder_g, 1), words::Number(g, 2)}};
  bool before = !line;
  for (auto e = batch.entries.rbegin(); e != batch.entries.rend(); ++e) {
    const bool this_one = line && e->ref == line->ref;
    if (this_one) before = true;
    if (e->withdrawn || this_one || !before) continue;
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

namespace {

std::optional<words::Error> fault_of_spilt_earlier(const session::Batch& batch, double g) {
  double in_all_g = 0;
  for (const session::Total& t : batch.totals) in_all_g += t.grams.value;
  if (g <= in_all_g) return std::nullopt;
  return words::Error{words::BenchSay::spilt_more_than_all,
                      {words::Number(in_all_g, 1), words::Number(g, 1)}};
}

}

std::optional<words::Error> fault_of_spilt(const session::Batch& batch, const session::Lost& lost,
                                           bool earlier) {
  const auto here = batch.places.at.find(lost.from);
  const auto g = paint::grams_weighed(lost.quantity.g.value_or(0));
  if (!g) return g.error();
  if (earlier) return fault_of_spilt_earlier(batch, g->value);
  const paint::Mixture none;
  const paint::Mixture& there = here == batch.places.at.end() ? none : here->second.paint;
  const double there_g = paint::grams_of(there, batch.places.bench).value;
  if (g->value <= there_g || paint::share_of(there, *g, batch.places.bench, "spilt"))
    return std::nullopt;
  return words::Error{words::BenchSay::spilt_more,
                      {words::Number(there_g, 1), words::Number(g->value, 1)}};
}

// Paint weighs at most 3 g/mL, wet.
std::optional<words::Error> fault_of_pour(const session::Batch& batch, int number, double g) {
  const session::Pan* pan = pan_numbered(batch, number);
  const double mL = pan ? volume_of(pan->card).mL : 0;
  if (!pan || g <= 3 * mL) return std::nullopt;
  return words::Error{words::BenchSay::pan_holds_less, {words::Number(mL, 1), words::Number(g, 0)}};
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

std::optional<words::Error> doubt_about_jar(const Bench& bench, double g) {
  constexpr double of_scale = 0.05;
  const auto parts = to_put_in(bench);
  if (!parts) return std::nullopt;
  const double went_in = paint::sum_of(*parts) + grams_of(dose_of(bench));
  if (g <= (1 + of_scale) * went_in) return std::nullopt;
  return words::Error{words::BenchSay::jar_holds_more,
                      {words::Number(went_in, 0), words::Number(g, 0)}};
}

std::optional<words::Error> doubt_about_dose(const Bench& bench, double amount) {
  constexpr double most_share = 0.1; // own choice: suppliers say a few drops, or 1 to 2 %
  const auto parts = to_put_in(bench);
  const double g = grams_of({amount, bench.binder.dose_in_g});
  if (!parts || g <= most_share * paint::sum_of(*parts)) return std::nullopt;
  return words::Error{words::BenchSay::dose_doubted,
                      {words::Number(g, 1), words::Number(paint::sum_of(*parts), 0)}};
}

std::optional<words::Error> doubt_about_left_out(const session::Batch& batch) {
  if (!batch.plan || batch.newer || !batch.pans.empty()) return std::nullopt;
  std::string names;
  for (const session::Planned::Take& take : batch.plan->of.takes) {
    const auto card = batch.cards.find(take.of);
    if (card == batch.cards.end() || card->second.kind() != session::CardKind::pigment) continue;
    if (session::grams_in(batch, take.of) > 0) continue;
    names += (names.empty() ? "" : ", ") + card->second.name;
  }
  if (names.empty()) return std::nullopt;
  return words::Error{words::BenchSay::pigment_left_out, {std::move(names)}};
}

bool asks_what_is_left_out(Bench& bench, const session::Batch& batch, const Now& now) {
  auto doubt = doubt_about_left_out(batch);
  if (!doubt || std::exchange(bench.asked_left_out, batch.id) == batch.id) return false;
  say_error(bench, *std::move(doubt), now);
  return true;
}

}
