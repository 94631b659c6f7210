#include "session/making.hpp"

#include "paint/making.hpp"
#include "session/batch.hpp"
#include "session/shelf.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr std::int64_t a_minute_ms = 60000;

void take(Shelf& shelf, const MakingLine& line) {
  for (const Making::Take& one : line.says.takes)
    shelf.stock[one.of].taken[line.at] += std::llround(one.g * 1e6);
}

paint::Recipe* recipe_of_jar(Shelf& shelf, const std::string& jar) {
  const auto card = shelf.cards.find(jar);
  auto* liquid = card == shelf.cards.end() ? nullptr : std::get_if<LiquidCard>(&card->second.facts);
  return liquid ? &liquid->recipe : nullptr;
}

void change_jar(Shelf& shelf, const MakingLine& line) {
  const Making& m = line.says;
  paint::Recipe* recipe = recipe_of_jar(shelf, m.of);
  if (!recipe || !(m.had_g > 0)) return;
  const bool dried = m.step == MakingStep::dried;
  if (dried) {
    const auto left = paint::dried_by(*recipe, m.had_g, m.g);
    if (!left) return;
    *recipe = *left;
  } else {
    const bool gum = m.step == MakingStep::thickened;
    *recipe = paint::with(*recipe, m.had_g, {gum ? 0 : m.g, gum ? m.g : 0});
  }
  Stock& stock = shelf.stock[m.of];
  const double tare_g = stock.weighed ? stock.weighed->tare_g : 0;
  stock.weighed =
      Stock::Weighing{line.ref, line.at, m.had_g + (dried ? -m.g : m.g), tare_g, line.offset_min};
  take(shelf, line);
}

void begin_step(Shelf& shelf, const MakingLine& line) {
  const Making& m = line.says;
  const bool first = m.step == MakingStep::gum_in;
  if (first == (shelf.makings.count(m.of) > 0)) return;
  BinderMaking& making = shelf.makings[m.of];
  if (first) making.plan = m;
  if (making.given_up || begun(making, m.step)) return;
  making.steps.push_back({m.step, line.at, line.ref, m.g, m.drops});
  take(shelf, line);
}

void say_dose(Shelf& shelf, const Making& says) {
  const auto making = shelf.makings.find(says.of);
  if (making == shelf.makings.end()) return;
  making->second.dose_g = says.g;
  making->second.dose_drops = says.drops;
}

}

double usual_minutes(MakingStep step) {
  switch (step) {
  case MakingStep::gum_in: return 10;
  case MakingStep::steep: return 24 * 60;
  case MakingStep::strain: return 10;
  case MakingStep::sweeten: return 5;
  case MakingStep::preserve: return 1;
  case MakingStep::into_jar: return 5;
  case MakingStep::thinned:
  case MakingStep::thickened:
  case MakingStep::dried:
  case MakingStep::given_up:
  case MakingStep::dose: return 0;
  }
  return 0;
}

std::vector<MakingStep> steps_of(const paint::Recipe& recipe) {
  std::vector<MakingStep> out{MakingStep::gum_in, MakingStep::steep, MakingStep::strain};
  if (recipe.honey > 0 || recipe.glycerin > 0) out.push_back(MakingStep::sweeten);
  out.push_back(MakingStep::preserve);
  out.push_back(MakingStep::into_jar);
  return out;
}

const BinderMaking::Step* begun(const BinderMaking& making, MakingStep step) {
  const auto at = std::find_if(making.steps.begin(), making.steps.end(),
                               [&](const auto& one) { return one.step == step; });
  return at == making.steps.end() ? nullptr : &*at;
}

std::int64_t ends_at(const BinderMaking& making) {
  if (making.steps.empty()) return 0;
  const BinderMaking::Step& last = making.steps.back();
  return last.at + std::llround(usual_minutes(last.step)) * a_minute_ms;
}

bool stood_too_long(const BinderMaking& making, std::int64_t now_ms) {
  constexpr std::int64_t keeps_ms = 3 * a_day_ms; // common practice, no source
  const auto* preserved = begun(making, MakingStep::preserve);
  const bool is_preserved = preserved && (preserved->g > 0 || preserved->drops > 0);
  return !is_preserved && now_ms - ends_at(making) > keeps_ms;
}

std::optional<MakingStep> next_step(const BinderMaking& making) {
  for (const MakingStep step : steps_of(making.plan.start->parts))
    if (!begun(making, step)) return step;
  return std::nullopt;
}

void take_step(Shelf& shelf, const MakingLine& line) {
  switch (line.says.step) {
  case MakingStep::thinned:
  case MakingStep::thickened:
  case MakingStep::dried: return change_jar(shelf, line);
  case MakingStep::given_up: {
    const auto making = shelf.makings.find(line.says.of);
    if (making != shelf.makings.end()) making->second.given_up = true;
    return;
  }
  case MakingStep::dose: return say_dose(shelf, line.says);
  case MakingStep::gum_in:
  case MakingStep::steep:
  case MakingStep::strain:
  case MakingStep::sweeten:
  case MakingStep::preserve:
  case MakingStep::into_jar: return begin_step(shelf, line);
  }
}

}
