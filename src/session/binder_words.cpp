#include "session/binder_words.hpp"

#include "session/in_words.hpp"
#include "words/making_says.hpp"
#include "words/numbers.hpp"

#include <cmath>

namespace session {

using words::say;

namespace {

// In whole numbers where they come close, else to one of gum.
double whole_parts(const paint::Recipe& r) {
  const auto is_whole = [](double x) {
    return x == 0 || (x > 0.5 && std::abs(x - std::round(x)) <= 0.02 * x);
  };
  for (const double k : {1.0, 2.0, 3.0, 4.0, 5.0, 8.0, 10.0, 20.0}) {
    const double by = r.gum > 0 ? k / r.gum : 0;
    if (is_whole(r.water * by) && is_whole(r.honey * by) && is_whole(r.glycerin * by)) return k;
  }
  return 1;
}

}

std::string parts_words(const paint::Recipe& r) {
  const double k = whole_parts(r);
  std::string out;
  const auto add = [&](words::MakingSay part, double grams) {
    if (!(grams > 0) || !(r.gum > 0)) return;
    const double parts = k * grams / r.gum;
    const bool whole = std::abs(parts - std::round(parts)) <= 0.02 * parts;
    out += (out.empty() ? "" : ", ") + say(part, {words::number(parts, whole ? 0 : 2)});
  };
  add(words::MakingSay::part_gum, r.gum);
  add(words::MakingSay::part_water, r.water);
  add(words::MakingSay::part_honey, r.honey);
  add(words::MakingSay::part_glycerin, r.glycerin);
  return out;
}

std::string dose_words(Unit unit, double amount) {
  if (amount <= 0) return say(words::MakingSay::label_no_dose);
  return say(words::MakingSay::label_dose, {amount_words(unit, amount)});
}

}
