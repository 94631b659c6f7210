#include "commands/show.hpp"

#include "bench/photos.hpp"
#include "colour/reading.hpp"
#include "paint/digits.hpp"
#include "session/by_batch.hpp"
#include "session/check_value.hpp"
#include "session/in_words.hpp"
#include "session/offsets.hpp"
#include "studio/photos.hpp"
#include "studio/utc.hpp"
#include "studio/worker.hpp"
#include "words/bench_says.hpp"
#include "words/commands_says.hpp"
#include "words/paper_says.hpp"
#include "words/photos_says.hpp"
#include "words/session_says.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace commands {

namespace {

using namespace session;
using words::number;
using Say = words::CommandsSay;

std::string ref(const Ref& r) { return r.session + " " + std::to_string(r.n); }

std::string clock(Clock s) {
  const auto whole = static_cast<long long>(s);
  std::string seconds = std::to_string(whole % 60);
  if (seconds.size() < 2) seconds.insert(0, "0");
  return std::to_string(whole / 60) + ":" + seconds;
}

constexpr double none_to_speak_of = 5e-5; // what sums in double precision leave lies far below

// As many digits as the uncertainty bears, two of its own; `otherwise` where there is none.
std::string amount(const paint::Amount& a, int otherwise) {
  const auto text = paint::shown(a);
  if (text && paint::uncertainty(a) >= none_to_speak_of)
    return text->value + " ± " + text->uncertainty;
  return paint::written(a.value, otherwise) + " ± " +
         paint::written(paint::uncertainty(a), otherwise);
}

std::string said(const Pass& pass) {
  return pass.stage == Stage::mulling
             ? words::say(words::BenchSay::stage_mulling, {std::to_string(pass.number)})
             : words::say(words::BenchSay::stage_wetting_out);
}

struct Page {
  std::string text;
  void line(words::Sentence id, const words::Args& args) {
    text += printable(words::say(id, args)) + "\n";
  }
  void if_there(words::Sentence id, const std::optional<paint::Amount>& a) {
    if (a) line(id, {amount(*a, 2)});
  }
};

void add_standing(Page& page, const paint::Standing& s) {
  page.if_there(Say::show_ratio, s.binder_ratio);
  page.if_there(Say::show_flow_put_in, s.flow_put_in);
  page.if_there(Say::show_flow_now, s.flow_now);
  page.if_there(Say::show_over_oil_point, s.over_oil_point);
  page.if_there(Say::show_gum_strength, s.gum_strength);
  page.if_there(Say::show_gum_per_pigment, s.gum_per_pigment);
  page.if_there(Say::show_humectant_to_gum, s.humectant_to_gum);
  page.if_there(Say::show_pigment_fraction, s.pigment_fraction);
  page.line(Say::show_pigment, {amount(s.pigment_g, 2), amount(s.pigment_mL, 2)});
  page.line(Say::show_liquid, {amount(s.liquid_g, 2), amount(s.liquid_mL_now, 2)});
  page.line(Say::show_solids, {number(s.gum_g.value, 2), number(s.honey_g.value, 2),
                               number(s.glycerin_g.value, 2), number(s.water_g.value, 2)});
  page.line(Say::show_water_lost, {amount(s.water_lost_mL, 2)});
}

void add_material(Page& page, const Batch& batch, const Total& t) {
  page.line(Say::show_material, {t.card.name, t.card.id, amount(t.grams, 2)});
  if (t.weighed_g > 0) page.line(Say::show_weighed, {number(t.weighed_g, 2)});
  if (t.drops > 0)
    page.line(t.drops == 1 ? Say::show_drop : Say::show_drops,
              {paint::written(t.drops, paint::decimals_as_read(t.drops, 2))});
  for (const auto& [spoon, count] : t.spoons) {
    const auto card = batch.cards.find(spoon);
    page.line(Say::show_spoons, {paint::written(count, paint::decimals_as_read(count, 2)),
                                 card == batch.cards.end() ? spoon : card->second.name});
  }
  if (t.count_lost) page.line(Say::show_count_lost, {});
}

void add_swatch(Page& page, const Measured& m) {
  const auto doubt = [](double sd) { return number(colour::nineteen_in_twenty * sd, 1); };
  page.line(Say::show_swatch, {number(m.l, 1), doubt(m.l_u), number(m.a, 1), doubt(m.a_u),
                               number(m.b, 1), doubt(m.b_u), "#" + to_hex(m.shown).substr(2)});
}

void add_left_on_tools(Page& page, const Places& places) {
  const paint::Amount left = paint::grams_of(places.on_tools.paint, places.bench);
  if (left.value > 0) page.line(Say::show_on_tools, {amount(left, 1)});
}

void add_pass(Page& page, const Pass& pass) {
  const std::string end = pass.end ? clock(*pass.end) : words::say(Say::show_runs);
  page.line(Say::show_pass, {said(pass), clock(pass.start), end});
}

void add_note(Page& page, const Entry& e) {
  if (e.withdrawn) return;
  const std::string flow = e.flow ? number(*e.flow, 3) : "–";
  const auto note = [&](const std::string& what) {
    page.line(Say::show_note, {clock(e.clock), what, flow, ref(e.ref)});
  };
  if (const auto* felt = std::get_if<Felt>(&e.event)) note(feel_words(felt->as));
  if (const auto* dot = std::get_if<Dot>(&e.event)) note(specks_words(dot->specks));
  if (const auto* trouble = std::get_if<Trouble>(&e.event)) note(trouble_words(trouble->what));
}

}

// C0, DEL, and C1, which in UTF-8 is C2 followed by 80 to 9F.
std::string printable(std::string_view text) {
  // Unicode's Bidi_Control and its line ends, by which a text shows as another than it is.
  constexpr std::array<std::string_view, 14> misleading{
      "\u061C", "\u200E", "\u200F", "\u2028", "\u2029", "\u202A", "\u202B",
      "\u202C", "\u202D", "\u202E", "\u2066", "\u2067", "\u2068", "\u2069"};
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0;
    const bool c1 = c == 0xC2 && next >= 0x80 && next <= 0x9F;
    const auto sign = std::find_if(misleading.begin(), misleading.end(), [&](std::string_view s) {
      return c >= 0xC3 && text.substr(i, s.size()) == s;
    });
    if (sign != misleading.end()) {
      out += '?';
      i += sign->size() - 1;
      continue;
    }
    if (c1) ++i;
    out += c < 0x20 || c == 0x7F || c1 ? '?' : text[i];
  }
  return out;
}

namespace {

// As a label has it: the first eight digits of an id, or more of them.
std::vector<std::string> ids_beginning(const std::vector<std::string>& ids,
                                       const std::string& wanted) {
  constexpr std::size_t on_label = 8;
  std::vector<std::string> out;
  if (wanted.size() < on_label) return out;
  for (const std::string& id : ids)
    if (id.compare(0, wanted.size(), wanted) == 0) out.push_back(id);
  return out;
}

// Some may not be known whole as yet, with the rest on another device: those fold to nothing.
words::Result<Batch> latest(const Logs& logs, const std::vector<std::string>& ids,
                            const Lessons& lessons) {
  std::string discarded;
  for (auto id = ids.rbegin(); id != ids.rend(); ++id) {
    auto batch = fold(logs, *id, std::nullopt, lessons);
    if (batch && !batch->discarded) return *std::move(batch);
    if (batch && discarded.empty()) discarded = *id;
  }
  return discarded.empty() ? words::failure(Say::show_no_batches)
                           : words::failure(Say::show_all_discarded, {discarded});
}

}

words::Result<Batch> find_batch(const std::vector<Log>& logs, const std::string& wanted) {
  const Logs all = all_of(logs);
  const std::vector<std::string> ids = batch_ids(all);
  if (ids.empty()) return words::failure(Say::show_no_batches);
  const Lessons lessons = lessons_of(all);
  if (wanted == "last") return latest(all, ids, lessons);
  if (auto batch = fold(all, wanted, std::nullopt, lessons)) return *std::move(batch);
  std::optional<Batch> named;
  std::string discarded; // of that name
  const auto about = by_batch(all);
  for (const std::string& other : ids) {
    auto batch = fold(about.at(other), other, std::nullopt, lessons);
    if (!batch || batch->name != wanted) continue;
    if (batch->discarded) discarded = batch->id;
    if (batch->discarded) continue;
    if (named) return words::failure(Say::show_name_twice, {wanted, named->id, batch->id});
    named = std::move(batch);
  }
  if (named) return *std::move(named);
  const auto begun_so = ids_beginning(ids, wanted);
  if (begun_so.size() > 1)
    return words::failure(Say::show_id_twice, {wanted, begun_so[0], begun_so[1]});
  auto batch = begun_so.empty() ? std::nullopt : fold(all, begun_so[0], std::nullopt, lessons);
  if (!batch && !discarded.empty())
    return words::failure(Say::show_name_discarded, {wanted, discarded});
  if (!batch) return words::failure(Say::show_no_batch, {wanted});
  return *std::move(batch);
}

namespace {

std::string opened_words(const Batch& batch, const Offsets& offsets) {
  return studio::for_people(batch.opened_at, offset_of(offsets, batch));
}

std::string of_words(PhotoOf of) {
  using words::PhotosSay;
  switch (of) {
  case PhotoOf::slab: return words::say(PhotosSay::of_slab);
  case PhotoOf::dot: return words::say(PhotosSay::of_dot);
  case PhotoOf::swatch: return words::say(PhotosSay::of_swatch);
  case PhotoOf::pan: return words::say(PhotosSay::of_pan);
  }
  return "";
}

void add_photo(Page& page, const Photo& photo, const std::filesystem::path& studio) {
  const std::string file = studio::photo_file(photo);
  page.line(Say::show_photo, {of_words(photo.of), file});
  if (photo.specks) {
    using words::PhotosSay;
    page.line(Say::show_of_photo,
              {words::say(PhotosSay::specks_judged, {specks_words(photo.specks->as)})});
    if (photo.specks->counted)
      page.line(Say::show_of_photo,
                {words::say(PhotosSay::specks_seen, {specks_words(*photo.specks->counted)})});
  }
  std::error_code ignored;
  if (!std::filesystem::exists(studio / file, ignored))
    page.line(Say::show_of_photo, {words::say(words::PhotosSay::gone, {file})});
}

}

std::string shown_for_people(const Batch& batch, const std::vector<Log>& logs,
                             const std::filesystem::path& studio) {
  Page page;
  page.line(Say::show_title, {batch.name, batch.id, progress_words(batch.progress),
                              opened_words(batch, offsets_of(logs))});
  if (batch.discarded) page.line(Say::show_discarded, {});
  const double humidity = batch.places.room.humidity * 100;
  page.line(Say::show_room, {number(batch.places.room.celsius, 1),
                             paint::written(humidity, paint::decimals_as_read(humidity)),
                             batch.room_guessed ? words::say(Say::show_guessed) : ""});
  add_standing(page, batch.standing);
  for (const auto& [place, lying] : batch.places.at)
    page.line(Say::show_place,
              {place_words(place), amount(paint::grams_of(lying.paint, batch.places.bench), 1)});
  add_left_on_tools(page, batch.places);
  for (const Total& total : batch.totals) add_material(page, batch, total);
  if (batch.swatch) add_swatch(page, *batch.swatch);
  for (const Pass& pass : batch.passes) add_pass(page, pass);
  for (const Entry& e : batch.entries) add_note(page, e);
  if (batch.damaged) page.line(words::PaperSay::show_damaged, {});
  if (batch.newer) page.line(words::SessionSay::batch_of_newer_format, {});
  for (const Warning& w : batch.warnings) page.text += printable(warning_words(w)) + "\n";
  for (const Photo& photo : bench::photos_of(batch)) add_photo(page, photo, studio);
  return page.text;
}

namespace {

// Empty for one that stands in no list.
std::string line_of_list(const std::optional<Batch>& batch, const Offsets& offsets) {
  Page page;
  if (!batch || batch->discarded) return "";
  const auto& ratio = batch->standing.binder_ratio;
  page.line(Say::list_batch,
            {batch->id, opened_words(*batch, offsets), progress_words(batch->progress),
             ratio ? amount(*ratio, 2) : "–", batch->name});
  return page.text;
}

// Why there is nothing in the list; of what is here in part alone it is said elsewhere.
std::string none_to_list(const Logs& logs, const std::vector<std::string>& ids,
                         const Lessons& lessons) {
  const auto none = latest(logs, ids, lessons);
  return none ? "" : printable(words::message(none.error())) + "\n";
}

}

std::string list_for_people(const std::vector<Log>& logs) {
  const Logs all = all_of(logs);
  const Lessons lessons = lessons_of(all);
  const auto about = by_batch(all);
  const Offsets offsets = offsets_of(logs);
  const std::vector<std::string> ids = batch_ids(all);
  std::vector<std::string> lines(ids.size());
  const auto each_second = [&](std::size_t from) {
    for (std::size_t i = from; i < ids.size(); i += 2)
      lines[i] = line_of_list(fold(about.at(ids[i]), ids[i], std::nullopt, lessons), offsets);
  };
  studio::do_both([&] { each_second(0); }, [&] { each_second(1); });
  const std::string list = std::accumulate(lines.begin(), lines.end(), std::string());
  return list.empty() ? none_to_list(all, ids, lessons) : list;
}

}
