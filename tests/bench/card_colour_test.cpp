// A pigment's card takes its colour from the swatch of its own paint, and gives it back.
#include "bench/book_index.hpp"
#include "bench/choices.hpp"
#include "hands.hpp"
#include "session/batch.hpp"

namespace card_colour_test {

using namespace bench;
using hands::Hands;

namespace {

constexpr std::uint32_t blue = 0x2E4F9A, darker = 0x1E3F8A;

// A photo of a batch's swatch, as another program of the studio kept it.
void swatch_read(Hands& h, const std::string& batch, std::uint32_t shown) {
  static int photos = 0;
  session::Photo photo{std::string(64, 'a'), "jpg", session::PhotoOf::swatch,
                       session::Measured{shown, 35, 10, -45, 0.5, 0.5, 0.5}};
  session::Log log;
  log.session = "photo" + std::to_string(++photos);
  log.lines.push_back({0, 0, h.wall, batch, photo});
  h.give(Arrived{{log}, {}, {}, {}});
}

void open_card(Hands& h, const std::string& id) {
  h.tap("shelf");
  h.tap("kind_of pigment");
  h.tap("card " + id);
}

ColourView shown(Hands& h) { return std::get<ShelfView>(view(h.b, h.now()).screen).colour; }

std::uint32_t colour_on_shelf(const Hands& h) {
  return pigment_of(*shelf_card(h.b, "pb28")).colour;
}

}

TEST_CASE("a card takes the colour of its own paint's swatch, and the catalogue's again") {
  Hands h;
  const std::uint32_t catalogues = colour_on_shelf(h);
  h.gather();
  const std::string batch = h.b.batches.front();
  open_card(h, "pb28");
  CHECK_FALSE(h.shows("as_swatch"));
  swatch_read(h, batch, blue);
  CHECK(shown(h).take == name_of_batch(h.b, batch));
  CHECK_FALSE(h.shows("as_catalogue"));
  h.tap("as_swatch");
  CHECK(colour_on_shelf(h) == blue);
  CHECK(shown(h).swatch_of == name_of_batch(h.b, batch));
  CHECK_FALSE(h.shows("as_swatch"));
  // Its figures are those of the catalogue still.
  CHECK(std::get<ShelfView>(view(h.b, h.now()).screen).from_catalogue);
  h.tap("as_catalogue");
  CHECK(colour_on_shelf(h) == catalogues);
  CHECK(shown(h).swatch_of.empty());
  CHECK(h.shows("as_swatch"));
}

TEST_CASE("of two swatches the newest batch's is offered, though the card shows the other's") {
  Hands h;
  h.gather();
  swatch_read(h, h.b.batches.front(), blue);
  open_card(h, "pb28");
  h.tap("as_swatch");
  h.pass_ms(3'600'000);
  h.tap("plan");
  h.gather();
  const std::string second = h.b.batches.back();
  swatch_read(h, second, darker);
  open_card(h, "pb28");
  CHECK(shown(h).take == name_of_batch(h.b, second));
  CHECK(h.shows("as_catalogue"));
  h.tap("as_swatch");
  CHECK(colour_on_shelf(h) == darker);
}

TEST_CASE("a blend's swatch is no pigment's, nor that of a batch which was discarded") {
  Hands h;
  h.choose("pb28");
  h.choose("pw6");
  h.tap("weigh");
  h.type("12");
  h.tap("begin");
  swatch_read(h, h.b.batch, blue);
  CHECK(h.b.index.swatches.empty());
  Hands other;
  other.gather();
  const std::string batch = other.b.batches.front();
  swatch_read(other, batch, blue);
  open_card(other, "pb28");
  other.tap("as_swatch");
  session::Log log;
  log.session = "away";
  log.lines.push_back({0, 0, other.wall, batch, session::Discarded{}});
  other.give(Arrived{{log}, {}, {}, {}});
  open_card(other, "pb28");
  CHECK_FALSE(other.shows("as_swatch"));
  REQUIRE(other.shows("as_catalogue")); // what was taken can still be given back
  other.tap("as_catalogue");
  CHECK_FALSE(other.shows("as_catalogue"));
}

TEST_CASE("Pans draws the paint as it was read, a stroke of it and no heap") {
  Hands h;
  h.gather();
  h.tap("pans");
  CHECK_FALSE(std::get<PansView>(view(h.b, h.now()).screen).swatch);
  swatch_read(h, h.b.batches.front(), blue);
  const auto pans = std::get<PansView>(view(h.b, h.now()).screen);
  CHECK(pans.swatch);
  CHECK(pans.colour == blue);
}

}
