// Hands that do what the screen says, by its pads alone, with a feel of their own.
#pragma once

#include "hands.hpp"
#include "words/numbers.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace obeying {

using namespace bench;
using hands::Hands;
using session::Feel, session::Pass, session::Stage;

// Finds right so near to what the paint wants, ln flow.
inline Feel felt_by_hand(double off) {
  constexpr double half = 0.12, reach = 0.30;
  return off < -half - reach ? Feel::wont_move
         : off < -half       ? Feel::too_sticky
         : off < half        ? Feel::right
                             : Feel::too_loose;
}

inline void tap_amount(Hands& h, const std::string& amount, const std::string& material) {
  h.tap("another");
  h.tap("amount " + amount);
  h.tap("add " + material);
}

inline void put_in(Hands& h, const Tapped& said, const std::string& material) {
  if (said.g > 0) {
    tap_amount(h, "weigh", material);
    return h.type(words::invariant(said.g, 1));
  }
  double spoons = said.spoons;
  for (const auto& [name, of] : {std::pair{"1 tsp", 1.0}, {"1/2 tsp", 0.5}, {"1/4 tsp", 0.25}})
    for (; spoons >= of; spoons -= of) tap_amount(h, name, material);
  int drops = said.drops;
  for (const auto& [name, of] : {std::pair{"10 drops", 10}, {"5 drops", 5}, {"1 drop", 1}})
    for (; drops >= of; drops -= of) tap_amount(h, name, material);
}

inline Feel felt_on_glass(Hands& h, double wants) {
  const Feel feel = felt_by_hand(std::log(h.b.folded->standing.flow_now->value / wants));
  h.tap("felt " + std::string(name_of(feel)));
  return feel;
}

inline Feel work_in(Hands& h, double wants) {
  if (!running(*h.b.folded)) h.tap("pass");
  h.wait(130);
  return felt_on_glass(h, wants);
}

// Specks go in the third pass.
inline void make_dot(Hands& h) {
  const auto passes = std::count_if(h.b.folded->passes.begin(), h.b.folded->passes.end(),
                                    [](const Pass& p) { return p.stage == Stage::mulling; });
  h.tap("dot");
  h.tap(passes < 2 ? "specks many" : passes < 3 ? "specks few" : "specks none");
}

inline Feel mull(Hands& h, double wants, double seconds = 0) {
  h.tap("pass");
  h.wait(seconds > 0 ? seconds : h.b.mulling.pass_s);
  const Feel feel = felt_on_glass(h, wants);
  h.tap("pass");
  make_dot(h);
  return feel;
}

inline Feel do_what_is_said(Hands& h, double wants) {
  const Advice advice = h.slab().advice;
  switch (advice.kind) {
  case Advice::first_helping:
    put_in(h, advice.amount.spoons > 0 ? advice.amount : Tapped{.g = advice.high_g}, "gum_12");
    return Feel::wont_move;
  case Advice::add_drops:
    put_in(h, advice.amount, advice.water ? "water" : "gum_12");
    return Feel::wont_move;
  case Advice::work_in: return work_in(h, wants);
  case Advice::mull_and_judge: return advice.by_knife ? work_in(h, wants) : mull(h, wants);
  case Advice::too_loose:
  case Advice::past_right: return mull(h, wants, advice.dry_min * 60.0);
  case Advice::right_by_now:
  case Advice::keep_mulling:
  case Advice::judge_again: return mull(h, wants);
  case Advice::test_dot:
    if (advice.gum == paint::GumState::too_little) return mull(h, wants);
    make_dot(h);
    return Feel::right;
  case Advice::give_back: put_in(h, advice.amount, "water"); return Feel::wont_move;
  case Advice::soak: h.wait(60 * advice.wait_min); return Feel::wont_move;
  case Advice::weigh_pigment:
  case Advice::a_wash:
  case Advice::there:
  case Advice::gathered: break;
  }
  FAIL("nobody expects " << advice.kind);
  return Feel::too_runny;
}

}
