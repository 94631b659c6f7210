// The screens: what each is called on a command line, the pad that leads there, and what its tab
// says.
#pragma once

#include "bench/bench.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_top_bar.hpp"
#include "words/bench_says.hpp"
#include "words/lists.hpp"

namespace bench {

struct ScreenRow {
  std::string_view name;
  PadKind pad;
  words::Sentence tab; // none: its pad is no tab
};
inline constexpr words::EnumTable<Screen, ScreenRow> screens{
    {{Screen::today, {"today", TopBarPad::today, words::BenchSay::tab_today}},
     {Screen::shelf, {"shelf", TopBarPad::shelf, words::BenchSay::tab_shelf}},
     {Screen::plan, {"plan", TopBarPad::plan, words::BenchSay::tab_plan}},
     {Screen::slab, {"slab", TopBarPad::slab, words::BenchSay::tab_slab}},
     {Screen::pans, {"pans", TopBarPad::pans, words::BenchSay::tab_pans}},
     {Screen::book, {"book", TopBarPad::book, words::BenchSay::tab_book}},
     {Screen::tablet, {"tablet", TopBarPad::tablet, {}}},
     {Screen::binder, {"binder", ShelfPad::make_binder, {}}},
     {Screen::photos, {"photos", BookPad::photos, {}}}}};

}
