#include "screens/views_binder.hpp"

#include "bench/choices.hpp"
#include "bench/making.hpp"
#include "bench/pads_binder.hpp"
#include "screens/views_slab.hpp"
#include "words/bench_says.hpp"

namespace views {

using namespace bench;

namespace {

using Step = session::MakingStep;

constexpr std::int64_t now_ms = 1795617120000; // 2026-11-25 14:32 UTC
constexpr std::int64_t hour_ms = 3600 * 1000;

Now at() {
  Now now;
  now.wall_ms = now_ms;
  return now;
}

// Of honey and glycerin both, so that there are as many rows as there can be.
session::BinderMaking begun(std::initializer_list<std::pair<Step, double>> hours_ago) {
  session::BinderMaking making;
  making.plan = {Step::gum_in, "jar",
                 session::Making::Start{"gum_12_honey",
                                        {.gum = 120, .water = 240, .honey = 30, .glycerin = 12}}};
  for (const auto& [step, ago] : hours_ago)
    making.steps.push_back({step, now_ms - static_cast<std::int64_t>(ago * hour_ms), {}, 0, 12});
  return making;
}

void add_makings(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  const auto keep = [&](const std::string& what) {
    out.push_back({"binder, " + what + on, mm, view(b, at())});
  };
  open_making(b, "gum_12_glycerin");
  keep("nothing begun");
  b.binder.spoons = 14;
  b.binder.spoon = "teaspoon";
  keep("in spoons");
  b.binder.spoons = 0;
  b.stock["gum_arabic"].jars = {{{"s", 1}, now_ms, {"gum_arabic", 47.5, 8.5, "crowns", "", ""}}};
  b.notice.error = words::Error{words::BenchSay::making_gum_first, {}};
  keep("more than there is");
  b.notice = {};
  b.number = NumberEntry{{BinderPad::gum, ""}, "47.5", {}};
  keep("number");
  b.number.reset();
  b.makings["jar"] = begun({{Step::gum_in, 21}, {Step::steep, 20.73}});
  b.index.took_ug["gum_12_honey"][{1, "b"}] = 8'000'000;
  show_making(b, "jar");
  keep("steeping");
  b.makings["jar"] = begun({{Step::gum_in, 30}, {Step::steep, 29}, {Step::strain, 0.1}});
  b.makings["other"] = begun({{Step::gum_in, 2}});
  keep("straining");
  b.makings["jar"] = begun({{Step::gum_in, 180}, {Step::steep, 179}});
  keep("steeped for a week");
  b.makings["jar"] = begun({{Step::gum_in, 80},
                            {Step::steep, 79},
                            {Step::strain, 50},
                            {Step::sweeten, 49.8},
                            {Step::preserve, 49.7},
                            {Step::into_jar, 49.6}});
  b.binder.jar_g = 362;
  keep("in its jar");
  using words::BenchSay;
  b.number = NumberEntry{
      {BinderPad::jar_holds, ""},
      "5000",
      words::Error{BenchSay::jar_holds_more, {words::Number(1403, 0), words::Number(5000, 0)}}};
  keep("more than its jar can hold");
  b.number = NumberEntry{
      {BinderPad::dose, ""},
      "1000",
      words::Error{BenchSay::dose_doubted, {words::Number(50, 1), words::Number(1402, 0)}}};
  keep("a dose that is much");
  b.number.reset();
  b.binder.by = "nobody's";
  b.makings.clear();
  keep("no recipe");
}

void add_strengths(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  const auto keep = [&](const std::string& what) {
    out.push_back({"binder, " + what + on, mm, view(b, at())});
  };
  open_strength(b, "gum_12_glycerin");
  keep("strength of a jar nobody counted");
  for (session::Card& card : b.shelf)
    if (card.id == "gum_12_glycerin")
      card.made_g = 120, card.made_on = "2026-11-20", card.lot = "jar 12";
  keep("strength");
  b.binder.tare_g = 21.4;
  b.binder.net_g = 108;
  keep("water is missing");
  b.binder.percent = 20;
  keep("thinner");
  b.binder.net_g = 133;
  b.binder.percent = 40;
  b.notice.error = words::Error{words::BenchSay::strength_as_it_is, {}};
  keep("stronger");
  b.number = NumberEntry{{BinderPad::bottle, ""}, "129.4", {}};
  keep("weighing the bottle");
  b.number.reset();
  b.binder.jar = "gone";
  keep("jar put away");
}

}

void add_binders(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::binder;
  add_makings(out, b, mm, on);
  add_strengths(out, b, mm, on);
}

}
