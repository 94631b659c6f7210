// Names in one cell, and their amounts in another.
#include "notes/notes.hpp"

using namespace notes_rig;

namespace {

const std::string head = "Name,Pigment,Pigment amount,Binder,Binder amount\nSky,";

const std::vector<Said> three_of_blue{{"pb29", SaidIn::g, 3}}, six_of_gum{{"gum_12", SaidIn::g, 6}};

}

TEST_CASE("an amount in both cells counts once") {
  for (const char* row :
       {"PB29,3 g,6 g of gum 1:2,6 g", "PB29,3 g,gum 1:2 (6 g),6000 mg", "PB29,3 g,6 g of gum 1:2,",
        "PB29,3 g,6 g of gum 1:2,-", "PB29,3 g,6 g,6 g", "3 g of PB29,3 g,gum 1:2,6 g",
        "3 g PB29,3,6 gum 1:2,6 g"}) {
    INFO(row);
    const Understood notes = Notes().read(head + row + "\n");
    CHECK(notes.unread.empty());
    CHECK(recipe(notes.recipes.at(0)).pigments == three_of_blue);
    CHECK(recipe(notes.recipes.at(0)).liquids == six_of_gum);
    CHECK(recipe(notes.recipes.at(0)).note.empty());
  }
  const Understood sum =
      Notes().read(head + "2 g PB29 + 1 g PW6,3 g,4 g gum 1:2 + 2 g honey,6 g\n");
  CHECK(sum.unread.empty());
  CHECK(recipe(sum.recipes.at(0)).pigments ==
        std::vector<Said>{{"pb29", SaidIn::g, 2}, {"pw6", SaidIn::g, 1}});
  CHECK(recipe(sum.recipes.at(0)).liquids.size() == 2);
}

TEST_CASE("several names, and as many amounts beside them") {
  const Understood notes = Notes().read("Name,Pigments,Weights,Medium,Medium drops\n"
                                        "Sky,PB29 + PW6,3 g + 1 g,gum 1:2 and honey,20 and 2\n"
                                        "Sea,PB29 + PW6,3 g,gum 1:2,20\n");
  CHECK(recipe(notes.recipes.at(0)).pigments ==
        std::vector<Said>{{"pb29", SaidIn::g, 3}, {"pw6", SaidIn::g, 1}});
  CHECK(recipe(notes.recipes.at(0)).liquids ==
        std::vector<Said>{{"gum_12", SaidIn::drops, 20, "dropper"},
                          {"honey_pure", SaidIn::drops, 2, "dropper"}});
  REQUIRE(notes.unread.size() == 2);
  for (const Unread& unread : notes.unread) CHECK(is(unread, "B3", NotesSay::amount_missing, true));
}

TEST_CASE("two amounts of one binder are said, and stand in the note") {
  for (const char* other : {"7 g", "6 drops", "0", "none"}) {
    INFO(other);
    const Understood notes = Notes().read(head + "PB29,3 g,6 g of gum 1:2," + other + "\n");
    REQUIRE(notes.unread.size() == 1);
    CHECK(is(notes.unread[0], "E2", NotesSay::amount_otherwise, false));
    CHECK(notes.unread[0].why.args == words::Args{"D2"});
    CHECK(notes.recipes.at(0).whole);
    CHECK(recipe(notes.recipes.at(0)).liquids.empty());
    CHECK(recipe(notes.recipes.at(0)).note ==
          std::string("Binder: 6 g of gum 1:2; Binder amount: ") + other);
  }
}

TEST_CASE("two amounts of one pigment leave the row out; of several, one more is noted") {
  const Understood notes =
      Notes().read(head + "3 g PB29,4 g,6 g,\nSea,2 g PB29 + 1 g PW6,5 g,6 g,\n");
  REQUIRE(notes.unread.size() == 2);
  CHECK(is(notes.unread[0], "C2", NotesSay::amount_otherwise, true));
  CHECK(is(notes.unread[1], "C3", NotesSay::amount_otherwise, false));
  CHECK(recipe(notes.recipes.at(1)).pigments.size() == 2);
  CHECK(recipe(notes.recipes.at(1)).note == "Pigment: 2 g PB29 + 1 g PW6; Pigment amount: 5 g");
}

TEST_CASE("what is no amount beside amounts of their own is noted") {
  const Understood notes = Notes().read(head + "3 g PB29,heaped,6 g of gum 1:2,see left\n");
  REQUIRE(notes.unread.size() == 2);
  CHECK(is(notes.unread[0], "C2", NotesSay::amount_none, false));
  CHECK(is(notes.unread[1], "E2", NotesSay::amount_none, false));
  CHECK(recipe(notes.recipes.at(0)).pigments == three_of_blue);
  CHECK(recipe(notes.recipes.at(0)).liquids == six_of_gum);
  CHECK(
      recipe(notes.recipes.at(0)).note ==
      "Pigment: 3 g PB29; Pigment amount: heaped; Binder: 6 g of gum 1:2; Binder amount: see left");
}

TEST_CASE("one binder cell that cannot be read spoils no other row") {
  const Understood notes =
      Notes().read(head + "PB29,3 g,gum 1:2,6 g\nSea,PB29,3 g,6 g of gum 1:7,\n"
                          "Bay,PB29,3 g,gum 1:2,6 g\n");
  REQUIRE(notes.unread.size() == 1);
  CHECK(is(notes.unread[0], "D3", NotesSay::name_unknown, false));
  CHECK(notes.unread[0].text == "gum 1:7");
  CHECK(recipe(notes.recipes.at(1)).note == "Binder: 6 g of gum 1:7");
  for (const std::size_t row : {0u, 2u}) CHECK(recipe(notes.recipes.at(row)).liquids == six_of_gum);
}

TEST_CASE("an amount of a binder that is not named is of the usual one, or of the one asked for") {
  Notes notes;
  CHECK(recipe(notes.read(head + "PB29,3 g,,6 g\n").recipes.at(0)).liquids == six_of_gum);
  notes.cards.push_back(liquid("mine", session::CardKind::binder, "House", {.gum = 1, .water = 3}));
  notes.how.binder = "mine";
  const Understood mine = notes.read(head + "PB29,3 g,,6 g\nSea,PB29,3 g,gum 1:2,6 g\n");
  CHECK(mine.unread.empty());
  CHECK(recipe(mine.recipes.at(0)).liquids == std::vector<Said>{{"mine", SaidIn::g, 6}});
  CHECK(recipe(mine.recipes.at(1)).liquids == six_of_gum);
  const Understood odd = notes.read(head + "PB29,3 g,,some\nSea,PB29,3 g,none,6 g\n");
  REQUIRE(odd.unread.size() == 2);
  CHECK(is(odd.unread[0], "E2", NotesSay::amount_none, false));
  CHECK(is(odd.unread[1], "E3", NotesSay::amount_of_what, false));
  CHECK(recipe(odd.recipes.at(0)).note == "Binder amount: some");
  CHECK(recipe(odd.recipes.at(1)).note == "Binder: none; Binder amount: 6 g");
}

TEST_CASE("a binder that is not on the shelf is said to be that") {
  const Understood notes = Notes().read(head + "PB29,3 g,moon glue,6 g\nSea,PB29,3 g,gum 1:2,6 g\n"
                                               "Bay,PB29,3 g,5 g moon glue,\n"
                                               "Fen,PB29,3 g,PW6,6 g\n");
  REQUIRE(notes.unread.size() == 3);
  CHECK(is(notes.unread[0], "D2", NotesSay::name_unknown, false));
  CHECK(recipe(notes.recipes.at(0)).note == "Binder: moon glue; Binder amount: 6 g");
  CHECK(is(notes.unread[1], "D4", NotesSay::name_unknown, false));
  CHECK(is(notes.unread[2], "D5", NotesSay::name_pigment, false));
}

TEST_CASE("nothing of a liquid that is named stands in the note") {
  for (const char* nought : {"0", "0 g", "none"}) {
    INFO(nought);
    const Understood notes = Notes().read(head + "PB29,30 g,gum 1:2," + nought + "\n");
    CHECK(notes.unread.empty());
    CHECK(recipe(notes.recipes.at(0)).liquids.empty());
    CHECK(recipe(notes.recipes.at(0)).note ==
          std::string("Binder: gum 1:2; Binder amount: ") + nought);
  }
  const Understood within =
      Notes().read("Name,Pigment,Amount,Binder\nSky,PB29,3 g,6 g gum 1:2 + 0 g honey\n");
  CHECK(recipe(within.recipes.at(0)).liquids == six_of_gum);
  CHECK(recipe(within.recipes.at(0)).note == "Binder: 6 g gum 1:2 + 0 g honey");
  const Understood tall = Notes().read("Recipe,Ingredient,Amount\nSky,PB29,3 g\nSky,binder,0\n"
                                       "Sky,honey,a bit\n");
  CHECK(tall.recipes.at(0).whole);
  CHECK(recipe(tall.recipes.at(0)).note ==
        "Ingredient: binder; Amount: 0; Ingredient: honey; Amount: a bit");
  REQUIRE(tall.unread.size() == 1);
  CHECK(is(tall.unread[0], "C4", NotesSay::amount_no_size, false));
}

TEST_CASE("a short cell is kept in the note although its letters stand there in another") {
  const Understood notes = Notes().read("name,pigment,amount,note,x,y\nSky,PB29,3 g,pan 10,a,10\n");
  CHECK(recipe(notes.recipes.at(0)).note == "pan 10; x: a; y: 10");
}
