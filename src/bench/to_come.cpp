#include "bench/to_come.hpp"

#include "bench/materials.hpp"
#include "session/amounts.hpp"
#include "session/plan.hpp"

namespace bench {

namespace {

ToComeView to_come_view(const Bench& bench, const session::ToCome& one) {
  ToComeView v{one.card->kind(), one.card->name, one.g, {}, one.there_g > 0};
  if (!session::is_liquid(v.kind)) return v;
  const Measures of = measures_of(bench, *one.card);
  v.mL = one.g.value_or(0) / of.g_per_mL;
  v.amount = tapped(v.mL, of);
  if (const auto drops = drops_to_come(one, of); drops && v.begun) v.amount = {.drops = *drops};
  return v;
}

}

std::vector<ToComeView> to_come(const Bench& bench) {
  std::vector<ToComeView> out;
  if (!bench.folded) return out;
  for (const session::ToCome& one : session::to_come(*bench.folded))
    out.push_back(to_come_view(bench, one));
  return out;
}

bool pigment_to_come(const ToComeView& one) { return one.kind == session::CardKind::pigment; }

bool sweet_to_come(const ToComeView& one) {
  return one.kind == session::CardKind::honey || one.kind == session::CardKind::glycerin;
}

double first_mL(const std::vector<ToComeView>& to_come) {
  double mL = 0;
  for (const ToComeView& one : to_come) mL += one.first ? one.mL : 0;
  return mL;
}

void put_first(std::vector<ToComeView>& to_come, const Advice& advice, bool binder_is_in) {
  const bool drops = advice.kind == Advice::add_drops && !advice.water;
  for (ToComeView& one : to_come) {
    const bool water = one.kind == session::CardKind::water && binder_is_in;
    one.first = drops ? sweet_to_come(one) || water : sweet_to_come(one) && is_nearly_done(advice);
  }
}

}
