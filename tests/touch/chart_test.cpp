// Paints by colour at the real window: where a swatch leads, and what of all is put on paper.
#include "touch/hand.hpp"

#include <filesystem>

namespace chart_test {

namespace {

using namespace touch;

void make(Hand& hand, const std::string& pigment) {
  for (const std::string& pad : {std::string("plan"), "pigment " + pigment, std::string("weigh")})
    hand.tap(pad);
  hand.type("12");
  for (const char* pad : {"begin", "another", "amount weigh", "add gum_12"}) hand.tap(pad);
  hand.type("9");
  for (const char* pad : {"pass", "pass", "pass", "gather"}) hand.tap(pad);
}

std::size_t pages_in(const std::filesystem::path& folder) {
  std::size_t count = 0;
  if (std::filesystem::exists(folder))
    for (const auto& file : std::filesystem::directory_iterator(folder))
      count += file.path().extension() == ".html";
  return count;
}

void a_swatch_leads_to_its_batch(const Look& look) {
  Glass glass(look.w, look.h);
  const Home home;
  Hand hand(glass, home, look);
  make(hand, "pb29");
  const std::string batch = hand.mirror.batch;
  for (const std::string& pad :
       {std::string("book"), std::string("by_colour"), std::string("list_paper"),
        std::string("paint_list"), std::string("leave"), "batch " + batch, std::string("discard")})
    hand.tap(pad);
  CHECK(hand.close().number == 0);
  CHECK(hand.program.err() == "");
  const auto lines = only_session(home);
  check_same(lines, hand.lines);
  CHECK(std::holds_alternative<session::Discarded>(lines.at(lines.size() - 2).event));
  CHECK(pages_in(home.studio / "paper") == 1);
}

}

TEST_CASE("a swatch leads to its batch, lying") { a_swatch_leads_to_its_batch(lying); }
TEST_CASE("a swatch leads to its batch, upright") { a_swatch_leads_to_its_batch(upright); }

}
