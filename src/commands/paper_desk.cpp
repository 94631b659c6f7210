#include "commands/paper_desk.hpp"

#include "commands/paper_pictures.hpp"
#include "disk/whole_file.hpp"
#include "studio/sentences.hpp"
#include "studio/worker.hpp"
#include "words/commands_says.hpp"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>

#include <cerrno>
#include <deque>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>

extern char** environ;

namespace commands {

namespace {

using Path = std::filesystem::path;
using Say = words::CommandsSay;

constexpr int most_of_a_name = 1000;

// What a viewer that outlives the desk may still have to say goes nowhere.
struct Said {
  std::mutex mutex; // over all of it
  std::deque<bench::Input> news;
  std::function<void()> wake;
  int writing = 0;

  void say(bench::Input input) {
    const std::lock_guard lock(mutex);
    news.push_back(std::move(input));
    if (wake) wake();
  }
  void written(bench::Input input) {
    const std::lock_guard lock(mutex);
    --writing;
    news.push_back(std::move(input));
    if (wake) wake();
  }
};

// As a program of its own, with no shell between; its chatter goes nowhere. 0, else errno.
int start(const std::string& viewer, const std::string& file, pid_t& pid) {
  posix_spawn_file_actions_t quiet;
  posix_spawnattr_t apart;
  if (const int code = posix_spawn_file_actions_init(&quiet)) return code;
  if (const int code = posix_spawnattr_init(&apart)) {
    posix_spawn_file_actions_destroy(&quiet);
    return code;
  }
  for (const int handle : {1, 2})
    posix_spawn_file_actions_addopen(&quiet, handle, "/dev/null", O_WRONLY, 0);
  posix_spawnattr_setflags(&apart, POSIX_SPAWN_SETPGROUP); // it stays when the window goes
  std::string program = viewer, argument = file;
  char* words[] = {program.data(), argument.data(), nullptr};
  const int code = posix_spawnp(&pid, viewer.c_str(), &quiet, &apart, words, environ);
  posix_spawnattr_destroy(&apart);
  posix_spawn_file_actions_destroy(&quiet);
  return code;
}

bool ended_well(pid_t pid) {
  int how = 0;
  while (waitpid(pid, &how, 0) < 0)
    if (errno != EINTR) return true; // somebody else has seen its end
  return WIFEXITED(how) && WEXITSTATUS(how) == 0;
}

void show(const std::string& viewer, const std::string& file, const std::shared_ptr<Said>& said) {
  pid_t pid = 0;
  const auto failed = [said, viewer, file](Say why) {
    said->say(bench::PaperNotShown{words::Error{why, {file, viewer}}});
  };
  if (const int code = start(viewer, file, pid))
    return failed(code == ENOENT ? Say::paper_no_viewer : Say::paper_not_shown);
  try {
    std::thread([pid, failed] {
      if (!ended_well(pid)) failed(Say::paper_not_shown);
    }).detach(); // some viewers run for as long as their window is open
  } catch (const std::system_error&) { return; } // it is shown, only nobody waits for its end
}

struct Desk {
  const Path home;
  const std::unique_ptr<disk::Files> files;
  const std::string viewer;
  const PictureHome pictures;
  const std::shared_ptr<Said> said = std::make_shared<Said>();
  studio::Worker worker = {}; // last: it ends before what its jobs look at

  Desk(PictureHome photos, std::unique_ptr<disk::Files> by, std::string with,
       std::function<void()> wake)
      : home(photos.studio), files(std::move(by)), viewer(std::move(with)),
        pictures(std::move(photos)) {
    said->wake = std::move(wake);
  }
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;
  ~Desk() {
    const std::lock_guard lock(said->mutex);
    said->wake = nullptr;
  }

  void put(HandedFile file) {
    if (file.ending == ".html") file.bytes = with_pictures(file.bytes, pictures);
    auto written = write_paper(*files, home, file);
    if (!written) return said->written(bench::PaperWritten{tl::make_unexpected(written.error())});
    said->written(bench::PaperWritten{written->string()});
    if (!viewer.empty()) show(viewer, written->string(), said);
  }
  void write(HandedFile file) {
    {
      const std::lock_guard lock(said->mutex);
      ++said->writing;
    }
    worker.give([this, f = std::move(file)] { put(f); });
  }
  std::optional<bench::Input> poll() {
    const std::lock_guard lock(said->mutex);
    if (said->news.empty()) return std::nullopt;
    std::optional<bench::Input> first = std::move(said->news.front());
    said->news.pop_front();
    return first;
  }
  bool is_busy() {
    const std::lock_guard lock(said->mutex);
    return said->writing > 0 || !said->news.empty();
  }
};

}

words::Result<Path> write_paper(disk::Files& files, const Path& studio, const HandedFile& file) {
  const Path folder = studio / paper_folder;
  for (const Path& made : {studio, folder})
    if (const int code = files.make_folder(made).code; code != 0 && code != EEXIST)
      return tl::make_unexpected(studio::error(disk::Operation::make_folder, made, code));
  for (int i = 1;; ++i) {
    const Path path = folder / (file.stem + (i > 1 ? "-" + std::to_string(i) : "") + file.ending);
    const auto failed = disk::write_new(files, path, file.bytes);
    const bool there = failed && failed->code == EEXIST;
    if (there && files.read_piece(path, 0, file.bytes.size() + 1).bytes == file.bytes) return path;
    if (there && i < most_of_a_name) continue;
    if (failed) return tl::make_unexpected(studio::error(*failed));
    if (const int code = files.force_folder(folder).code)
      return tl::make_unexpected(studio::error(disk::Operation::force, folder, code));
    return path;
  }
}

Papers paper_desk(PictureHome home, std::unique_ptr<disk::Files> files, const std::string& viewer,
                  std::function<void()> wake) {
  const std::string folder = (home.studio / paper_folder).string();
  const auto desk =
      std::make_shared<Desk>(std::move(home), std::move(files), viewer, std::move(wake));
  Papers out;
  out.folder = folder;
  out.write = [desk](HandedFile file) { desk->write(std::move(file)); };
  out.poll = [desk] { return desk->poll(); };
  out.is_busy = [desk] { return desk->is_busy(); };
  return out;
}

}
