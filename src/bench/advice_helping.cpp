// The first helping of binder, and what of it is still to come.
#include "bench/advice_parts.hpp"
#include "paint/range/helping.hpp"

#include <algorithm>
#include <utility>

namespace bench {

namespace {

paint::Helping whole_helping_mL(const session::Batch& batch, const session::Expectation& expected,
                                const Known& known) {
  const paint::Helping flow =
      paint::first_helping(expected.prediction, known.took_first, known.takes_in_all);
  const double pigment_mL = batch.standing.pigment_mL.value;
  return {flow.low * pigment_mL, flow.high * pigment_mL};
}

Advice start_with(const paint::Helping& mL, const Measures& of, Advice advice) {
  advice.kind = Advice::first_helping;
  advice.low_g = mL.low * of.g_per_mL;
  advice.high_g = mL.high * of.g_per_mL;
  advice.amount = at_once(mL.low, mL.high, of);
  if (!is_nothing(advice.amount))
    advice.low_g = std::min(advice.low_g, mL_of(advice.amount, of) * of.g_per_mL);
  return advice;
}

}

Advice first_helping(const session::Batch& batch, const session::Expectation& expected,
                     const Measures& of, const Known& known, Advice advice) {
  return start_with(whole_helping_mL(batch, expected, known), of, std::move(advice));
}

std::optional<Advice> rest_of_helping(const session::Batch& batch,
                                      const session::Expectation& expected, const Measures& of,
                                      const Known& known, Advice advice) {
  constexpr double near_enough = 0.05, least_of_weighed = 0.7, round = 0.15; // own choices
  const double there_mL = batch.standing.liquid_mL.value;
  const paint::Helping all = whole_helping_mL(batch, expected, known);
  const Tapped said = start_with(all, of, advice).amount;
  const double low_mL = all.low - there_mL, high_mL = all.high - there_mL;
  advice.rest = batch.standing.binder_g.value > 0; // honey alone is no part of it
  if (is_nothing(said)) {
    const bool worth_it =
        low_mL > near_enough * there_mL && high_mL > most_counted / 3 * of.drop_mL;
    if (!worth_it) return std::nullopt;
    return start_with({least_of_weighed * high_mL, high_mL}, of, advice);
  }
  const double rest_mL = mL_of(said, of) - there_mL;
  if (!(rest_mL > near_enough * there_mL)) return std::nullopt;
  advice.kind = Advice::first_helping;
  advice.amount = at_once((1 - round) * rest_mL, std::min((1 + round) * rest_mL, high_mL), of);
  if (is_nothing(advice.amount)) advice.amount = tapped(rest_mL, of);
  const double amount_mL = mL_of(advice.amount, of);
  advice.low_g = (low_mL > 0 ? std::min(low_mL, amount_mL) : amount_mL) * of.g_per_mL;
  advice.high_g = std::max(high_mL, amount_mL) * of.g_per_mL;
  return advice;
}

bool is_hardly_wet(const session::Batch& batch, const Advice& rest, const Measures& of) {
  return rest.high_g / of.g_per_mL > batch.standing.liquid_mL.value;
}

}
