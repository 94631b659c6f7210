// The cards and measures that old notes mean without naming them: which spoon, which dropper, which
// binder. Pure.
#pragma once

#include "notes/amount.hpp"
#include "notes/names.hpp"

#include <map>

namespace notes {

enum class SpoonsOf { metric, us, uk, australia };

// What else somebody says of the notes.
struct AskedRecipes {
  std::string binder = {};   // card meant by "binder"; empty: the first own one, else the usual
  bool new_pigments = false; // a pigment of a name that is not on the shelf gets a card
  bool mine = false;         // the recipes are their maker's own
  SpoonsOf spoons = SpoonsOf::metric;
  std::size_t most_pigments = 4;        // of one recipe
  std::int64_t today = 0;               // days since 1970
  std::vector<session::Card> away = {}; // put away: known, and not to be laid out again
};

class Measures {
public:
  Measures(const std::vector<session::Card>& shelf, const std::set<std::string>& own,
           const AskedRecipes& how);

  void know(const std::vector<session::Card>& cards); // not to be laid out anew

  std::vector<Tool> tools() const; // spoons of the shelf, by their names

  // The card of a liquid that goes by its kind alone, pure honey by "honey"; empty: none.
  std::string card_for(session::CardKind kind);
  // A card for a pigment of this name, with the figures of one that nobody knows.
  std::string new_pigment(const std::string& name);

  // So much of a card, as a recipe says it; of a unit, and not of none. mL are so many of a spoon.
  // Errors: amount_too_large, amount_no_dropper, amount_powder_in_drops.
  words::Result<session::Said> said(const Meant& of, const NotedAmount& amount);

  const std::vector<session::Card>& new_cards() const { return new_cards_; }
  std::string name_of(const std::string& card) const;
  bool is_known(const std::string& card) const { return known_.count(card) > 0; }

private:
  const session::Card* first_of(session::CardKind kind) const;
  std::string spoon(bool large);
  double mL_of(const std::string& spoon) const;
  // Its id; a card that is known already is never laid out anew, whatever it has become since.
  std::string laid_out(session::Card card);

  const std::vector<session::Card>& shelf_;
  const std::set<std::string>& own_;
  const AskedRecipes& how_;
  std::vector<session::Card> new_cards_;
  std::map<std::string, std::string> known_; // names by id: shelf, put away, new
};

}
