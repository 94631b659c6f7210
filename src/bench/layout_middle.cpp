#include "bench/corrections.hpp"
#include "bench/layout_parts.hpp"
#include "bench/materials.hpp"
#include "bench/paints.hpp"

namespace bench {

namespace {

template <class Kind, std::size_t n>
void add_row(Layout& layout, PadKind pad, const Grid& g, const std::array<Kind, n>& kinds) {
  Grid wide = g;
  wide.columns = static_cast<int>(n);
  for (int i = 0; i < static_cast<int>(n); ++i)
    add(layout, pad, wide.cell(i, 1, 1, 2), std::string(name_of(kinds[i])));
}

void lay_out_amounts(const Bench& bench, const Grid& g, Layout& layout) {
  for (int i = 0; i < 8; ++i)
    add(layout, PadKind::amount, g.cell(i % 4, 1 + i / 4), std::string(amount_names[i]));
  if (droppers_of(bench).size() > 1) add(layout, PadKind::dropper, g.cell(0, g.rows - 1, 2));
}

void lay_out_bottles(const Bench& bench, const Grid& g, Layout& layout) {
  const auto liquids = bottles_of(bench);
  for (int i = 0; i < static_cast<int>(liquids.size()); ++i) {
    add(layout, PadKind::bottle_of, g.cell(i, 1), liquids[i].id);
    add(layout, PadKind::lost_count, g.cell(i, 2), liquids[i].id);
  }
}

void lay_out_troubles(const Grid& g, Layout& layout) {
  for (int i = 0; i < 7; ++i)
    add(layout, PadKind::trouble_is, g.cell(i % 4, 1 + i / 4),
        std::string(name_of(static_cast<session::TroubleKind>(i))));
}

void lay_out_pigments(const Bench& bench, const Grid& g, Layout& layout) {
  const auto cards = pigments_of(bench);
  for (int i = 0; i < static_cast<int>(cards.size()) && i < 8; ++i)
    add(layout, PadKind::add, g.cell(i % 4, 1 + i / 4), cards[i].id);
}

void lay_out_more(const Bench& bench, const Grid& g, Layout& layout) {
  add(layout, PadKind::bottle, g.cell(0, 1));
  add(layout, PadKind::lines, g.cell(1, 1));
  add(layout, PadKind::other_paint, g.cell(2, 1));
  add(layout, PadKind::weigh_paint, g.cell(3, 1));
  const bool on_slab = lies(bench, session::Place::slab), in_jar = lies(bench, session::Place::jar);
  if (on_slab) add(layout, PadKind::to_jar, g.cell(0, 2), "all");
  if (on_slab) add(layout, PadKind::to_jar, g.cell(1, 2), "half");
  if (in_jar) add(layout, PadKind::from_jar, g.cell(2, 2));
  if (on_slab || in_jar) add(layout, PadKind::spilt, g.cell(3, 2));
}

void lay_out_paints(const Bench& bench, const Grid& g, Layout& layout) {
  const auto& paints = bench.paints;
  for (int i = 0; i < static_cast<int>(paints.size()); ++i)
    add(layout, PadKind::paint_of, g.cell(i % 2 * 2, 1 + i / 2, 2), paints[i].batch);
}

void lay_out_lines(const Bench& bench, const Grid& g, Layout& layout) {
  const auto lines = correctable(bench);
  const int first = bench.lines_page * lines_a_page;
  for (int i = 0; i < lines_a_page && first + i < static_cast<int>(lines.size()); ++i) {
    const session::Ref& ref = lines[first + i]->ref;
    add(layout, PadKind::line, g.cell(i % 2 * 2, 1 + i / 2, 2), arg_of(ref));
  }
  if (first + lines_a_page < static_cast<int>(lines.size()))
    add(layout, PadKind::earlier, g.cell(0, g.rows - 1, 2));
}

void lay_out_line(const Bench& bench, const Grid& g, Layout& layout) {
  Grid thirds = g;
  thirds.columns = 3;
  const session::Entry* line = line_chosen(bench);
  if (!line) return;
  if (amount_in(line->event)) add(layout, PadKind::other_amount, thirds.cell(0, 1, 1, 2));
  add(layout, PadKind::five_earlier, thirds.cell(1, 1, 1, 2));
  add(layout, PadKind::take_back, thirds.cell(2, 1, 1, 2));
}

void lay_out_found(const Grid& g, Layout& layout) {
  Grid thirds = g;
  thirds.columns = 3;
  add(layout, PadKind::found, thirds.cell(0, 1, 1, 2), "wet");
  add(layout, PadKind::found, thirds.cell(1, 1, 1, 2), "dry");
  add(layout, PadKind::weigh_paint, thirds.cell(2, 1, 1, 2));
}

}

void lay_out_middle(const Bench& bench, const Grid& g, Layout& layout) {
  using session::Specks;
  const int last = g.rows - 1;
  const bool half = bench.middle == Middle::lines ||
                    (bench.middle == Middle::amounts && droppers_of(bench).size() > 1);
  layout.main = g.cell(0, 0, 4, bench.middle == Middle::remedy ? last : 1);
  add(layout, PadKind::leave, half ? g.cell(2, last, 2) : g.cell(0, last, 4));
  switch (bench.middle) {
  case Middle::amounts: return lay_out_amounts(bench, g, layout);
  case Middle::bottles: return lay_out_bottles(bench, g, layout);
  case Middle::specks:
    return add_row(layout, PadKind::specks, g, std::array{Specks::many, Specks::few, Specks::none});
  case Middle::troubles: return lay_out_troubles(g, layout);
  case Middle::pigments: return lay_out_pigments(bench, g, layout);
  case Middle::more: return lay_out_more(bench, g, layout);
  case Middle::paints: return lay_out_paints(bench, g, layout);
  case Middle::lines: return lay_out_lines(bench, g, layout);
  case Middle::line: return lay_out_line(bench, g, layout);
  case Middle::found: return lay_out_found(g, layout);
  default: return;
  }
}

}
