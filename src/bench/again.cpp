#include "bench/again.hpp"

#include "bench/advice.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

bool same_blend(const session::Batch& a, const session::Batch& b) {
  constexpr double same_share = 0.02; // as two weighings differ
  const auto of_a = session::pigments(a), of_b = session::pigments(b);
  return of_a.size() == of_b.size() &&
         std::all_of(of_a.begin(), of_a.end(), [&](const session::BatchPigment& one) {
           return std::any_of(of_b.begin(), of_b.end(), [&](const session::BatchPigment& other) {
             return one.card->id == other.card->id &&
                    std::abs(one.volume_share - other.volume_share) < same_share;
           });
         });
}

}

double made_first(const Bench& bench) {
  const bool again = bench.made && bench.folded && same_blend(*bench.made, *bench.folded);
  return again ? took_first(*bench.made) : 0;
}

}
