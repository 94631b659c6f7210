#include "app/parse.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>

namespace app {

namespace {

bool all_digits(std::string_view text) {
  return !text.empty() &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::optional<int> whole(std::string_view text, int least, int most) {
  if (!all_digits(text) || text.size() > 5) return std::nullopt;
  const int value = std::stoi(std::string(text));
  return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

// As JSON writes numbers, whatever the locale.
std::optional<double> number(std::string_view text, double least, double most) {
  const auto json = nlohmann::json::parse(text, nullptr, false);
  if (!json.is_number()) return std::nullopt;
  const double value = json.get<double>();
  return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

struct Pair {
  std::string_view w, h;
};

Pair around_x(std::string_view text) {
  const auto x = text.find('x');
  if (x == std::string_view::npos) return {};
  return {text.substr(0, x), text.substr(x + 1)};
}

}

std::optional<window::Extent> parse_pixels(std::string_view text) {
  const Pair pair = around_x(text);
  const auto w = whole(pair.w, 1, most_pixels), h = whole(pair.h, 1, most_pixels);
  if (!w || !h) return std::nullopt;
  return window::Extent{*w, *h};
}

std::optional<bench::Size> parse_mm(std::string_view text) {
  const Pair pair = around_x(text);
  const auto w = number(pair.w, 20, 5000), h = number(pair.h, 20, 5000);
  if (!w || !h) return std::nullopt;
  return bench::Size{*w, *h};
}

}
