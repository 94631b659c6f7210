#include "notes/heading_words.hpp"

#include "notes/amount_words.hpp"
#include "notes/tokens.hpp"

#include <algorithm>
#include <array>

namespace notes {

namespace {

struct Words {
  Role role;
  std::string_view keys; // with blanks between them
};

// Of several in one heading that of the first line here counts: "pigment amount" is of amounts,
// "honey binder" of honey.
constexpr std::array words_of_headings{
    Words{Role::date, "date datum when wann made gemacht hergestellt"},
    Words{Role::note, "note notes notiz notizen hinweis hinweise remark remarks comment "
                      "comments bemerkung bemerkungen anmerkung anmerkungen kommentar "
                      "kommentare result ergebnis verdict"},
    Words{Role::honey, "honey honig"},
    Words{Role::glycerin, "glycerin glycerine glycerol glyzerin"},
    Words{Role::wetting_aid, "gall oxgall ochsengalle galle netzmittel"},
    Words{Role::binder, "binder binding medium bindemittel bindemittels binders gum gummi "
                        "arabicum arabikum arabic"},
    Words{Role::water, "water wasser"},
    Words{Role::amount, "amount amounts quantity quantities qty menge mengen anteil masse "
                        "weight weights gewicht much viel wieviel"},
    Words{Role::pigment, "pigment pigments pigmente powder pulver ingredient ingredients zutat "
                         "zutaten material index"},
    Words{Role::name, "name paint colour color recipe title farbe farbton bezeichnung rezept "
                      "titel ansatz batch no nr number nummer lfd id"}};

constexpr std::array<std::string_view, 12> words_of_the_whole{
    "total", "totals", "sum",   "batch",  "yield",    "gesamt",
    "summe", "rest",   "restl", "ansatz", "ausbeute", "insgesamt"};
constexpr std::array<std::string_view, 12> words_between{"of",  "von", "vom", "der", "des", "an",
                                                         "the", "how", "wie", "in",  "per", "pro"};

template <std::size_t n>
bool is_among(const std::array<std::string_view, n>& words, std::string_view key) {
  return std::find(words.begin(), words.end(), key) != words.end();
}

using Places = std::map<std::string_view, std::size_t>;

Places places_of_words() {
  Places out;
  for (std::size_t place = 0; place < words_of_headings.size(); ++place)
    for (std::string_view rest = words_of_headings[place].keys; !rest.empty();) {
      const std::size_t end = std::min(rest.find(' '), rest.size());
      out.emplace(rest.substr(0, end), place);
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  return out;
}

// The line of the list above; behind the last for a word that is not known. Looked up, since a
// table may be thousands of columns wide.
std::size_t place_of(std::string_view key) {
  static const Places places = places_of_words();
  const auto found = places.find(key);
  return found == places.end() ? words_of_headings.size() : found->second;
}

bool is_known(std::string_view key) { return place_of(key) < words_of_headings.size(); }

bool is_amount(std::string_view key) {
  return is_known(key) && words_of_headings[place_of(key)].role == Role::amount;
}

Unit measure(std::string_view key) {
  const auto unit = unit_of(key);
  return unit && unit->of == 1 ? unit->unit : Unit::none;
}

// "Pigment2" is one of several.
std::string_view without_number(std::string_view key) {
  return key.substr(0, key.find_last_not_of("0123456789") + 1);
}

// A word, or both of "Pigmentmenge", "Blaumenge" and "Honigtropfen".
std::vector<std::string_view> parts_of(std::string_view key) {
  constexpr std::size_t least = 3, least_measure = 5; // letters: "el" and "tr" end many a word
  if (is_known(key)) return {key};
  for (std::size_t at = least; at + least <= key.size(); ++at) {
    const std::string_view first = key.substr(0, at), second = key.substr(at);
    const bool measured = second.size() >= least_measure && measure(second) != Unit::none;
    if (is_amount(second) || (is_known(first) && (is_known(second) || measured)))
      return {first, second};
  }
  return {key};
}

// Takes the words of one heading together.
class Reading {
public:
  explicit Reading(std::string_view text) : text_(text) {}

  Heading made() {
    for (const Token& token : tokens_of(text_)) take(token);
    rest_ += text_.substr(taken_);
    if (best_ < words_of_headings.size()) out_.role = words_of_headings[best_].role;
    if (!out_.role && out_.unit != Unit::none) out_.role = Role::amount;
    if (numbers_ != 1) out_.number.clear();
    out_.rest = rest_;
    return std::move(out_);
  }

private:
  void take(const Token& token) {
    const bool number = token.kind == TokenKind::number;
    if (number || (token.key.size() == 1 && measure(token.key) == Unit::none &&
                   token.kind == TokenKind::word))
      return take_number(token.key);
    if (token.kind != TokenKind::word) return;
    const bool measured = measure(token.key) != Unit::none; // cm3
    const std::string_view word = measured ? token.key : without_number(token.key);
    const auto parts = parts_of(word);
    if (word.size() < token.key.size() && is_known(parts.back()))
      take_number(token.key.substr(word.size()));
    for (const std::string_view part : parts) take_word(part);
    const auto goes = [](std::string_view part) {
      return is_amount(part) || measure(part) != Unit::none || is_among(words_between, part);
    };
    if (!goes(parts.back())) return;
    rest_ += text_.substr(taken_, token.from - taken_);
    if (!goes(parts.front())) rest_ += parts.front();
    rest_ += token.key.substr(word.size());
    taken_ = token.to;
  }

  void take_number(std::string_view key) {
    ++numbers_;
    const std::size_t from = key.find_first_not_of('0');
    out_.number = key.substr(std::min(from, key.size()));
  }

  void take_word(std::string_view key) {
    const std::size_t place = place_of(key);
    out_.amounts = out_.amounts || is_amount(key);
    out_.whole = out_.whole || is_among(words_of_the_whole, key);
    if (const Unit unit = measure(key); unit != Unit::none) out_.unit = unit;
    best_ = std::min(best_, place);
    if (place == words_of_headings.size() || place >= material_) return;
    const Role role = words_of_headings[place].role;
    if (role != Role::pigment && !liquid_of(role)) return;
    material_ = place;
    out_.of = role;
  }

  std::string_view text_;
  Heading out_;
  std::string rest_;
  std::size_t taken_ = 0; // bytes of the text
  std::size_t numbers_ = 0;
  std::size_t best_ = words_of_headings.size(), material_ = words_of_headings.size();
};

}

Heading heading_in(std::string_view text) { return Reading(text).made(); }

std::optional<Role> role_in(std::string_view heading) { return heading_in(heading).role; }

}
