#include "words/card_names.hpp"

namespace words {

namespace {

// What ships by that id; null: it has no more than its English name.
const CardName* known(std::string_view id, Language language) {
  switch (language) {
  case Language::english:
  case Language::pseudo: break;
  case Language::german: return de_card(id);
  }
  return nullptr;
}

}

std::string card_name_of_file(std::string_view id, std::string_view in_file, Language language) {
  const CardName* card = known(id, language);
  return std::string(card && card->english == in_file ? card->translated : in_file);
}

std::string card_name_for_file(std::string_view id, std::string_view name) {
  for (const Language language : offered_languages) {
    const CardName* card = known(id, language);
    if (card && card->translated == name) return std::string(card->english);
  }
  return std::string(name);
}

}
