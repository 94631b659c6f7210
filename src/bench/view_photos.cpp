#include "bench/choices.hpp"
#include "bench/pads_photos.hpp"
#include "bench/view_parts.hpp"

#include <algorithm>

namespace bench {

namespace {

using Thumb = PhotosView::Thumb;

std::optional<words::Error> why_none(const PhotosState& state, const std::string& image) {
  const auto found = state.no_pictures.find(image);
  return found == state.no_pictures.end() ? std::nullopt : std::optional(found->second);
}

Thumb thumb_of(const PhotosState& state, const PadId& pad, const session::Photo& photo) {
  Thumb t{pad, image_of(photo), "", photo.of};
  if (photo.measured) t.colour = photo.measured->shown;
  t.no_picture = why_none(state, t.image);
  return t;
}

Thumb thumb_of(const PhotosState& state, const PadId& pad, const PictureFile& file) {
  Thumb t{pad, image_of_file(file.path), file.name};
  t.no_picture = why_none(state, t.image);
  return t;
}

// Of the pads that lie there.
void add_thumbs(const Bench& bench, const Folded& batch, PhotosView& v) {
  const auto photos = batch ? photos_of(*batch) : std::vector<session::Photo>();
  const auto& files = bench.photos.pictures;
  v.count = v.page == PhotosPage::kept ? photos.size() : files.size();
  v.there = std::max(v.count, v.page == PhotosPage::kept ? 0 : bench.photos.in_folder);
  if (batch && v.page == PhotosPage::kept) v.undo = undo_view(bench, batch.get());
  for (const Pad& pad : layout(bench).pads) {
    if (pad.id.kind == PhotosPad::photo)
      for (const session::Photo& photo : photos)
        if (key_of(photo) == pad.id.arg) v.thumbs.push_back(thumb_of(bench.photos, pad.id, photo));
    if (pad.id.kind == PhotosPad::choose)
      for (const PictureFile& file : files)
        if (file.name == pad.id.arg) v.thumbs.push_back(thumb_of(bench.photos, pad.id, file));
  }
}

void add_picture(const Bench& bench, PhotosView& v) {
  const PhotosState& state = bench.photos;
  v.image = image_shown(bench);
  v.photo = open_photo(bench);
  v.reading = state.reading;
  if (!state.facts) return;
  v.picture = place_of_picture(*state.facts, layout(bench).main);
  v.see_through = state.facts->see_through;
  v.seen = !state.facts->regions.empty();
  v.two = !state.facts->others.empty();
  if (v.photo && v.photo->of == session::PhotoOf::dot) v.specks = state.facts->specks;
  if (v.photo) v.judged = v.photo->specks;
  for (std::size_t i = 0; i < state.regions.size(); ++i)
    v.regions.push_back({on_glass(state.regions[i], *state.facts, *v.picture), i > 0,
                         i == state.region,
                         std::count(state.at_fault.begin(), state.at_fault.end(), i) > 0});
}

}

PhotosView photos_view(const Bench& bench) {
  const PhotosState& state = bench.photos;
  PhotosView v;
  v.page = state.page;
  v.picks = state.picks;
  v.from_trail = state.from_trail;
  const Folded batch = kept_fold(bench, state.batch);
  if (batch) v.batch = batch->name;
  v.folder = state.folder;
  v.waits = state.waits;
  v.failure = state.failure;
  v.more = state.asked.empty() ? 0 : state.asked.size() - 1;
  if (state.page == PhotosPage::kept || state.page == PhotosPage::folder)
    add_thumbs(bench, batch, v);
  else
    add_picture(bench, v);
  return v;
}

}
