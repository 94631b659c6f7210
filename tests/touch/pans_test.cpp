// Poured, weighed and judged at the real window.
#include "touch/hand.hpp"

namespace pans_test {

namespace {

using namespace touch;

void make(Hand& hand) {
  hand.tap("pigment pb29");
  hand.tap("weigh");
  hand.type("12");
  hand.tap("begin");
  hand.tap("another");
  hand.tap("amount weigh");
  hand.tap("add gum_12");
  hand.type("9");
  hand.tap("pass");
  hand.tap("pass");
  hand.tap("pass");
  hand.tap("gather");
}

void pour(Hand& hand) {
  hand.tap("pans");
  hand.tap("new_pan");
  hand.tap("new_pan");
  hand.tap("pour_g");
  hand.type("1.5");
  hand.tap("weigh_pan");
  hand.type("4.35");
  hand.tap("new_pan");
  hand.tap("undo");
}

void judge(Hand& hand) {
  hand.tap("judge");
  hand.tap("pan 2");
  hand.tap("became sunken");
  hand.tap("all_pans");
  hand.tap("became good");
}

void poured_and_judged(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look);
  make(hand);
  pour(hand);
  judge(hand);
  const std::string batch = hand.mirror.batches.at(0);
  const auto folded = session::fold(session::all_of(hand.mirror.logs), batch);
  REQUIRE(folded);
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  check_same(only_session(home), hand.lines);
  REQUIRE(folded->pans.size() == 2);
  CHECK(folded->pans[1].readings.size() == 1);
  CHECK(folded->verdicts.size() == 2);
  CHECK(folded->warnings.empty());
}

}

TEST_CASE("pans poured, weighed and judged by taps, lying") { poured_and_judged(lying); }
TEST_CASE("pans poured, weighed and judged by taps, upright") { poured_and_judged(upright); }

TEST_CASE("a note is written on the keyboard and kept with its batch") {
  Glass glass(lying.w, lying.h);
  const Home home;
  Hand hand(glass, home);
  make(hand);
  hand.tap("book");
  hand.write("search", "ultra");
  hand.tap("batch " + hand.mirror.batches.at(0));
  hand.tap("note");
  hand.write("note_text", "less water");
  hand.tap("keep");
  CHECK(hand.close().number == 0);
  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  bool kept = false;
  for (const session::Line& line : lines)
    if (const auto* note = std::get_if<session::Noted>(&line.event))
      kept = note->text == "less water";
  CHECK(kept);
}

TEST_CASE("a card of the shelf is edited, and a blend of two pigments planned and begun") {
  Glass glass(lying.w, lying.h);
  const Home home;
  Hand hand(glass, home);
  hand.tap("shelf");
  hand.tap("kind_of dropper");
  hand.tap("card dropper");
  hand.tap("fact drops_20_g");
  hand.type("0.92");
  hand.tap("card_done");
  hand.tap("kind_of pigment");
  hand.write("search", "cobalt blue");
  hand.tap("card pb28");
  hand.tap("change");
  hand.write("says lot", "jar 3");
  hand.tap("card_done");
  hand.tap("plan");
  hand.write("search", "cobalt blue");
  hand.tap("pigment pb28");
  hand.tap("another_pigment");
  hand.write("search", "ochre");
  hand.tap("pigment py43");
  hand.tap("leave");
  hand.tap("parts pb28");
  hand.type("3");
  hand.tap("want");
  hand.tap("weigh");
  hand.type("4");
  hand.tap("cautions");
  hand.tap("cautions_read");
  hand.tap("begin");
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  const auto written = only_session(home);
  check_same(written, hand.lines);
  std::size_t cards = 0, pigments = 0;
  for (const session::Line& line : written)
    if (const auto* laid = std::get_if<session::LaidOut>(&line.event)) {
      cards += line.batch.empty();
      pigments += !line.batch.empty() && laid->card->kind() == session::CardKind::pigment;
    }
  CHECK(cards == 2);
  CHECK(pigments == 2);
}

}
