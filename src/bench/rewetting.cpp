#include "bench/rewetting.hpp"

#include "bench/choices.hpp"
#include "bench/materials.hpp"
#include "bench/measures.hpp"
#include "bench/softening.hpp"
#include "session/amounts.hpp"
#include "session/training.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

using session::Became;
using session::CardKind;
using session::DriedPaint;

// The least step from a paint that failed to the next one: our own choice, no source.
constexpr double at_least = 1.15;

struct Taught {
  std::vector<paint::SoftVerdict> soft;
  std::vector<paint::GumVerdict> gum;

  void add(const DriedPaint& dried) {
    if (const auto said = session::soft_verdict(dried)) soft.push_back(*said);
    if (dried.gum) gum.push_back(*dried.gum);
  }
};

struct Marks {
  paint::SoftMarks soft;
  paint::GumMarks gum;
};

// The class's other paints first, from where the pigments' own go on.
Marks marks_for(const Bench& bench, paint::PigmentClass family,
                const std::vector<std::string>& pigments) {
  Taught of_class, own;
  for (const auto& [id, dried] : bench.rewetting.of)
    if (dried.pigments == pigments)
      own.add(dried);
    else if (dried.family == family)
      of_class.add(dried);
  const auto soft = paint::marks_after(paint::usual_soft_marks(), of_class.soft);
  const auto gum = paint::marks_after(paint::usual_marks(family), of_class.gum);
  return {paint::marks_after(paint::for_a_pigment(soft), own.soft),
          paint::marks_after(gum, own.gum)};
}

std::optional<SoftWanted::Range> wanted(paint::Softener by, const paint::SoftRange& range,
                                        const paint::Room& room) {
  paint::Wet gum;
  gum.gum_g = 10;
  const auto low = paint::softener_g(by, range.low, gum, room);
  const auto high = paint::softener_g(by, range.high, gum, room);
  if (!low || !high) return std::nullopt;
  return SoftWanted::Range{*low, *high};
}

paint::Room planned_room(const Bench& bench) { return {bench.plan.celsius, bench.plan.humidity}; }

paint::Parts parts_of(const session::Card* card) {
  return card ? session::material_of(*card).value_or(paint::Material{}).parts : paint::Parts{};
}

// All that the plan puts in, dry; of honey and glycerin beside the binder so much.
paint::Wet planned_dry(const Bench& bench, const Planned& planned, double sweet_share = 1) {
  paint::Wet dry;
  const auto put = [&](const std::string& id, double g) {
    const session::Card* card = shelf_card(bench, id);
    const paint::Parts parts = parts_of(card);
    if (card && id != bench.plan.binder && is_sweet(*card)) g *= sweet_share;
    dry.gum_g += g * parts.gum;
    dry.honey_g += g * parts.honey;
    dry.glycerin_g += g * parts.glycerin;
  };
  put(bench.plan.binder, planned.binder_g);
  for (const PlannedPigment& extra : planned.extras) put(extra.card, extra.grams);
  return dry;
}

std::vector<std::string> planned_pigments(const Planned& planned) {
  std::vector<std::string> out;
  for (const PlannedPigment& p : planned.pigments) out.push_back(p.card);
  std::sort(out.begin(), out.end());
  return out;
}

const DriedPaint* last_dried(const Bench& bench, const std::vector<std::string>& pigments) {
  const DriedPaint* last = nullptr;
  for (const auto& [id, dried] : bench.rewetting.of)
    if (dried.pigments == pigments && (!last || dried.at > last->at)) last = &dried;
  return last;
}

// Paint of these pigments, the latest first.
using AllDried = std::vector<const DriedPaint*>;
AllDried dried_before(const Bench& bench, const std::vector<std::string>& pigments) {
  AllDried out;
  for (const auto& [id, dried] : bench.rewetting.of)
    if (dried.pigments == pigments) out.push_back(&dried);
  std::sort(out.begin(), out.end(), [](const auto* a, const auto* b) { return a->at > b->at; });
  return out;
}

// How far each way it has failed, where no plan goes back to, and the nearest beyond that was good.
struct Tried {
  double gum_g_per_mL = 0;           // the most that rubbed off
  double hard_index = 0;             // the sweetest that cracked or would not re-wet
  std::optional<double> tacky_index; // the least sweet that stayed tacky
  std::optional<double> good_gum_g_per_mL, good_index;
};

void take_failed(const DriedPaint& one, Tried& out) {
  if (one.as == Became::rubs_off)
    out.gum_g_per_mL = std::max(out.gum_g_per_mL, one.gum_g_per_mL);
  else if (one.as != Became::sticky)
    out.hard_index = std::max(out.hard_index, one.index);
  else if (one.index > 0)
    out.tacky_index = std::min(out.tacky_index.value_or(one.index), one.index);
}

void take_good(const DriedPaint& one, Tried& out) {
  const auto nearest = [](double value, double beyond, std::optional<double>& least) {
    if (value > beyond) least = std::min(least.value_or(value), value);
  };
  nearest(one.gum_g_per_mL, out.gum_g_per_mL, out.good_gum_g_per_mL);
  nearest(one.index, out.hard_index, out.good_index);
}

Tried tried(const AllDried& all) {
  Tried out;
  for (const DriedPaint* one : all)
    if (one->as != Became::good) take_failed(*one, out);
  for (const DriedPaint* one : all)
    if (one->as == Became::good) take_good(*one, out);
  return out;
}

void say_amount(const Bench& bench, const session::Card& card, double g, LastTime& out) {
  const Measures of = measures_of(bench, card);
  out.of = card.id;
  out.card = card.name;
  out.g = g;
  const Tapped counted = tapped(std::max(of.drop_mL, g / of.g_per_mL), of); // as it is listed
  if (counted.spoons <= 0) out.drops = counted.drops;
}

// Honey, else glycerin, as the shelf has it.
void ask_for_softener(const Bench& bench, double index, const paint::Wet& has, LastTime& out) {
  for (const auto& [kind, by] : {std::pair(CardKind::honey, paint::Softener::honey),
                                 std::pair(CardKind::glycerin, paint::Softener::glycerin)}) {
    const auto cards = shelf_of(bench, kind);
    if (cards.empty()) continue;
    const paint::Parts parts = parts_of(cards.front());
    const auto g = paint::softener_g(by, index, has, planned_room(bench));
    const double share = by == paint::Softener::honey ? parts.honey : parts.glycerin;
    if (!g || !(share > 0)) continue;
    out.enough = *g <= 0;
    if (!out.enough) say_amount(bench, *cards.front(), *g / share, out);
    return;
  }
}

void ask_for_gum(const Bench& bench, double gum_g, const paint::Wet& has, LastTime& out) {
  const session::Card* binder = shelf_card(bench, bench.plan.binder);
  const paint::Parts parts = parts_of(binder);
  if (!(parts.gum > 0)) return;
  const double short_g = gum_g - has.gum_g;
  out.enough = short_g <= 0;
  if (!out.enough) say_amount(bench, *binder, short_g / parts.gum, out);
}

double mL_of(const Bench& bench, const PlannedPigment& p) {
  const session::Card* card = shelf_card(bench, p.card);
  const double g_per_mL = card ? pigment_of(*card).pigment.g_per_mL : 0;
  return g_per_mL > 0 ? p.grams / g_per_mL : 0;
}

double pigment_mL(const Bench& bench, const Planned& planned) {
  double mL = 0;
  for (const PlannedPigment& p : planned.pigments) mL += mL_of(bench, p);
  return mL;
}

// Of the largest part by volume, as of a batch.
paint::PigmentClass family_planned(const Bench& bench, const Planned& planned) {
  double most = 0;
  auto family = paint::PigmentClass::unknown;
  for (const PlannedPigment& p : planned.pigments)
    if (const double mL = mL_of(bench, p); mL > most) {
      most = mL;
      family = pigment_of(*shelf_card(bench, p.card)).pigment.family;
    }
  return family;
}

// Of the extras' honey and glycerin, as much as dries in this room.
double share_that_dries(const Bench& bench, const Planned& planned, double index) {
  const auto dries = [&](double share) {
    const auto there = paint::tack_index(planned_dry(bench, planned, share), planned_room(bench));
    return there && *there <= index;
  };
  double least = 0, most = 1;
  if (dries(most)) return most;
  for (int i = 0; i < 20; ++i) {
    const double middle = (least + most) / 2;
    (dries(middle) ? least : most) = middle;
  }
  return least;
}

void ask_for_less(const Bench& bench, const Planned& planned, double index, LastTime& out) {
  const paint::Wet has = planned_dry(bench, planned);
  out.sweet_share = share_that_dries(bench, planned, index);
  paint::Wet gum;
  gum.gum_g = 10;
  const auto honey = paint::softener_g(paint::Softener::honey, index, gum, planned_room(bench));
  const auto there = paint::tack_index(has, planned_room(bench));
  out.enough = there && *there <= index;
  out.most_honey_g = honey.value_or(0);
}

double index_of(const Bench& bench, double gum_g, double honey_g) {
  paint::Wet dry;
  dry.gum_g = gum_g;
  dry.honey_g = honey_g;
  return paint::tack_index(dry, planned_room(bench)).value_or(0);
}

// As much as was good. Before that: the first time as much as is usual, then no more than twice
// what was too little, and less than what stayed tacky.
double sweet_enough(const Bench& bench, const Planned& planned, double range_low, const Tried& so) {
  if (so.good_index) return *so.good_index;
  constexpr double at_most = 2, hardly = 0.1;
  const double gum_g = planned_dry(bench, planned).gum_g, none = index_of(bench, gum_g, 0);
  const double usual = index_of(bench, gum_g, usual_honey_solids_g(planned.binder_g)) - none;
  const double low = range_low - none, failed = so.hard_index - none;
  const bool first = failed <= hardly * usual;
  double more =
      first ? std::min(low, usual) : std::max(at_least * failed, std::min(low, at_most * failed));
  if (so.tacky_index && none + more >= *so.tacky_index / at_least) {
    const double tacky = *so.tacky_index - none;
    more = first ? tacky / 2 : std::sqrt(failed * std::max(failed, tacky));
  }
  return none + more;
}

LastTime asked_by(const Bench& bench, const Planned& planned, const DriedPaint& last,
                  const Tried& so) {
  const Marks marks = marks_for(bench, last.family, last.pigments);
  const paint::SoftRange range = paint::soft_range(marks.soft);
  const paint::Wet has = planned_dry(bench, planned);
  LastTime out;
  out.as = last.as;
  if (last.as == Became::rubs_off) {
    const double least = std::max(marks.gum.enough_from, at_least * so.gum_g_per_mL);
    ask_for_gum(bench,
                std::min(least, so.good_gum_g_per_mL.value_or(least)) * pigment_mL(bench, planned),
                has, out);
  } else if (last.as == Became::sticky) {
    const double most = so.tacky_index ? *so.tacky_index / at_least : range.high;
    ask_for_less(bench, planned, std::min(range.high, most), out);
  } else {
    ask_for_softener(bench, sweet_enough(bench, planned, range.low, so), has, out);
  }
  return out;
}

// In what that one failed by, the plan goes as far as paint that was good: later, or with more of
// it.
bool is_like_the_good(const Bench& bench, const Planned& planned, const DriedPaint& failed,
                      const DriedPaint& good) {
  constexpr double alike = 0.98;
  const bool later = good.at > failed.at;
  const paint::Wet has = planned_dry(bench, planned);
  if (failed.as == Became::rubs_off)
    return (later || good.gum_g_per_mL > failed.gum_g_per_mL) &&
           has.gum_g >= alike * good.gum_g_per_mL * pigment_mL(bench, planned);
  const auto index = paint::tack_index(has, planned_room(bench));
  if (!index || !(good.index > 0)) return later;
  if (failed.as == Became::sticky)
    return (later || good.index < failed.index) && alike * *index <= good.index;
  return (later || good.index > failed.index) && *index >= alike * good.index;
}

bool is_like_any_good(const Bench& bench, const Planned& planned, const DriedPaint& failed,
                      const AllDried& all) {
  return std::any_of(all.begin(), all.end(), [&](const DriedPaint* one) {
    return one->as == Became::good && is_like_the_good(bench, planned, failed, *one);
  });
}

std::vector<std::string> pigments_in(const session::Batch& batch) {
  std::vector<std::string> out;
  for (const session::BatchPigment& p : session::pigments(batch)) out.push_back(p.card->id);
  std::sort(out.begin(), out.end());
  return out;
}

// Our own guess until a verdict was said.
paint::TackMark mark_of(const Bench& bench, const session::Batch& batch,
                        const std::vector<std::string>& pigments) {
  const auto mark = marks_for(bench, session::family_of(batch), pigments).soft.sticky;
  return mark.verdicts > 0 ? mark : paint::TackMark{};
}

}

void learn_dried(Bench& bench, const std::string& batch, const session::Batch* folded) {
  const auto now = folded ? session::dried_paint(*folded) : std::nullopt;
  if (now)
    bench.rewetting.of[batch] = *now;
  else if (bench.rewetting.of.erase(batch) == 0)
    return;
  ++bench.rewetting.version;
}

SoftWanted soft_wanted(const Bench& bench, const session::Card& pigment) {
  const auto family = pigment_of(pigment).pigment.family;
  const Marks marks = marks_for(bench, family, {pigment.id});
  const paint::SoftRange range = paint::soft_range(marks.soft);
  SoftWanted out;
  out.damp = !paint::tack_index({.gum_g = 10}, planned_room(bench));
  out.honey = wanted(paint::Softener::honey, range, planned_room(bench));
  out.glycerin = wanted(paint::Softener::glycerin, range, planned_room(bench));
  if (const double g_per_mL = pigment_of(pigment).pigment.g_per_mL; g_per_mL > 0)
    out.gum = {10 * marks.gum.enough_from / g_per_mL, 10 * marks.gum.enough_to / g_per_mL};
  for (const auto& [id, dried] : bench.rewetting.of)
    if (dried.pigments == std::vector{pigment.id})
      ++out.verdicts;
    else if (dried.family == family)
      ++out.of_class;
  if (const DriedPaint* last = last_dried(bench, {pigment.id})) out.last = last->as;
  return out;
}

std::optional<LastTime> last_time(const Bench& bench, const Planned& planned) {
  const AllDried all = dried_before(bench, planned_pigments(planned));
  if (all.empty()) return std::nullopt;
  const Tried so = tried(all);
  const DriedPaint& last = *all.front();
  for (const DriedPaint* one : all) {
    if (one->as == Became::good || is_like_any_good(bench, planned, *one, all)) continue;
    LastTime asked = asked_by(bench, planned, *one, so);
    asked.earlier = one != &last;
    if (!asked.enough) return asked;
  }
  if (last.as == Became::good) return std::nullopt;
  LastTime enough;
  enough.as = last.as;
  enough.enough = true;
  return enough;
}

bool is_short_of_gum(const Bench& bench, const Planned& planned) {
  const auto marks = session::marks_of(bench.learning.verdicts, family_planned(bench, planned));
  return paint::gum_state(planned_dry(bench, planned).gum_g, pigment_mL(bench, planned), marks) ==
         paint::GumState::too_little;
}

paint::TackMark tack_mark(const Bench& bench, const session::Batch& batch) {
  return mark_of(bench, batch, pigments_in(batch));
}

void mark_tack(Bench& bench) {
  if (!bench.folded) return;
  Rewetting::Tack& slab = bench.rewetting.slab;
  auto pigments = pigments_in(*bench.folded);
  if (slab.version == bench.rewetting.version && slab.pigments == pigments) return;
  slab.mark = mark_of(bench, *bench.folded, pigments);
  slab.version = bench.rewetting.version;
  slab.pigments = std::move(pigments);
}

double hard_below(const Bench& bench, paint::PigmentClass family) {
  return std::exp(marks_for(bench, family, {}).soft.hard.ln_middle);
}

}
