#include "commands/copies.hpp"

#include "commands/check.hpp"
#include "commands/show.hpp"
#include "studio/journal.hpp"
#include "studio/mend.hpp"
#include "studio/pack.hpp"
#include "words/commands_says.hpp"

#include <algorithm>
#include <ostream>

namespace commands {

namespace {

using Say = words::CommandsSay;

void line(std::ostream& out, words::Sentence id, const words::Args& args) {
  out << printable(words::say(id, args)) << '\n';
}

// What was saved while the studio failed keeps its name when the next start brings it home.
bool all_came_home(disk::Files& files, const Path& studio, const Path& fallback) {
  const auto home = files.list(studio / studio::sessions_folder).names;
  const auto away = files.list(fallback / studio::sessions_folder).names;
  return std::all_of(away.begin(), away.end(), [&](const std::string& name) {
    return std::find(home.begin(), home.end(), name) != home.end();
  });
}

std::string files_words(std::size_t files) {
  return words::counted(files, Say::count_file, Say::count_files);
}

int done(std::ostream& out, words::Sentence id, const Path& made, const studio::Packed& packed) {
  line(out, id, {made.string(), files_words(packed.files), std::to_string(packed.bytes)});
  return 0;
}

// Of what was unpacked, which may have been damaged before. The exit status.
int say_what_is_damaged(const studio::Reading& reading, const Path& folder, std::ostream& out) {
  const std::vector<Finding> found = findings(reading, session::join_parts(reading.files));
  for (const Finding& f : found) line(out, f.what.what, f.what.args);
  const std::size_t places = damaged_places(found);
  if (places == 0) return 0;
  line(out, Say::unpack_damaged,
       {words::counted(places, Say::count_place, Say::count_places), folder.string()});
  return 1;
}

}

words::Result<int> mend(const Path& studio, const Path& fallback, const Path& folder,
                        std::ostream& out) {
  const auto files = disk::posix_files();
  const auto report = studio::mend(*files, studio, folder, fallback);
  if (!report) return tl::make_unexpected(report.error());
  for (const words::Error& file : report->files) line(out, file.what, file.args);
  for (const session::Damage& d : report->torn)
    line(out, Say::check_note,
         {d.file, std::to_string(d.line), std::to_string(d.byte), words::Inner(d.reason)});
  for (const words::Error& lost : report->lost) line(out, Say::mend_lost, {words::Inner(lost)});
  for (const session::Damage& d : report->still)
    line(out, Say::mend_still,
         {d.file, std::to_string(d.line), std::to_string(d.byte), words::Inner(d.reason)});
  line(out, Say::mend_summary,
       {folder.string(), files_words(report->files.size()),
        words::counted(report->lost.size(), Say::count_lost, Say::count_losts)});
  return report->lost.empty() && report->still.empty() ? 0 : 1;
}

words::Result<int> pack(const Path& studio, const Path& fallback, const Path& file,
                        std::ostream& out) {
  const auto files = disk::posix_files();
  const auto packed = studio::pack(*files, studio, file);
  if (!packed) return tl::make_unexpected(packed.error());
  for (const std::string& name : packed->left_out) line(out, Say::pack_left_out, {name});
  if (!fallback.empty() && !all_came_home(*files, studio, fallback))
    line(out, Say::pack_fallback, {fallback.string()});
  for (const words::Error& missed : packed->missed) line(out, missed.what, missed.args);
  done(out, Say::pack_done, file, *packed);
  return packed->missed.empty() ? 0 : 1;
}

words::Result<int> unpack(const Path& file, const Path& folder, std::ostream& out) {
  const auto files = disk::posix_files();
  const auto packed = studio::unpack(*files, file, folder);
  if (!packed) return tl::make_unexpected(packed.error());
  done(out, Say::unpack_done, folder, *packed);
  return say_what_is_damaged(studio::read_all(folder, {}), folder, out);
}

}
