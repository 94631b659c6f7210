#include "bench/scroll.hpp"

#include "bench/choices.hpp"

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

// A list that was let go loses its speed by half in 0.23 s. Our own value.
constexpr double slowing_s = 0.33;

int row_of(double at) { return static_cast<int>(std::lround(at)); }

// The page that a pad turned to may be partly empty; a finger pulls none further than full.
double within(const ListArea& list, double at) {
  return std::clamp(at, 0.0, static_cast<double>(std::max(list.rows - list.shown, list.first)));
}

}

int first_row(const Scroll& scroll, int shown, int rows) {
  const int last_page = (pages_for(static_cast<std::size_t>(rows), shown) - 1) * shown;
  return std::clamp(row_of(scroll.at), 0, last_page);
}

int page_of(const Scroll& scroll, int shown, int rows) {
  return (first_row(scroll, shown, rows) + shown - 1) / shown;
}

void turn_page(Scroll& scroll, const ListArea& list, bool on) {
  const int next = list.first + (on ? list.shown : -list.shown);
  const bool whole_pages = list.first % list.shown == 0;
  scroll = {};
  scroll.at = std::max(0, whole_pages ? next : std::min(next, list.rows - list.shown));
}

void drag(Scroll& scroll, const ListArea& list, double mm) {
  scroll.towards.reset();
  scroll.at = within(list, scroll.at - mm / list.pitch_mm);
}

void let_go(Scroll& scroll, const ListArea& list, double mm_per_s, std::int64_t ms) {
  const double end = within(list, scroll.at - mm_per_s / list.pitch_mm * slowing_s);
  if (row_of(end) == row_of(scroll.at)) return stop(scroll);
  scroll.towards = row_of(end);
  scroll.ms = ms;
}

void stop(Scroll& scroll) {
  const int row = row_of(scroll.at);
  scroll = {};
  scroll.at = row;
}

void run_on(Scroll& scroll, std::int64_t ms) {
  if (!scroll.towards) return;
  const double gone_s = static_cast<double>(std::max<std::int64_t>(ms - scroll.ms, 0)) / 1000;
  const double end = *scroll.towards;
  scroll.at = end + (scroll.at - end) * std::exp(-gone_s / slowing_s);
  scroll.ms = std::max(ms, scroll.ms);
  if (row_of(scroll.at) == *scroll.towards) stop(scroll);
}

std::optional<std::int64_t> next_row_at(const Scroll& scroll) {
  if (!scroll.towards) return std::nullopt;
  const double to_go = scroll.at - *scroll.towards;
  const double edge = row_of(scroll.at) - *scroll.towards + (to_go > 0 ? -0.5 : 0.5);
  const double s = slowing_s * std::log(std::max(1.0, to_go / edge));
  return scroll.ms + static_cast<std::int64_t>(std::ceil(1000 * s));
}

}
