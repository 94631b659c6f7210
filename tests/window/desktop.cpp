#include "window/desktop.hpp"

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <systemd/sd-bus.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdint>
#include <cstdlib>
#include <utility>

namespace desktop {

namespace {

using namespace std::chrono_literals;

constexpr const char* name = "org.freedesktop.ScreenSaver";

int inhibit(sd_bus_message* call, void* self, sd_bus_error* error) {
  auto& desktop = *static_cast<Desktop*>(self);
  const char *who = nullptr, *why = nullptr;
  sd_bus_message_read(call, "ss", &who, &why);
  desktop.asker = sd_bus_message_get_sender(call);
  desktop.note(std::string("inhibit ") + who + ": " + why);
  if (desktop.manner() == Manner::never_answers) return 1;
  if (desktop.manner() == Manner::refuses)
    return sd_bus_error_set(error, SD_BUS_ERROR_ACCESS_DENIED, "not for tablets");
  return sd_bus_reply_method_return(call, "u", std::uint32_t{77});
}

int release(sd_bus_message* call, void* self, sd_bus_error*) {
  std::uint32_t cookie = 0;
  sd_bus_message_read(call, "u", &cookie);
  static_cast<Desktop*>(self)->note("release " + std::to_string(cookie));
  return sd_bus_reply_method_return(call, "");
}

int changed_owner(sd_bus_message* signal, void* self, sd_bus_error*) {
  auto& desktop = *static_cast<Desktop*>(self);
  const char *of = nullptr, *was = nullptr, *is = nullptr;
  sd_bus_message_read(signal, "sss", &of, &was, &is);
  if (of == desktop.asker && *is == '\0') desktop.note("gone");
  return 0;
}

sd_bus* appear(Desktop* desktop) {
  sd_bus* bus = nullptr;
  REQUIRE(sd_bus_open_user(&bus) >= 0);
  static const sd_bus_vtable table[] = {
      SD_BUS_VTABLE_START(0),
      SD_BUS_METHOD("Inhibit", "ss", "u", inhibit, SD_BUS_VTABLE_UNPRIVILEGED),
      SD_BUS_METHOD("UnInhibit", "u", "", release, SD_BUS_VTABLE_UNPRIVILEGED), SD_BUS_VTABLE_END};
  REQUIRE(sd_bus_add_object_vtable(bus, nullptr, "/org/freedesktop/ScreenSaver", name, table,
                                   desktop) >= 0);
  REQUIRE(sd_bus_match_signal(bus, nullptr, "org.freedesktop.DBus", "/org/freedesktop/DBus",
                              "org.freedesktop.DBus", "NameOwnerChanged", changed_owner,
                              desktop) >= 0);
  REQUIRE(sd_bus_request_name(bus, name, 0) >= 0);
  return bus;
}

}

// dbus-daemon says its address when it can be spoken to.
Daemon::Daemon() {
  int told[2];
  REQUIRE(::pipe(told) == 0);
  pid_ = ::fork();
  if (pid_ == 0) {
    ::dup2(told[1], 1);
    ::close(told[0]);
    ::execlp("dbus-daemon", "dbus-daemon", "--session", "--nofork", "--print-address=1", nullptr);
    ::_exit(127);
  }
  ::close(told[1]);
  std::string address;
  char byte = 0;
  while (::read(told[0], &byte, 1) == 1 && byte != '\n') address += byte;
  ::close(told[0]);
  REQUIRE_MESSAGE(!address.empty(), "dbus-daemon is missing");
  ::setenv("DBUS_SESSION_BUS_ADDRESS", address.c_str(), 1);
}

Daemon::~Daemon() {
  ::unsetenv("DBUS_SESSION_BUS_ADDRESS");
  ::kill(pid_, SIGTERM);
  ::waitpid(pid_, nullptr, 0);
}

Desktop::Desktop(Manner manner) : manner_(manner) {
  thread_ = std::thread([this, bus = appear(this)] {
    while (!ends_) {
      while (sd_bus_process(bus, nullptr) > 0) {}
      sd_bus_wait(bus, 20000); // microseconds
    }
    sd_bus_flush_close_unref(bus);
  });
}

Desktop::~Desktop() {
  ends_ = true;
  thread_.join();
}

void Desktop::note(std::string call) {
  const std::lock_guard lock(mutex_);
  calls_.push_back(std::move(call));
}

Calls Desktop::after(std::size_t count) {
  for (int i = 0; i < 500; ++i) {
    {
      const std::lock_guard lock(mutex_);
      if (calls_.size() >= count) break;
    }
    std::this_thread::sleep_for(10ms);
  }
  const std::lock_guard lock(mutex_);
  return calls_;
}

}
