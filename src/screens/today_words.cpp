#include "screens/today_words.hpp"

#include "screens/binder.hpp"
#include "screens/phrases.hpp"
#include "words/today_says.hpp"

namespace screens {

using bench::Due;
using bench::TodayView;
using Say = words::TodaySay;
using words::say;

namespace {

std::string use_up_words(const TodayView::Wait& wait) {
  if (wait.days > 1) return say(Say::use_within, {std::to_string(wait.days)});
  if (wait.days == 1) return say(Say::use_within_one);
  if (wait.days == 0) return say(Say::use_today);
  return say(Say::use_past);
}

std::string low_words(const TodayView::Wait& wait) {
  if (wait.left_g.value_or(0) <= 0) return say(Say::low_none);
  return say(*wait.left_g >= wait.takes_g ? Say::low_one_more : Say::low_short);
}

std::string making_words(const TodayView::Wait& wait, std::int64_t now_ms, int offset_min) {
  if (wait.due.since > now_ms) {
    const bool today =
        words::day_number(wait.due.since, offset_min) == words::day_number(now_ms, offset_min);
    return say(Say::making_runs, {step_words(wait.step, wait.honey),
                                  today ? words::time_of_day(wait.due.since, offset_min)
                                        : words::date_and_time(wait.due.since, offset_min)});
  }
  if (!wait.next) return say(Say::making_done);
  return say(wait.stood ? Say::making_late : Say::making_next,
             {step_words(*wait.next, wait.honey)});
}

std::string layer_words(const TodayView::Wait& wait) {
  return wait.open_days > 0 ? say(Say::layer_late, {std::to_string(wait.open_days)})
                            : say(Say::layer);
}

// What was left in the jar: now, or how long until the pans can take it.
std::string left_over_words(const TodayView::Wait& wait) {
  const std::string mL = words::number(wait.left_mL, 1);
  if (!(wait.high_h > 0)) return say(Say::left_over, {mL});
  return say(Say::left_over_later, {mL, span_words(wait.low_h, wait.high_h)});
}

std::string verdict_words(const TodayView& today, const TodayView::Wait& wait) {
  constexpr std::int64_t late_days = 10;
  const std::int64_t days = (today.now_ms - wait.due.since) / session::a_day_ms;
  if (days >= late_days) return say(Say::verdict_late, {std::to_string(days)});
  return wait.due.day == 1 ? say(Say::verdict_one)
                           : say(Say::verdict, {std::to_string(wait.due.day)});
}

}

std::string wait_words(const TodayView& today, const TodayView::Wait& wait, int offset_min) {
  const std::string since = words::lately(wait.since, today.now_ms, offset_min);
  switch (wait.due.what) {
  case Due::What::on_slab: return say(Say::on_slab, {since});
  case Due::What::in_jar:
    return wait.left_mL > 0 ? left_over_words(wait) : say(Say::in_jar, {since});
  case Due::What::next_layer: return layer_words(wait);
  case Due::What::weigh_pan: return say(Say::weigh_pan, {std::to_string(wait.due.pan), since});
  case Due::What::verdict: return verdict_words(today, wait);
  case Due::What::use_up: return use_up_words(wait);
  case Due::What::runs_low: return low_words(wait);
  case Due::What::making: return making_words(wait, today.now_ms, offset_min);
  case Due::What::hand_on: return say(Say::here_alone_days, {std::to_string(wait.days)});
  }
  return "";
}

}
