#include "screens/views_slab.hpp"

#include "bench/choices.hpp"
#include "bench/corrections.hpp"
#include "bench/materials.hpp"
#include "bench/pads_more.hpp"
#include "words/bench_says.hpp"

#include <algorithm>

namespace views {

using namespace bench;

// Every material of a full shelf: to be added, as what a line was, and for the pads; a run of
// drops.
void add_materials(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  const session::Ref line{"c41e08d5", 2};
  const session::Added drops{"gum_12_glycerin", session::Unit::drops, 10, "dropper"};
  b.folded->entries.push_back({line, 0, 0, drops, false, false, {}, {}, {}});
  const auto keep = [&](const std::string& what, const Panel& panel) {
    b.panel = panel;
    View v = around(b);
    SlabView slab = slab_of(b);
    slab.panel = panel;
    slab.undo.gives_back = true;
    const auto has_pad_already = [&](const PadId& id) {
      return std::any_of(slab.materials.begin(), slab.materials.end(),
                         [&](const MaterialView& m) { return m.pad == id; });
    };
    for (const Pad& pad : v.layout.pads)
      for (const session::Card& card : all_materials(b))
        if (pad.id.arg == card.id && !has_pad_already(pad.id))
          slab.cards.push_back(
              {pad.id, card.kind(), card.name, pigment_of(card).colour, 123.4, {}, 0, ""});
    for (std::size_t i = 0; i < slab.cards.size(); i += 2) slab.cards[i].has_pad = true;
    for (MaterialView& m : slab.materials) m.corrects = corrects_material(b);
    slab.notice.error = words::Error{words::BenchSay::powder_is_weighed, {"Cerulean blue"}};
    v.screen = slab;
    out.push_back({"slab, " + what + on, mm, v});
  };
  keep("more", MorePanel{});
  keep("materials", MaterialsPanel{});
  keep("what it was", MaterialsPanel{MaterialsPanel::was, 0, line});
  keep("which have a pad", MaterialsPanel{MaterialsPanel::choose, 0, {}});
  keep("what it was, on", MaterialsPanel{MaterialsPanel::was, 1, line});
}

void add_runs(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  const session::Added drop{"gum_12_glycerin", session::Unit::drops, 1, "dropper"};
  for (int i = 0; i < 12; ++i)
    b.folded->entries.push_back({{"c41e08d5", static_cast<std::uint64_t>(i)},
                                 5.0 * i,
                                 1795617120000 + 5000 * i,
                                 drop,
                                 false,
                                 false,
                                 {},
                                 {},
                                 {}});
  const auto keep = [&](const std::string& what, const LinesPanel& panel) {
    b.panel = panel;
    View v = around(b);
    SlabView slab = slab_of(b);
    slab.panel = panel;
    for (const Pad& pad : v.layout.pads)
      if (pad.id.kind == MorePad::line || pad.id.kind == MorePad::run)
        slab.lines.push_back({pad.id, 1795617120000, drop, "Gum and glycerin", true, 754000});
    v.screen = slab;
    out.push_back({"slab, " + what + on, mm, v});
  };
  keep("run of drops", LinesPanel{});
  keep("run opened", LinesPanel{0, session::Ref{"c41e08d5", 11}});
  keep("run opened, on", LinesPanel{1, session::Ref{"c41e08d5", 11}});
}

void add_droppers(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  session::Card another = *shelf_card(b, "dropper");
  another.id = "green";
  b.shelf.push_back(another);
  b.panel = AmountsPanel{};
  View v = around(b);
  SlabView slab = slab_of(b);
  slab.dropper = "green bulb";
  for (MaterialView& m : slab.materials)
    if (session::is_liquid(m.kind)) m.dropper = slab.dropper;
  v.screen = slab;
  out.push_back({"slab, droppers" + on, mm, v});
}

// The photos of two dots beside the trail.
void add_dots(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  open_batch(b);
  b.photos.there = true;
  b.folded->clock = 900;
  SlabView slab = slab_of(b);
  for (const char digit : {'a', 'b'}) {
    const session::Photo dot{std::string(64, digit), "jpg", session::PhotoOf::dot};
    session::Entry entry;
    entry.clock = 600 + 100 * (digit - 'a');
    entry.flow = 2.2;
    entry.event = dot;
    b.folded->entries.push_back(entry);
    slab.trail.photos.push_back({entry.clock, *entry.flow, dot});
  }
  View v = around(b);
  v.screen = slab;
  out.push_back({"slab, dots photographed" + on, mm, v});
}

}
