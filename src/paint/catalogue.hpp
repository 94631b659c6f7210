// The pigment catalogue: facts with their sources, read from assets/pigments.json.
#pragma once

#include "paint/material.hpp"
#include "words/say.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace paint {

// Of density and oil absorption neither, one or both name a source.
enum class Confidence { low, medium, high };

// What to be careful about with one pigment, as ids; words/ holds the sentences.
enum class Caution {
  dust, // every dry powder
  cobalt,
  cadmium,
  nickel,
  chromium,
  manganese,
  no_drain,        // cobalt, cadmium, zinc, manganese: rinse water harms what lives in water
  silica,          // may hold respirable crystalline silica
  fine_black,      // carcinogen group 2B by inhalation (IARC)
  nano,            // grains of nanometres
  combustible,     // burns as a cloud in the air
  no_acid_sulfide, // releases hydrogen sulfide with acid
  no_acid_cyanide, // hydrogen cyanide with hot acid or strong heat
  borate,
  sensitiser,
  no_heat,  // not above 200 °C
  titanium, // carcinogen group 2B by inhalation (IARC)
  lead,
  mercury,
  arsenic,
  copper,
  cancer,    // of a card that a workshop wrote itself
  not_known, // nobody has said what to be careful about
  flakes,    // stirred in, not mulled
};

// The word in files: "dust", "no_drain", ...
std::string_view name_of(Caution caution);
std::optional<Caution> caution_named(std::string_view name);

// All that a card may be given, in the order in which they are offered; not_known is none of them.
const std::vector<Caution>& cautions_to_choose();

// What a maker reads about one caution: one line, at most 70 characters.
words::Sentence sentence(Caution caution);

// What holds for every batch, to be shown before one opens; same length.
const std::vector<words::Sentence>& general_care();

// How much muller work a pigment asks for; in the file "none", "light", "normal", "long".
enum class Mulling { stir_in, light, normal, prolonged };

// In `facts` the standard uncertainties are a quarter of the span over grades on sale, as if that
// span held 95 % of them; for oil absorption at least 15 % of the typical value, since lots of one
// grade differ by that much (from memory).
struct CataloguePigment {
  std::string id;      // card id: "pb28", "pbr7_raw_sienna"
  std::string ci_name; // "PB28"
  std::string name;    // "Cobalt blue"
  std::string chemistry;
  Pigment facts;
  double bulk_loose = 0;  // g to 1 mL of powder as it falls, 0.01 to 5
  double bulk_tapped = 0; // the same powder knocked down; a scooped spoon lies between the two
  Mulling mulling = Mulling::normal;
  bool hydrophobic = false;  // water alone does not wet it readily
  std::string lightfastness; // ASTM D5067, "I" the best, with what is doubtful about it
  unsigned colour = 0;       // 0xRRGGBB for the heap on screen; chosen by eye, no measurement
  std::vector<Caution> cautions;
  std::string density_from, oil_from; // what the figure rests on; empty: a guess
  std::string oil_beside; // of a guess: what was read, more than lots differ by beside it
  Confidence confidence = Confidence::low;
  std::vector<std::string> sources;     // of all that is said of it
  std::vector<std::string> other_names; // by which somebody may look for it; may be none
};

// Reads the catalogue's bytes: {"pigments": [...]}, the fields as in assets/pigments.json. The
// first fault is named with its row and field: a broken file, a field missing, empty or of the
// wrong kind, a word that is not known, an id that was there before, figures that do not rise
// within 0.5 to 20 g/mL (density), 1 to 1,000 g/100 g (oil), 0.01 to 5 g/mL (bulk).
words::Result<std::vector<CataloguePigment>> read_catalogue(std::string_view json);

// The one that ships, compiled in from assets/pigments.json.
const std::vector<CataloguePigment>& catalogue();

// By id; null where it is not in it.
const CataloguePigment* in_catalogue(const std::string& id);

// Whether somebody who looks for `wanted` means it: a part of its name, its Colour Index name
// ("pb29", "PB 29", "Pigment Blue 29") or another name the catalogue has for that id, whatever the
// case, blanks, dots and dashes. Nothing wanted: any.
bool goes_by(const std::string& id, const std::string& name, const std::string& ci_name,
             const std::string& wanted);

// What to be careful about with one pigment: the catalogue's by its id, and the words chosen for
// its card. A word that is not known, or none at all of either: not_known.
std::vector<Caution> cautions_of(const std::string& id, const std::vector<std::string>& chosen);

// All of that for the pigments of one batch, each once: the mask and the supplier's sheet first,
// then what these want, then what holds for every batch. Gloves are said in general only while
// there is no pigment.
std::vector<words::Sentence> cautions_for(const std::vector<std::vector<Caution>>& pigments);

}
