#include "session/card_json.hpp"

#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "words/session_says.hpp"

#include <cmath>

namespace session {

namespace {

constexpr double most_mass = 1e6;
constexpr double most_cm2 = 100000;

std::string colour_text(std::uint32_t colour) { return "#" + to_hex(colour).substr(2); }

std::uint32_t read_colour(Fields& f) {
  const std::string text = f.text("colour");
  const auto colour = from_hex("00" + text.substr(text.empty() ? 0 : 1));
  if (colour && text[0] == '#') return *colour;
  f.reject(words::SessionSay::field_not_a_colour);
  return 0;
}

struct Share {
  const char* name;
  double value;
};

void write_shares(Json& j, const char* name, std::initializer_list<Share> shares) {
  Json object = Json::object();
  for (const Share& share : shares)
    if (share.value != 0) object[share.name] = number(share.value);
  j[name] = std::move(object);
}

void write_pigment(const Card& card, Json& j) {
  if (!card.index_name.empty()) j["index_name"] = card.index_name;
  j["colour"] = colour_text(card.colour);
  j["family"] = paint::name_of(card.pigment.family);
  j["g_per_mL"] = number(card.pigment.g_per_mL);
  j["g_per_mL_u"] = number(card.pigment.g_per_mL_u);
  j["oil_g_per_100g"] = number(card.pigment.oil_g_per_100g);
  j["oil_u"] = number(card.pigment.oil_u);
  if (card.pigment.heap_g_per_mL <= 0) return;
  j["heap_g_per_mL"] = number(card.pigment.heap_g_per_mL);
  j["heap_u"] = number(card.pigment.heap_g_per_mL_u);
}

void read_pigment(Fields& f, Card& card) {
  card.index_name = f.text_or("index_name", "");
  card.colour = read_colour(f);
  const auto family = paint::pigment_class_named(f.text("family"));
  card.pigment.family = family.value_or(paint::PigmentClass::unknown);
  card.pigment.g_per_mL = f.number("g_per_mL", 0.1, 25);
  card.pigment.g_per_mL_u = f.number_or("g_per_mL_u", 0, 25, 0);
  card.pigment.oil_g_per_100g = f.number_or("oil_g_per_100g", 0, 2000, 0);
  card.pigment.oil_u = f.number_or("oil_u", 0, 2000, 0);
  card.pigment.heap_g_per_mL = f.number_or("heap_g_per_mL", 0.01, 5, 0);
  card.pigment.heap_g_per_mL_u = f.number_or("heap_u", 0, 5, 0);
}

void write_recipe(const paint::Recipe& r, Json& j) {
  write_shares(j, "parts",
               {{"gum", r.gum},
                {"water", r.water},
                {"honey", r.honey},
                {"glycerin", r.glycerin},
                {"alcohol", r.alcohol},
                {"other", r.other}});
}

void read_recipe(Fields& f, paint::Recipe& r) {
  const Json parts = f.object("parts");
  Fields p(parts);
  const auto mass = [&](const char* name) { return p.number_or(name, 0, most_mass, 0); };
  r = {mass("gum"), mass("water"), mass("honey"), mass("glycerin"), mass("alcohol"), mass("other")};
  f.take_fault_of(p);
}

void write_made_of(const paint::Parts& m, Json& j) {
  write_shares(j, "made_of",
               {{"pigment", m.pigment},
                {"gum", m.gum},
                {"water", m.water},
                {"glycerin", m.glycerin},
                {"honey", m.honey},
                {"alcohol", m.alcohol},
                {"other", m.other}});
}

void read_made_of(Fields& f, paint::Parts& m) {
  const Json parts = f.object("made_of");
  Fields p(parts);
  const auto mass = [&](const char* name) { return p.number_or(name, 0, most_mass, 0); };
  m = {mass("pigment"), mass("gum"),     mass("water"), mass("glycerin"),
       mass("honey"),   mass("alcohol"), mass("other")};
  f.take_fault_of(p);
}

void write_tool(const Card& card, Json& j) {
  const bool dropper = card.is_a == CardKind::dropper;
  j[dropper ? "mL_per_drop" : "mL"] = number(card.tool.mL);
  j["u"] = number(card.tool.mL_u);
  if (dropper) j["calibrated_with"] = name_of(card.tool.calibrated_with);
}

void read_tool(Fields& f, Card& card) {
  const bool dropper = card.is_a == CardKind::dropper;
  card.tool.mL = dropper ? f.number("mL_per_drop", 1e-4, 1) : f.number("mL", 0.01, 1000);
  card.tool.mL_u = f.number_or("u", 0, 1000, 0);
  if (dropper && f.has("calibrated_with"))
    card.tool.calibrated_with = f.word("calibrated_with", card_kind_named);
}

void write_keeping(const Card& card, Json& j) {
  const auto text = [&](const char* name, const std::string& value) {
    if (!value.empty()) j[name] = value;
  };
  text("lot", card.lot);
  text("made_on", card.made_on);
  text("keep_until", card.keep_until);
  if (card.made_g > 0) j["made_g"] = number(card.made_g);
}

void read_keeping(Fields& f, Card& card) {
  card.lot = f.text_or("lot", "");
  card.made_on = f.text_or("made_on", "");
  card.keep_until = f.text_or("keep_until", "");
  card.made_g = f.number_or("made_g", 0, most_mass, 0);
}

}

Json number(double value) {
  if (!(std::abs(value) < 1e15)) return value;
  const auto whole = static_cast<std::int64_t>(value);
  return static_cast<double>(whole) == value ? Json(whole) : Json(value);
}

void write_card(const Card& card, Json& j) {
  j["card"] = card.id;
  j["is_a"] = name_of(card.is_a);
  j["name"] = card.name;
  if (card.is_a == CardKind::pigment) {
    write_pigment(card, j);
  } else if (card.is_a == CardKind::paint) {
    write_pigment(card, j);
    write_made_of(card.made_of, j);
  } else if (is_liquid(card.is_a)) {
    write_recipe(card.recipe, j);
  } else if (card.is_a == CardKind::slab || card.is_a == CardKind::muller) {
    j["cm2"] = number(card.cm2);
  } else {
    write_tool(card, j);
  }
  write_keeping(card, j);
}

Card read_card(Fields& f) {
  Card card;
  card.id = f.text("card");
  card.is_a = f.word("is_a", card_kind_named);
  card.name = f.text("name");
  if (f.fault() || f.unknown_word()) return card;
  if (card.is_a == CardKind::pigment) {
    read_pigment(f, card);
  } else if (card.is_a == CardKind::paint) {
    read_pigment(f, card);
    read_made_of(f, card.made_of);
  } else if (is_liquid(card.is_a)) {
    read_recipe(f, card.recipe);
  } else if (card.is_a == CardKind::slab || card.is_a == CardKind::muller) {
    card.cm2 = f.number("cm2", 0, most_cm2);
  } else {
    read_tool(f, card);
  }
  read_keeping(f, card);
  return card;
}

}
