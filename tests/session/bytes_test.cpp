#include "make.hpp"
#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

#include <random>

namespace bytes_test {

using namespace session;

// RFC 3720, appendix B.4, and the usual "123456789" of CRC catalogues.
TEST_CASE("CRC-32C agrees with the published vectors") {
  CHECK(crc32c("123456789") == 0xE3069283);
  CHECK(crc32c(std::string(32, '\0')) == 0x8A9136AA);
  CHECK(crc32c(std::string(32, '\xFF')) == 0x62A8AB43);
  std::string rising;
  for (int i = 0; i < 32; ++i) rising += static_cast<char>(i);
  CHECK(crc32c(rising) == 0x46DD794E);
  CHECK(crc32c("6789", crc32c("12345")) == crc32c("123456789"));
}

TEST_CASE("CRC-32C by tables is CRC-32C by the processor, of any length, from anywhere") {
  CHECK(crc32c_by_tables("123456789") == 0xE3069283);
  std::mt19937 random(7);
  std::string bytes;
  for (int i = 0; i < 300; ++i) bytes += static_cast<char>(random());
  for (std::size_t from = 0; from < 9; ++from)
    for (std::size_t length = 0; from + length <= bytes.size(); length += 1 + length / 7) {
      const auto part = std::string_view(bytes).substr(from, length);
      CHECK(crc32c(part, 77) == crc32c_by_tables(part, 77));
    }
}

TEST_CASE("hex goes both ways and refuses what is not eight lower-case digits") {
  CHECK(to_hex(0x0012abcd) == "0012abcd");
  CHECK(from_hex("0012abcd") == 0x0012abcdu);
  CHECK_FALSE(from_hex("0012ABCD"));
  CHECK_FALSE(from_hex("12abcd"));
  CHECK_FALSE(from_hex("0012abcg"));
}

namespace {

Photo judged_dot(const SpecksSeen& seen) {
  Photo photo{std::string(64, 'c'), "jpg", PhotoOf::dot};
  photo.specks = seen;
  return photo;
}

Card warned(Card card) {
  std::get<PigmentCard>(card.facts).cautions = {"cobalt", "cancer", "a word of a later program"};
  return card;
}

Card recipe(double per_spoons) {
  RecipeCard recipe;
  recipe.pigments = {{"pb28", SaidIn::spoons, 1, "tbsp"}, {"pw6", SaidIn::parts, 2.5}};
  recipe.liquids = {{"gum", SaidIn::g, 6.9}, {"honey", SaidIn::drops, 6, "bulb"}};
  if (per_spoons > 0) recipe.per_spoons = per_spoons, recipe.per_with = "tbsp";
  if (per_spoons <= 0) recipe.per_g = 10, recipe.batch = "7f3a91c2", recipe.mine = true;
  recipe.from = per_spoons > 0 ? RecipeFrom::old_notes : RecipeFrom::batch;
  return {"sky", "Ferry sky", recipe};
}

std::vector<Event> one_of_each() {
  Began later;
  later.session = "c41e08d5";
  later.part = 1;
  later.from = 41;
  later.device = "a83f";
  later.local = "2026-11-25T15:32:00+01:00";
  return {
      later,
      LaidOut{make::pigment("pb28", 4.2, 30)},
      LaidOut{warned(make::pigment("own", 4.2, 30))},
      LaidOut{make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2, .honey = 0.25})},
      LaidOut{make::dropper("bulb", 0.048, 0.004, CardKind::binder)},
      LaidOut{make::paint_of("b0", 4.2)},
      LaidOut{make::slab("glass", 900)},
      LaidOut{make::muller("foot", 38)},
      LaidOut{make::pan("half", 1.7)},
      LaidOut{Card{"deep", "deep pan", PanCard{{1.7, 0.05}, 8.5}}},
      LaidOut{recipe(1)},
      LaidOut{recipe(0)},
      LaidOut{Card{"empty", "Nothing yet", RecipeCard{}}},
      PutAway{"gum"},
      Bought{"pb28", 100},
      Bought{"pb28", 50, 21.5, "crowns", "L 77", "2026-11-25"},
      Bought{"pb28", 12.5, 0.0},
      StockWeighed{"pb28", 63.4},
      StockWeighed{"gum", 98.6, 21.4},
      Making{MakingStep::gum_in,
             "jar5",
             Making::Start{"gum", {.gum = 60, .water = 120.5, .honey = 15}, 8, "tsp"},
             0,
             0,
             0,
             {{"gum_arabic", 60}}},
      Making{MakingStep::gum_in, "jar6", Making::Start{"", {.gum = 60}}},
      Making{MakingStep::steep, "jar5"},
      Making{MakingStep::sweeten, "jar5", {}, 0, 0, 0, {{"honey", 15}}},
      Making{MakingStep::preserve, "jar5", {}, 3},
      Making{MakingStep::preserve, "jar5", {}, 0, 0.4},
      Making{MakingStep::thickened, "jar5", {}, 0, 6, 108, {{"gum_arabic", 6}}},
      Making{MakingStep::dried, "jar5", {}, 0, 12, 120},
      Making{MakingStep::given_up, "jar6"},
      Making{MakingStep::dose, "jar5", {}, 12},
      Making{MakingStep::dose, "jar5", {}, 0, 0.4},
      Planned{},
      Planned{6, "half", {{"pb28", 22.1}, {"gum", {}}, {"honey", 0.4}}},
      Planned{0, "", {}, "sky"},
      Planned{0, "", {{"pb28", {}, 3}, {"pr101", {}, 0.5}}},
      CautionsSeen{},
      Opened{"Blue again", "7f3a91c2"},
      Found{State::dry},
      Poured{1, 6, "half", {}},
      Poured{2, 2, "half", 1.25},
      PanWeighed{2, 4.31},
      Verdict{Became::wont_rewet, 0},
      Verdict{Became::mould, 3},
      Noted{"settles overnight"},
      Lost{Place::jar, {1, 3.5}, "7f3a91c3"},
      Trouble{TroubleKind::separates},
      Opened{"Blue “first” / \\ 🎨"},
      RoomSet{21.5, 0.45, true},
      Added{"pb28", Unit::g, 12, ""},
      Added{"gum", Unit::drops, 5, "bulb"},
      Added{"gum", Unit::spoons, 0.25, "tsp"},
      Felt{Feel::too_sticky, By::muller},
      StageBegan{Stage::resting},
      GoesOn{},
      Discarded{},
      Dot{Specks::few},
      Trouble{TroubleKind::gelling},
      BottleWeighed{"gum", 81.4},
      CountLost{"gum"},
      Moved{Place::slab, Place::jar, {}},
      Moved{Place::jar, Place::pans, {1, 12.5}},
      Lost{Place::slab, {0.07, {}}},
      Weighed{Place::jar, 153.2, 120},
      AsBefore{{"c41e08d5", 4}},
      SetAside{{"c41e08d5", 6}},
      Confirmed{{"c41e08d5", 6}, 84.3},
      Told{"{\"a\": [1, 2]}"},
      Withdrawn{{"c41e08d5", 6}},
      Corrected{{"c41e08d5", 6}, Corrected::Says(Felt{Feel::right, By::knife}), -120000},
      Corrected{{"c41e08d5", 7}, Corrected::Says(Added{"gum", Unit::drops, 2, "bulb"}), {}},
      Corrected{{"c41e08d5", 8}, {}, 0},
      Corrected{{"c41e08d5", 3}, Corrected::Says(Verdict{Became::full, 2}), {}},
      Corrected{{"c41e08d5", 9}, Corrected::Says(Moved{Place::slab, Place::jar, {0.5, {}}}), {}},
      Photo{std::string(64, 'a'), "jpg", PhotoOf::dot},
      judged_dot(SpecksSeen{Specks::few}),
      judged_dot(SpecksSeen{Specks::none, Specks::many}),
      Photo{std::string(64, 'b'), "png", PhotoOf::swatch,
            Measured{0x2E4F9A, 38.25, 8, -42.5, 0.6, 0.9, 1.1}},
      Photo{std::string(64, 'd'), "jpg", PhotoOf::swatch,
            Measured{0x2E4F9A, 38.25, 8, -42.5, 0.6, 0.9, 1.1,
                     DoubtParts{0.05, 0.04, 0.125, 0.3, -0.2, 0.6}}},
      Gone{9, "torn"},
      Gathered{},
      Closed{},
      ClockJumped{-3600000, "2026-11-25T14:32:00+00:00"},
      Left{}};
}

}

TEST_CASE("every kind of event reads back as it was written") {
  std::uint32_t before = 0;
  std::uint64_t n = 0;
  for (const Event& event : one_of_each()) {
    const Line line{n++, 1000, 1795617120000, "7f3a91c2", event};
    const auto bytes = encode(line, before);
    REQUIRE(bytes);
    const std::string text = bytes->bytes.substr(0, bytes->bytes.size() - 1);
    const auto sealed = unseal(text);
    REQUIRE(sealed);
    CHECK(sealed->before == before);
    CHECK(is_intact(*sealed));
    const auto back = decode(text);
    REQUIRE_MESSAGE(back, text);
    CHECK(*back == line);
    before = bytes->check;
  }
}

TEST_CASE("a kind or a word from a later version is kept as unknown") {
  const auto kind = decode(R"({"n":3,"t":1,"at":2,"e":"sniffed","batch":"b","as":"sour"})");
  REQUIRE(kind);
  CHECK(std::get<Unknown>(kind->event) == Unknown{"sniffed", R"({"as":"sour"})"});
  const auto word = decode(R"({"n":3,"t":1,"at":2,"e":"felt","as":"silky","by":"knife"})");
  REQUIRE(word);
  CHECK(std::get<Unknown>(word->event).e == "felt");
  const auto says =
      decode(R"({"n":3,"t":1,"at":2,"e":"corrected","line":["a",1],"says":{"e":"closed"}})");
  REQUIRE(says);
  CHECK(std::get<Unknown>(says->event).e == "corrected");
}

TEST_CASE("what a line lacks or says wrongly is named") {
  using Say = words::SessionSay;
  const auto fault = [](std::string fields) {
    const auto line = decode("{\"n\":3,\"t\":1,\"at\":2," + fields + "}");
    REQUIRE_FALSE(line);
    return line.error();
  };
  CHECK(fault(R"("e":"felt","by":"knife")") == words::Error{Say::field_missing, {"as", ""}});
  CHECK(fault(R"("e":"added","of":"x","g":"12")").what == Say::field_not_a_number);
  CHECK(fault(R"("e":"added","of":"x","g":-1)").what == Say::field_out_of_range);
  CHECK(fault(R"("e":"added","of":"x","g":1e99)").what == Say::field_out_of_range);
  CHECK(fault(R"("e":"added","of":"x","drops":1)").args[0] == "with");
  CHECK(fault(R"("e":"room","celsius":20,"humidity":55)").what == Say::field_out_of_range);
  CHECK(fault(R"("e":"withdrawn","line":["a",-1])").what == Say::field_not_a_line);
  CHECK(fault(R"("e":"photo","sha256":"abc","ending":"jpg","of":"dot")").what ==
        Say::field_not_a_photo);
  CHECK(fault(R"("e":"corrected","line":["a",1],"says":{"e":"felt","by":"knife"})").args[0] ==
        "as");
  CHECK(fault(R"("e":"closed","t":5)").what == Say::field_twice);
  CHECK(decode("{").error().what == Say::line_not_an_object);
  CHECK(decode("[1]").error().what == Say::line_not_an_object);
  CHECK(decode("").error().what == Say::line_not_an_object);
  CHECK(decode(std::string(longest_line, ' ')).error().what == Say::line_too_long);
  const std::string deep(20, '[');
  CHECK(decode("{\"a\":" + deep + std::string(20, ']') + "}").error().what == Say::line_too_deep);
}

TEST_CASE("a field that stands twice is found among very many, and only in its own object") {
  std::string many, inner;
  for (int i = 0; i < 1000; ++i) many += ",\"k" + std::to_string(i) + "\":0";
  for (int i = 0; i < 100; ++i) inner += (i > 0 ? ",\"k" : "\"k") + std::to_string(i) + "\":0";
  const std::string start = R"({"n":3,"t":1,"at":2,"e":"closed")" + many;
  CHECK(decode(start + "}"));
  CHECK(decode(start + ",\"x\":{" + inner + "},\"y\":{" + inner + "}}"));
  for (const char* twice : {"\"k0\":1", "\"k31\":1", "\"k999\":1", "\"t\":1"})
    CHECK(decode(start + "," + twice + "}").error().what == words::SessionSay::field_twice);
  CHECK(decode(start + ",\"x\":{" + inner + ",\"k99\":0}}").error().what ==
        words::SessionSay::field_twice);
}

TEST_CASE("text that is not UTF-8 never reaches a line") {
  CHECK(encode({0, 0, 0, "b", Opened{"caf\xC3"}}, 0).error().what ==
        words::SessionSay::text_not_utf8);
  CHECK(is_utf8("café 🎨"));
  CHECK_FALSE(is_utf8("caf\xC3"));
  CHECK(encode({0, 0, 0, "b", Opened{std::string(70000, 'a')}}, 0).error().what ==
        words::SessionSay::line_too_long);
}

TEST_CASE("text is cut between characters") {
  CHECK(first_characters("aé🎨b", 3) == "aé🎨");
  CHECK(first_characters("ab", 3) == "ab");
  CHECK(first_characters("", 3).empty());
}

}
