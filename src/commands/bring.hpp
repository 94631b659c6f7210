// Old notes brought in: a table that somebody kept, shown as it is understood, and its recipes
// taken when that is asked for.
#pragma once

#include "disk/faulty.hpp"
#include "notes/recipes.hpp"
#include "session/reader.hpp"
#include "studio/studio.hpp"

#include <iosfwd>
#include <map>

namespace commands {

struct Bringing {
  std::string name;  // of the file, as it was said
  std::string bytes; // one more than notes::most_bytes of them where it is larger
  std::optional<notes::Separator> separator;
  notes::Asked asked;
  notes::AskedRecipes how; // binder by card or by name
  bool take = false;
  studio::Path home;
  std::optional<disk::Fault> fault;
};

// What becomes of one recipe of the notes.
enum class Fate {
  fresh,     // it is taken, or would be
  newer,     // likewise, and an older reading of it is put away
  there,     // it is on the shelf already, or put away
  otherwise, // likewise, but the shelf says another thing of it, which stays
  left       // it cannot be taken
};
struct Fated {
  const notes::Brought* recipe = nullptr;
  Fate fate = Fate::fresh;
};

// `logs`: what the studio says so far. Exit status 1 where no row is a recipe, or it could not be
// saved. Errors: those of notes::text_of, table_of and understood; bring_no_binder.
words::Result<int> bring(Bringing what, std::vector<session::Log> logs, std::ostream& out,
                         std::ostream& err);

// What was understood, for people, with the cards of the shelf and those put away: columns,
// recipes, and each cell that was not.
std::string notes_shown(const Bringing& what, const notes::Table& table,
                        const notes::Understood& notes, const std::vector<Fated>& recipes,
                        const std::vector<session::Card>& known);

// What stands on the command line of columns and dialect. Errors: bring_bad_column, bring_bad_word.
struct Arguments;
std::optional<words::Error> ask(Bringing& what, const Arguments& arguments);

}
