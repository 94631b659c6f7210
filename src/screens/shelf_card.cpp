// Shelf: a pigment's card as it is read.
#include "bench/pads_shelf.hpp"
#include "paint/catalogue.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "screens/sources.hpp"
#include "screens/trail_geometry.hpp"
#include "words/lists.hpp"
#include "words/ranges_says.hpp"
#include "words/shelf_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::ReadingView;
using bench::ShelfPad;
using bench::ShelfView;
using Say = words::ShelfSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};
constexpr Lettering small_bold{cap::small, true, cap::small};

void rule(Sheet& sheet, const Rect& above) {
  sheet.shapes.push_back(Polyline{{{above.x, above.bottom()}, {above.right(), above.bottom()}},
                                  outline_mm,
                                  sheet.theme.rule,
                                  0});
}

std::string figures_words(const session::PigmentCard& pigment) {
  const paint::Pigment& p = pigment.pigment;
  const std::string density = words::number(p.g_per_mL, 1);
  const std::string figures =
      p.oil_g_per_100g > 0 ? say(Say::card_figures, {density, words::number(p.oil_g_per_100g, 0)})
                           : say(Say::card_density, {density});
  return pigment.index_name.empty() ? figures : pigment.index_name + "; " + figures;
}

// Its colour, what it is called, and what is to be known of it at once.
void head(Sheet& sheet, const Rect& r, const ShelfView& shelf) {
  const Theme& t = sheet.theme;
  const session::PigmentCard& pigment = pigment_of(*shelf.card);
  const double wide = std::min(r.w * 0.3, 40.0);
  sheet.shapes.push_back(
      Box{{r.x + 2, r.y + 2, wide, r.h - 3}, radius_mm, rgb(pigment.colour), t.ink, outline_mm});
  std::vector<Label> said{{shelf.card->name, {cap::head, true, cap::clear}, false, 2},
                          {figures_words(pigment), small, true, 2}};
  if (!shelf.colour.swatch_of.empty())
    said[1] = {say(Say::card_from_swatch, {shelf.colour.swatch_of}), small, false, 2};
  labels(sheet, {r.x + wide + 3, r.y, r.w - wide - 3, r.h}, plain(t), said, Anchor::left);
}

// What is so of this pigment, and after it what is so of every powder where there is room.
std::vector<Label> harm_words(const std::vector<paint::Caution>& asks) {
  std::vector<paint::Caution> own = asks;
  std::stable_partition(own.begin(), own.end(),
                        [](paint::Caution c) { return c != paint::Caution::dust; });
  if (own.size() > 2) own = {own[0], paint::Caution::dust};
  const std::string first = own.empty() ? "" : say(paint::sentence(own[0]));
  if (own.size() < 2) return {{first, small_bold, false, 2}};
  const std::string second = say(paint::sentence(own[1]));
  return {{first, small_bold, false, 2}, {second, small_bold, false, 1}};
}

// A pigment's own caution may take two lines; the mask keeps one of its own all the same.
double harm_mm(const std::vector<Label>& said, double width) {
  std::size_t lines = 0;
  for (const Label& label : said)
    lines += fitted(label.words, width, label.lettering, label.max_lines).lines.size();
  return lines > 2 ? 13.4 : 10;
}

void harm(Sheet& sheet, Rect& area, const ShelfView& shelf) {
  constexpr double sign_mm = 11;
  const auto said = harm_words(shelf.asks);
  const Rect r = slice(area, harm_mm(said, area.w - sign_mm - 2 * padding_mm));
  const Ground g = caution(sheet.theme);
  sheet.shapes.push_back(Box{{r.x + 2, r.y + 0.5, r.w - 4, r.h - 1}, 1.6, g.fill, clear, 0});
  caution_sign(sheet, {r.x + 6, r.centre().y}, 4.6);
  labels(sheet, {r.x + 9, r.y, r.w - sign_mm, r.h}, g, said, Anchor::left);
}

// In how many batches, or that it was in none of this binder.
std::string felt_words(const ShelfView& shelf) {
  switch (shelf.range->than) {
  case bench::BinderRange::stronger: return say(words::RangesSay::binder_stronger);
  case bench::BinderRange::thinner: return say(words::RangesSay::binder_thinner);
  case bench::BinderRange::never_felt: // said beside it
  case bench::BinderRange::as_taught: break;
  }
  return session::known_words(shelf.reading.band.value_or(paint::Band{}));
}

void wants(Sheet& sheet, const Rect& r, const ShelfView& shelf) {
  const Theme& t = sheet.theme;
  const std::string grams = say(Say::card_grams, {grams_number(shelf.range->g)});
  const std::string what = say(Say::card_wants_what);
  const double y = r.centre().y + cap::head / 2;
  write(sheet, {r.x + 3, y}, Anchor::left, clean_letters, t.quiet, what, 24);
  const double x = r.x + 5 + std::min(24.0, width_mm(what, cap::clear, false));
  write(sheet, {x, y}, Anchor::left, {cap::head, true, cap::head}, t.ink, grams, 30);
  const double after = x + width_mm(grams, cap::head, true) + 2, known = r.w * 0.25;
  write(sheet, {after, y}, Anchor::left, clean_letters, t.ink,
        say(Say::card_wants, {shelf.range->binder}), r.right() - known - after - 2);
  labels(sheet, {r.right() - known - 1, r.y, known, r.h}, plain(t),
         {{felt_words(shelf), clean_letters, true, 2}}, Anchor::right);
}

FlowScale scale_of(const ShelfView& shelf, const Rect& r) {
  double low = shelf.range->low_g, high = shelf.range->high_g;
  for (const double g : shelf.reading.right) {
    low = std::min(low, g);
    high = std::max(high, g);
  }
  return {low / 1.2, high * 1.2, r.x + 6, r.right() - 6};
}

void band(Sheet& sheet, const Rect& r, const FlowScale& grams, const ShelfView& shelf) {
  const Theme& t = sheet.theme;
  const double k = shelf.range->g_per_flow;
  const FlowScale flows{grams.low / k, grams.high / k, grams.left, grams.right};
  sheet.shapes.push_back(Gradient{{grams.left, r.y, grams.right - grams.left, r.h},
                                  band_stops(*shelf.reading.band, flows, 0, t.slab, t.right)});
  const auto [low, high] = band_edges(*shelf.reading.band);
  for (const double edge : {low, high})
    if (edge > flows.low && edge < flows.high)
      sheet.shapes.push_back(
          Polyline{{{flows.x(edge), r.y}, {flows.x(edge), r.bottom()}}, 0.3, t.right_ink, 0.9});
}

// Grams to 10 g: the band, what it is taken for, and a mark for each batch that was right.
void range(Sheet& sheet, const Rect& r, const ShelfView& shelf) {
  const Theme& t = sheet.theme;
  const FlowScale grams = scale_of(shelf, r);
  const double foot = cap::small * 1.9, axis = r.bottom() - foot;
  const Rect picture{r.x, r.y, r.w, r.h - foot};
  if (shelf.reading.band) band(sheet, picture, grams, shelf);
  const double y = r.y + picture.h * 0.36;
  sheet.shapes.push_back(Polyline{
      {{grams.x(shelf.range->low_g), y}, {grams.x(shelf.range->high_g), y}}, 0.5, t.ink, 0});
  const bool known = shelf.reading.band && shelf.reading.band->batches > 0;
  sheet.shapes.push_back(
      Disc{{grams.x(shelf.range->g), y}, 1.5, known ? t.ink : t.slab, t.ink, 0.5});
  for (const double g : shelf.reading.right)
    sheet.shapes.push_back(
        Polyline{{{grams.x(g), axis - picture.h * 0.3}, {grams.x(g), axis}}, 0.5, t.ink, 0});
  sheet.shapes.push_back(Polyline{{{grams.left, axis}, {grams.right, axis}}, outline_mm, t.ink, 0});
  for (const Tick& tick : ticks(grams, cap::small))
    write(sheet, {grams.x(tick.flow), r.bottom() - 0.4}, Anchor::centre, small, t.quiet, tick.label,
          12);
}

std::vector<Label> mulling_figure(const std::optional<bench::MullingNeeded>& mulling) {
  if (!mulling) return {};
  const bool known = mulling->batches > 0;
  const double passes = std::max(1.0, mulling->passes.middle);
  return {{say(Say::card_mull, {mulling_words(*mulling)}), {cap::body, true, cap::small}, false, 1},
          {known ? words::counted(static_cast<std::size_t>(passes), Say::card_mulling_one,
                                  Say::card_mulling)
                 : say(Say::card_mulling_guess),
           small, true, 1}};
}

std::string lasts_words(const bench::StockView& stock) {
  const double left = std::max(0.0, stock.left->g);
  if (stock.low_g && left < *stock.low_g) return say(Say::card_no_batch_more);
  if (stock.days && *stock.days >= 14)
    return say(Say::card_weeks, {words::number(std::round(*stock.days / 7), 0)});
  if (stock.low_g)
    return say(Say::card_batches_more, {words::number(std::floor(left / *stock.low_g), 0)});
  return say(Say::card_left_what);
}

std::vector<Label> stock_figure(const bench::StockView& stock) {
  const Lettering bold{cap::body, true, cap::small};
  if (!stock.left)
    return {{say(Say::card_not_counted), bold, false, 1},
            {say(Say::card_enter_jar), small, true, 2}};
  const std::string grams = say(Say::card_grams, {grams_number(std::max(0.0, stock.left->g))});
  return {{stock.left->g > 0 ? grams : say(Say::card_used_up), bold, false, 1},
          {lasts_words(stock), small, true, 2}};
}

std::vector<Label> price_figure(const bench::StockView& stock) {
  const Lettering bold{cap::body, true, cap::small};
  if (!stock.a_gram) return {{say(Say::card_no_price), small, true, 2}};
  if (*stock.a_gram <= 0) return {{say(Say::jar_gift), bold, false, 1}};
  return {{money_words(*stock.a_gram, stock.currency), bold, false, 1},
          {say(Say::card_price), small, true, 1}};
}

void figures(Sheet& sheet, const Rect& r, const ShelfView& shelf) {
  const Ground g = plain(sheet.theme);
  const bench::Grid three{3, 1, r};
  labels(sheet, three.cell(0, 0), g, mulling_figure(shelf.reading.mulling), Anchor::left);
  labels(sheet, three.cell(1, 0), g, stock_figure(shelf.stock), Anchor::left);
  labels(sheet, three.cell(2, 0), g, price_figure(shelf.stock), Anchor::left);
}

// The same in short, where the sources have no room.
std::string from_sources_words(const ShelfView& shelf) {
  const bool density = !shelf.density_from.empty(), oil = !shelf.oil_from.empty();
  if (density && oil) return say(Say::card_from_sources);
  if (density) return say(Say::card_from_density);
  return say(oil ? Say::card_from_oil : Say::card_from_none);
}

// Honey and glycerin alone, where that and the gum have no room.
std::string soft_in_short(bench::SoftWanted soft) {
  soft.gum.reset();
  soft.last.reset();
  return soft_words(soft);
}

// What is wrong; else what it wants to dry well, and what the figures rest on, as far as there is
// room.
std::vector<Label> foot(const ShelfView& shelf, const Rect& r) {
  const int lines = std::min(4, static_cast<int>((r.h - 1) / (cap::small * line_step)));
  if (lines < 1) return {};
  if (shelf.notice.error) return {{words::message(*shelf.notice.error), small_bold, false, lines}};
  const auto count = [&](const std::string& words) {
    const Lines set = fitted(words, r.w - 2 * padding_mm, small, lines);
    return set.cut ? lines + 1 : static_cast<int>(set.lines.size());
  };
  std::vector<Label> out;
  std::string soft = shelf.soft ? soft_words(*shelf.soft) : "";
  if (count(soft) > lines) soft = soft_in_short(*shelf.soft);
  const int taken = soft.empty() ? 0 : count(soft);
  if (taken > 0 && taken <= lines) out.push_back({soft, small, false, taken});
  const int left = lines - (out.empty() ? 0 : taken);
  if (!shelf.from_catalogue || left < 1) return out;
  const std::string whole = rests_on_words(shelf);
  out.push_back({count(whole) <= left ? whole : from_sources_words(shelf), small, true, left});
  return out;
}

// Where the paint went, small: the band, the way, and where it ended.
void little_trail(Sheet& sheet, const Rect& r, const session::TrailView& trail) {
  const Theme& t = sheet.theme;
  if (trail.points.empty()) return;
  std::vector<double> flows;
  for (const session::TrailPoint& point : trail.points) flows.push_back(point.flow);
  const FlowScale scale = paint::flow_scale(trail.band, flows, r.x + 1, r.right() - 1);
  if (trail.band)
    sheet.shapes.push_back(Gradient{r, band_stops(*trail.band, scale, 0, t.slab, t.right)});
  const double from = trail.points.front().clock;
  const double long_s = std::max(1.0, trail.points.back().clock - from);
  Polyline way{{}, 0.6, t.ink, 0};
  for (const session::TrailPoint& point : trail.points)
    way.points.push_back({std::clamp(scale.x(point.flow), r.x, r.right()),
                          r.y + 1 + (r.h - 2) * (point.clock - from) / long_s});
  const Point end = way.points.back();
  sheet.shapes.push_back(std::move(way));
  sheet.shapes.push_back(Disc{end, 1.2, t.ink, clear, 0});
}

void batch_pad(Sheet& sheet, const bench::Pad& at, const ReadingView::Batch& batch) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  Rect r = inset(at.box, 1);
  little_trail(sheet, inset(slice(r, r.h * 0.38), 0.6), batch.trail);
  labels(sheet, r, g,
         {{batch.name, small_bold, false, 2},
          {batch.became ? became_words(*batch.became) : progress_words(batch.progress), small, true,
           2}},
         Anchor::left);
}

}

namespace {

std::string softener_words(const bench::SoftWanted& soft) {
  const auto g = [](double x) { return words::number(x, 1); };
  const auto &honey = soft.honey, &glycerin = soft.glycerin;
  if (honey && glycerin)
    return say(Say::card_soft_both,
               {g(honey->low_g), g(honey->high_g), g(glycerin->low_g), g(glycerin->high_g)});
  if (honey) return say(Say::card_soft_honey, {g(honey->low_g), g(honey->high_g)});
  if (glycerin) return say(Say::card_soft_glycerin, {g(glycerin->low_g), g(glycerin->high_g)});
  return say(soft.damp ? Say::card_soft_damp : Say::card_soft_none);
}

}

std::string soft_words(const bench::SoftWanted& soft) {
  const auto g = [](double x) { return words::number(x, 1); };
  std::string out = softener_words(soft);
  if (soft.gum) out = say(Say::card_soft_gum, {out, g(soft.gum->low_g), g(soft.gum->high_g)});
  if (soft.verdicts > 0)
    out = say(Say::card_soft_own, {out, std::to_string(soft.verdicts)});
  else if (soft.of_class > 0)
    out = say(Say::card_soft_class, {out, std::to_string(soft.of_class)});
  else
    out = say(Say::card_soft_guess, {out});
  return soft.last ? say(Say::card_soft_last, {out, became_words(*soft.last)}) : out;
}

std::string rests_on_words(const ShelfView& shelf) {
  const auto from = [](const std::string& s) {
    return s.empty() ? say(Say::card_guess) : source_words(s);
  };
  const std::string oil = shelf.oil_beside.empty()
                              ? from(shelf.oil_from)
                              : say(Say::card_guess_beside, {source_words(shelf.oil_beside)});
  return say(Say::card_density_from, {from(shelf.density_from)}) + " " +
         say(Say::card_oil_from, {oil});
}

void stock_bar(Sheet& sheet, const Rect& r, const session::Remaining& left,
               const std::optional<double>& low_g, Colour fill, const Ground& g) {
  const double of = std::max(left.of, 1e-9), share = std::clamp(left.g / of, 0.0, 1.0);
  sheet.shapes.push_back(Box{r, r.h / 2, g.fill, g.ink, 0.2});
  if (share * r.w > r.h)
    sheet.shapes.push_back(Box{{r.x, r.y, r.w * share, r.h}, r.h / 2, fill, g.ink, 0.2});
  if (!low_g || *low_g > of) return;
  const double x = r.x + r.w * *low_g / of;
  sheet.shapes.push_back(Polyline{{{x, r.y - 0.8}, {x, r.bottom() + 0.8}}, 0.4, g.ink, 0});
}

void draw_reading(Sheet& sheet, const ShelfView& shelf) {
  Rect area = sheet.view.layout.lower;
  panel(sheet, area);
  head(sheet, slice(area, std::min(26.0, area.h * 0.27)), shelf);
  if (!shelf.asks.empty()) harm(sheet, area, shelf);
  if (shelf.range) {
    wants(sheet, slice(area, 7), shelf);
    range(sheet, slice(area, std::min(24.0, area.h * 0.4)), shelf);
  }
  const Rect three = slice(area, 12);
  figures(sheet, three, shelf);
  const auto below = foot(shelf, area);
  if (!below.empty()) rule(sheet, three);
  labels(sheet, area, plain(sheet.theme), below, Anchor::left);
  for (const bench::Pad& at : sheet.view.layout.pads)
    for (const ReadingView::Batch& batch : shelf.reading.batches)
      if (batch.pad == at.id) batch_pad(sheet, at, batch);
}

}
