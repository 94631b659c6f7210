// What can hurt somebody is never what falls off the end of a panel.
#include "bench/bench.hpp"
#include "bench/pads_plan.hpp"
#include "bench/view.hpp"
#include "paint/catalogue.hpp"
#include "screens/draw.hpp"
#include "screens/sources.hpp"
#include "screens/views.hpp"
#include "words/paint_says.hpp"
#include "words/say.hpp"
#include "words/slab_says.hpp"

#include <doctest/doctest.h>

namespace cautions_test {

using namespace screens;

namespace {

// All that Plan says, in one line, however it was broken.
std::string said(const bench::View& view) {
  std::string all;
  for (const Shape& shape : draw(view))
    if (const auto* text = std::get_if<Text>(&shape)) all += text->words + " ";
  return all;
}

}

TEST_CASE("each pigment's own cautions, the mask and the supplier's sheet stand on every display") {
  for (const bench::Size mm :
       {bench::Size{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}})
    for (const paint::CataloguePigment& pigment : paint::catalogue()) {
      const bench::Now now{1795617120000, 1000, 0, [] { return 7u; }};
      bench::Bench b = bench::start("c41e08d5", "a83f", bench::Display{mm, bench::Hand::left}, now);
      bench::step(b, bench::Loaded{}, now);
      b.plan.blend = {{pigment.id, 1}};
      b.plan.name = pigment.name;
      b.plan.wanted = 12;
      bench::step(b, bench::Tap{{bench::PlanPad::cautions, ""}}, now);
      const std::string words = said(bench::view(b, now));
      CAPTURE(pigment.name);
      CAPTURE(mm.w);
      CHECK(words.find(words::say(words::PaintSay::care_mask)) != std::string::npos);
      for (const paint::Caution c : pigment.cautions)
        if (c != paint::Caution::dust)
          CHECK_MESSAGE(words.find(words::say(paint::sentence(c))) != std::string::npos,
                        words::say(paint::sentence(c)));
      CHECK(words.find("data sheet") != std::string::npos);
    }
}

TEST_CASE("of a pigment nobody knows Plan says so: treat it as toxic, gloves") {
  for (const bench::Size mm : {bench::Size{218, 136}, {136, 218}}) {
    const bench::Now now{1795617120000, 1000, 0, [] { return 7u; }};
    bench::Bench b = bench::start("c41e08d5", "a83f", bench::Display{mm, bench::Hand::left}, now);
    bench::step(b, bench::Loaded{}, now);
    session::Card own = b.shelf.back();
    own.id = "found_in_a_drawer";
    b.shelf.push_back(own);
    b.plan.blend = {{own.id, 1}};
    b.plan.wanted = 12;
    bench::step(b, bench::Tap{{bench::PlanPad::cautions, ""}}, now);
    const std::string words = said(bench::view(b, now));
    CHECK(words.find("Not known: treat as toxic. Gloves on") != std::string::npos);
  }
}

TEST_CASE("a card says of its figures what they rest on, or that they are guesses") {
  const bench::Now now{1795617120000, 1000, 0, [] { return 7u; }};
  for (const bench::Size mm :
       {bench::Size{218, 136}, {237, 148}, {280, 175}, {136, 218}, {148, 237}})
    for (const paint::CataloguePigment& pigment : paint::catalogue()) {
      bench::Bench b = bench::start("c41e08d5", "a83f", bench::Display{mm, bench::Hand::left}, now);
      bench::step(b, bench::Loaded{}, now);
      b.screen = bench::Screen::shelf;
      for (const session::Card& card : b.shelf)
        if (card.id == pigment.id) b.shelf_page.card = card;
      const std::string words = said(bench::view(b, now));
      CAPTURE(pigment.name);
      CAPTURE(mm.w);
      for (const std::string& from : {pigment.density_from, pigment.oil_from})
        CHECK_MESSAGE(words.find(from.empty() ? "a guess" : screens::source_words(from)) !=
                          std::string::npos,
                      from);
    }
}

TEST_CASE("a failure to save and the dust mask stand beside each other") {
  int seen = 0;
  for (const auto& c : views::all()) {
    const auto* slab = std::get_if<bench::SlabView>(&c.view.screen);
    if (!slab || !slab->save_failure || !is_open<bench::TrailPanel>(slab->panel)) continue;
    ++seen;
    CAPTURE(c.name);
    const std::string words = said(c.view);
    CHECK(words.find("not saved") != std::string::npos);
    if (slab->dust) CHECK(words.find(words::say(words::SlabSay::dust_mask)) != std::string::npos);
  }
  CHECK(seen >= 5);
}

}
