// Tables of old notes as recipes. All names and notes are invented.
#include "notes/notes.hpp"

using namespace notes_rig;

namespace {

const char* const german = "Farbe;Pigment;Menge;Binder;Honig;Datum;Bemerkung\n"
                           "Wehrblau;Kobaltblau;3,5 g;24 Tr.;2 Tr.;3.4.2019;klebt etwas\n"
                           "Ofenrot;Eisenoxid rot;¼ TL;12 Tropfen;-;;\n";

}

TEST_CASE("columns by headings in German, a row as a recipe") {
  const Understood notes = Notes().read(german);
  CHECK(roles(notes) == std::vector<Role>{Role::name, Role::pigment, Role::amount, Role::binder,
                                          Role::honey, Role::date, Role::note});
  CHECK(notes.layout.columns[2].of == 1u);
  CHECK(notes.layout.columns[2].decimal == Decimal::comma);
  CHECK(notes.unread.empty());
  REQUIRE(notes.recipes.size() == 2);
  const Brought& blue = notes.recipes[0];
  CHECK(blue.whole);
  CHECK(blue.row == 2);
  CHECK(blue.card.name == "Wehrblau");
  CHECK(blue.card.made_on == "2019-04-03");
  CHECK(recipe(blue).note == "klebt etwas");
  CHECK(recipe(blue).from == session::RecipeFrom::old_notes);
  CHECK(recipe(blue).pigments == std::vector<Said>{{"pb28", SaidIn::g, 3.5}});
  CHECK(recipe(blue).liquids == std::vector<Said>{{"gum_12", SaidIn::drops, 24, "dropper"},
                                                  {"honey_pure", SaidIn::drops, 2, "dropper"}});
  CHECK(recipe(notes.recipes[1]).pigments ==
        std::vector<Said>{{"pr101_red_oxide", SaidIn::spoons, 0.25, "teaspoon"}});
  REQUIRE(notes.cards.size() == 1); // honey as it comes from the jar
  CHECK(recipe_of(notes.cards[0]) == paint::Recipe{.honey = 1});
}

TEST_CASE("a recipe as it is said, and a spoon the shelf has not") {
  const Understood notes = Notes().read(
      "paint,pigments,binder\n"
      "Sky,a quarter teaspoon of titanium white and a tablespoon of ultramarine,3 mL gum 1:2\n");
  REQUIRE(notes.recipes.size() == 1);
  CHECK(notes.unread.empty());
  CHECK(recipe(notes.recipes[0]).pigments ==
        std::vector<Said>{{"pw6", SaidIn::spoons, 0.25, "teaspoon"},
                          {"pb29", SaidIn::spoons, 1, "tablespoon_metric"}});
  CHECK(recipe(notes.recipes[0]).liquids ==
        std::vector<Said>{{"gum_12", SaidIn::spoons, 0.6, "teaspoon"}});
  REQUIRE(notes.cards.size() == 1);
  CHECK(volume_of(notes.cards[0]).mL == 15);
}

TEST_CASE("one column a pigment, and one thing a row") {
  const Understood wide = Notes().read("Name,Ultramarine (g),Titanium white (g),Binder (drops)\n"
                                       "Sky,3,1,20\nDeep,4,,25\n");
  REQUIRE(wide.recipes.size() == 2);
  CHECK(wide.unread.empty());
  CHECK(recipe(wide.recipes[0]).pigments ==
        std::vector<Said>{{"pb29", SaidIn::g, 3}, {"pw6", SaidIn::g, 1}});
  CHECK(recipe(wide.recipes[1]).pigments.size() == 1);
  CHECK(recipe(wide.recipes[1]).liquids[0].amount == 25);
  const std::string beside = "Pigment,Grams,Binder,Binder amount\nPB29,5 g,gum water,";
  CHECK(recipe(Notes().read(beside + "3 tsp\n").recipes.at(0)).liquids.at(0).amount == 3);
  CHECK(Notes().read(beside + "6\n").unread.at(0).column == 3); // without a measure

  const Understood tall = Notes().read("Recipe,Ingredient,Amount\nSky,ultramarine,3 g\n"
                                       "Sky,binder,20 drops\nRed,red oxide,2 g\n,honey,1 drop\n");
  REQUIRE(tall.recipes.size() == 2);
  CHECK(tall.unread.empty());
  CHECK(recipe(tall.recipes[0]).liquids.size() == 1);
  CHECK(recipe(tall.recipes[1]).liquids[0].of == "honey_pure");
}

TEST_CASE("one thing a row: a paint made on another day is another recipe") {
  const Understood notes = Notes().read("Recipe,Ingredient,Amount,Made\n"
                                        "Sky,ultramarine,3 g,2019-03-01\n"
                                        "Sky,binder,20 drops,2019-03-01\n"
                                        "Sky,honey,1 drop,\n"
                                        "Sky,ultramarine,4 g,2019-04-09\n"
                                        "Sky,binder,25 drops,2019-04-09\n");
  REQUIRE(notes.recipes.size() == 2);
  CHECK(notes.recipes[0].card.made_on == "2019-03-01");
  CHECK(recipe(notes.recipes[0]).pigments == std::vector<Said>{{"pb29", SaidIn::g, 3}});
  CHECK(recipe(notes.recipes[0]).liquids.size() == 2);
  CHECK(notes.recipes[1].row == 5);
  CHECK(notes.recipes[1].card.made_on == "2019-04-09");
  CHECK(recipe(notes.recipes[1]).pigments == std::vector<Said>{{"pb29", SaidIn::g, 4}});
  CHECK(recipe(notes.recipes[1]).liquids.size() == 1);
}

TEST_CASE("without headings the cells tell") {
  const Understood notes = Notes().read("Sky,PB29,3 g,2019-04-03\nRust,PR102,2 g,2019-05-03\n");
  CHECK_FALSE(notes.layout.headings);
  CHECK(roles(notes) == std::vector<Role>{Role::name, Role::pigment, Role::amount, Role::date});
  REQUIRE(notes.recipes.size() == 2);
  CHECK(notes.recipes[0].row == 1);
  CHECK(notes.recipes[0].card.name == "Sky");
}

TEST_CASE("every cell that was not understood is named") {
  const Understood notes = Notes().read("name,pigment,amount,binder,date\n"
                                        "Sky,ultramarine,a bit,20 drops,2019-04-03\n"
                                        "Moss,frog green,3 g,20 drops,2019-04-03\n"
                                        "Clay,red earth,3 g,some,2031-01-01\n"
                                        "Pale,white,2 g,20 drops,\n"
                                        "Browns,,,,\n"
                                        "Odd,,3 g,20 drops,\n");
  REQUIRE(notes.unread.size() == 6);
  CHECK(is(notes.unread[0], "C2", NotesSay::amount_no_size, true));
  CHECK(is(notes.unread[1], "B3", NotesSay::name_unknown, true));
  CHECK(is(notes.unread[2], "D4", NotesSay::amount_none, false));
  CHECK(is(notes.unread[3], "E4", NotesSay::date_in_future, false));
  CHECK(is(notes.unread[4], "B5", NotesSay::name_of_many, true));
  CHECK(is(notes.unread[5], "C7", NotesSay::amount_of_what, true));
  CHECK(notes.passed == std::vector<std::size_t>{6});
  const Brought& clay = notes.recipes[2];
  CHECK(clay.whole);
  CHECK(recipe(clay).note == "binder: some; date: 2031-01-01");
  CHECK(clay.card.made_on.empty());
}

TEST_CASE("a range and a remark stand in the note as they were written") {
  const Understood notes = Notes().read("name,pigment,amount,binder\n"
                                        "Sky,ultramarine,3 g (fine),20-24 drops\n");
  const auto& sky = recipe(notes.recipes[0]);
  CHECK(sky.liquids[0].amount == 22);
  CHECK(sky.note == "amount: 3 g (fine); binder: 20-24 drops");
  CHECK(notes.unread.empty());
}

TEST_CASE("what is said of a column goes before any guess") {
  Notes notes;
  CHECK(notes.read("a,b,c\nSky,PB29,3\n").recipes[0].card.name == "Sky");
  notes.asked.columns[2] = {Role::amount, Unit::g};
  notes.asked.columns[0] = {Role::note, Unit::none};
  const Understood said = notes.read("a,b,c\nSky,PB29,3\n");
  CHECK(recipe(said.recipes[0]).pigments == std::vector<Said>{{"pb29", SaidIn::g, 3}});
  CHECK(said.recipes[0].card.name == "Ultramarine blue");
  CHECK(recipe(said.recipes[0]).note == "a: Sky");
  notes.asked.columns[7] = {Role::note, Unit::none};
  const auto table = table_of(*text_of("a,b,c\nSky,PB29,3\n"));
  const auto none = understood(*table, notes.cards, {}, notes.asked, notes.how);
  REQUIRE_FALSE(none);
  CHECK(none.error() == words::Error{NotesSay::column_not_there, {"H", "C"}});
}

TEST_CASE("amounts without a measure are parts, and parts go with nothing else") {
  const Understood notes = Notes().read("name,pigment,amount,binder\nSky,ultramarine,2,3 parts\n"
                                        "Mix,2 parts ultramarine + 1 g titanium white,,\n"
                                        "Sea,ultramarine,2,20 drops\n");
  CHECK(recipe(notes.recipes[0]).pigments == std::vector<Said>{{"pb29", SaidIn::parts, 2}});
  CHECK(recipe(notes.recipes[0]).liquids == std::vector<Said>{{"gum_12", SaidIn::parts, 3}});
  CHECK_FALSE(notes.recipes[1].whole);
  CHECK(recipe(notes.recipes[2]).liquids.empty());
  CHECK(recipe(notes.recipes[2]).note == "binder: 20 drops");
}

TEST_CASE("the same row is the same card, in any encoding and however it is understood") {
  const Notes notes;
  const auto ids = [](const Understood& read) {
    std::set<std::string> out;
    for (const Brought& brought : read.recipes) out.insert(brought.card.id);
    return out;
  };
  const auto first = ids(notes.read(german));
  CHECK(first.size() == 2);
  CHECK(ids(notes.read("\xEF\xBB\xBF" + std::string(german))) == first);
  const Understood twice =
      notes.read(std::string(german) + "Ofenrot;Eisenoxid rot;¼ TL;12 Tropfen;-;;\n");
  REQUIRE(twice.recipes.size() == 3);
  CHECK_FALSE(twice.recipes[2].whole);
  CHECK(twice.unread[0].why == words::Error{NotesSay::row_twice, {"3"}});
}

TEST_CASE("empty columns behind the last and blanks around a cell make no other card") {
  Notes notes;
  const Brought first = notes.read("name,pigment,amount\nSky,PB29,3 g\n").recipes[0];
  const auto id = [&](std::string_view bytes) { return notes.read(bytes).recipes[0].card.id; };
  CHECK(id("name,pigment,amount,\nSky,PB29,3 g,\n") == first.card.id);
  CHECK(id("name,pigment,amount,,\n Sky ,PB29 ,3 g, ,\n") == first.card.id);
  CHECK(id("name,pigment,amount\nSky,PB29,4 g\n") != first.card.id);
}

TEST_CASE("a recipe is known by the id that it was once brought with") {
  Notes notes;
  const char* const rows = "name,pigment,amount,\nSky,PB29,3 g,\n";
  Brought once = notes.read(rows).recipes[0];
  once.card.id = "375023705061"; // of its cells with the empty one behind them
  notes.cards.push_back(once.card);
  CHECK(notes.read(rows).recipes[0].card == once.card);
}

TEST_CASE("a pigment nobody knows gets a card where that is asked for") {
  Notes notes;
  notes.how.new_pigments = true;
  notes.how.mine = true;
  const Understood read = notes.read("name,pigment,amount\nMoss,frog green,3 g\n");
  REQUIRE(read.recipes.size() == 1);
  CHECK(read.recipes[0].whole);
  CHECK(recipe(read.recipes[0]).mine);
  REQUIRE(read.cards.size() == 1);
  CHECK(read.cards[0].name == "frog green");
  CHECK(recipe(read.recipes[0]).pigments[0].of == read.cards[0].id);
}

TEST_CASE("a card that is known is used as it is, whatever became of it") {
  Notes notes;
  notes.how.new_pigments = true;
  const char* const rows = "name,pigment,amount,honey\n,frog green,3 g,2 drops\n";
  const session::Card renamed{"notes_froggreen", "Pond green",
                              session::PigmentCard{"", 0, {.g_per_mL = 5}}};
  notes.cards.push_back(renamed);
  notes.how.away = {liquid("honey_pure", session::CardKind::honey, "Honey", {.honey = 1})};
  const Understood read = notes.read(rows);
  CHECK(read.cards.empty());
  CHECK(read.recipes[0].card.name == "Pond green");
  CHECK(recipe(read.recipes[0]).pigments[0].of == "notes_froggreen");
  CHECK(recipe(read.recipes[0]).liquids[0].of == "honey_pure");
  std::swap(notes.cards.back(), notes.how.away[0]);
  const Understood other = notes.read(rows);
  CHECK(other.cards.empty());
  CHECK(other.recipes[0].card.name == "Pond green");
}

TEST_CASE("a spoon that was put away keeps its size") {
  Notes notes;
  notes.how.spoons = SpoonsOf::us;
  notes.how.away = {{"teaspoon_us", "small spoon", session::SpoonCard{{4, 0.1}}}};
  std::erase_if(notes.cards, [](const session::Card& card) { return card.id == "teaspoon"; });
  const Understood read = notes.read("name,pigment,amount\nSky,PB29,2 mL\n");
  CHECK(read.cards.empty());
  CHECK(recipe(read.recipes[0]).pigments ==
        std::vector<Said>{{"pb29", SaidIn::spoons, 0.5, "teaspoon_us"}});
}

TEST_CASE("no other pigment is taken for one that was renamed or put away") {
  const char* const rows = "name,pigment,amount\nSky,Cobalt blue,2 g\n";
  const auto pb28 = [](const session::Card& card) { return card.id == "pb28"; };
  Notes notes;
  notes.cards.push_back({"a1", "Cobalt blue violet", session::PigmentCard{"", 0, {.g_per_mL = 4}}});
  const auto own = std::find_if(notes.cards.begin(), notes.cards.end(), pb28);
  REQUIRE(own != notes.cards.end());
  own->name = "Weir sky";
  CHECK(recipe(notes.read(rows).recipes[0]).pigments[0].of == "pb28");
  notes.how.away = {*own};
  std::erase_if(notes.cards, pb28);
  const Understood read = notes.read(rows);
  CHECK_FALSE(read.recipes[0].whole);
  REQUIRE_FALSE(read.unread.empty());
  CHECK(read.unread[0].why.what == words::NotesSay::name_put_away);
}

TEST_CASE("gum water goes by its strength, whatever it is called") {
  Notes notes;
  notes.cards.push_back(
      liquid("own_13", session::CardKind::binder, "House", {.gum = 2, .water = 6}));
  const auto of = [&](const std::string& name) {
    const Understood read =
        notes.read("name,pigment,amount,binder\nSky,PB29,3 g,6 g " + name + "\n");
    const auto& liquids = recipe(read.recipes.at(0)).liquids;
    return liquids.empty() ? std::string() : liquids[0].of;
  };
  for (const char* name : {"gum 1:3", "Gummi 1:3", "gum arabic 1 : 3", "Bindemittel 1:3"})
    CHECK(of(name) == "own_13");
  CHECK(of("Gummi arabicum 1:2") == "gum_12");
  CHECK(of("gum 1:7").empty());
  CHECK(of("honey 1:3").empty());
}

TEST_CASE("a pigment of the workshop's own goes before the catalogue's") {
  Notes notes;
  notes.cards.push_back({"a1", "Weir white", session::PigmentCard{"PW6", 0, {.g_per_mL = 4}}});
  notes.own = {"a1"};
  const Understood read = notes.read("name,pigment,amount\nPale,white,2 g\nNew,PW 6,2 g\n");
  CHECK(recipe(read.recipes[0]).pigments[0].of == "a1");
  CHECK(recipe(read.recipes[1]).pigments[0].of == "a1");
}

TEST_CASE("an amount beside two liquids is of neither") {
  const Understood notes = Notes().read("name,pigment,amount,binder,amount\n"
                                        "Sky,PB29,3 g,gum 1:2 and honey,20 drops\n"
                                        "Sea,PB29,3 g,gum 1:2,20 drops\n");
  REQUIRE(notes.unread.size() == 1);
  CHECK(is(notes.unread[0], "D2", NotesSay::amount_missing, false));
  CHECK(recipe(notes.recipes[0]).liquids.empty());
  CHECK(recipe(notes.recipes[0]).note == "binder: gum 1:2 and honey; amount: 20 drops");
  CHECK(recipe(notes.recipes[1]).liquids ==
        std::vector<Said>{{"gum_12", SaidIn::drops, 20, "dropper"}});
}

TEST_CASE("amounts without a measure are said to be taken for parts") {
  const Understood notes = Notes().read("name,pigment,amount,binder\nSky,ultramarine,2,3 parts\n"
                                        "Sea,ultramarine,2 parts,3\nRed,red oxide,2 g,3 drops\n");
  REQUIRE(notes.unread.size() == 2);
  CHECK(is(notes.unread[0], "C2", NotesSay::amount_as_parts, false));
  CHECK(notes.unread[0].why == words::Error{NotesSay::amount_as_parts, {"C"}});
  CHECK(is(notes.unread[1], "D3", NotesSay::amount_as_parts, false));
}

TEST_CASE("a pigment of which the cell for its amount says none is not one part of it") {
  const Understood notes = Notes().read("name,pigment,amount,binder\nSky,ultramarine,,20 drops\n"
                                        "Sea,ultramarine,0,20 drops\nRed,0 g red oxide,,3 drops\n"
                                        "Mix,1 g PB29 + 2 g PW6,,3 drops\nSnow,PW6,2 g,\n");
  REQUIRE(notes.unread.size() == 3);
  CHECK(is(notes.unread[0], "C2", NotesSay::amount_missing, true));
  CHECK(is(notes.unread[1], "C3", NotesSay::amount_missing, true));
  CHECK(is(notes.unread[2], "B4", NotesSay::amount_missing, true));
  CHECK(notes.recipes[3].whole);
}

TEST_CASE("a newer reading goes by name and date, and without a date by its pigments") {
  Notes notes;
  notes.how.mine = true;
  const std::string head = "name,pigment,amount,binder,date\n";
  const auto dated =
      notes.read(head + "Sky,PB29,3 g,some,2019-04-03\nSky,PB29,4 g,some,2019-04-03\n");
  const auto undated = notes.read(head + "Sea,PB29,3 g,some,\n");
  for (const Understood* one : {&dated, &undated})
    for (const Brought& brought : one->recipes) notes.cards.push_back(brought.card);
  notes.how.mine = false;
  const auto only = [&](const std::string& row) { return notes.read(head + row).recipes[0]; };
  const Brought second = only("Sky,PB29,4 g,20 drops,2019-04-03\n");
  CHECK(second.older == dated.recipes[1].card.id);
  CHECK(recipe(second).mine);
  CHECK(only("Sky,PB29,5 g,20 drops,2019-04-03\n").older == dated.recipes[0].card.id);
  CHECK(only("Sky,PB29,4 g,20 drops,2019-04-04\n").older.empty());
  CHECK(only("Sky,PB29,3 g,some,2019-04-30\n").older == dated.recipes[0].card.id);
  CHECK(only("Sea,PB29,3 g,20 drops,\n").older == undated.recipes[0].card.id);
  CHECK(only("Sea,PB29,4 g,20 drops,\n").older.empty());
  // What was mended back: the earlier card was put away, and takes its place again.
  notes.how.away = {second.card};
  CHECK(only("Sky,PB29,4 g,20 drops,2019-04-03\n").older == dated.recipes[1].card.id);
  notes.how.away.clear();
  const Understood more =
      notes.read(head + "Sky,PB29,3 g,some,2019-04-03\nSky,PB29,4 g,some,2019-04-03\n"
                        "Sky,PB29,5 g,20 drops,2019-04-03\n");
  CHECK(more.recipes[2].older.empty()); // both older ones are still made by a row
}

TEST_CASE("too many pigments, too much, powder in drops") {
  const Understood notes = Notes().read("name,pigment\n"
                                        "Mud,1 g PB29 + 1 g PB28 + 1 g PW6 + 1 g PW4 + 1 g PY42\n"
                                        "Heap,6000 g PB29\nWet,3 drops PB29\n");
  REQUIRE(notes.unread.size() == 3);
  CHECK(is(notes.unread[0], "B2", NotesSay::pigments_too_many, true));
  CHECK(is(notes.unread[1], "B3", NotesSay::amount_too_large, true));
  CHECK(is(notes.unread[2], "B4", NotesSay::amount_powder_in_drops, true));
}

TEST_CASE("ten thousand recipes") {
  std::string bytes = "name,pigment,amount,binder\n";
  for (int n = 0; n < 10'000; ++n)
    bytes += "Paint " + std::to_string(n) + ",ultramarine,3 g,20 drops\n";
  const Understood notes = Notes().read(bytes);
  CHECK(notes.recipes.size() == 10'000);
  CHECK(notes.unread.empty());
}
