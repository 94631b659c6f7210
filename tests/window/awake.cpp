// A bus of the test's own with a desktop on it that keeps a list of who wants it awake.
#include "window/awake.hpp"

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <systemd/sd-bus.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

namespace {

using namespace std::chrono_literals;

// dbus-daemon, told to say its address.
struct Daemon {
  pid_t pid = -1;
  std::string address;

  Daemon() {
    int told[2];
    REQUIRE(::pipe(told) == 0);
    pid = ::fork();
    if (pid == 0) {
      ::dup2(told[1], 1);
      ::close(told[0]);
      ::execlp("dbus-daemon", "dbus-daemon", "--session", "--nofork", "--print-address=1", nullptr);
      ::_exit(127);
    }
    ::close(told[1]);
    char byte = 0;
    while (::read(told[0], &byte, 1) == 1 && byte != '\n') address += byte;
    ::close(told[0]);
    REQUIRE_MESSAGE(!address.empty(), "dbus-daemon is missing");
    ::setenv("DBUS_SESSION_BUS_ADDRESS", address.c_str(), 1);
  }
  ~Daemon() {
    ::kill(pid, SIGKILL);
    ::waitpid(pid, nullptr, 0);
  }
};

struct Desktop {
  std::mutex mutex;
  std::vector<std::string> calls;
  bool refuses = false;
  std::atomic<bool> ends = false;
  std::thread thread;

  static int inhibit(sd_bus_message* call, void* self, sd_bus_error* error) {
    auto& desktop = *static_cast<Desktop*>(self);
    const std::lock_guard lock(desktop.mutex);
    const char *who = nullptr, *why = nullptr;
    sd_bus_message_read(call, "ss", &who, &why);
    desktop.calls.push_back(std::string("inhibit ") + who);
    if (desktop.refuses)
      return sd_bus_error_set(error, SD_BUS_ERROR_ACCESS_DENIED, "not for tablets");
    return sd_bus_reply_method_return(call, "u", std::uint32_t{77});
  }
  static int release(sd_bus_message* call, void* self, sd_bus_error*) {
    auto& desktop = *static_cast<Desktop*>(self);
    const std::lock_guard lock(desktop.mutex);
    std::uint32_t cookie = 0;
    sd_bus_message_read(call, "u", &cookie);
    desktop.calls.push_back("release " + std::to_string(cookie));
    return sd_bus_reply_method_return(call, "");
  }

  Desktop() {
    sd_bus* bus = nullptr;
    REQUIRE(sd_bus_open_user(&bus) >= 0);
    static const sd_bus_vtable table[] = {
        SD_BUS_VTABLE_START(0),
        SD_BUS_METHOD("Inhibit", "ss", "u", inhibit, SD_BUS_VTABLE_UNPRIVILEGED),
        SD_BUS_METHOD("UnInhibit", "u", "", release, SD_BUS_VTABLE_UNPRIVILEGED),
        SD_BUS_VTABLE_END};
    REQUIRE(sd_bus_add_object_vtable(bus, nullptr, "/org/freedesktop/ScreenSaver",
                                     "org.freedesktop.ScreenSaver", table, this) >= 0);
    REQUIRE(sd_bus_request_name(bus, "org.freedesktop.ScreenSaver", 0) >= 0);
    thread = std::thread([this, bus] {
      while (!ends) {
        while (sd_bus_process(bus, nullptr) > 0) {}
        sd_bus_wait(bus, 20000); // microseconds
      }
      sd_bus_flush_close_unref(bus);
    });
  }
  ~Desktop() {
    ends = true;
    thread.join();
  }

  std::vector<std::string> after(std::size_t count) {
    for (int i = 0; i < 500; ++i) {
      {
        const std::lock_guard lock(mutex);
        if (calls.size() >= count) return calls;
      }
      std::this_thread::sleep_for(10ms);
    }
    const std::lock_guard lock(mutex);
    return calls;
  }
};

using Calls = std::vector<std::string>;

}

TEST_CASE("the display is kept awake while it is wanted, and let go at the end") {
  const Daemon daemon;
  Desktop desktop;
  {
    window::Awake awake([](const std::string& why) { FAIL_CHECK(why); });
    awake.keep(true);
    awake.keep(true); // once is enough
    CHECK(desktop.after(1) == Calls{"inhibit Slabside"});
    awake.keep(false);
    CHECK(desktop.after(2) == Calls{"inhibit Slabside", "release 77"});
    awake.keep(true);
    CHECK(desktop.after(3).back() == "inhibit Slabside");
  }
  CHECK(desktop.after(4).back() == "release 77");
}

TEST_CASE("a desktop that says no is heard once; none at all is no matter") {
  std::atomic<int> refusals = 0;
  const auto count = [&](const std::string& why) {
    CHECK(why == "not for tablets");
    ++refusals;
  };
  {
    const Daemon daemon;
    {
      window::Awake nobody(count);
      nobody.keep(true);
    }
    CHECK(refusals == 0);
    Desktop desktop;
    desktop.refuses = true;
    window::Awake awake(count);
    for (std::size_t i = 1; i < 4; ++i) {
      awake.keep(true);
      desktop.after(i);
      awake.keep(false);
      std::this_thread::sleep_for(50ms);
    }
  }
  CHECK(refusals == 1);
  ::setenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nowhere", 1);
  window::Awake alone(count);
  alone.keep(true);
}
