// Names of what ships, pigments and all: English in files, in the language that is spoken
// everywhere else, so that a studio reads in any. A name that somebody wrote herself stays hers,
// but where she calls what ships by its name in another of these languages.
#pragma once

#include "words/say.hpp"

#include <string>
#include <string_view>

namespace words {

// Of the card with that id.
std::string card_name_of_file(std::string_view id, std::string_view in_file,
                              Language language = spoken());
// Whichever language it is in: what was read before another was chosen may be in that of before.
std::string card_name_for_file(std::string_view id, std::string_view name);

struct CardName {
  std::string_view id, english, translated;
};
// German, from de.po; null where nothing is known of that card.
const CardName* de_card(std::string_view id);

}
