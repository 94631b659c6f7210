#include "words/say.hpp"

#include "words/app_says.hpp"
#include "words/bench_says.hpp"
#include "words/book_says.hpp"
#include "words/colour_says.hpp"
#include "words/commands_says.hpp"
#include "words/error.hpp"
#include "words/language_says.hpp"
#include "words/making_says.hpp"
#include "words/notes_says.hpp"
#include "words/paint_says.hpp"
#include "words/pans_says.hpp"
#include "words/paper_says.hpp"
#include "words/photos_says.hpp"
#include "words/plan_says.hpp"
#include "words/ranges_says.hpp"
#include "words/screens_says.hpp"
#include "words/session_says.hpp"
#include "words/shelf_says.hpp"
#include "words/slab_says.hpp"
#include "words/studio_says.hpp"
#include "words/tablet_says.hpp"
#include "words/today_says.hpp"

#include <atomic>
#include <cstdio>

namespace words {

namespace {

std::atomic<Language> now_spoken = Language::english;

std::string fill(std::string_view form, const Args& args) {
  std::string out;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const bool slot = form[i] == '{' && i + 2 < form.size() && form[i + 2] == '}';
    if (!slot) {
      out += form[i];
      continue;
    }
    const auto which = static_cast<std::size_t>(form[i + 1] - '0');
    if (which < args.size()) out += written(args[which]);
    i += 2;
  }
  return out;
}

}

void say_in(Language language) { now_spoken = language; }

Language spoken() { return now_spoken; }

std::string_view pattern(Sentence sentence) {
  switch (sentence.table) {
  case Table::none: return "";
  case Table::language: return english(static_cast<LanguageSay>(sentence.row));
  case Table::paint: return english(static_cast<PaintSay>(sentence.row));
  case Table::session: return english(static_cast<SessionSay>(sentence.row));
  case Table::notes: return english(static_cast<NotesSay>(sentence.row));
  case Table::bench: return english(static_cast<BenchSay>(sentence.row));
  case Table::studio: return english(static_cast<StudioSay>(sentence.row));
  case Table::paper: return english(static_cast<PaperSay>(sentence.row));
  case Table::screens: return english(static_cast<ScreensSay>(sentence.row));
  case Table::today: return english(static_cast<TodaySay>(sentence.row));
  case Table::shelf: return english(static_cast<ShelfSay>(sentence.row));
  case Table::making: return english(static_cast<MakingSay>(sentence.row));
  case Table::plan: return english(static_cast<PlanSay>(sentence.row));
  case Table::slab: return english(static_cast<SlabSay>(sentence.row));
  case Table::pans: return english(static_cast<PansSay>(sentence.row));
  case Table::book: return english(static_cast<BookSay>(sentence.row));
  case Table::ranges: return english(static_cast<RangesSay>(sentence.row));
  case Table::tablet: return english(static_cast<TabletSay>(sentence.row));
  case Table::colour: return english(static_cast<ColourSay>(sentence.row));
  case Table::photos: return english(static_cast<PhotosSay>(sentence.row));
  case Table::commands: return english(static_cast<CommandsSay>(sentence.row));
  case Table::app: return english(static_cast<AppSay>(sentence.row));
  }
  return "";
}

std::string pattern(Sentence sentence, Language language) {
  const std::string_view english = pattern(sentence);
  switch (language) {
  case Language::english: break;
  case Language::german:
    if (const std::string_view german = de_of(sentence); !german.empty())
      return std::string(german);
    break;
  case Language::pseudo: return sentence == LanguageSay::decimal_sign ? "," : pseudo(english);
  }
  return std::string(english);
}

std::string say(Sentence sentence, const Args& args) {
  return fill(pattern(sentence, spoken()), args);
}

Inner::Inner(Error error) : is_(std::make_shared<const Error>(std::move(error))) {}

bool Inner::operator==(const Inner& other) const { return *is_ == *other.is_; }

std::string counted(std::size_t many, Sentence one, Sentence others) {
  return say(many == 1 ? one : others, {std::to_string(many)});
}

std::string written(const Arg& arg) {
  if (const auto* known = std::get_if<Number>(&arg.is))
    return number(known->value, known->decimals);
  if (const auto* inner = std::get_if<Inner>(&arg.is)) return message(**inner);
  return std::get<std::string>(arg.is);
}

std::string decimal_sign() { return say(LanguageSay::decimal_sign); }

std::string number(double value, int decimals) {
  std::string text = invariant(value, decimals);
  if (const auto point = text.find('.'); point != std::string::npos)
    text.replace(point, 1, decimal_sign());
  return text;
}

// Streams would be a tenth of what a browser fetches. Nobody here sets the C library's locale.
std::string invariant(double value, int decimals) {
  const auto put = [&](char* place, std::size_t room) {
    return std::snprintf(place, room, "%.*f", decimals, value);
  };
  std::string out(static_cast<std::size_t>(put(nullptr, 0)), ' ');
  put(out.data(), out.size() + 1);
  const bool minus_nothing = out[0] == '-' && out.find_first_not_of("-0.") == std::string::npos;
  return minus_nothing ? out.substr(1) : out;
}

}
