#include "session/card_json.hpp"

#include "session/bytes.hpp"
#include "session/check_value.hpp"
#include "words/card_names.hpp"
#include "words/lists.hpp"
#include "words/session_says.hpp"

#include <cmath>

namespace session {

namespace {

constexpr double most_mass = 1e6;
constexpr double most_cm2 = 100000;

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

void write(const PigmentCard& card, Json& j) {
  if (!card.index_name.empty()) j["index_name"] = card.index_name;
  j["colour"] = colour_text(card.colour);
  j["family"] = paint::name_of(card.pigment.family);
  j["g_per_mL"] = number(card.pigment.g_per_mL);
  j["g_per_mL_u"] = number(card.pigment.g_per_mL_u);
  j["oil_g_per_100g"] = number(card.pigment.oil_g_per_100g);
  j["oil_u"] = number(card.pigment.oil_u);
  if (!card.cautions.empty()) j["cautions"] = card.cautions;
  if (card.pigment.heap_g_per_mL <= 0) return;
  j["heap_g_per_mL"] = number(card.pigment.heap_g_per_mL);
  j["heap_u"] = number(card.pigment.heap_g_per_mL_u);
}

void read(Fields& f, PigmentCard& card) {
  card.index_name = f.text_or("index_name", "");
  card.colour = read_colour(f);
  const auto family = paint::pigment_class_named(f.text("family"));
  card.pigment.family = family.value_or(paint::PigmentClass::unknown);
  card.pigment.g_per_mL = f.number("g_per_mL", 0.1, 25);
  card.pigment.g_per_mL_u = f.number_or("g_per_mL_u", 0, 25, 0);
  card.pigment.oil_g_per_100g = f.number_or("oil_g_per_100g", 0, 2000, 0);
  card.pigment.oil_u = f.number_or("oil_u", 0, 2000, 0);
  card.cautions = f.texts_or_none("cautions");
  card.pigment.heap_g_per_mL = f.number_or("heap_g_per_mL", 0.01, 5, 0);
  card.pigment.heap_g_per_mL_u = f.number_or("heap_u", 0, 5, 0);
}

void write(const LiquidCard& card, Json& j) { write_parts(card.recipe, j); }
void read(Fields& f, LiquidCard& card) { card.recipe = read_parts(f); }

void write(const PaintCard& card, Json& j) {
  write(card.as_one, j);
  const paint::Parts& m = card.made_of;
  write_shares(j, "made_of",
               {{"pigment", m.pigment},
                {"gum", m.gum},
                {"water", m.water},
                {"glycerin", m.glycerin},
                {"honey", m.honey},
                {"alcohol", m.alcohol},
                {"other", m.other}});
}

void read(Fields& f, PaintCard& card) {
  read(f, card.as_one);
  Fields p(f.object("made_of"));
  const auto mass = [&](const char* name) { return p.number_or(name, 0, most_mass, 0); };
  card.made_of = {mass("pigment"), mass("gum"),     mass("water"), mass("glycerin"),
                  mass("honey"),   mass("alcohol"), mass("other")};
  f.take_fault_of(p);
}

void write(const Volume& volume, const char* name, Json& j) {
  j[name] = number(volume.mL);
  j["u"] = number(volume.mL_u);
}

Volume read_volume(Fields& f, const char* name, double least, double most) {
  Volume volume;
  volume.mL = f.number(name, least, most);
  volume.mL_u = f.number_or("u", 0, 1000, 0);
  return volume;
}

void write(const DropperCard& card, Json& j) {
  write(card.drop, "mL_per_drop", j);
  j["calibrated_with"] = name_of(card.calibrated_with);
}

void read(Fields& f, DropperCard& card) {
  card.drop = read_volume(f, "mL_per_drop", 1e-4, 1);
  if (f.has("calibrated_with")) card.calibrated_with = f.word("calibrated_with", card_kind_named);
}

void write(const SpoonCard& card, Json& j) { write(card.level, "mL", j); }
void read(Fields& f, SpoonCard& card) { card.level = read_volume(f, "mL", 0.01, 1000); }
void write(const PanCard& card, Json& j) {
  write(card.full, "mL", j);
  if (card.depth_mm > 0) j["depth_mm"] = number(card.depth_mm);
}
void read(Fields& f, PanCard& card) {
  card.full = read_volume(f, "mL", 0.01, 1000);
  card.depth_mm = f.number_or("depth_mm", 1, 200, 0);
}
void write(const SlabCard& card, Json& j) { j["cm2"] = number(card.cm2); }
void read(Fields& f, SlabCard& card) { card.cm2 = f.number("cm2", 0, most_cm2); }
void write(const MullerCard& card, Json& j) { j["cm2"] = number(card.cm2); }
void read(Fields& f, MullerCard& card) { card.cm2 = f.number("cm2", 0, most_cm2); }

constexpr words::EnumTable<SaidIn, double> most_said{
    {{SaidIn::parts, 1000}, {SaidIn::g, 5000}, {SaidIn::drops, 10000}, {SaidIn::spoons, 1000}}};

void write(const std::vector<Said>& said, const char* name, Json& j) {
  Json list = Json::array();
  for (const Said& one : said) {
    Json object{{"of", one.of}};
    object[std::string(name_of(one.in))] = number(one.amount);
    if (!one.with.empty()) object["with"] = one.with;
    list.push_back(std::move(object));
  }
  j[name] = std::move(list);
}

std::vector<Said> read_said(Fields& f, const char* name) {
  std::vector<Said> out;
  for (const Value* object : f.objects_or_none(name)) {
    Fields one(*object);
    Said said{one.text("of")};
    for (const SaidIn in : words::all_of<SaidIn>)
      if (one.has(std::string(name_of(in)).c_str())) said.in = in;
    said.amount = one.number(std::string(name_of(said.in)).c_str(), 0, most_said[said.in]);
    if (said.in == SaidIn::drops || said.in == SaidIn::spoons) said.with = one.text("with");
    f.take_fault_of(one);
    out.push_back(std::move(said));
  }
  return out;
}

void write(const RecipeCard& card, Json& j) {
  write(card.pigments, "pigments", j);
  write(card.liquids, "liquids", j);
  if (card.per_g > 0) j["per_g"] = number(card.per_g);
  if (card.per_spoons > 0) {
    j["per_spoons"] = number(card.per_spoons);
    j["per_with"] = card.per_with;
  }
  j["from"] = name_of(card.from);
  if (!card.batch.empty()) j["from_batch"] = card.batch;
  if (card.mine) j["mine"] = true;
  if (!card.note.empty()) j["note"] = card.note;
}

void read(Fields& f, RecipeCard& card) {
  card.pigments = read_said(f, "pigments");
  card.liquids = read_said(f, "liquids");
  card.per_g = f.number_or("per_g", 0, 5000, 0);
  card.per_spoons = f.number_or("per_spoons", 0, 1000, 0);
  if (card.per_spoons > 0) card.per_with = f.text("per_with");
  card.from = f.word("from", recipe_from_named);
  card.batch = f.text_or("from_batch", "");
  card.mine = f.yes("mine");
  card.note = f.text_or("note", "");
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

std::string colour_text(std::uint32_t colour) { return "#" + to_hex(colour).substr(2); }

std::uint32_t read_colour(Fields& f) {
  const std::string text = f.text("colour");
  const auto colour = from_hex("00" + text.substr(text.empty() ? 0 : 1));
  if (colour && text[0] == '#') return *colour;
  f.reject(words::SessionSay::field_not_a_colour);
  return 0;
}

void write_parts(const paint::Recipe& r, Json& j) {
  write_shares(j, "parts",
               {{"gum", r.gum},
                {"water", r.water},
                {"honey", r.honey},
                {"glycerin", r.glycerin},
                {"alcohol", r.alcohol},
                {"other", r.other}});
}

paint::Recipe read_parts(Fields& f) {
  Fields p(f.object("parts"));
  const auto mass = [&](const char* name) { return p.number_or(name, 0, most_mass, 0); };
  const paint::Recipe parts{mass("gum"),      mass("water"),   mass("honey"),
                            mass("glycerin"), mass("alcohol"), mass("other")};
  f.take_fault_of(p);
  return parts;
}

void write_card(const Card& card, Json& j) {
  j["card"] = card.id;
  j["is_a"] = name_of(card.kind());
  j["name"] = words::card_name_for_file(card.id, card.name);
  std::visit([&](const auto& facts) { write(facts, j); }, card.facts);
  write_keeping(card, j);
}

Card read_card(Fields& f) {
  Card card;
  card.id = f.text("card");
  const CardKind kind = f.word("is_a", card_kind_named);
  card.name = words::card_name_of_file(card.id, words::card_name_for_file(card.id, f.text("name")));
  if (f.fault() || f.unknown_word()) return card;
  card.facts = blank_facts(kind);
  std::visit([&](auto& facts) { read(f, facts); }, card.facts);
  read_keeping(f, card);
  return card;
}

}
