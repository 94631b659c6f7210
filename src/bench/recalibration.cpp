#include "bench/recalibration.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "paint/bottle.hpp"
#include "paint/dropper.hpp"
#include "session/amounts.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr double surely = 4; // standard uncertainties, as for any weighing
constexpr double told = 20;  // drops, by which a card is told

using session::Entry;
using Entries = std::vector<const Entry*>;

template <class E>
const E* as(const Entry& entry) {
  return entry.withdrawn ? nullptr : std::get_if<E>(&entry.event);
}

struct Weighings {
  Entries lines; // both, and what lies between
  bool confirmed = false;
};

// The bottle weighed last, and the weighing before that which was compared with it.
Weighings last_weighings(const session::Batch& batch) {
  const Entry* last = nullptr;
  for (const Entry& e : batch.entries)
    if (as<session::BottleWeighed>(e)) last = &e;
  const auto checked = std::find_if(
      batch.bottles.begin(), batch.bottles.end(),
      [&](const session::BottleChecked& c) { return last && c.stands && c.line == last->ref; });
  Weighings out;
  if (checked == batch.bottles.end()) return out;
  out.confirmed = last->confirmed;
  for (const Entry& e : batch.entries) {
    if (!out.lines.empty() || e.ref == checked->since) out.lines.push_back(&e);
    if (e.ref == checked->line) break;
  }
  return out;
}

struct Counted {
  std::string dropper;
  double drops = 0;
  double weighed_g = 0;
  std::int64_t first_at = 0; // its first drop
};

// Absent where more than one dropper's count and the scale stand between.
std::optional<Counted> counted(const Entries& lines, const std::string& of) {
  Counted sum;
  for (const Entry* line : lines) {
    const auto* lost = as<session::CountLost>(*line);
    if (lost && lost->of == of) return std::nullopt;
    const auto* added = as<session::Added>(*line);
    if (!added || added->of != of) continue;
    if (added->unit == session::Unit::spoons) return std::nullopt;
    if (added->unit == session::Unit::g) {
      sum.weighed_g += added->amount;
      continue;
    }
    if (!sum.dropper.empty() && sum.dropper != added->with) return std::nullopt;
    if (sum.dropper.empty()) sum.first_at = line->at;
    sum.dropper = added->with;
    sum.drops += added->amount;
  }
  return sum.drops > 0 ? std::optional(sum) : std::nullopt;
}

std::optional<paint::Amount> weighed_in_drops(const Entries& lines, double weighed_g) {
  const auto gone =
      paint::weighed_difference(as<session::BottleWeighed>(*lines.front())->g,
                                as<session::BottleWeighed>(*lines.back())->g, "bottle");
  if (!gone) return std::nullopt;
  paint::Amount in_drops = *gone;
  in_drops.value -= weighed_g;
  return in_drops.value > 0 ? std::optional(in_drops) : std::nullopt;
}

// Its card was written anew, perhaps by this very weighing: drops counted before say nothing new.
bool edited_since(const Bench& bench, const std::string& card, std::int64_t at) {
  for (const session::Log& log : bench.logs)
    for (const session::Line& line : log.lines) {
      const auto* laid = std::get_if<session::LaidOut>(&line.event);
      if (laid && line.batch.empty() && line.at >= at && laid->card->id == card) return true;
    }
  return false;
}

std::optional<DropperFound> found(const session::Card& dropper, const session::Card& liquid,
                                  double drops, const paint::Amount& grams, bool confirmed) {
  const auto material = session::material_of(liquid);
  if (!material) return std::nullopt;
  const paint::Dropper before = session::dropper_of(dropper);
  const auto expected = paint::grams_of_drops(drops, before, *material);
  if (!expected) return std::nullopt;
  const paint::Amount off = grams - *expected;
  if (!confirmed && std::abs(off.value) > surely * paint::uncertainty(off)) return std::nullopt;
  const auto after = paint::recalibrated(before, drops, *material, grams);
  if (!after) return std::nullopt;
  DropperFound out{dropper, liquid.name, drops};
  out.card.facts = session::DropperCard{{after->mL_per_drop, after->mL_per_drop_u}, liquid.kind()};
  out.found_g = told * after->mL_per_drop * paint::g_per_mL(*material);
  out.was_g = told / drops * expected->value;
  return out;
}

}

std::optional<DropperFound> dropper_found(const Bench& bench) {
  if (!bench.folded) return std::nullopt;
  const auto [lines, confirmed] = last_weighings(*bench.folded);
  if (lines.empty()) return std::nullopt;
  const std::string of = as<session::BottleWeighed>(*lines.back())->of;
  const auto sum = counted(lines, of);
  if (!sum) return std::nullopt;
  const auto grams = weighed_in_drops(lines, sum->weighed_g);
  const auto dropper = card_of(bench, sum->dropper), liquid = card_of(bench, of);
  const session::Card* on_shelf = shelf_card(bench, sum->dropper);
  if (!grams || !dropper || !liquid || !on_shelf || on_shelf->facts != dropper->facts ||
      edited_since(bench, dropper->id, sum->first_at))
    return std::nullopt;
  return found(*dropper, *liquid, sum->drops, *grams, confirmed);
}

}
