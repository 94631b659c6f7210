// The power fails at every change an evening makes to the disk. What was shown as saved is there
// afterwards, whatever became of the rest.
#include "faults/evening.hpp"
#include "words/studio_says.hpp"

using namespace faults;

namespace {

int harms() { return is_long() ? 40 : 10; }

// Seeds of one cut: half of them only tear, half do all they can.
void check_after_cut(Computer& computer, const std::vector<Played>& evenings, int cut) {
  for (int i = 0; i < harms(); ++i) {
    const Harm harm = i % 2 == 0 ? Harm::torn : Harm::any;
    const auto drawn = seed() * 1'000'000u + static_cast<std::uint32_t>(cut * 100 + i);
    CAPTURE(drawn);
    const auto next = computer.after_power_cut(drawn, harm);
    const auto files = files_of(*next);
    check_left(files, evenings);
    if (harm == Harm::torn) check_only_torn(files);
  }
}

// An evening with the plug pulled at the n-th change on one of the disks; false if it has fewer.
bool cut_evening(Computer::Who who, int nth, const Spoilt& spoilt) {
  Computer computer;
  computer.cut_at(who, nth);
  const Played evening = play(computer, faults::evening(), true, spoilt);
  if (computer.has_power()) return false;
  CAPTURE(who);
  CAPTURE(nth);
  check_after_cut(computer, {evening}, nth);
  return true;
}

int cut_everywhere(Computer::Who who, const Spoilt& spoilt) {
  int n = 0;
  while (n < 1000 && cut_evening(who, n + 1, spoilt)) ++n;
  return n;
}

disk::Fault fault(const std::string& text) { return disk::parse_fault(text).value(); }

}

TEST_CASE("power: cut at every change of an evening at home") {
  const int cuts = cut_everywhere(Computer::home, {});
  MESSAGE(cuts, " cuts, ", cuts * harms(), " disks left");
  CHECK(cuts > 40);
}

TEST_CASE("power: cut at every change of an evening that goes adrift half way") {
  const Spoilt full{fault("fail-write-from:9:ENOSPC"), {}};
  const int at_home = cut_everywhere(Computer::home, full);
  const int fallback = cut_everywhere(Computer::fallback, full);
  MESSAGE(at_home, " + ", fallback, " cuts, ", (at_home + fallback) * harms(), " disks left");
  CHECK(at_home > 20);
  CHECK(fallback > 20);
}

TEST_CASE("power: cut at every change of an evening whose forces fail now and then") {
  for (const char* text : {"fail-force:5:EIO", "fail-force:6:EIO", "fail-write:11:EIO"})
    CHECK(cut_everywhere(Computer::home, {fault(text), {}}) > 40);
}

namespace {

bool are_home(Computer& computer) {
  auto home = computer.folder(studio_folder / "sessions");
  for (const auto& [name, bytes] : computer.folder(fallback_folder / "sessions"))
    if (home[name] != bytes) return false;
  return true;
}

}

// First an evening in the fallback, then the next start brings it home: cut there, it comes home
// later.
TEST_CASE("power: cut while files come home, and started again") {
  int cuts = 0, came = 0;
  for (int nth = 1; nth < 1000; ++nth) {
    CAPTURE(nth);
    Computer computer;
    const Played first =
        play(computer, small_evening(), true, {fault("fail-write-from:9:ENOSPC"), {}});
    REQUIRE(first.status == 0);
    computer.cut_at(Computer::home, nth);
    const Played second = play(computer, small_evening(21));
    if (computer.has_power()) break;
    ++cuts;
    check_after_cut(computer, {first, second}, nth);

    const auto drawn = seed() * 1'000'000u + static_cast<std::uint32_t>(nth);
    const auto again = computer.after_power_cut(drawn, Harm::any);
    if (second.err.find(words::say(words::StudioSay::came_home, {"1"})) != std::string::npos) {
      ++came;
      CHECK(are_home(*again));
    }
    const Played third = play(*again, small_evening(22));
    CHECK(third.status == 0);
    check_left(files_of(*again), {first, second, third});
    CHECK(are_home(*again));
  }
  CHECK(came > 10);
  MESSAGE(cuts, " cuts");
  CHECK(cuts > 20);
}

// The model must be able to hurt, or the tests above prove nothing: a program that only writes
// loses what it was told is there.
TEST_CASE("power: what was never forced can be lost, torn, holed, garbled and unnamed") {
  int gone = 0, whole = 0, torn = 0, holed = 0, garbled = 0;
  for (std::uint32_t i = 0; i < 400; ++i) {
    Computer computer;
    const auto files = computer.files(Computer::home);
    const auto safe = files->open_new("/safe");
    files->write(safe.handle, "forced");
    files->force(safe.handle);
    files->force_folder("/");
    files->write(safe.handle, std::string(200, 'x'));
    files->open_new("/new");
    computer.cut_at(Computer::home, 1);
    CHECK(files->force(safe.handle).code != 0);
    CHECK(files->write(safe.handle, "later").code != 0);
    const auto left = computer.after_power_cut(i, Harm::any)->folder("/");
    REQUIRE(left.count("safe"));
    const std::string bytes = left.at("safe");
    REQUIRE(bytes.substr(0, 6) == "forced");
    REQUIRE(bytes.size() <= 206);
    const std::string rest = bytes.substr(6);
    const bool has_hole = rest.find('\0') != std::string::npos;
    const bool strange = rest.find_first_not_of(std::string("x\0", 2)) != std::string::npos;
    gone += left.count("new") == 0;
    whole += rest == std::string(200, 'x');
    torn += rest.size() < 200 && rest == std::string(rest.size(), 'x');
    holed += has_hole && rest.find_last_of('x') > rest.find('\0');
    garbled += strange;
  }
  for (const int seen : {gone, whole, torn, holed, garbled}) CHECK(seen > 20);
}
