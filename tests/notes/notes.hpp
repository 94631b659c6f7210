// Tables of old notes, read with a shelf of their own. All names and notes are invented.
#pragma once

#include "notes/recipes.hpp"
#include "paint/catalogue.hpp"
#include "words/calendar.hpp"
#include "words/notes_says.hpp"

#include <doctest/doctest.h>

namespace notes_rig {

using namespace notes;
using session::Said;
using session::SaidIn;
using words::NotesSay;

inline session::Card liquid(std::string id, session::CardKind kind, std::string name,
                            paint::Recipe of) {
  return {std::move(id), std::move(name), session::LiquidCard{kind, of}};
}

inline std::vector<session::Card> shelf() {
  using session::CardKind;
  std::vector<session::Card> cards{
      liquid("gum_12", CardKind::binder, "Gum 1 : 2", {.gum = 1, .water = 2}),
      liquid("water", CardKind::water, "Water", {.water = 1}),
      liquid("honey_11", CardKind::honey, "Honey 1:1", {.water = 1, .honey = 1}),
      liquid("glycerin", CardKind::glycerin, "Glycerin", {.glycerin = 1}),
      liquid("gum_arabic", CardKind::other, "Gum arabic, dry", {.gum = 1}),
      {"dropper", "any dropper", session::DropperCard{{0.05, 0.0095}}},
      {"teaspoon", "teaspoon", session::SpoonCard{{5, 0.144}}}};
  for (const auto& entry : paint::catalogue())
    cards.push_back({entry.id, entry.name, session::PigmentCard{entry.ci_name, 0, entry.facts}});
  return cards;
}

struct Notes {
  std::set<std::string> own;
  std::vector<session::Card> cards = shelf();
  Asked asked;
  AskedRecipes how{.today = *words::days_of("2026-11-28")};

  Understood read(std::string_view bytes) const {
    const auto text = text_of(bytes);
    REQUIRE(text);
    const auto table = table_of(*text);
    REQUIRE(table);
    const auto found = understood(*table, cards, own, asked, how);
    REQUIRE(found);
    return *found;
  }
};

inline const session::RecipeCard& recipe(const Brought& brought) {
  return std::get<session::RecipeCard>(brought.card.facts);
}

inline std::vector<Role> roles(const Understood& notes) {
  std::vector<Role> out;
  for (const Column& column : notes.layout.columns) out.push_back(column.role);
  return out;
}

inline bool is(const Unread& unread, const std::string& cell, NotesSay why, bool lost) {
  return cell_name(unread.column, unread.row) == cell && unread.why.what == words::Sentence(why) &&
         unread.lost == lost;
}

}
