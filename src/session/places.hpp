// What lies where while a batch is folded: how it dries, moves and is weighed. Used by batch.cpp.
#pragma once

#include "paint/mixture.hpp"
#include "paint/tools_loss.hpp"
#include "session/event.hpp"

#include <map>

namespace session {

struct PlaceContents {
  paint::Mixture paint;
  paint::Sums sums; // of its contents
};

// What stayed on glass, knife and muller when the paint was gathered.
struct LeftOnTools {
  paint::Mixture paint;
  std::string session;  // that gathered it: by the next one the glass is clean
  bool weighed = false; // it has taught what usually stays
};

struct Places {
  std::map<Place, PlaceContents> at;              // where there is any
  paint::Spread spread = paint::Spread::gathered; // on the slab
  paint::Room room;
  paint::BenchRate bench; // as far as it is taught
  paint::ToolsLoss loss;  // likewise
  LeftOnTools on_tools;
  int gatherings = 0; // so far
};

// Where the work is: on the slab if any paint lies there, else in the jar, else in the pans.
Place in_hand(const Places& places);

// What stands in hand; nothing where there is no paint.
paint::Live live(const Places& places);
paint::Sums sums(const Places& places);

void put_in(Places& places, const std::string& card, const paint::Material& material,
            const paint::Amount& grams);

// Only what is open on the slab dries. In a room so damp that nothing is known of it, nothing does.
void dry(Places& places, double seconds);

// The paint in hand, wherever it lies: spread out for long enough that only what the room lets it
// keep is left.
void dry_out(Places& places);

// From one place to another, or away for good. `name` is the line's own, for what both places share
// of its error. Errors: nothing_there, and those of paint::part and share_of.
using Fault = std::optional<words::Error>;
Fault move(Places& places, Place from, std::optional<Place> to, const Quantity& quantity,
           const std::string& name);

// Off the slab into the jar, but for what stays on the tools.
void gather(Places& places, const std::string& session);
// On the slab again: within the session that gathered it, what stayed on the tools is there too.
void take_up(Places& places, const std::string& session);
paint::Mixture with_tools(const Places& places, Place place);

// Back comes what all of it was, with what stayed on the tools: what went in, better known.
// Paint that weighs less than it can, and was looked at again (`confirmed`), has lost the rest, all
// of it alike; paint that weighs more had more of the same put in. Errors: those of paint::weighed
// and brought_back; amounts as in paint::grams_weighed.
words::Result<paint::Mixture> weigh(Places& places, const Weighed& weighed, const std::string& name,
                                    bool confirmed = false);
Fault bring_back(Places& places, const paint::Mixture& before, const std::string& name);

}
