// sheet, labels and table, as somebody types them.
#include "commands/tool.hpp"

#include <algorithm>

namespace paper_test {

using namespace tool;

namespace {

struct Played : Studio {
  std::string out(const std::string& name) const { return (path / name).string(); }
  Played() { REQUIRE(play(small_batch).status == 0); }
};

}

TEST_CASE("a sheet takes the photos of its batch along, small, and names one that is gone") {
  const Studio s;
  REQUIRE(s.play(small_batch).status == 0);
  const std::string photo = SLABSIDE_ROOT "/tests/studio/pictures/base.jpg";
  REQUIRE(s.read({"photo", photo, "--batch", "last", "--of", "swatch"}).status == 0);
  const Ran ran = s.read({"sheet", "--batch", "last"});
  REQUIRE(ran.status == 0);
  CHECK(has(ran.out, "src=\"data:image/jpeg;base64,/9j/")); // FF D8 FF
  CHECK_FALSE(has(ran.out, "src=\"photos/"));
  const auto kept = std::filesystem::directory_iterator(s.path / "photos")->path();
  rig::put(kept, rig::bytes_of(SLABSIDE_ROOT "/tests/studio/pictures/clear.png"));
  const std::string other = s.read({"sheet", "--batch", "last"}).out;
  CHECK(has(other, "is not the photo that was taken"));
  CHECK_FALSE(has(other, "<img"));
  std::filesystem::remove_all(s.path / "photos");
  const std::string gone = s.read({"sheet", "--batch", "last"}).out;
  CHECK(has(gone, "is not in the studio any more"));
  CHECK_FALSE(has(gone, "<img"));
}

TEST_CASE("a sheet is printed, or made as a new file") {
  const Played s;
  const Ran printed = s.read({"sheet", "--batch", "Evening blue"});
  CHECK(printed.status == 0);
  CHECK(printed.err == "");
  CHECK(has(printed.out, "<!DOCTYPE html>"));
  CHECK(has(printed.out, "Evening blue"));
  CHECK(has(printed.out, "20 Nov 2026, 14:02")); // by the clock of the session, in no other zone
  const Ran made = s.read({"sheet", "--batch", "last", "--out", s.out("a.html")});
  CHECK(made.status == 0);
  CHECK(has(made.out, "a.html"));
  CHECK(rig::bytes_of(s.path / "a.html") == printed.out);
}

TEST_CASE("no file is ever written over, nor a link followed") {
  const Played s;
  rig::put(s.path / "a.html", "mine");
  std::filesystem::create_symlink(s.path / "nowhere", s.path / "link.html");
  for (const char* verb : {"sheet", "labels", "table"})
    for (const char* name : {"a.html", "link.html"}) {
      const Ran ran = s.read({verb, "--batch", "last", "--out", s.out(name)});
      CHECK(ran.status == 1);
      CHECK(has(ran.err, "there already"));
      CHECK(has(ran.err, name));
    }
  CHECK(rig::bytes_of(s.path / "a.html") == "mine");
  CHECK(!std::filesystem::exists(s.path / "nowhere"));
}

TEST_CASE("a place that cannot be written to is named") {
  const Played s;
  const Ran ran = s.read({"sheet", "--batch", "last", "--out", s.out("no/such/folder/a.html")});
  CHECK(ran.status == 1);
  CHECK(has(ran.err, "no/such/folder/a.html"));
}

TEST_CASE("a batch that is not there, not named or named twice gets words") {
  const Played s;
  REQUIRE(s.play("at 2026-11-21T14:02:00+01:00\nseed 8\ntap pigment pb29\nwrite name Evening blue\n"
                 "tap weigh\ntype 10\ntap begin\n")
              .status == 0);
  for (const char* verb : {"sheet", "labels"}) {
    CHECK(has(s.read({verb}).err, "--batch"));
    CHECK(s.read({verb}).status == 1);
  }
  for (const char* verb : {"sheet", "labels", "table"}) {
    CHECK(has(s.read({verb, "--batch", "Rose"}).err, "Rose"));
    const Ran twice = s.read({verb, "--batch", "Evening blue"});
    CHECK(twice.status == 1);
    CHECK(has(twice.err, "More than one batch"));
    CHECK(twice.out == "");
  }
  CHECK(has(s.read({"table"}).out, "Evening blue"));
}

TEST_CASE("an empty studio has nothing to hand on, and says so") {
  const Studio s;
  for (const char* verb : {"sheet", "labels", "table"}) {
    const Ran ran = s.read({verb, "--batch", "last", "--out", (s.path / "a.html").string()});
    CHECK(ran.status == 1);
    CHECK(has(ran.err, "no batch in this studio"));
    CHECK(!std::filesystem::exists(s.path / "a.html"));
  }
  CHECK(has(s.read({"table"}).err, "no batch in this studio"));
}

TEST_CASE("labels are made as a page or as a drawing, of the size and number asked for") {
  const Played s;
  const Ran page = s.read({"labels", "--batch", "last", "--count", "3", "--mm", "50x30"});
  CHECK(page.status == 0);
  CHECK(has(page.out, "width=\"50\" height=\"30\""));
  CHECK(
      s.read({"labels", "--batch", "last", "--sheet", "letter", "--out", s.out("a.svg")}).status ==
      0);
  CHECK(rig::bytes_of(s.path / "a.svg").rfind("<svg ", 0) == 0);
  CHECK(has(rig::bytes_of(s.path / "a.svg"), "width=\"215.9mm\""));
  const Ran plain = s.read({"labels", "--batch", "last"});
  CHECK(s.read({"labels", "--batch", "last", "--line", ""}).out == plain.out);
}

TEST_CASE("labels that cannot be made are refused with what to say instead") {
  const Played s;
  const auto said = [&](const std::vector<std::string>& more) {
    std::vector<std::string> words{"labels", "--batch", "last"};
    words.insert(words.end(), more.begin(), more.end());
    const Ran ran = s.read(words);
    CHECK(ran.status == 1);
    CHECK(ran.out == "");
    return ran.err;
  };
  CHECK(has(said({"--mm", "0x0"}), "“0x0”"));
  CHECK(has(said({"--mm", "nan"}), "“nan”"));
  CHECK(has(said({"--mm", "400x21"}), "400x21"));
  CHECK(has(said({"--count", "0"}), "“0”"));
  CHECK(has(said({"--sheet", "a3"}), "“a3”"));
  CHECK(has(said({"--out", s.out("a.pdf")}), "a.pdf"));
  CHECK(has(said({"--count", "500", "--out", s.out("a.svg")}), "SVG"));
  CHECK(!std::filesystem::exists(s.path / "a.svg"));
}

TEST_CASE("all paints, a swatch card and a binder's labels are printed or made as new files") {
  const Played s;
  const Ran paints = s.read({"paints"});
  CHECK(paints.status == 0);
  CHECK(has(paints.out, "<!DOCTYPE html>"));
  CHECK(has(paints.out, "Evening blue"));
  CHECK(s.read({"paints", "--out", s.out("paints.html")}).status == 0);
  CHECK(s.read({"paints", "--out", s.out("paints.html")}).status == 1); // it is there already
  const Ran card = s.read({"card", "--batch", "last", "--sheet", "letter"});
  CHECK(card.status == 0);
  CHECK(has(card.out, "Evening blue"));
  CHECK(has(card.out, "width=\"215.9mm\""));
  CHECK(has(s.read({"card"}).err, "--batch"));
  CHECK(has(s.read({"card", "--batch", "last", "--sheet", "a3"}).err, "“a3”"));
  const Ran label = s.read({"labels", "--binder", "gum_12", "--count", "2"});
  CHECK(label.status == 0);
  CHECK(has(label.out, "1 gum, 2 water"));
}

TEST_CASE("a jar's label bears the drops of preservative that went in, as while it was made") {
  const Studio s;
  std::string script = "at 2026-12-03T14:02:00+01:00\nseed 7\ntap shelf\ntap kind_of binder\n"
                       "tap card gum_12_honey\ntap make_binder\ntap dose\ntype 6\n";
  for (const char* step : {"gum", "steep", "strain", "sweeten", "preserve", "jar"})
    script += std::string("tap step ") + step + "\nwait 24h\n";
  REQUIRE(s.play(script + "tap onto_shelf\n").status == 0);
  const Ran label = s.read({"labels", "--binder", "Gum and honey, jar 1", "--count", "2"});
  CHECK(label.err == "");
  REQUIRE(label.status == 0);
  for (const char* words : {">preservative: 6 drops<", " honey<", ">keep cold, until 3 March 2027<",
                            "width=\"60\" height=\"38\""})
    CHECK_MESSAGE(has(label.out, words), words);
}

TEST_CASE("labels of no binder, or of two things at once, are refused with what there is") {
  const Played s;
  const Ran none = s.read({"labels", "--binder", "Nobody's gum"});
  CHECK(none.status == 1);
  CHECK(none.out == "");
  CHECK(has(none.err, "On the shelf are"));
  CHECK(has(s.read({"labels", "--binder", "gum_12", "--batch", "last"}).err, "one of them"));
  CHECK(has(s.read({"labels", "--binder", "gum_12", "--out", s.out("a.svg")}).err, "a.svg"));
  const Studio empty;
  CHECK(has(empty.read({"paints"}).err, "No paint was made"));
}

TEST_CASE("a table has a row for each addition, or for each material") {
  const Played s;
  const Ran additions = s.read({"table"});
  CHECK(additions.status == 0);
  CHECK(has(additions.out, ",Evening blue,2026-11-20T14:02:"));
  CHECK(has(additions.out, "+01:00,"));
  CHECK(has(additions.out, ",withdrawn\r\n"));
  // Heads, the pigment, the helping and ten drops.
  CHECK(std::count(additions.out.begin(), additions.out.end(), '\n') == 13);
  const Ran totals = s.read({"table", "--totals", "--batch", "last"});
  CHECK(std::count(totals.out.begin(), totals.out.end(), '\n') == 3);
  CHECK(has(totals.out, ",binder,"));
}

namespace {

// What a page says: places of shapes are numbers too.
std::string text_of(const std::string& page) {
  std::string out;
  bool inside = false;
  for (const char c : page) {
    if (c == '<') inside = true;
    if (!inside) out += c;
    if (c == '>') inside = false;
  }
  return out;
}

}

TEST_CASE("of a recipe that is its maker's own no amount is handed on, unless asked for") {
  const Studio s;
  REQUIRE(s.play("at 2026-11-21T14:02:00+01:00\nseed 8\ntap pigment pb29\nwrite name Evening blue\n"
                 "tap weigh\ntype 12.3\ntap begin\ntap another\ntap amount weigh\ntap add gum_12\n"
                 "type 6.7\ntap pass\nwait 60\ntap pass\nwait 90\ntap pass\ntap gather\ntap close\n"
                 "tap keep_as_recipe\n")
              .status == 0);
  const std::vector<std::string> sheet{"sheet", "--batch", "last"}, table{"table"},
      labels{"labels", "--batch", "last"};
  CHECK(has(text_of(s.read(sheet).out), "12.3"));
  CHECK_FALSE(has(text_of(s.read(labels).out), " g "));
  std::string id;
  for (const auto& file : std::filesystem::directory_iterator(s.path / "sessions")) {
    const std::string bytes = rig::bytes_of(file.path());
    const std::size_t recipe = bytes.find("\"is_a\":\"recipe\""),
                      card = bytes.rfind("\"card\":\"", recipe);
    if (recipe != std::string::npos)
      id = bytes.substr(card + 8, bytes.find('"', card + 8) - card - 8);
  }
  REQUIRE(id != "");
  REQUIRE(s.play("at 2026-11-22T14:02:00+01:00\nseed 9\ntap shelf\ntap kind_of recipe\ntap card " +
                 id + "\ntap choice mine\ntap card_done\n")
              .status == 0);
  for (const auto& words : {sheet, labels}) {
    const Ran kept = s.read(words);
    CHECK(kept.status == 0);
    CHECK(has(kept.out, "Ultramarine"));
    const std::string text = text_of(kept.out);
    CHECK_FALSE(has(text, "12.3"));
    CHECK_FALSE(has(text, "6.7"));
    CHECK_FALSE(has(text, "to 10 g"));
  }
  const Ran none = s.read(table);
  CHECK(none.status == 1);
  CHECK(has(none.err, "--with-recipes"));
  CHECK(has(s.read({"table", "--with-recipes"}).out, "12.3"));
  CHECK(has(s.read({"sheet", "--batch", "last", "--with-recipes"}).out, "12.3"));
}

}
