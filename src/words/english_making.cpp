#include "words/making_says.hpp"

namespace words {

std::string_view english(MakingSay id) {
  using Say = MakingSay;
  switch (id) {
  case Say::step_gum: return "gum into water";
  case Say::step_steep: return "steep and stir";
  case Say::step_strain: return "strain";
  case Say::step_honey: return "honey in";
  case Say::step_glycerin: return "glycerin in";
  case Say::step_preserve: return "preservative, if any";
  case Say::step_jar: return "jar, label, cold";
  case Say::gum_how: return "40 to 50 °C, never boiling";
  case Say::steep_how: return "lid on, stir now and then";
  case Say::steep_until: return "until {0}, lid on";
  case Say::strain_how: return "through cloth, warm it again";
  case Say::sweet_how: return "{0} g, stir until clear";
  case Say::syrup_holds: return "with its water: {0} g of honey";
  case Say::sweet_both_how: return "honey {0} g, glycerin {1} g: stir";
  case Say::preserve_how: return "say how much; gloves";
  case Say::jar_how: return "wipe the rim, date it";
  case Say::takes_day: return "1 day";
  case Say::takes_min: return "{0} min";
  case Say::hours_to_go: return "h to go";
  case Say::minutes_to_go: return "min to go";
  case Say::time_is_up: return "time is up";
  case Say::smell_it: return "smell it first";
  case Say::recipe_other: return "tap: another recipe";
  case Say::in_grams: return "grams";
  case Say::in_spoons: return "spoons";
  case Say::in_drops: return "drops";
  case Say::gum_dust: return "Gum dust: mask on, it can cause allergy.";
  case Say::gum: return "Gum arabic";
  case Say::powder_mask: return "powder: mask on";
  case Say::gum_guess: return "{0} ± {1} g";
  case Say::gum_left: return "of {0} g left";
  case Say::water: return "Warm water";
  case Say::water_warm: return "{0} to 1 of gum";
  case Say::honey: return "Honey";
  case Say::glycerin: return "Glycerin";
  case Say::to_gum: return "{0} to 1 of gum";
  case Say::preservative: return "Preservative";
  case Say::preservative_how: return "as its supplier says";
  case Say::none_yet: return "?";
  case Say::grams: return "{0} g";
  case Say::makes: return "makes about {0} g";
  case Say::holds: return "the jar holds {0} g";
  case Say::batches: return "batches like the last: {0}";
  case Say::costs: return "{0} a gram";
  case Say::part_gum: return "{0} gum";
  case Say::part_water: return "{0} water";
  case Say::part_honey: return "{0} honey";
  case Say::part_glycerin: return "{0} glycerin";
  case Say::made_on: return "made {0}";
  case Say::label_until: return "keep cold, until {0}";
  case Say::label_dose: return "preservative: {0}";
  case Say::label_no_dose: return "preservative: not said";
  case Say::throw_away: return "A jar that hisses, smells or has fur goes, whatever the date.";
  case Say::keeps_preserved: return "3 to 6 months preserved: common practice, no source.";
  case Say::keeps_cold: return "2 to 4 weeks cold without it: common practice, no source.";
  case Say::keep_preserved: return "keeps 3 months";
  case Say::keep_cold: return "keeps 2 weeks";
  case Say::keep_preserved_what: return "preserved";
  case Say::keep_cold_what: return "no preservative";
  case Say::dose_what: return "preservative";
  case Say::jar_weigh: return "weigh the jar";
  case Say::take_back: return "undo";
  case Say::give_up: return "thrown away";
  case Say::other_making: return "another ({0})";
  case Say::onto_shelf: return "onto the shelf";
  case Say::ask_gum: return "the gum there is, in g";
  case Say::ask_gum_spoons: return "level fillings of {0}";
  case Say::ask_dose: return "drops of preservative, as its supplier says";
  case Say::ask_dose_g: return "g of preservative, as its supplier says";
  case Say::ask_jar: return "binder in the jar, without the jar, in g";
  case Say::ask_empty: return "the empty bottle, in g";
  case Say::ask_bottle: return "the bottle with its binder, in g";
  case Say::gone: return "Its card was put away.";
  case Say::ratio: return "{0} water to 1 of gum, by weight";
  case Say::strength: return "{0} g of dry gum in 100 g";
  case Say::counted: return "By what went out, {0} g are left.";
  case Say::not_counted: return "How much is left, nobody has counted.";
  case Say::weighed: return "It weighs {0} g without its bottle.";
  case Say::weighed_less: return "{0} g less than counted: if it stood open, that is water.";
  case Say::weighed_more: return "{0} g more than counted: the count was off.";
  case Say::weighed_alike: return "That is as counted.";
  case Say::empty_what: return "empty";
  case Say::bottle_weigh: return "weigh it";
  case Say::bottle_what: return "with binder";
  case Say::dried: return "dried out";
  case Say::dried_now: return "now {0} %";
  case Say::used: return "was used";
  case Say::used_now: return "{0} g left";
  case Say::percent: return "{0} g";
  case Say::now_what: return "of dry gum in 100 g, now";
  case Say::wanted_what: return "of dry gum in 100 g, wanted";
  case Say::weaker: return "thinner";
  case Say::stronger: return "stronger";
  case Say::put_water: return "put in {0} g of water";
  case Say::put_gum: return "put in {0} g of gum";
  case Say::put_nothing: return "It is as strong as wanted.";
  case Say::water_how: return "Stir, and let it stand until it is clear.";
  case Say::strong_gum_how:
    return "Gum powder: mask on. Sift it in, stir, steep it overnight, strain.";
  case Say::becomes: return "Then {0} water to 1 of gum, {1} g of it.";
  case Say::is_in: return "it is in";
  }
  return "";
}

}
