#include "screens/photo_frames.hpp"

#include "screens/measure.hpp"
#include "screens/trail_geometry.hpp"
#include "words/photos_says.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace screens {

using bench::PhotosView;
using Say = words::PhotosSay;
using words::say;

namespace {

// Dark and light beside each other are seen on any photo.
void frame_on_photo(Sheet& sheet, const Rect& r, const PhotosView::Region& region) {
  const bool heavy = region.chosen || region.at_fault;
  const Theme &day = theme(false), &night = theme(true);
  const double dark = heavy ? 1.8 : 1.1, light = heavy ? 0.9 : 0.45;
  sheet.shapes.push_back(Box{inset(r, -dark / 2), 0, clear, night.slab, dark});
  sheet.shapes.push_back(Box{inset(r, -dark / 2), 0, clear, day.slab, light});
  if (!region.at_fault) return;
  // Struck through, so that no colour has to be told apart; well within the frame's own corners.
  const Rect within = inset(r, 2);
  for (const bool over : {false, true})
    for (const bool up : {false, true})
      sheet.shapes.push_back(Polyline{{{within.x, up ? within.bottom() : within.y},
                                       {within.right(), up ? within.y : within.bottom()}},
                                      over ? light : dark + light,
                                      over ? day.slab : night.slab,
                                      0});
}

bool lies_over_any(const Rect& place, const std::vector<Rect>& others) {
  return std::any_of(others.begin(), others.end(),
                     [&](const Rect& other) { return overlap(place, other); });
}

// Under its frame, else over it, else within: where the picture goes on and neither another frame
// nor another name lies; where there is no such place, over a frame, and last of all over a name.
Rect place_of_name(const Rect& frame, double w, const PhotosView& photos,
                   const std::vector<Rect>& names) {
  constexpr double h = 4.2, off = 1.2;
  const Rect& picture = *photos.picture;
  const double x =
      std::clamp(frame.centre().x - w / 2, picture.x, std::max(picture.x, picture.right() - w));
  std::vector<Rect> frames;
  for (const auto& region : photos.regions)
    if (region.at != frame) frames.push_back(region.at);
  std::vector<Rect> places;
  for (const double y : {frame.bottom() + off, frame.y - h - off, frame.bottom() - h - 2 * off,
                         frame.y + 2 * off, frame.bottom() + 2 * off + h, frame.y - 2 * (h + off)})
    if (y >= picture.y && y + h <= picture.bottom()) places.push_back({x, y, w, h});
  const auto first = [&](bool over_frames) {
    return std::find_if(places.begin(), places.end(), [&](const Rect& place) {
      return !lies_over_any(place, names) && (over_frames || !lies_over_any(place, frames));
    });
  };
  for (const bool over_frames : {false, true})
    if (const auto place = first(over_frames); place != places.end()) return *place;
  return {x, frame.bottom() - h - 2 * off, w, h};
}

Rect name_on_photo(Sheet& sheet, const Rect& frame, const PhotosView& photos,
                   const std::string& name, const std::vector<Rect>& names) {
  const Ground g = plain(theme(false));
  const Rect place = place_of_name(frame, width_mm(name, cap::small, true) + 2.4, photos, names);
  sheet.shapes.push_back(Box{place, 0.8, g.fill, clear, 0});
  write(sheet, {place.centre().x, place.bottom() - 1}, Anchor::centre,
        {cap::small, true, cap::small}, g.ink, name, place.w);
  return place;
}

}

void draw_regions(Sheet& sheet, const PhotosView& photos) {
  for (const bool chosen : {false, true})
    for (const PhotosView::Region& region : photos.regions)
      if (region.chosen == chosen) frame_on_photo(sheet, region.at, region);
  std::vector<Rect> names;
  for (const PhotosView::Region& region : photos.regions) {
    const Say name = region.at_fault ? (region.paper ? Say::paper_at_fault : Say::paint_at_fault)
                                     : (region.paper ? Say::paper : Say::paint);
    names.push_back(name_on_photo(sheet, region.at, photos, say(name), names));
  }
}

}
