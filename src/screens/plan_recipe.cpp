#include "screens/plan_recipe.hpp"

#include "bench/pads_plan.hpp"
#include "bench/planning.hpp"
#include "paint/digits.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/paint_says.hpp"
#include "words/plan_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>

namespace screens {

using Say = words::PlanSay;
using words::say;
using Step = bench::PlanView::Step;

namespace {

constexpr Lettering small{cap::small, false, cap::small}, small_bold{cap::small, true, cap::small};

// A teaspoon and a tablespoon by what they hold, as any kitchen's; any other by its name.
std::string scoop_words(const bench::ScoopView& scoop) {
  if (scoop.drops) return amount_words(session::Unit::drops, scoop.count);
  const std::string count = paint::count_words(scoop.count);
  if (scoop.mL > 4.5 && scoop.mL < 5.5) return say(words::SessionSay::amount_spoons, {count});
  if (scoop.mL > 14 && scoop.mL < 16) return say(Say::plan_tablespoons, {count});
  return say(Say::plan_named_spoons, {count, scoop.name});
}

// No more than the spoon bears, nor than a scale shows.
int decimals_within(double g, double u) {
  const int most = paint::decimals_of_grams(g);
  return u > 0 ? std::min(most, paint::decimals_by(u, 1).value_or(most)) : most;
}

std::string amount_of(const Step& line) {
  const bool rest = line.why == Step::rest;
  if (line.scoops.empty())
    return rest ? say(line.by_drop ? Say::plan_by_the_drop : Say::plan_bit_by_bit) : "";
  const std::string scoops = scoops_words(line.scoops);
  // Of the rest only what is surely less stands in spoons.
  return rest && !line.scoops.back().drops ? say(Say::plan_and_drops, {scoops}) : scoops;
}

std::string grams_of(const Step& line) {
  if (line.low_g > 0)
    return say(words::PaintSay::amount_grams, {from_to_words(line.low_g, line.g)});
  return line.why == Step::measure ? grams_about(line.g, line.u, line.guess)
                                   : grams_within(line.g, line.u);
}

std::string why_words(const Step& line, const bench::PlanView& plan) {
  switch (line.why) {
  case Step::measure: return say(line.scoops.empty() ? Say::plan_weigh_out : Say::plan_spoon_out);
  case Step::first_helping: return say(Say::plan_first_helping);
  case Step::rest: return say(Say::plan_then);
  case Step::extra:
    return say(plan.planned && plan.planned->by_recipe ? Say::plan_by_recipe : Say::plan_as_last);
  case Step::lacked: return say(Say::plan_more_this_time);
  }
  return "";
}

// What stands once over the lines that follow it.
bool begins(const std::vector<Step>& lines, std::size_t i) {
  return i == 0 || lines[i - 1].why != lines[i].why ||
         lines[i - 1].scoops.empty() != lines[i].scoops.empty();
}

// Between the lines of one row lie its words in at most so many of their own, in its middle.
void write_lines(Sheet& sheet, const Rect& row, Anchor to, const Lettering& l, Colour colour,
                 const std::string& words, int most) {
  const Lines set = fitted(words, row.w, l, most);
  const double step = set.cap_mm * 1.45, x = to == Anchor::right ? row.right() : row.x;
  double y = row.centre().y + (set.cap_mm - step * (static_cast<double>(set.lines.size()) - 1)) / 2;
  for (const std::string& line : set.lines) {
    write(sheet, {x, y}, to, l, colour, line, row.w);
    y += step;
  }
}

constexpr double why_mm = 22, two_lines_mm = 6.4; // of a row that has room for two

// How much, beside its name: the amount to be measured out and what it weighs, below each other
// where the name wants the room.
void draw_amounts(Sheet& sheet, Rect row, const Step& line, int most) {
  const Theme& t = sheet.theme;
  const std::string grams = grams_of(line), amount = amount_of(line);
  const bool alone = amount.empty();
  const double grams_mm = width_mm(grams, cap::small, alone) + 0.3,
               amount_mm = alone ? 0 : width_mm(amount, cap::small, true) + 0.3;
  const std::string name = line.why == Step::rest ? say(Say::plan_by_feel) : line.name;
  double name_mm = row.w - grams_mm - 2 - (alone ? 0 : amount_mm + 2);
  const bool below = !alone && most > 1 && fitted(name, name_mm, small, most).cut;
  if (below) name_mm = row.w - std::max(grams_mm, amount_mm) - 2;
  write_lines(sheet, {row.x, row.y, name_mm, row.h}, Anchor::left, small, t.ink, name, most);
  Rect grams_at{row.right() - grams_mm, row.y, grams_mm, row.h}, amount_at = row;
  amount_at.w = below ? row.w : row.w - grams_mm - 2;
  amount_at.x += amount_at.w - amount_mm;
  amount_at.w = amount_mm;
  if (below) grams_at.y += row.h * 0.24, amount_at.y -= row.h * 0.24;
  write_lines(sheet, grams_at, Anchor::right, alone ? small_bold : small, alone ? t.ink : t.quiet,
              grams, 1);
  if (!alone) write_lines(sheet, amount_at, Anchor::right, small_bold, t.ink, amount, 1);
}

void draw_line(Sheet& sheet, const Rect& row, const Step& line, const bench::PlanView& plan,
               bool first) {
  const Theme& t = sheet.theme;
  const double size = std::min(4.6, row.h);
  const int most = row.h >= two_lines_mm ? 2 : 1;
  if (first) {
    sheet.shapes.push_back(Box{{row.x, row.y, row.w, 0.2}, 0, t.rule, t.rule, 0});
    write_lines(sheet, {row.x, row.y, why_mm, row.h}, Anchor::left, small, t.quiet,
                why_words(line, plan), most);
  }
  const bool pigment = line.kind == session::CardKind::pigment;
  material_symbol(sheet, {row.x + why_mm + 1 + size / 2, row.centre().y}, size, line.kind,
                  pigment ? rgb(line.colour) : material_colour(t, line.kind), t.ink);
  const double x = why_mm + size + 2.6;
  draw_amounts(sheet, {row.x + x, row.y, row.w - x, row.h}, line, most);
}

struct Figure {
  std::string what, about;
};

std::vector<Figure> figures_of(const bench::PlanView& plan) {
  std::vector<Figure> out;
  const bench::Planned& p = *plan.planned;
  if (plan.mulling) {
    out.push_back({say(Say::plan_minutes, {mulling_words(*plan.mulling)}),
                   p.portions > 1 ? say(Say::plan_in_portions, {std::to_string(p.portions)})
                                  : say(Say::plan_of_mulling)});
  }
  if (p.pans > 0)
    out.push_back({p.layers == 1 ? say(Say::plan_one_layer)
                                 : say(Say::plan_layers, {std::to_string(p.layers)}),
                   say(Say::plan_pans_of, {std::to_string(p.pans), plan.pan})});
  const bool more =
      p.last_time && p.last_time->in_plan && p.last_time->as == session::Became::rubs_off;
  out.push_back(
      {say(Say::plan_ratio, {words::number(10 * p.binder_g / p.pigment_g, 1)}),
       say(p.as_made && !p.by_recipe && !more ? Say::plan_ratio_last : Say::plan_ratio_what)});
  out.push_back({say(Say::plan_mL, {words::number(p.wet_mL, 1)}), say(Say::plan_wet_paint)});
  return out;
}

constexpr double figures_mm = 12, apart_mm = 3;

void draw_figures(Sheet& sheet, const Rect& area, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  const auto figures = figures_of(plan);
  sheet.shapes.push_back(Box{{area.x, area.y, area.w, 0.2}, 0, t.rule, t.rule, 0});
  const double w = area.w / static_cast<double>(figures.size());
  double x = area.x;
  for (const Figure& figure : figures) {
    write(sheet, {x, area.y + 1.8 + cap::clear}, Anchor::left, clean_bold, t.ink, figure.what,
          w - 1);
    const Lines about = fitted(figure.about, w - apart_mm, small, 2, false);
    double y = area.y + 1.8 + cap::clear + 1.4 + cap::small;
    for (const std::string& line : about.lines) {
      write(sheet, {x, y}, Anchor::left, small, t.quiet, line, w - 1);
      y += cap::small * 1.5;
    }
    x += w;
  }
}

// What there is not enough of, and what may have gone off.
std::vector<std::string> cautions_of(const bench::PlanView& plan) {
  std::vector<std::string> out;
  for (const auto& s : plan.short_of)
    out.push_back(say(Say::plan_short, {s.name, grams_number(s.left_g), grams_number(s.wanted_g)}));
  for (const std::string& name : plan.past_day) out.push_back(say(Say::plan_past_day, {name}));
  return out;
}

// They strike the eye, and so does what stands in the way.
double draw_warnings(Sheet& sheet, const Rect& area, double y, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  for (const auto& why : {plan.error, plan.why_not})
    if (why) y = note(sheet, area, y, words::message(*why), clean_bold, t.ink) + 1;
  for (const std::string& said : cautions_of(plan)) {
    const double h = lines_high(said, area.w - 2, clean_bold) + 0.6;
    sheet.shapes.push_back(Box{{area.x - 1, y - 0.4, area.w + 2, h}, 1, t.caution, t.caution, 0});
    y = note(sheet, {area.x + 0.5, area.y, area.w - 1, area.h}, y, said, clean_bold,
             t.caution_ink) +
        1;
  }
  return y;
}

double warnings_high(const Rect& area, const bench::PlanView& plan) {
  double h = 0;
  for (const auto& why : {plan.error, plan.why_not})
    if (why) h += lines_high(words::message(*why), area.w, clean_bold) + 1;
  for (const std::string& said : cautions_of(plan))
    h += lines_high(said, area.w - 2, clean_bold) + 1.6;
  return h;
}

Say became_then(const bench::LastTime& last) {
  using session::Became;
  const bool before = last.earlier;
  if (last.as == Became::cracked) return before ? Say::plan_once_cracked : Say::plan_last_cracked;
  if (last.as == Became::sticky) return before ? Say::plan_once_sticky : Say::plan_last_sticky;
  if (last.as == Became::rubs_off)
    return before ? Say::plan_once_rubs_off : Say::plan_last_rubs_off;
  return before ? Say::plan_once_wont_rewet : Say::plan_last_wont_rewet;
}

std::string last_time_words(const bench::LastTime& last) {
  const std::string then = say(became_then(last));
  if (last.enough) return say(Say::plan_last_enough, {then});
  if (last.in_plan && last.sweet_share < 1) return say(Say::plan_last_less_in_plan, {then});
  if (last.in_plan && last.drops > 0)
    return say(Say::plan_last_in_plan_drops, {then, std::to_string(last.drops), last.card});
  if (last.in_plan) return say(Say::plan_last_in_plan, {then, grams_number(last.g), last.card});
  if (last.drops > 0)
    return say(Say::plan_last_more_drops, {then, std::to_string(last.drops), last.card});
  if (!last.card.empty()) return say(Say::plan_last_more, {then, grams_number(last.g), last.card});
  if (last.most_honey_g > 0)
    return say(Say::plan_last_less_to, {then, words::number(last.most_honey_g, 1)});
  return say(last.as == session::Became::sticky ? Say::plan_last_less : Say::plan_last_sweeter,
             {then});
}

std::string cost_words(const session::Cost& cost, const std::string& currency, int pans) {
  std::string sum = money_words(cost.sum(), currency);
  if (pans > 0 && cost.sum() > 0)
    sum = say(Say::plan_costs_pans, {sum, money_words(cost.sum() / pans, currency)});
  std::string unknown;
  for (const session::Card& card : cost.unknown)
    unknown += (unknown.empty() ? "" : ", ") + card.name;
  return unknown.empty() ? say(Say::plan_costs, {sum}) : say(Say::plan_costs_part, {sum, unknown});
}

std::string mull_words(const bench::MullingNeeded& needed, int portions) {
  const double passes = std::max(1.0, needed.passes.middle);
  const Say one = portions > 1 ? Say::plan_mull_each_one : Say::plan_mull_one,
            several = portions > 1 ? Say::plan_mull_each : Say::plan_mull;
  return say(passes == 1 ? one : several,
             {minutes_words(needed.minutes.middle), minutes_words(needed.minutes.low),
              minutes_words(needed.minutes.high), words::number(passes, 0)});
}

// Where there is room for it.
std::vector<std::string> also(const bench::PlanView& plan) {
  std::vector<std::string> out;
  if (!plan.again_of.empty()) out.push_back(say(Say::plan_again_of, {plan.again_of}));
  if (!plan.recipe.empty()) out.push_back(say(Say::plan_recipe, {plan.recipe}));
  if (!plan.planned) return out;
  if (plan.last_time) out.push_back(last_time_words(*plan.last_time));
  if (plan.is_short_of_gum) out.push_back(say(Say::plan_gum_short));
  if (plan.softening) out.push_back(softening_words(*plan.softening));
  if (plan.range) out.push_back(binder_range_words(*plan.range));
  if (plan.specks_last != bench::SpecksStay::no)
    out.push_back(say(plan.specks_last == bench::SpecksStay::coarse ? Say::plan_last_grains
                                                                    : Say::plan_last_specks));
  if (plan.mulling && plan.mulling->batches > 0)
    out.push_back(mull_words(*plan.mulling, plan.planned->portions));
  if (plan.cost) out.push_back(cost_words(*plan.cost, plan.currency, plan.planned->pans));
  return out;
}

std::string how_much_words(const bench::PlanView& plan) {
  if (plan.blend.empty()) return say(Say::plan_care_in_short);
  return say(Say::plan_how_much, {unsaid_words(plan.want)});
}

// What shall stand below them makes the rows narrower, as far as two lines of words allow.
double draw_lines(Sheet& sheet, const Rect& area, double room, const bench::PlanView& plan) {
  constexpr double row_mm = 7.6;
  double below = 0;
  for (const std::string& sentence : also(plan)) below += lines_high(sentence, area.w, small) + 0.7;
  const auto rows = static_cast<double>(plan.lines.size());
  const double wanted = std::clamp((room - below) / rows, two_lines_mm, row_mm);
  const double step = std::min(wanted, room / rows);
  double y = area.y;
  for (std::size_t i = 0; i < plan.lines.size(); ++i) {
    draw_line(sheet, {area.x, y, area.w, step}, plan.lines[i], plan, begins(plan.lines, i));
    y += step;
  }
  return y;
}

}

std::string grams_within(double g, double u) {
  return say(words::PaintSay::amount_grams, {paint::written(g, decimals_within(g, u))});
}

std::string grams_about(double g, double u, bool guess) {
  const std::string grams = grams_within(g, u), width = paint::written(u, decimals_within(u, u));
  if (guess) return say(Say::plan_grams_guess, {grams, width});
  return u > 0.02 * g ? say(Say::plan_grams_about, {grams, width}) : grams;
}

std::string scoops_words(const std::vector<bench::ScoopView>& scoops) {
  std::string out;
  for (const bench::ScoopView& scoop : scoops)
    out += (out.empty() ? "" : " + ") + scoop_words(scoop);
  return out;
}

std::string want_words(bench::Want want) {
  constexpr std::array ids{Say::want_pigment, Say::want_pans,         Say::want_wet,
                           Say::want_dried,   Say::want_as_it_stands, Say::want_all_left};
  return say(ids[static_cast<std::size_t>(want)]);
}

std::string unsaid_words(bench::Want want) {
  return say(want == bench::Want::pigment_g ? Say::plan_not_weighed : Say::plan_how_many);
}

double note(Sheet& sheet, const Rect& area, double y, const std::string& words, const Lettering& l,
            Colour colour) {
  const double step = l.cap_mm * 1.66;
  for (const std::string& line : fitted(words, area.w, l, 3, false).lines) {
    write(sheet, {area.x, y + l.cap_mm}, Anchor::left, l, colour, line, area.w);
    y += step;
  }
  return y;
}

double lines_high(const std::string& words, double width, const Lettering& l) {
  return static_cast<double>(fitted(words, width, l, 3, false).lines.size()) * l.cap_mm * 1.66;
}

void draw_recipe(Sheet& sheet, const bench::PlanView& plan) {
  const Theme& t = sheet.theme;
  panel(sheet, sheet.view.layout.result);
  const Rect area = inset(sheet.view.layout.lower, 1.5);
  double y = area.y;
  const double warned = warnings_high(area, plan);
  if (plan.planned && !plan.lines.empty()) {
    y = draw_lines(sheet, area, area.h - figures_mm - warned - 1, plan);
    draw_figures(sheet, {area.x, y, area.w, figures_mm}, plan);
    y += figures_mm + 1.5;
  }
  y = draw_warnings(sheet, area, y, plan);
  for (const std::string& sentence : also(plan)) {
    if (y + lines_high(sentence, area.w, small) > area.bottom() + 1) break;
    y = note(sheet, area, y, sentence, small, t.ink) + 0.7;
  }
  if (!plan.planned && !plan.why_not)
    y = note(sheet, area, y, how_much_words(plan), small, t.quiet);
  const Rect& why = sheet.view.layout.note;
  if (plan.missing && why.w > 0)
    labels(sheet, why, plain(t), {{say(*plan.missing), clean_bold, false, 2}});
}

}
