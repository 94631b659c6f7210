// Old notes: whatever the bytes are, what is understood of them can be kept and read again, and
// what is not has its cell and its words.
#include "fuzz/must.hpp"
#include "notes/recipes.hpp"
#include "paint/catalogue.hpp"
#include "session/bytes.hpp"

#include <cstdint>

using fuzz::must;

namespace {

std::vector<session::Card> shelf() {
  using session::CardKind;
  std::vector<session::Card> cards{
      {"gum_12", "Gum 1 : 2", session::LiquidCard{CardKind::binder, {.gum = 1, .water = 2}}},
      {"water", "Water", session::LiquidCard{CardKind::water, {.water = 1}}},
      {"dropper", "any dropper", session::DropperCard{{0.05, 0.0095}}},
      {"scoop", "brass scoop", session::SpoonCard{{2, 0.1}}}};
  constexpr std::size_t every = 8; // each cell is held against each name: so a run takes a few ms
  for (std::size_t i = 0; i < paint::catalogue().size(); i += every) {
    const auto& entry = paint::catalogue()[i];
    cards.push_back({entry.id, entry.name, session::PigmentCard{entry.ci_name, 0, entry.facts}});
  }
  return cards;
}

void look_at(const notes::Understood& found, const notes::Table& table) {
  const std::size_t last = table.rows.empty() ? 0 : table.rows.back().number;
  for (const notes::Unread& one : found.unread) {
    must(one.row >= 1 && one.row <= last && one.column < table.columns, "a cell has its place");
    must(!words::message(one.why).empty(), "and a reason");
  }
  for (const notes::Brought& one : found.recipes) {
    must(one.card.id.size() == 12, "a recipe has its id");
    if (!one.whole) continue;
    must(!std::get<session::RecipeCard>(one.card.facts).pigments.empty(), "it has pigments");
    const session::Line line{0, 0, 1795617120000, "", session::LaidOut{one.card}};
    must(session::encode(line, 0).has_value(), "it can be kept");
  }
}

}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const std::vector<session::Card> cards = shelf();
  const auto text = notes::text_of({reinterpret_cast<const char*>(data), size});
  if (!text) {
    must(!words::message(text.error()).empty(), "a fault has words");
    return 0;
  }
  const auto table = notes::table_of(*text);
  if (!table) {
    must(!words::message(table.error()).empty(), "a fault has words");
    return 0;
  }
  notes::AskedRecipes how{.today = 20000};
  for (const bool anew : {false, true}) {
    how.new_pigments = anew;
    const auto found = notes::understood(*table, cards, {"scoop"}, {}, how);
    must(found.has_value(), "nothing was asked for that is not there");
    look_at(*found, *table);
  }
  return 0;
}
