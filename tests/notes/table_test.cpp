// Bytes of any program, taken apart into rows.
#include "notes/table.hpp"
#include "words/notes_says.hpp"

#include <doctest/doctest.h>

using namespace notes;
using words::NotesSay;

namespace {

std::string wide(std::string_view ascii, bool little, bool marked) {
  std::string out = !marked ? "" : little ? "\xFF\xFE" : "\xFE\xFF";
  for (const char c : ascii) {
    if (!little) out += '\0';
    out += c;
    if (little) out += '\0';
  }
  return out;
}

Table table(std::string_view bytes) {
  const auto text = text_of(bytes);
  REQUIRE(text);
  const auto found = table_of(*text);
  REQUIRE(found);
  return *found;
}

std::vector<std::vector<std::string>> cells(std::string_view bytes) {
  std::vector<std::vector<std::string>> out;
  for (const Row& row : table(bytes).rows) out.push_back(row.cells);
  return out;
}

words::Error fault(std::string_view bytes) {
  const auto text = text_of(bytes);
  if (!text) return text.error();
  const auto found = table_of(*text);
  REQUIRE_FALSE(found);
  return found.error();
}

using Cells = std::vector<std::vector<std::string>>;

}

TEST_CASE("the same letters in any encoding") {
  const Cells expected{{"Farbe", "Menge"}, {"Weiß", "¼ TL"}};
  CHECK(cells("Farbe;Menge\nWeiß;¼ TL\n") == expected);
  CHECK(cells("\xEF\xBB\xBF"
              "Farbe;Menge\nWeiß;¼ TL\n") == expected);
  CHECK(cells("Farbe;Menge\nWei\xDF;\xBC TL\n") == expected);
  CHECK(table("Farbe;Menge\nWei\xDF;\xBC TL\n").encoding == Encoding::windows_1252);
  for (const bool little : {true, false})
    for (const bool marked : {true, false}) {
      const std::string bytes = wide("name;g\nblue;12\n", little, marked);
      CHECK(cells(bytes) == Cells{{"name", "g"}, {"blue", "12"}});
      CHECK(table(bytes).encoding == (little ? Encoding::utf16_le : Encoding::utf16_be));
    }
  // A pair of units, and half of one.
  CHECK(text_of(std::string_view("\xFF\xFE\x3C\xD8\xA8\xDF", 6))->utf8 == "🎨");
  CHECK(text_of("caf\x80\x93")->utf8 == "caf€“");
}

TEST_CASE("quotes, separators and line ends as RFC 4180 and the spreadsheets have them") {
  CHECK(cells("a,b\r\n\"1,5\",\"say \"\"hi\"\"\"\r\n") == Cells{{"a", "b"}, {"1,5", "say \"hi\""}});
  CHECK(cells("a,b\n\"two\nlines\",2") == Cells{{"a", "b"}, {"two\nlines", "2"}});
  CHECK(cells("a\tb\rc\td\r") == Cells{{"a", "b"}, {"c", "d"}});
  CHECK(cells("a|b\n1|2\n") == Cells{{"a", "b"}, {"1", "2"}});
  CHECK(cells("sep=;\na;b,c\n") == Cells{{"a", "b,c"}});
  CHECK(cells("a,b\n5\" pan,\"x\" y\n") == Cells{{"a", "b"}, {"5\" pan", "x y"}});
  CHECK(cells("only\none\ncolumn\n") == Cells{{"only"}, {"one"}, {"column"}});
  const Table unequal = table("a,b,c\n1\n1,2,3,4\n,,\n5,6,7\n");
  CHECK(unequal.columns == 4);
  CHECK(unequal.rows.size() == 4);
  CHECK(unequal.rows.back().number == 5); // the empty row is counted
}

TEST_CASE("decimal commas do not make a comma the separator") {
  const Table t = table("Farbe;Pigment;Honig\nBlau;3,5 g;1,2\nRot;2,0 g;0,8\n");
  CHECK(t.separator == Separator::semicolon);
  CHECK(t.columns == 3);
  CHECK(table("name,notes\na,\"sticky; less; honey\"\nb,fine\n").separator == Separator::comma);
}

TEST_CASE("what is no table is named") {
  CHECK(fault("").what == words::Sentence(NotesSay::file_empty));
  CHECK(fault(" \r\n\n").what == words::Sentence(NotesSay::file_empty));
  CHECK(fault("PK\x03\x04rest").what == words::Sentence(NotesSay::file_workbook));
  CHECK(fault(std::string_view("\x7F"
                               "ELF\x02\x01\x01\0\0\0\0\0\x03\0>\0",
                               16))
            .what == words::Sentence(NotesSay::file_not_text));
  CHECK(fault(std::string(100'000'000, 'a')).what == words::Sentence(NotesSay::file_too_large));
  CHECK(fault(std::string(2'000'000, ',')).what == words::Sentence(NotesSay::table_too_large));
  CHECK(fault("a,b\n1,\"never" + std::string(40'000, 'x') + "\n") ==
        words::Error{NotesSay::table_quote_open, {"B2"}});
  CHECK(fault("a,b\n\"to the end") == words::Error{NotesSay::table_quote_open, {"A2"}});
  CHECK(fault("a,b\n" + std::string(40'000, 'x')).what ==
        words::Sentence(NotesSay::table_cell_too_long));
}

TEST_CASE("one zero byte is one letter that is none") {
  const std::string bytes =
      "name,amount\nblue,1" + std::string(1, '\0') + "2 g\n" + std::string(200, 'x') + ",3 g\n";
  CHECK(cells(bytes)[1][1] == "1\xEF\xBF\xBD"
                              "2 g");
}

TEST_CASE("cells by the names that spreadsheets give them") {
  CHECK(cell_name(2, 7) == "C7");
  CHECK(column_name(25) == "Z");
  CHECK(column_name(26) == "AA");
  for (const std::size_t column : {0u, 25u, 26u, 701u})
    CHECK(column_named(column_name(column)) == column);
  CHECK(column_named("3") == 2u);
  CHECK(column_named("c") == 2u);
  for (const char* no : {"", "0", "C3", "?", "ABCD"}) CHECK_FALSE(column_named(no));
}
