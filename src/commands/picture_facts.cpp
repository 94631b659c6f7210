#include "commands/picture_facts.hpp"

#include "bench/colour_words.hpp"
#include "colour/propose.hpp"
#include "colour/specks.hpp"
#include "commands/measured.hpp"
#include "words/photos_says.hpp"

namespace commands {

namespace {

using words::PhotosSay;

std::optional<session::Specks> specks_on(const colour::Photo& photo, const colour::Box& paint) {
  const auto counted = colour::count_specks(photo, paint, std::nullopt);
  if (!counted) return std::nullopt;
  switch (counted->as_word) {
  case colour::Specked::many: return session::Specks::many;
  case colour::Specked::few: return session::Specks::few;
  case colour::Specked::none: return session::Specks::none;
  }
  return std::nullopt;
}

// The swatch, then its paper.
std::vector<colour::Box> boxes_of(const colour::Regions& regions) {
  std::vector<colour::Box> out{regions.swatch};
  out.insert(out.end(), regions.paper.begin(), regions.paper.end());
  return out;
}

}

bench::ImageFacts facts_of(const colour::Photo& photo) {
  const colour::Size size = colour::upright_size(photo);
  bench::ImageFacts facts{size.width, size.height, {}, {}, photo.see_through};
  const std::vector<colour::Regions> found = colour::propose_regions(photo);
  if (found.empty()) return facts;
  facts.regions = boxes_of(found.front());
  if (found.size() > 1) facts.others = boxes_of(found[1]);
  facts.specks = specks_on(photo, found.front().swatch);
  return facts;
}

bench::SwatchRead swatch_read(const bench::ReadSwatch& wanted,
                              const words::Result<colour::Photo>& photo) {
  bench::SwatchRead out{wanted.batch, wanted.photo, bench::SwatchReading{}, {}};
  const auto fail = [&](words::Error why) {
    out.reading = tl::make_unexpected(std::move(why));
    return out;
  };
  if (!photo) return fail(photo.error());
  const auto reading = colour::read_swatch(*photo, wanted.at);
  if (!reading) {
    out.at_fault = colour::regions_at_fault(*photo, wanted.at, reading.error());
    const words::Error why{bench::words_of(reading.error()), {}};
    return fail({PhotosSay::untold, {words::Inner(why)}});
  }
  out.reading = bench::SwatchReading{measured_of(*reading), reading->graded, reading->glints,
                                     reading->beyond};
  return out;
}

std::string shortened(const std::string& image) {
  constexpr std::size_t told = 12;
  const std::size_t name = image.rfind('/') + 1, ending = image.rfind('.');
  if (ending == std::string::npos || ending < name + told) return image;
  return image.substr(0, name + told) + "…" + image.substr(ending);
}

}
