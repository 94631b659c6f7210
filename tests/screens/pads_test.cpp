// Every pad that a screen lists has a place on it.
#include "bench/pads_book.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_strip.hpp"
#include "bench/pads_tablet.hpp"
#include "screens/views.hpp"
#include "words/lists.hpp"

#include <doctest/doctest.h>

#include <set>

namespace {

template <class... Pad>
std::vector<bench::PadKind> all_pads() {
  std::vector<bench::PadKind> out;
  (out.insert(out.end(), words::all_of<Pad>.begin(), words::all_of<Pad>.end()), ...);
  return out;
}

}

TEST_CASE("every pad lies on some screen, and is called by its name") {
  using namespace bench;
  std::set<PadKind> seen;
  for (const views::Case& c : views::all())
    for (const Pad& pad : c.view.layout.pads) seen.insert(pad.id.kind);
  for (const PadKind kind : all_pads<StripPad, SharedPad, SlabPad, ChoicePad, MorePad, NumberPad,
                                     PlanPad, ShelfPad, BookPad, PansPad, TabletPad>()) {
    const std::string name = name_of(PadId{kind, ""});
    CAPTURE(name);
    CHECK(seen.count(kind) == 1);
    CHECK(pad_named(name) == PadId{kind, ""});
  }
}
