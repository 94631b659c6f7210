// What somebody noted of an amount.
#include "notes/amount.hpp"
#include "notes/dates.hpp"
#include "words/calendar.hpp"
#include "words/notes_says.hpp"

#include <doctest/doctest.h>

using namespace notes;
using words::NotesSay;

namespace {

const CellFormat open_format;

std::optional<NotedAmount> read(std::string_view cell, Decimal decimal = Decimal::unknown) {
  const auto amount = amount_in(cell, {decimal});
  INFO(std::string(cell));
  REQUIRE(amount);
  return *amount;
}

void is(std::string_view cell, double value, Unit unit) {
  const auto amount = read(cell);
  INFO(std::string(cell));
  REQUIRE(amount);
  CHECK(amount->value == doctest::Approx(value));
  CHECK(amount->unit == unit);
}

words::Sentence fault(std::string_view cell) {
  const auto amount = amount_in(cell, open_format);
  INFO(std::string(cell));
  REQUIRE_FALSE(amount);
  return amount.error().what;
}

}

TEST_CASE("spoons, drops, grams and parts, in English and German") {
  is("1/4 tsp", 0.25, Unit::teaspoon);
  is("¼ TL", 0.25, Unit::teaspoon);
  is("2 Tbsp", 2, Unit::tablespoon);
  is("2 EL", 2, Unit::tablespoon);
  is("12 drops", 12, Unit::drops);
  is("12 Tr.", 12, Unit::drops);
  is("12Tropfen", 12, Unit::drops);
  is("3,5 g", 3.5, Unit::g);
  is("3.5g", 3.5, Unit::g);
  is("1.234,5 g", 1234.5, Unit::g);
  is("1,234.5 g", 1234.5, Unit::g);
  is("1'000 mg", 1, Unit::g);
  is("0.25 kg", 250, Unit::g);
  is("3 mL", 3, Unit::mL);
  is("2 parts", 2, Unit::parts);
  is("1 Teil", 1, Unit::parts);
  is("7", 7, Unit::none);
}

TEST_CASE("fractions and numbers in words") {
  is("1 1/2 tsp", 1.5, Unit::teaspoon);
  is("1½ TL", 1.5, Unit::teaspoon);
  is("half a teaspoon", 0.5, Unit::teaspoon);
  is("a quarter teaspoon", 0.25, Unit::teaspoon);
  is("three quarters of a tea spoon", 0.75, Unit::teaspoon);
  is("one and a half tablespoons", 1.5, Unit::tablespoon);
  is("ein halber Teelöffel", 0.5, Unit::teaspoon);
  is("anderthalb EL", 1.5, Unit::tablespoon);
  is("zwei Tropfen", 2, Unit::drops);
  is("1 level tsp", 1, Unit::teaspoon);
  is("1 gestr. TL", 1, Unit::teaspoon);
  is("ca. 10 drops", 10, Unit::drops);
  is("~10 drops", 10, Unit::drops);
}

TEST_CASE("a range is read as its middle") {
  for (const char* cell : {"10-14 drops", "10 – 14 Tropfen", "10 to 14 drops", "10 bis 14 Tr."}) {
    is(cell, 12, Unit::drops);
    CHECK(read(cell)->up_to == 14);
  }
  CHECK(fault("14-10 drops") == words::Sentence(NotesSay::amount_range_falls));
}

TEST_CASE("nothing of it, and what stands beside it in brackets") {
  for (const char* cell : {"", " ", "-", "–", "none", "keine", "0", "0 g", "n/a"})
    CHECK_FALSE(read(cell));
  CHECK(read("½")->value == 0.5); // a sign alone is an amount
  CHECK(read("3 g (fine)")->remark == "fine");
}

TEST_CASE("a spoon of the workshop's own goes by its name") {
  const CellFormat format{Decimal::unknown, {{"spoon_7", key_of("brass scoop")}}};
  const auto amount = amount_in("2 Brass scoop", format);
  REQUIRE(amount);
  CHECK((*amount)->tool == "spoon_7");
  CHECK((*amount)->unit == Unit::tool);
}

TEST_CASE("what is no amount says why") {
  CHECK(fault("a bit") == words::Sentence(NotesSay::amount_no_size));
  CHECK(fault("1 Prise") == words::Sentence(NotesSay::amount_no_size));
  CHECK(fault("1 heaped tsp") == words::Sentence(NotesSay::amount_heaped));
  CHECK(fault("-3 g") == words::Sentence(NotesSay::amount_negative));
  CHECK(fault("5 %") == words::Sentence(NotesSay::amount_percent));
  CHECK(fault("3 blobs") == words::Sentence(NotesSay::amount_unit_unknown));
  CHECK(fault("3 g + 2 drops") == words::Sentence(NotesSay::amount_and_more));
  CHECK(fault("1/0 tsp") == words::Sentence(NotesSay::number_none));
  CHECK(fault("3.4.2019") == words::Sentence(NotesSay::number_none));
  CHECK(fault("as always") == words::Sentence(NotesSay::amount_none));
  CHECK(fault("?") == words::Sentence(NotesSay::amount_none));
  CHECK(fault("99999999999999999999 g") == words::Sentence(NotesSay::number_none));
}

TEST_CASE("a comma or a point that may be either is settled by the column") {
  CHECK(fault("1,234 g") == words::Sentence(NotesSay::number_two_ways));
  CHECK(read("1,234 g", Decimal::comma)->value == doctest::Approx(1.234));
  CHECK(read("1,234 g", Decimal::point)->value == doctest::Approx(1234));
  CHECK(read("1.234 g", Decimal::comma)->value == doctest::Approx(1234));
  CHECK(read("0,125 g")->value == doctest::Approx(0.125));
  CHECK(decimal_of({"12 g", "1,234 g", "3,5 g"}) == Decimal::comma);
  CHECK(decimal_of({"12 g", "1.234 g", "3.5 g"}) == Decimal::point);
  CHECK(decimal_of({"3,5 g", "3.5 g"}) == Decimal::unknown);
  CHECK(decimal_of({"12 g", "1,234 g"}) == Decimal::unknown);
  CHECK(decimal_of({"1.234.567"}) == Decimal::comma);
}

TEST_CASE("amounts beside names, one or several") {
  const auto names = [](std::string_view cell) {
    const auto named = named_in(cell, open_format);
    INFO(std::string(cell));
    REQUIRE(named);
    return *named;
  };
  const NotedAmount quarter{0.25, {}, Unit::teaspoon}, spoon{1, {}, Unit::tablespoon},
      three{3.5, {}, Unit::g};
  CHECK(names("a quarter teaspoon of white and a tablespoon of blue") ==
        std::vector<Named>{{quarter, "white"}, {spoon, "blue"}});
  CHECK(names("Ultramarin 3,5 g + ¼ TL Weiß") ==
        std::vector<Named>{{three, "Ultramarin"}, {quarter, "Weiß"}});
  CHECK(names("White (1/4 tsp)") == std::vector<Named>{{quarter, "White"}});
  CHECK(names("PB 29") == std::vector<Named>{{std::nullopt, "PB 29"}});
  CHECK(names("gum 1:2") == std::vector<Named>{{std::nullopt, "gum 1:2"}});
  CHECK(names("12 drops gum 1:2")[0].name == "gum 1:2");
  CHECK(names("gum 1:2, 12 drops")[0].name == "gum 1:2");
}

TEST_CASE("units in headings") {
  CHECK(unit_in("Menge (g)") == Unit::g);
  CHECK(unit_in("Honig [Tropfen]") == Unit::drops);
  CHECK(unit_in("binder, drops") == Unit::drops);
  CHECK(unit_in("Pigment") == Unit::none);
}

TEST_CASE("dates") {
  const auto date = [](std::string_view cell, DateOrder order = DateOrder::unknown) {
    const auto days = date_in(cell, order);
    return days ? words::date_of(*days) : std::string("none");
  };
  for (const char* cell : {"2019-04-03", "3.4.2019", "03.04.19", "3. April 2019", "April 3, 2019",
                           "3 Apr 2019", "2019/04/03", "2019-04-03 14:00", "43558"})
    CHECK(date(cell) == "2019-04-03");
  CHECK(date("3. März 2019") == "2019-03-03");
  CHECK(date("3/4/2019") == "none");
  CHECK(date("3/4/2019", DateOrder::day_first) == "2019-04-03");
  CHECK(date("3/4/2019", DateOrder::month_first) == "2019-03-04");
  CHECK(date("4/23/2019") == "2019-04-23");
  CHECK(date("31.2.2019") == "none");
  CHECK(date("12") == "none");
  CHECK(date("soon") == "none");
  CHECK(date_order_of({"3/4/2019", "4/23/2019"}) == DateOrder::month_first);
  CHECK(date_order_of({"23/4/2019", "4/23/2019"}) == DateOrder::unknown);
}
