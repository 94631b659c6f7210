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
};

}

struct Awake::Asker {
  std::function<void(const std::string&)> refused;
  std::mutex mutex;
  std::condition_variable changed;
  bool wanted = false, ends = false;
  Bus bus{nullptr, sd_bus_flush_close_unref};
  std::optional<std::uint32_t> cookie; // while the display is kept awake
  std::thread thread{};

  explicit Asker(std::function<void(const std::string&)> told) : refused(std::move(told)) {
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

  void inhibit() {
    sd_bus* opened = nullptr;
    if (!bus && sd_bus_open_user(&opened) < 0) return;
    if (opened) bus.reset(opened);
    Failure failure;
    sd_bus_message* answer = nullptr;
    const int code =
        sd_bus_call_method(bus.get(), service, object, service, "Inhibit", &failure.error, &answer,
                           "ss", "Slabside", "a batch lies on the slab");
    const Message owned(answer, sd_bus_message_unref);
    std::uint32_t given = 0;
    if (code >= 0 && sd_bus_message_read(answer, "u", &given) >= 0) {
      cookie = given;
    } else if (!failure.nobody_there() && failure.error.message && refused) {
      refused(failure.error.message);
      refused = nullptr;
    }
  }

  void release() {
    if (!cookie || !bus) return;
    Failure failure;
    sd_bus_call_method(bus.get(), service, object, service, "UnInhibit", &failure.error, nullptr,
                       "u", *cookie);
    cookie.reset();
  }
};

Awake::Awake(std::function<void(const std::string&)> refused)
    : asker_(std::make_unique<Asker>(std::move(refused))) {}

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
