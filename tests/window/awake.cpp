#include "window/awake.hpp"

#include "window/desktop.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <chrono>
#include <cstdlib>
#include <thread>

namespace {

using namespace std::chrono_literals;
using namespace desktop;

const std::string asked = "inhibit Slabside: paint";

void fail(const std::string& answer) { FAIL_CHECK(answer); }

}

TEST_CASE("the display is kept awake while it is wanted, and let go at the end") {
  const Daemon daemon;
  Desktop desktop;
  {
    window::Awake awake("paint", fail);
    awake.keep(true);
    awake.keep(true); // once is enough
    CHECK(desktop.after(1) == Calls{asked});
    awake.keep(false);
    CHECK(desktop.after(2) == Calls{asked, "release 77"});
    awake.keep(true);
    CHECK(desktop.after(3).back() == asked);
  }
  CHECK(desktop.after(5) == Calls{asked, "release 77", asked, "release 77", "gone"});
}

TEST_CASE("a desktop that says no is heard once") {
  const Daemon daemon;
  Desktop desktop(Manner::refuses);
  std::atomic<int> refusals = 0;
  {
    window::Awake awake("paint", [&](const std::string& answer) {
      CHECK(answer == "not for tablets");
      ++refusals;
    });
    // Where it comes to ask only now and then, it has missed a turn or two.
    for (int i = 0; i < 500 && desktop.after(0).size() < 6; ++i) {
      awake.keep(i % 2 == 0);
      std::this_thread::sleep_for(20ms);
    }
  }
  const Calls calls = desktop.after(6);
  REQUIRE(calls.size() >= 6);
  CHECK(Calls(calls.begin(), calls.begin() + 4) == Calls{asked, "gone", asked, "gone"});
  CHECK(refusals == 1);
}

TEST_CASE("one that never answers is given up, and what it may grant later holds nothing") {
  const Daemon daemon;
  Desktop desktop(Manner::never_answers);
  std::atomic<int> refusals = 0;
  window::Awake awake("paint", [&](const std::string&) { ++refusals; });
  awake.keep(true);
  CHECK(desktop.after(2) == Calls{asked, "gone"});
  CHECK(refusals == 1);
}

TEST_CASE("no desktop, and no bus, is no matter") {
  {
    const Daemon daemon;
    window::Awake nobody("paint", fail);
    nobody.keep(true);
  }
  ::setenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nowhere", 1);
  {
    window::Awake alone("paint", fail);
    alone.keep(true);
  }
  ::unsetenv("DBUS_SESSION_BUS_ADDRESS");
}
