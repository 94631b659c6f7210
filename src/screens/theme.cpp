#include "screens/theme.hpp"

namespace screens {

namespace {

const Theme day{
    .bench = rgb(0xEDEBE4),
    .slab = rgb(0xFBFAF6),
    .ink = rgb(0x18262E),
    .quiet = rgb(0x384751),
    .rule = rgb(0x83817A),
    .right = rgb(0xBDEFD7),
    .right_ink = rgb(0x014933),
    .sticky = rgb(0xF2CDBC),
    .runny = rgb(0xCCDCF6),
    .glow = rgb(0x2F8A63),
    .caution = rgb(0xFBC959),
    .caution_ink = rgb(0x18262E),
    .binder = rgb(0xE8D393),
    .water = rgb(0xAFD8F0),
    .honey = rgb(0xEFB062),
    .glycerin = rgb(0xD8CBE3),
    .wetting_aid = rgb(0xEDC9D8),
};

const Theme dark_bench{
    .bench = rgb(0x0F171C),
    .slab = rgb(0x192329),
    .ink = rgb(0xF0EEE7),
    .quiet = rgb(0xCDCBC0),
    .rule = rgb(0x87939C),
    .right = rgb(0x174C38),
    .right_ink = rgb(0xB2F6D7),
    .sticky = rgb(0x573524),
    .runny = rgb(0x2E3D57),
    .glow = rgb(0x2F8A63),
    .caution = rgb(0xE7B643),
    .caution_ink = rgb(0x0F171C),
    .binder = rgb(0x594910),
    .water = rgb(0x164B65),
    .honey = rgb(0x6B3A00),
    .glycerin = rgb(0x4F415A),
    .wetting_aid = rgb(0x5A3747),
};

}

const Theme& theme(bool night) { return night ? dark_bench : day; }

Ground plain(const Theme& t) { return {t.slab, t.ink, t.quiet}; }
Ground dark(const Theme& t) { return {t.ink, t.slab, t.slab}; }
Ground choosable(const Theme& t, bool chosen) {
  return {t.slab, t.ink, t.quiet, chosen ? 0.95 : outline_mm};
}
Ground on(const Theme& t, Colour fill) { return {fill, t.ink, t.ink}; }
Ground caution(const Theme& t) { return {t.caution, t.caution_ink, t.caution_ink}; }

Ground pressed(const Ground& g) { return {g.ink, g.fill, g.fill}; }

Colour material_colour(const Theme& t, session::CardKind kind) {
  using session::CardKind;
  switch (kind) {
  case CardKind::binder: return t.binder;
  case CardKind::water: return t.water;
  case CardKind::honey: return t.honey;
  case CardKind::glycerin: return t.glycerin;
  case CardKind::wetting_aid: return t.wetting_aid;
  case CardKind::pigment:
  case CardKind::other:
  case CardKind::paint:
  case CardKind::dropper:
  case CardKind::spoon:
  case CardKind::pan:
  case CardKind::slab:
  case CardKind::muller:
  case CardKind::recipe: return t.slab;
  }
  return t.slab;
}

Colour feel_colour(const Theme& t, session::Feel feel) {
  using session::Feel;
  switch (feel) {
  case Feel::wont_move:
  case Feel::too_sticky: return t.sticky;
  case Feel::right: return t.right;
  case Feel::too_loose:
  case Feel::too_runny: return t.runny;
  }
  return t.slab;
}

session::SignColours sign_colours(const Theme& t) {
  return {t.slab, t.ink, t.right, t.sticky, t.runny, t.caution, t.caution_ink};
}

}
