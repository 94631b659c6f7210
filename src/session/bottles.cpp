#include "session/bottles.hpp"

#include "paint/bottle.hpp"
#include "paint/measure.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

using Amounts = std::vector<std::optional<paint::Amount>>;

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
  double by_scales = 0; // g that were weighed out of it
  BottleChecked check;
};

// Of a bottle that was filled up, below nothing.
paint::Amount lost_between(double before_g, double after_g, const std::string& name) {
  const bool gained = after_g > before_g;
  const auto by = paint::weighed_difference(std::max(before_g, after_g),
                                            std::min(before_g, after_g), name, paint::scale_step_g);
  return by ? paint::scaled(*by, gained ? -1 : 1) : paint::exact(before_g - after_g);
}

Between between(const BatchLines& lines, const Amounts& amounts, std::size_t before,
                std::size_t after) {
  const auto& first = std::get<BottleWeighed>(lines.entries[before].event);
  const auto& second = std::get<BottleWeighed>(lines.entries[after].event);
  const Ref& ref = lines.entries[after].ref;
  Between out;
  paint::Amount counted;
  for (std::size_t i = before; i < after; ++i) {
    if (!amounts[i]) continue;
    const Event& event = lines.entries[i].event;
    if (by_scale(event, first.of)) out.by_scales += amounts[i]->value;
    if (!by_count(event, first.of)) continue;
    out.count_lost = out.count_lost || std::holds_alternative<CountLost>(event);
    out.counted.push_back(i);
    out.grams.push_back(*amounts[i]);
    counted = counted + *amounts[i];
  }
  paint::Amount gone =
      lost_between(first.g, second.g, "bottle " + ref.session + " " + std::to_string(ref.n));
  gone.value -= out.by_scales;
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

// Where nothing was counted: what is gone went elsewhere.
words::Error nothing_counted(double gone_g) {
  if (gone_g < paint::scale_step_g / 2) return {words::SessionSay::bottle_unchanged, {}};
  return {words::SessionSay::bottle_uncounted, {words::Number(gone_g, 1)}};
}

words::Error lost_less(const Between& two) {
  const double lost_g = two.check.weighed.value + two.by_scales;
  if (lost_g < 0) return {words::PaintSay::bottle_gained, {words::Number(-lost_g, 1)}};
  return {words::SessionSay::bottle_lost_less,
          {words::Number(lost_g, 1), words::Number(two.by_scales, 1)}};
}

// Why the second weighing moves nothing.
Warning left_out(const Between& two, const std::string& name) {
  const double gone_g = two.check.weighed.value;
  if (is_heavier(two.check))
    return {WarningKind::bottle_heavier, two.check.line, name, lost_less(two)};
  if (two.counted.empty())
    return {WarningKind::bottle_uncounted, two.check.line, name, nothing_counted(gone_g)};
  return {WarningKind::not_weighed, two.check.line, name,
          words::Error{words::PaintSay::bottle_contradicts,
                       {words::Number(two.check.counted.value, 1), words::Number(gone_g, 1)}}};
}

// The weighings of one bottle that the next may be compared with: the first is believed, of the
// others it is not known.
using Earlier = std::vector<std::size_t>;

// One that told nothing of what was before it may still begin what is told by the next one.
using ToldNothing = std::map<std::size_t, Warning>;

void weigh(BatchLines& lines, Amounts& amounts, Earlier& earlier, ToldNothing& told,
           std::size_t at) {
  const Entry& e = lines.entries[at];
  const std::string& of = std::get<BottleWeighed>(e.event).of;
  const std::string& name = lines.cards[at] ? lines.cards[at]->name : of;
  Between two;
  for (auto before = earlier.rbegin(); before != earlier.rend(); ++before) {
    two = between(lines, amounts, *before, at);
    const bool agrees = agree(two);
    const bool said_so = e.confirmed && *before == earlier.front() && !is_heavier(two.check);
    if (!agrees && !said_so) continue;
    if (two.counted.empty() && agrees) {
      told.emplace(at, left_out(two, name));
    } else if (const auto began = told.find(*before);
               began != told.end() && began->second.kind == WarningKind::bottle_uncounted) {
      told.erase(began);
    }
    believe(two, amounts);
    lines.bottles.push_back(two.check);
    earlier = {at};
    return;
  }
  if (!earlier.empty()) {
    told.emplace(at, left_out(two, name));
    two.check.stands = false;
    lines.bottles.push_back(std::move(two.check));
  }
  earlier.push_back(at);
}

}

void weigh_bottles(BatchLines& lines, Amounts& amounts) {
  std::map<std::string, Earlier> earlier;
  ToldNothing told;
  for (std::size_t i = 0; i < lines.entries.size(); ++i) {
    const auto* weighed = std::get_if<BottleWeighed>(&lines.entries[i].event);
    if (weighed && !lines.entries[i].withdrawn)
      weigh(lines, amounts, earlier[weighed->of], told, i);
  }
  for (auto& [line, warning] : told) lines.warnings.push_back(std::move(warning));
}

}
