#include "commands/folders.hpp"

#include "bench/record.hpp"
#include "studio/kept.hpp"

namespace commands {

Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now, bool anew) {
  Setup setup;
  const studio::Path state = studio::state_folder();
  setup.studio = studio ? studio::Path(*studio) : studio::default_studio();
  setup.fallback = studio::fallback_folder(state, setup.studio);
  setup.session = bench::fresh_id(now);
  setup.device = studio::device_id(state, now.fresh);
  setup.identity = studio::identity_of(state, setup.studio, setup.device, now.fresh, anew);
  if (!state.empty()) setup.tablet_file = state / "tablet.json";
  return setup;
}

OpenStorage in_folders(const Setup& setup) {
  return [setup](const std::function<void()>& wake) {
    Storage storage;
    storage.home = studio::open(setup.studio, setup.fault, wake, setup.home_files, setup.identity);
    storage.fallback_folder = setup.fallback.string();
    if (!setup.fallback.empty())
      storage.fallback = studio::open(setup.fallback, std::nullopt, wake, setup.fallback_files);
    if (setup.tablet_file.empty()) return storage;
    storage.tablet = [file = setup.tablet_file] {
      return studio::kept(*disk::posix_files(), file);
    };
    storage.keep_tablet = [file = setup.tablet_file](const std::string& text) {
      return studio::keep(*disk::posix_files(), file, text);
    };
    return storage;
  };
}

EffectRunner::EffectRunner(const Setup& setup, const bench::Now& now)
    : EffectRunner(setup, in_folders(setup), now) {}

}
