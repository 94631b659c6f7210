// How often the limits that are said of a difference hold it, over invented photos whose truth is
// known. Usage: colour_photos PAIRS [SEED]; fails where it is not nine in ten, within 3 in a
// hundred (of fewer than 1,000 pairs, within what so few can say: 3 sd).
#include "colour/photos/many.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
  const int pairs = count > 1 ? std::atoi(words[1]) : 0;
  const std::uint64_t seed = count > 2 ? std::strtoull(words[2], nullptr, 10) : 20261128;
  if (pairs < 1) {
    std::fprintf(stderr, "usage: colour_photos PAIRS [SEED]\n");
    return 2;
  }
  const double within = std::max(0.03, 3 * std::sqrt(0.9 * 0.1 / pairs));
  bool good = true;
  for (const auto taken : {colour::Taken::one_photo, colour::Taken::two_photos})
    for (const bool proposed : {false, true}) {
      const scene::Held held = scene::many(taken, pairs, seed, proposed);
      std::printf("%s, regions %s: %d pairs, %d told, held %.3f, truth below %d, above %d, "
                  "limits %.2f apart\n",
                  taken == colour::Taken::one_photo ? "one photo" : "two photos",
                  proposed ? "proposed" : "given", held.photos, held.told, held.share(), held.below,
                  held.above, held.wide);
      good = good && std::abs(held.share() - 0.9) <= within && held.told >= 0.9 * pairs;
    }
  return good ? 0 : 1;
}
