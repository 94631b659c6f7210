#include "session/in_words.hpp"

#include "paint/in_words.hpp"
#include "session/lists.hpp"
#include "words/session_says.hpp"

#include <cmath>

namespace session {

using Say = words::SessionSay;
using words::say;

std::string feel_words(Feel feel) { return say(lists::feels[feel].say); }
std::string specks_words(Specks specks) { return say(lists::specks[specks].say); }
std::string trouble_words(TroubleKind trouble) { return say(lists::troubles[trouble].say); }
std::string became_words(Became became) { return say(lists::verdicts[became].say); }
std::string place_words(Place place) { return say(lists::places[place].say); }
std::string progress_words(Progress progress) { return say(lists::progress[progress].say); }

std::string pour_words(const Poured& p) {
  const words::Args pans{std::to_string(p.first), std::to_string(p.last)};
  return say(p.first == p.last ? Say::did_pour : Say::did_pour_pans, pans);
}

std::string since_pour_words(std::int64_t ms) {
  constexpr std::int64_t an_hour_ms = 3'600'000;
  if (ms < an_hour_ms) return say(Say::since_pour_just);
  if (ms < a_day_ms) return say(Say::since_pour_hours, {std::to_string(ms / an_hour_ms)});
  return days_since_pour_words(ms / a_day_ms);
}

std::string days_since_pour_words(std::int64_t days) {
  if (days < 1) return say(Say::since_pour_first);
  return days == 1 ? say(Say::since_pour_day) : say(Say::since_pour_days, {std::to_string(days)});
}

std::string amount_words(Unit unit, double amount) {
  switch (unit) {
  case Unit::g: return paint::grams_words(amount);
  case Unit::spoons: return say(Say::amount_spoons, {paint::count_words(amount)});
  case Unit::drops:
    return amount == 1 ? say(Say::amount_drop)
                       : say(Say::amount_drops, {paint::count_words(amount)});
  }
  return "";
}

namespace {

// "1 + ½ + ¼": there is a pad for each.
std::string by_spoons(double spoons) {
  const double whole = std::floor(spoons);
  std::string out = whole > 0 ? paint::count_words(whole) : "";
  const auto and_then = [&](double part) {
    out += (out.empty() ? "" : " + ") + paint::count_words(part);
  };
  const double rest = spoons - whole;
  if (rest >= 0.5) and_then(0.5);
  if (rest == 0.25 || rest == 0.75) and_then(0.25);
  return say(Say::amount_spoons, {out});
}

}

std::string tapped_words(const Tapped& t) {
  if (t.g > 0) return amount_words(Unit::g, t.g);
  const std::string drops = amount_words(Unit::drops, t.drops);
  if (t.spoons <= 0) return drops;
  const std::string spoons = by_spoons(t.spoons);
  return t.drops > 0 ? say(Say::amount_and, {spoons, drops}) : spoons;
}

namespace {

// A sum, in the fewest words: nobody taps it.
std::string summed_words(const Tapped& t) {
  const std::string spoons = amount_words(Unit::spoons, t.spoons);
  return t.drops > 0 ? say(Say::amount_and, {spoons, amount_words(Unit::drops, t.drops)}) : spoons;
}

}

std::string total_words(const Total& total, const Measures& of) {
  const Tapped again = put_in_again(total, of);
  const std::string again_words = again.spoons > 0 ? summed_words(again) : "";
  if (!again_words.empty() && !total.spoons.empty()) return say(Say::amount_in_all, {again_words});
  std::string out;
  const auto add = [&](const std::string& part) { out += (out.empty() ? "" : " + ") + part; };
  if (total.weighed_g > 0) add(say(Say::amount_weighed));
  double spoons = 0;
  for (const auto& [spoon, count] : total.spoons) spoons += count;
  if (spoons > 0) add(amount_words(Unit::spoons, spoons));
  if (total.drops > 0) add(amount_words(Unit::drops, total.drops));
  return again_words.empty() ? out : say(Say::amount_about, {out, again_words});
}

std::string stage_words(const Pass& pass) {
  switch (pass.stage) {
  case Stage::wetting_out: return say(Say::stage_wetting_out_short);
  case Stage::resting: return say(Say::stage_resting);
  case Stage::mulling: return say(Say::stage_pass, {std::to_string(pass.number)});
  }
  return "";
}

std::string detail_words(const Warning& w) { return w.why ? words::message(*w.why) : w.of; }

std::string warning_words(const Warning& w) {
  const words::Args args{w.ref.session + " " + std::to_string(w.ref.n), detail_words(w), w.of};
  switch (w.kind) {
  case WarningKind::unknown_event: return say(Say::warning_unknown_event, args);
  case WarningKind::unknown_card: return say(Say::warning_unknown_card, args);
  case WarningKind::unknown_plan: return say(Say::warning_unknown_plan, args);
  case WarningKind::withdrawn_missing: return say(Say::warning_withdrawn_missing, args);
  case WarningKind::clock_ahead: return say(Say::warning_clock_ahead, args);
  case WarningKind::corrected_missing: return say(Say::warning_corrected_missing, args);
  case WarningKind::corrected_kind: return say(Say::warning_corrected_kind, args);
  case WarningKind::corrected_remark: return say(Say::warning_corrected_remark, args);
  case WarningKind::corrected_to_no_name: return say(Say::warning_corrected_to_no_name, args);
  case WarningKind::nameless: return say(Say::warning_nameless, args);
  case WarningKind::amount_unreadable: return say(Say::warning_amount_unreadable, args);
  case WarningKind::bottle_heavier: return say(Say::warning_bottle_heavier, args);
  case WarningKind::bottle_uncounted: return say(Say::warning_bottle_uncounted, args);
  case WarningKind::not_moved: return say(Say::warning_not_moved, args);
  case WarningKind::not_poured: return say(Say::warning_not_poured, args);
  case WarningKind::not_weighed: return say(Say::warning_not_weighed, args);
  case WarningKind::unknown_recipe: return say(Say::warning_unknown_recipe, args);
  }
  return "";
}

std::string known_words(const paint::Band& band) {
  if (band.batches == 0) return say(band.told ? Say::known_told : Say::known_guess);
  return band.batches == 1 ? say(Say::known_one_batch)
                           : say(Say::known_batches, {std::to_string(band.batches)});
}

std::string right_words(const paint::Band& band) {
  return say(Say::trail_right, {known_words(band)});
}

}
