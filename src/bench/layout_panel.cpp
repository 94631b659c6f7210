#include "bench/corrections.hpp"
#include "bench/doubt.hpp"
#include "bench/layout_parts.hpp"
#include "bench/materials.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "bench/paints.hpp"
#include "words/lists.hpp"

namespace bench {

namespace {

// A pad for each of a closed list: in one row of double height, or in two rows of four.
template <class Kind>
void add_row(Layout& layout, PadKind pad, Grid g) {
  static_assert(words::count_of<Kind> <= 4);
  g.columns = static_cast<int>(words::count_of<Kind>);
  for (const Kind kind : words::all_of<Kind>)
    add(layout, pad, g.cell(static_cast<int>(kind), 1, 1, 2), std::string(name_of(kind)));
}

template <class Kind>
void add_rows(Layout& layout, PadKind pad, const Grid& g) {
  static_assert(words::count_of<Kind> <= 8, "no cell is left for another");
  for (const Kind kind : words::all_of<Kind>) {
    const int i = static_cast<int>(kind);
    add(layout, pad, g.cell(i % 4, 1 + i / 4), std::string(name_of(kind)));
  }
}

void lay_out_amounts(const Bench& bench, const Grid& g, Layout& layout) {
  int i = 0;
  for (const AmountPad& pad : amount_pads) {
    add(layout, ChoicePad::amount, g.cell(i % 4, 1 + i / 4), std::string(pad.name));
    ++i;
  }
  if (droppers_of(bench).size() > 1) add(layout, ChoicePad::dropper, g.cell(0, g.rows - 1, 2));
}

void lay_out_bottles(const Bench& bench, const Grid& g, Layout& layout) {
  const auto liquids = bottles_of(bench);
  for (int i = 0; i < static_cast<int>(liquids.size()); ++i) {
    add(layout, ChoicePad::bottle_of, g.cell(i, 1), liquids[i].id);
    add(layout, ChoicePad::lost_count, g.cell(i, 2), liquids[i].id);
  }
}

void lay_out_pigments(const Bench& bench, const Grid& g, Layout& layout) {
  const auto cards = pigments_of(bench);
  for (int i = 0; i < static_cast<int>(cards.size()) && i < 8; ++i)
    add(layout, SlabPad::add, g.cell(i % 4, 1 + i / 4), cards[i].id);
}

void lay_out_more(const Bench& bench, const Grid& g, Layout& layout) {
  add(layout, SlabPad::bottle, g.cell(0, 1));
  add(layout, MorePad::lines, g.cell(1, 1));
  add(layout, MorePad::other_paint, g.cell(2, 1));
  add(layout, MorePad::weigh_paint, g.cell(3, 1));
  const bool on_slab = lies(bench, session::Place::slab), in_jar = lies(bench, session::Place::jar);
  if (on_slab) add(layout, MorePad::to_jar, g.cell(0, 2), "all");
  if (on_slab) add(layout, MorePad::to_jar, g.cell(1, 2), "half");
  if (in_jar) add(layout, MorePad::from_jar, g.cell(2, 2));
  if (on_slab || in_jar) add(layout, MorePad::spilt, g.cell(3, 2));
  if (!without_pad(bench).empty()) add(layout, MorePad::materials, g.cell(0, g.rows - 1));
  add(layout, MorePad::room, g.cell(1, g.rows - 1));
}

void lay_out_paints(const Bench& bench, const Grid& g, Layout& layout) {
  const auto& paints = bench.paints;
  for (int i = 0; i < static_cast<int>(paints.size()); ++i)
    add(layout, MorePad::paint_of, g.cell(i % 2 * 2, 1 + i / 2, 2), paints[i].batch);
}

void lay_out_lines(const Bench& bench, const LinesPanel& panel, const Grid& g, Layout& layout) {
  const auto lines = lines_listed(bench, panel);
  const int first = panel.page * lines_a_page, last = g.rows - 1;
  for (int i = 0; i < lines_a_page && first + i < static_cast<int>(lines.size()); ++i)
    layout.pads.push_back({lines[first + i].pad, g.cell(i % 2 * 2, 1 + i / 2, 2)});
  if (first + lines_a_page < static_cast<int>(lines.size()))
    add(layout, MorePad::earlier, g.cell(0, last));
  if (panel.page > 0)
    add(layout, MorePad::later, g.cell(1, last));
  else if (panel.run)
    add(layout, MorePad::lines, g.cell(1, last));
}

// What may have been meant stands first; all else that can be said of a line is there too.
void lay_out_doubted(const Doubt& doubt, const session::Event& event, const Grid& g,
                     Layout& layout) {
  if (doubt.can_count) add(layout, MorePad::it_is, g.cell(0, 1));
  if (doubt.meant) add(layout, MorePad::was_meant, g.cell(1, 1), grams_arg(*doubt.meant));
  add(layout, MorePad::other_amount, g.cell(2, 1));
  add(layout, MorePad::take_back, g.cell(3, 1));
  if (has_material(event)) add(layout, MorePad::other_material, g.cell(0, 2));
  add(layout, MorePad::five_earlier, g.cell(1, 2));
}

void lay_out_line(const Bench& bench, const Grid& g, Layout& layout) {
  const session::Entry* line = line_chosen(bench);
  if (!line) return;
  if (const auto doubt = doubt_about(bench, *line))
    return lay_out_doubted(*doubt, line->event, g, layout);
  if (amount_in(line->event)) add(layout, MorePad::other_amount, g.cell(0, 1, 1, 2));
  if (has_material(line->event)) add(layout, MorePad::other_material, g.cell(1, 1, 1, 2));
  add(layout, MorePad::five_earlier, g.cell(2, 1, 1, 2));
  add(layout, MorePad::take_back, g.cell(3, 1, 1, 2));
}

void lay_out_materials(const Bench& bench, const MaterialsPanel& panel, const Grid& g,
                       Layout& layout) {
  const PadKind kind = panel.why == MaterialsPanel::add   ? PadKind(SlabPad::add)
                       : panel.why == MaterialsPanel::was ? PadKind(MorePad::it_was)
                                                          : PadKind(MorePad::on_pad);
  const auto cards = materials_of_page(bench, panel);
  for (int i = 0; i < static_cast<int>(cards.size()); ++i)
    add(layout, kind, g.cell(i % 4, 1 + i / 4), cards[i].id);
  if (material_pages(bench, panel) > 1) add(layout, MorePad::more_materials, g.cell(0, g.rows - 1));
  if (panel.why == MaterialsPanel::add) add(layout, MorePad::choose_pads, g.cell(1, g.rows - 1));
}

// It names alcohol or ox gall, of which some may have no pad.
bool leads_to_materials(const Bench& bench, const RemedyPanel& panel) {
  const bool named =
      panel.of == session::TroubleKind::wont_wet || panel.of == session::TroubleKind::foams;
  return named && !without_pad(bench).empty();
}

void lay_out_found(const Grid& g, Layout& layout) {
  Grid thirds = g;
  thirds.columns = 3;
  add(layout, MorePad::found, thirds.cell(0, 1, 1, 2), "wet");
  add(layout, MorePad::found, thirds.cell(1, 1, 1, 2), "dry");
  add(layout, MorePad::weigh_paint, thirds.cell(2, 1, 1, 2));
}

struct LayOut {
  const Bench& bench;
  const Grid& g;
  Layout& layout;

  void operator()(const AmountsPanel&) const { lay_out_amounts(bench, g, layout); }
  void operator()(const BottlesPanel&) const { lay_out_bottles(bench, g, layout); }
  void operator()(const SpecksPanel&) const {
    add_row<session::Specks>(layout, ChoicePad::specks, g);
  }
  void operator()(const TroublesPanel&) const {
    add_rows<session::TroubleKind>(layout, ChoicePad::trouble_is, g);
  }
  void operator()(const PigmentsPanel&) const { lay_out_pigments(bench, g, layout); }
  void operator()(const MaterialsPanel& panel) const { lay_out_materials(bench, panel, g, layout); }
  void operator()(const MorePanel&) const { lay_out_more(bench, g, layout); }
  void operator()(const PaintsPanel&) const { lay_out_paints(bench, g, layout); }
  void operator()(const LinesPanel& page) const { lay_out_lines(bench, page, g, layout); }
  void operator()(const LinePanel&) const { lay_out_line(bench, g, layout); }
  void operator()(const FoundPanel&) const { lay_out_found(g, layout); }
  void operator()(const RemedyPanel& panel) const {
    if (leads_to_materials(bench, panel)) add(layout, MorePad::materials, g.cell(0, g.rows - 1, 2));
  }
  void operator()(const DropperPanel&) const {
    add(layout, ChoicePad::keep_dropper, g.cell(0, g.rows - 2, 4));
  }
  template <words::one_of<TrailPanel, NumberPanel> Elsewhere>
  void operator()(const Elsewhere&) const {}
};

}

void lay_out_panel(const Bench& bench, const Grid& g, Layout& layout) {
  const int last = g.rows - 1;
  const auto* remedy = std::get_if<RemedyPanel>(&bench.panel);
  const bool remedy_leads_on = remedy && leads_to_materials(bench, *remedy);
  const bool half = is_open<LinesPanel>(bench.panel) || is_open<MaterialsPanel>(bench.panel) ||
                    is_open<MorePanel>(bench.panel) || remedy_leads_on ||
                    (is_open<AmountsPanel>(bench.panel) && droppers_of(bench).size() > 1);
  const int words = is_open<RemedyPanel>(bench.panel)    ? last
                    : is_open<DropperPanel>(bench.panel) ? last - 1
                                                         : 1;
  layout.main = g.cell(0, 0, 4, words);
  add(layout, SharedPad::leave, half ? g.cell(2, last, 2) : g.cell(0, last, 4));
  std::visit(LayOut{bench, g, layout}, bench.panel);
}

}
