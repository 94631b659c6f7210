#include "commands/folders.hpp"

#include "bench/record.hpp"
#include "studio/kept.hpp"

namespace commands {

Setup usual_setup(const std::optional<std::string>& studio, const bench::Now& now) {
  Setup setup;
  const studio::Path state = studio::state_folder();
  setup.studio = studio ? studio::Path(*studio) : studio::default_studio();
  setup.adrift = studio::adrift_folder(state, setup.studio);
  setup.session = bench::fresh_id(now);
  setup.device = studio::device_id(state, now.fresh);
  if (!state.empty()) setup.tablet_file = state / "tablet.json";
  return setup;
}

OpenKeeper in_folders(const Setup& setup) {
  return [setup](const std::function<void()>& wake) {
    Keeper keeper;
    keeper.home = studio::open(setup.studio, setup.fault, wake, setup.home_files);
    keeper.stand_in_folder = setup.adrift.string();
    if (!setup.adrift.empty())
      keeper.stand_in = studio::open(setup.adrift, std::nullopt, wake, setup.adrift_files);
    if (setup.tablet_file.empty()) return keeper;
    keeper.tablet = [file = setup.tablet_file] { return studio::kept(*disk::posix_files(), file); };
    keeper.keep_tablet = [file = setup.tablet_file](const std::string& text) {
      return studio::keep(*disk::posix_files(), file, text);
    };
    return keeper;
  };
}

Driver::Driver(const Setup& setup, const bench::Now& now) : Driver(setup, in_folders(setup), now) {}

}
