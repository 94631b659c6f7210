#include "screens/views.hpp"

#include "bench/card_facts.hpp"
#include "bench/choices.hpp"
#include "bench/layout_of.hpp"
#include "bench/materials.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "paint/catalogue.hpp"
#include "screens/views_binder.hpp"
#include "screens/views_pans.hpp"
#include "screens/views_paper.hpp"
#include "screens/views_recipes.hpp"
#include "screens/views_shelf.hpp"
#include "screens/views_slab.hpp"
#include "screens/views_tablet.hpp"
#include "screens/views_today.hpp"
#include "screens/views_weighings.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

#include <cmath>

namespace views {

using namespace bench;

namespace {
const Size displays[]{{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}};
}

Bench bench_on(Size mm, Hand hand) {
  Now now;
  now.fresh = [] { return 7u; };
  Bench b = start("s", "tablet", {mm, hand}, now);
  b.loaded = true;
  return b;
}

// A batch on the slab, of the longest names on the shelf that ships.
void open_batch(Bench& b) {
  b.screen = Screen::slab;
  b.batch = "b";
  session::Batch batch;
  batch.id = "b";
  batch.name = "Cerulean blue (chromium), 3";
  batch.passes = {{session::Stage::mulling, 3, 0, std::nullopt}};
  for (const session::Card& card : b.shelf)
    for (const char* id : {"gum_12_glycerin", "water", "honey_11", "glycerin", "ox_gall", "pb36"})
      if (card.id == id) batch.cards[card.id] = card;
  b.folded = batch;
}

SlabView slab_of(const Bench& b) {
  SlabView v;
  for (const session::Card& card : materials_of(b))
    v.materials.push_back({{SlabPad::add, card.id},
                           card.kind(),
                           card.name,
                           pigment_of(card).colour,
                           123.4,
                           {},
                           0,
                           {}});
  v.pass = {PassView::scrape, session::Stage::mulling, 3, 754, 210};
  v.undo = {session::Added{"gum_12_glycerin", session::Unit::drops, 10, "dropper"},
            "Gum 1 : 2, glycerin", false, 0};
  v.dot = session::Specks::many;
  v.last_trouble = session::TroubleKind::separates;
  v.trail = trail();
  v.ratio = paint::exact(12.34);
  v.advice.kind = Advice::add_drops;
  v.advice.amount.drops = 10;
  v.advice.gum = paint::GumState::too_little;
  v.dried_mL = paint::exact(0.5);
  v.panel = b.panel;
  v.amount = b.amount;
  if (b.number) v.number = NumberView{b.number->target, "123.4", "Gum 1 : 2, glycerin", {}};
  return v;
}

View around(const Bench& b) {
  View v;
  v.layout = layout(b);
  v.top_bar = {b.screen, "", 0x2266AA, 14, 32, b.night};
  if (!b.batch.empty()) v.top_bar.batch_name = b.folded->name;
  return v;
}

namespace {

void add_slabs(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  const auto keep = [&](const std::string& what, SlabView slab) {
    View v = around(b);
    v.screen = std::move(slab);
    out.push_back({"slab, " + what + on, mm, v});
  };
  keep("running", slab_of(b));
  keep("in time", slab_of(b));
  auto& in_time = std::get<SlabView>(out.back().view.screen);
  in_time.pass.seconds = 0.6 * in_time.pass.target_s;
  for (const PadId& at : {PadId{SlabPad::pass, ""}, PadId{SharedPad::undo, ""}}) {
    for (const bool over : {false, true}) {
      out.push_back(out.back());
      out.back().name = "slab, keys" + on;
      out.back().view.focus = at;
      std::get<SlabView>(out.back().view.screen).pass.seconds = over ? 754 : 100;
    }
  }
  SlabView bad = slab_of(b);
  bad.undo = {session::Gathered{}, "", false, 12};
  bad.save_failure =
      words::Error{words::SessionSay::did_added, {"no space is left", "on the device"}};
  bad.dust = true;
  bad.notice.not_counted = NotCounted::rested;
  bad.pass.running = session::Stage::wetting_out;
  bad.pass.next = PassView::mull;
  bad.dot.reset();
  bad.last_trouble.reset();
  keep("in trouble", bad);
  SlabView first = slab_of(b);
  first.trail = {};
  first.ratio.reset();
  first.advice = {};
  first.pass = {PassView::wet_out, std::nullopt, 1, 0, 210};
  for (auto& m : first.materials) m.grams.reset();
  first.undo = {std::nullopt, "", true};
  keep("empty", first);
  for (int kind = Advice::first_helping; kind < Advice::gathered; ++kind) {
    SlabView advised = slab_of(b);
    advised.advice.kind = static_cast<Advice::Kind>(kind);
    advised.advice.low_g = advised.advice.mL = advised.advice.amount.spoons = 14.25;
    advised.advice.several = true;
    if (kind != Advice::add_drops) advised.advice.amount.drops = 0; // spoons alone are said
    advised.advice.wait_min = 10;
    advised.advice.too_early = true;
    advised.advice.high_g = advised.advice.dry_min = 15;
    advised.advice.pigments = {{"pb36", "Cerulean blue (chromium)", 1.2}};
    advised.advice.mulling = MullingNeeded{{20, 42, 60}, {8, 12, 20}};
    keep("advised", advised);
    advised.advice.gum.reset(); // then right is said otherwise
    keep("advised", advised);
  }
  SlabView stays = slab_of(b);
  stays.advice.binder = "Gum 1 : 2, glycerin";
  keep("advised", stays);
  stays.advice.gum.reset();
  stays.advice.kind = Advice::keep_mulling;
  for (const SpecksStay specks :
       {SpecksStay::in_portions, SpecksStay::coarse, SpecksStay::as_it_is}) {
    stays.advice.specks = specks;
    keep("advised", stays);
  }
  stays.advice.by_knife = true;
  keep("advised", stays);
  b.folded->passes[0].end = 100;
  SlabView idle = slab_of(b);
  idle.pass = {PassView::mull, std::nullopt, 12, 0, 210};
  keep("may gather", idle);
  for (const Panel& panel :
       {Panel(AmountsPanel{}), Panel(BottlesPanel{}), Panel(SpecksPanel{}), Panel(TroublesPanel{}),
        Panel(MorePanel{}), Panel(FoundPanel{}), Panel(LinesPanel{}), Panel(PaintsPanel{})}) {
    b.panel = panel;
    SlabView choosing = slab_of(b);
    choosing.away_ms = 3 * 24 * 3'600'000;
    keep("choosing", choosing);
  }
  b.panel = NumberPanel{};
  b.number = NumberEntry{{ChoicePad::bottle_of, "gum_12_glycerin"}, "", {}};
  keep("number", slab_of(b));
  SlabView wrong = slab_of(b);
  wrong.number->error = words::Error{words::PaintSay::not_a_number, {"123.4.5"}};
  keep("not a number", wrong);
  b.panel = TrailPanel{};
  b.folded->progress = session::Progress::gathered;
  SlabView gathered = slab_of(b);
  gathered.advice.kind = Advice::gathered;
  keep("gathered", gathered);
  b.locked = true;
  SlabView locked = slab_of(b);
  locked.locked = true;
  locked.unlocking = 0.4;
  keep("locked", locked);
}

void add_plans(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  bool more = true;
  for (b.plan.list.at = 0; more; b.plan.list.at += plan_rows_a_page / 2) {
    View v = around(b);
    more = pad_of(v.layout, {SharedPad::page_on, ""}) != nullptr;
    PlanView plan;
    for (const session::Card& card : b.shelf)
      if (pad_of(v.layout, {PlanPad::pigment, card.id}))
        plan.pigments.push_back({{PlanPad::pigment, card.id},
                                 card.name,
                                 pigment_of(card).index_name,
                                 pigment_of(card).colour,
                                 true});
    for (const session::Card* card : shelf_of(b, session::CardKind::binder))
      plan.binders.push_back({{PlanPad::binder, card->id}, card->name, "", 0, true});
    plan.name = "Cerulean blue (chromium), 3";
    plan.finding = Finding::pigment;
    plan.want = Want::pans;
    plan.wanted = 123;
    plan.pan = "half pan";
    plan.planned = Planned{
        {}, 123.4, {41.5, 58.5, 9.75}, 97.3, 47, 11.25, 0, 154.2, .5, 123, 3, 11, false, {}};
    plan.cautions = {words::PaintSay::caution_dust, words::PaintSay::caution_cobalt};
    for (const words::Sentence care : paint::general_care()) plan.cautions.push_back(care);
    plan.missing = words::BenchSay::plan_choose_pigment;
    plan.lines = lines();
    v.screen = plan;
    out.push_back({"plan" + on, mm, v});
  }
}

// Every remedy, with numbers of two and three digits; lines to be corrected; paints to choose from.
void add_panels(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  for (int i = 0; i < 28; ++i) {
    const auto trouble = static_cast<session::TroubleKind>(i % 7);
    b.panel = RemedyPanel{trouble};
    View v = around(b);
    SlabView slab = slab_of(b);
    slab.remedy = Remedy{trouble, static_cast<Remedy::Way>(i / 7), {.drops = 12}, 12.4};
    v.screen = slab;
    out.push_back({"slab, remedy" + on, mm, v});
  }
  for (int i = 0; i < 5; ++i)
    b.folded->entries.push_back(
        {{"c41e08d5", static_cast<std::uint64_t>(i)},
         754.0 * i,
         0,
         session::Added{"gum_12_glycerin", session::Unit::drops, 10, "dropper"},
         false,
         false,
         {},
         {},
         {}});
  b.panel = LinesPanel{};
  View v = around(b);
  SlabView slab = slab_of(b);
  for (int i = 0; i < 4; ++i)
    slab.lines.push_back({{MorePad::line, "c41e08d5 " + std::to_string(4 - i)},
                          1795617120000,
                          b.folded->entries[0].event,
                          "Gum and glycerin",
                          true});
  v.screen = slab;
  out.push_back({"slab, lines" + on, mm, v});
  b.panel = LinePanel{{"c41e08d5", 2}};
  v = around(b);
  slab.panel = b.panel;
  slab.lines.resize(1);
  v.screen = slab;
  out.push_back({"slab, line" + on, mm, v});
}

// A plan as the bench makes it: a blend of four for pans, and its cautions open.
void add_blends(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  for (const char* id : {"pb36", "pb28", "py35", "pr108"})
    for (const session::Card& card : b.shelf)
      if (card.id == id) b.plan.blend.push_back({id, 2.5});
  b.plan.name = "Cerulean blue (chromium), cobalt blue, cadmium yellow";
  b.plan.want = Want::pans;
  b.plan.wanted = 24;
  out.push_back({"plan, blend" + on, mm, view(b, {})});
  b.plan.reading = true;
  out.push_back({"plan, cautions" + on, mm, view(b, {})});
}

// A batch was left open: its name is long.
void add_left_open(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.plan.go_on = "b";
  View v = view(b, {});
  std::get<PlanView>(v.screen).go_on = "Cerulean blue (chromium), 3";
  out.push_back({"plan, left open" + on, mm, v});
}

void add_books(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::book;
  b.batches = {"one", "two"};
  View v = around(b);
  BookView list;
  for (const std::string& id : b.batches)
    list.rows.push_back({{BookPad::batch, id},
                         "Cerulean blue (chromium), 3",
                         0x2266AA,
                         1773066720000,
                         session::Progress::gathered,
                         paint::exact(12.34),
                         true,
                         {session::Became::wont_rewet}});
  list.damages = 2;
  v.screen = list;
  out.push_back({"book" + on, mm, v});
  open_batch(b);
  b.screen = Screen::book;
  b.book.page = BatchPage{"one", {}};
  v = around(b);
  BookView one;
  session::Batch batch = *b.folded;
  for (const auto& [id, card] : batch.cards)
    batch.totals.push_back({card, paint::exact(123.4), 52, {{"teaspoon", 1.25}}, 0, false});
  batch.standing.binder_ratio = paint::exact(12.34);
  batch.standing.flow_now = paint::exact(2.7);
  batch.standing.water_lost_mL = paint::exact(0.9);
  one.batch = std::make_shared<const session::Batch>(batch);
  one.trail = trail();
  one.trail.whole = true;
  one.trail.gathered = 900;
  v.screen = one;
  out.push_back({"one batch" + on, mm, v});
  add_papers(out, b, one, on);
}

}

paint::Band band(double middle, double sd) {
  paint::Prediction f;
  f.points.push_back({{.half_width = 0.2, .slope = 0.04}, std::log(middle) - 4 * sd, sd / 30, 241});
  double sum = 0;
  for (int i = -120; i <= 120; ++i) {
    f.weights.push_back(std::exp(-0.5 * (i / 30.0) * (i / 30.0)));
    sum += f.weights.back();
  }
  for (double& weight : f.weights) weight /= sum;
  return paint::band_seen(f);
}

TrailView trail() {
  using session::Feel;
  TrailView t;
  double flow = 1.2;
  for (double clock = 30; clock <= 900; clock += 15) {
    const bool drop = static_cast<int>(clock) % 60 < 30;
    t.points.push_back({clock, flow, clock == 600});
    t.points.push_back({clock, flow *= drop ? 1.03 : 0.995, false});
    if (const int now = static_cast<int>(clock); now % 150 == 0)
      t.marks.push_back({clock, flow, static_cast<Feel>(now / 150 % 5)});
  }
  for (const auto& point : t.points)
    t.ghost.push_back({point.clock * 0.7, point.flow * 0.9, false});
  t.marks.push_back({880, flow, session::Specks::few});
  t.marks.push_back({890, flow, session::TroubleKind::gelling});
  t.passes = {{session::Stage::wetting_out, 0, 30, 200}, {session::Stage::mulling, 1, 210, 900}};
  t.band = band(2.6, 0.2);
  t.now = flow;
  t.next = flow * 1.12;
  t.from = 0;
  t.to = 900;
  return t;
}

std::vector<Case> all(Hand hand) {
  std::vector<Case> out;
  for (const Size mm : displays) {
    const std::string on = ", " + words::invariant(mm.w, 0) + " x " + words::invariant(mm.h, 0);
    for (const auto add :
         {add_slabs, add_plans, add_panels, add_materials, add_runs, add_droppers, add_dots,
          add_shelves, add_cards_read, add_blends, add_left_open, add_books, add_tablets, add_pans,
          add_weighings, add_todays, add_recipes, add_binders, add_papers_of_card})
      add(out, mm, hand, on);
  }
  return out;
}

}
