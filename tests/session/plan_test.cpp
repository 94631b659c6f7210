// A batch that knows what it was meant to be.
#include "make.hpp"
#include "session/bytes.hpp"
#include "session/plan.hpp"
#include "words/session_says.hpp"

#include <doctest/doctest.h>

namespace plan_test {

using namespace session;
using doctest::Approx;

namespace {

make::Writer opened() {
  make::Writer w;
  w.put("b", Opened{"Blue"});
  for (const Card& card :
       {make::pigment("blue", 4, 30), make::pigment("red", 5, 20),
        make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}),
        make::liquid("honey", CardKind::honey, {.honey = 1}),
        make::liquid("water", CardKind::water, {.water = 1}), make::pan("half", 1.7)})
    w.put("b", LaidOut{card});
  return w;
}

Planned of_both() {
  return {6, "half", {{"blue", 20}, {"red", 10}, {"gum", {}}, {"honey", 0.6}, {"water", 3}}};
}

std::string asked(const make::Writer& w) {
  const Batch batch = make::folded({w.log}, "b");
  std::string out;
  for (const ToCome& one : to_come(batch))
    out += one.card->id + (one.g ? " " + words::invariant(*one.g, 2) : "") +
           (one.there_g > 0 ? " more; " : "; ");
  return out;
}

}

TEST_CASE("what is still to come: pigments first, then what goes in beside them") {
  make::Writer w = opened();
  CHECK(asked(w) == ""); // an old batch: no plan
  w.put("b", of_both());
  CHECK(asked(w) == "blue 20.00; red 10.00; honey 0.60; water 3.00; ");
  w.put("b", Added{"blue", Unit::g, 20, ""});
  w.put("b", Added{"red", Unit::g, 4, ""});
  CHECK(asked(w) == "red 6.00 more; honey 0.48; water 2.40; "); // to as much as is there
  w.put("b", Added{"red", Unit::g, 6, ""});
  w.put("b", Added{"gum", Unit::g, 9, ""});
  CHECK(asked(w) == "honey 0.60; water 3.00; ");
  w.put("b", Added{"honey", Unit::g, 0.58, ""});
  w.put("b", Added{"water", Unit::g, 1, ""});
  CHECK(asked(w) == "water 2.00 more; ");
  w.put("b", Gathered{});
  CHECK(asked(w) == "");
}

TEST_CASE("less pigment than planned is as much as there is, once it is wet") {
  make::Writer w = opened();
  w.put("b", of_both());
  w.put("b", Added{"blue", Unit::g, 10, ""});
  w.put("b", Added{"red", Unit::g, 5, ""});
  w.put("b", Added{"gum", Unit::g, 4, ""});
  CHECK(asked(w) == "honey 0.30; water 1.50; ");
}

TEST_CASE("a pigment of which nothing was weighed is asked for until the paint is judged") {
  make::Writer w = opened();
  w.put("b", of_both());
  w.put("b", Added{"blue", Unit::g, 20, ""});
  w.put("b", Added{"gum", Unit::g, 9, ""});
  CHECK(asked(w) == "red 10.00; honey 0.40; water 2.00; ");
  w.put("b", Felt{Feel::too_sticky});
  CHECK(asked(w) == "red 10.00; honey 0.40; water 2.00; ");
  SUBCASE("by hand") { w.put("b", Felt{Feel::right}); }
  SUBCASE("by a dot") { w.put("b", Dot{Specks::few}); }
  CHECK(asked(w) == "honey 0.40; water 2.00; ");
}

TEST_CASE("a blend that is wet keeps its proportions, by what was weighed most of") {
  make::Writer w = opened();
  w.put("b", of_both());
  w.put("b", Added{"blue", Unit::g, 10, ""});
  w.put("b", Added{"red", Unit::g, 2, ""});
  w.put("b", Added{"gum", Unit::g, 4, ""});
  CHECK(asked(w) == "red 3.00 more; honey 0.24; water 1.20; ");
  w.put("b", Added{"red", Unit::g, 6, ""});
  CHECK(asked(w) == "blue 6.00 more; honey 0.36; water 1.80; ");
  w.put("b", Added{"blue", Unit::g, 6, ""});
  CHECK(asked(w) == "honey 0.48; water 2.40; ");
}

TEST_CASE("binder before any pigment: all of the blend is asked for as it was planned") {
  make::Writer w = opened();
  w.put("b", of_both());
  w.put("b", Added{"gum", Unit::g, 4, ""});
  CHECK(asked(w) == "blue 20.00; red 10.00; honey 0.60; water 3.00; ");
}

TEST_CASE("pigments of a blend of which nobody said how much are asked for by name") {
  make::Writer w = opened();
  w.put("b", Planned{0, "", {{"blue", {}}, {"red", {}}}});
  CHECK(asked(w) == "blue; red; ");
  w.put("b", Added{"blue", Unit::g, 8, ""});
  w.put("b", Added{"gum", Unit::g, 4, ""});
  CHECK(asked(w) == "red; ");
  w.put("b", Felt{Feel::right});
  CHECK(asked(w) == "");
}

TEST_CASE("pigments of a blend in parts are asked for as one of it would have them") {
  make::Writer w = opened();
  w.put("b", LaidOut{make::pigment("white", 4, 15)});
  w.put("b", Planned{0, "", {{"blue", {}, 3}, {"red", {}, 1}, {"white", {}, 1}}});
  CHECK(asked(w) == "blue; red; white; ");
  w.put("b", Added{"blue", Unit::g, 3.5, ""});
  CHECK(asked(w) == "red 1.17; white 1.17; ");
  w.put("b", Added{"red", Unit::g, 1.15, ""});
  CHECK(asked(w) == "white 1.17; "); // a twentieth less is all of it
  w.put("b", Added{"white", Unit::g, 2, ""});
  CHECK(asked(w) == "blue 2.50 more; red 0.85 more; ");
  w.put("b", Added{"gum", Unit::g, 4, ""});
  CHECK(asked(w) == "blue 2.50 more; red 0.85 more; ");
  w.put("b", Felt{Feel::right});
  CHECK(asked(w) == "");
}

TEST_CASE("of two plans the last counts; one that was withdrawn does not") {
  make::Writer w = opened();
  w.put("b", of_both());
  const Ref second = w.put("b", Planned{2, "half", {{"blue", 5}}});
  CHECK(asked(w) == "blue 5.00; ");
  CHECK(make::folded({w.log}, "b").plan->of.pans == 2);
  w.put("b", Withdrawn{second});
  CHECK(make::folded({w.log}, "b").plan->of.pans == 6);
}

TEST_CASE("a plan with a card that nobody named says so, and asks for the rest") {
  make::Writer w = opened();
  const Ref line = w.put("b", Planned{3, "box", {{"blue", 5}, {"dust", 2}}});
  const Batch batch = make::folded({w.log}, "b");
  REQUIRE(batch.warnings.size() == 2);
  for (const Warning& warning : batch.warnings) {
    CHECK(warning.kind == WarningKind::unknown_plan);
    CHECK(warning.ref == line);
  }
  CHECK(batch.warnings[0].of == "dust");
  CHECK(batch.warnings[1].of == "box");
  CHECK(asked(w) == "blue 5.00; ");
}

TEST_CASE("another device's plan of the same batch is its plan") {
  make::Writer w = opened(), other("0ther");
  w.put("b", of_both());
  other.t = 60000;
  other.put("b", Planned{4, "half", {{"blue", 8}}});
  const Batch batch = make::folded({w.log, other.log}, "b");
  CHECK(batch.plan->of.pans == 4);
  CHECK(batch.warnings.empty()); // it is a card of this batch
}

TEST_CASE("a plan that cannot be read says what is wrong with it") {
  using Say = words::SessionSay;
  const auto fault = [](const std::string& fields) {
    const auto line = decode(R"({"n":3,"t":1,"at":2,"e":"planned","batch":"b",)" + fields + "}");
    REQUIRE_FALSE(line);
    return line.error();
  };
  CHECK(fault(R"("pans":0,"in":"half")").what == Say::field_out_of_range);
  CHECK(fault(R"("pans":1001,"in":"half")").what == Say::field_out_of_range);
  CHECK(fault(R"("pans":2.5,"in":"half")").what == Say::field_not_whole);
  CHECK(fault(R"("pans":2)") == words::Error{Say::field_missing, {"in", ""}});
  CHECK(fault(R"("takes":{"of":"x"})") == words::Error{Say::field_not_list, {"takes", ""}});
  CHECK(fault(R"("takes":["x"])").what == Say::field_not_object);
  CHECK(fault(R"("takes":[{"g":2}])") == words::Error{Say::field_missing, {"of", ""}});
  CHECK(fault(R"("takes":[{"of":"x","g":-1}])").what == Say::field_out_of_range);
  CHECK(fault(R"("takes":[{"of":"x","g":5001}])").what == Say::field_out_of_range);
  CHECK(fault(R"("takes":[{"of":"x","parts":1001}])").what == Say::field_out_of_range);
}

}
