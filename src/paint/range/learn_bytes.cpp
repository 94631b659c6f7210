#include "paint/range/learn_bytes.hpp"

#include "words/lists.hpp"
#include "words/paint_says.hpp"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <limits>

namespace paint {

namespace {

using Json = nlohmann::ordered_json;
using Say = words::PaintSay;

struct Named {
  std::string_view name;
};
constexpr words::EnumTable<LearnEnd, Named> ends{{{LearnEnd::found, {"found"}},
                                                  {LearnEnd::separated, {"separated"}},
                                                  {LearnEnd::no_convergence, {"no_convergence"}},
                                                  {LearnEnd::no_peak, {"no_peak"}}}};

// Reading on after the first fault, with empty values, lets each struct read straight down.
class Reader {
public:
  std::optional<words::Error> fault;

  const Json& field(const Json& object, const char* name) {
    if (object.is_object())
      if (const auto found = object.find(name); found != object.end()) return *found;
    fail(name);
    return nothing;
  }

  const Json& list(const Json& object, const char* name) {
    const Json& value = field(object, name);
    if (value.is_array()) return value;
    fail(name);
    return empty;
  }

  double number(const Json& value, const char* name) {
    if (value.is_number()) return value.get<double>();
    fail(name);
    return 0;
  }

  // JSON has no infinity: where a fit came to nothing, its height is null.
  double height(const Json& value, const char* name) {
    return value.is_null() && !fault ? -std::numeric_limits<double>::infinity()
                                     : number(value, name);
  }

  int whole(const Json& value, const char* name) {
    if (value.is_number_integer()) {
      const auto n = value.get<std::int64_t>();
      const bool small = !value.is_number_unsigned() || value.get<std::uint64_t>() < 1u << 31;
      if (small && n >= std::numeric_limits<int>::min() && n <= std::numeric_limits<int>::max())
        return static_cast<int>(n);
    }
    fail(name);
    return 0;
  }

  bool yes(const Json& value, const char* name) {
    if (value.is_boolean()) return value.get<bool>();
    fail(name);
    return false;
  }

  // A list of so many; its places are empty where it is not.
  const Json& row(const Json& value, std::size_t count, const char* name) {
    if (value.is_array() && value.size() == count) return value;
    fail(name);
    return empty_row;
  }

private:
  void fail(const char* name) {
    if (!fault) fault = words::Error{Say::learn_field, {name}};
  }

  const Json nothing, empty = Json::array(), empty_row = Json::array({0, 0, 0, 0, 0, 0, 0});
};

using Pairs = std::vector<std::pair<int, double>>;

Json json_of(const Pairs& pairs) {
  Json list = Json::array();
  for (const auto& [which, amount] : pairs) list.push_back({which, amount});
  return list;
}

Pairs pairs_of(Reader& in, const Json& object, const char* name) {
  Pairs pairs;
  for (const Json& one : in.list(object, name)) {
    const Json& row = in.row(one, 2, name);
    pairs.emplace_back(in.whole(row[0], name), in.number(row[1], name));
  }
  return pairs;
}

Json json_of(const NormalPrior& prior) { return {prior.centre, prior.sd}; }

NormalPrior prior_of(Reader& in, const Json& value, const char* name) {
  const Json& row = in.row(value, 2, name);
  return {in.number(row[0], name), in.number(row[1], name)};
}

Json json_of(const LearnPriors& priors) {
  Json theta = Json::array();
  for (const NormalPrior& prior : priors.theta) theta.push_back(json_of(prior));
  return {{"theta", theta},          {"alpha", json_of(priors.alpha)},
          {"slips", priors.slips},   {"strength", json_of(priors.strength)},
          {"drying", priors.drying}, {"walk", priors.walk}};
}

LearnPriors priors_of(Reader& in, const Json& object) {
  LearnPriors priors;
  const Json& theta = in.row(in.field(object, "theta"), theta_count, "theta");
  for (std::size_t i = 0; i < theta_count; ++i) priors.theta[i] = prior_of(in, theta[i], "theta");
  priors.alpha = prior_of(in, in.field(object, "alpha"), "alpha");
  priors.slips = in.yes(in.field(object, "slips"), "slips");
  priors.strength = prior_of(in, in.field(object, "strength"), "strength");
  priors.drying = in.number(in.field(object, "drying"), "drying");
  priors.walk = in.number(in.field(object, "walk"), "walk");
  return priors;
}

Json json_of(const LearnPigment& p) {
  Json row{p.ln_oil, p.kappa, p.q};
  if (p.told) row.push_back(true);
  return row;
}

LearnPigment pigment_of(Reader& in, const Json& value) {
  const bool told = value.is_array() && value.size() == 4;
  const Json& row = in.row(value, told ? 4 : 3, "pigments");
  return {in.number(row[0], "ln_oil"), in.number(row[1], "kappa"), in.number(row[2], "q"),
          told && in.yes(row[3], "told")};
}

Json json_of(const std::vector<LearnPigment>& pigments) {
  Json list = Json::array();
  for (const LearnPigment& p : pigments) list.push_back(json_of(p));
  return list;
}

std::vector<LearnPigment> pigments_of(Reader& in, const Json& object) {
  std::vector<LearnPigment> pigments;
  for (const Json& one : in.list(object, "pigments")) pigments.push_back(pigment_of(in, one));
  return pigments;
}

LearnNote note_of(Reader& in, const Json& object) {
  return {in.whole(in.field(object, "segment"), "segment"),
          in.number(in.field(object, "ln_mL"), "ln_mL"),
          in.number(in.field(object, "sd"), "sd"),
          pairs_of(in, object, "tools"),
          in.whole(in.field(object, "felt"), "felt"),
          in.number(in.field(object, "dry_gum"), "dry_gum")};
}

LearnProblem problem_of(Reader& in, const Json& object) {
  LearnProblem problem;
  problem.pigments = pigments_of(in, object);
  for (const Json& one : in.list(object, "tools"))
    problem.tools.push_back({in.number(one, "tools")});
  for (const Json& one : in.list(object, "batches"))
    problem.batches.push_back({in.number(one, "batches")});
  for (const Json& one : in.list(object, "segments"))
    problem.segments.push_back(
        {in.whole(in.field(one, "batch"), "batch"), pairs_of(in, one, "pigments")});
  for (const Json& one : in.list(object, "notes")) problem.notes.push_back(note_of(in, one));
  return problem;
}

Theta theta_of(Reader& in, const Json& value, const char* name) {
  const Json& row = in.row(value, theta_count, name);
  Theta theta{};
  for (std::size_t i = 0; i < theta_count; ++i) theta[i] = in.number(row[i], name);
  return theta;
}

Json json_of(const RangeFit& fit) {
  Json precision = Json::array(), pigments = Json::array(), tools = Json::array();
  for (const MatrixEntry& e : fit.precision) precision.push_back({e.row, e.column, e.value});
  for (const FittedPigment& p : fit.pigments)
    pigments.push_back(
        {{"facts", json_of(p.facts)}, {"at", p.at}, {"ln_demand", p.ln_demand}, {"sd", p.sd}});
  for (const FittedTool& t : fit.tools)
    tools.push_back({{"sd", t.sd}, {"at", t.at}, {"error", t.error}});
  return {{"priors", json_of(fit.priors)},
          {"theta", fit.theta},
          {"theta_covariance", fit.theta_covariance},
          {"alpha_at", fit.alpha_at},
          {"strength_at", fit.strength_at},
          {"levels_at", fit.levels_at},
          {"z", fit.z},
          {"z_by_theta", fit.z_by_theta},
          {"precision", std::move(precision)},
          {"pigments", std::move(pigments)},
          {"tools", std::move(tools)},
          {"told", fit.told},
          {"told_share", fit.told_share},
          {"own", fit.own ? json_of(*fit.own) : Json()},
          {"batches", fit.batches},
          {"notes", fit.notes},
          {"log_marginal", fit.log_marginal},
          {"log_posterior", fit.log_posterior},
          {"end", ends[fit.end].name}};
}

void read_parts(Reader& in, const Json& object, RangeFit& fit) {
  for (const Json& one : in.list(object, "pigments"))
    fit.pigments.push_back(
        {pigment_of(in, in.field(one, "facts")), in.whole(in.field(one, "at"), "at"),
         in.number(in.field(one, "ln_demand"), "ln_demand"), in.number(in.field(one, "sd"), "sd")});
  for (const Json& one : in.list(object, "tools"))
    fit.tools.push_back({in.number(in.field(one, "sd"), "sd"), in.whole(in.field(one, "at"), "at"),
                         in.number(in.field(one, "error"), "error")});
}

RangeFit fit_of(Reader& in, const Json& object) {
  RangeFit fit;
  fit.priors = priors_of(in, in.field(object, "priors"));
  fit.theta = theta_of(in, in.field(object, "theta"), "theta");
  const Json& covariance =
      in.row(in.field(object, "theta_covariance"), theta_count, "theta_covariance");
  for (std::size_t i = 0; i < theta_count; ++i)
    fit.theta_covariance[i] = theta_of(in, covariance[i], "theta_covariance");
  fit.alpha_at = in.whole(in.field(object, "alpha_at"), "alpha_at");
  fit.strength_at = in.whole(in.field(object, "strength_at"), "strength_at");
  fit.levels_at = in.whole(in.field(object, "levels_at"), "levels_at");
  for (const Json& one : in.list(object, "z")) fit.z.push_back(in.number(one, "z"));
  for (const Json& one : in.list(object, "z_by_theta"))
    fit.z_by_theta.push_back(theta_of(in, one, "z_by_theta"));
  for (const Json& one : in.list(object, "precision")) {
    const Json& row = in.row(one, 3, "precision");
    fit.precision.push_back({in.whole(row[0], "precision"), in.whole(row[1], "precision"),
                             in.number(row[2], "precision")});
  }
  read_parts(in, object, fit);
  fit.told = in.yes(in.field(object, "told"), "told");
  fit.told_share = in.number(in.field(object, "told_share"), "told_share");
  if (const Json& own = in.field(object, "own"); !own.is_null())
    fit.own = std::make_shared<const RangeFit>(fit_of(in, own));
  fit.batches = in.whole(in.field(object, "batches"), "batches");
  fit.notes = in.whole(in.field(object, "notes"), "notes");
  fit.log_marginal = in.height(in.field(object, "log_marginal"), "log_marginal");
  fit.log_posterior = in.height(in.field(object, "log_posterior"), "log_posterior");
  const Json& end = in.field(object, "end");
  const auto known =
      end.is_string() ? ends.find(&Named::name, std::string_view(end.get_ref<const std::string&>()))
                      : std::nullopt;
  if (!known && !in.fault) in.fault = words::Error{Say::learn_field, {"end"}};
  fit.end = known.value_or(LearnEnd::found);
  return fit;
}

Json parsed(std::string_view bytes) { return Json::parse(bytes, nullptr, false); }

}

std::string bytes_of(const LearnProblem& problem, const LearnPriors& priors,
                     const RangeFit* earlier, const ToldVariant* told) {
  Json object = {{"pigments", json_of(problem.pigments)},
                 {"tools", Json::array()},
                 {"batches", Json::array()},
                 {"segments", Json::array()},
                 {"notes", Json::array()},
                 {"priors", json_of(priors)}};
  for (const LearnTool& t : problem.tools) object["tools"].push_back(t.sd);
  for (const LearnBatch& b : problem.batches) object["batches"].push_back(b.shared_sd);
  for (const LearnSegment& s : problem.segments)
    object["segments"].push_back({{"batch", s.batch}, {"pigments", json_of(s.pigments)}});
  for (const LearnNote& n : problem.notes)
    object["notes"].push_back({{"segment", n.segment},
                               {"ln_mL", n.ln_mL},
                               {"sd", n.sd},
                               {"tools", json_of(n.tools)},
                               {"felt", n.felt},
                               {"dry_gum", n.dry_gum}});
  if (earlier) object["earlier"] = json_of(*earlier);
  if (told)
    object["told"] = {{"pigments", json_of(told->pigments)}, {"priors", json_of(told->priors)}};
  return object.dump();
}

std::string bytes_of(const RangeFit& fit) { return json_of(fit).dump(); }

words::Result<RangeFit> fit_from(std::string_view bytes) {
  const Json object = parsed(bytes);
  if (object.is_discarded()) return words::failure(Say::learn_not_json);
  Reader in;
  RangeFit fit = fit_of(in, object);
  if (in.fault) return tl::make_unexpected(*in.fault);
  return fit;
}

words::Result<std::string> learn_bytes(std::string_view bytes) {
  const Json object = parsed(bytes);
  if (object.is_discarded()) return words::failure(Say::learn_not_json);
  Reader in;
  const LearnProblem problem = problem_of(in, object);
  const LearnPriors priors = priors_of(in, in.field(object, "priors"));
  std::optional<RangeFit> earlier;
  if (object.is_object() && object.contains("earlier")) earlier = fit_of(in, object["earlier"]);
  std::optional<ToldVariant> told;
  if (object.is_object() && object.contains("told"))
    told = {pigments_of(in, object["told"]), priors_of(in, in.field(object["told"], "priors"))};
  if (in.fault) return tl::make_unexpected(*in.fault);
  const RangeFit* from = earlier ? &*earlier : nullptr;
  const auto fit = told ? learn_told(problem, *told, from) : learn(problem, priors, from);
  if (!fit) return tl::make_unexpected(fit.error());
  return bytes_of(*fit);
}

}
