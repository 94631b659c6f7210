// Every pad that a screen lists has a place on it.
#include "bench/hands.hpp"
#include "bench/pads_binder.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_more.hpp"
#include "bench/pads_number.hpp"
#include "bench/pads_pans.hpp"
#include "bench/pads_plan.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "bench/pads_tablet.hpp"
#include "bench/pads_top_bar.hpp"
#include "screens/views.hpp"
#include "words/lists.hpp"

#include <doctest/doctest.h>

#include <set>

namespace pads_test {

namespace {

template <class... Pad>
std::vector<bench::PadKind> all_pads() {
  std::vector<bench::PadKind> out;
  (out.insert(out.end(), words::all_of<Pad>.begin(), words::all_of<Pad>.end()), ...);
  return out;
}

std::set<bench::PadKind> seen_on_views() {
  std::set<bench::PadKind> seen;
  for (const views::Case& c : views::all())
    for (const bench::Pad& pad : c.view.layout.pads) seen.insert(pad.id.kind);
  return seen;
}

void look(const hands::Hands& h, std::set<bench::PadKind>& seen) {
  for (const bench::Pad& pad : bench::layout(h.b).pads) seen.insert(pad.id.kind);
}

// Two pigments, paint on the slab and in a jar, then that paint beside another batch; a card whose
// label can be put on paper, and that was put away.
void see_what_is_seldom(std::set<bench::PadKind>& seen) {
  hands::Hands h;
  h.choose("pb29");
  h.begin();
  look(h, seen);
  h.tap("add gum_12");
  h.tap("more");
  h.tap("to_jar half");
  h.tap("more");
  look(h, seen);
  h.tap("plan");
  h.begin();
  h.tap("more");
  h.tap("other_paint");
  look(h, seen);
  h.b.paper.folder = "/studio/paper";
  for (const char* const pad : {"shelf", "kind_of binder", "others", "card gum_13"}) h.tap(pad);
  look(h, seen);
  for (const char* const pad : {"put_away", "kept_away", "card gum_13"}) h.tap(pad);
  look(h, seen);
}

}

TEST_CASE("every pad lies on some screen, and is called by its name") {
  using namespace bench;
  std::set<PadKind> seen = seen_on_views();
  see_what_is_seldom(seen);
  for (const PadKind kind : all_pads<TopBarPad, SharedPad, SlabPad, ChoicePad, MorePad, NumberPad,
                                     PlanPad, ShelfPad, BookPad, PansPad, TabletPad, BinderPad>()) {
    const std::string name = name_of(PadId{kind, ""});
    CAPTURE(name);
    CHECK(seen.count(kind) == 1);
    CHECK(pad_named(name) == PadId{kind, ""});
  }
}

}
