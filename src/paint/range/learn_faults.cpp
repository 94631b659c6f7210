// What a problem must be like, checked once before anything is computed.
#include "paint/range/learn.hpp"
#include "words/paint_says.hpp"

#include <set>
#include <string>

namespace paint {

namespace {

using Say = words::PaintSay;

// The first fault stays; later checks change nothing.
class Check {
public:
  std::optional<words::Error> fault;

  void where(const std::string& list, std::size_t i) {
    if (!fault) place = list + " " + std::to_string(i + 1);
  }

  void within(const char* field, double x, double least, double most) {
    if (fault || (x >= least && x <= most)) return;
    fault = words::Error{
        Say::learn_out_of_range,
        {place, field, least > 0 && least < 1 ? words::Number(least, 3) : words::Number(least, 0),
         words::Number(most, 0)}};
  }

  void there(const char* field, int i, std::size_t count) {
    if (fault || (i >= 0 && static_cast<std::size_t>(i) < count)) return;
    fault = words::Error{Say::learn_not_there, {place, field}};
  }

  void pigment(bool any) {
    if (!fault && !any) fault = words::Error{Say::learn_no_pigment, {place}};
  }

private:
  std::string place;
};

constexpr double widest_sd = 10;

void check_parts(Check& check, const LearnProblem& p) {
  for (std::size_t i = 0; i < p.pigments.size(); ++i) {
    check.where("pigment", i);
    check.within("ln_oil", p.pigments[i].ln_oil, -10, 10);
    check.within("kappa", p.pigments[i].kappa, -10, 10);
    check.within("q", p.pigments[i].q, p.pigments[i].told ? 1e-3 : 0, widest_sd);
  }
  for (std::size_t i = 0; i < p.tools.size(); ++i) {
    check.where("tool", i);
    check.within("sd", p.tools[i].sd, 0, widest_sd);
  }
  for (std::size_t i = 0; i < p.batches.size(); ++i) {
    check.where("batch", i);
    check.within("shared_sd", p.batches[i].shared_sd, 0, widest_sd);
  }
}

void check_segments(Check& check, const LearnProblem& p) {
  for (std::size_t i = 0; i < p.segments.size(); ++i) {
    check.where("segment", i);
    check.there("batch", p.segments[i].batch, p.batches.size());
    bool any = false;
    for (const auto& [pigment, mL] : p.segments[i].pigments) {
      check.there("pigment", pigment, p.pigments.size());
      check.within("mL", mL, 0, 1e6);
      any = any || mL > 0;
    }
    check.pigment(any);
  }
}

// Each batch is solved as one small dense piece.
constexpr double most_in_a_batch = 200;
constexpr double most_parts = 5000; // one dense matrix of them is made

void check_sizes(Check& check, const LearnProblem& p) {
  std::vector<std::set<int>> pigments(p.batches.size()), tools(p.batches.size());
  std::vector<double> segments(p.batches.size());
  for (const LearnSegment& s : p.segments) {
    ++segments[static_cast<std::size_t>(s.batch)];
    for (const auto& part : s.pigments)
      pigments[static_cast<std::size_t>(s.batch)].insert(part.first);
  }
  for (const LearnNote& note : p.notes)
    for (const auto& part : note.tools)
      tools[static_cast<std::size_t>(p.segments[static_cast<std::size_t>(note.segment)].batch)]
          .insert(part.first);
  check.where("list", 0);
  check.within("pigments", static_cast<double>(p.pigments.size()), 0, most_parts);
  check.within("tools", static_cast<double>(p.tools.size()), 0, most_parts);
  for (std::size_t b = 0; b < p.batches.size(); ++b) {
    check.where("batch", b);
    check.within("pigments", static_cast<double>(pigments[b].size()), 0, most_in_a_batch);
    check.within("segments", segments[b], 0, most_in_a_batch);
    check.within("tools", static_cast<double>(tools[b].size()), 0, most_in_a_batch);
  }
}

void check_notes(Check& check, const LearnProblem& p) {
  for (std::size_t i = 0; i < p.notes.size(); ++i) {
    const LearnNote& note = p.notes[i];
    check.where("note", i);
    check.there("segment", note.segment, p.segments.size());
    check.within("ln_mL", note.ln_mL, -25, 25);
    check.within("sd", note.sd, 0, widest_sd);
    check.within("felt", note.felt, 0, 4);
    check.within("dry_gum", note.dry_gum, 0, 1);
    for (const auto& [tool, share] : note.tools) {
      check.there("tool", tool, p.tools.size());
      check.within("share", share, -10, 10);
    }
  }
}

}

std::optional<words::Error> fault_of(const LearnProblem& problem, const LearnPriors& priors) {
  Check check;
  for (std::size_t i = 0; i < theta_count; ++i) {
    check.where("prior", i);
    check.within("centre", priors.theta[i].centre, -20, 20);
    check.within("sd", priors.theta[i].sd, 0, widest_sd);
  }
  check.where("prior of alpha", 0);
  check.within("centre", priors.alpha.centre, -20, 20);
  check.within("sd", priors.alpha.sd, 1e-3, widest_sd);
  check.where("prior of strength", 0);
  check.within("centre", priors.strength.centre, -20, 20);
  check.within("sd", priors.strength.sd, 0, widest_sd);
  check.within("drying", priors.drying, -100, 100);
  check.within("walk", priors.walk, 0, widest_sd);
  check_parts(check, problem);
  check_segments(check, problem);
  check_notes(check, problem);
  if (!check.fault) check_sizes(check, problem);
  return check.fault;
}

}
