// The file of told.hpp: written, and read with every check.
#include "paint/catalogue.hpp"
#include "paint/range/told.hpp"
#include "words/paint_says.hpp"

#include <Eigen/Cholesky>
#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdint>
#include <set>

namespace paint {

namespace {

using Json = nlohmann::ordered_json;
using Say = words::PaintSay;

constexpr const char* format = "slabside-range";
constexpr int version = 1;
// So that a problem of learn.hpp holds whatever is made of them.
constexpr double most_ln_flow = 5, most_variance = 4, most_of_hand = 10, most_sd = 4;

// Six digits behind the point: a hundredth of what any of these is known to.
double rounded(double value) { return std::round(value * 1e6) / 1e6; }

Json json_of(const NormalPrior& prior) { return {rounded(prior.centre), rounded(prior.sd)}; }

// The first fault stays; what is read after it is nothing.
class Reader {
public:
  explicit Reader(const Json& object) : object_(object) {}
  std::optional<words::Error> fault;

  void fail(words::Sentence why, words::Args args = {}) {
    if (!fault) fault = words::Error{why, std::move(args)};
  }

  const Json& list(const char* name) {
    const auto found = object_.find(name);
    if (found != object_.end() && found->is_array()) return *found;
    fail(Say::told_field, {name});
    return none_;
  }

  int count(const char* name) {
    const auto found = object_.find(name);
    if (found == object_.end() || !found->is_number_unsigned())
      return fail(Say::told_field, {name}), 0;
    if (found->get<std::uint64_t>() <= 1'000'000) return found->get<int>();
    fail(Say::told_out_of_range, {name});
    return 0;
  }

  double number(const Json& value, const char* name, double least, double most) {
    if (!value.is_number()) return fail(Say::told_field, {name}), 0;
    const double x = value.get<double>();
    if (!(x >= least && x <= most)) return fail(Say::told_out_of_range, {name}), 0;
    return x;
  }

  NormalPrior prior(const Json& value, const char* name, double most) {
    if (value.is_array() && value.size() == 2)
      return {number(value[0], name, -most, most), number(value[1], name, 0, most_sd)};
    fail(Say::told_field, {name});
    return {};
  }

private:
  const Json& object_;
  const Json none_ = Json::array();
};

// The library takes the last of two fields of one name, and a NUL for the end.
words::Result<Json> parsed(std::string_view bytes) {
  std::vector<std::set<std::string>> open;
  std::optional<std::string> twice;
  const auto look = [&](int, Json::parse_event_t at, const Json& is) {
    if (at == Json::parse_event_t::object_start) open.emplace_back();
    if (at == Json::parse_event_t::object_end) open.pop_back();
    if (at == Json::parse_event_t::key && !open.back().insert(is.get<std::string>()).second)
      twice = is.get<std::string>();
    return true;
  };
  Json object = Json::parse(bytes, look, false);
  if (bytes.find('\0') != std::string_view::npos || object.is_discarded())
    return words::failure(Say::told_not_json);
  if (twice) return words::failure(Say::told_field_twice, {*twice});
  return object;
}

std::optional<words::Error> fault_of_kind(const Json& object) {
  if (!object.is_object()) return words::Error{Say::told_not_json, {}};
  const auto kind = object.find("format");
  if (kind == object.end() || *kind != format) return words::Error{Say::told_format, {}};
  const auto which = object.find("version");
  if (which == object.end() || !which->is_number_unsigned())
    return words::Error{Say::told_field, {"version"}};
  if (*which != version) return words::Error{Say::told_version, {which->dump()}};
  return std::nullopt;
}

// Twelve lower-case hexadecimal digits, as a studio's own file has them.
std::string read_from(Reader& in, const Json& object) {
  const auto from = object.find("from");
  if (from == object.end()) return "";
  const std::string id = from->is_string() ? from->get<std::string>() : "";
  if (id.size() != 12 || id.find_first_not_of("0123456789abcdef") != std::string::npos)
    in.fail(Say::told_field, {"from"});
  return id;
}

void read_pigments(Reader& in, ToldRange& told) {
  std::set<std::string> seen;
  for (const Json& one : in.list("pigments")) {
    if (!one.is_string()) return in.fail(Say::told_field, {"pigments"});
    told.pigments.push_back(one.get<std::string>());
    const std::string& name = told.pigments.back();
    if (!in_catalogue(name)) return in.fail(Say::told_unknown_pigment, {name});
    if (!seen.insert(name).second) return in.fail(Say::told_twice, {name});
  }
  if (told.pigments.empty()) return in.fail(Say::told_field, {"pigments"});
  for (const Json& one : in.list("ln_demands"))
    told.ln_demands.push_back(in.number(one, "ln_demands", -most_ln_flow, most_ln_flow));
  if (told.ln_demands.size() != told.pigments.size()) in.fail(Say::told_field, {"ln_demands"});
}

void read_covariance(Reader& in, ToldRange& told) {
  const Json& rows = in.list("covariance");
  if (rows.size() != told.pigments.size()) return in.fail(Say::told_field, {"covariance"});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (!rows[i].is_array() || rows[i].size() != i + 1)
      return in.fail(Say::told_row, {std::to_string(i + 1), std::to_string(i + 1)});
    for (const Json& one : rows[i])
      // As it will be kept.
      told.covariance.push_back(
          rounded(in.number(one, "covariance", -most_variance, most_variance)));
  }
  if (in.fault) return;
  const auto n = static_cast<Eigen::Index>(rows.size());
  Eigen::MatrixXd whole(n, n);
  for (Eigen::Index i = 0; i < n; ++i)
    for (Eigen::Index j = 0; j <= i; ++j)
      whole(i, j) = whole(j, i) = told.covariance[covariance_entry(static_cast<std::size_t>(i),
                                                                   static_cast<std::size_t>(j))];
  const Eigen::LLT<Eigen::MatrixXd> root(whole);
  if (root.info() != Eigen::Success) in.fail(Say::told_not_positive);
}

}

std::string bytes_of(const ToldRange& told) {
  Json rows = Json::array(), hand = Json::array(), demands = Json::array();
  for (std::size_t i = 0; i < told.pigments.size(); ++i) {
    Json row = Json::array();
    for (std::size_t j = 0; j <= i; ++j)
      row.push_back(rounded(told.covariance[covariance_entry(i, j)]));
    rows.push_back(std::move(row));
    demands.push_back(rounded(told.ln_demands[i]));
  }
  for (const NormalPrior& prior : told.hand) hand.push_back(json_of(prior));
  Json object = {{"format", format}, {"version", version}};
  if (!told.from.empty()) object["from"] = told.from;
  object.update({{"batches", told.batches},
                 {"notes", told.notes},
                 {"pigments", told.pigments},
                 {"ln_demands", demands},
                 {"covariance", rows},
                 {"class_offset", json_of(told.class_offset)},
                 {"strength", json_of(told.strength)},
                 {"hand", hand}});
  return object.dump() + "\n";
}

words::Result<ToldRange> told_from(std::string_view bytes) {
  if (bytes.size() > most_told_bytes)
    return words::failure(Say::told_too_large, {std::to_string(most_told_bytes)});
  const auto whole = parsed(bytes);
  if (!whole) return tl::make_unexpected(whole.error());
  const Json& object = *whole;
  if (const auto fault = fault_of_kind(object)) return tl::make_unexpected(*fault);
  Reader in(object);
  ToldRange told;
  told.batches = in.count("batches");
  told.notes = in.count("notes");
  told.from = read_from(in, object);
  read_pigments(in, told);
  if (!in.fault) read_covariance(in, told);
  const auto field = [&](const char* name) { return object.value(name, Json()); };
  told.class_offset = in.prior(field("class_offset"), "class_offset", most_ln_flow);
  told.strength = in.prior(field("strength"), "strength", most_of_hand);
  const Json& hand = in.list("hand");
  if (hand.size() != theta_count) in.fail(Say::told_field, {"hand"});
  for (std::size_t i = 0; i < theta_count && !in.fault; ++i)
    told.hand[i] = in.prior(hand[i], "hand", most_of_hand);
  if (in.fault) return tl::make_unexpected(*in.fault);
  return told;
}

}
