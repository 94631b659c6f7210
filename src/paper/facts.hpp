// What sheet, labels and table say alike of a batch.
#pragma once

#include "session/offsets.hpp"
#include "session/ranges.hpp"
#include "words/sentence.hpp"

#include <optional>
#include <string>
#include <vector>

namespace paper {

using Offsets = session::Offsets;

struct Handed {
  const session::Batch& batch;
  const Offsets& offsets;
  const session::Ranges* ranges = nullptr; // of the studio; null: nothing was learnt
  bool keeps_amounts = false;              // what went in is named, not how much
  bool with_photos = false;                // named as they lie in the studio, "photos/…"
  int place = 0;                           // among several on one page, which share no id
};

// Of a file about so many batches: of one its name.
std::string title_of(std::size_t many, const session::Batch* first, words::Sentence several);

// Of the session of a line; 0 where it is not known.
int offset_of(const Handed& handed, const session::Ref& line);
// Of the line that opened the batch.
int offset_of(const Handed& handed);
bool knows_zone(const Handed& handed); // of every session of the batch

bool is_coloured(const session::Card& card); // pigment, or paint of another batch

// The pigments and paints that went in; of a batch that has none yet, or is not summed, those laid
// out for it.
std::vector<session::Card> pigments_of(const session::Batch& batch);
std::string pigment_words(const session::Card& pigment); // "Cobalt blue, PB28"

// What went in; of a batch of a newer format, which is not summed, by its additions alone and
// without grams.
std::vector<session::Total> went_in(const session::Batch& batch);

// The name of a card, else its id.
std::string card_name(const session::Batch& batch, const std::string& id);

}
