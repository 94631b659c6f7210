// What is chosen on Plan, until it begins.
#pragma once

#include "bench/scroll.hpp"
#include "session/card.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace bench {

// An amount of a pigment as it was said.
struct BlendPart {
  std::string card;
  double parts = 1; // or grams, or spoons
  session::SaidIn in = session::SaidIn::parts;
  std::string with = {}; // that spoon
  bool operator==(const BlendPart&) const = default;
};
inline constexpr std::size_t most_pigments = 4;

// What an earlier batch came to, in its own blend and binder.
struct AsMade {
  std::vector<BlendPart> blend;
  std::string binder;
  double binder_g = 0;  // to 1 g of pigment
  double liquid_mL = 0; // likewise, of all that was there when it was right, else in the end
  double first = 0;     // flow of its first helping; 0: none
  std::vector<std::pair<std::string, double>> extras; // cards beside pigment and binder; g likewise
  bool by_recipe = false;                             // no batch: a recipe says so
};

// The last two ask for no number: as the recipe stands, and as far as a pigment lasts.
enum class Want { pigment_g, pans, wet_mL, dried_g, as_it_stands, all_left };

// What Plan looks for, in place of what was chosen.
enum class Finding { nothing, pigment, recipe };

struct PlanState {
  std::vector<BlendPart> blend;                     // empty: nothing chosen
  bool by_volume = false;                           // its parts; else by weight
  session::SaidIn said_in = session::SaidIn::parts; // how amounts are said: spoons, g or parts
  Finding finding = Finding::nothing;               // see finds
  bool all_cards = false;                           // of the catalogue too, not mine alone
  int binder_page = 0;
  std::string recipe; // card that it was filled from; empty: none. See recipe_followed
  std::string binder;
  bool binder_chosen = false; // by hand; else the one used last is offered
  std::string name;
  bool name_typed = false; // else the name follows the pigment
  std::string search;
  Scroll list; // of the finder
  Want want = Want::pigment_g;
  double wanted = 0;    // of that; 0: not said
  std::string pan;      // card
  std::string again_of; // batch; empty: none. See made_again
  std::string again_name;
  std::vector<std::string> again_cards; // its pigments, sorted
  std::string go_on;                    // batch that was left open; empty: none
  std::optional<AsMade> as_made;        // of that batch
  bool reading = false;                 // the cautions lie open
  bool cautions_seen = false;
  double celsius = 21;
  double humidity = 0.5;
  bool room_guessed = true;
  std::int64_t room_read_at = 0; // ms since 1970, unless it is guessed
};

}
