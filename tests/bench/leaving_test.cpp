// The window is closed in the middle of something: what is typed is kept.
#include "bench/choices.hpp"
#include "bench/pads_book.hpp"
#include "bench/pads_shelf.hpp"
#include "hands.hpp"
#include "words/bench_says.hpp"

namespace leaving_test {

using namespace bench;
using hands::Hands;

namespace {

void write(Hands& h, const std::string& which, const std::string& text) {
  h.give(Text{{ShelfPad::says, which}, text});
}

// The batch's page in the Book.
void open_page(Hands& h) {
  h.begin();
  h.tap("book");
  h.tap("batch " + h.b.batch);
}

template <class E>
const E& before_goodbye(const Hands& h) {
  REQUIRE(h.lines.size() >= 2);
  CHECK(std::holds_alternative<session::Left>(h.lines.back().event));
  const auto* event = std::get_if<E>(&h.lines[h.lines.size() - 2].event);
  REQUIRE(event);
  return *event;
}

}

TEST_CASE("a note that is being typed is kept when the window is closed") {
  Hands h;
  open_page(h);
  h.tap("note");
  h.give(Text{{BookPad::note_text, ""}, "less water next time"});
  h.give(Leaving{});
  CHECK(before_goodbye<session::Noted>(h).text == "less water next time");
  const auto lines = h.lines.size();
  h.give(Leaving{});
  CHECK(h.lines.size() == lines);
}

TEST_CASE("a name that is being typed is kept when the window is closed") {
  Hands h;
  open_page(h);
  h.tap("rename");
  h.give(Text{{BookPad::name_text, ""}, "Weir blue"});
  h.give(Leaving{});
  const auto& says = before_goodbye<session::Corrected>(h).says;
  CHECK(std::get<session::Opened>(*says).name == "Weir blue");
}

TEST_CASE("a new card is kept when the window is closed, once something is written on it") {
  Hands h;
  h.tap("shelf");
  h.tap("kind_of binder");
  h.tap("new_card");
  SUBCASE("as it stands") {
    write(h, "name", "Gum of May");
    h.give(Leaving{});
    CHECK(before_goodbye<session::LaidOut>(h).card->name == "Gum of May");
    CHECK_FALSE(h.b.notice.error);
  }
  SUBCASE("blank, it is none") {
    h.give(Leaving{});
    CHECK(h.lines.empty());
    CHECK_FALSE(h.b.notice.error);
  }
  SUBCASE("one that cannot be kept so is not, and that is said") {
    write(h, "name", "Gum of May");
    write(h, "made_on", "yesterday or so");
    h.give(Leaving{});
    CHECK(h.lines.empty());
    REQUIRE(h.b.notice.error);
    CHECK(h.b.notice.error->what == words::Sentence(words::BenchSay::not_a_date));
  }
}

TEST_CASE("a number that is half typed when the window is closed is none") {
  Hands h;
  h.begin();
  for (const char* pad : {"another", "amount weigh", "add gum_12", "digit 4"}) h.tap(pad);
  const auto lines = h.lines.size();
  h.give(Leaving{});
  CHECK(h.lines.size() == lines + 1);
}

TEST_CASE("a card is put away by the name that was typed on it") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb29");
  h.tap("change");
  write(h, "name", "The blue of the small jar");
  h.tap("put_away");
  CHECK(std::holds_alternative<session::PutAway>(h.lines.back().event));
  CHECK(card_anywhere(h.b, "pb29")->name == "The blue of the small jar");
  CHECK_FALSE(shelf_card(h.b, "pb29"));
}

TEST_CASE("a card that cannot be kept so is not put away before that was said") {
  Hands h;
  h.tap("shelf");
  h.tap("card pb29");
  h.tap("change");
  write(h, "name", "");
  h.tap("put_away");
  CHECK(h.lines.empty());
  REQUIRE(h.b.notice.error);
  CHECK(h.b.notice.error->what == words::Sentence(words::BenchSay::card_needs_name));
}

}
