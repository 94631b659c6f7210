// bring, as somebody types it.
#include "commands/tool.hpp"
#include "words/languages.hpp"
#include "words/say.hpp"

namespace bring_test {

using namespace tool;

namespace {

const std::string demo = std::string(SLABSIDE_ROOT) + "/demo/notes.csv";

struct Notes : Studio {
  Ran bring(const std::string& file, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"bring", file, "--studio", name, "--fallback", ""};
    words.insert(words.end(), more.begin(), more.end());
    return run(words);
  }
  std::string file(const std::string& bytes) const {
    rig::put(path / "notes.csv", bytes);
    return (path / "notes.csv").string();
  }
};

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
    ++found;
  return found;
}

}

TEST_CASE("thirty recipes are shown, and taken when that is asked for") {
  const Notes s;
  const Ran shown = s.bring(demo);
  CHECK(shown.status == 0);
  CHECK(has(shown.out, "notes.csv: 32 rows, 7 columns; UTF-8, semicolons between cells"));
  CHECK(has(shown.out, "amount of B"));
  CHECK(has(shown.out, "between cells, decimal comma"));
  CHECK(has(shown.out, "Bone black 1.25 g; Gum 1:2 16 drops, Honey 2 drops; 2019-05-22"));
  CHECK(has(shown.out, "With --take 28 recipes would be taken"));
  CHECK(s.files().empty());

  const Ran taken = s.bring(demo, {"--take"});
  CHECK(taken.status == 0);
  CHECK(has(taken.out, "28 recipes taken into"));
  const auto files = s.files();
  REQUIRE(files.size() == 1);
  CHECK(times(files.begin()->second, "\"is_a\":\"recipe\"") == 28);
  CHECK(times(files.begin()->second, "\"from\":\"notes\"") == 28);
  CHECK(has(files.begin()->second, "\"made_on\":\"2019-04-03\""));
  CHECK(has(files.begin()->second, "\"note\":\"Gum water: 20-24 drops; How it went: gummy"));
  CHECK(run({"check", s.name}).status == 0);
}

TEST_CASE("every cell that was not understood is named by its place") {
  const Ran shown = Notes().bring(demo);
  for (const char* cell : {"E14", "B24", "C26", "F32"}) CHECK(has(shown.out, cell));
  CHECK(has(shown.out, "“a bit”"));
  CHECK(has(shown.out, "“frog green” is not on the shelf"));
  CHECK(has(shown.out, "“heaped tsp” is no level spoon"));
}

TEST_CASE("an amount is that of the column that its heading names, and that is said") {
  const Notes s;
  const std::string file = s.file("Name;Pigment;Bindemittel;Bindemittelmenge;Pigmentmenge\n"
                                  "Sky;PB29;6 g gum 1:3;6 g;3 g\n"
                                  "Sea;PB29;gum 1:2;?;3 g\n");
  const Ran shown = s.bring(file);
  CHECK(has(shown.out, "“Bindemittelmenge”  amount of C  by its heading"));
  CHECK(has(shown.out, "Ultramarine blue 3 g; Gum 1:3 6 g\n"));
  CHECK(has(shown.out, "D3  “?”  no amount  → it stands in the recipe's note"));
  const Ran said = s.bring(file, {"--column", "D=amount:drops"});
  CHECK(has(said.out, "amount of C  as you say; its heading says of what"));
}

TEST_CASE("cells are quoted as the language has it") {
  const Notes s;
  const std::string file = s.file("Name,Pigment,Menge\nMoos,frog green,3 g\n");
  words::say_in(words::Language::german);
  const Ran shown = s.bring(file);
  words::say_in(words::Language::english);
  CHECK(has(shown.out, "„Pigment“"));
  CHECK_FALSE(has(shown.out, "“Pigment”"));
}

TEST_CASE("the same file twice is said, and not doubled") {
  const Notes s;
  REQUIRE(s.bring(demo, {"--take"}).status == 0);
  const Ran again = s.bring(demo, {"--take"});
  CHECK(again.status == 0);
  CHECK(has(again.out, "There is nothing new in it"));
  CHECK(s.files().size() == 1);
  // A row more is one recipe more.
  const Ran more =
      s.bring(s.file(rig::bytes_of(demo) + "New one;PB29;3 g;20 drops;;;\n"), {"--take"});
  CHECK(has(more.out, "1 recipe taken into"));
  CHECK(has(more.out, "There already: 28 recipes"));
  CHECK(s.files().size() == 2);
}

TEST_CASE("what is said of columns, measures and cards counts") {
  const Notes s;
  const std::string file = s.file("a,b,c,d\nSky,PB29,1.250,20\nMoss,frog green,2.500,30\n");
  CHECK(has(s.bring(file).out, "--decimal"));
  const Ran said =
      s.bring(file, {"--column", "C=amount:g", "--column=D=binder:drops", "--decimal", "point",
                     "--binder", "gum_13", "--new-pigments", "--mine", "--take"});
  CHECK(said.status == 0);
  CHECK(has(said.out, "2 recipes taken into"));
  const std::string bytes = s.files().begin()->second;
  CHECK(has(bytes, "\"g\":1.25"));
  CHECK(has(bytes, "\"of\":\"gum_13\",\"drops\":20"));
  CHECK(has(bytes, "\"name\":\"frog green\""));
  CHECK(times(bytes, "\"mine\":true") == 2);
}

TEST_CASE("what cannot be brought is named, and nothing is kept") {
  const Notes s;
  const auto fails = [&](const std::string& bytes, const std::string& why) {
    const Ran ran = s.bring(s.file(bytes), {"--take"});
    INFO(ran.out, ran.err);
    CHECK(ran.status == 1);
    CHECK(has(ran.out + ran.err, why));
  };
  fails("", "nothing in that file");
  fails("PK\x03\x04", "save the sheet with the recipes as CSV");
  fails(std::string(100'000'000, ','), "at most 16 MB");
  fails("name,pigment\nSky,\"PB29\nand on and on", "cell B2");
  fails("one,two\nthree,four\n", "No row of it is a recipe");
  CHECK(s.bring((s.path / "none").string()).status == 1);
  CHECK(s.bring(s.name).status == 1); // a folder
  const std::string good = s.file("name,pigment,amount\nSky,PB29,3 g\n");
  CHECK(s.bring(good, {"--column", "C"}).status == 1);
  CHECK(s.bring(good, {"--column", "Z=amount"}).status == 1);
  CHECK(s.bring(good, {"--column", "C=amount", "--column", "3=note"}).status == 1);
  CHECK(s.bring(good, {"--decimal", "dot"}).status == 1);
  CHECK(has(s.bring(good, {"--binder", "glue"}).err, "gum_12"));
  CHECK(run({"bring", good, "--studio", (s.path / "not there").string()}).status == 1);
  CHECK(s.files().empty());
}

TEST_CASE("a recipe that the shelf says otherwise stays as it is") {
  const Notes s;
  const std::string file = s.file("name,pigment,amount\nSky,PB29,3 g\n");
  REQUIRE(s.bring(file, {"--take"}).status == 0);
  const Ran other = s.bring(file, {"--take", "--column", "C=amount", "--mine"});
  CHECK(has(other.out, "there, but otherwise"));
  CHECK(s.files().size() == 1);
}

TEST_CASE("a row that was mended takes the place of its older reading") {
  const Notes s;
  const std::string head = "name,pigment,amount,binder,date,note\n";
  const std::string rest = "Sky,PB29,4 g,20 drops,2019-05-03,\n";
  REQUIRE(
      s.bring(s.file(head + "Sky,PB29,3 g,some,2019-04-03,sticky\n" + rest), {"--take"}).status ==
      0);
  const std::string mended = s.file(head + "Sky,PB29,3 g,22 drops,2019-04-03,sticky\n" + rest);
  const Ran shown = s.bring(mended);
  CHECK(has(shown.out, "read anew"));
  CHECK(has(shown.out, "With --take 1 recipe would be read anew"));
  const Ran taken = s.bring(mended, {"--take"});
  CHECK(taken.status == 0);
  CHECK(has(taken.out, "Read anew: 1 recipe, in place of what was brought before."));
  CHECK(has(taken.out, "There already: 1 recipe"));
  CHECK(s.files().size() == 2);
  CHECK(has(s.bring(mended, {"--take"}).out, "There is nothing new in it"));
  const std::string note = s.file(head + "Sky,PB29,3 g,22 drops,2019-04-03,good\n" + rest);
  CHECK(has(s.bring(note, {"--take"}).out, "Read anew: 1 recipe"));
  CHECK(has(s.bring(note, {"--take"}).out, "There is nothing new in it"));
}

TEST_CASE("a disk that takes nothing is said") {
  const Notes s;
  const Ran ran = s.bring(demo, {"--take", "--fault", "fail-from:1"});
  CHECK(ran.status == 1);
  CHECK_FALSE(ran.err.empty());
  CHECK_FALSE(has(ran.out, "taken into"));
}

}
