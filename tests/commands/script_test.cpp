// Scripts are hostile until read.
#include "bench/pads_book.hpp"
#include "bench/pads_choice.hpp"
#include "bench/pads_shared.hpp"
#include "bench/pads_shelf.hpp"
#include "bench/pads_slab.hpp"
#include "commands/script.hpp"
#include "commands/tool.hpp"

namespace script_test {

using namespace commands;

namespace {

std::string fault_of(const std::string& text) {
  const auto script = read_script(text);
  return script ? "" : words::message(script.error());
}

template <class A>
A only(const std::string& text) {
  const auto script = read_script(text);
  REQUIRE(script);
  REQUIRE(script->size() == 1);
  REQUIRE(std::holds_alternative<A>(script->front().action));
  return std::get<A>(script->front().action);
}

}

TEST_CASE("what a script can say") {
  const auto tap = only<Tapped>("tap add gum_12 x10 every 1.5");
  CHECK(tap.pad == bench::PadId{bench::SlabPad::add, "gum_12"});
  CHECK(tap.times == 10);
  CHECK(tap.every_ms == 1500);
  CHECK(only<Tapped>("  tap   felt right\r\n").pad == bench::PadId{bench::SlabPad::felt, "right"});
  CHECK(only<Tapped>("tap amount 1/4 tsp").pad ==
        bench::PadId{bench::ChoicePad::amount, "1/4 tsp"});
  CHECK(only<Tapped>("tap undo x3").times == 3);
  CHECK(only<Waited>("wait 90").ms == 90000);
  CHECK(only<Waited>("wait 5m").ms == 300000);
  CHECK(only<Waited>("wait 2h").ms == 7200000);
  CHECK(only<Waited>("wait 0.5s").ms == 500);
  CHECK(only<Typed>("type 12.5").digits == "12.5");
  CHECK(only<Written>("write name  Some  text ").text == "Some  text ");
  CHECK(only<Written>("write name").text == "");
  CHECK(only<Written>("write search name").field.kind == bench::SharedPad::search);
  CHECK(only<Written>("write search name").text == "name");
  CHECK(only<Written>("write note less water").field.kind == bench::BookPad::note_text);
  CHECK(only<Written>("write note less water").text == "less water");
  CHECK(only<Written>("write card_name Pinch").field ==
        bench::PadId{bench::ShelfPad::says, "name"});
  CHECK(only<Written>("write bought_on 2026-10-01").field ==
        bench::PadId{bench::ShelfPad::jar_says, "on"});
  CHECK(only<Shown>("display 136x218 right").display.upright());
  CHECK(only<Shown>("display 136x218 right").display.hand == bench::Hand::right);
  CHECK(only<Seed>("seed 4294967295").value == 4294967295u);
  CHECK(only<Named>("session c41e08d5").id == "c41e08d5");
  CHECK(only<Down>("down close").pad.kind == bench::SlabPad::close);
  only<Slide>("slide");
  only<Up>("up");
  only<Stop>("stop");
}

TEST_CASE("empty scripts and comments say nothing") {
  for (const char* text : {"", "\n\n", "# tap undo", "  # x\n\t\n"}) {
    const auto script = read_script(text);
    REQUIRE(script);
    CHECK(script->empty());
  }
}

TEST_CASE("what a script cannot say is an error that names the line") {
  for (const std::string& line : std::vector<std::string>{"dance",
                                                          "tap",
                                                          "tap nothing at all",
                                                          "tap undo x0",
                                                          "tap undo x100001",
                                                          "tap undo every 0",
                                                          "tap undo every -1",
                                                          "tap undo every nan",
                                                          "wait",
                                                          "wait -5",
                                                          "wait 1e3",
                                                          "wait inf",
                                                          "wait 10000001",
                                                          "wait 5 m",
                                                          "type",
                                                          "type -3",
                                                          "type 1e5",
                                                          "type 123456789",
                                                          "write",
                                                          "write colour red",
                                                          "display",
                                                          "display 218",
                                                          "display 10x10",
                                                          "display nanxnan",
                                                          "display 218x136 middle",
                                                          "seed",
                                                          "seed -1",
                                                          "seed 4294967296",
                                                          "session c41e08d",
                                                          "session C41E08D5",
                                                          "session ../../ab",
                                                          "device a83f0",
                                                          "down",
                                                          "down pad",
                                                          "slide far",
                                                          "up up",
                                                          "stop now",
                                                          "at",
                                                          "at noon"}) {
    CAPTURE(line);
    const std::string fault = fault_of("# first\n" + line + "\n");
    CHECK(tool::has(fault, "Line 2"));
  }
}

TEST_CASE("what is out of range is said with its unit; a byte order mark says nothing") {
  CHECK(tool::has(fault_of("wait 10000001"), "between 0.00 and 10000000 s"));
  CHECK(tool::has(fault_of("wait 5000h"), " h."));
  CHECK(tool::has(fault_of("tap undo x0"), "100000 taps"));
  CHECK(fault_of("\xEF\xBB\xBFseed 7\ntap undo\n") == "");
}

TEST_CASE("too much is too much") {
  CHECK(fault_of("tap undo x100000 every 0.1") == "");
  CHECK(tool::has(fault_of("tap undo x60000 every 0.1\ntap undo x60000 every 0.1"), "Line 2"));
  CHECK(tool::has(fault_of("wait 6000000\nwait 6000000"), "Line 2"));
  CHECK(tool::has(fault_of("tap undo x100000 every 1000"), "Line 1"));
  CHECK(tool::has(fault_of("\nwrite name " + std::string(2000, 'x')), "Line 2"));
  CHECK(tool::has(fault_of("write name \xff"), "Line 1"));
  CHECK(fault_of(std::string(most_script_bytes + 1, '\n')) != "");
  CHECK(fault_of(std::string(most_script_bytes, '\n')) == "");
  CHECK(fault_of(std::string(3, '\0')) != "");
}

TEST_CASE("moments") { // date(1) -u -d "2026-11-20 13:02" +%s
  CHECK(moment("2026-11-20T14:02:00+01:00") == Moment{1795179720000, 60});
  CHECK(moment("2026-11-20T13:02:00Z") == Moment{1795179720000, 0});
  CHECK(moment("2026-11-20T09:32:00-03:30") == Moment{1795179720000, -210});
  for (const char* text : {"", "2026-11-20", "2026-11-20T14:02:00", "2026-13-20T14:02:00Z",
                           "2026-02-29T14:02:00Z", "2026-11-20T24:02:00Z", "2026-11-20 14:02:00Z",
                           "2026-11-20T14:02:00+15:00", "2026-11-20T14:02:00+1:00",
                           "-026-11-20T14:02:00Z", "2026-11-20T14:02:00Zx", "1969-12-31T00:00:00Z"})
    CHECK_FALSE(moment(text));
}

TEST_CASE("scripts that cannot be read, and words that make no sense") {
  const tool::Studio studio;
  const auto status = [](const std::vector<std::string>& words) { return tool::run(words).status; };
  const std::string script = studio.script("seed 7\n");
  CHECK(status({"play", script, "--studio", studio.name}) == 0);
  CHECK(studio.files().empty());
  CHECK(status({"play", "/nowhere", "--studio", studio.name}) == 1);
  CHECK(status({"play", studio.name, "--studio", studio.name}) == 1); // a folder
  CHECK(status({"play", script}) == 2);                               // no studio named
  CHECK(status({"play", script, "--studio", studio.name, "--pace", "0"}) == 1);
  CHECK(status({"play", script, "--studio", studio.name, "--fault", "rain"}) == 1);
  CHECK(status({"play"}) == 2);
  CHECK(status({"play", script, "more"}) == 2);
  CHECK(status({"play", script, "--studio"}) == 2);
  CHECK(status({"play", script, "--studio", "a", "--studio=b"}) == 2);
  CHECK(status({"show", "--jsn", "last"}) == 2);
  CHECK(status({"show", "last", "--json=yes"}) == 2);
  CHECK(tool::has(tool::run({"show", "--jsn", "last"}).err, "--jsn"));
  CHECK(status({"help"}) == 0);
  CHECK(tool::has(tool::run({"--help"}).out, "slabside play"));
}

TEST_CASE("other words are somebody else's") {
  std::ostringstream out, err;
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{}, {"--studio", "x"}, {"picture"}, {"dance"}, {""}})
    CHECK_FALSE(commands::run(words, out, err));
  CHECK(out.str() + err.str() == "");
}

TEST_CASE("ids written once are for the beginning only") {
  const tool::Studio studio;
  const tool::Ran ran = studio.play("seed 7\nwait 1\nseed 8\n");
  CHECK(ran.status == 1);
  CHECK(tool::has(ran.err, "Line 3"));
}

}
