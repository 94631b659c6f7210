#include "session/places.hpp"

#include "paint/bottle.hpp"
#include "paint/measure.hpp"
#include "words/paint_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <utility>

namespace session {

namespace {

const PlaceContents& contents_of(const Places& places, Place place) {
  static const PlaceContents nothing;
  const auto found = places.at.find(place);
  return found == places.at.end() ? nothing : found->second;
}

void lay(Places& places, Place place, paint::Mixture paint) {
  if (paint::is_empty(paint)) {
    places.at.erase(place);
    return;
  }
  const paint::Sums sums = paint::sums_of(paint.contents);
  places.at[place] = {std::move(paint), sums};
}

words::Result<paint::Amount> share_of(const Places& places, const paint::Mixture& paint,
                                      const Quantity& quantity, const std::string& name) {
  if (quantity.g) {
    const auto grams = paint::grams_weighed(*quantity.g);
    if (!grams) return grams;
    return paint::share_of(paint, *grams, places.bench, name);
  }
  paint::Amount share = paint::half_by_eye();
  share.value = quantity.share;
  return quantity.share == 1 ? paint::exact(1) : share;
}

}

Place in_hand(const Places& places) {
  return places.at.empty() ? Place::slab : places.at.begin()->first;
}

paint::Sums sums(const Places& places) { return contents_of(places, in_hand(places)).sums; }

paint::Live live(const Places& places) {
  const PlaceContents& here = contents_of(places, in_hand(places));
  return paint::live(here.sums, here.paint);
}

void put_in(Places& places, const std::string& card, const paint::Material& material,
            const paint::Amount& grams) {
  PlaceContents& here = places.at[in_hand(places)];
  paint::put(here.paint, card, material, grams);
  here.sums = paint::sums_of(here.paint.contents);
}

void dry(Places& places, double seconds) {
  const auto slab = places.at.find(Place::slab);
  if (slab == places.at.end()) return;
  PlaceContents& open = slab->second;
  const auto by =
      paint::dried(open.paint, open.sums, places.spread, places.room, seconds, places.bench);
  if (by) paint::dry(open.paint, *by);
}

void dry_out(Places& places) {
  constexpr double a_fortnight_s = 14 * 86400;
  const auto found = places.at.find(in_hand(places));
  if (found == places.at.end()) return;
  PlaceContents& here = found->second;
  const auto by = paint::dried(here.paint, here.sums, paint::Spread::mulling, places.room,
                               a_fortnight_s, places.bench);
  if (by) paint::dry(here.paint, *by);
}

Fault move(Places& places, Place from, std::optional<Place> to, const Quantity& quantity,
           const std::string& name) {
  const paint::Mixture& paint = contents_of(places, from).paint;
  if (paint::is_empty(paint)) return words::Error{words::PaintSay::nothing_there, {}};
  const auto share = share_of(places, paint, quantity, name);
  if (!share) return share.error();
  const auto parted = paint::part(paint, *share, name);
  if (!parted) return parted.error();
  lay(places, from, parted->left);
  if (to) lay(places, *to, paint::joined(contents_of(places, *to).paint, parted->taken));
  return std::nullopt;
}

void gather(Places& places, const std::string& session) {
  const paint::Mixture& all = contents_of(places, Place::slab).paint;
  if (paint::is_empty(all)) return;
  const auto parted = paint::part(all, paint::foretold(places.loss),
                                  "gathering " + std::to_string(++places.gatherings));
  if (!parted) return;
  places.on_tools = {parted->taken, session};
  lay(places, Place::slab, {});
  lay(places, Place::jar, paint::joined(contents_of(places, Place::jar).paint, parted->left));
}

void take_up(Places& places, const std::string& session) {
  const LeftOnTools left = std::exchange(places.on_tools, {});
  if (left.session == session)
    lay(places, Place::slab, paint::joined(contents_of(places, Place::slab).paint, left.paint));
}

paint::Mixture with_tools(const Places& places, Place place) {
  return paint::joined(contents_of(places, place).paint, places.on_tools.paint);
}

namespace {

// Nobody wrote down that some of it was lost.
bool lose_down_to(Places& places, Place place, double g, const std::string& name) {
  const double there = paint::grams_of(contents_of(places, place).paint, places.bench).value;
  return g > 0 && g < there && !move(places, place, std::nullopt, {1, there - g}, name);
}

// Nobody wrote down that more went in: more of the same, all of it alike, and none on the tools.
bool grow_up_to(Places& places, Place place, double g, const std::string& name) {
  paint::Mixture paint = with_tools(places, place);
  const double there = paint::grams_of(paint, places.bench).value;
  if (!(there > 0) || g <= there) return false;
  for (double times = g / there; times > 1; times /= 2) {
    const auto parted = paint::part(paint, paint::exact(std::min(1.0, times - 1)), name);
    if (!parted) return false;
    paint = paint::joined(std::move(paint), parted->taken);
  }
  lay(places, place, std::move(paint));
  places.on_tools.paint = {};
  return true;
}

}

words::Result<paint::Mixture> weigh(Places& places, const Weighed& weighed, const std::string& name,
                                    bool confirmed) {
  if (weighed.tare_g > weighed.g)
    return words::failure(words::SessionSay::weighed_below_tare,
                          {words::Number(weighed.tare_g - weighed.g, 1)});
  const auto grams = paint::weighed_difference(weighed.g, weighed.tare_g, name);
  if (!grams) return tl::make_unexpected(grams.error());
  const auto known = paint::weighed(contents_of(places, weighed.place).paint, places.on_tools.paint,
                                    *grams, places.bench, name);
  if (!known && confirmed) {
    const paint::Mixture all = with_tools(places, weighed.place);
    if (lose_down_to(places, weighed.place, grams->value, name)) return all;
    if (grow_up_to(places, weighed.place, grams->value, name))
      return with_tools(places, weighed.place);
  }
  if (!known) return tl::make_unexpected(known.error());
  const paint::Amount& stayed = known->stayed_on_tools;
  LeftOnTools& tools = places.on_tools;
  if (!paint::is_empty(tools.paint) && !std::exchange(tools.weighed, true))
    places.loss = paint::updated(places.loss, stayed.value, paint::uncertainty(stayed));
  tools.paint = known->on_tools;
  lay(places, weighed.place, known->there);
  places.bench = known->bench;
  return with_tools(places, weighed.place);
}

Fault bring_back(Places& places, const paint::Mixture& before, const std::string& name) {
  const Place place = in_hand(places);
  const auto known =
      paint::brought_back(before, contents_of(places, place).paint, places.bench, name);
  if (!known) return known.error();
  lay(places, place, known->there);
  places.bench = known->bench;
  return std::nullopt;
}

}
