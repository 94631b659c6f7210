// The screens: what each is called on a command line, the pad that leads there, and what its tab
// says.
#pragma once

#include "bench/bench.hpp"
#include "bench/pads_top_bar.hpp"
#include "words/lists.hpp"
#include "words/tablet_says.hpp"

namespace bench {

struct ScreenRow {
  std::string_view name;
  PadKind pad;
  words::Sentence tab; // none: its pad is no tab
};
inline constexpr words::EnumTable<Screen, ScreenRow> screens{
    {{Screen::shelf, {"shelf", TopBarPad::shelf, words::TabletSay::tab_shelf}},
     {Screen::plan, {"plan", TopBarPad::plan, words::TabletSay::tab_plan}},
     {Screen::slab, {"slab", TopBarPad::slab, words::TabletSay::tab_slab}},
     {Screen::pans, {"pans", TopBarPad::pans, words::TabletSay::tab_pans}},
     {Screen::book, {"book", TopBarPad::book, words::TabletSay::tab_book}},
     {Screen::tablet, {"tablet", TopBarPad::tablet, {}}}}};

}
