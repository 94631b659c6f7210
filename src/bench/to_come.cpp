#include "bench/to_come.hpp"

#include "bench/materials.hpp"
#include "bench/measures.hpp"
#include "paint/measure.hpp"
#include "session/amounts.hpp"
#include "session/plan.hpp"

#include <cmath>

namespace bench {

namespace {

ToComeView to_come_view(const Bench& bench, const session::ToCome& one) {
  ToComeView v{one.card->kind(), one.card->name, one.g, 0, one.begun};
  const auto drop = mL_of(bench, *one.card, TapAmount{});
  const auto material = session::material_of(*one.card);
  if (!drop || !material) return v;
  const double drops = std::round(one.g * paint::mL_per_g(material->parts) / *drop);
  if (drops <= most_counted) v.drops = drops_by_fives(0, static_cast<int>(drops));
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

}
