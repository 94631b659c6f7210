#include "session/make.hpp"
#include "session/shelf.hpp"

#include <doctest/doctest.h>

namespace shelf_test {

namespace {

using namespace make;

Card gum(std::string name) {
  Card c = liquid("gum", CardKind::binder, {.gum = 1, .water = 2});
  c.name = std::move(name);
  return c;
}

}

TEST_CASE("the last edit of a card counts, whichever session made it") {
  Writer a("aaaaaaaa"), b("bbbbbbbb");
  a.card(gum("gum of May"));
  b.wait(60);
  b.card(gum("gum of June"));
  a.wait(30);
  a.card(gum("gum of late May"));
  const Shelf shelf = shelf_of(all_of({b.log, a.log}));
  CHECK(shelf.cards.at("gum").name == "gum of June");
  CHECK(shelf.cards.size() == 1);
}

TEST_CASE("a card is put away, and back when it is laid out anew") {
  Writer w;
  w.card(gum("gum"));
  w.put("", PutAway{"gum"});
  w.put("", PutAway{"pb28"}); // one that ships
  CHECK(shelf_of(all_of({w.log})).put_away == std::set<std::string>{"gum", "pb28"});
  CHECK(shelf_of(all_of({w.log})).cards.count("gum") == 1);
  w.wait(1);
  w.card(gum("gum"));
  CHECK(shelf_of(all_of({w.log})).put_away == std::set<std::string>{"pb28"});
}

TEST_CASE("an edit that was withdrawn counts for nothing") {
  Writer w;
  w.card(gum("gum"));
  w.wait(1);
  const Ref edit = w.card(gum("spoilt"));
  w.put("", Withdrawn{edit});
  CHECK(shelf_of(all_of({w.log})).cards.at("gum").name == "gum");
}

TEST_CASE("what was laid out for a batch is no edit of the shelf") {
  Writer w;
  w.put("7f3a91c2", LaidOut{gum("gum")});
  CHECK(shelf_of(all_of({w.log})).cards.empty());
}

}
