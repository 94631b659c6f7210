#include "paint/catalogue.hpp"

#include "words/letter_case.hpp"
#include "words/lists.hpp"
#include "words/paint_says.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <utility>

namespace paint {

extern const std::string_view pigments_json; // made from assets/pigments.json by embed.cmake

namespace {

using Json = nlohmann::ordered_json;
using Say = words::PaintSay;

constexpr double oil_between_lots = 0.15; // relative; from memory

struct CautionRow {
  std::string_view word;
  words::Sentence sentence;
};

constexpr words::EnumTable<Caution, CautionRow> caution_rows{{
    {Caution::dust, {"dust", Say::caution_dust}},
    {Caution::cobalt, {"cobalt", Say::caution_cobalt}},
    {Caution::cadmium, {"cadmium", Say::caution_cadmium}},
    {Caution::nickel, {"nickel", Say::caution_nickel}},
    {Caution::chromium, {"chromium", Say::caution_chromium}},
    {Caution::manganese, {"manganese", Say::caution_manganese}},
    {Caution::no_drain, {"no_drain", Say::caution_no_drain}},
    {Caution::silica, {"silica", Say::caution_silica}},
    {Caution::fine_black, {"fine_black", Say::caution_fine_black}},
    {Caution::nano, {"nano", Say::caution_nano}},
    {Caution::combustible, {"combustible", Say::caution_combustible}},
    {Caution::no_acid_sulfide, {"no_acid_sulfide", Say::caution_no_acid_sulfide}},
    {Caution::no_acid_cyanide, {"no_acid_cyanide", Say::caution_no_acid_cyanide}},
    {Caution::borate, {"borate", Say::caution_borate}},
    {Caution::sensitiser, {"sensitiser", Say::caution_sensitiser}},
    {Caution::no_heat, {"no_heat", Say::caution_no_heat}},
    {Caution::titanium, {"titanium", Say::caution_titanium}},
    {Caution::lead, {"lead", Say::caution_lead}},
    {Caution::mercury, {"mercury", Say::caution_mercury}},
    {Caution::arsenic, {"arsenic", Say::caution_arsenic}},
    {Caution::copper, {"copper", Say::caution_copper}},
    {Caution::cancer, {"cancer", Say::caution_cancer}},
    {Caution::not_known, {"not_known", Say::caution_not_known}},
    {Caution::flakes, {"flakes", Say::caution_flakes}},
}};

struct Named {
  std::string_view name;
};

constexpr words::EnumTable<Mulling, Named> mullings{{{Mulling::stir_in, {"none"}},
                                                     {Mulling::light, {"light"}},
                                                     {Mulling::normal, {"normal"}},
                                                     {Mulling::prolonged, {"long"}}}};

// One pigment being read. The first fault stays and the reading goes on with empty values, so that
// a row reads straight down.
struct Row {
  const Json& object;
  std::string name; // "row 3 (pb28)"
  std::optional<words::Error> fault;

  void fail(words::Sentence what, const std::string& field, const words::Args& more = {}) {
    if (fault) return;
    words::Args args{name, field};
    args.insert(args.end(), more.begin(), more.end());
    fault = words::Error{what, std::move(args)};
  }
};

const Json& field(const Row& row, const std::string& key) {
  static const Json nothing;
  if (!row.object.is_object()) return nothing;
  const auto found = row.object.find(key);
  return found == row.object.end() ? nothing : *found;
}

std::string text(Row& row, const std::string& key) {
  const Json& value = field(row, key);
  if (value.is_string() && !value.get_ref<const std::string&>().empty())
    return value.get<std::string>();
  row.fail(Say::catalogue_field, key);
  return {};
}

std::vector<std::string> texts(Row& row, const std::string& key) {
  const Json& list = field(row, key);
  std::vector<std::string> out;
  bool sound = list.is_array() && !list.empty();
  for (const Json& each : list) {
    sound = sound && each.is_string() && each != "";
    if (sound) out.push_back(each.get<std::string>());
  }
  if (!sound) row.fail(Say::catalogue_field, key);
  return out;
}

bool flag(Row& row, const std::string& key) {
  const Json& value = field(row, key);
  if (value.is_boolean()) return value.get<bool>();
  row.fail(Say::catalogue_field, key);
  return false;
}

// N numbers, none smaller than the one before it, all within the bounds.
template <std::size_t N>
std::array<double, N> rising(Row& row, const std::string& key, double low, double high) {
  std::array<double, N> out{};
  const Json& list = field(row, key);
  const bool numbers = list.is_array() && list.size() == N &&
                       std::all_of(list.begin(), list.end(), [](auto& n) { return n.is_number(); });
  if (!numbers) {
    row.fail(Say::catalogue_field, key);
    return out;
  }
  for (std::size_t i = 0; i < N; ++i) out[i] = list[i].template get<double>();
  if (!std::is_sorted(out.begin(), out.end()) || !(out.front() >= low) || !(out.back() <= high))
    row.fail(Say::catalogue_number, key, {words::Number(low, 2), words::Number(high, 0)});
  return out;
}

template <class E>
E word(Row& row, const std::string& key, const words::EnumTable<E, Named>& list) {
  const std::string said = text(row, key);
  if (const auto known = list.find(&Named::name, std::string_view(said))) return *known;
  row.fail(Say::catalogue_unknown_word, key, {said});
  return E{};
}

PigmentClass family(Row& row) {
  const std::string said = text(row, "class");
  const auto known = pigment_class_named(said);
  if (known) return *known;
  row.fail(Say::catalogue_unknown_word, "class", {said});
  return PigmentClass::unknown;
}

unsigned colour(Row& row) {
  const std::string said = text(row, "colour");
  const bool hex = said.size() == 7 && said[0] == '#' &&
                   said.find_first_not_of("0123456789ABCDEFabcdef", 1) == std::string::npos;
  if (hex) return static_cast<unsigned>(std::stoul(said.substr(1), nullptr, 16));
  row.fail(Say::catalogue_unknown_word, "colour", {said});
  return 0;
}

std::vector<Caution> cautions(Row& row) {
  std::vector<Caution> out;
  for (const std::string& said : texts(row, "cautions")) {
    if (const auto known = caution_named(said))
      out.push_back(*known);
    else
      row.fail(Say::catalogue_unknown_word, "cautions", {said});
  }
  return out;
}

// What a figure rests on; of a guess, what was read beside it.
struct From {
  std::string source, beside;
};

From source_of(Row& row, const std::string& key) {
  const std::string said = text(row, key), guess = "a guess", and_read = "a guess; ";
  if (said == guess) return {};
  if (said.rfind(and_read, 0) == 0) return {"", said.substr(and_read.size())};
  return {said, ""};
}

Pigment facts(Row& row) {
  const auto density = rising<3>(row, "density_g_per_mL", 0.5, 20);
  const auto oil = rising<3>(row, "oil_g_per_100g", 1, 1000);
  Pigment p;
  p.g_per_mL = density[1];
  p.g_per_mL_u = (density[2] - density[0]) / 4;
  p.oil_g_per_100g = oil[1];
  p.oil_u = std::max((oil[2] - oil[0]) / 4, oil_between_lots * oil[1]);
  p.family = family(row);
  return p;
}

CataloguePigment read_row(Row& row) {
  CataloguePigment p;
  p.id = text(row, "id");
  p.ci_name = text(row, "ci_name");
  p.name = text(row, "name");
  p.chemistry = text(row, "chemistry");
  p.facts = facts(row);
  const auto bulk = rising<2>(row, "bulk_g_per_mL", 0.01, 5);
  p.bulk_loose = bulk[0];
  p.bulk_tapped = bulk[1];
  p.mulling = word(row, "mulling", mullings);
  p.hydrophobic = flag(row, "hydrophobic");
  p.lightfastness = text(row, "lightfastness");
  p.colour = colour(row);
  p.cautions = cautions(row);
  p.density_from = source_of(row, "density_from").source;
  const From oil = source_of(row, "oil_from");
  p.oil_from = oil.source;
  p.oil_beside = oil.beside;
  p.confidence = static_cast<Confidence>(!p.density_from.empty() + !p.oil_from.empty());
  p.sources = texts(row, "sources");
  if (row.object.is_object() && row.object.contains("other_names"))
    p.other_names = texts(row, "other_names");
  return p;
}

// As words are searched for, and without blanks, dots and dashes.
std::string squeezed(const std::string& text) {
  std::string out = words::searchable(text);
  std::erase_if(out, [](char c) { return c == ' ' || c == '.' || c == '-' || c == '_'; });
  return out;
}

// "PB29" as it is written out: "Pigment Blue 29".
std::string written_out(const std::string& ci_name) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 9> hues{{{"PBk", "black"},
                                                                               {"PBr", "brown"},
                                                                               {"PB", "blue"},
                                                                               {"PG", "green"},
                                                                               {"PO", "orange"},
                                                                               {"PR", "red"},
                                                                               {"PV", "violet"},
                                                                               {"PW", "white"},
                                                                               {"PY", "yellow"}}};
  for (const auto& [letters, hue] : hues)
    if (ci_name.compare(0, letters.size(), letters) == 0)
      return "pigment" + std::string(hue) + ci_name.substr(letters.size());
  return {};
}

std::string name_of_row(std::size_t index, const Json& object) {
  const std::string row = "row " + std::to_string(index + 1);
  if (!object.is_object() || !object.contains("id") || !object["id"].is_string()) return row;
  return row + " (" + object["id"].get<std::string>() + ")";
}

}

words::Sentence sentence(Caution caution) { return caution_rows[caution].sentence; }

std::string_view name_of(Caution caution) { return caution_rows[caution].word; }

std::optional<Caution> caution_named(std::string_view name) {
  return caution_rows.find(&CautionRow::word, name);
}

const std::vector<Caution>& cautions_to_choose() {
  using enum Caution;
  static const std::vector<Caution> all{dust,        cancer,          sensitiser,      lead,
                                        mercury,     arsenic,         cadmium,         cobalt,
                                        nickel,      chromium,        copper,          manganese,
                                        titanium,    silica,          fine_black,      nano,
                                        combustible, no_acid_sulfide, no_acid_cyanide, borate,
                                        no_heat,     no_drain,        flakes};
  return all;
}

const std::vector<words::Sentence>& general_care() {
  static const std::vector<words::Sentence> all{
      Say::care_mask,   Say::care_sheet_first, Say::care_no_draught, Say::care_no_food_tools,
      Say::care_gloves, Say::care_wipe_wet,    Say::care_children};
  return all;
}

words::Result<std::vector<CataloguePigment>> read_catalogue(std::string_view json) {
  const Json whole = Json::parse(json.begin(), json.end(), nullptr, false);
  if (whole.is_discarded()) return words::failure(Say::catalogue_not_json);
  if (!whole.is_object() || !whole.contains("pigments") || !whole["pigments"].is_array())
    return words::failure(Say::catalogue_no_pigments);

  std::vector<CataloguePigment> out;
  std::set<std::string> seen;
  for (const Json& object : whole["pigments"]) {
    Row row{object, name_of_row(out.size(), object), std::nullopt};
    CataloguePigment pigment = read_row(row);
    if (!seen.insert(pigment.id).second) row.fail(Say::catalogue_twice, pigment.id);
    if (row.fault) return tl::make_unexpected(*row.fault);
    out.push_back(std::move(pigment));
  }
  return out;
}

const std::vector<CataloguePigment>& catalogue() {
  static const std::vector<CataloguePigment> shipped = read_catalogue(pigments_json).value();
  return shipped;
}

const CataloguePigment* in_catalogue(const std::string& id) {
  for (const CataloguePigment& entry : catalogue())
    if (entry.id == id) return &entry;
  return nullptr;
}

bool goes_by(const std::string& id, const std::string& name, const std::string& ci_name,
             const std::string& wanted) {
  const std::string part = squeezed(wanted);
  const auto means = [&](const std::string& text) {
    return squeezed(text).find(part) != std::string::npos;
  };
  if (means(name) || means(ci_name) || means(written_out(ci_name))) return true;
  const CataloguePigment* entry = in_catalogue(id);
  if (!entry) return false;
  return means(entry->name) || // English, whatever is spoken
         std::any_of(entry->other_names.begin(), entry->other_names.end(), means);
}

std::vector<Caution> cautions_of(const std::string& id, const std::vector<std::string>& chosen) {
  std::vector<Caution> out;
  if (const CataloguePigment* entry = in_catalogue(id)) out = entry->cautions;
  for (const std::string& word : chosen) {
    const Caution caution = caution_named(word).value_or(Caution::not_known);
    if (std::find(out.begin(), out.end(), caution) == out.end()) out.push_back(caution);
  }
  if (out.empty()) out.push_back(Caution::not_known);
  return out;
}

std::vector<words::Sentence> cautions_for(const std::vector<std::vector<Caution>>& pigments) {
  std::vector<words::Sentence> out{Say::care_mask, Say::care_sheet_first};
  const auto add = [&](words::Sentence sentence) {
    if (std::find(out.begin(), out.end(), sentence) == out.end()) out.push_back(sentence);
  };
  for (const std::vector<Caution>& cautions : pigments)
    for (const Caution c : cautions)
      if (c != Caution::dust) add(sentence(c));
  for (const words::Sentence care : general_care())
    if (care != Say::care_gloves || pigments.empty()) add(care);
  return out;
}

}
