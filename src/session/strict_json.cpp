#include "session/strict_json.hpp"

#include "words/session_says.hpp"

#include <map>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace session {

namespace {

constexpr std::size_t deepest = 8;

// What the library's parser calls, one call for each thing it meets. Returning false ends it.
class Builder {
public:
  using number_integer_t = Json::number_integer_t;
  using number_unsigned_t = Json::number_unsigned_t;
  using number_float_t = Json::number_float_t;
  using string_t = Json::string_t;
  using binary_t = Json::binary_t;

  bool null() { return put(nullptr); }
  bool boolean(bool value) { return put(value); }
  bool number_integer(number_integer_t value) { return put(value); }
  bool number_unsigned(number_unsigned_t value) { return put(value); }
  bool number_float(number_float_t value, const string_t&) { return put(value); }
  bool string(string_t& value) { return put(std::move(value)); }
  bool binary(binary_t&) { return false; } // not in text

  bool start_object(std::size_t) { return open(Json::object()); }
  bool start_array(std::size_t) { return open(Json::array()); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }

  bool key(string_t& name) {
    if (is_there(name)) return refuse(words::SessionSay::field_twice);
    key_ = std::move(name);
    return true;
  }
  bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) {
    return refuse(words::SessionSay::line_not_an_object);
  }

  Json root;
  std::optional<words::Sentence> fault;

private:
  // The library looks through all keys, which is right for the few that a line has, and too long
  // where somebody has put thousands there.
  bool is_there(const string_t& name) {
    constexpr std::size_t few = 32;
    const Json& object = *inside_.back();
    if (object.size() < few) return object.contains(name);
    std::unordered_set<std::string>& keys = keys_[inside_.size()];
    if (keys.empty())
      for (const auto& field : object.items()) keys.insert(field.key());
    return !keys.insert(name).second;
  }
  bool refuse(words::Sentence why) {
    fault = why;
    return false;
  }
  Json* place(Json value) {
    if (inside_.empty()) return &(root = std::move(value));
    Json& outer = *inside_.back();
    if (outer.is_object()) {
      using Fields = std::vector<std::pair<const string_t, Json>>; // what the ordered object is
      Fields& fields = outer.get_ref<Json::object_t&>();
      fields.emplace_back(std::move(key_), std::move(value));
      return &fields.back().second;
    }
    outer.push_back(std::move(value));
    return &outer.back();
  }
  bool put(Json value) {
    if (inside_.empty()) return refuse(words::SessionSay::line_not_an_object);
    place(std::move(value));
    return true;
  }
  bool open(Json value) {
    if (inside_.size() == deepest) return refuse(words::SessionSay::line_too_deep);
    if (inside_.empty() && !value.is_object()) return refuse(words::SessionSay::line_not_an_object);
    inside_.push_back(place(std::move(value)));
    keys_.erase(inside_.size());
    return true;
  }
  bool close() {
    inside_.pop_back();
    return true;
  }

  std::vector<Json*> inside_; // of an ordered object only the last child grows, so these stay good
  std::string key_;
  std::map<std::size_t, std::unordered_set<std::string>> keys_; // by depth, of large objects
};

}

words::Result<Json> read_object(std::string_view text) {
  Builder builder;
  Json::sax_parse(text.begin(), text.end(), &builder);
  if (builder.fault) return words::failure(*builder.fault);
  return std::move(builder.root);
}

}
