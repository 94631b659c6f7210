// Views of Today, as views.cpp makes the others.
#include "screens/views_today.hpp"

#include "bench/pads_today.hpp"
#include "bench/today.hpp"

namespace views {

using namespace bench;

namespace {

const char* const long_name = "Cerulean blue (chromium), 3";
constexpr std::int64_t now_ms = 1795617120000; // 2026-11-25 14:32 UTC

Bench on_today(Size mm, Hand hand) {
  Now now;
  now.fresh = [] { return 7u; };
  Bench b = start("s", "tablet", {mm, hand}, now);
  b.tablet.hand = hand;
  b.loaded = true;
  b.screen = Screen::today;
  return b;
}

Now at() {
  Now now;
  now.wall_ms = now_ms;
  return now;
}

TodayView::Wait wait_of(const Due& due) {
  TodayView::Wait w{{TodayPad::due, name_of(due)}, due, long_name};
  w.colour = 0x2266AA;
  w.since = due.since;
  if (due.what == Due::What::on_slab) w.trail = trail();
  if (due.what == Due::What::verdict) w.image = "photos/a.jpg";
  const int pans = due.what == Due::What::next_layer ? 20 : 8;
  for (int i = 0; i < pans; ++i) {
    PansView::Pan pan;
    pan.brim_mL = 1.7;
    pan.layers_mL.assign(1 + i % 2, 0.6);
    if (due.what == Due::What::next_layer) pan.pour_mL = 0.5, pan.next_mL = 0.25;
    w.pans.push_back(std::move(pan));
  }
  if (due.what == Due::What::use_up || due.what == Due::What::making)
    w.kind = session::CardKind::binder;
  w.step = session::MakingStep::steep;
  w.stood = due.since < now_ms - 10 * session::a_day_ms;
  w.next = session::MakingStep::preserve;
  w.days = 12;
  w.left_g = 38.4;
  w.of_g = 100;
  w.takes_g = 20;
  return w;
}

void keep(std::vector<Case>& out, const std::string& name, const Bench& b, Size mm) {
  out.push_back({name, mm, view(b, at())});
}

// Every kind of thing on one page, the rest on the next.
void add_full(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  constexpr std::int64_t days = session::a_day_ms;
  using What = Due::What;
  b.batches = {"one"};
  b.today.waits = {
      {"a", What::on_slab, 0, now_ms - days},     {"b", What::in_jar, 0, now_ms - 9 * days},
      {"c", What::next_layer, 0, now_ms - days},  {"d", What::verdict, 30, now_ms},
      {"e", What::use_up, 0, now_ms + 12 * days}, {"g", What::making, 0, now_ms + days / 8},
      {"h", What::making, 0, now_ms - 70 * days}, {"f", What::runs_low, 0, 0}};
  b.today.again = {"g", "h", "i", "j", "k", "l"};
  for (const bool second : {false, true}) {
    b.today.list.at = second ? 4 : 0;
    View v = view(b, at());
    auto& today = std::get<TodayView>(v.screen);
    for (auto& wait : today.waits) wait = wait_of(wait.due);
    for (auto& again : today.again) again.name = long_name, again.made_at = now_ms;
    out.push_back({std::string("today, ") + (second ? "second page" : "full") + on, mm, v});
  }
  auto& today = std::get<TodayView>(out.back().view.screen);
  today.waits.front().days = -3;
  today.waits.back().left_g = 0;
}

// Left over, for hours and for days, a layer that is late, a pan to weigh.
void add_poured(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  constexpr std::int64_t hour = 3'600'000;
  using What = Due::What;
  b.batches = {"one"};
  b.today.waits = {{"a", What::in_jar, 0, now_ms - hour},
                   {"b", What::in_jar, 0, now_ms + 20 * hour},
                   {"c", What::in_jar, 0, now_ms + 200 * hour},
                   {"d", What::next_layer, 0, now_ms - 900 * hour},
                   {"e", What::weigh_pan, 0, now_ms - 50 * hour, 12}};
  View v = view(b, at());
  for (auto& wait : std::get<TodayView>(v.screen).waits) {
    wait = wait_of(wait.due);
    wait.left_mL = 12.8;
    if (wait.due.since > now_ms) {
      wait.low_h = static_cast<double>(wait.due.since - now_ms) / hour;
      wait.high_h = 2.4 * wait.low_h;
    }
    wait.open_days = 41;
  }
  out.push_back({"today, poured" + on, mm, v});
}

void add_here_alone(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  b.batches = {"one"};
  b.today.waits = {{"all", Due::What::hand_on, 0, now_ms - 93 * session::a_day_ms},
                   {"a", Due::What::in_jar, 0, now_ms - session::a_day_ms}};
  keep(out, "today, here alone" + on, b, mm);
}

}

void add_todays(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = on_today(mm, hand);
  keep(out, "today, first day" + on, b, mm);
  add_full(out, b, mm, on);
  add_poured(out, b, mm, on);
  add_here_alone(out, b, mm, on);
  b.batches = {"one"};
  keep(out, "today, nothing waits" + on, b, mm);
  b.loaded = false;
  keep(out, "today, reading" + on, b, mm);
  b.loaded = true;
  b.screen = Screen::slab;
  keep(out, "slab, nothing there" + on, b, mm);
}

}
