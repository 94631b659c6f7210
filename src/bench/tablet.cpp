#include "bench/tablet.hpp"

#include "words/bench_says.hpp"

#include <nlohmann/json.hpp>

#include <cmath>

namespace bench {

namespace {

using Json = nlohmann::ordered_json;

constexpr double least = 0.5, most = 2;

bool yes_or(const Json& object, const char* name, bool otherwise) {
  const auto at = object.find(name);
  return at != object.end() && at->is_boolean() ? at->get<bool>() : otherwise;
}

std::string text_of(const Json& object, const char* name) {
  const auto at = object.find(name);
  return at != object.end() && at->is_string() ? at->get<std::string>() : "";
}

const Json& inner(const Json& object, const char* name) {
  static const Json nothing = Json::object();
  const auto at = object.find(name);
  return at != object.end() && at->is_object() ? *at : nothing;
}

}

double scale_of(const Tablet& tablet, const std::string& monitor) {
  const auto at = tablet.scales.find(monitor);
  return at == tablet.scales.end() ? 1 : at->second;
}

std::string written(const Tablet& tablet) {
  Json scales = Json::object(), keys = Json::object();
  for (const auto& [monitor, scale] : tablet.scales) scales[monitor] = scale;
  for (const auto& [key, pad] : tablet.keys) keys[key] = name_of(pad);
  Json all = {{"hand", tablet.hand == Hand::left ? "left" : "right"},
              {"sound", tablet.sound},
              {"motion", tablet.motion},
              {"full_screen", tablet.full_screen},
              {"scales", scales},
              {"keys", keys},
              {"materials", tablet.materials},
              {"photo_folder", tablet.photo_folder},
              {"label_line", tablet.label_line}};
  if (tablet.handed_on > 0) all["handed_on"] = tablet.handed_on;
  if (tablet.language) all["language"] = words::tag_of(*tablet.language);
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

words::Result<Tablet> read_tablet(std::string_view text) {
  const Json all = Json::parse(text, nullptr, false);
  if (!all.is_object()) return words::failure(words::BenchSay::tablet_unreadable);
  Tablet tablet;
  tablet.hand = all.value("hand", Json()) == "right" ? Hand::right : Hand::left;
  tablet.sound = yes_or(all, "sound", true);
  tablet.motion = yes_or(all, "motion", true);
  tablet.full_screen = yes_or(all, "full_screen", false);
  if (const Json tag = all.value("language", Json()); tag.is_string())
    tablet.language = words::language_for(tag.get<std::string>());
  for (const auto& [monitor, scale] : inner(all, "scales").items())
    if (scale.is_number() && scale >= least && scale <= most)
      tablet.scales[monitor] = scale.get<double>();
  for (const auto& [key, name] : inner(all, "keys").items())
    if (const auto pad = name.is_string() ? pad_named(name.get<std::string>()) : std::nullopt)
      tablet.keys[key] = *pad;
  const Json cards = all.value("materials", Json::array());
  for (const Json& card : cards.is_array() ? cards : Json::array())
    if (card.is_string()) tablet.materials.push_back(card.get<std::string>());
  tablet.photo_folder = text_of(all, "photo_folder");
  tablet.label_line = text_of(all, "label_line");
  if (const Json at = all.value("handed_on", Json()); at.is_number_integer() && at > 0)
    tablet.handed_on = at.get<std::int64_t>();
  return tablet;
}

}
