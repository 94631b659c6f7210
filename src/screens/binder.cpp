// Making binder: how much of everything, the steps, and the label.
#include "screens/binder.hpp"

#include "bench/pads_binder.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "session/binder_words.hpp"
#include "words/calendar.hpp"
#include "words/making_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::BinderPad;
using bench::BinderView;
using session::CardKind;
using session::MakingStep;
using Say = words::MakingSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};
constexpr Lettering small_bold{cap::small, true, cap::small};
constexpr Lettering big_bold{cap::head, true, cap::small};

void rule(Sheet& sheet, const Rect& below) {
  sheet.shapes.push_back(Polyline{
      {{below.x + 2, below.y}, {below.right() - 2, below.y}}, outline_mm, sheet.theme.rule, 0});
}

bool has_honey(const paint::Recipe& r) { return r.honey > 0; }

// ---- how much of everything

struct AmountRow {
  CardKind kind = CardKind::binder;
  std::string name, below, amount;
};

session::Unit unit_of_dose(const BinderView& v) {
  return v.dose_in_g ? session::Unit::g : session::Unit::drops;
}

std::string dose_words(const BinderView& v) {
  if (v.dose <= 0) return say(Say::none_yet);
  return amount_words(unit_of_dose(v), v.dose);
}

std::string to_gum(double g, const paint::Recipe& parts) {
  return parts.gum > 0 ? words::number(g / parts.gum, g < parts.gum ? 2 : 1) : "";
}

// Where the powder is weighed it is said how little is left, where it is spooned how little is
// known.
std::string gum_below(const BinderView& v) {
  if (v.gum_left_g) return say(Say::gum_left, {grams_number(*v.gum_left_g)});
  if (!v.spoon.empty() && !v.begun)
    return say(Say::gum_guess, {words::number(v.gum_g, 0), words::number(v.gum_u, 0)});
  return v.begun ? "" : say(Say::powder_mask);
}

std::vector<AmountRow> amounts(const BinderView& v) {
  const auto g = [](double x) { return say(Say::grams, {grams_number(x)}); };
  const paint::Recipe& p = v.parts;
  const double water_g = std::max(0.0, p.water - v.syrup_water_g); // the rest comes with the syrup
  std::vector<AmountRow> out{
      {CardKind::pigment, say(Say::gum), gum_below(v), g(p.gum)},
      {CardKind::water, say(Say::water), say(Say::water_warm, {to_gum(water_g, p)}), g(water_g)}};
  if (!v.syrup.empty())
    out.push_back(
        {CardKind::honey, v.syrup, say(Say::syrup_holds, {grams_number(p.honey)}), g(v.syrup_g)});
  const auto sweet = [&](CardKind kind, Say name, double grams) {
    if (grams > 0) out.push_back({kind, say(name), say(Say::to_gum, {to_gum(grams, p)}), g(grams)});
  };
  if (v.syrup.empty()) sweet(CardKind::honey, Say::honey, p.honey);
  sweet(CardKind::glycerin, Say::glycerin, p.glycerin);
  out.push_back(
      {CardKind::wetting_aid, say(Say::preservative), say(Say::preservative_how), dose_words(v)});
  return out;
}

// What is so of it below its name, where the row is high enough.
void amount_row(Sheet& sheet, const Rect& r, const AmountRow& row) {
  constexpr double least_mm = 11.8;
  const Theme& t = sheet.theme;
  constexpr double size = 6.4;
  const Colour fill = row.kind == CardKind::pigment ? t.binder : material_colour(t, row.kind);
  material_symbol(sheet, {r.x + 2.4 + size / 2, r.centre().y}, size, row.kind, fill, t.ink);
  const double x = r.x + size + 4, right = r.w * 0.32;
  labels(sheet, {x, r.y, r.right() - right - x, r.h}, plain(t),
         {{row.name, clean_bold, false, 1}, {r.h < least_mm ? "" : row.below, small, true, 2}},
         Anchor::left);
  labels(sheet, {r.right() - right, r.y, right - 0.6, r.h}, plain(t),
         {{row.amount, big_bold, false, 1}}, Anchor::right);
}

void caution_chip(Sheet& sheet, const Rect& r, const std::string& words) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Box{inset(r, 1.2), 1.4, t.caution, clear, 0});
  labels(sheet, inset(r, 1.2), caution(t), {{words, small_bold, false, 2}}, Anchor::left);
}

// How far it goes, and what it costs, each on a line.
void add_worth(std::vector<Label>& out, const BinderView& v) {
  if (v.batches && *v.batches >= 1)
    out.push_back({say(Say::batches, {words::number(std::floor(*v.batches), 0)}), small, true, 1});
  if (v.a_gram && *v.a_gram > 0)
    out.push_back({say(Say::costs, {money_words(*v.a_gram, v.currency)}), small, true, 1});
}

void draw_amounts(Sheet& sheet, const BinderView& v) {
  Rect area = sheet.view.layout.lower;
  panel(sheet, area);
  if (v.why_not)
    return labels(sheet, inset(area, 2), plain(sheet.theme),
                  {{words::message(*v.why_not), clean_bold, false, 5}});
  if (v.dust) caution_chip(sheet, slice(area, 11), say(Say::gum_dust));
  const auto rows = amounts(v);
  const double foot = 12, each = std::min(17.0, (area.h - foot) / static_cast<double>(rows.size()));
  bool first = true;
  for (const AmountRow& row : rows) {
    const Rect r = slice(area, each);
    if (!first) rule(sheet, r);
    first = false;
    amount_row(sheet, r, row);
  }
  rule(sheet, area);
  std::vector<Label> comes_to{
      {say(v.jar_weighed ? Say::holds : Say::makes, {words::number(v.makes_g, 0)}), clean_bold,
       false, 1}};
  add_worth(comes_to, v);
  labels(sheet, area, plain(sheet.theme), comes_to, Anchor::left);
}

// ---- the steps

// With its day, where that is not today's.
std::string until_words(std::int64_t at, std::int64_t now_ms, int utc_offset_min) {
  const bool today =
      words::day_number(at, utc_offset_min) == words::day_number(now_ms, utc_offset_min);
  return today ? words::time_of_day(at, utc_offset_min) : words::date_and_time(at, utc_offset_min);
}

std::string sweet_words(const BinderView& v) {
  const paint::Recipe& parts = v.parts;
  const std::string honey = grams_number(v.syrup.empty() ? parts.honey : v.syrup_g),
                    glycerin = grams_number(parts.glycerin);
  if (has_honey(parts) && parts.glycerin > 0) return say(Say::sweet_both_how, {honey, glycerin});
  return say(Say::sweet_how, {has_honey(parts) ? honey : glycerin});
}

std::string how_words(const BinderView& v, const BinderView::Step& step, int utc_offset_min) {
  switch (step.step) {
  case MakingStep::gum_in: return say(Say::gum_how);
  case MakingStep::steep:
    if (!step.runs) return say(Say::steep_how);
    return say(Say::steep_until, {until_words(step.ends_at, v.now_ms, utc_offset_min)});
  case MakingStep::strain: return say(Say::strain_how);
  case MakingStep::sweeten: return sweet_words(v);
  case MakingStep::preserve: return say(Say::preserve_how);
  case MakingStep::into_jar: return say(Say::jar_how);
  case MakingStep::thinned:
  case MakingStep::thickened:
  case MakingStep::dried:
  case MakingStep::given_up:
  case MakingStep::dose: break; // are no steps of it
  }
  return "";
}

std::string takes_words(MakingStep step) {
  const double min = session::usual_minutes(step);
  return min >= 24 * 60 ? say(Say::takes_day) : say(Say::takes_min, {words::number(min, 0)});
}

std::string left_number(double min) {
  if (min < 60) return words::number(min, 0);
  const auto whole = static_cast<int>(min);
  const std::string minutes = std::to_string(100 + whole % 60).substr(1);
  return std::to_string(whole / 60) + ":" + minutes;
}

// What is so of it, at the right: its time, how much of it is left, or when it began.
std::vector<Label> time_labels(const BinderView& v, const BinderView::Step& step, int offset) {
  if (step.began_at == 0) return {{takes_words(step.step), clean_letters, true, 1}};
  if (step.runs && step.left_min > 0)
    return {{left_number(step.left_min), {cap::timer, true, cap::body}, false, 1},
            {say(step.left_min < 60 ? Say::minutes_to_go : Say::hours_to_go), small, true, 1}};
  const std::string began = words::lately(step.began_at, v.now_ms, offset);
  if (step.runs)
    return {{say(v.stood ? Say::smell_it : Say::time_is_up), clean_bold, false, 2},
            {began, small, true, 1}};
  return {{began, clean_letters, true, 1}};
}

// Its number, or a tick where it was done.
void step_mark(Sheet& sheet, Point c, std::size_t number, bool done, const Ground& g) {
  constexpr double r = 3.9;
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Disc{c, r, done ? t.right : g.fill, done ? t.ink : g.ink, 0.5});
  if (done) return tick(sheet, c, 4, t.right_ink);
  write(sheet, {c.x, c.y + cap::clear / 2}, Anchor::centre, clean_bold, g.ink,
        std::to_string(number), 2 * r);
}

void step_pad(Sheet& sheet, const bench::Pad& at, const BinderView& v) {
  const Theme& t = sheet.theme;
  for (std::size_t i = 0; i < v.steps.size(); ++i) {
    const BinderView::Step& step = v.steps[i];
    if (!(step.pad == at.id)) continue;
    const Ground g = pad_box(sheet, at, step.main ? dark(t) : plain(t));
    const Rect& r = at.box;
    step_mark(sheet, {r.x + 6.6, r.centre().y}, i + 1, step.began_at > 0 && !step.runs, g);
    const double x = r.x + 11.6, right = std::min(30.0, r.w * 0.3);
    labels(sheet, {x, r.y, r.right() - right - x, r.h}, g,
           {{step_words(step.step, has_honey(v.parts)), {cap::body, true, cap::small}, false, 1},
            {how_words(v, step, sheet.view.utc_offset_min), small, true, r.h > 15 ? 2 : 1}},
           Anchor::left);
    labels(sheet, {r.right() - right, r.y, right - 1.4, r.h}, g,
           time_labels(v, step, sheet.view.utc_offset_min), Anchor::right);
  }
}

// ---- the label

std::string date_said(const std::string& date) {
  const auto day = words::days_of(date);
  return day ? words::date(*day * session::a_day_ms, 0) : date;
}

void draw_paper(Sheet& sheet, const Rect& r, const BinderView& v) {
  const Theme& t = sheet.theme;
  sheet.shapes.push_back(Box{r, 1.4, t.slab, t.ink, outline_mm});
  const double head = 9;
  sheet.shapes.push_back(Box{
      {r.x + outline_mm, r.y + outline_mm, r.w - 2 * outline_mm, head}, 1.2, t.binder, clear, 0});
  labels(sheet, {r.x, r.y, r.w, head + outline_mm}, on(t, t.binder),
         {{v.name + ", " + v.lot, clean_bold, false, 2}}, Anchor::left);
  const std::string made = say(Say::made_on, {words::date(v.now_ms, sheet.view.utc_offset_min)});
  labels(sheet, {r.x, r.y + head, r.w, r.h - head}, plain(t),
         {{session::parts_words(v.parts), small, false, 2},
          {session::dose_words(unit_of_dose(v), v.dose), small, false, 1},
          {made, small, false, 1},
          {say(Say::label_until, {date_said(v.keep_until)}), small_bold, false, 2}},
         Anchor::left);
}

void draw_label(Sheet& sheet, const BinderView& v) {
  Rect area = sheet.view.layout.side;
  panel(sheet, area);
  draw_paper(sheet, inset(slice(area, std::min(36.0, area.h)), 1.6), v);
  std::vector<Label> said;
  if (v.notice.error)
    said.push_back({words::message(*v.notice.error), small_bold, false, 3});
  else
    said = {{say(Say::throw_away), small, false, 3},
            {say(v.preserved ? Say::keeps_preserved : Say::keeps_cold), small, true, 3}};
  labels(sheet, area, plain(sheet.theme), said, Anchor::left);
}

// ---- pads

void two_lines(Sheet& sheet, const bench::Pad& at, const Ground& g, const std::string& what,
               const std::string& below) {
  pad(sheet, at, g, {{what, clean_bold, false, 1}, {below, small, true, 1}});
}

void sign_pad(Sheet& sheet, const bench::Pad& at, bool plus) {
  const Ground g = pad_box(sheet, at, plain(sheet.theme));
  const Point c = at.box.centre();
  constexpr double r = 2.6;
  sheet.shapes.push_back(Polyline{{{c.x - r, c.y}, {c.x + r, c.y}}, 0.8, g.ink, 0});
  if (plus) sheet.shapes.push_back(Polyline{{{c.x, c.y - r}, {c.x, c.y + r}}, 0.8, g.ink, 0});
}

void one_label(Sheet& sheet, const bench::Pad& at, const Ground& g, Say what) {
  pad(sheet, at, g, {{say(what), small, false, 2}});
}

void gum_pad(Sheet& sheet, const bench::Pad& at, const BinderView& v) {
  const std::string gum = v.spoon.empty()
                              ? say(Say::grams, {words::number(v.gum_g, v.gum_g < 10 ? 1 : 0)})
                              : paint::count_words(v.spoons);
  pad(sheet, at, plain(sheet.theme), {{gum, big_bold, false, 1}});
}

void making_pad(Sheet& sheet, const bench::Pad& at, const BinderView& v) {
  const Theme& t = sheet.theme;
  const Ground g = plain(t);
  const auto own = at.id.kind.as<BinderPad>();
  if (!own) return;
  switch (*own) {
  case BinderPad::recipe: return two_lines(sheet, at, g, v.recipe, say(Say::recipe_other));
  case BinderPad::less: return sign_pad(sheet, at, false);
  case BinderPad::more: return sign_pad(sheet, at, true);
  case BinderPad::gum: return gum_pad(sheet, at, v);
  case BinderPad::measured_in:
    return one_label(sheet, at, g, v.spoon.empty() ? Say::in_grams : Say::in_spoons);
  case BinderPad::step: return step_pad(sheet, at, v);
  case BinderPad::dose: return two_lines(sheet, at, g, dose_words(v), say(Say::dose_what));
  case BinderPad::dose_in:
    return one_label(sheet, at, g, v.dose_in_g ? Say::in_grams : Say::in_drops);
  case BinderPad::keep:
    return two_lines(sheet, at, g, say(v.preserved ? Say::keep_preserved : Say::keep_cold),
                     say(v.preserved ? Say::keep_preserved_what : Say::keep_cold_what));
  case BinderPad::jar_holds: return one_label(sheet, at, g, Say::jar_weigh);
  case BinderPad::take_back: return one_label(sheet, at, g, Say::take_back);
  case BinderPad::give_up: return one_label(sheet, at, g, Say::give_up);
  case BinderPad::other:
    return pad(sheet, at, g,
               {{say(Say::other_making, {std::to_string(v.others)}), small, false, 2}});
  case BinderPad::onto_shelf: return one_label(sheet, at, v.in_jar ? dark(t) : g, Say::onto_shelf);
  case BinderPad::empty_bottle:
  case BinderPad::bottle:
  case BinderPad::dried:
  case BinderPad::used:
  case BinderPad::weaker:
  case BinderPad::stronger:
  case BinderPad::put_in: return; // see draw_strength
  }
}

}

std::string step_words(MakingStep step, bool honey) {
  switch (step) {
  case MakingStep::gum_in: return say(Say::step_gum);
  case MakingStep::steep: return say(Say::step_steep);
  case MakingStep::strain: return say(Say::step_strain);
  case MakingStep::sweeten: return say(honey ? Say::step_honey : Say::step_glycerin);
  case MakingStep::preserve: return say(Say::step_preserve);
  case MakingStep::into_jar: return say(Say::step_jar);
  case MakingStep::thinned:
  case MakingStep::thickened:
  case MakingStep::dried:
  case MakingStep::given_up:
  case MakingStep::dose: break; // are no steps of it
  }
  return "";
}

std::string ratio_words(const paint::Recipe& recipe) {
  return say(Say::ratio, {words::number(recipe.gum > 0 ? recipe.water / recipe.gum : 0, 1)});
}

std::string percent_words(double strength) { return words::number(strength * 100, 0); }

void draw_binder(Sheet& sheet, const BinderView& v) {
  if (v.strength) return draw_strength(sheet, v);
  draw_amounts(sheet, v);
  if (v.number)
    draw_number(sheet, *v.number);
  else
    draw_label(sheet, v);
  for (const bench::Pad& at : sheet.view.layout.pads) making_pad(sheet, at, v);
}

}
