// Views of what weighings say, as views.cpp makes the others.
#include "screens/views_weighings.hpp"

#include "bench/choices.hpp"
#include "bench/pads_more.hpp"
#include "session/amounts.hpp"
#include "words/bench_says.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

namespace views {

using namespace bench;

namespace {

// 120 g of a pigment in a binder of a long name, in the jar.
Bench with_a_jar(Size mm, Hand hand) {
  Now now;
  now.fresh = [] { return 7u; };
  Bench b = start("s", "tablet", {mm, hand}, now);
  b.loaded = true;
  b.screen = Screen::slab;
  b.batch = "b";
  session::Batch batch;
  batch.id = "b";
  batch.name = "Cerulean blue (chromium), 3";
  batch.progress = session::Progress::gathered;
  for (const char* id : {"pb36", "gum_12_glycerin"}) {
    const session::Card card = *shelf_card(b, id);
    batch.cards[id] = card;
    session::put_in(batch.places, id, *session::material_of(card), paint::exact(60));
  }
  session::gather(batch.places, "s");
  b.folded = batch;
  return b;
}

// A correction, and what is said of amounts that cannot be or are not plausible.
void add_asked(std::vector<Case>& out, Bench b, Size mm, const std::string& on) {
  using words::BenchSay;
  b.panel = NumberPanel{};
  b.number = NumberEntry{{MorePad::other_amount, ""}, "123.4", {}};
  View v = view(b, {});
  SlabView& slab = std::get<SlabView>(v.screen);
  slab.number->of = "Gum 1 : 2 with glycerin";
  slab.number->corrects =
      session::Added{"gum_12_glycerin", session::Unit::spoons, 12.5, "teaspoon"};
  out.push_back({"slab, correction" + on, mm, v});
  slab.undo.question = true;
  const words::Number some(123.4, 1), more(1234.5, 1);
  for (const words::Error& said :
       {words::Error{BenchSay::past_the_plan, {some, more}},
        words::Error{BenchSay::so_many_portions, {words::Number(123, 0)}},
        words::Error{BenchSay::pan_lighter, {some, more}},
        words::Error{BenchSay::spilt_more, {some, more}},
        words::Error{BenchSay::line_taken_back, {}},
        words::Error{BenchSay::past_what_counts, {some, more}}}) {
    slab.number->error = said;
    out.push_back({"slab, asked" + on, mm, v});
  }
}

}

void add_weighings(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = with_a_jar(mm, hand);
  out.push_back({"slab, jar" + on, mm, view(b, {})});
  out.push_back({"slab, jar without a pigment" + on, mm, view(b, {})});
  std::get<SlabView>(out.back().view.screen).notice.error =
      words::Error{words::BenchSay::pigment_left_out, {"Cerulean blue (chromium), Titanium white"}};
  const words::Error idle{words::SessionSay::bottle_uncounted, {words::Number(12.5, 1)}};
  b.folded->warnings = {{session::WarningKind::bottle_uncounted, {"c41e08d5", 12}, "", idle}};
  out.push_back({"slab, bottle that tells nothing" + on, mm, view(b, {})});
  const words::Error why{words::PaintSay::weighing_contradicts, {"111.0", "140.5"}};
  b.folded->warnings = {{session::WarningKind::not_weighed, {"c41e08d5", 12}, "", why}};
  out.push_back({"slab, weighing left out" + on, mm, view(b, {})});
  Bench dusty = b;
  dusty.folded->powder_is_dry = true;
  out.push_back({"slab, weighing left out, mask on" + on, mm, view(dusty, {})});
  const session::Ref before{"c41e08d5", 13}, line{"c41e08d5", 27};
  session::Entry bottle;
  bottle.ref = line;
  bottle.event = session::BottleWeighed{"gum_12_glycerin", 138.96};
  const words::Error slip{words::PaintSay::bottle_contradicts,
                          {words::Number(0.4, 1), words::Number(1251.04, 1)}};
  Bench doubted = b;
  doubted.folded->entries = {};
  doubted.folded->entries.push_back(bottle);
  doubted.folded->warnings = {{session::WarningKind::not_weighed, line, "", slip}};
  doubted.folded->bottles = {{before, line, {1251.04, 0.0016, {}}, {0.4, 0.01, {}}, false}};
  doubted.panel = LinePanel{line};
  out.push_back({"slab, weighing doubted" + on, mm, view(doubted, {})});
  add_asked(out, b, mm, on);
  b.panel = DropperPanel{};
  out.push_back({"slab, dropper found" + on, mm, view(b, {})});
  std::get<SlabView>(out.back().view.screen).dropper_found =
      DropperFound{*shelf_card(b, "dropper"), "Gum 1 : 2 with glycerin", 110, 12.34, 10.47};
}

}
