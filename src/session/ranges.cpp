#include "session/ranges.hpp"

#include "paint/range/learn_facts.hpp"
#include "session/amounts.hpp"
#include "session/by_batch.hpp"
#include "session/feelings.hpp"

#include <algorithm>
#include <cmath>

namespace session {

namespace {

constexpr std::size_t most_segments = 200;
constexpr double same_share = 1e-6;
constexpr double same_paint = 0.01; // proportions so near to each other feel alike

using Shares = std::vector<std::pair<std::string, double>>; // of the pigments' volume

Shares shares_of(const Feeling& note) {
  Shares shares = note.pigments;
  double sum = 0;
  for (const auto& [card, mL] : shares) sum += mL;
  for (auto& [card, mL] : shares) mL /= sum;
  return shares;
}

bool alike(const Shares& a, const Shares& b, double within) {
  return a.size() == b.size() &&
         std::equal(a.begin(), a.end(), b.begin(), [&](const auto& x, const auto& y) {
           return x.first == y.first && std::abs(x.second - y.second) <= within;
         });
}

int numbered(std::vector<std::string>& names, std::map<std::string, int>& numbers,
             const std::string& name) {
  const auto [at, fresh] = numbers.try_emplace(name, static_cast<int>(names.size()));
  if (fresh) names.push_back(name);
  return at->second;
}

int number_of(const std::vector<std::string>& names, const std::string& name) {
  const auto at = std::find(names.begin(), names.end(), name);
  return at == names.end() ? -1 : static_cast<int>(at - names.begin());
}

double scatter_of(const Feeling& note) {
  return note.by == By::knife ? std::hypot(note.scatter, paint::knife_sd) : note.scatter;
}

double shared_sd_of(const TrainingBatch& training) {
  double dried_off = 0, pigment_sd = 0, count = 0;
  for (const Feeling& note : training.notes) {
    if (note.unwetted) continue;
    dried_off += note.dried_off;
    pigment_sd = std::max(pigment_sd, note.pigment_sd);
    ++count;
  }
  const double of_drying = count > 0 ? dried_off_u * dried_off / count : 0;
  return std::min(10.0, std::hypot(pigment_sd, std::hypot(of_drying, training.own_tools_sd)));
}

// A tool's sd and the notes' shares of it are only known by their product; the largest stands for
// the sd.
std::map<std::string, double> sds_of_tools(const std::vector<const TrainingBatch*>& all) {
  std::map<std::string, double> sds;
  for (const TrainingBatch* training : all)
    for (const Feeling& note : training->notes)
      for (const auto& [tool, sd] : note.tools)
        if (double& most = sds[tool]; std::abs(sd) > most) most = std::min(std::abs(sd), 10.0);
  return sds;
}

class Maker {
public:
  explicit Maker(const std::vector<const TrainingBatch*>& all) : sds_(sds_of_tools(all)) {}

  void take(const TrainingBatch& training) {
    if (!has_training_notes(training)) return;
    out.problem.batches.push_back({shared_sd_of(training)});
    Shares last;
    std::size_t segments = 0;
    for (const Feeling& note : training.notes) {
      const double ln_flow = std::log(note.flow);
      if (note.set_aside || note.unwetted || !(std::abs(ln_flow) <= 25) ||
          !(scatter_of(note) >= 0 && scatter_of(note) <= 10))
        continue;
      Shares shares = shares_of(note);
      if (segments == 0 || !alike(shares, last, same_share)) {
        if (++segments > most_segments) return;
        begin_segment(shares, training);
        last = std::move(shares);
      }
      add(note, ln_flow);
    }
    for (const auto& [card, pigment] : training.pigments) ++out.names.batches[card];
    ++out.names.of_studio;
  }

  RangeProblem out;

private:
  void begin_segment(const Shares& shares, const TrainingBatch& training) {
    paint::LearnSegment segment;
    segment.batch = static_cast<int>(out.problem.batches.size()) - 1;
    for (const auto& [card, share] : shares) {
      const int number = numbered(out.names.pigments, pigments_, card);
      out.problem.pigments.resize(out.names.pigments.size());
      out.problem.pigments[static_cast<std::size_t>(number)] =
          paint::learn_facts(training.pigments.at(card));
      segment.pigments.emplace_back(number, share);
    }
    out.problem.segments.push_back(std::move(segment));
  }

  void add(const Feeling& felt, double ln_flow) {
    paint::LearnNote note;
    note.segment = static_cast<int>(out.problem.segments.size()) - 1;
    note.ln_mL = ln_flow;
    note.sd = scatter_of(felt);
    note.felt = static_cast<int>(felt.as);
    note.dry_gum = within_model(felt);
    for (const auto& [tool, sd] : felt.tools) {
      const double most = sds_.at(tool);
      if (most <= 0) continue;
      const int number = numbered(out.names.tools, tools_, tool);
      if (static_cast<std::size_t>(number) == out.problem.tools.size())
        out.problem.tools.push_back({most});
      note.tools.emplace_back(number, sd / most);
    }
    for (const auto& part : felt.pigments) {
      ++out.names.notes[part.first];
      DryGums& in = out.names.dry_gum[part.first];
      in = {std::min(in.least, felt.gum_put_in), std::max(in.most, felt.gum_put_in)};
    }
    out.problem.notes.push_back(std::move(note));
  }

  std::map<std::string, double> sds_;
  std::map<std::string, int> pigments_, tools_;
};

bool is_beginning(const std::vector<std::string>& part, const std::vector<std::string>& whole) {
  return part.size() <= whole.size() && std::equal(part.begin(), part.end(), whole.begin());
}

}

namespace {

bool opened_before(const TrainingBatch* a, const TrainingBatch* b) {
  return std::tie(a->opened_at, a->batch) < std::tie(b->opened_at, b->batch);
}

}

RangeProblem range_problem(const std::vector<const TrainingBatch*>& training) {
  std::vector<const TrainingBatch*> in_order = training;
  std::sort(in_order.begin(), in_order.end(), opened_before);
  std::size_t notes = 0;
  const auto too_many =
      std::find_if(in_order.rbegin(), in_order.rend(), [&](const TrainingBatch* one) {
        return (notes += one->notes.size()) > most_notes;
      });
  in_order.erase(in_order.begin(), too_many.base());
  Maker maker(in_order);
  for (const TrainingBatch* one : in_order) maker.take(*one);
  return std::move(maker.out);
}

bool continues(const RangeNames& earlier, const RangeNames& later) {
  return is_beginning(earlier.pigments, later.pigments) && is_beginning(earlier.tools, later.tools);
}

std::vector<TrainingBatch> trainings_of(const Logs& logs) {
  std::vector<TrainingBatch> all;
  const Lessons lessons = lessons_of(logs);
  const auto about = by_batch(logs);
  for (const std::string& id : batch_ids(logs))
    if (const auto batch = fold(about.at(id), id, std::nullopt, lessons))
      if (auto training = training_of(*batch)) all.push_back(*std::move(training));
  return all;
}

words::Result<Ranges> learn_ranges(const Logs& logs) {
  const std::vector<TrainingBatch> all = trainings_of(logs);
  std::vector<const TrainingBatch*> of;
  for (const TrainingBatch& training : all) of.push_back(&training);
  auto told = told_in(logs);
  if (!told) return tl::make_unexpected(told.error());
  RangeProblem asked = range_problem(of);
  auto fit = *told ? paint::learn_told(asked.problem, told_variant(asked, **told))
                   : paint::learn(asked.problem);
  if (!fit) return tl::make_unexpected(fit.error());
  if (fit->end != paint::LearnEnd::found) return words::failure(paint::sentence(fit->end));
  return Ranges{*std::move(fit), std::move(asked.names), *std::move(told)};
}

namespace {

// Of one that the fit does not hold, as the fit has the others.
paint::LearnPigment facts_of(const Ranges& ranges, const Card& card,
                             const paint::LearnPigment& usual) {
  return ranges.told && ranges.fit.told ? paint::facts_told(*ranges.told, usual, card.id) : usual;
}

}

RangeQuestion range_question(const Ranges& ranges, const std::vector<BatchPigment>& pigments,
                             double dry_gum) {
  RangeQuestion q;
  q.batch.dry_gum = dry_gum;
  q.of_studio = ranges.names.of_studio;
  bool first = true;
  for (const BatchPigment& p : pigments) {
    if (!(p.volume_share > 0) || !std::isfinite(p.volume_share)) continue;
    q.usual.push_back(paint::learn_facts(pigment_of(*p.card).pigment));
    q.batch.pigments.push_back({number_of(ranges.names.pigments, p.card->id), p.volume_share,
                                facts_of(ranges, *p.card, q.usual.back())});
    const auto known = ranges.names.batches.find(p.card->id);
    const int batches = known == ranges.names.batches.end() ? 0 : known->second;
    q.batches = first ? batches : std::min(q.batches, batches);
    q.told = q.told || (batches == 0 && is_told(ranges, *p.card));
    first = false;
  }
  return q;
}

namespace {

// How the liquid was measured: as at the last note, or as it stands before there is one.
struct Measured {
  std::map<std::string, double> tools; // relative, signed
  double pigment_sd = 0, dried_off = 0;
};

Measured measured(const Batch& batch) {
  for (auto note = batch.feelings.rbegin(); note != batch.feelings.rend(); ++note)
    if (!note->unwetted) return {note->tools, note->pigment_sd, note->dried_off};
  const paint::Standing& s = batch.standing;
  Measured m;
  m.pigment_sd = paint::relative_uncertainty(s.pigment_g);
  if (s.liquid_mL.value > 0)
    for (const auto& [tool, share] : s.liquid_mL.shares)
      if (!paint::is_of_composition(tool)) m.tools[tool] = share / s.liquid_mL.value;
  return m;
}

void add_tools(paint::PredictBatch& asked, const Ranges& ranges, const Batch& batch) {
  const Measured m = measured(batch);
  double own_variance = 0;
  for (const auto& [tool, sd] : m.tools) {
    const int number = number_of(ranges.names.tools, tool_key(batch, tool));
    const double known = number < 0 ? 0 : ranges.fit.tools[static_cast<std::size_t>(number)].sd;
    if (known > 0)
      asked.tools.push_back({number, std::clamp(sd / known, -10.0, 10.0), 0});
    else
      own_variance += sd * sd;
  }
  asked.shared_sd = std::min(10.0, std::hypot(m.pigment_sd, std::hypot(dried_off_u * m.dried_off,
                                                                       std::sqrt(own_variance))));
}

// Of what was put in; before there is gum in it, of the binder that is laid out.
double dry_gum_meant(const Batch& batch) {
  if (batch.standing.gum_g.value > 0) return paint::dry_gum_put_in(batch.standing);
  for (const auto& [id, card] : batch.cards)
    if (card.kind() == CardKind::binder)
      if (const auto binder = material_of(card)) return dry_gum_of(*binder);
  return paint::usual_dry_gum;
}

Shares shares_of(const std::vector<BatchPigment>& pigments) {
  Shares shares;
  for (const BatchPigment& p : pigments) shares.emplace_back(p.card->id, p.volume_share);
  return shares;
}

bool is_of(const Feeling& note, const Shares& sorted) {
  Shares then = shares_of(note);
  std::sort(then.begin(), then.end());
  return alike(then, sorted, same_paint);
}

}

double dry_gum_of(const paint::Material& liquid) {
  const double all = 1 - liquid.parts.pigment;
  return all > 0 ? liquid.parts.gum / all : 0;
}

RangeQuestion range_question(const Ranges& ranges, const Batch& batch) {
  const std::vector<BatchPigment> now = pigments(batch);
  RangeQuestion q = range_question(ranges, now);
  if (q.batch.pigments.empty()) return q;
  add_tools(q.batch, ranges, batch);
  q.batch.dry_gum = dry_gum_meant(batch);
  const double late = q.of_studio < paint::first_batches ? paint::felt_late : 0;
  Shares shares = shares_of(now);
  std::sort(shares.begin(), shares.end());
  const Feeling* last = nullptr; // most are of the same paint as the one before
  const Feeling* counted = nullptr;
  bool of_this_paint = false;
  for (const Feeling& note : batch.feelings) {
    if (note.repeats || note.set_aside || note.unwetted) continue;
    if (!last || last->pigments != note.pigments) of_this_paint = is_of(note, shares);
    last = &note;
    if (!of_this_paint) continue;
    if (counted && is_said_again(note, *counted, ranges.fit.priors.drying)) continue;
    counted = &note;
    q.notes.push_back({note.flow, scatter_of(note), static_cast<int>(note.as),
                       within_model(note) - paint::usual_dry_gum, late});
  }
  return q;
}

words::Result<paint::Prediction> foreseen(const Ranges& ranges, const RangeQuestion& question) {
  paint::PredictBatch own = question.batch;
  for (std::size_t i = 0; i < own.pigments.size(); ++i) own.pigments[i].facts = question.usual[i];
  return paint::predict_told(ranges.fit, question.batch, own);
}

std::optional<paint::LnSpread> demand_in(const Ranges& ranges, const Card& pigment) {
  const RangeQuestion question = range_question(ranges, {{&pigment, 1}});
  const int number = question.batch.pigments.front().fit;
  if (number >= 0 && !ranges.fit.own) // else each word counts as far as it is likely
    if (const auto& known = ranges.fit.pigments[static_cast<std::size_t>(number)]; known.at >= 0)
      return paint::LnSpread{known.ln_demand, known.sd};
  const auto prediction = foreseen(ranges, question);
  return prediction ? std::optional(paint::spread_of(*prediction)) : std::nullopt;
}

NineInTen nine_in_ten(const paint::LnSpread& spread) {
  constexpr double normal_95 = 1.6449; // the normal distribution's 95th percentile
  const double reach = normal_95 * spread.sd;
  return {std::exp(spread.mean - reach), std::exp(spread.mean), std::exp(spread.mean + reach)};
}

namespace {

Expectation expectation_of(const RangeQuestion& question, paint::Prediction prediction) {
  Expectation e{std::move(prediction), {}, 0};
  e.band = paint::band_seen(e.prediction);
  e.band.batches = question.batches;
  e.band.of_studio = question.of_studio;
  e.band.told = question.told;
  return e;
}

}

std::optional<Expectation> expectation(const Ranges& ranges, const RangeQuestion& question) {
  auto prediction = foreseen(ranges, question);
  if (!prediction) return std::nullopt;
  for (paint::TodayNote note : question.notes) {
    note.stronger += paint::usual_dry_gum - question.batch.dry_gum;
    if (auto after = paint::after(*prediction, note)) prediction = std::move(after);
  }
  return expectation_of(question, *std::move(prediction));
}

std::optional<Expectation> expectation(const Ranges& ranges, const RangeQuestion& question,
                                       paint::NotesSeen& seen) {
  auto prediction = foreseen(ranges, question);
  if (!prediction) return std::nullopt;
  return expectation_of(question,
                        seen.weigh(*std::move(prediction), question.batch.dry_gum, question.notes));
}

void take_strength(Expectation& expected, const Batch& batch) {
  if (!(batch.standing.liquid_g.value > 0)) return;
  const double put_in = paint::dry_gum_put_in(batch.standing);
  const double stronger =
      std::max(put_in, std::min(paint::dry_gum(batch.standing), strongest_modelled)) - put_in;
  const double up = expected.prediction.drying * (stronger - expected.stronger);
  for (double* ln_flow :
       {&expected.band.middle, &expected.band.from, &expected.band.to, &expected.band.first})
    *ln_flow += up;
  expected.stronger = stronger;
}

std::optional<paint::Band> band_of(const Batch& batch, const Ranges& ranges) {
  auto expected = expectation(ranges, range_question(ranges, batch));
  if (!expected) return std::nullopt;
  take_strength(*expected, batch);
  return expected->band;
}

}
