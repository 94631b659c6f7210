// The closed lists of the format: each value's word in files, which stays for ever, and where
// people read of it by one sentence alone, that sentence.
#pragma once

#include "session/batch.hpp"
#include "words/lists.hpp"
#include "words/say.hpp"
#include "words/session_says.hpp"

namespace session::lists {

using Say = words::SessionSay;

struct Named {
  std::string_view name;
};

struct Worded {
  std::string_view name;
  words::Sentence say;
};

inline constexpr words::EnumTable<CardKind, Named> card_kinds{
    {{CardKind::pigment, {"pigment"}},
     {CardKind::binder, {"binder"}},
     {CardKind::water, {"water"}},
     {CardKind::honey, {"honey"}},
     {CardKind::glycerin, {"glycerin"}},
     {CardKind::wetting_aid, {"wetting_aid"}},
     {CardKind::other, {"other"}},
     {CardKind::paint, {"paint"}},
     {CardKind::dropper, {"dropper"}},
     {CardKind::spoon, {"spoon"}},
     {CardKind::pan, {"pan"}},
     {CardKind::slab, {"slab"}},
     {CardKind::muller, {"muller"}},
     {CardKind::recipe, {"recipe"}}}};
inline constexpr words::EnumTable<SaidIn, Named> said_in{{{SaidIn::parts, {"parts"}},
                                                          {SaidIn::g, {"g"}},
                                                          {SaidIn::drops, {"drops"}},
                                                          {SaidIn::spoons, {"spoons"}}}};
inline constexpr words::EnumTable<RecipeFrom, Named> recipes_from{
    {{RecipeFrom::own_head, {"head"}},
     {RecipeFrom::old_notes, {"notes"}},
     {RecipeFrom::batch, {"batch"}}}};
inline constexpr words::EnumTable<Feel, Worded> feels{
    {{Feel::wont_move, {"wont_move", Say::feel_wont_move}},
     {Feel::too_sticky, {"too_sticky", Say::feel_too_sticky}},
     {Feel::right, {"right", Say::feel_right}},
     {Feel::too_loose, {"too_loose", Say::feel_too_loose}},
     {Feel::too_runny, {"too_runny", Say::feel_too_runny}}}};
inline constexpr words::EnumTable<By, Named> tools{
    {{By::knife, {"knife"}}, {By::muller, {"muller"}}}};
inline constexpr words::EnumTable<Stage, Named> stages{{{Stage::wetting_out, {"wetting_out"}},
                                                        {Stage::mulling, {"mulling"}},
                                                        {Stage::resting, {"resting"}}}};
inline constexpr words::EnumTable<MakingStep, Named> making_steps{
    {{MakingStep::gum_in, {"gum"}},
     {MakingStep::steep, {"steep"}},
     {MakingStep::strain, {"strain"}},
     {MakingStep::sweeten, {"sweeten"}},
     {MakingStep::preserve, {"preserve"}},
     {MakingStep::into_jar, {"jar"}},
     {MakingStep::thinned, {"thinned"}},
     {MakingStep::thickened, {"thickened"}},
     {MakingStep::dried, {"dried"}},
     {MakingStep::given_up, {"given_up"}},
     {MakingStep::dose, {"dose"}}}};
inline constexpr words::EnumTable<Specks, Worded> specks{
    {{Specks::many, {"many", Say::specks_many}},
     {Specks::few, {"few", Say::specks_few}},
     {Specks::none, {"none", Say::specks_none}}}};
inline constexpr words::EnumTable<TroubleKind, Worded> troubles{
    {{TroubleKind::wont_wet, {"wont_wet", Say::trouble_wont_wet}},
     {TroubleKind::gelling, {"gelling", Say::trouble_gelling}},
     {TroubleKind::gummy, {"gummy", Say::trouble_gummy}},
     {TroubleKind::gritty, {"gritty", Say::trouble_gritty}},
     {TroubleKind::foams, {"foams", Say::trouble_foams}},
     {TroubleKind::separates, {"separates", Say::trouble_separates}},
     {TroubleKind::smells, {"smells", Say::trouble_smells}}}};
inline constexpr words::EnumTable<PhotoOf, Named> photos_of{{{PhotoOf::slab, {"slab"}},
                                                             {PhotoOf::dot, {"dot"}},
                                                             {PhotoOf::swatch, {"swatch"}},
                                                             {PhotoOf::pan, {"pan"}}}};
inline constexpr words::EnumTable<Place, Worded> places{{{Place::slab, {"slab", Say::place_slab}},
                                                         {Place::jar, {"jar", Say::place_jar}},
                                                         {Place::pans, {"pans", Say::place_pans}}}};
inline constexpr words::EnumTable<State, Named> states{
    {{State::wet, {"wet"}}, {State::dry, {"dry"}}}};
inline constexpr words::EnumTable<Became, Worded> verdicts{
    {{Became::good, {"good", Say::became_good}},
     {Became::full, {"full", Say::became_full}},
     {Became::sunken, {"sunken", Say::became_sunken}},
     {Became::cracked, {"cracked", Say::became_cracked}},
     {Became::sticky, {"sticky", Say::became_sticky}},
     {Became::rubs_off, {"rubs_off", Say::became_rubs_off}},
     {Became::wont_rewet, {"wont_rewet", Say::became_wont_rewet}},
     {Became::mould, {"mould", Say::became_mould}}}};

// Not in files, but in what is told of a batch.
inline constexpr words::EnumTable<Progress, Worded> progress{
    {{Progress::open, {"open", Say::progress_open}},
     {Progress::gathered, {"gathered", Say::progress_gathered}},
     {Progress::closed, {"closed", Say::progress_closed}}}};

}
