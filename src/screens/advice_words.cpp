// The sentence of advice.
#include "screens/phrases.hpp"
#include "words/numbers.hpp"
#include "words/plan_says.hpp"
#include "words/screens_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using Say = words::ScreensSay;
using words::say;

namespace {

std::string pigment_words(const bench::Advice& a) {
  std::string pigments;
  for (const bench::Advice::Pigment& p : a.pigments)
    pigments +=
        (pigments.empty() ? "" : " + ") + say(Say::advice_pigment, {grams_number(p.g), p.name});
  return pigments;
}

std::string thicken_words(const bench::Advice& a) {
  const words::Args minutes{std::to_string(a.dry_min)};
  const std::string pigments = pigment_words(a);
  if (pigments.empty()) return say(Say::advice_let_dry, minutes);
  return say(Say::advice_or_pigment, {say(Say::advice_let_dry_minutes, minutes), pigments});
}

std::string first_words(const bench::Advice& a) {
  const std::string grams = from_to_words(a.low_g, a.high_g);
  if (is_nothing(a.amount))
    return say(a.rest ? Say::advice_rest : Say::advice_first_helping, {grams});
  return say(a.rest ? Say::advice_rest_spoons : Say::advice_first_spoons,
             {tapped_words(a.amount), grams});
}

std::string amount_words(const bench::Advice& a) {
  const std::string amount = tapped_words(a.amount);
  if (!a.water && !a.binder.empty()) return say(Say::advice_of_named, {amount, a.binder});
  return say(a.water ? Say::advice_of_water : Say::advice_of_binder, {amount});
}

std::string in_rounds(const std::string& what, const bench::Advice& a) {
  return a.several ? say(Say::advice_in_rounds, {what}) : what;
}

std::string add_words(const bench::Advice& a) {
  const std::string amount = amount_words(a);
  if (a.by_knife) return say(Say::advice_add_by_knife, {amount});
  return in_rounds(say(Say::advice_add, {amount}), a);
}

std::string work_in_words(const bench::Advice& a) {
  if (a.not_begun) return say(Say::advice_begin_work_in, {std::to_string(a.wait_min)});
  if (a.wait_min == 0)
    return say(a.too_early ? Say::advice_worked_in_early : Say::advice_worked_in);
  return say(a.too_early ? Say::advice_work_in_early : Say::advice_work_in,
             {std::to_string(a.wait_min)});
}

std::string mull_words(const bench::Advice& a) {
  if (a.sticky_now) return say(a.by_knife ? Say::advice_work_in_sticky : Say::advice_mull_sticky);
  if (a.hint) return say(a.by_knife ? Say::advice_judge : Say::advice_mull);
  return say(a.by_knife ? Say::advice_judge_by_knife : Say::advice_mull_and_judge);
}

std::string past_right_words(const bench::Advice& a) {
  const std::string amount = tapped_words(a.amount);
  if (a.by_knife) return say(Say::advice_past_right_by_knife, {amount});
  if (a.dry_min == 0) return say(Say::advice_past_right, {amount});
  return say(Say::advice_past_right_minutes, {amount, std::to_string(a.dry_min)});
}

std::string right_but_gum_words(const bench::Advice& a) {
  const std::string amount = amount_words(a);
  if (a.dried) return in_rounds(say(Say::advice_right_but_gum_dried, {amount}), a);
  if (a.dry_min == 0) return in_rounds(say(Say::advice_right_but_gum, {amount}), a);
  const Say how = a.not_begun ? Say::advice_right_but_gum_tap : Say::advice_right_but_gum_minutes;
  return in_rounds(say(how, {std::to_string(a.dry_min), amount}), a);
}

std::string specks_words(bench::SpecksStay specks) {
  switch (specks) {
  case bench::SpecksStay::no: return "";
  case bench::SpecksStay::in_portions: return say(Say::advice_specks_stay);
  case bench::SpecksStay::coarse: return say(Say::advice_specks_coarse);
  case bench::SpecksStay::as_it_is: return say(Say::advice_specks_as_it_is);
  }
  return "";
}

std::string keep_mulling_words(const bench::Advice& a) {
  if (a.by_knife) return say(Say::advice_right_by_knife);
  if (a.specks != bench::SpecksStay::no) return specks_words(a.specks);
  if (!a.mulling) return say(Say::advice_keep_mulling);
  if (a.mulling->batches == 0)
    return say(Say::advice_keep_mulling_usual, {minutes_words(a.mulling->minutes.middle)});
  const auto passes = std::max(1L, std::lround(a.mulling->passes.middle));
  const auto minutes = std::max(1L, std::lround(a.mulling->minutes.middle));
  return say(Say::advice_keep_mulling_for,
             {passes == 1 ? say(Say::advice_pass_more)
                          : say(Say::advice_passes_more, {std::to_string(passes)}),
              std::to_string(minutes)});
}

std::string give_back_words(const bench::Advice& a) {
  return say(a.by_knife ? Say::advice_give_back_by_knife : Say::advice_give_back,
             {say(Say::advice_of_water, {tapped_words(a.amount)}), words::number(a.mL, 1)});
}

}

std::string short_give_back_words(const bench::Advice& a) {
  return say(Say::advice_give_back_short, {say(Say::advice_of_water, {tapped_words(a.amount)})});
}

namespace {

bool says_right(const bench::Advice& a) {
  using bench::Advice;
  return a.kind == Advice::there || a.kind == Advice::test_dot || a.kind == Advice::keep_mulling;
}

std::string hint_words(const bench::Advice& a) {
  using bench::Advice;
  if (says_right(a) && a.gum == paint::GumState::too_little) return right_but_gum_words(a);
  if (a.judge_now) return say(a.by_knife ? Say::advice_judge_now_by_knife : Say::advice_judge_now);
  switch (a.kind) {
  case Advice::weigh_pigment: return say(Say::advice_weigh_pigment);
  case Advice::first_helping: return first_words(a);
  case Advice::add_drops: return add_words(a);
  case Advice::mull_and_judge: return mull_words(a);
  case Advice::work_in: return work_in_words(a);
  case Advice::soak:
    return say(a.by_knife ? Say::advice_soak_by_knife : Say::advice_soak,
               {std::to_string(a.wait_min)});
  case Advice::keep_mulling: return keep_mulling_words(a);
  case Advice::test_dot: return say(Say::advice_test_dot);
  case Advice::there: return say(Say::advice_there);
  case Advice::judge_again:
    return say(a.felt_loose ? Say::advice_judge_loose : Say::advice_judge_again);
  case Advice::right_by_now: return say(Say::advice_right_by_now);
  case Advice::too_loose: return thicken_words(a);
  case Advice::a_wash: return say(Say::advice_a_wash);
  case Advice::past_right: return past_right_words(a);
  case Advice::give_back: return give_back_words(a);
  case Advice::gathered: return say(Say::advice_gathered);
  }
  return "";
}

}

std::string softening_words(const bench::Softening& s) {
  if (s.name.empty()) return say(Say::hard_no_softener);
  const std::string amount = tapped_words(s.amount);
  if (is_nothing(s.loosens)) return say(Say::hard_softener, {amount, s.name});
  return say(Say::hard_softener_loosens, {amount, s.name, tapped_words(s.loosens)});
}

std::string advice_words(const bench::Advice& a) {
  using bench::Advice;
  const bool from_range = a.kind == Advice::add_drops || a.kind == Advice::too_loose ||
                          a.kind == Advice::first_helping || a.kind == Advice::past_right ||
                          a.kind == Advice::a_wash;
  const std::string hint = hint_words(a);
  return from_range && a.hint ? say(Say::advice_guess, {hint}) : hint;
}

namespace {

std::string too_sweet_words(const bench::Advice& a) {
  if (!a.pigments.empty()) return say(Say::advice_tacky_add, {pigment_words(a), amount_words(a)});
  const double times = std::ceil(a.times_without_honey);
  if (times > 1) return say(Say::advice_tacky_stock_times, {words::number(times, 0)});
  if (times > 0) return say(Say::advice_tacky_stock);
  return say(a.sticky == paint::Tack::stays_sticky ? Say::advice_there_tacky
                                                   : Say::advice_there_may_be_tacky);
}

// Minutes until so much has dried off, or how much has.
bool rests_on_room(const bench::Advice& a) {
  using bench::Advice;
  if (a.judge_now) return false;
  const bool dries = a.kind == Advice::too_loose || (a.kind == Advice::past_right && !a.by_knife) ||
                     (says_right(a) && a.gum == paint::GumState::too_little);
  return a.kind == Advice::give_back || (dries && a.dry_min > 0);
}

}

bool is_right_in_all(const bench::Advice& a) {
  return a.kind == bench::Advice::there && a.gum != paint::GumState::too_little;
}

std::string right_words(const bench::Advice& a, const std::optional<bench::Softening>& softening,
                        bool room_guessed) {
  const auto marked = [&](const std::string& said) {
    return room_guessed ? say(Say::by_guessed_room, {said}) : said;
  };
  if (!is_right_in_all(a)) return rests_on_room(a) ? marked(advice_words(a)) : advice_words(a);
  if (a.sticky) return marked(too_sweet_words(a));
  if (softening) return say(Say::advice_there_hard, {softening_words(*softening)});
  return advice_words(a);
}

}
