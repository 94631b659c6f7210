// The number pad: what the number is for, what has been typed, and the keys.
#include "screens/measure.hpp"
#include "screens/parts.hpp"
#include "screens/phrases.hpp"
#include "words/screens_says.hpp"
#include "words/slab_says.hpp"

#include <algorithm>

namespace screens {

using bench::PadKind;
using Say = words::SlabSay;
using words::say;

namespace {

constexpr Lettering key_letters{cap::head, true, cap::head};

words::Sentence wanted_words(bench::Want want) {
  switch (want) {
  case bench::Want::pigment_g: return Say::ask_wanted_pigment;
  case bench::Want::pans: return Say::ask_wanted_pans;
  case bench::Want::wet_mL: return Say::ask_wanted_wet;
  case bench::Want::dried_g: return Say::ask_wanted_dried;
  }
  return {};
}

std::string asked(const bench::NumberView& number) {
  switch (number.target.kind) {
  case PadKind::add: return say(Say::ask_grams_of, {number.of});
  case PadKind::bottle_of: return say(Say::ask_bottle_of, {number.of});
  case PadKind::weigh: return say(wanted_words(number.want));
  case PadKind::weigh_paint: return say(Say::ask_weigh_paint);
  case PadKind::spilt: return say(Say::ask_spilt);
  case PadKind::other_amount: return say(Say::ask_other_amount);
  case PadKind::parts: return say(Say::ask_parts, {number.of});
  case PadKind::fact: return fact_words(number.target.arg);
  case PadKind::pour_g: return say(Say::ask_pour_g, {number.of});
  case PadKind::weigh_pan: return say(Say::ask_pan_g, {number.of});
  case PadKind::celsius: return say(Say::ask_celsius);
  case PadKind::humidity: return say(Say::ask_humidity);
  default: return number.of;
  }
}

// What has been typed, on the right, with the place of the next digit.
void typed(Sheet& sheet, const Rect& r, const std::string& text) {
  const Theme& t = sheet.theme;
  const double x = r.right() - 5, y = r.centre().y + cap::timer / 2;
  write(sheet, {x - 1.5, y}, Anchor::right, {cap::timer, true, cap::body}, t.ink, text, r.w - 8);
  sheet.shapes.push_back(Line{{{x, y - cap::timer - 0.8}, {x, y + 0.8}}, 0.6, t.right_ink, 0});
}

void key(Sheet& sheet, const bench::Pad& at) {
  const Ground g = plain(sheet.theme);
  switch (at.id.kind) {
  case PadKind::digit: pad(sheet, at, g, {{at.id.arg, key_letters}}); return;
  case PadKind::point: pad(sheet, at, g, {{".", key_letters}}); return;
  case PadKind::erase: pad(sheet, at, g, {{say(Say::pad_erase), slab_letters}}); return;
  case PadKind::leave:
    pad(sheet, at, g, {{say(words::ScreensSay::pad_leave_number), slab_letters}});
    return;
  case PadKind::enter:
    pad(sheet, at, dark(sheet.theme), {{say(Say::pad_enter), {cap::head, true, cap::body}}});
    return;
  default: return;
  }
}

}

void draw_number(Sheet& sheet, const bench::NumberView& number) {
  const Theme& t = sheet.theme;
  const Rect& head = sheet.view.layout.main;
  panel(sheet, head);
  const double share = 0.56;
  const Rect left{head.x + 2, head.y, head.w * share - 2, head.h};
  // What is wrong with it takes the place of the question, which has been read by then.
  const std::string words = number.error ? words::message(*number.error) : asked(number);
  labels(sheet, left, plain(t), {{words, {cap::body, !number.error, cap::body}, false, 4}},
         Anchor::left);
  typed(sheet, {head.x + head.w * share, head.y, head.w * (1 - share), head.h}, number.text);
  for (const bench::Pad& at : sheet.view.layout.pads) key(sheet, at);
}

}
