#include "screens/draw.hpp"
#include "screens/measure.hpp"
#include "screens/trail_geometry.hpp"
#include "screens/views.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>

namespace trail_test {

using namespace screens;

namespace {

std::string labels_of(const std::vector<Tick>& ticks) {
  std::string out;
  for (const Tick& tick : ticks) out += (out.empty() ? "" : " ") + tick.label;
  return out;
}

// Every point of a dense walk along the line, so that the check shares no code with what it checks.
bool meets(const Rect& box, const std::vector<Point>& line) {
  for (std::size_t i = 1; i < line.size(); ++i)
    for (int k = 0; k <= 400; ++k) {
      const double t = k / 400.0;
      if (box.contains({line[i - 1].x + (line[i].x - line[i - 1].x) * t,
                        line[i - 1].y + (line[i].y - line[i - 1].y) * t}))
        return true;
    }
  return false;
}

}

TEST_CASE("flow runs on a log scale") {
  const FlowScale s{1, 4, 0, 100};
  CHECK(s.x(1) == doctest::Approx(0));
  CHECK(s.x(2) == doctest::Approx(50)); // half of two doublings
  CHECK(s.x(4) == doctest::Approx(100));
  CHECK(s.flow(50) == doctest::Approx(2));
  CHECK(s.x(0) < 0); // nothing there yet: off to the left, and finite
  CHECK(std::isfinite(s.x(0)));
}

TEST_CASE("ticks are 1 1.5 2 3 4 5 6 8, fewer where labels would touch") {
  CHECK(labels_of(ticks({0.9, 9, 0, 200}, 2.9)) == "1 1.5 2 3 4 5 6 8");
  CHECK(labels_of(ticks({0.09, 1.1, 0, 200}, 2.9)) == "0.1 0.15 0.2 0.3 0.4 0.5 0.6 0.8 1");
  for (const double width : {30.0, 60.0, 110.0}) {
    const FlowScale s{0.3, 12, 0, width};
    const auto all = ticks(s, 2.9);
    REQUIRE_FALSE(all.empty());
    for (std::size_t i = 1; i < all.size(); ++i)
      CHECK(s.x(all[i].flow) - s.x(all[i - 1].flow) >
            (width_mm(all[i].label, 2.9, false) + width_mm(all[i - 1].label, 2.9, false)) / 2);
  }
}

TEST_CASE("the scale holds the band and every flow, and is not stretched without end") {
  auto trail = views::trail();
  FlowScale s = flow_scale(trail, 0, 100);
  for (const auto& p : trail.points) CHECK((s.low < p.flow && p.flow < s.high));
  const auto [low, high] = band_edges(*trail.band);
  CHECK((s.low < low && high < s.high));
  trail.points = {{0, 1e-5, false}, {1, std::numeric_limits<double>::quiet_NaN(), false}};
  s = flow_scale(trail, 0, 100);
  CHECK(s.low >= 2.6 / 25 - 1e-9);
  CHECK(flow_scale({}, 0, 100).low == doctest::Approx(0.8)); // nothing known at all
}

TEST_CASE("time runs evenly on the slab; in the book a gap is short") {
  auto trail = views::trail();
  const TimeScale slab = time_scale(trail, 0, 90);
  CHECK(slab.y(0) == doctest::Approx(0));
  CHECK(slab.y(450) == doctest::Approx(45));
  CHECK(slab.y(900) == doctest::Approx(90));
  CHECK(slab.y(-100) == doctest::Approx(-10)); // what is older runs off the top

  trail.whole = true;
  trail.points = {{0, 1, false}, {100, 1, false}, {100000, 1, true}, {100100, 1, false}};
  trail.to = 100100;
  const TimeScale book = time_scale(trail, 0, 90);
  CHECK(book.y(100000) - book.y(100) == doctest::Approx(gap_in_time_mm));
  CHECK(book.y(100) == doctest::Approx(43)); // (90 - 4) / 2
  CHECK(book.y(100100) == doctest::Approx(90));
  CHECK(trail_pieces(trail.points, {}, book).size() == 2);
}

TEST_CASE("an empty trail has a scale, and no point is not a point") {
  bench::TrailView none;
  CHECK(std::isfinite(time_scale(none, 0, 90).y(10)));
  CHECK(trail_pieces(none.points, {}, time_scale(none, 0, 90)).empty());
  none.points = {{1, std::numeric_limits<double>::quiet_NaN(), false}};
  CHECK(trail_pieces(none.points, {}, time_scale(none, 0, 90)).empty());
}

TEST_CASE("the band is strongest at its middle, falls to both sides and ends in nothing") {
  const paint::Band band = views::band(2.0, 0.05);
  const FlowScale s{1, 4, 0, 100};
  const Colour away{0, 0, 0, 255}, right{200, 200, 200, 255};
  const auto stops = band_stops(band, s, 4, away, right);
  CHECK(stops.front().x == doctest::Approx(-4));
  CHECK(stops.back().x == doctest::Approx(104));
  CHECK(stops.front().colour == away);
  CHECK(stops.back().colour == away);
  for (std::size_t i = 1; i < stops.size(); ++i) {
    CHECK(stops[i].x > stops[i - 1].x);
    if (stops[i].x <= 50) CHECK(stops[i].colour.g >= stops[i - 1].colour.g);
    if (stops[i - 1].x >= 50) CHECK(stops[i].colour.g <= stops[i - 1].colour.g);
  }
  CHECK(stops[51].x == doctest::Approx(50));
  CHECK(stops[51].colour.g > 180);
  // Where less is known it is fainter.
  CHECK(band_stops(views::band(2.0, 0.4), s, 4, away, right)[51].colour.g < 110);
  const auto [low, high] = band_edges(band);
  CHECK(low == doctest::Approx(1.6375).epsilon(0.01)); // 2 e^-0.2
  CHECK(high == doctest::Approx(2.4428).epsilon(0.01));
}

TEST_CASE("a segment touches a rect or does not") {
  const Rect r{10, 10, 10, 10};
  CHECK(touches(r, {{0, 15}, {30, 15}}));  // through
  CHECK(touches(r, {{12, 12}, {13, 13}})); // inside
  CHECK(touches(r, {{0, 0}, {10, 10}}));   // to the corner
  CHECK(touches(r, {{15, 15}, {15, 15}})); // a point
  CHECK_FALSE(touches(r, {{0, 0}, {9, 30}}));
  CHECK_FALSE(touches(r, {{0, 21}, {30, 21}}));
  CHECK_FALSE(touches(r, {{0, 12}, {12, 0}})); // past the corner
}

TEST_CASE("words of a flag stand on the free side, or are left out") {
  const Flag flag{{50, 50}, 3, "too sticky"};
  Taken taken;
  taken.within = {0, 0, 100, 100};
  auto place = place_labels({flag}, taken, 2.9)[0];
  REQUIRE(place);
  CHECK(place->box.right() < 50);
  taken.lines = {{{45, 0}, {45, 100}}};
  place = place_labels({flag}, taken, 2.9)[0];
  REQUIRE(place);
  CHECK(place->box.x > 50);
  taken.lines.push_back({{55, 0}, {55, 100}});
  CHECK(place_labels({flag}, taken, 2.9)[0]->leader);
  taken.within = {40, 40, 20, 20};
  CHECK_FALSE(place_labels({flag}, taken, 2.9)[0]);
}

TEST_CASE("a crowded mark's words stand apart, on a leader that crosses no other mark") {
  Taken taken;
  taken.within = {0, 0, 100, 100};
  for (double y = 42; y <= 58; y += 4) { // words all around it
    taken.boxes.push_back({20, y - 2, 26, 3.9});
    taken.boxes.push_back({54, y - 2, 26, 3.9});
  }
  const Flag flag{{50, 50}, 3, "right"};
  const auto place = place_labels({flag}, taken, 2.9)[0];
  REQUIRE(place);
  REQUIRE(place->leader);
  CHECK(std::hypot(place->leader->b.x - 50, place->leader->b.y - 50) == doctest::Approx(1.5));
  for (const Rect& box : taken.boxes) {
    CHECK_FALSE(overlap(place->box, box));
    CHECK_FALSE(touches(bench::inset(box, 0.2), *place->leader));
  }
}

TEST_CASE("a ghost is drawn as far as the time that is shown, and cut where nobody was there") {
  bench::TrailView trail;
  trail.to = 600;
  trail.ghost = {
      {0, 1, false}, {300, 1.5, false}, {400, 1.4, true}, {500, 2, false}, {900, 2, false}};
  const auto pieces = ghost_pieces(trail, {}, time_scale(trail, 0, 90));
  REQUIRE(pieces.size() == 2);
  CHECK(pieces[0].size() == 2);
  CHECK(pieces[1].size() == 2);
}

TEST_CASE("on every display no word of the trail touches a line of it") {
  for (const auto& c : views::all()) {
    if (c.view.layout.pads.size() == 1) continue; // locked
    CAPTURE(c.name);
    const auto shapes = draw(c.view);
    std::size_t flags = 0;
    for (const Shape& text : shapes) {
      const auto* t = std::get_if<Text>(&text);
      if (!t || !c.view.layout.main.contains(t->at)) continue;
      const double w = width_mm(t->words, t->cap_mm, t->bold);
      const double x = t->anchor == Anchor::left     ? t->at.x
                       : t->anchor == Anchor::centre ? t->at.x - w / 2
                                                     : t->at.x - w;
      flags += t->words == "gelling" && t->anchor == Anchor::left;
      for (const Shape& line : shapes)
        if (const auto* l = std::get_if<Polyline>(&line)) {
          CAPTURE(t->words);
          CHECK_FALSE(meets({x, t->at.y - t->cap_mm, w, t->cap_mm}, l->points));
        }
    }
    if (c.name.find("slab, running") == 0) CHECK(flags == 1); // the newest flag has its word
  }
}

TEST_CASE("figures are tabular: a number that runs stands still") {
  for (const bool bold : {false, true})
    for (const char digit : std::string("123456789"))
      CHECK(width_mm(std::string(3, digit), 9.2, bold) ==
            doctest::Approx(width_mm("000", 9.2, bold)));
}

TEST_CASE("dashes are of one length however short the steps of the line are") {
  std::vector<Point> line;
  for (int i = 0; i <= 100; ++i) line.push_back({0.1 * i, 0}); // 10 mm
  const auto cut = dashes(line, 2);
  REQUIRE(cut.size() == 3); // 2 drawn, 2 left out, and again; the last one ends with the line
  for (std::size_t i = 0; i < cut.size(); ++i) {
    CHECK(cut[i].front().x == doctest::Approx(4.0 * static_cast<double>(i)));
    CHECK(cut[i].back().x == doctest::Approx(4.0 * static_cast<double>(i) + 2));
  }
  CHECK(dashes({{0, 0}, {10, 0}}, 2).size() == 3);
  CHECK(dashes({}, 2).empty());
  CHECK(dashes({{1, 1}}, 2).empty());
  const auto corner = dashes({{0, 0}, {1, 0}, {1, 5}}, 2); // a dash goes round a corner
  REQUIRE_FALSE(corner.empty());
  CHECK(corner[0].size() == 3);
}

TEST_CASE("signs at one place stand beside each other, and one elsewhere stays") {
  constexpr double size = 3;
  std::vector<Point> signs;
  for (int i = 0; i < 5; ++i) signs.push_back(session::beside_others({10, 10}, size, signs));
  CHECK(signs[0].x == 10);
  for (std::size_t i = 0; i < signs.size(); ++i)
    for (std::size_t j = 0; j < i; ++j) CHECK(std::abs(signs[i].x - signs[j].x) >= size);
  CHECK(session::beside_others({10, 20}, size, signs).x == 10);
}

TEST_CASE("of two signs at nearly one place, the one that is further left stands left") {
  constexpr double size = 3;
  std::vector<Point> signs{{10, 10}};
  CHECK(session::beside_others({9.5, 10}, size, signs).x < 10 - size);
  CHECK(session::beside_others({10.5, 10}, size, signs).x > 10 + size);
}

}
