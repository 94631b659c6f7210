#include "app/options.hpp"

#include "bench/screens.hpp"
#include "commands/arguments.hpp"
#include "commands/script.hpp"
#include "words/app_says.hpp"
#include "words/paint_says.hpp"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace app {

namespace {

using commands::Arguments;
using Say = words::AppSay;

// Reads options one after the other and keeps the first error.
struct Reader {
  const Arguments& given;
  std::optional<words::Error> error = {};

  // `read` takes the text and answers with an optional value; `what` says of which kind it is.
  template <class Into, class Read>
  void take(const std::string& option, Into& into, Read read, Say what) {
    const auto text = given.value(option);
    if (!text || error) return;
    if (auto value = read(*text))
      into = *value;
    else
      error = words::Error{Say::option_bad_value, {option, *text, words::Inner({what, {}})}};
  }
};

template <class T>
auto one_of(std::vector<std::pair<std::string, T>> names) {
  return [names = std::move(names)](const std::string& text) {
    std::optional<T> found;
    for (const auto& [name, value] : names)
      if (name == text) found = value;
    return found;
  };
}

const auto hand_named =
    one_of<bench::Hand>({{"left", bench::Hand::left}, {"right", bench::Hand::right}});
std::optional<bench::Screen> screen_named(std::string_view name) {
  return bench::screens.find(&bench::ScreenRow::name, name);
}
// "more; bottle": what is tapped before the picture is taken.
words::Result<std::vector<bench::PadId>> pads_named(const std::string& text) {
  std::vector<bench::PadId> pads;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find(';', from), text.size());
    const std::size_t first = std::min(text.find_first_not_of(' ', from), to);
    const auto pad = commands::pad_of_name(text.substr(first, to - first));
    if (!pad) return tl::make_unexpected(wrong_tap(pads.size(), pad.error()));
    pads.push_back(*pad);
    from = to + 1;
  }
  return pads;
}

std::optional<commands::Moment> moment_of(const std::string& text) {
  const auto moment = commands::moment(text);
  return moment ? std::optional(*moment) : std::nullopt;
}

bool is_file(const std::string& path) {
  std::error_code failed;
  return std::filesystem::is_regular_file(path, failed);
}

}

words::Error wrong_tap(std::size_t before, const words::Error& why) {
  return {Say::wrong_tap, {std::to_string(before + 1), words::Inner(why)}};
}

words::Result<WindowOptions> window_options(const std::vector<std::string>& given) {
  const auto arguments = commands::parse(given,
                                         {{"--studio", "--size", "--mm", "--hand", "--fault"},
                                          {"--night", "--full-screen", "--as-studio", "--report"},
                                          0,
                                          1},
                                         "");
  if (!arguments) return tl::make_unexpected(arguments.error());
  WindowOptions o;
  Reader reader{*arguments};
  o.studio = arguments->value("--studio");
  if (!arguments->words.empty()) {
    o.pack = arguments->words[0];
    if (!is_file(*o.pack)) return words::failure(Say::no_such_file, {*o.pack});
    if (o.studio) return words::failure(Say::pack_or_studio, {*o.pack});
  }
  reader.take("--size", o.size, parse_pixels, Say::option_pixels);
  reader.take("--mm", o.mm, parse_mm, Say::option_mm);
  reader.take("--hand", o.hand, hand_named, Say::option_hand);
  reader.take("--fault", o.fault, disk::parse_fault, Say::option_fault);
  o.night = arguments->has("--night");
  o.full_screen = arguments->has("--full-screen");
  o.as_studio = arguments->has("--as-studio");
  o.report = arguments->has("--report");
  if (reader.error) return tl::make_unexpected(*reader.error);
  return o;
}

words::Result<PictureOptions> picture_options(const std::vector<std::string>& given) {
  const auto arguments = commands::parse(
      given,
      {{"--studio", "--batch", "--at", "--size", "--mm", "--hand", "--taps", "--out"},
       {"--night"},
       1,
       1},
      "picture");
  if (!arguments) return tl::make_unexpected(arguments.error());
  PictureOptions o;
  Reader reader{*arguments};
  const auto screen = screen_named(arguments->words[0]);
  if (!screen) return words::failure(words::PaintSay::unknown_name, {arguments->words[0]});
  o.screen = *screen;
  o.studio = arguments->value("--studio");
  o.batch = arguments->value("--batch");
  reader.take("--at", o.at, moment_of, Say::option_moment);
  reader.take("--size", o.size, parse_pixels, Say::option_pixels);
  reader.take("--mm", o.mm, parse_mm, Say::option_mm);
  reader.take("--hand", o.hand, hand_named, Say::option_hand);
  o.night = arguments->has("--night");
  o.out = arguments->value("--out").value_or("");
  if (reader.error) return tl::make_unexpected(*reader.error);
  if (const auto taps = arguments->value("--taps")) {
    auto pads = pads_named(*taps);
    if (!pads) return tl::make_unexpected(pads.error());
    o.taps = *std::move(pads);
  }
  if (o.out.empty()) return words::failure(Say::option_missing, {"--out"});
  return o;
}

}
