#include "window/awake.hpp"

#include <systemd/sd-bus.h>

#include <condition_variable>
#include <cstdint>
#include <mutex>
#include <optional>
#include <string_view>
#include <thread>
#include <utility>

namespace window {

namespace {

constexpr const char* service = "org.freedesktop.ScreenSaver";
constexpr const char* object = "/org/freedesktop/ScreenSaver";
constexpr std::uint64_t patience_us = 2'000'000; // the program's end waits for an answer

using Bus = std::unique_ptr<sd_bus, sd_bus* (*)(sd_bus*)>;
using Message = std::unique_ptr<sd_bus_message, sd_bus_message* (*)(sd_bus_message*)>;

struct Failure {
  sd_bus_error error = SD_BUS_ERROR_NULL;
  ~Failure() { sd_bus_error_free(&error); }

  // Nobody offers it: that is no refusal.
  bool nobody_there() const {
    const std::string_view name = error.name ? error.name : "";
    return name == SD_BUS_ERROR_SERVICE_UNKNOWN || name == SD_BUS_ERROR_NAME_HAS_NO_OWNER ||
           name == SD_BUS_ERROR_UNKNOWN_METHOD || name == SD_BUS_ERROR_UNKNOWN_OBJECT;
  }
  const char* words() const { return error.message ? error.message : error.name; }
};

}

struct Awake::Asker {
  const std::string why;
  std::function<void(const std::string&)> refused;
  std::mutex mutex;
  std::condition_variable changed;
  bool wanted = false, ends = false;
  Bus bus{nullptr, sd_bus_flush_close_unref};
  std::optional<std::uint32_t> cookie; // while the display is kept awake
  std::thread thread{};

  Asker(std::string reason, std::function<void(const std::string&)> told)
      : why(std::move(reason)), refused(std::move(told)) {
    thread = std::thread([this] { run(); });
  }

  // Everything that waits for the bus happens here.
  void run() {
    std::unique_lock lock(mutex);
    bool now = false;
    while (true) {
      changed.wait(lock, [&] { return ends || wanted != now; });
      now = wanted && !ends;
      const bool last = ends;
      lock.unlock();
      now ? inhibit() : release();
      if (last) return;
      lock.lock();
    }
  }

  // After a failure the connection is given up: an answer that comes too late then binds nobody.
  void inhibit() {
    if (!bus && !connect()) return;
    Failure failure;
    sd_bus_message* answer = nullptr;
    int code = sd_bus_call_method(bus.get(), service, object, service, "Inhibit", &failure.error,
                                  &answer, "ss", "Slabside", why.c_str());
    const Message owned(answer, sd_bus_message_unref);
    std::uint32_t given = 0;
    if (code >= 0) {
      code = sd_bus_message_read(answer, "u", &given);
      if (code < 0) sd_bus_error_set_errno(&failure.error, code);
    }
    if (code >= 0) {
      cookie = given;
      return;
    }
    if (!failure.nobody_there() && refused) std::exchange(refused, nullptr)(failure.words());
    bus.reset();
  }

  bool connect() {
    sd_bus* opened = nullptr;
    if (sd_bus_open_user(&opened) < 0) return false;
    bus.reset(opened);
    sd_bus_set_method_call_timeout(opened, patience_us);
    return true;
  }

  void release() {
    const auto held = std::exchange(cookie, std::nullopt);
    if (!held) return;
    Failure failure;
    if (sd_bus_call_method(bus.get(), service, object, service, "UnInhibit", &failure.error,
                           nullptr, "u", *held) < 0)
      bus.reset();
  }
};

Awake::Awake(std::string why, std::function<void(const std::string&)> refused)
    : asker_(std::make_unique<Asker>(std::move(why), std::move(refused))) {}

Awake::~Awake() {
  {
    const std::lock_guard lock(asker_->mutex);
    asker_->ends = true;
  }
  asker_->changed.notify_one();
  asker_->thread.join();
}

void Awake::keep(bool awake) {
  const std::lock_guard lock(asker_->mutex);
  if (std::exchange(asker_->wanted, awake) != awake) asker_->changed.notify_one();
}

}
