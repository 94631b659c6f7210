#include "commands/photo.hpp"

#include "bench/record.hpp"
#include "commands/clock.hpp"
#include "commands/folders.hpp"
#include "commands/inputs.hpp"
#include "commands/show.hpp"
#include "session/resolve.hpp"
#include "studio/photos.hpp"
#include "words/commands_says.hpp"

#include <ostream>

namespace commands {

namespace {

// The bench numbers and stamps the lines, after everything that was said of the batch before.
std::vector<session::Line> lines_of(const session::Photo& photo, const std::string& batch,
                                    std::vector<session::Log> logs, const bench::Now& now) {
  const Setup setup = usual_setup(std::nullopt, now);
  bench::Bench bench = bench::start(setup.session, setup.device, setup.display, now);
  bench::step(bench, bench::Loaded{std::move(logs), {}, {}}, now);
  bench::Effects said;
  bench::record(bench, batch, photo, now, said);
  bench::record(bench, "", session::Left{}, now, said);
  return said.append;
}

}

words::Result<int> keep_photo(const PhotoToKeep& wanted, std::ostream& out, std::ostream& err) {
  auto photo = studio::photo_from(wanted.bytes, wanted.of);
  if (!photo) return tl::make_unexpected(photo.error());
  photo->measured = wanted.measured;
  auto reading = read_studio({wanted.home, wanted.fallback});
  if (!reading) return tl::make_unexpected(reading.error());
  auto logs = session::join_parts(std::move(reading->files));
  const auto batch = find_batch(logs, wanted.batch);
  if (!batch) return tl::make_unexpected(batch.error());

  const studio::Bell bell;
  const auto disk = studio::open(wanted.home, wanted.fault, [bell] { bell.ring(); });
  auto lines = lines_of(*photo, batch->id, std::move(logs), real_now());
  if (const auto failure =
          studio::keep_photo(*disk, bell, *photo, wanted.bytes, std::move(lines))) {
    err << printable(words::message(*failure)) << '\n';
    return 1;
  }
  out << words::say(words::CommandsSay::photo_kept, {studio::photo_file(*photo)}) << '\n';
  return 0;
}

std::optional<session::Photo> last_swatch(const std::vector<session::Log>& logs,
                                          const std::string& batch) {
  std::optional<session::Photo> last;
  const session::Resolution resolution = session::resolve(session::all_of(logs), batch);
  for (const session::Resolved& line : resolution.lines) {
    const auto* photo = std::get_if<session::Photo>(line.event);
    if (photo && !line.withdrawn && photo->of == session::PhotoOf::swatch) last = *photo;
  }
  return last;
}

}
