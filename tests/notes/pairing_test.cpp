// Which amounts are of what, by the headings of a table.
#include "notes/notes.hpp"

using namespace notes_rig;

namespace {

std::vector<std::optional<std::size_t>> of_what(const Understood& notes) {
  std::vector<std::optional<std::size_t>> out;
  for (const Column& column : notes.layout.columns) out.push_back(column.of);
  return out;
}

const std::optional<std::size_t> none;
const std::vector<Said> three_of_blue{{"pb29", SaidIn::g, 3}}, six_of_gum{{"gum_12", SaidIn::g, 6}};

void is_blue_in_gum(const std::string& bytes) {
  INFO(bytes);
  const Understood notes = Notes().read(bytes);
  REQUIRE(notes.recipes.size() == 1);
  CHECK(notes.unread.empty());
  CHECK(recipe(notes.recipes[0]).pigments == three_of_blue);
  CHECK(recipe(notes.recipes[0]).liquids == six_of_gum);
}

}

TEST_CASE("a heading that says of what its amounts are goes before where they stand") {
  is_blue_in_gum("Name,Pigment,Binder,Pigment amount,Binder amount\nSky,PB29,gum 1:2,3 g,6 g\n");
  is_blue_in_gum("Name,Pigment,Binder,Binder amount,Pigment amount\nSky,PB29,gum 1:2,6 g,3 g\n");
  is_blue_in_gum("Name,Binder amount (g),Pigment,Pigment (g),Binder\nSky,6,PB29,3,gum 1:2\n");
  is_blue_in_gum(
      "Name,Pigment,How much pigment,Binder,How much binder\nSky,PB29,3 g,gum 1:2,6 g\n");
  is_blue_in_gum(
      "Name;Pigment;Bindemittel;Pigmentmenge;Bindemittelmenge\nSky;PB29;gum 1:2;3 g;6 g\n");
  is_blue_in_gum("Name;Bindemittel;Pigment;Bindermenge;Pigmentgewicht\nSky;gum 1:2;PB29;6 g;3 g\n");
  is_blue_in_gum("Name;Pigment;Bindemittel;Menge Bindemittel;Menge Pigment\n"
                 "Sky;PB29;gum 1:2;6 g;3 g\n");
  is_blue_in_gum("Name;Pigment;Bindemittel;Menge des Pigments;Menge des Bindemittels\n"
                 "Sky;PB29;gum 1:2;3 g;6 g\n");
}

TEST_CASE("names one after the other, then as many amounts, go together in the same order") {
  is_blue_in_gum("Name,Pigment,Binder,Amount,Amount\nSky,PB29,gum 1:2,3 g,6 g\n");
  is_blue_in_gum("Name,Pigment,Amount,Binder,Amount\nSky,PB29,3 g,gum 1:2,6 g\n");
  is_blue_in_gum("Name,Amount,Pigment,Amount,Binder\nSky,3 g,PB29,6 g,gum 1:2\n");
}

TEST_CASE("an amount goes with the names that bear its number") {
  const std::vector<Said> blend{{"pb29", SaidIn::g, 3}, {"pw6", SaidIn::g, 1}};
  for (const char* bytes :
       {"Name,Pigment 1,Pigment 2,Amount 1,Amount 2\nSky,PB29,PW6,3 g,1 g\n",
        "Name,Pigment 1,Pigment 2,Amount 2,Amount 1\nSky,PB29,PW6,1 g,3 g\n",
        "Name,Pigment1,Pigment2,Pigment2 amount,Pigment1 amount\nSky,PB29,PW6,1 g,3 g\n",
        "Name,Pigment A,Pigment B,Amount B,Amount A\nSky,PB29,PW6,1 g,3 g\n",
        "Name,Pigment,Pigment 2,Amount 2,Amount\nSky,PB29,PW6,1 g,3 g\n",
        "Name;1. Pigment;2. Pigment;2. Menge;1. Menge\nSky;PB29;PW6;1 g;3 g\n",
        "Name;Pigment 1;Pigment 2;Pigmentmenge 2;Pigmentmenge 1\nSky;PB29;PW6;1 g;3 g\n"}) {
    INFO(bytes);
    const Understood notes = Notes().read(bytes);
    CHECK(recipe(notes.recipes.at(0)).pigments == blend);
    CHECK(notes.unread.empty());
  }
}

TEST_CASE("an amount goes with the names whose very heading it bears") {
  const std::vector<Said> blend{{"pb29", SaidIn::g, 3}, {"pw6", SaidIn::g, 1}};
  for (const char* bytes : {"Name,First,Second,First (g),Second (g)\nSky,PB29,PW6,3,1\n",
                            "Name,First,Second,Second (g),First (g)\nSky,PB29,PW6,1,3\n",
                            "Name,Body,Tint,Amount of tint,Amount of body\nSky,PB29,PW6,1 g,3 g\n",
                            "Name;Basis;Zusatz;Zusatzmenge;Basismenge\nSky;PB29;PW6;1 g;3 g\n"}) {
    INFO(bytes);
    const Understood notes = Notes().read(bytes);
    CHECK(recipe(notes.recipes.at(0)).pigments == blend);
    CHECK(notes.unread.empty());
  }
}

TEST_CASE("an amount that somebody says to be one goes by its heading too") {
  Notes said;
  said.asked.columns[3] = {Role::amount, Unit::g};
  const Understood binder =
      said.read("Name,Pigment,Binder,Binder x amount,Pigment amount\nSky,PB29,gum 1:2,6,3 g\n");
  CHECK(of_what(binder) == std::vector<std::optional<std::size_t>>{none, none, none, 2, 1});
  CHECK(recipe(binder.recipes.at(0)).liquids == six_of_gum);
  // No column names that liquid, so it goes by its kind.
  const Understood honey = said.read("Name,Pigment,Pigment amount,Honey\nSky,PB29,3 g,2\n");
  CHECK(honey.layout.columns[3].role == Role::honey);
  CHECK(recipe(honey.recipes.at(0)).pigments == three_of_blue);
}

TEST_CASE("a weight of the whole is of none of its parts") {
  const Understood notes = Notes().read("Name,Pigment,Total weight,Amount,Binder,Binder amount\n"
                                        "Sky,PB29,9 g,3 g,gum 1:2,6 g\n");
  CHECK(notes.layout.columns[2].role == Role::note);
  CHECK(recipe(notes.recipes.at(0)).note == "Total weight: 9 g");
  CHECK(recipe(notes.recipes.at(0)).pigments == three_of_blue);
}

TEST_CASE("numbers that count rows or tell of something else are no amounts") {
  for (const char* bytes :
       {"No.,Name,Pigment,g,Binder,g\n1,Sky,PB29,3,gum 1:2,6\n2,Sea,PB28,2,gum 1:2,5\n",
        "Page,Name,Pigment,Amount,Binder,Amount\n12,Sky,PB29,3 g,gum 1:2,6 g\n",
        "Name,Stars,Pigment,g,Binder,g,Jar\nSky,4,PB29,3,gum 1:2,6,12\n",
        "1,Sky,PB29,3 g,gum 1:2,6 g\n2,Sea,PB28,2 g,gum 1:2,5 g\n"}) {
    INFO(bytes);
    const Understood notes = Notes().read(bytes);
    CHECK(notes.unread.empty());
    CHECK(notes.recipes.at(0).card.name == "Sky");
    CHECK(recipe(notes.recipes.at(0)).pigments == three_of_blue);
    CHECK(recipe(notes.recipes.at(0)).liquids == six_of_gum);
    CHECK_FALSE(recipe(notes.recipes.at(0)).note.empty());
  }
}

TEST_CASE("no heading stands under a recipe") {
  const Understood notes = Notes().read("Sky,PB29,3 g\nSea,PW6,1 g\nBay,honey,some\n");
  CHECK_FALSE(notes.layout.headings);
  CHECK(notes.recipes.at(0).card.name == "Sky");
  CHECK(Notes().read("2019,,\nName,Pigment,Amount\nSky,PB29,3 g\n").layout.headings == 1u);
}

TEST_CASE("without headings half of the cells tell amounts, where they have a measure") {
  const Understood notes = Notes().read("Sky,PB29,3 g,gum 1:2,6 g\nSea,PB29,3 g,gum 1:2,some\n");
  CHECK(recipe(notes.recipes.at(0)).liquids == six_of_gum);
  REQUIRE(notes.unread.size() == 1);
  CHECK(is(notes.unread[0], "E2", NotesSay::amount_none, false));
}

TEST_CASE("why an amount is taken for that of another column") {
  const Understood notes =
      Notes().read("Name,Pigment 1,Pigment 2,Amount 2,Amount 1,Binder,Binder amount,Honey kind,x\n"
                   "Sky,PB29,PW6,1 g,3 g,gum 1:2,6 g,honey 1:1,2 g\n");
  const auto why = [&](std::size_t at) { return words::message(notes.layout.columns[at].why); };
  CHECK(why(3) == "by its heading; of what, by the number in its heading");
  CHECK(why(6) == "by its heading");
  CHECK(why(8) == "1 of its 1 cells are amounts; of what, by where it stands");
  Notes said;
  said.asked.columns[1] = {Role::amount, Unit::g};
  const Understood asked = said.read("Pigment,Pigment amount\nPB29,3\n");
  CHECK(words::message(asked.layout.columns[1].why) == "as you say; its heading says of what");
}

TEST_CASE("a heading counts where a cell among its amounts is none") {
  const Understood notes = Notes().read("Name,Pigment,Pigment amount,Binder,Binder amount\n"
                                        "Sky,PB29,3 g,gum 1:2,6 g\nSea,PB29,3 g,gum 1:2,?\n");
  CHECK(notes.layout.columns[4].role == Role::amount);
  CHECK(notes.layout.columns[4].of == 3u);
  CHECK(recipe(notes.recipes.at(0)).liquids == six_of_gum);
  REQUIRE(notes.unread.size() == 1);
  CHECK(is(notes.unread[0], "E3", NotesSay::amount_none, false));
  CHECK(recipe(notes.recipes.at(1)).liquids.empty());
  CHECK(recipe(notes.recipes.at(1)).note == "Binder: gum 1:2; Binder amount: ?");

  const Understood card = Notes().read("Name,Ultramarine (g),Titanium white (g)\nSky,3,some\n");
  REQUIRE(card.unread.size() == 1); // and not a recipe without its white
  CHECK(is(card.unread[0], "C2", NotesSay::amount_none, true));
}

TEST_CASE("headings of notes in German") {
  for (const char* heading : {"Hinweis", "Hinweise", "Notiz", "Notizen", "Anmerkung"}) {
    INFO(heading);
    const Understood notes =
        Notes().read(std::string(heading) + ";Pigment;Menge\nklebt;PB29;3 g\n");
    CHECK(notes.layout.columns[0].role == Role::note);
    CHECK(recipe(notes.recipes.at(0)).note == "klebt");
  }
}

TEST_CASE("of two columns with names of the paint the other stands in the note") {
  const Understood notes =
      Notes().read("Batch,Colour,Pigment,Amount,Made,Date\n12,Sky,PB29,3 g,3.4.2019,4.4.2019\n");
  CHECK(notes.recipes.at(0).card.name == "Sky");
  CHECK(notes.recipes.at(0).card.made_on == "2019-04-03");
  CHECK(recipe(notes.recipes.at(0)).note == "Batch: 12; Date: 4.4.2019");
}
