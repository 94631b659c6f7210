#include "bench/paint_chart.hpp"

#include "bench/colour_chart.hpp"
#include "bench/materials.hpp"
#include "words/letter_case.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace bench {

namespace {

using Key = std::pair<std::string, std::set<std::string>>;

// Which paint a batch is of: the place of the paint in the list.
struct Makers {
  std::map<Key, std::size_t> by_key;
  std::map<std::string, std::size_t> by_batch;
};

// "Weir blue, 2" is proposed for the second batch of a paint.
std::string without_count(const std::string& name) {
  const auto comma = name.rfind(", ");
  const bool counted = comma != std::string::npos && comma > 0 && comma + 2 < name.size() &&
                       name.find_first_not_of("0123456789", comma + 2) == std::string::npos;
  return counted ? name.substr(0, comma) : name;
}

std::size_t place_of_paint(Makers& makers, const Bench& bench, const std::string& batch,
                           const BookEntry& entry, std::size_t fresh) {
  const auto again = makers.by_batch.find(entry.again_of);
  const auto before = bench.index.of.find(entry.again_of);
  const bool same = again != makers.by_batch.end() && before != bench.index.of.end() &&
                    before->second.pigments == entry.pigments;
  const Key key{words::searchable(without_count(entry.name)), entry.pigments};
  const std::size_t place = same ? again->second : makers.by_key.emplace(key, fresh).first->second;
  makers.by_key.emplace(key, place);
  makers.by_batch[batch] = place;
  return place;
}

std::vector<PaintMade> paints_made(const Bench& bench) {
  Makers makers;
  std::vector<PaintMade> out;
  for (const std::string& batch : bench.batches) { // oldest first
    const auto entry = bench.index.of.find(batch);
    if (entry == bench.index.of.end()) continue;
    const std::size_t place = place_of_paint(makers, bench, batch, entry->second, out.size());
    if (place == out.size()) out.emplace_back();
    out[place].batches.push_back(batch);
  }
  for (PaintMade& paint : out) std::reverse(paint.batches.begin(), paint.batches.end());
  return out;
}

std::int64_t took_ug(const BookEntry& entry, const std::string& card) {
  const auto uses = entry.used_ug.find(card);
  std::int64_t sum = 0;
  if (uses != entry.used_ug.end())
    for (const auto& use : uses->second) sum += use.second;
  return sum;
}

// As the card of the pigment that it took most of says.
std::uint32_t guessed_colour(const Bench& bench, const BookEntry& entry) {
  std::uint32_t out = 0;
  std::int64_t most = -1;
  for (const std::string& id : entry.pigments) {
    const auto place = bench.place_on_shelf.find(id);
    const std::int64_t ug = took_ug(entry, id);
    if (place == bench.place_on_shelf.end() || ug <= most) continue;
    most = ug;
    out = session::pigment_of(bench.shelf[place->second]).colour;
  }
  return out;
}

std::uint32_t colour_in_chart(const Bench& bench, const PaintMade& paint) {
  const auto read = swatch_of(bench, paint);
  return read ? *read : guessed_colour(bench, bench.index.of.at(paint.batches.front()));
}

std::vector<PaintMade> found_of(std::vector<PaintMade> paints, const std::set<std::string>& found) {
  std::erase_if(paints, [&](const PaintMade& paint) {
    return std::none_of(paint.batches.begin(), paint.batches.end(),
                        [&](const std::string& batch) { return found.count(batch) > 0; });
  });
  return paints;
}

void add_left(PaintLeft& to, const PaintLeft& more) {
  to.jar_mL += more.jar_mL;
  to.pans += more.pans;
  to.on_slab = to.on_slab || more.on_slab;
}

}

std::optional<std::uint32_t> swatch_of(const Bench& bench, const PaintMade& paint) {
  for (const std::string& batch : paint.batches)
    if (const auto entry = bench.index.of.find(batch);
        entry != bench.index.of.end() && entry->second.swatch)
      return entry->second.swatch;
  return std::nullopt;
}

bool ChartPlace::operator<(const ChartPlace& other) const {
  return std::tie(sector, darkness) < std::tie(other.sector, other.darkness);
}

ChartPlace chart_place(std::uint32_t colour) {
  constexpr double grey = 0.03;     // chroma below which nobody names a hue. Our own value
  constexpr int sectors = 12;       // of 30 degrees
  constexpr double first_deg = -10; // rose and red begin the round
  const Shade shade = shade_of(colour);
  const double round = std::fmod(shade.degrees - first_deg + 720, 360);
  const int sector = shade.chroma < grey ? sectors : static_cast<int>(round / 360 * sectors);
  return {sector, 1 - shade.lightness};
}

std::vector<PaintMade> paints_by_colour(const Bench& bench) {
  std::vector<PaintMade> paints = paints_made(bench);
  if (!bench.book.search.empty())
    paints = found_of(std::move(paints), {bench.book.found.begin(), bench.book.found.end()});
  std::vector<std::pair<ChartPlace, std::size_t>> order;
  for (std::size_t i = 0; i < paints.size(); ++i)
    order.emplace_back(chart_place(colour_in_chart(bench, paints[i])), i);
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<PaintMade> out;
  for (const auto& each : order) out.push_back(std::move(paints[each.second]));
  return out;
}

bool shows_chart(const Bench& bench) {
  const auto* list = std::get_if<ListPage>(&bench.book.page);
  return bench.book.by_colour && list && !list->discarded;
}

void chart_paints(Bench& bench) {
  bench.book.paints.clear();
  if (bench.book.by_colour) bench.book.paints = paints_by_colour(bench);
}

Size paints_a_page(const Display& display) { return display.upright() ? Size{3, 6} : Size{4, 3}; }

std::vector<PaintMade> paints_of_page(const Bench& bench) {
  const Size grid = paints_a_page(bench.display);
  const auto& all = bench.book.paints;
  const int columns = static_cast<int>(grid.w), shown = static_cast<int>(grid.h);
  const int rows = (static_cast<int>(all.size()) + columns - 1) / columns;
  const auto first = static_cast<std::size_t>(first_row(bench.book.list, shown, rows) * columns);
  const std::size_t last = std::min(first + static_cast<std::size_t>(columns * shown), all.size());
  std::vector<PaintMade> out;
  for (std::size_t i = first; i < last; ++i) out.push_back(all[i]);
  return out;
}

std::optional<PaintLeft> kept_left(const Bench& bench, const PaintMade& paint) {
  PaintLeft sum;
  for (const std::string& batch : paint.batches) {
    const auto left = kept_left(bench, batch);
    if (!left) return std::nullopt;
    add_left(sum, *left);
  }
  return sum;
}

}
