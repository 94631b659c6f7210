#include "studio/photos.hpp"

#include "studio/decode.hpp"
#include "studio/journal.hpp"
#include "studio/sentences.hpp"
#include "words/studio_says.hpp"

#include <cerrno>
#include <set>

namespace studio {

namespace {

using Say = words::StudioSay;

void wait_past(const Bell& bell, long rings) {
  bell.wait_past(rings, std::chrono::steady_clock::now() + std::chrono::hours(1));
}

disk::Answer ask(disk::Disk& disk, const Bell& bell, disk::Request request) {
  disk.submit(std::move(request));
  for (;;) {
    const long rings = bell.rings(); // before looking, so that no answer is slept through
    std::vector<disk::Answer> answers = disk.answers();
    if (!answers.empty()) return std::move(answers.front());
    wait_past(bell, rings);
  }
}

std::optional<words::Error> write(disk::Disk& disk, const Bell& bell,
                                  std::vector<session::Line> lines) {
  const std::uint64_t last = lines.back().n;
  Journal journal(disk);
  for (session::Line& line : lines) journal.append(std::move(line));
  words::Error failure;
  for (;;) {
    const long rings = bell.rings();
    for (const News& news : journal.poll()) {
      if (const auto* failed = std::get_if<Failed>(&news)) failure = failed->reason;
      if (const auto* saved = std::get_if<Saved>(&news); saved && saved->n == last)
        return std::nullopt;
    }
    if (journal.stuck() || journal.unsaved() == 0) return failure;
    wait_past(bell, rings);
  }
}

std::optional<words::Error> fault(disk::Files& files, const std::filesystem::path& file,
                                  const session::Photo& photo, const std::string& batch) {
  if (files.size(file).code == ENOENT)
    return words::Error{Say::photo_missing, {photo_file(photo), batch}};
  const auto sum = sha256_of_file(files, file);
  if (!sum) return sum.error();
  if (*sum == photo.sha256) return std::nullopt;
  return words::Error{Say::photo_changed, {photo_file(photo), batch}};
}

}

words::Result<session::Photo> photo_from(std::string_view bytes, session::PhotoOf of) {
  const auto header = picture_header(bytes);
  if (!header) return tl::make_unexpected(header.error());
  const auto pixels = decode_part(bytes, *header, 8);
  if (!pixels) return tl::make_unexpected(pixels.error());
  return session::Photo{sha256(bytes), header->kind == PictureKind::jpg ? "jpg" : "png", of};
}

std::string photo_file(const session::Photo& photo) {
  return std::string(photos_folder) + "/" + photo.sha256 + "." + photo.ending;
}

std::optional<words::Error> keep_photo(disk::Disk& disk, const Bell& bell,
                                       const session::Photo& photo, std::string bytes,
                                       std::vector<session::Line> lines) {
  // First the picture, then the line that names it: a power cut between leaves no line without one.
  const auto kept = ask(disk, bell, disk::Keep{photo_file(photo), std::move(bytes)});
  if (!kept.failures.empty()) return error(kept.failures.front());
  return write(disk, bell, std::move(lines));
}

std::optional<words::Error> keep_lines(disk::Disk& disk, const Bell& bell,
                                       std::vector<session::Line> lines) {
  return write(disk, bell, std::move(lines));
}

std::vector<words::Error> photo_faults(disk::Files& files, const std::filesystem::path& studio,
                                       const std::vector<session::File>& sessions) {
  std::vector<words::Error> faults;
  std::set<std::string> seen;
  for (const session::File& file : sessions)
    for (const session::Line& line : file.lines) {
      const auto* photo = std::get_if<session::Photo>(&line.event);
      if (!photo || !seen.insert(photo_file(*photo)).second) continue;
      if (auto found = fault(files, studio / photo_file(*photo), *photo, line.batch))
        faults.push_back(*std::move(found));
    }
  return faults;
}

}
