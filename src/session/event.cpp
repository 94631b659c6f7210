#include "session/event.hpp"

#include <array>
#include <utility>

namespace session {

namespace {

template <class E, std::size_t N>
using Names = std::array<std::pair<E, std::string_view>, N>;

template <class E, std::size_t N>
std::string_view find_name(const Names<E, N>& names, E value) {
  for (const auto& [e, name] : names)
    if (e == value) return name;
  return "";
}

template <class E, std::size_t N>
std::optional<E> find_value(const Names<E, N>& names, std::string_view wanted) {
  for (const auto& [e, name] : names)
    if (name == wanted) return e;
  return std::nullopt;
}

constexpr Names<CardKind, 13> card_kinds{{{CardKind::pigment, "pigment"},
                                          {CardKind::binder, "binder"},
                                          {CardKind::water, "water"},
                                          {CardKind::honey, "honey"},
                                          {CardKind::glycerin, "glycerin"},
                                          {CardKind::wetting_aid, "wetting_aid"},
                                          {CardKind::other, "other"},
                                          {CardKind::paint, "paint"},
                                          {CardKind::dropper, "dropper"},
                                          {CardKind::spoon, "spoon"},
                                          {CardKind::pan, "pan"},
                                          {CardKind::slab, "slab"},
                                          {CardKind::muller, "muller"}}};
constexpr Names<Feel, 5> feels{{{Feel::wont_move, "wont_move"},
                                {Feel::too_sticky, "too_sticky"},
                                {Feel::right, "right"},
                                {Feel::too_loose, "too_loose"},
                                {Feel::too_runny, "too_runny"}}};
constexpr Names<By, 2> bys{{{By::knife, "knife"}, {By::muller, "muller"}}};
constexpr Names<Stage, 3> stages{{{Stage::wetting_out, "wetting_out"},
                                  {Stage::mulling, "mulling"},
                                  {Stage::resting, "resting"}}};
constexpr Names<Specks, 3> specks{
    {{Specks::many, "many"}, {Specks::few, "few"}, {Specks::none, "none"}}};
constexpr Names<TroubleKind, 7> troubles{{{TroubleKind::wont_wet, "wont_wet"},
                                          {TroubleKind::gelling, "gelling"},
                                          {TroubleKind::gummy, "gummy"},
                                          {TroubleKind::gritty, "gritty"},
                                          {TroubleKind::foams, "foams"},
                                          {TroubleKind::separates, "separates"},
                                          {TroubleKind::smells, "smells"}}};
constexpr Names<PhotoOf, 4> photos_of{{{PhotoOf::slab, "slab"},
                                       {PhotoOf::dot, "dot"},
                                       {PhotoOf::swatch, "swatch"},
                                       {PhotoOf::pan, "pan"}}};
constexpr Names<Place, 3> places{
    {{Place::slab, "slab"}, {Place::jar, "jar"}, {Place::pans, "pans"}}};
constexpr Names<State, 2> states{{{State::wet, "wet"}, {State::dry, "dry"}}};
constexpr Names<Became, 8> all_became{{{Became::good, "good"},
                                       {Became::full, "full"},
                                       {Became::sunken, "sunken"},
                                       {Became::cracked, "cracked"},
                                       {Became::sticky, "sticky"},
                                       {Became::rubs_off, "rubs_off"},
                                       {Became::wont_rewet, "wont_rewet"},
                                       {Became::mould, "mould"}}};

}

std::string_view name_of(CardKind v) { return find_name(card_kinds, v); }
std::string_view name_of(Feel v) { return find_name(feels, v); }
std::string_view name_of(By v) { return find_name(bys, v); }
std::string_view name_of(Stage v) { return find_name(stages, v); }
std::string_view name_of(Specks v) { return find_name(specks, v); }
std::string_view name_of(TroubleKind v) { return find_name(troubles, v); }
std::string_view name_of(PhotoOf v) { return find_name(photos_of, v); }
std::string_view name_of(Place v) { return find_name(places, v); }
std::string_view name_of(State v) { return find_name(states, v); }
std::string_view name_of(Became v) { return find_name(all_became, v); }
std::optional<CardKind> card_kind_named(std::string_view s) { return find_value(card_kinds, s); }
std::optional<Feel> feel_named(std::string_view s) { return find_value(feels, s); }
std::optional<By> by_named(std::string_view s) { return find_value(bys, s); }
std::optional<Stage> stage_named(std::string_view s) { return find_value(stages, s); }
std::optional<Specks> specks_named(std::string_view s) { return find_value(specks, s); }
std::optional<TroubleKind> trouble_named(std::string_view s) { return find_value(troubles, s); }
std::optional<PhotoOf> photo_of_named(std::string_view s) { return find_value(photos_of, s); }
std::optional<Place> place_named(std::string_view s) { return find_value(places, s); }
std::optional<State> state_named(std::string_view s) { return find_value(states, s); }
std::optional<Became> became_named(std::string_view s) { return find_value(all_became, s); }

bool is_liquid(CardKind kind) {
  switch (kind) {
  case CardKind::binder:
  case CardKind::water:
  case CardKind::honey:
  case CardKind::glycerin:
  case CardKind::wetting_aid:
  case CardKind::other: return true;
  default: return false;
  }
}

paint::Kind paint_kind(CardKind kind) {
  switch (kind) {
  case CardKind::pigment: return paint::Kind::pigment;
  case CardKind::binder: return paint::Kind::binder;
  case CardKind::water: return paint::Kind::water;
  case CardKind::honey: return paint::Kind::honey;
  case CardKind::glycerin: return paint::Kind::glycerin;
  case CardKind::wetting_aid: return paint::Kind::wetting_aid;
  default: return paint::Kind::other;
  }
}

}
