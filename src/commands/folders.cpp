#include "commands/folders.hpp"

#include "bench/record.hpp"
#include "commands/clock.hpp"
#include "commands/paper_desk.hpp"
#include "commands/picture_desk.hpp"
#include "studio/kept.hpp"
#include "studio/told_files.hpp"

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
  setup.thumbs = thumbs_folder();
  return setup;
}

namespace {

void give_told(Storage& storage, const Setup& setup) {
  const studio::Path studio = std::filesystem::absolute(setup.studio);
  storage.told.folder = (studio / studio::told_folder).string();
  // Of this studio alone, as all that is kept.
  const auto open = [studio, identity = setup.identity] {
    return studio::founding_files(disk::posix_files(), studio, false, identity);
  };
  storage.told.tell = [studio, open](const paint::ToldRange& told,
                                     const std::string& day) -> words::Result<std::string> {
    const auto written = studio::write_told(*open(), studio, day, told);
    if (!written) return tl::make_unexpected(written.error());
    return written->string();
  };
  storage.told.find = [studio, open](const auto& is_own, const auto& then) {
    auto found = studio::newest_told(*open(), studio, is_own);
    if (!found) return then(tl::make_unexpected(found.error()));
    if (!*found) return then(std::nullopt);
    then(bench::FriendsFile{(*found)->name, (*found)->at, std::move((*found)->told),
                            std::move((*found)->passed_over)});
  };
}

}

PictureHome picture_home(const Setup& setup) {
  const studio::Path studio = std::filesystem::absolute(setup.studio);
  return {studio,
          [studio, make = setup.home_files, identity = setup.identity] {
            return studio::founding_files(make(), studio, false, identity);
          },
          setup.thumbs, pictures_folder()};
}

OpenStorage in_folders(const Setup& setup) {
  return [setup](const std::function<void()>& wake) {
    Storage storage;
    storage.home = studio::open(setup.studio, setup.fault, wake, setup.home_files, setup.identity);
    storage.fallback_folder = setup.fallback.string();
    if (!setup.fallback.empty())
      storage.fallback = studio::open(setup.fallback, std::nullopt, wake, setup.fallback_files);
    give_told(storage, setup);
    storage.papers = paper_desk(picture_home(setup), setup.home_files(), setup.viewer, wake);
    storage.pictures = picture_desk(picture_home(setup), wake);
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
