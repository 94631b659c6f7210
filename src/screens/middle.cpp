// What opens in the middle of the slab: amounts, bottles, specks, troubles, the number pad.
#include "screens/parts.hpp"
#include "screens/phrases.hpp"

#include <cmath>

namespace screens {

using bench::Middle;
using bench::PadKind;
using words::Say;
using words::say;

namespace {

constexpr Lettering big_bold{cap::head, true, cap::body};

Say question(Middle middle) {
  switch (middle) {
  case Middle::amounts: return Say::ask_amount;
  case Middle::bottles: return Say::ask_bottle;
  case Middle::specks: return Say::ask_specks;
  case Middle::troubles: return Say::ask_trouble;
  default: return Say::none;
  }
}

const bench::MaterialView* material_named(const bench::SlabView& slab, const std::string& card) {
  for (const auto& m : slab.materials)
    if (m.pad.arg == card) return &m;
  return nullptr;
}

void bottle_pad(Sheet& sheet, const bench::Pad& at, const bench::MaterialView& m) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, on(t, material_colour(t, m.kind)));
  const Rect& r = at.box;
  const double size = 6;
  material_symbol(sheet, {r.centre().x, r.y + 2.2 + size / 2}, size, m.kind,
                  sheet.view.pressed == at.id ? g.fill : t.slab, g.ink);
  labels(sheet, {r.x, r.y + size + 2.4, r.w, r.h - size - 3}, g, {{m.name, slab_bold, false, 2}});
}

// Specks as they look on the paper: a dot with many, few or none in it.
void specks_pad(Sheet& sheet, const bench::Pad& at, session::Specks specks) {
  const Theme& t = sheet.theme;
  const Ground g = pad_box(sheet, at, plain(t));
  const Rect& r = at.box;
  const double radius = std::min(r.w, r.h) * 0.24;
  const Point c{r.centre().x, r.y + r.h * 0.4};
  sheet.shapes.push_back(Disc{c, radius, clear, g.ink, 0.5});
  const int count = specks == session::Specks::many ? 17 : specks == session::Specks::few ? 3 : 0;
  for (int i = 0; i < count; ++i) { // on a sunflower's spiral: even, and the same every time
    const double out = radius * 0.82 * std::sqrt((i + 0.6) / (count + 0.2)), a = 2.39996 * i;
    sheet.shapes.push_back(
        Disc{{c.x + out * std::cos(a), c.y + out * std::sin(a)}, 0.6, g.ink, clear, 0});
  }
  labels(sheet, {r.x, r.y + r.h * 0.68, r.w, r.h * 0.28}, g, {{specks_words(specks), slab_bold}});
}

void choice_pad(Sheet& sheet, const bench::Pad& at, const bench::SlabView& slab) {
  const Theme& t = sheet.theme;
  switch (at.id.kind) {
  case PadKind::amount: {
    const std::string words = amount_pad_words(at.id.arg);
    const bool chosen = words == next_words(slab.amount);
    return pad(sheet, at, chosen ? dark(t) : plain(t), {{words, big_bold}});
  }
  case PadKind::bottle_of:
    if (const auto* m = material_named(slab, at.id.arg)) bottle_pad(sheet, at, *m);
    return;
  case PadKind::lost_count:
    if (const auto* m = material_named(slab, at.id.arg))
      pad(sheet, at, plain(t),
          {{say(Say::pad_lost_count), slab_letters}, {m->name, slab_letters, true, 2}});
    return;
  case PadKind::specks:
    if (const auto specks = session::specks_named(at.id.arg)) specks_pad(sheet, at, *specks);
    return;
  case PadKind::trouble_is:
    if (const auto trouble = session::trouble_named(at.id.arg))
      pad(sheet, at, plain(t),
          {{trouble_words(*trouble), big_bold}, {trouble_sign(*trouble), slab_letters, true, 3}});
    return;
  case PadKind::leave: return pad(sheet, at, plain(t), {{say(Say::pad_leave), slab_bold}});
  default: return;
  }
}

}

void draw_middle(Sheet& sheet, const bench::SlabView& slab) {
  if (slab.middle == Middle::number) {
    if (slab.number) draw_number(sheet, *slab.number);
    return;
  }
  const Rect& head = sheet.view.layout.main;
  panel(sheet, head);
  std::vector<Label> lines{{say(question(slab.middle)), big_bold, false, 2}};
  if (const std::string notice = notice_words(slab.notice); !notice.empty())
    lines.push_back({notice, slab_letters, true, 2});
  labels(sheet, head, plain(sheet.theme), lines);
  for (const bench::Pad& at : sheet.view.layout.pads) choice_pad(sheet, at, slab);
}

}
