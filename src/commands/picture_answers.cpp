#include "commands/picture_answers.hpp"

#include "commands/inputs.hpp"
#include "commands/picture_facts.hpp"
#include "disk/whole_file.hpp"
#include "studio/photo_pixels.hpp"
#include "studio/photos.hpp"
#include "studio/picture.hpp"
#include "studio/pieces.hpp"
#include "studio/sentences.hpp"
#include "words/lists.hpp"
#include "words/photos_says.hpp"

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <system_error>

namespace commands {

namespace {

using Path = std::filesystem::path;
using bench::ImageFacts;
using words::PhotosSay;

constexpr std::string_view elsewhere = "file:";

// ---- a folder

std::int64_t written_at(const std::filesystem::directory_entry& entry) {
  std::error_code failed;
  const auto at = entry.last_write_time(failed);
  if (failed) return 0;
  const auto system = std::chrono::file_clock::to_sys(at);
  return std::chrono::duration_cast<std::chrono::milliseconds>(system.time_since_epoch()).count();
}

bool is_picture_by_name(const Path& file) {
  std::string ending = file.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](unsigned char c) { return c < 128 ? std::tolower(c) : c; });
  return ending == ".jpg" || ending == ".jpeg" || ending == ".png";
}

struct Listing {
  std::vector<bench::PictureFile> newest;
  std::size_t there = 0;
};

words::Result<Listing> pictures_in(const std::string& folder) {
  std::error_code failed, ignored;
  if (!std::filesystem::is_directory(folder, ignored))
    return words::failure(PhotosSay::folder_none, {folder});
  std::vector<bench::PictureFile> out;
  std::filesystem::directory_iterator entry(folder, failed), end;
  for (; !failed && entry != end; entry.increment(failed))
    if (is_picture_by_name(entry->path()) && entry->is_regular_file(ignored))
      out.push_back(
          {entry->path().string(), entry->path().filename().string(), written_at(*entry)});
  if (failed)
    return words::failure(PhotosSay::folder_unread,
                          {folder, words::Inner(studio::error_of_system(failed.value()))});
  std::sort(out.begin(), out.end(), [](const auto& a, const auto& b) {
    return a.at != b.at ? a.at > b.at : a.name > b.name;
  });
  const std::size_t there = out.size();
  if (there > bench::most_pictures) out.resize(bench::most_pictures);
  return Listing{std::move(out), there};
}

bench::PicturesListed listed(const std::string& folder) {
  auto listing = pictures_in(folder);
  if (!listing) return {folder, tl::make_unexpected(std::move(listing.error()))};
  return {folder, std::move(listing->newest), listing->there};
}

// ---- a picture

words::Result<colour::Photo> photo_at(const PictureHome& home, const std::string& image) {
  const auto bytes = bytes_of_image(home, image);
  if (!bytes) return tl::make_unexpected(bytes.error());
  return studio::read_photo(*bytes);
}

words::Result<ImageFacts> look_at(const PictureHome& home, const std::string& image) {
  const auto photo = photo_at(home, image);
  if (!photo) return tl::make_unexpected(photo.error());
  return facts_of(*photo);
}

// ---- kept

// There already where the same photo was kept before; else new, and safe before any line names it.
std::optional<words::Error> put(disk::Files& files, const Path& studio, const session::Photo& photo,
                                const std::string& bytes) {
  const Path folder = studio / studio::photos_folder, file = studio / studio::photo_file(photo);
  for (const Path& made : {studio, folder})
    if (const int code = files.make_folder(made).code; code != 0 && code != EEXIST)
      return studio::error(disk::Operation::make_folder, made, code);
  const auto failed = disk::write_new(files, file, bytes);
  const bool there = failed && failed->code == EEXIST;
  if (there) {
    const auto sum = studio::sha256_of_file(files, file);
    if (!sum) return sum.error();
    if (*sum != photo.sha256) return studio::error(*failed);
  } else if (failed) {
    return studio::error(*failed);
  }
  if (const int code = files.force_folder(folder).code)
    return studio::error(disk::Operation::force, folder, code);
  return std::nullopt;
}

words::Result<session::Photo> keep(const PictureHome& home, const bench::KeepPicture& wanted) {
  const auto bytes = bytes_of_image(home, bench::image_of_file(wanted.file));
  if (!bytes) return tl::make_unexpected(bytes.error());
  const auto photo = studio::photo_from(*bytes, wanted.of);
  if (!photo) return tl::make_unexpected(photo.error());
  if (auto failed = put(*home.files(), home.studio, *photo, *bytes))
    return tl::make_unexpected(*std::move(failed));
  return *photo;
}

}

words::Result<std::string> bytes_of_image(const PictureHome& home, const std::string& image) {
  const bool in_studio = image.compare(0, elsewhere.size(), elsewhere) != 0;
  const std::string path =
      in_studio ? (home.studio / image).string() : image.substr(elsewhere.size());
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored))
    return words::failure(PhotosSay::is_folder, {path});
  const bool gone =
      std::filesystem::status(path, ignored).type() == std::filesystem::file_type::not_found;
  if (in_studio && gone) return words::failure(PhotosSay::gone, {shortened(image)});
  auto bytes = bytes_of_file(path, studio::most_picture_bytes);
  if (bytes && in_studio && studio::sha256(*bytes) != Path(image).stem())
    return words::failure(PhotosSay::changed, {shortened(image)});
  return bytes;
}

bench::Input answer(const PictureHome& home, const bench::PhotoWanted& wanted) {
  return std::visit(
      words::Overloaded{
          [&](const bench::ListPictures& w) -> bench::Input { return listed(w.folder); },
          [](const bench::PickPictures&) -> bench::Input {
            return bench::Dropped{};
          }, // a browser's
          [&](const bench::LookAtPicture& w) -> bench::Input {
            return bench::ImageSeen{w.image, look_at(home, w.image)};
          },
          [&](const bench::KeepPicture& w) -> bench::Input {
            return bench::PhotoKept{w.file, w.batch, keep(home, w)};
          },
          [&](const bench::ReadSwatch& w) -> bench::Input {
            return swatch_read(w, photo_at(home, bench::image_of(w.photo)));
          }},
      wanted);
}

}
