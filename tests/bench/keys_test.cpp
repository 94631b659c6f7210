// Pedals and keyboards: bound keys, and a ring that goes from pad to pad.
#include "bench/keys.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"
#include "words/speaking.hpp"

#include <map>
#include <queue>

namespace keys_test {

using namespace hands;

namespace {

struct Feet : Hands {
  using Hands::Hands;

  void key(const std::string& name) {
    give(Key{name, true, run, ++poll});
    pass_ms(90);
    give(Key{name, false, run, ++poll});
    pass_ms(210);
  }

  // The arrows that lead the ring to a pad, found by trying them all.
  std::vector<std::string> way_to(const PadId& pad) {
    const Layout pads = layout(b);
    const std::map<std::string, std::pair<int, int>> arrows{
        {"Left", {-1, 0}}, {"Right", {1, 0}}, {"Up", {0, -1}}, {"Down", {0, 1}}};
    std::map<PadId, std::vector<std::string>> found;
    std::queue<PadId> open;
    std::vector<std::string> first;
    PadId at = b.keys.focus.value_or(PadId{});
    if (!b.keys.focus || !pad_of(pads, at)) {
      first = {"Right"};
      at = *beside(pads, std::nullopt, 1, 0);
    }
    found[at] = first;
    open.push(at);
    while (!open.empty()) {
      const PadId here = open.front();
      open.pop();
      if (here == pad) return found[here];
      for (const auto& [key, way] : arrows) {
        const PadId next = *beside(pads, here, way.first, way.second);
        if (found.count(next)) continue;
        found[next] = found[here];
        found[next].push_back(key);
        open.push(next);
      }
    }
    FAIL("no way to " << name_of(pad));
    return {};
  }

  void press(const std::string& name) {
    for (const std::string& arrow : way_to(*pad_named(name))) key(arrow);
    REQUIRE(b.keys.focus == pad_named(name));
    key("Enter");
  }

  void bind(const std::string& pad, const std::string& to) {
    if (b.screen != Screen::tablet) {
      if (b.screen == Screen::slab) tap("book");
      tap("tablet");
    }
    tap("bind " + pad);
    key(to);
  }
};

}

TEST_CASE("a whole batch by keys alone, on every display") {
  for (const Size mm : displays())
    for (const Hand hand : {Hand::left, Hand::right}) {
      Feet f({mm, hand});
      f.press("pigment pb28");
      f.press("weigh");
      for (const char* key : {"1", "2", ".", "5", "Backspace", "Enter"}) f.key(key);
      f.press("begin");
      REQUIRE(f.b.screen == Screen::slab);
      f.press("another");
      f.press("amount 1 tsp");
      f.press("add gum_12");
      f.press("pass");
      f.press("felt too_sticky");
      f.press("add gum_12");
      f.key("Enter"); // the ring stays where it is
      f.press("undo");
      f.press("pass");
      f.press("pass");
      f.press("dot");
      f.key("Escape");
      CHECK(is_open<TrailPanel>(f.b.panel));
      f.press("dot");
      f.press("specks none");
      f.press("gather");
      f.press("close");
      CHECK(f.count<session::Added>() == 4);
      CHECK(f.count<session::Withdrawn>() == 1);
      CHECK(f.count<session::Dot>() == 1);
      CHECK(f.count<session::Closed>() == 1);
      CHECK(f.lines[f.lines.size() - 1].batch == f.lines[1].batch);
    }
}

TEST_CASE("the ring reaches every pad of every screen") {
  for (const Size mm : displays()) {
    Feet f({mm, Hand::left});
    f.begin();
    const auto all = [&] {
      const std::vector<Pad> pads = layout(f.b).pads;
      for (const Pad& pad : pads) f.way_to(pad.id);
    };
    all();
    for (const char* opens : {"another", "more", "dot", "trouble"}) {
      f.tap(opens);
      all();
      f.tap("leave");
    }
    for (const char* screen : {"plan", "book", "tablet"}) {
      f.tap(screen);
      all();
    }
  }
}

TEST_CASE("a pedal adds a drop, whichever binder is on the slab") {
  Feet f;
  f.bind("add binder", "b");
  f.tap("plan");
  f.begin();
  f.key("b");
  f.key("b");
  REQUIRE(f.count<session::Added>() == 3);
  CHECK(std::get<session::Added>(f.lines.back().event).of == "gum_12");
  CHECK(f.b.tablet.keys.at("b") == *pad_named("add binder"));
}

TEST_CASE("a pedal flashes its pad while it is down, and one that bounces counts once") {
  Feet f;
  f.bind("add binder", "b");
  f.tap("plan");
  f.begin();
  f.give(Key{"b", true, f.run, ++f.poll});
  CHECK(view(f.b, f.now()).pressed == pad_named("add gum_12"));
  f.pass_ms(60);
  f.give(Key{"b", false, f.run, ++f.poll});
  CHECK_FALSE(view(f.b, f.now()).pressed);
  f.pass_ms(40);
  f.give(Key{"b", true, f.run, ++f.poll});
  CHECK(f.count<session::Added>() == 2); // the pigment and one drop
  CHECK(f.slab().notice.not_counted == NotCounted::bounced);
}

TEST_CASE("what is not on the glass is not tapped, and wiped glass answers no key") {
  Feet f;
  f.bind("pass", "a");
  f.key("a"); // on this screen it is nowhere
  CHECK(f.lines.empty());
  f.tap("plan");
  f.begin();
  f.tap("wipe");
  const auto lines = f.lines.size();
  f.key("a");
  CHECK(f.lines.size() == lines);
}

TEST_CASE("one key for a pad, one pad for a key, and it can be freed") {
  Feet f;
  f.bind("undo", "c");
  f.bind("pass", "c");
  CHECK(f.b.tablet.keys.size() == 1);
  CHECK(f.b.tablet.keys.at("c") == *pad_named("pass"));
  f.bind("pass", "d");
  CHECK(f.b.tablet.keys.size() == 1);
  f.tap("bind pass");
  f.tap("bind pass");
  CHECK(f.b.tablet.keys.empty());
  f.tap("bind undo");
  f.tap("plan"); // whoever leaves waits for no key
  f.key("z");
  CHECK(f.b.tablet.keys.empty());
}

TEST_CASE("a finger puts the ring away") {
  Feet f;
  f.key("Right");
  CHECK(view(f.b, f.now()).focus);
  f.down("pigment pb28");
  CHECK_FALSE(view(f.b, f.now()).focus);
}

TEST_CASE("what this tablet is told is kept as text and read again") {
  Feet f({{218, 136}, Hand::left, "DP-1"});
  f.bind("felt right", "Page Down");
  f.tap("hand");
  f.tap("motion");
  f.tap("sound");
  f.tap("card_larger much");
  CHECK(f.b.display.hand == Hand::right);
  CHECK(scale_of(f.b.tablet, "DP-1") == doctest::Approx(1 / 1.04));
  CHECK(*read_tablet(written(f.b.tablet)) == f.b.tablet);
  CHECK(read_tablet("[]").error().what == words::BenchSay::tablet_unreadable);
  const auto odd = read_tablet(R"({"hand":3,"sound":"no","scales":{"a":9},"keys":{"b":"fly"}})");
  CHECK(*odd == Tablet{});
}

TEST_CASE("full screen has a pad where the window has the choice, and is kept") {
  Feet f;
  f.tap("tablet");
  CHECK_FALSE(pad_of(layout(f.b), *pad_named("full_screen")));
  f.b.full_screen = false;
  f.tap("full_screen");
  CHECK(*f.b.full_screen);
  CHECK(read_tablet(written(f.b.tablet))->full_screen);
  f.tap("full_screen");
  CHECK_FALSE(*f.b.full_screen);
  CHECK_FALSE(f.b.tablet.full_screen);
}

TEST_CASE("the language is chosen by a pad, and kept; what ships has its names in it") {
  Feet f;
  f.tap("tablet");
  CHECK_FALSE(f.b.tablet.language);
  const Effects chosen = step(f.b, Tap{*pad_named("language")}, f.now());
  CHECK(chosen.speak == words::Language::german);
  CHECK(chosen.keep_tablet);
  CHECK(read_tablet(written(f.b.tablet))->language == words::Language::german);
  CHECK_FALSE(read_tablet(R"({"language": "latin"})")->language);
  const auto water = [&] { return f.b.shelf[f.b.place_on_shelf.at("water")].name; };
  CHECK(water() == "Water");
  const words::Speaking german(words::Language::german); // as whoever takes the effect does
  f.give(Spoken{words::Language::german});
  CHECK(water() == "Wasser");
  f.tap("plan");
  f.tap("pigment pb28");
  f.tap("weigh");
  f.type("12");
  f.tap("begin");
  CHECK(f.b.folded->cards.at("pb28").name == "Kobaltblau");
  f.tap("book");
  f.tap("tablet");
  f.tap("language");
  CHECK(f.b.tablet.language == words::Language::english);
  words::say_in(words::Language::english);
  f.give(Spoken{words::Language::english});
  CHECK(water() == "Water");
  CHECK(f.b.folded->cards.at("pb28").name == "Cobalt blue");
}

TEST_CASE("a card can be made so small or large, and no further") {
  Feet f;
  f.tap("tablet");
  for (int i = 0; i < 60; ++i) f.tap("card_larger much");
  CHECK(scale_of(f.b.tablet, "") == 0.5);
  for (int i = 0; i < 120; ++i) f.tap("card_smaller much");
  CHECK(scale_of(f.b.tablet, "") == 2);
}

}
