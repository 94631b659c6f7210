// Which card of the shelf a word in old notes means. Pure.
#pragma once

#include "session/card.hpp"
#include "words/error.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace notes {

struct Meant {
  std::string card; // empty: of this kind, but of no card in particular ("honey", "binder")
  session::CardKind kind = session::CardKind::pigment;
  bool operator==(const Meant&) const = default;
};

// "binder", "Gummi arabicum", "Honig", "dest. Wasser": a liquid by its kind alone.
std::optional<session::CardKind> liquid_word(std::string_view text);

class Names {
public:
  // The cards outlive this; `own` are those that the workshop laid out itself, `away` those that it
  // put away.
  Names(const std::vector<session::Card>& shelf, const std::set<std::string>& own,
        const std::vector<session::Card>& away);

  // Pigments and liquids: by the name on the card, by its id ("pb29"), its Colour Index name, or
  // another name of the catalogue's, English or German; binder by its gum to water, "gum 1:2"; or
  // by a part of a name that only one has. The workshop's own go before the others. Errors:
  // name_unknown, name_of_many; name_put_away where it is all of a name of a card that was put
  // away, which no other card is taken for.
  words::Result<Meant> meant_by(std::string_view text) const;

private:
  using Cards = std::vector<const session::Card*>;
  words::Result<Meant> look_up(const std::string& text) const;
  Cards with_part(const std::string& part) const;
  Cards of_strength(const paint::Recipe& wanted) const;
  std::optional<words::Result<Meant>> chosen(Cards cards, const std::string& text) const;

  const std::vector<session::Card>& shelf_;
  const std::set<std::string>& own_;
  std::map<std::string, Cards> by_id_, by_name_, by_index_, by_catalogue_, by_other_;
  std::map<std::string, std::string> away_; // its name, by that and by the catalogue's
  mutable std::map<std::string, words::Result<Meant>, std::less<>> asked_;
};

}
