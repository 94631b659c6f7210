#include "session/bottles.hpp"

#include "paint/bottle.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

using Amounts = std::vector<std::optional<paint::Amount>>;

constexpr double scale_step_g = 0.1;
constexpr double surely = 4;      // standard uncertainties, as for paint that is weighed
constexpr double most_lost_g = 2; // of drops nobody counted, some 40: own choice

bool by_scale(const Event& event, const std::string& card) {
  const auto* added = std::get_if<Added>(&event);
  return added && added->of == card && added->unit == Unit::g;
}

bool by_count(const Event& event, const std::string& card) {
  const auto* added = std::get_if<Added>(&event);
  const auto* lost = std::get_if<CountLost>(&event);
  return (added && added->of == card && added->unit != Unit::g) || (lost && lost->of == card);
}

// Two weighings of one bottle, and what was dropped, spooned or lost count of between them.
struct Between {
  std::vector<std::size_t> counted; // entries
  std::vector<paint::Amount> grams; // of each
  bool count_lost = false;
  BottleChecked check;
};

// Of a bottle that was filled up, below nothing.
paint::Amount lost_between(double before_g, double after_g, const std::string& name) {
  const bool gained = after_g > before_g;
  const auto by = paint::weighed_difference(std::max(before_g, after_g),
                                            std::min(before_g, after_g), name, scale_step_g);
  return by ? paint::scaled(*by, gained ? -1 : 1) : paint::exact(before_g - after_g);
}

Between between(const BatchLines& lines, const Amounts& amounts, std::size_t before,
                std::size_t after) {
  const auto& first = std::get<BottleWeighed>(lines.entries[before].event);
  const auto& second = std::get<BottleWeighed>(lines.entries[after].event);
  const Ref& ref = lines.entries[after].ref;
  Between out;
  paint::Amount counted;
  double by_scales = 0;
  for (std::size_t i = before; i < after; ++i) {
    if (!amounts[i]) continue;
    const Event& event = lines.entries[i].event;
    if (by_scale(event, first.of)) by_scales += amounts[i]->value;
    if (!by_count(event, first.of)) continue;
    out.count_lost = out.count_lost || std::holds_alternative<CountLost>(event);
    out.counted.push_back(i);
    out.grams.push_back(*amounts[i]);
    counted = counted + *amounts[i];
  }
  paint::Amount gone =
      lost_between(first.g, second.g, "bottle " + ref.session + " " + std::to_string(ref.n));
  gone.value -= by_scales;
  out.check = {lines.entries[before].ref, ref, gone, counted};
  return out;
}

// More came out of it than it lost.
bool is_heavier(const BottleChecked& check) { return check.weighed.value < 0; }

// A count that was lost is what a bottle is weighed for: there may have been more drops.
bool agree(const Between& two) {
  const paint::Amount off = two.check.weighed - two.check.counted;
  const double beyond =
      two.count_lost ? std::max(0.0, std::abs(off.value) - most_lost_g) : std::abs(off.value);
  return !is_heavier(two.check) && beyond <= surely * paint::uncertainty(off);
}

void believe(const Between& two, Amounts& amounts) {
  const auto split = paint::split(two.check.weighed, two.grams);
  if (!split) return; // nothing was counted
  for (std::size_t i = 0; i < two.counted.size(); ++i) amounts[two.counted[i]] = (*split)[i];
}

words::Error contradiction(const Between& two) {
  if (two.counted.empty()) return {words::PaintSay::nothing_counted, {}};
  return {words::PaintSay::bottle_contradicts,
          {words::Number(two.check.counted.value, 1), words::Number(two.check.weighed.value, 1)}};
}

// The weighings of one bottle that the next may be compared with: the first is believed, of the
// others it is not known.
using Earlier = std::vector<std::size_t>;

void doubt(BatchLines& lines, Between two, const std::string& of) {
  const Ref& ref = two.check.line;
  if (is_heavier(two.check))
    lines.warnings.push_back({WarningKind::bottle_heavier, ref, of});
  else
    lines.warnings.push_back({WarningKind::not_weighed, ref, of, contradiction(two)});
  two.check.stands = false;
  lines.bottles.push_back(std::move(two.check));
}

void weigh(BatchLines& lines, Amounts& amounts, Earlier& earlier, std::size_t at) {
  const Entry& e = lines.entries[at];
  Between two;
  for (auto before = earlier.rbegin(); before != earlier.rend(); ++before) {
    two = between(lines, amounts, *before, at);
    const bool said_so = e.confirmed && *before == earlier.front() && !is_heavier(two.check);
    if (!agree(two) && !said_so) continue;
    believe(two, amounts);
    lines.bottles.push_back(two.check);
    earlier = {at};
    return;
  }
  if (!earlier.empty()) doubt(lines, std::move(two), std::get<BottleWeighed>(e.event).of);
  earlier.push_back(at);
}

}

void weigh_bottles(BatchLines& lines, Amounts& amounts) {
  std::map<std::string, Earlier> earlier;
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const auto* weighed = std::get_if<BottleWeighed>(&lines.entries[i].event);
    if (weighed && !lines.entries[i].withdrawn) weigh(lines, amounts, earlier[weighed->of], i);
  }
}

}
