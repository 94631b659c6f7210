#include "notes/heading_words.hpp"

#include "notes/tokens.hpp"

#include <algorithm>
#include <array>

namespace notes {

namespace {

struct Word {
  std::string_view key;
  Role role;
};

// Of several in one heading the one that stands first here counts: "pigment amount" is of amounts,
// "honey binder" of honey.
constexpr std::array words_of_headings{
    Word{"date", Role::date},          Word{"datum", Role::date},
    Word{"when", Role::date},          Word{"wann", Role::date},
    Word{"made", Role::date},          Word{"gemacht", Role::date},
    Word{"hergestellt", Role::date},   Word{"note", Role::note},
    Word{"notes", Role::note},         Word{"notiz", Role::note},
    Word{"notizen", Role::note},       Word{"remark", Role::note},
    Word{"remarks", Role::note},       Word{"comment", Role::note},
    Word{"comments", Role::note},      Word{"bemerkung", Role::note},
    Word{"bemerkungen", Role::note},   Word{"anmerkung", Role::note},
    Word{"anmerkungen", Role::note},   Word{"kommentar", Role::note},
    Word{"result", Role::note},        Word{"ergebnis", Role::note},
    Word{"verdict", Role::note},       Word{"honey", Role::honey},
    Word{"honig", Role::honey},        Word{"glycerin", Role::glycerin},
    Word{"glycerine", Role::glycerin}, Word{"glycerol", Role::glycerin},
    Word{"glyzerin", Role::glycerin},  Word{"gall", Role::wetting_aid},
    Word{"oxgall", Role::wetting_aid}, Word{"ochsengalle", Role::wetting_aid},
    Word{"galle", Role::wetting_aid},  Word{"binder", Role::binder},
    Word{"binding", Role::binder},     Word{"medium", Role::binder},
    Word{"bindemittel", Role::binder}, Word{"gum", Role::binder},
    Word{"gummi", Role::binder},       Word{"arabicum", Role::binder},
    Word{"arabic", Role::binder},      Word{"water", Role::water},
    Word{"wasser", Role::water},       Word{"amount", Role::amount},
    Word{"amounts", Role::amount},     Word{"quantity", Role::amount},
    Word{"qty", Role::amount},         Word{"menge", Role::amount},
    Word{"mengen", Role::amount},      Word{"weight", Role::amount},
    Word{"gewicht", Role::amount},     Word{"much", Role::amount},
    Word{"wieviel", Role::amount},     Word{"pigment", Role::pigment},
    Word{"pigments", Role::pigment},   Word{"pigmente", Role::pigment},
    Word{"powder", Role::pigment},     Word{"pulver", Role::pigment},
    Word{"ingredient", Role::pigment}, Word{"ingredients", Role::pigment},
    Word{"zutat", Role::pigment},      Word{"zutaten", Role::pigment},
    Word{"material", Role::pigment},   Word{"index", Role::pigment},
    Word{"name", Role::name},          Word{"paint", Role::name},
    Word{"colour", Role::name},        Word{"color", Role::name},
    Word{"recipe", Role::name},        Word{"title", Role::name},
    Word{"farbe", Role::name},         Word{"farbton", Role::name},
    Word{"bezeichnung", Role::name},   Word{"rezept", Role::name},
    Word{"titel", Role::name},         Word{"ansatz", Role::name},
    Word{"batch", Role::name}};

// "Pigment2" is one of several.
std::string_view without_number(std::string_view key) {
  return key.substr(0, key.find_last_not_of("0123456789") + 1);
}

}

std::optional<Role> role_in(std::string_view heading) {
  const std::vector<Token> tokens = tokens_of(heading);
  for (const Word& word : words_of_headings)
    if (std::any_of(tokens.begin(), tokens.end(),
                    [&](const Token& token) { return without_number(token.key) == word.key; }))
      return word.role;
  if (unit_in(heading) != Unit::none) return Role::amount;
  return std::nullopt;
}

}
