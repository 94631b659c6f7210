// A jar of binder: how strong it is, what has left it, what makes it thinner or stronger.
#include "bench/making.hpp"
#include "bench/pads_binder.hpp"
#include "screens/binder.hpp"
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/making_says.hpp"

#include <algorithm>
#include <cmath>

namespace screens {

using bench::BinderPad;
using bench::BinderView;
using bench::StrengthView;
using Say = words::MakingSay;
using words::say;

namespace {

constexpr Lettering small{cap::small, false, cap::small};
constexpr Lettering small_bold{cap::small, true, cap::small};
constexpr Lettering large{cap::timer, true, cap::head};
constexpr double alike_g = 1; // no scale or hand is better

// What the weighing says, beside what was counted.
void add_weighing(std::vector<Label>& out, const StrengthView& s) {
  if (!s.weighed_g) return;
  out.push_back({say(Say::weighed, {grams_number(*s.weighed_g)}), clean_bold, false, 2});
  if (!s.counted_g) return;
  const double off = *s.weighed_g - *s.counted_g;
  if (std::abs(off) <= alike_g)
    out.push_back({say(Say::weighed_alike), clean_letters, false, 1});
  else
    out.push_back(
        {say(off < 0 ? Say::weighed_less : Say::weighed_more, {grams_number(std::abs(off))}),
         clean_letters, false, 3});
}

void draw_jar(Sheet& sheet, const BinderView& v) {
  const StrengthView& s = *v.strength;
  const Rect& area = sheet.view.layout.lower;
  panel(sheet, area);
  std::vector<Label> said{
      {v.name, {cap::head, true, cap::clear}, false, 2},
      {v.lot, small, true, 1},
      {ratio_words(s.recipe), clean_letters, false, 2},
      {say(Say::strength, {percent_words(s.strength)}), clean_letters, false, 2}};
  said.push_back(
      {s.counted_g ? say(Say::counted, {grams_number(*s.counted_g)}) : say(Say::not_counted),
       clean_letters, true, 2});
  add_weighing(said, s);
  if (v.notice.error) said.push_back({words::message(*v.notice.error), small_bold, false, 3});
  labels(sheet, inset(area, 1.5), plain(sheet.theme), said, Anchor::left);
}

void draw_wanted(Sheet& sheet, const StrengthView& s) {
  Rect area = sheet.view.layout.more;
  panel(sheet, area);
  const bench::Grid two{1, 2, inset(area, 2)};
  const auto figure = [&](int row, double strength, Say what) {
    constexpr double both_mm = 20; // of the figure, whose g reaches below its line, and its words
    const Rect cell = two.cell(0, row);
    const double high = std::min(both_mm, cell.h);
    Rect below{cell.x, cell.centre().y - high / 2, cell.w, high};
    const Rect above = slice(below, high * 0.55);
    labels(sheet, above, plain(sheet.theme),
           {{say(Say::percent, {percent_words(strength)}), large, false, 1}});
    labels(sheet, below, plain(sheet.theme), {{say(what), clean_letters, true, 2}});
  };
  figure(0, s.strength, Say::now_what);
  figure(1, s.wanted, Say::wanted_what);
}

std::string put_words(const paint::PutIn& in) {
  if (in.gum_g > 0) return say(Say::put_gum, {grams_number(in.gum_g)});
  return say(Say::put_water, {grams_number(in.water_g)});
}

void draw_mixing(Sheet& sheet, const StrengthView& s) {
  const Rect& area = sheet.view.layout.side;
  panel(sheet, area);
  std::vector<Label> said;
  if (s.why_not) {
    said = {{words::message(*s.why_not), clean_bold, false, 4}};
  } else if (bench::is_nothing(s.put_in)) {
    said = {{say(Say::put_nothing), clean_letters, true, 3}};
  } else {
    const double water = s.becomes.gum > 0 ? s.becomes.water / s.becomes.gum : 0;
    said = {{put_words(s.put_in), {cap::head, true, cap::clear}, false, 2},
            {say(Say::becomes, {words::number(water, 1), grams_number(paint::sum_of(s.becomes))}),
             clean_letters, false, 3},
            {say(s.put_in.gum_g > 0 ? Say::strong_gum_how : Say::water_how), small, true, 4}};
  }
  labels(sheet, inset(area, 1.5), plain(sheet.theme), said, Anchor::left);
}

void strength_pad(Sheet& sheet, const bench::Pad& at, const StrengthView& s) {
  const Theme& t = sheet.theme;
  const Ground g = plain(t);
  const auto two = [&](const Ground& ground, const std::string& what, const std::string& below) {
    pad(sheet, at, ground, {{what, clean_bold, false, 1}, {below, small, true, 1}});
  };
  const auto own = at.id.kind.as<BinderPad>();
  if (own == BinderPad::empty_bottle)
    two(g, s.tare_g > 0 ? say(Say::grams, {grams_number(s.tare_g)}) : say(Say::none_yet),
        say(Say::empty_what));
  if (own == BinderPad::bottle) two(g, say(Say::bottle_weigh), say(Say::bottle_what));
  if (own == BinderPad::dried)
    two(g, say(Say::dried),
        s.dried_strength > 0 ? say(Say::dried_now, {percent_words(s.dried_strength)}) : "");
  if (own == BinderPad::used)
    two(g, say(Say::used), say(Say::used_now, {grams_number(s.weighed_g.value_or(0))}));
  if (own == BinderPad::weaker) pad(sheet, at, g, {{say(Say::weaker), clean_bold}});
  if (own == BinderPad::stronger) pad(sheet, at, g, {{say(Say::stronger), clean_bold}});
  if (own == BinderPad::take_back) pad(sheet, at, g, {{say(Say::take_back), clean_letters}});
  if (own == BinderPad::put_in)
    pad(sheet, at, s.why_not || bench::is_nothing(s.put_in) ? g : dark(t),
        {{say(Say::is_in), clean_bold}});
}

}

void draw_strength(Sheet& sheet, const BinderView& v) {
  const StrengthView& s = *v.strength;
  if (s.gone) {
    panel(sheet, sheet.view.layout.more);
    return labels(sheet, sheet.view.layout.more, plain(sheet.theme),
                  {{say(Say::gone), clean_letters, false, 2}});
  }
  draw_jar(sheet, v);
  draw_wanted(sheet, s);
  if (v.number)
    draw_number(sheet, *v.number);
  else
    draw_mixing(sheet, s);
  for (const bench::Pad& at : sheet.view.layout.pads) strength_pad(sheet, at, s);
}

}
