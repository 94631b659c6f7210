// What the page is told of a screen: a name for every pad, the material first, and what is chosen.
#include "app/told.hpp"
#include "screens/parts.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

namespace {

using Json = nlohmann::json;
constexpr double px_per_mm = 6;

Json told(const bench::View& view) { return Json::parse(app::told(view, false, px_per_mm)); }

Json pad(const Json& all, const std::string& id) {
  for (const Json& each : all["pads"])
    if (each["id"] == id) return each;
  FAIL("no pad " << id);
  return {};
}

const views::Case& view_of(const std::vector<views::Case>& all, const std::string& name) {
  for (const views::Case& each : all)
    if (each.name.rfind(name, 0) == 0) return each;
  FAIL("no view " << name);
  return all.front();
}

// A view made by hand may lay out a pad for what it has nothing to draw of.
bool has_nothing_for(const bench::View& view, const std::string& pad) {
  if (std::holds_alternative<bench::SlabView>(view.screen)) return pad == "run c41e08d5 4";
  const auto* pans = std::get_if<bench::PansView>(&view.screen);
  return pans && pad.rfind("other_batch ", 0) == 0 &&
         std::none_of(pans->others.begin(), pans->others.end(),
                      [&](const auto& other) { return bench::name_of(other.pad) == pad; });
}

}

TEST_CASE("every pad of every screen has a name in words") {
  for (const views::Case& c : views::all()) {
    CAPTURE(c.name);
    const Json all = told(c.view);
    CHECK(all["pads"].size() == c.view.layout.pads.size());
    for (const Json& each : all["pads"]) {
      CAPTURE(each["id"]);
      const bool is_blank = has_nothing_for(c.view, each["id"]);
      CHECK((each["name"] == "") == is_blank);
      CHECK(each["box"].size() == 4);
    }
  }
}

TEST_CASE("a material's pad is called by the material first") {
  int materials = 0;
  for (const views::Case& c : views::all()) {
    const auto* slab = std::get_if<bench::SlabView>(&c.view.screen);
    if (!slab) continue;
    const Json all = told(c.view);
    for (const bench::MaterialView& m : slab->materials) {
      if (!bench::pad_of(c.view.layout, m.pad) || m.several > 0) continue;
      const std::string name = pad(all, bench::name_of(m.pad))["name"];
      CAPTURE(name);
      const std::string first = m.name.substr(0, m.name.find(' '));
      CHECK(name.rfind(first.substr(0, 3), 0) == 0);
      ++materials;
    }
  }
  CHECK(materials > 100);
}

TEST_CASE("the tab one is on, what is chosen, and where the page has room") {
  int here = 0, chosen = 0, free = 0;
  for (const views::Case& c : views::all()) {
    CAPTURE(c.name);
    const Json all = told(c.view);
    for (const Json& each : all["pads"]) {
      here += each["here"].get<bool>();
      chosen += each["chosen"].get<bool>();
    }
    const auto* tablet = std::get_if<bench::TabletView>(&c.view.screen);
    CHECK(all.contains("free") == (tablet != nullptr));
    if (!tablet) continue;
    ++free;
    const bench::Rect main = c.view.layout.main;
    for (const double drawn_at : {tablet->drawn_at, 0.93, 0.66, 0.48}) { // smaller than the least
      bench::View view = c.view;
      std::get<bench::TabletView>(view.screen).drawn_at = drawn_at;
      const Json free_place = told(view)["free"];
      const double x = free_place[0], y = free_place[1], w = free_place[2], h = free_place[3];
      const bench::Rect card = screens::bank_card(main, drawn_at).at;
      CAPTURE(drawn_at);
      const bool below = y > card.bottom() * px_per_mm, beside = x > card.right() * px_per_mm;
      const bool room = main.bottom() - card.bottom() >= 9 + bench::gap_mm ||
                        main.right() - card.right() >= 30 + 1.5 * bench::gap_mm;
      CHECK((below || beside) == room);
      CHECK(w >= 20 * px_per_mm);
      CHECK(h >= 9 * px_per_mm);
      CHECK(x + w < main.right() * px_per_mm);
      CHECK(y + h < main.bottom() * px_per_mm);
    }
  }
  CHECK(here > 0);
  CHECK(chosen > 0);
  CHECK(free > 0);
}

TEST_CASE("what stands beside the pads is told, and in one piece where it goes over two lines") {
  const auto all = views::all();
  const views::Case& tablet = view_of(all, "tablet");
  const Json words = told(tablet.view)["words"];
  CHECK(std::find(words.begin(), words.end(), "hold a bank card here.") != words.end());
  const Json smaller = pad(told(tablet.view), "card_smaller much");
  CHECK(smaller["name"] == "much smaller");
}

TEST_CASE("what stands on lines of its own is told apart, and each ends") {
  const auto all = views::all();
  std::size_t told_apart = 0;
  for (const views::Case& c : all) {
    CAPTURE(c.name);
    const Json words = told(c.view)["words"];
    for (const std::string each : words) {
      CAPTURE(each);
      CHECK(std::string(".:!?;,\xa6").find(each.back()) != std::string::npos);
    }
    const auto* book = std::get_if<bench::BookView>(&c.view.screen);
    if (!book || !book->cost || !book->batch) continue;
    const auto at = [&](const std::string& begins) {
      return std::count_if(words.begin(), words.end(),
                           [&](const std::string& each) { return each.rfind(begins, 0) == 0; });
    };
    told_apart += at("cost ") == 1 && at("no price known: ") == 1 && at("dry: ") == 1;
  }
  CHECK(told_apart >= 2);
}

TEST_CASE("how many pans are not drawn is told in words, and never cut") {
  std::size_t more = 0;
  for (const views::Case& c : views::all()) {
    CAPTURE(c.name);
    const Json pads = told(c.view)["pads"];
    for (const Json& each : pads) {
      const std::string name = each["name"];
      CAPTURE(name);
      CHECK(name.find(", +") == std::string::npos);
      more += name.find(", and ") != std::string::npos && name.ends_with(" more");
    }
  }
  CHECK(more > 0);
}
