// A bench that learns, with its worker's part done at once.
#pragma once

#include "bench/learning.hpp"
#include "hands.hpp"
#include "paint/range/learn_bytes.hpp"

#include <doctest/doctest.h>

namespace studying {

// Sends a Study as long as one is wanted, and answers what is asked. How often it was asked.
inline int study_all(hands::Hands& h, std::optional<paint::ToldRange>* told = nullptr) {
  using namespace bench;
  int asked = 0;
  bool more = wants_to_study(h.b);
  for (int i = 0; more && i < 1000; ++i) {
    const Effects effects = step(h.b, Study{}, h.now());
    CHECK(effects.append.empty());
    CHECK_FALSE(effects.redraw);
    more = effects.study;
    if (!effects.learn) continue;
    ++asked;
    const Fitted fitted{paint::learn_bytes(effects.learn->problem), effects.learn->to_tell};
    const Effects answered = step(h.b, fitted, h.now());
    if (told && answered.tell) *told = answered.tell;
    more = answered.study;
  }
  CHECK_FALSE(more);
  return asked;
}

}
