#include "bench/layout_of.hpp"
#include "bench/pads_shared.hpp"
#include "hands.hpp"

namespace layout_test {

using namespace bench;
using hands::Hands;

namespace {

bool apart(const Rect& a, const Rect& b, double gap) {
  constexpr double rounding = 1e-9;
  return a.right() + gap <= b.x + rounding || b.right() + gap <= a.x + rounding ||
         a.bottom() + gap <= b.y + rounding || b.bottom() + gap <= a.y + rounding;
}

void check_pads(const Layout& l, Size mm, double least_w, double least_h) {
  for (std::size_t i = 0; i < l.pads.size(); ++i) {
    const Pad& pad = l.pads[i];
    CAPTURE(name_of(pad.id));
    CHECK(pad.box.x >= 0);
    CHECK(pad.box.y >= 0);
    CHECK(pad.box.right() <= mm.w + 1e-9);
    CHECK(pad.box.bottom() <= mm.h + 1e-9);
    CHECK(pad.box.w >= 12);
    CHECK(pad.box.h >= 12 - 1e-9);
    if (!l.top_bar.contains(pad.box.centre())) {
      CHECK(pad.box.w >= least_w);
      CHECK(pad.box.h >= least_h);
    }
    for (std::size_t k = i + 1; k < l.pads.size(); ++k)
      CHECK_MESSAGE(apart(pad.box, l.pads[k].box, gap_mm), name_of(l.pads[k].id));
  }
}

// Runs a check on every face of the slab: before, during and after mulling, and what opens.
template <class F>
void on_every_slab(Hands& h, F check) {
  h.begin();
  check();
  for (const char* opens : {"another", "more", "dot", "trouble"}) {
    h.tap(opens);
    check();
    h.tap("leave");
  }
  h.tap("add pb28");
  check();
  h.tap("leave");
  for (int i = 0; i < 3; ++i) {
    h.tap("pass");
    check();
  }
  h.tap("gather");
  check();
}

}

// PlaceContents: at least 26 x 22 mm (AAMI HE75 errors below 23 mm; keys over 21 mm). Upright: 24
// x 20.
TEST_CASE("pads on the slab are large, apart and inside on every display and for either hand") {
  for (const Size mm : hands::displays())
    for (const Hand hand : {Hand::left, Hand::right}) {
      CAPTURE(mm.w);
      Hands h(Display{mm, hand});
      const bool upright = mm.h > mm.w;
      on_every_slab(h, [&] { check_pads(layout(h.b), mm, upright ? 24 : 26, upright ? 20 : 22); });
    }
}

TEST_CASE("the board of Today is for wet hands, on its first day and on every page") {
  for (const Size mm : hands::displays())
    for (const Hand hand : {Hand::left, Hand::right}) {
      CAPTURE(mm.w);
      Hands h(Display{mm, hand});
      const bool upright = mm.h > mm.w;
      const auto check = [&] { check_pads(layout(h.b), mm, upright ? 24 : 26, upright ? 20 : 22); };
      h.tap("today");
      check();
      for (const char* id : {"a", "b", "c", "d", "e", "f"}) {
        h.b.batches.push_back(id);
        BookEntry& entry = h.b.index.of[id];
        entry.lies = BookEntry::in_jar;
        entry.lies_since = h.wall;
        entry.pigments = {id};
        entry.verdicts = {{{}, 1, {session::Became::good, 0}}};
        h.b.index.asked.insert(id);
      }
      h.wait(1);
      check();
      CHECK(h.shows("again f"));
      for (auto& [id, entry] : h.b.index.of) entry.verdicts.clear();
      h.wait(1);
      CHECK(h.shows("page_on"));
      check();
      h.tap("page_on");
      check();
    }
}

TEST_CASE("the running pass and undo are larger than the rest") {
  for (const Size mm : hands::displays()) {
    Hands h(Display{mm, Hand::left});
    h.begin();
    h.tap("pass");
    const double usual = h.box("dot").w * h.box("dot").h;
    CHECK(h.box("undo").w * h.box("undo").h > 1.9 * usual);
    CHECK(h.box("pass").w * h.box("pass").h > 1.9 * usual);
  }
}

TEST_CASE("trail and numbers lie under no pad") {
  for (const Size mm : hands::displays()) {
    Hands h(Display{mm, Hand::left});
    h.begin();
    const Layout l = layout(h.b);
    CHECK(l.main.h >= 45);
    CHECK(l.side.h >= 22);
    CHECK(apart(l.main, l.side, gap_mm));
    for (const Pad& pad : l.pads) {
      CHECK(apart(pad.box, l.main, gap_mm));
      CHECK(apart(pad.box, l.side, gap_mm));
    }
  }
}

TEST_CASE("photos of dots lie beside the trail, large enough for wet thumbs, under no other pad") {
  for (const Size mm : hands::displays())
    for (const Hand hand : {Hand::left, Hand::right}) {
      CAPTURE(mm.w);
      Hands h(Display{mm, hand});
      h.b.photos.there = true;
      h.begin();
      h.tap("add pb28");
      h.tap("leave");
      h.tap("add gum_12");
      const double wide = layout(h.b).main.w;
      for (const char digit : {'a', 'b', 'c', 'd'}) {
        h.wait(60);
        const session::Photo photo{std::string(64, digit), "jpg", session::PhotoOf::dot};
        h.give(PhotoKept{"/tmp/one.jpg", h.b.batch, photo});
      }
      const Layout l = layout(h.b);
      const bool upright = mm.h > mm.w;
      check_pads(l, mm, upright ? 24 : 26, upright ? 20 : 22);
      CHECK(l.main.w < wide);
      CHECK(h.shows("dot_photo " + std::string(64, 'd') + " dot"));
      for (const Pad& pad : l.pads) CHECK(apart(pad.box, l.main, gap_mm));
      h.wait(2000);
      CHECK_FALSE(h.shows("dot_photo " + std::string(64, 'd') + " dot")); // it has left the trail
    }
}

TEST_CASE("the feel pads stand in the trail's order for either hand") {
  for (const Hand hand : {Hand::left, Hand::right}) {
    Hands h(Display{{218, 136}, hand});
    h.begin();
    double x = -1;
    for (const char* feel :
         {"felt wont_move", "felt too_sticky", "felt right", "felt too_loose", "felt too_runny"}) {
      CHECK(h.box(feel).x > x);
      x = h.box(feel).x;
    }
    CHECK((h.box("add gum_12").x < h.box("pass").x) == (hand == Hand::left));
  }
}

TEST_CASE("clean-hands screens: at least 12 mm, apart and inside, on every page") {
  for (const Size mm : hands::displays()) {
    Hands h(Display{mm, Hand::left});
    check_pads(layout(h.b), mm, 12, 12);
    while (h.shows("page_on")) {
      h.tap("page_on");
      check_pads(layout(h.b), mm, 12, 12);
    }
    while (h.shows("page_back")) h.tap("page_back");
    for (const char* const id : {"pb28", "pb29", "pw6", "py43"}) h.choose(id);
    for (const char* const in : {"spoons", "g", "parts"}) {
      h.tap(std::string("say_in ") + in);
      check_pads(layout(h.b), mm, 12, 12);
    }
    h.tap("weigh");
    check_pads(layout(h.b), mm, 12, 12);
    h.tap("leave");
    h.tap("keep_recipe");
    h.tap("pigment pb29");
    h.tap("another_pigment");
    check_pads(layout(h.b), mm, 12, 12);
    h.tap("recipes");
    check_pads(layout(h.b), mm, 12, 12);
    h.tap("leave");
    for (const char* const id : {"pb28", "pw6", "py43"}) h.choose(id);
    for (int i = 0; i < 20; ++i) {
      h.tap("plan");
      h.give(Text{{SharedPad::search, ""}, "PB28"});
      h.begin();
    }
    h.tap("book");
    check_pads(layout(h.b), mm, 12, 12);
    h.give(Text{{SharedPad::search, ""}, "a"});
    check_pads(layout(h.b), mm, 12, 12);
    h.tap("clear");
    CHECK(h.shows("page_on"));
    h.tap("batch " + h.b.batches.back());
    check_pads(layout(h.b), mm, 12, 12);
  }
}

TEST_CASE("making binder, and a jar's strength: at least 12 mm, apart and inside") {
  for (const Size mm : hands::displays()) {
    CAPTURE(mm.w);
    Hands h(Display{mm, Hand::left});
    const auto check = [&] { check_pads(layout(h.b), mm, 12, 12); };
    for (session::Card& card : h.b.shelf)
      if (card.id == "gum_12") card.made_g = 120, card.made_on = "2026-11-20";
    h.tap("shelf");
    h.tap("kind_of binder");
    h.tap("card gum_12");
    check();
    h.tap("strength");
    check();
    h.tap("weigh_bottle");
    check();
    h.type("100");
    check();
    h.tap("shelf");
    for (int making = 0; making < 2; ++making) {
      h.tap(making == 0 ? "card gum_12" : "card gum_12_honey");
      h.tap("make_binder");
      check();
      h.tap("step gum");
      check();
      h.tap("shelf");
    }
  }
}

namespace {

// Runs a check on every face of Pans, with more pans than one page has.
template <class F>
void on_all_pans(Hands& h, F check) {
  h.begin();
  h.tap("another");
  h.tap("amount weigh");
  h.tap("add gum_12");
  h.type("60");
  h.tap("pass");
  h.tap("pass");
  h.tap("pass");
  h.tap("gather");
  h.tap("pans");
  check();
  h.tap("pour_all");
  check();
  while (!h.shows("more_pans") && h.shows("new_pan")) h.tap("new_pan");
  check();
  while (!h.shows("pan 1")) h.tap("more_pans"); // round to the first
  h.tap("pan 1");
  h.tap("pour_g");
  check();
  h.tap("leave");
  h.tap("judge");
  h.tap("pan 2");
  check();
  h.tap("became cracked");
  check();
  h.tap("weigh_pan");
  check();
}

}

TEST_CASE("pads of Pans are as large as those of the slab, for either hand") {
  for (const Size mm : hands::displays())
    for (const Hand hand : {Hand::left, Hand::right}) {
      CAPTURE(mm.w);
      Hands h(Display{mm, hand});
      const bool upright = mm.h > mm.w;
      on_all_pans(h, [&] {
        const Layout l = layout(h.b);
        check_pads(l, mm, upright ? 24 : 26, upright ? 20 : 22);
        for (const Pad& pad : l.pads) {
          CHECK(pad_named(name_of(pad.id)) == pad.id);
          CHECK(apart(pad.box, l.side, gap_mm));
          CHECK(apart(pad.box, l.lower, gap_mm));
        }
      });
    }
}

TEST_CASE("the Book's pages, choices and notes: at least 12 mm, apart and inside") {
  for (const Size mm : hands::displays()) {
    CAPTURE(mm.w);
    Hands h(Display{mm, Hand::left});
    h.begin();
    h.tap("plan");
    h.begin();
    h.tap("book");
    const auto check = [&] { check_pads(layout(h.b), mm, 12, 12); };
    h.give(Text{{SharedPad::search, ""}, "cobalt"});
    check();
    h.tap("batch " + h.b.batches.front());
    check();
    h.tap("note");
    check();
    h.tap("leave");
    h.tap("compare");
    check();
    h.tap("batch " + h.b.batches.back());
    check();
    CHECK(apart(layout(h.b).main, layout(h.b).side, gap_mm));
  }
}

TEST_CASE("paint that a hand calls right can be gathered, though no pass was timed") {
  Hands h;
  h.begin();
  for (int i = 0; i < 3; ++i) h.tap("add gum_12");
  CHECK_FALSE(h.shows("gather"));
  h.tap("felt right");
  REQUIRE(h.shows("gather"));
  CHECK(h.shows("pass"));
  h.tap("add gum_12");
  CHECK_FALSE(h.shows("gather"));
  h.tap("felt right");
  h.tap("gather");
  CHECK(h.b.folded->progress == session::Progress::gathered);
}

TEST_CASE("every pad's name reads back") {
  Hands h;
  on_every_slab(h, [&] {
    for (const Pad& pad : layout(h.b).pads) CHECK(pad_named(name_of(pad.id)) == pad.id);
  });
  CHECK_FALSE(pad_named("sing"));
  CHECK_FALSE(pad_named(""));
}

}
