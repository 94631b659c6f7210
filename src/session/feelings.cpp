#include "session/feelings.hpp"

#include "paint/water.hpp"
#include "words/lists.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace session {

namespace {

std::vector<std::pair<std::string, double>> pigments_in(const paint::Mixture& paint) {
  std::vector<std::pair<std::string, double>> out;
  for (const paint::Portion& p : paint.contents) {
    const double g = p.grams.value * p.material.parts.pigment;
    if (g > 0) out.push_back({p.card, g / p.material.pigment.g_per_mL});
  }
  return out;
}

// Anything done to the paint, or another pass, makes the same word a new one.
struct Changes {
  template <words::one_of<Added, CountLost, StageBegan, Found, Moved, Lost> Change>
  bool operator()(const Change&) const {
    return true;
  }
  template <
      words::one_of<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Opened, Planned,
                    RoomSet, CautionsSeen, Felt, GoesOn, Dot, Trouble, BottleWeighed, Weighed,
                    AsBefore, Poured, PanWeighed, Verdict, Noted, SetAside, Confirmed, Withdrawn,
                    Corrected, Photo, Gone, Gathered, Closed, Discarded, ClockJumped, Left, Unknown>
          None>
  bool operator()(const None&) const {
    return false;
  }
};

void set_aside(FoldState& state, const Ref& note) {
  state.set_aside.insert(note);
  for (std::size_t i = state.batch.feelings.size(); i-- > 0;)
    if (state.batch.feelings[i].line == note) state.batch.feelings.change(i).set_aside = true;
}

bool is_dry_cake(const FoldState& state) {
  return state.soaked_at && state.batch.clock < *state.soaked_at;
}

// Work that nobody timed has taken no longer than there was liquid to do it with.
bool is_unwetted(const FoldState& state, const Felt& felt) {
  const Batch& batch = state.batch;
  if (felt.as >= Feel::right) return false;
  if (is_dry_cake(state)) return true;
  if (felt.by != By::knife || is_worked_in(batch)) return false;
  return running(batch) || batch.clock - *state.wet_at < wetted_out_s;
}

// A hand that finds it right, or looser, has paint before it.
void soak(FoldState& state, const Entry& entry) {
  const auto* found = std::get_if<Found>(&entry.event);
  const auto* felt = std::get_if<Felt>(&entry.event);
  if (found && found->as == State::dry)
    state.soaked_at = std::numeric_limits<Clock>::infinity();
  else if (found || (felt && felt->as >= Feel::right))
    state.soaked_at.reset();
  else if (state.soaked_at && entry.grams && entry.flow > entry.flow_before)
    state.soaked_at = std::min(*state.soaked_at, state.batch.clock + soaked_s);
}

Feeling feeling_of(const FoldState& state, const Entry& entry, const Felt& felt,
                   const paint::Mixture& paint) {
  const Batch& batch = state.batch;
  const paint::Sums sums = paint::sums_of(paint.contents);
  const paint::Live now = paint::live(sums, paint);
  const paint::WentIn there = paint::went_in(paint.contents);
  const double put_in = there.liquid_mL.value;
  Feeling f;
  f.line = entry.ref;
  f.as = felt.as;
  f.by = felt.by;
  f.unwetted = is_unwetted(state, felt);
  f.mulled_s = seconds_of(batch, Stage::mulling);
  f.flow = *entry.flow;
  f.dry_gum = paint::dry_gum(sums, now);
  f.gum_put_in = there.dry_gum;
  f.scatter = std::sqrt(there.liquid_mL.variance) / put_in;
  for (const auto& [tool, share] : there.liquid_mL.shares)
    if (!paint::is_of_composition(tool)) f.tools[tool] = share / put_in;
  f.lost_mL = std::max(0.0, sums.water_g - now.water_g) * paint::water_mL_per_g;
  f.dried_off = f.lost_mL / now.liquid_mL;
  f.pigment_sd = paint::relative_uncertainty(there.pigment_g);
  f.pigments = pigments_in(paint);
  return f;
}

bool repeats(const Feeling& last, const Feeling& f) {
  return last.as == f.as && (!last.unwetted || f.unwetted);
}

}

void feel(FoldState& state, const Entry& entry, const paint::Mixture& paint) {
  if (!state.wet_at && entry.flow && *entry.flow > 0) state.wet_at = state.batch.clock;
  if (entry.withdrawn) return;
  soak(state, entry);
  if (std::visit(Changes{}, entry.event)) state.felt.reset();
  if (const auto* aside = std::get_if<SetAside>(&entry.event)) set_aside(state, aside->line);
  const auto* felt = std::get_if<Felt>(&entry.event);
  if (!felt || !entry.flow || !(*entry.flow > 0)) return;
  Grown<Feeling>& feelings = state.batch.feelings;
  Feeling f = feeling_of(state, entry, *felt, paint);
  f.repeats = state.felt && repeats(feelings[*state.felt], f);
  f.set_aside = state.set_aside.count(f.line) > 0;
  state.felt = feelings.size();
  feelings.push_back(std::move(f));
}

bool is_worked_in(const Batch& batch) {
  const double worked_s = seconds_of(batch, Stage::wetting_out);
  if (worked_s >= wetted_out_s) return true;
  const bool put_away =
      !batch.passes.empty() && batch.passes.back().end && !batch.passes.back().cut_short;
  return (put_away && worked_s >= put_away_s) ||
         std::any_of(batch.passes.begin(), batch.passes.end(),
                     [](const Pass& pass) { return pass.stage == Stage::mulling; });
}

bool felt_worked_in(const Batch& batch, const Ref& line) {
  return !batch.feelings.empty() && batch.feelings.back().line == line &&
         !batch.feelings.back().unwetted;
}

namespace {

// As the hand has it, for water leaves and the gum grows stronger: ln flow.
double felt_at(const Feeling& note, double drying) {
  return std::log(note.flow) - drying * within_model(note);
}

}

double within_model(const Feeling& note) { return std::min(note.dry_gum, strongest_modelled); }

bool is_said_again(const Feeling& note, const Feeling& before, double drying) {
  constexpr double felt = 0.03; // ln flow; less is not felt: own choice
  if (note.as != before.as || note.by != before.by) return false;
  const double further = felt_at(note, drying) - felt_at(before, drying);
  if (note.as < Feel::right) return further <= felt;
  if (note.as > Feel::right) return further >= -felt;
  return std::abs(further) <= felt;
}

}
