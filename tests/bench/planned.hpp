// What Plan shows, what it has worked out, and recipes for it.
#pragma once

#include "bench/planning.hpp"
#include "hands.hpp"

namespace hands {

inline PlanView plan_shown(Hands& h) { return std::get<PlanView>(view(h.b, h.now()).screen); }

inline Planned planned_now(Hands& h) {
  const auto p = planned(h.b);
  REQUIRE(p);
  REQUIRE(*p);
  return **p;
}

inline session::Card recipe_card(std::string id, std::string name, session::RecipeCard recipe) {
  session::Card card;
  card.id = std::move(id);
  card.name = std::move(name);
  card.facts = std::move(recipe);
  return card;
}

// As if the workshop had written it.
inline void on_shelf(Hands& h, session::Card card) {
  session::Log log;
  log.session = "0ther" + card.id;
  log.lines.push_back({0, 0, h.wall - 1000, "", session::LaidOut{std::move(card)}});
  h.give(Arrived{{log}, {}, {}, {}});
}

}
