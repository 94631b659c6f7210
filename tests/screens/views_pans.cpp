// Views of Pans, as views.cpp makes the others.
#include "screens/views_pans.hpp"

#include "bench/pads_pans.hpp"
#include "bench/pans.hpp"
#include "words/bench_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>

namespace views {

using namespace bench;

Bench bench_with_batches(Size mm, Hand hand, Screen screen) {
  Now now;
  now.fresh = [] { return 7u; };
  Bench b = start("s", "tablet", {mm, hand}, now);
  b.loaded = true;
  b.screen = screen;
  b.batches = {"older", "one", "newer"};
  for (const std::string& id : b.batches) b.index.of[id].has_left_slab = true;
  return b;
}

namespace {
session::Card half_pan() { return {"half_pan", "half pan", session::PanCard{{1.7, 0.1}}}; }
}

session::Entry entry_of(std::uint64_t n, session::Event event) {
  session::Entry e;
  e.ref = {"s", n};
  e.at = 1;
  e.event = std::move(event);
  return e;
}

// Five pans of this session's own pouring, or so many that a page has not room for all.
session::Batch batch_of_pans(int pans) {
  session::Batch batch;
  batch.id = "one";
  batch.name = long_name;
  batch.cards["half_pan"] = half_pan();
  batch.places.at[session::Place::jar].sums.pigment_mL = 12.3;
  for (int i = 1; i <= pans; ++i) {
    const auto n = static_cast<std::uint64_t>(i);
    batch.pans.push_back({i, half_pan(), {{{"s", n}, 0, 1, 1.7, 1}}, {}});
    batch.entries.push_back(entry_of(n, session::Poured{i, i, "half_pan", {}}));
  }
  return batch;
}

View view_around(const Bench& b) {
  View v;
  v.layout = layout(b);
  v.top_bar = {b.screen, "", 0x2266AA, 14, 32, b.night};
  v.top_bar.due = 12;
  return v;
}

namespace {

PansView::Pan pan_of(const PadId& pad, int i) {
  PansView::Pan pan;
  pan.pad = pad;
  pan.number = i;
  pan.brim_mL = 1.7;
  pan.pour_mL = i % 3 == 2 ? 0 : 1.1 - 0.6 * (i % 3);
  pan.next_mL = 0.5 * pan.pour_mL;
  for (int layer = 0; layer <= i % 3; ++layer) pan.layers_mL.push_back(0.6);
  pan.wet_mL = i % 2 ? 0.4 : 0;
  pan.full = i % 3 == 2;
  pan.chosen = i == 2;
  if (i % 4 == 0) pan.said = {session::Became::cracked, false};
  if (i % 4 == 1) pan.said = {session::Became::good, false};
  if (i % 4 == 2) pan.said = {session::Became::sticky, true};
  return pan;
}

// Poured on a Wednesday, weighed three times, ready two days later.
PansView::Curve curve_of(int pan) {
  PansView::Curve c;
  c.pan = pan;
  c.poured_at = 1795617120000;
  c.now_h = 24;
  c.to_h = 70;
  for (int i = 0; i <= 40; ++i) {
    const double t = i / 40.0;
    c.ahead.push_back({20 + 50 * t, 3.8 - 0.8 * t, 3.8 - 0.6 * t, 3.8 - 0.3 * t});
  }
  c.ready_h = paint::Interval{33.3, 45, 61.5};
  c.layer = 2;
  return c;
}

void add_others(const Bench& b, const View& v, PansView& p) {
  using Other = PansView::Other;
  int i = 0;
  for (const Pad& pad : v.layout.pads) {
    if (pad.id.kind != PansPad::batch) continue;
    Other other;
    other.what = i % 2 ? Other::look : Other::layer_later;
    other.pad = pad.id;
    other.name = long_name;
    other.colour = 0x884422;
    for (int pan = 1; pan <= (i ? 5 : 14); ++pan) other.pans.push_back(pan_of({}, pan));
    other.layer = 2;
    other.low_h = 30;
    other.high_h = 140;
    other.since_pour_ms = 277000000;
    p.others.push_back(std::move(other));
    ++i;
  }
  p.more_others = b.pans.others.size() - p.others.size();
}

PansView pans_of(const Bench& b, const View& v) {
  PansView p;
  p.batch = "one";
  p.name = long_name;
  p.colour = 0x2266AA;
  p.judging = b.pans.judging;
  p.pan = b.pans.pan;
  int i = 0;
  for (const Pad& pad : v.layout.pads)
    if (pad.id.kind == PansPad::pan) p.pans.push_back(pan_of(pad.id, ++i));
  p.layer = 2;
  p.layers_in_all = 3;
  p.all_layer = 3;
  p.layer_mm = 5.4;
  p.depth_known = true;
  p.curve = curve_of(b.pans.pan > 0 ? b.pans.pan : 1);
  add_others(b, v, p);
  p.card_name = "half pan";
  p.card_mL = 1.7;
  p.to_pour_mL = 12.3;
  p.all = 14;
  p.fresh.brim_mL = p.fresh.pour_mL = 1.7;
  p.fresh.next_mL = 0.8;
  p.next = {PansView::Next::in_hours, 9.3, 61.5, false};
  p.fill = paint::Interval{0.55, 0.62, 0.7};
  p.tack = paint::Tack::stays_sticky;
  p.weighings = {{0, 4.6}, {5, 4.3}, {20, 3.8}};
  p.since_pour_ms = 277000000;
  p.asked_day = 10;
  p.said = {session::Became::wont_rewet, false};
  p.apart = {{3, {session::Became::cracked, false}}, {14, {session::Became::sticky, true}}};
  p.undo = {session::Poured{1, 14, "half_pan", {}}, "", false, 12};
  if (b.number) p.number = NumberView{b.number->target, "12.34", "14", {}};
  return p;
}

struct Keep {
  std::vector<Case>& out;
  Size mm;
  const std::string& on;
  void operator()(const std::string& what, const Bench& b, const PansView& p) const {
    View v = view_around(b);
    v.screen = p;
    out.push_back({"pans, " + what + on, mm, v});
  }
};

void add_faces(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  const Keep keep{out, mm, on};
  Bench b = bench_with_batches(mm, hand, Screen::pans);
  keep("none", b, {});
  b.pans.batch = "one";
  b.pans.folded = std::make_shared<const session::Batch>(batch_of_pans(4));
  b.pans.pan = 2;
  const PansView some = pans_of(b, view_around(b));
  keep("pouring", b, some);
  PansView painted = some;
  painted.colour = 0x2E4F9A;
  painted.swatch = true;
  keep("its swatch", b, painted);
  b.pans.others = {"older"};
  PansView later = pans_of(b, view_around(b));
  later.all = 0;
  later.wet = true;
  later.weighings.clear();
  later.curve.now_h = 3;
  later.curve.ahead.clear();
  for (int i = 0; i <= 40; ++i)
    later.curve.ahead.push_back({i * 1.75, 0.6 - i * 0.015, 0.6 - i * 0.012, 0.6 - i * 0.008});
  for (auto what : {PansView::Other::in_jar, PansView::Other::on_slab, PansView::Other::layer_now,
                    PansView::Other::dries}) {
    later.others[0].what = what;
    if (what == PansView::Other::in_jar || what == PansView::Other::on_slab)
      later.others[0].pans.clear();
    keep("never weighed, " + std::to_string(what), b, later);
  }
  for (const bool now : {false, true}) {
    PansView weighed = later;
    weighed.weigh_again = WeighAgain{14, 1795800000000, 1795900000000};
    weighed.weigh_now = now;
    keep("weighed once", b, weighed);
  }
  PansView long_ago = later;
  long_ago.curve.to_h = 400;
  long_ago.curve.ready_h = paint::Interval{60, 120, 190};
  long_ago.curve.now_h = 330;
  for (auto& point : long_ago.curve.ahead) point.hours *= 5.7;
  keep("dried long ago", b, long_ago);
  b.pans.others = {"older", "newer", "oldest", "another"};
  b.pans.pan = 1; // which has room
  PansView one = pans_of(b, view_around(b));
  one.room_guessed = true;
  keep("one chosen", b, one);
  b.pans.pan = 2;
  PansView said = some;
  said.next = {PansView::Next::full, 0, 0, false};
  said.all = 0;
  said.wet = hand == Hand::left;
  said.undo.saved = true;
  said.undo.unsaved = 0;
  said.notice.error = words::Error{words::BenchSay::pans_still_wet, {"14"}};
  keep("a wet one tapped", b, said);
  said.notice.error =
      words::Error{words::BenchSay::pigment_left_out, {"Cerulean blue (chromium), Titanium white"}};
  keep("a pigment left out", b, said);
  PansView tacky = some;
  tacky.next = {.kind = PansView::Next::barred, .barred_by = session::Became::sticky};
  tacky.all = 0;
  tacky.curve.layer = 0;
  keep("stay tacky", b, tacky);
  tacky.next.barred_by = session::Became::rubs_off;
  keep("rub off", b, tacky);
  tacky.next.barred_by = session::Became::wont_rewet;
  keep("will not re-wet", b, tacky);
  PansView little = tacky;
  little.next = {PansView::Next::none_left, 0, 0, false};
  little.to_pour_mL = 0.5;
  keep("little left", b, little);
  PansView maybe = some;
  maybe.next.kind = PansView::Next::maybe_now;
  maybe.save_failure =
      words::Error{words::SessionSay::did_added, {"no space is left", "on the device"}};
  keep("may be firm", b, maybe);
  b.pans.folded = std::make_shared<const session::Batch>(batch_of_pans(0));
  PansView planned = pans_of(b, view_around(b));
  planned.first = true;
  planned.layer = 0;
  planned.all = 5;
  planned.curve = {};
  planned.next = {};
  planned.planned = {14, 3};
  planned.weighings.clear();
  keep("planned", b, planned);
  b.pans.folded = std::make_shared<const session::Batch>(batch_of_pans(4));
  PansView unknown = some;
  unknown.next.kind = PansView::Next::unknown;
  unknown.undo = {std::nullopt, "", true};
  keep("nothing known", b, unknown);
  b.number = NumberEntry{{PansPad::weigh_pan, ""}, "", {}};
  keep("number", b, pans_of(b, view_around(b)));
  b.number.reset();
  b.pans.folded = std::make_shared<const session::Batch>(batch_of_pans(40));
  keep("many", b, pans_of(b, view_around(b)));
  b.pans.judging = true;
  keep("judging", b, pans_of(b, view_around(b)));
  for (const bool known : {true, false}) {
    PansView cracked = pans_of(b, view_around(b));
    cracked.said = {session::Became::cracked, false};
    cracked.depth_known = known;
    cracked.apart.clear();
    cracked.causes = {{paint::CrackCause::dried_fast, true},
                      {paint::CrackCause::deep_layer, false},
                      {known ? paint::CrackCause::little_gum : paint::CrackCause::much_gum, !known},
                      {paint::CrackCause::too_hard, false}};
    keep(known ? "cracked" : "cracked, much gum", b, cracked);
  }
  for (const bool left : {true, false}) {
    PansView sunken = pans_of(b, view_around(b));
    sunken.said = {session::Became::sunken, false};
    sunken.layer_left = left;
    sunken.apart.clear();
    keep("sunken", b, sunken);
  }
  PansView early = pans_of(b, view_around(b));
  early.said = {session::Became::sticky, true};
  keep("judged early", b, early);
  PansView unasked = pans_of(b, view_around(b));
  unasked.asked_day = 0;
  unasked.said.reset();
  unasked.apart.clear();
  unasked.undo = {std::nullopt, "", true};
  keep("judged by none", b, unasked);
}

// What a plan says of mulling, and what of it the slab still waits for: as those that are there
// already, but for that.
void add_planned(std::vector<Case>& out, const std::string& on) {
  const auto as = [&](const std::string& there, const std::string& name) -> ScreenView& {
    const auto one =
        std::find_if(out.begin(), out.end(), [&](const Case& c) { return c.name == there + on; });
    Case copy = *one;
    copy.name = name + on;
    return out.emplace_back(std::move(copy)).view.screen;
  };
  for (const int batches : {0, 12}) {
    auto& plan = std::get<PlanView>(as("plan", "plan, mulling"));
    plan.mulling = MullingNeeded{{24, 41, 86}, {8, 12, 25}, batches};
    plan.recipe_kept = true;
    plan.recipe = "Cerulean blue (chromium), 3";
  }
  using session::Became;
  const LastTime honey{Became::wont_rewet, "honey_11", "Honey 1 : 1", 1.2, 14};
  const LastTime gum{Became::rubs_off, "gum_12", "Gum arabic 1 : 2", 12.3};
  LastTime honey_in = honey, gum_in = gum, little{Became::sticky};
  honey_in.in_plan = gum_in.in_plan = true;
  little.most_honey_g = 4.5;
  LastTime enough{Became::cracked};
  enough.enough = true;
  for (const LastTime& last : {honey, honey_in, gum, gum_in, enough, LastTime{Became::wont_rewet},
                               LastTime{Became::sticky}, little})
    std::get<PlanView>(as("plan", "plan, last time")).last_time = last;
  for (const Softening& soft : {Softening{"Honey 1 : 1", {.drops = 15}}, Softening{}}) {
    std::get<PlanView>(as("plan", "plan, gum alone")).softening = soft;
    auto& slab = std::get<SlabView>(as("slab, running", "slab, gum alone"));
    slab.softening = soft;
    slab.advice.gum.reset();
  }
  std::get<PlanView>(as("plan", "plan, too little gum")).is_short_of_gum = true;
  std::get<PlanView>(as("plan", "plan, past its day")).past_day = {"Gum 1 : 2 with honey, jar 12"};
  auto& by_recipe = std::get<SlabView>(as("slab, running", "slab, by a recipe"));
  by_recipe.by_recipe_g = 12.3;
  by_recipe.portions = 12;
  for (const auto kind : {Advice::add_drops, Advice::keep_mulling, Advice::there}) {
    auto& parted = std::get<SlabView>(as("slab, running", "slab, in portions"));
    parted.portions = 3;
    parted.softening.reset();
    parted.advice = {};
    parted.advice.kind = kind;
    parted.advice.amount = {.spoons = 0.25};
    parted.to_come.clear();
  }
  auto& in_portions = std::get<PlanView>(as("plan", "plan, mulling in portions"));
  in_portions.mulling = MullingNeeded{{8, 20, 35}, {2, 3, 5}, 12};
  in_portions.planned->portions = 3;
  auto& gum_short = std::get<SlabView>(as("slab, choosing", "slab, gum is short"));
  gum_short.smooth = true;
  gum_short.advice.gum = paint::GumState::too_little;
  for (const double spoons : {0.0, 11.75}) {
    auto& slab = std::get<SlabView>(as("slab, running", "slab, first of portions"));
    slab.portions = 12;
    slab.dust = true;
    slab.advice.kind = Advice::first_helping;
    slab.advice.low_g = 88.7;
    slab.advice.high_g = 124.2;
    slab.advice.amount = {.spoons = spoons};
  }
  std::get<SlabView>(as("slab, empty", "slab, to be weighed out")).to_come = {
      {session::CardKind::pigment, "Cerulean blue (chromium)", 22.1, {}, false},
      {session::CardKind::pigment, "Quinacridone magenta", 12.4, {}, false}};
  auto& short_of = std::get<SlabView>(as("slab, empty", "slab, weighed short"));
  short_of.to_come = {{session::CardKind::pigment, "Cerulean blue (chromium)", 9.1, {}, true}};
  short_of.dust = true;
  short_of.advice.kind = Advice::first_helping;
  short_of.advice.amount = {.spoons = 1.25};
  std::get<SlabView>(as("slab, empty", "slab, a blend without amounts")).to_come = {
      {session::CardKind::pigment, "Cerulean blue (chromium)", {}, {}, false},
      {session::CardKind::pigment, "Quinacridone magenta", {}, {}, false}};
  std::get<SlabView>(as("slab, running", "slab, alcohol")).flammable = true;
  for (const bool dust : {false, true}) {
    auto& slab = std::get<SlabView>(as("slab, running", "slab, still to come"));
    slab.dust = dust;
    slab.to_come = {{session::CardKind::honey, "Honey 1 : 1", 0.62, {.drops = 14}, false},
                    {session::CardKind::water, "Water", 12.4, {.spoons = 2.5}, true},
                    {session::CardKind::wetting_aid, "Ox gall", 0.2, {.drops = 4}, false}};
    put_first(slab.to_come, slab.advice, false);
  }
}

}

void add_pans(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  add_planned(out, on);
  add_faces(out, mm, hand, on);
  add_book_pages(out, mm, hand, on);
  add_two(out, mm, hand, on);
  add_photos(out, mm, hand, on);
  add_charts(out, mm, hand, on);
}

}
