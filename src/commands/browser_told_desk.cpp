#include "commands/browser_told_desk.hpp"

#include "commands/browser_text.hpp"
#include "studio/told_in_file.hpp"
#include "words/studio_says.hpp"

#include <emscripten/emscripten.h>

#include <utility>

extern "C" { // browser_told_desk.js
void slabside_save_told(const char* name, const char* bytes, std::size_t count);
// Begun within the tap itself, as browsers want it; answered later by slabside_told_picked, once
// for each file that is picked.
void slabside_pick_told(std::size_t most_bytes);
}

namespace commands {

namespace {

struct Picking {
  std::function<void()> wake = {};
  ToldFiles::IsOwn is_own = {};
  std::function<void(ToldFiles::Found)> then = {};
};

Picking& picking() {
  static Picking one;
  return one;
}

words::Result<std::string> save(const paint::ToldRange& told, const std::string& day) {
  const std::string name = "slabside-" + day + ".json", bytes = paint::bytes_of(told);
  slabside_save_told(name.c_str(), bytes.data(), bytes.size());
  return name;
}

void pick(ToldFiles::IsOwn is_own, std::function<void(ToldFiles::Found)> then) {
  picking().is_own = std::move(is_own);
  picking().then = std::move(then);
  slabside_pick_told(paint::most_told_bytes + 1);
}

ToldFiles::Found found_in(const std::string& name, std::int64_t at, std::string_view bytes) {
  auto told = studio::told_in_file(name, bytes);
  if (!told) return tl::make_unexpected(told.error());
  if (picking().is_own(*told))
    return words::failure(words::StudioSay::told_file_refused,
                          {name, words::Inner(words::Error{words::StudioSay::told_by_itself, {}})});
  return bench::FriendsFile{name, at, *std::move(told), {}};
}

}

ToldFiles browser_told_desk(std::function<void()> wake) {
  picking().wake = std::move(wake);
  return {"", save, pick};
}

}

extern "C" {

// `failure`: the browser's own words where it could not read the file; empty: it could.
EMSCRIPTEN_KEEPALIVE void slabside_told_picked(char* name, double at, char* bytes,
                                               std::size_t count, char* failure) {
  const std::string of = commands::taken(name), why = commands::taken(failure);
  const std::string all(bytes, count);
  std::free(bytes);
  commands::Picking& picking = commands::picking();
  if (why.empty())
    picking.then(commands::found_in(of, static_cast<std::int64_t>(at), all));
  else
    picking.then(words::failure(words::StudioSay::disk_read_failed, {of, why}));
  picking.wake();
}
}
