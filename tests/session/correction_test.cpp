// A line corrected later: the batch is the one in which it had been right from the start.
#include "make.hpp"

#include <doctest/doctest.h>

namespace correction_test {

using namespace session;

namespace {

constexpr const char* batch = "7f3a91c2";

struct Evening {
  make::Writer w;
  Ref pigment, drop, note;

  explicit Evening(double drops = 1, Feel felt = Feel::too_sticky, double wait_s = 60) {
    w.card(make::pigment("pb28", 4.2, 30));
    w.card(make::liquid("gum", CardKind::binder, {.gum = 1, .water = 2}));
    w.card(make::dropper("bulb", 0.048, 0.004, CardKind::binder));
    w.put(batch, Opened{"Blue"});
    w.put(batch, StageBegan{Stage::mulling});
    pigment = w.put(batch, Added{"pb28", Unit::g, 12, ""});
    w.put(batch, Added{"gum", Unit::g, 5, ""});
    w.wait(wait_s);
    drop = w.put(batch, Added{"gum", Unit::drops, drops, "bulb"});
    note = w.put(batch, Felt{felt, By::knife});
    w.t = 300'000; // whatever was waited before
  }
  Batch folded() {
    w.put(batch, Gathered{});
    return make::folded({w.log}, batch);
  }
};

Corrected to(Ref line, Corrected::Says says) { return {line, says, std::nullopt}; }

const Entry& entry(const Batch& b, Ref ref) {
  return *std::find_if(b.entries.begin(), b.entries.end(),
                       [&](const Entry& e) { return e.ref == ref; });
}

bool warned(const Batch& b, WarningKind kind) {
  return std::any_of(b.warnings.begin(), b.warnings.end(),
                     [&](const Warning& w) { return w.kind == kind; });
}

}

TEST_CASE("another amount and another note") {
  Evening right(3, Feel::right), wrong;
  wrong.w.put(batch, to(wrong.drop, Added{"gum", Unit::drops, 3, "bulb"}));
  wrong.w.put(batch, to(wrong.note, Felt{Feel::right, By::knife}));
  const Batch is = wrong.folded(), should = right.folded();
  CHECK(is.warnings.empty());
  CHECK(is.standing.binder_ratio == should.standing.binder_ratio);
  CHECK(is.standing.flow_now == should.standing.flow_now);
  CHECK(entry(is, wrong.note).event == Event(Felt{Feel::right, By::knife}));
  CHECK(entry(is, wrong.note).corrected);
}

TEST_CASE("another moment: the paint dries as if it had been told then") {
  Evening right(1, Feel::too_sticky, 20), wrong;
  wrong.w.put(batch, Corrected{wrong.drop, {}, -40'000});
  wrong.w.put(batch, Corrected{wrong.note, {}, -40'000});
  const Batch is = wrong.folded(), should = right.folded();
  CHECK(entry(is, wrong.drop).clock == 20);
  CHECK(entry(is, wrong.drop).flow == entry(should, right.drop).flow);
}

TEST_CASE("the last correction that speaks of a thing counts, and can be taken back") {
  Evening right(2), wrong;
  wrong.w.put(batch, to(wrong.drop, Added{"gum", Unit::drops, 2, "bulb"}));
  wrong.w.put(batch, Corrected{wrong.drop, {}, 0}); // speaks of the moment alone
  const Ref last = wrong.w.put(batch, to(wrong.drop, Added{"gum", Unit::drops, 9, "bulb"}));
  wrong.w.put(batch, Withdrawn{last});
  CHECK(wrong.folded().standing.binder_ratio == right.folded().standing.binder_ratio);
}

TEST_CASE("a card that the correction's own session laid out") {
  Evening e;
  make::Writer other("77aa77aa");
  other.t = 200'000;
  other.card(make::liquid("water", CardKind::water, {.water = 1}));
  other.card(make::dropper("tip", 0.05, 0.001, CardKind::water));
  other.put(batch, to(e.drop, Added{"water", Unit::drops, 1, "tip"}));
  const Batch b = make::folded({e.w.log, other.log}, batch);
  CHECK(b.warnings.empty());
  REQUIRE(b.totals.size() == 3);
  CHECK(b.totals[2].card.id == "water");
  CHECK(b.totals[2].drops == 1);
}

TEST_CASE(
    "a correction of a line that is missing, or of another kind, changes nothing and is said") {
  Evening right, wrong;
  wrong.w.put(batch, to({"c41e08d5", 900}, Felt{Feel::right, By::knife}));
  wrong.w.put(batch, to({"00000000", 1}, Felt{Feel::right, By::knife}));
  wrong.w.put(batch, to(wrong.drop, Felt{Feel::right, By::knife}));
  const Batch b = wrong.folded();
  CHECK(warned(b, WarningKind::corrected_missing));
  CHECK(warned(b, WarningKind::corrected_kind));
  CHECK(b.warnings.size() == 3);
  CHECK(b.standing.binder_ratio == right.folded().standing.binder_ratio);
}

TEST_CASE("a correction of what only speaks of another line changes nothing and is said") {
  Evening e;
  const std::uint64_t next = e.w.log.lines.back().n + 1;
  const Ref a{e.w.log.session, next}, b{e.w.log.session, next + 1};
  e.w.put(batch, Corrected{b, {}, -40'000}); // each of the other
  e.w.put(batch, Corrected{a, {}, -40'000});
  const Ref taken_back = e.w.put(batch, Withdrawn{e.drop});
  e.w.put(batch, Corrected{taken_back, {}, 1000});
  e.w.put(batch, Corrected{e.w.put(batch, SetAside{e.note}), {}, 1000});
  const Batch is = e.folded();
  CHECK(is.warnings.size() == 4);
  for (const Warning& w : is.warnings) CHECK(w.kind == WarningKind::corrected_remark);
  for (const Ref& ref : {a, b, taken_back}) CHECK_FALSE(entry(is, ref).corrected);
}

TEST_CASE("a correction to no name leaves the batch the one it has, and is said") {
  Evening e;
  const auto opened = std::find_if(e.w.log.lines.begin(), e.w.log.lines.end(), [](const Line& l) {
    return std::holds_alternative<Opened>(l.event);
  });
  const Ref ref{e.w.log.session, opened->n};
  e.w.put(batch, to(ref, Opened{"Sea blue"}));
  for (const char* name : {"", "   "}) e.w.put(batch, to(ref, Opened{name}));
  const Batch b = e.folded();
  CHECK(b.name == "Sea blue");
  CHECK(b.warnings.size() == 2);
  CHECK(warned(b, WarningKind::corrected_to_no_name));
}

TEST_CASE("a withdrawn line stays withdrawn when it is corrected") {
  Evening e;
  e.w.put(batch, Withdrawn{e.drop});
  e.w.put(batch, to(e.drop, Added{"gum", Unit::drops, 3, "bulb"}));
  const Batch b = e.folded();
  CHECK(entry(b, e.drop).withdrawn);
  CHECK(b.totals[1].drops == 0);
}

TEST_CASE("a batch with lines of a newer format is shown and not summed") {
  Evening e;
  Log newer = e.w.log;
  newer.future = true;
  const Batch b = make::folded({newer}, batch);
  CHECK(b.newer);
  CHECK(b.name == "Blue");
  CHECK(b.entries.size() == 6);
  CHECK_FALSE(b.standing.binder_ratio);
  CHECK(b.totals.empty());
}

TEST_CASE("a stamp of another session more than a day ahead is warned of") {
  Evening e;
  const std::int64_t last = e.w.log.lines.back().at;
  const std::vector<Log> logs{e.w.log};
  CHECK_FALSE(
      warned(*fold(all_of(logs), batch, Moment{last, "other", 0}), WarningKind::clock_ahead));
  const Moment before{last - a_day_ms - 1, "other", 0};
  CHECK(warned(*fold(all_of(logs), batch, before), WarningKind::clock_ahead));
  const Moment own{last - a_day_ms - 1, e.w.log.session, 0};
  CHECK_FALSE(warned(*fold(all_of(logs), batch, own), WarningKind::clock_ahead));
}

}
