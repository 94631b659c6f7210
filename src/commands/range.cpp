#include "commands/range.hpp"

#include "bench/choices.hpp"
#include "bench/shelf.hpp"
#include "commands/show.hpp"
#include "paint/catalogue.hpp"
#include "session/in_words.hpp"
#include "session/ranges.hpp"
#include "words/commands_says.hpp"
#include "words/letter_case.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace commands {

namespace {

using Json = nlohmann::ordered_json;
using words::number;
using Say = words::CommandsSay;

struct Row {
  session::Card card;
  double demand = 0, low = 0, high = 0, sd = 0; // flow, and of its ln
  paint::Band band;
  int notes = 0;
};

bool is_called(const session::Card& card, const std::string& name) {
  const std::string& index_name = pigment_of(card).index_name;
  return card.id == name || words::searchable(card.name) == words::searchable(name) ||
         (!index_name.empty() && words::searchable(index_name) == words::searchable(name));
}

// Those called just so; where none is, those that go by it among other names.
std::vector<const session::Card*> pigments_meant(const bench::Bench& bench,
                                                 const std::string& name) {
  std::vector<const session::Card*> all = bench::shelf_of(bench, session::CardKind::pigment);
  const bool any = std::any_of(all.begin(), all.end(),
                               [&](const session::Card* card) { return is_called(*card, name); });
  std::erase_if(all, [&](const session::Card* card) {
    return any ? !is_called(*card, name)
               : !paint::goes_by(card->id, card->name, pigment_of(*card).index_name, name);
  });
  return all;
}

int notes_of(const session::Ranges& ranges, const std::string& card) {
  const auto notes = ranges.names.notes.find(card);
  return notes == ranges.names.notes.end() ? 0 : notes->second;
}

std::optional<Row> row_of(const session::Ranges& ranges, const session::Card& card) {
  const auto question = session::range_question(ranges, {{&card, 1}});
  const auto expected = session::expectation(ranges, question);
  const auto demand = session::demand_in(ranges, card);
  if (!expected || !demand) return std::nullopt;
  const auto [low, middle, high] = session::nine_in_ten(*demand);
  return Row{card, middle, low, high, demand->sd, expected->band, notes_of(ranges, card.id)};
}

std::vector<Row> rows_of(const std::vector<session::Log>& logs, const session::Ranges& ranges,
                         const std::optional<std::string>& pigment) {
  bench::Bench bench;
  bench.logs = logs;
  bench::restock(bench);
  std::vector<Row> rows;
  for (const session::Card* card : pigment ? pigments_meant(bench, *pigment)
                                           : bench::shelf_of(bench, session::CardKind::pigment)) {
    if (!pigment && notes_of(ranges, card->id) == 0) continue;
    if (auto row = row_of(ranges, *card)) rows.push_back(*std::move(row));
  }
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Row& a, const Row& b) { return a.demand > b.demand; });
  return rows;
}

struct Part { // of the hand
  const char* name;
  std::size_t at;
};
constexpr Part parts[] = {{"half_width", paint::at_half_width},
                          {"sticky_reach", paint::at_sticky_reach},
                          {"loose_reach", paint::at_loose_reach},
                          {"slope", paint::at_slope},
                          {"pigment_sd", paint::at_pigment_sd},
                          {"batch_sd", paint::at_batch_sd},
                          {"slips", paint::at_slips}};

double value_of(const paint::Theta& theta, std::size_t at) {
  return at == paint::at_slips ? 1 / (1 + std::exp(-theta[at])) : std::exp(theta[at]);
}

// Nine in ten of what it may be.
std::pair<double, double> ends_of(const paint::RangeFit& fit, std::size_t at) {
  const auto [low, middle, high] =
      session::nine_in_ten({fit.theta[at], std::sqrt(fit.theta_covariance[at][at])});
  if (at != paint::at_slips) return {low, high};
  return {low / (1 + low), high / (1 + high)}; // odds to shares
}

std::string as_json_text(const session::Ranges& ranges, const std::vector<Row>& rows) {
  Json out{
      {"batches", ranges.names.of_studio}, {"notes", ranges.fit.notes}, {"told", ranges.fit.told}};
  for (const Part& part : parts) {
    const auto [low, high] = ends_of(ranges.fit, part.at);
    out["hand"][part.name] = {
        {"value", value_of(ranges.fit.theta, part.at)}, {"low", low}, {"high", high}};
  }
  out["pigments"] = Json::array();
  for (const Row& r : rows)
    out["pigments"].push_back({{"card", r.card.id},
                               {"name", r.card.name},
                               {"index_name", pigment_of(r.card).index_name},
                               {"demand", r.demand},
                               {"low", r.low},
                               {"high", r.high},
                               {"sd_of_ln", r.sd},
                               {"right_from", std::exp(r.band.from)},
                               {"right_to", std::exp(r.band.to)},
                               {"batches", r.band.batches},
                               {"notes", r.notes},
                               {"rests_on", r.band.batches > 0 ? "studio"
                                            : r.band.told      ? "told"
                                                               : "class_guess"}});
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string for_people(const session::Ranges& ranges, const std::vector<Row>& rows) {
  std::string out;
  const auto line = [&](words::Sentence id, const words::Args& args) {
    out += printable(words::say(id, args)) + "\n";
  };
  for (const Row& r : rows)
    line(Say::show_range,
         {r.card.name, number(r.demand, 2), number(r.low, 2), number(r.high, 2),
          number(std::exp(r.band.from), 2), number(std::exp(r.band.to), 2),
          r.band.told ? words::say(Say::range_told) : session::known_words(r.band),
          words::counted(static_cast<std::size_t>(r.notes), Say::count_note, Say::count_notes)});
  const paint::NoteModel hand = paint::note_model_of(ranges.fit.theta);
  line(Say::show_hand_right, {number(hand.half_width, 3)});
  line(Say::show_hand_reaches, {number(hand.sticky_reach, 3), number(hand.loose_reach, 3)});
  line(Say::show_hand_slope, {number(hand.slope, 3)});
  line(Say::show_hand_batches, {number(hand.batch_sd, 3), number(hand.pigment_sd, 3)});
  line(Say::show_hand_slips, {number(hand.slips * 100, 1)});
  line(Say::show_hand_rests_on, {words::counted(static_cast<std::size_t>(ranges.fit.notes),
                                                Say::count_note, Say::count_notes),
                                 words::counted(static_cast<std::size_t>(ranges.names.of_studio),
                                                Say::count_batch, Say::count_batches)});
  if (ranges.fit.told) line(Say::show_hand_told, {});
  return out;
}

}

words::Result<std::string> ranges_shown(const std::vector<session::Log>& logs,
                                        const std::optional<std::string>& pigment, bool as_json) {
  const auto ranges = session::learn_ranges(session::all_of(logs));
  if (!ranges) return tl::make_unexpected(ranges.error());
  const std::vector<Row> rows = rows_of(logs, *ranges, pigment);
  if (pigment && rows.empty()) return words::failure(Say::range_no_pigment, {*pigment});
  return as_json ? as_json_text(*ranges, rows) : for_people(*ranges, rows);
}

}
