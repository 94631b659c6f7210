// What the pads of a batch's photos do, and what becomes of what they ask for.
#include "bench/act.hpp"
#include "bench/choices.hpp"
#include "bench/folds.hpp"
#include "bench/pads_photos.hpp"
#include "bench/pads_shared.hpp"
#include "bench/photo_regions.hpp"
#include "bench/record.hpp"
#include "words/photos_says.hpp"

#include <algorithm>
#include <utility>

namespace bench {

namespace {

using words::PhotosSay;

std::string name_of_file(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  return slash == std::string::npos ? path : path.substr(slash + 1);
}

void forget_picture(PhotosState& state) {
  state.facts.reset();
  state.regions.clear();
  state.reading.reset();
  state.at_fault.clear();
  state.hold.reset();
  state.failure.reset();
  state.waits = false;
}

void turn_to(PhotosState& state, PhotosPage page) {
  forget_picture(state);
  state.page = page;
  state.list = {};
  state.from_trail = state.from_trail && page == PhotosPage::open;
}

void look_at_shown(Bench& bench, Effects& effects) {
  forget_picture(bench.photos);
  bench.photos.waits = true;
  effects.photos.push_back(LookAtPicture{image_shown(bench)});
}

void open_one(Bench& bench, const std::string& sha256, Effects& effects) {
  turn_to(bench.photos, PhotosPage::open);
  bench.photos.open = sha256;
  bench.photos.region = 0;
  look_at_shown(bench, effects);
}

void ask_about(Bench& bench, Effects& effects) {
  bench.photos.page = PhotosPage::asked;
  look_at_shown(bench, effects);
}

// The one that was asked about is dealt with.
void ask_next(Bench& bench, Effects& effects) {
  PhotosState& state = bench.photos;
  if (!state.asked.empty()) state.asked.erase(state.asked.begin());
  if (!state.asked.empty()) return ask_about(bench, effects);
  turn_to(state, PhotosPage::kept);
}

void list_folder(Bench& bench, Effects& effects) {
  PhotosState& state = bench.photos;
  state.failure.reset();
  state.pictures.clear();
  state.list = {};
  state.waits = true;
  state.listed = state.folder;
  effects.photos.push_back(ListPictures{state.folder});
}

void look_there(Bench& bench, Effects& effects) {
  bench.tablet.photo_folder = bench.photos.folder;
  effects.keep_tablet = true;
  list_folder(bench, effects);
}

void choose_file(Bench& bench, const std::string& name, Effects& effects) {
  PhotosState& state = bench.photos;
  const auto file = std::find_if(state.pictures.begin(), state.pictures.end(),
                                 [&](const PictureFile& p) { return p.name == name; });
  if (file == state.pictures.end()) return;
  state.asked = {file->path};
  state.chosen = true;
  ask_about(bench, effects);
}

void keep_as(Bench& bench, const std::string& of, Effects& effects) {
  PhotosState& state = bench.photos;
  const auto kind = session::photo_of_named(of);
  if (!kind || state.asked.empty()) return;
  state.failure.reset();
  state.waits = true;
  effects.photos.push_back(KeepPicture{state.asked.front(), state.batch, *kind});
}

void record_photo(Bench& bench, const std::string& batch, session::Event event, const Now& now,
                  Effects& effects) {
  record(bench, batch, std::move(event), now, effects);
  if (batch == bench.batch) refold(bench, now);
  fold_what_shows(bench);
}

// Of the open photo, those of its lines that `which` chooses.
template <class Which>
void withdraw_lines(Bench& bench, const Which& which, const Now& now, Effects& effects) {
  const std::string key = bench.photos.open, of = bench.photos.batch;
  const Folded batch = fold_of(bench, of);
  if (!batch) return;
  std::vector<session::Ref> lines;
  for (const session::Entry& e : batch->entries) {
    const auto* photo = std::get_if<session::Photo>(&e.event);
    if (photo && !e.withdrawn && key_of(*photo) == key && which(*photo)) lines.push_back(e.ref);
  }
  for (const session::Ref& line : lines) {
    record_photo(bench, of, session::Withdrawn{line}, now, effects);
    bench.sitting.picked_out.insert(bench.sitting.next_n - 1);
  }
}

// Each line that names it, also one that was read from it.
void take_away(Bench& bench, const Now& now, Effects& effects) {
  withdraw_lines(
      bench, [](const session::Photo&) { return true; }, now, effects);
  turn_to(bench.photos, PhotosPage::kept);
}

void give_back(Bench& bench, const Now& now, Effects& effects) {
  const std::string of = bench.photos.batch;
  const Folded batch = fold_of(bench, of);
  if (!batch || !photo_taken_away(bench, *batch)) return;
  for (const session::Ref& line : undone_together(bench, *batch, *undo_target(bench, *batch)))
    record_photo(bench, of, session::Withdrawn{line}, now, effects);
}

// As it was kept before, read or not.
bool is_kept(Bench& bench, const std::string& of, const session::Photo& photo) {
  const Folded batch = fold_of(bench, of);
  if (!batch) return false;
  for (const session::Photo& kept : photos_of(*batch))
    if (key_of(kept) == key_of(photo)) return true;
  return false;
}

// One of the folder is left for another one of it.
void leave_out(Bench& bench, Effects& effects) {
  PhotosState& state = bench.photos;
  const bool chosen = std::exchange(state.chosen, false);
  const Scroll list = state.list;
  ask_next(bench, effects);
  if (!chosen || state.page != PhotosPage::kept) return;
  turn_to(state, PhotosPage::folder);
  state.list = list;
}

void leave(Bench& bench, Effects& effects) {
  PhotosState& state = bench.photos;
  switch (state.page) {
  case PhotosPage::asked: return leave_out(bench, effects);
  case PhotosPage::open:
    if (state.from_trail) return go_to(bench, state.from_slab ? Screen::slab : Screen::book);
    return turn_to(state, PhotosPage::kept);
  case PhotosPage::folder: return turn_to(state, PhotosPage::kept);
  case PhotosPage::kept: return go_to(bench, state.from_slab ? Screen::slab : Screen::book);
  }
}

void read_shown(Bench& bench, Effects& effects) {
  PhotosState& state = bench.photos;
  auto photo = open_photo(bench);
  if (!photo || state.regions.empty()) return;
  photo->read_at = written_down(state.regions);
  state.failure.reset();
  state.at_fault.clear();
  state.waits = true;
  colour::Regions at;
  at.swatch = state.regions.front();
  at.paper.assign(state.regions.begin() + 1, state.regions.end());
  effects.photos.push_back(ReadSwatch{state.batch, *photo, at});
}

// Kept with the picture, beside what was counted on it.
void judge_specks(Bench& bench, const std::string& word, const Now& now, Effects& effects) {
  auto photo = open_photo(bench);
  const auto as = session::specks_named(word);
  if (!photo || !as || photo->of != session::PhotoOf::dot) return;
  session::SpecksSeen seen{*as};
  if (bench.photos.facts) seen.counted = bench.photos.facts->specks;
  if (photo->specks == seen) return;
  photo->specks = seen;
  record_photo(bench, bench.photos.batch, *photo, now, effects);
}

// The photo stays: the line that kept it says nothing of specks, unless another program wrote it.
void unsay_specks(Bench& bench, const Now& now, Effects& effects) {
  auto photo = open_photo(bench);
  if (!photo || !photo->specks) return;
  withdraw_lines(
      bench, [](const session::Photo& p) { return p.specks.has_value(); }, now, effects);
  photo->specks.reset();
  if (!open_photo(bench)) record_photo(bench, bench.photos.batch, *photo, now, effects);
}

// What is gone, or is no longer what it was, is named by its own words.
words::Error named(const std::string& image, const words::Error& why) {
  if (why.what == PhotosSay::gone || why.what == PhotosSay::changed) return why;
  return {PhotosSay::of_picture, {name_of_file(image), words::Inner(why)}};
}

// Where the hands are: a photo belongs to a batch.
struct Target {
  std::string batch;
  bool from_slab = false;
};

std::optional<Target> target_of(const Bench& bench) {
  if (bench.screen == Screen::photos) return Target{bench.photos.batch, bench.photos.from_slab};
  if (bench.screen == Screen::slab && !bench.batch.empty()) return Target{bench.batch, true};
  const std::string batch = batch_of(bench.book.page);
  if (bench.screen != Screen::book || batch.empty() || is_discarded(bench, batch))
    return std::nullopt;
  return Target{batch, false};
}

}

// Those that were not yet asked about wait for the hands to come back.
void open_photos(Bench& bench, const std::string& batch, bool from_slab, Effects& effects) {
  PhotosState& state = bench.photos;
  turn_to(state, PhotosPage::kept);
  state.waiting[std::exchange(state.batch, batch)] = std::exchange(state.asked, {});
  state.asked = std::exchange(state.waiting[batch], {});
  state.from_slab = from_slab;
  state.chosen = false;
  go_to(bench, Screen::photos);
  if (!state.asked.empty()) ask_about(bench, effects);
}

void open_photo_of_trail(Bench& bench, const std::string& key, Effects& effects) {
  const bool slab = bench.screen == Screen::slab;
  open_photos(bench, slab ? bench.batch : batch_of(bench.book.page), slab, effects);
  fold_of(bench, bench.photos.batch);
  bench.photos.from_trail = true;
  open_one(bench, key, effects);
}

void take_dropped(Bench& bench, const Dropped& dropped, const Now& now, Effects& effects) {
  PhotosState& state = bench.photos;
  const auto target = target_of(bench);
  if (!state.there || dropped.files.empty() || bench.locked) return;
  if (!target) return say_error(bench, {PhotosSay::no_batch, {}}, now);
  const bool asks = bench.screen == Screen::photos && state.page == PhotosPage::asked;
  if (!asks) open_photos(bench, target->batch, target->from_slab, effects);
  state.asked.insert(state.asked.end(), dropped.files.begin(), dropped.files.end());
  state.chosen = false;
  if (!asks) ask_about(bench, effects);
}

void take_listed(Bench& bench, PicturesListed listed) {
  PhotosState& state = bench.photos;
  if (state.page != PhotosPage::folder || listed.folder != state.listed) return;
  state.waits = false;
  if (listed.files)
    state.pictures = *std::move(listed.files), state.in_folder = listed.there;
  else
    state.failure = listed.files.error();
  if (listed.files && state.pictures.empty())
    state.failure = words::Error{PhotosSay::folder_empty, {state.folder}};
}

void take_seen(Bench& bench, const ImageSeen& seen) {
  PhotosState& state = bench.photos;
  constexpr std::size_t most_remembered = 2 * most_pictures;
  if (state.no_pictures.size() > most_remembered) state.no_pictures.clear();
  if (seen.facts)
    state.no_pictures.erase(seen.image);
  else
    state.no_pictures.insert_or_assign(seen.image, seen.facts.error());
  if (seen.image != image_shown(bench)) return;
  if (state.page == PhotosPage::asked || !state.facts) state.waits = false;
  if (!seen.facts) {
    state.failure = named(seen.image, seen.facts.error());
    return;
  }
  state.facts = *seen.facts;
  const auto photo = open_photo(bench);
  if (photo && photo->of == session::PhotoOf::swatch)
    state.regions = regions_at_first(*photo, *state.facts);
}

void take_kept(Bench& bench, const PhotoKept& kept, const Now& now, Effects& effects) {
  PhotosState& state = bench.photos;
  const bool looked_at = bench.screen == Screen::photos && state.page == PhotosPage::asked &&
                         !state.asked.empty() && state.asked.front() == kept.file;
  if (looked_at) state.waits = false;
  if (!kept.photo) {
    const words::Error failure{PhotosSay::cannot_keep, {words::Inner(kept.photo.error())}};
    if (looked_at) state.failure = failure;
    return looked_at ? void() : say_error(bench, failure, now);
  }
  if (bench.sitting.left) return;
  if (!is_kept(bench, kept.batch, *kept.photo))
    record_photo(bench, kept.batch, *kept.photo, now, effects);
  if (!looked_at) {
    std::erase(kept.batch == state.batch ? state.asked : state.waiting[kept.batch], kept.file);
    return;
  }
  state.chosen = false;
  ask_next(bench, effects);
  const bool to_read = kept.photo->of == session::PhotoOf::swatch;
  if (to_read && state.page == PhotosPage::kept) open_one(bench, key_of(*kept.photo), effects);
}

void take_read(Bench& bench, const SwatchRead& read, const Now& now, Effects& effects) {
  PhotosState& state = bench.photos;
  const bool looked_at =
      state.page == PhotosPage::open && state.open == key_of(read.photo) && state.waits;
  if (looked_at) state.waits = false;
  if (!read.reading) {
    if (!looked_at) return say_error(bench, read.reading.error(), now);
    state.failure = read.reading.error();
    state.at_fault = read.at_fault;
    return;
  }
  if (bench.sitting.left) return;
  session::Photo photo = read.photo;
  photo.measured = read.reading->measured;
  record_photo(bench, read.batch, photo, now, effects);
  if (looked_at) state.reading = *read.reading;
}

void act_on_photos(Bench& bench, const PadId& pad, const Now& now, Effects& effects) {
  if (pad.kind == SharedPad::leave) return leave(bench, effects);
  if (pad.kind == SharedPad::undo) return give_back(bench, now, effects);
  const auto own = pad.kind.as<PhotosPad>();
  if (!own) return;
  switch (*own) {
  case PhotosPad::photo: return open_one(bench, pad.arg, effects);
  case PhotosPad::add:
    if (bench.photos.picks) return effects.photos.push_back(PickPictures{});
    turn_to(bench.photos, PhotosPage::folder);
    if (!bench.tablet.photo_folder.empty()) bench.photos.folder = bench.tablet.photo_folder;
    return list_folder(bench, effects);
  case PhotosPad::look: return look_there(bench, effects);
  case PhotosPad::choose: return choose_file(bench, pad.arg, effects);
  case PhotosPad::of: return keep_as(bench, pad.arg, effects);
  case PhotosPad::region: return choose_region(bench.photos, pad.arg == "paper");
  case PhotosPad::larger: return scale_region(bench.photos, 1.25);
  case PhotosPad::smaller: return scale_region(bench.photos, 0.8);
  case PhotosPad::read: return read_shown(bench, effects);
  case PhotosPad::take_away: return take_away(bench, now, effects);
  case PhotosPad::specks: return judge_specks(bench, pad.arg, now, effects);
  case PhotosPad::unsay: return unsay_specks(bench, now, effects);
  case PhotosPad::folder_text: return; // a text field
  }
}

}
