#include "notes/amount_words.hpp"

#include <algorithm>
#include <array>

namespace notes {

namespace {

struct Row {
  std::string_view key;
  UnitWord is;
};
// An ounce by weight is 28.349523125 g; one by volume differs from country to country, so it is
// not here.
constexpr double ounce_g = 28.349523125;
constexpr std::array units{Row{"g", {Unit::g}},
                           Row{"gr", {Unit::g}},
                           Row{"gm", {Unit::g}},
                           Row{"gms", {Unit::g}},
                           Row{"gram", {Unit::g}},
                           Row{"grams", {Unit::g}},
                           Row{"gramm", {Unit::g}},
                           Row{"gramme", {Unit::g}},
                           Row{"grammes", {Unit::g}},
                           Row{"mg", {Unit::g, 0.001}},
                           Row{"kg", {Unit::g, 1000}},
                           Row{"kilo", {Unit::g, 1000}},
                           Row{"oz", {Unit::g, ounce_g}},
                           Row{"ounce", {Unit::g, ounce_g}},
                           Row{"ounces", {Unit::g, ounce_g}},
                           Row{"ml", {Unit::mL}},
                           Row{"milliliter", {Unit::mL}},
                           Row{"milliliters", {Unit::mL}},
                           Row{"millilitre", {Unit::mL}},
                           Row{"millilitres", {Unit::mL}},
                           Row{"cc", {Unit::mL}},
                           Row{"ccm", {Unit::mL}},
                           Row{"cm3", {Unit::mL}},
                           Row{"cl", {Unit::mL, 10}},
                           Row{"drop", {Unit::drops}},
                           Row{"drops", {Unit::drops}},
                           Row{"drp", {Unit::drops}},
                           Row{"drps", {Unit::drops}},
                           Row{"dr", {Unit::drops}},
                           Row{"gtt", {Unit::drops}},
                           Row{"gtts", {Unit::drops}},
                           Row{"tropfen", {Unit::drops}},
                           Row{"tropf", {Unit::drops}},
                           Row{"trpf", {Unit::drops}},
                           Row{"tr", {Unit::drops}},
                           Row{"tsp", {Unit::teaspoon}},
                           Row{"tsps", {Unit::teaspoon}},
                           Row{"teaspoon", {Unit::teaspoon}},
                           Row{"teaspoons", {Unit::teaspoon}},
                           Row{"teaspoonful", {Unit::teaspoon}},
                           Row{"tl", {Unit::teaspoon}},
                           Row{"teel", {Unit::teaspoon}},
                           Row{"teeloffel", {Unit::teaspoon}},
                           Row{"teeloeffel", {Unit::teaspoon}},
                           Row{"kaffeeloffel", {Unit::teaspoon}},
                           Row{"tbsp", {Unit::tablespoon}},
                           Row{"tbsps", {Unit::tablespoon}},
                           Row{"tbs", {Unit::tablespoon}},
                           Row{"tbl", {Unit::tablespoon}},
                           Row{"tblsp", {Unit::tablespoon}},
                           Row{"tablespoon", {Unit::tablespoon}},
                           Row{"tablespoons", {Unit::tablespoon}},
                           Row{"tablespoonful", {Unit::tablespoon}},
                           Row{"el", {Unit::tablespoon}},
                           Row{"essl", {Unit::tablespoon}},
                           Row{"essloffel", {Unit::tablespoon}},
                           Row{"essloeffel", {Unit::tablespoon}},
                           Row{"part", {Unit::parts}},
                           Row{"parts", {Unit::parts}},
                           Row{"pt", {Unit::parts}},
                           Row{"pts", {Unit::parts}},
                           Row{"teil", {Unit::parts}},
                           Row{"teile", {Unit::parts}},
                           Row{"teilen", {Unit::parts}}};

struct Count {
  std::string_view key;
  double is;
};
constexpr std::array numbers{
    Count{"one", 1},           Count{"two", 2},          Count{"three", 3},
    Count{"four", 4},          Count{"five", 5},         Count{"six", 6},
    Count{"seven", 7},         Count{"eight", 8},        Count{"nine", 9},
    Count{"ten", 10},          Count{"eleven", 11},      Count{"twelve", 12},
    Count{"dozen", 12},        Count{"eins", 1},         Count{"zwei", 2},
    Count{"drei", 3},          Count{"vier", 4},         Count{"funf", 5},
    Count{"fuenf", 5},         Count{"sechs", 6},        Count{"sieben", 7},
    Count{"acht", 8},          Count{"neun", 9},         Count{"zehn", 10},
    Count{"elf", 11},          Count{"zwolf", 12},       Count{"zwoelf", 12},
    Count{"dutzend", 12},      Count{"anderthalb", 1.5}, Count{"eineinhalb", 1.5},
    Count{"zweieinhalb", 2.5}, Count{"dreieinhalb", 3.5}};
constexpr std::array fractions{
    Count{"half", 0.5},        Count{"halves", 0.5},    Count{"quarter", 0.25},
    Count{"quarters", 0.25},   Count{"third", 1 / 3.0}, Count{"thirds", 1 / 3.0},
    Count{"eighth", 0.125},    Count{"eighths", 0.125}, Count{"halb", 0.5},
    Count{"halbe", 0.5},       Count{"halber", 0.5},    Count{"halben", 0.5},
    Count{"halbes", 0.5},      Count{"viertel", 0.25},  Count{"dreiviertel", 0.75},
    Count{"drittel", 1 / 3.0}, Count{"achtel", 0.125}};

template <std::size_t n>
bool is_one_of(const std::array<std::string_view, n>& words, std::string_view key) {
  return std::find(words.begin(), words.end(), key) != words.end();
}

template <std::size_t n>
std::optional<double> found(const std::array<Count, n>& counts, std::string_view key) {
  for (const Count& count : counts)
    if (count.key == key) return count.is;
  return std::nullopt;
}

template <class... Word>
constexpr std::array<std::string_view, sizeof...(Word)> list(Word... words) {
  return {std::string_view(words)...};
}

}

std::optional<UnitWord> unit_of(std::string_view key) {
  for (const Row& row : units)
    if (row.key == key) return row.is;
  return std::nullopt;
}

std::optional<double> number_word(std::string_view key) { return found(numbers, key); }
std::optional<double> fraction_word(std::string_view key) { return found(fractions, key); }

bool is_article(std::string_view key) {
  return is_one_of(list("a", "an", "ein", "eine", "einen", "einer", "eines"), key);
}
bool is_about(std::string_view key) {
  return is_one_of(list("about", "approx", "approximately", "around", "roughly", "ca", "circa",
                        "etwa", "ungefahr", "ungefaehr", "rund", "zirka"),
                   key);
}
bool is_level(std::string_view key) {
  return is_one_of(list("level", "flat", "gestr", "gestrichen", "gestrichene", "gestrichener",
                        "gestrichenen", "of", "the", "each", "je"),
                   key);
}
bool is_heaped(std::string_view key) {
  return is_one_of(list("heaped", "heaping", "heaps", "rounded", "scant", "generous", "big",
                        "gehauft", "gehaufte", "gehaufter", "gehauften", "gehaeuft", "knapp",
                        "knapper", "knappe", "grosser", "grosse", "gut", "guter"),
                   key);
}
bool is_pinch(std::string_view key) {
  return is_one_of(list("pinch", "pinches", "dash", "dashes", "smidgen", "bit", "touch", "blob",
                        "prise", "prisen", "msp", "messerspitze", "messerspitzen", "hauch",
                        "klecks", "spur", "schuss", "spritzer", "squirt", "squirts"),
                   key);
}
bool is_to(std::string_view key) { return is_one_of(list("-", "to", "bis", "or", "oder"), key); }
bool is_and(std::string_view key) {
  return is_one_of(list("and", "und", "plus", "+", "&", ";", ",", "\n"), key);
}
bool is_of(std::string_view key) {
  return is_one_of(list("of", "von", "vom", "x", "×", ":", "-", "=", "*"), key);
}
bool is_none_word(std::string_view key) {
  return is_one_of(list("none", "no", "nil", "nothing", "without", "na", "kein", "keine", "keiner",
                        "keinen", "keins", "nichts", "ohne", "nein"),
                   key);
}

}
