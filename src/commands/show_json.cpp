#include "commands/show.hpp"
#include "session/check_value.hpp"
#include "session/in_words.hpp"
#include "session/lists.hpp"
#include "session/plan.hpp"
#include "words/card_names.hpp"

#include <nlohmann/json.hpp>

namespace commands {

namespace {

using Json = nlohmann::ordered_json;
using namespace session;

Json json(const paint::Amount& a) { return {{"value", a.value}, {"u", paint::uncertainty(a)}}; }
Json json(double value) { return value; }
Json json(const Ref& ref) { return {ref.session, ref.n}; }

template <class T>
Json json(const std::optional<T>& value) {
  return value ? json(*value) : Json();
}

std::string_view name_of(WarningKind kind) {
  switch (kind) {
  case WarningKind::unknown_event: return "unknown_event";
  case WarningKind::unknown_card: return "unknown_card";
  case WarningKind::unknown_plan: return "unknown_plan";
  case WarningKind::withdrawn_missing: return "withdrawn_missing";
  case WarningKind::clock_ahead: return "clock_ahead";
  case WarningKind::corrected_missing: return "corrected_missing";
  case WarningKind::corrected_kind: return "corrected_kind";
  case WarningKind::corrected_remark: return "corrected_remark";
  case WarningKind::corrected_to_no_name: return "corrected_to_no_name";
  case WarningKind::nameless: return "nameless";
  case WarningKind::amount_unreadable: return "amount_unreadable";
  case WarningKind::bottle_heavier: return "bottle_heavier";
  case WarningKind::bottle_uncounted: return "bottle_uncounted";
  case WarningKind::not_moved: return "not_moved";
  case WarningKind::not_poured: return "not_poured";
  case WarningKind::not_weighed: return "not_weighed";
  case WarningKind::unknown_recipe: return "unknown_recipe";
  }
  return "";
}

Json swatch(const Measured& m) {
  return {{"colour", "#" + to_hex(m.shown).substr(2)},
          {"l", {{"value", m.l}, {"u", m.l_u}}},
          {"a", {{"value", m.a}, {"u", m.a_u}}},
          {"b", {{"value", m.b}, {"u", m.b_u}}}};
}

Json standing(const paint::Standing& s) {
  return {{"binder_ratio", json(s.binder_ratio)},
          {"flow_put_in", json(s.flow_put_in)},
          {"flow_now", json(s.flow_now)},
          {"over_oil_point", json(s.over_oil_point)},
          {"gum_strength", json(s.gum_strength)},
          {"gum_per_pigment", json(s.gum_per_pigment)},
          {"humectant_to_gum", json(s.humectant_to_gum)},
          {"pigment_fraction", json(s.pigment_fraction)},
          {"pigment_g", json(s.pigment_g)},
          {"pigment_mL", json(s.pigment_mL)},
          {"binder_g", json(s.binder_g)},
          {"liquid_g", json(s.liquid_g)},
          {"liquid_mL", json(s.liquid_mL)},
          {"liquid_mL_now", json(s.liquid_mL_now)},
          {"water_lost_mL", json(s.water_lost_mL)},
          {"gum_g", json(s.gum_g)},
          {"glycerin_g", json(s.glycerin_g)},
          {"honey_g", json(s.honey_g)},
          {"water_g", json(s.water_g)},
          {"alcohol_g", json(s.alcohol_g)}};
}

Json places(const Batch& batch) {
  Json out = Json::object();
  for (const auto& [place, lying] : batch.places.at)
    out[std::string(session::name_of(place))] = {
        {"g", json(paint::grams_of(lying.paint, batch.places.bench))},
        {"standing", standing(paint::stand(lying.paint, batch.places.bench))}};
  return out;
}

Json materials(const Batch& batch) {
  Json out = Json::array();
  for (const Total& t : batch.totals) {
    Json spoons = Json::object();
    for (const auto& [spoon, count] : t.spoons) spoons[spoon] = count;
    out.push_back({{"card", t.card.id},
                   {"is_a", session::name_of(t.card.kind())},
                   {"name", words::card_name_for_file(t.card.id, t.card.name)},
                   {"g", json(t.grams)},
                   {"drops", t.drops},
                   {"spoons", spoons},
                   {"weighed_g", t.weighed_g},
                   {"count_lost", t.count_lost}});
  }
  return out;
}

Json passes(const Batch& batch) {
  Json out = Json::array();
  for (const Pass& p : batch.passes)
    out.push_back({{"stage", session::name_of(p.stage)},
                   {"number", p.number},
                   {"start_s", p.start},
                   {"end_s", json(p.end)}});
  return out;
}

Json noted(const Entry& e) {
  return {{"line", json(e.ref)}, {"clock_s", e.clock}, {"flow", json(e.flow)}};
}

void add_notes(const Batch& batch, Json& out) {
  Json feels = Json::array(), dots = Json::array(), troubles = Json::array();
  for (const Entry& e : batch.entries) {
    if (e.withdrawn) continue;
    Json note = noted(e);
    if (const auto* felt = std::get_if<Felt>(&e.event)) {
      note["as"] = session::name_of(felt->as);
      note["by"] = session::name_of(felt->by);
      feels.push_back(note);
    } else if (const auto* dot = std::get_if<Dot>(&e.event)) {
      note["specks"] = session::name_of(dot->specks);
      dots.push_back(note);
    } else if (const auto* trouble = std::get_if<Trouble>(&e.event)) {
      note["what"] = session::name_of(trouble->what);
      troubles.push_back(note);
    }
  }
  out["feel_notes"] = feels;
  out["dots"] = dots;
  out["troubles"] = troubles;
}

Json plan(const Batch& batch) {
  Json takes = Json::array(), still = Json::array();
  for (const Planned::Take& take : batch.plan->of.takes) {
    takes.push_back({{"of", take.of}, {"g", json(take.g)}});
    if (take.parts) takes.back()["parts"] = *take.parts;
  }
  for (const ToCome& one : to_come(batch))
    still.push_back({{"of", one.card->id}, {"g", json(one.g)}});
  return {{"line", json(batch.plan->line)},
          {"pans", batch.plan->of.pans},
          {"in", batch.plan->of.in},
          {"takes", takes},
          {"to_come", still}};
}

Json warnings(const Batch& batch) {
  Json out = Json::array();
  for (const Warning& w : batch.warnings)
    out.push_back({{"kind", name_of(w.kind)},
                   {"line", json(w.ref)},
                   {"detail", session::detail_words(w)},
                   {"words", session::warning_words(w)}});
  return out;
}

}

std::string shown_as_json(const Batch& batch) {
  Json out = {{"batch", batch.id},
              {"name", batch.name},
              {"progress", lists::progress[batch.progress].name},
              {"opened_at", batch.opened_at},
              {"last_at", batch.last_at},
              {"clock_s", batch.clock},
              {"room",
               {{"celsius", batch.places.room.celsius},
                {"humidity", batch.places.room.humidity},
                {"guessed", batch.room_guessed}}},
              {"powder_is_dry", batch.powder_is_dry}};
  if (batch.discarded) out["discarded"] = true;
  out["in_hand"] = session::name_of(in_hand(batch.places));
  out["standing"] = standing(batch.standing);
  out["places"] = places(batch);
  out["on_tools"] = {{"g", json(paint::grams_of(batch.places.on_tools.paint, batch.places.bench))},
                     {"usual_share", batch.places.loss.share},
                     {"usual_share_u", batch.places.loss.u},
                     {"observations", batch.places.loss.observations}};
  out["bench"] = {{"ln_factor", batch.places.bench.ln_factor},
                  {"ln_u", batch.places.bench.ln_u},
                  {"observations", batch.places.bench.observations}};
  out["materials"] = materials(batch);
  if (batch.plan) out["plan"] = plan(batch);
  if (batch.swatch) out["swatch"] = swatch(*batch.swatch);
  out["passes"] = passes(batch);
  add_notes(batch, out);
  out["warnings"] = warnings(batch);
  out["damaged"] = batch.damaged;
  out["newer_format"] = batch.newer;
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}
