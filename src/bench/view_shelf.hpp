// What Shelf shows: its list, and what lies open of a card.
#pragma once

#include "bench/binder_range.hpp"
#include "bench/mulling.hpp"
#include "bench/rewetting.hpp"
#include "bench/view_pans.hpp"
#include "paint/catalogue.hpp"
#include "session/trail.hpp"

namespace bench {

// Spoons or drops of one tool.
struct ScoopView {
  double count = 0;
  bool drops = false;
  std::string name; // of the spoon
  double mL = 0;    // that it holds
};

// A number of a card, as it stands, with where it comes from.
struct FactView {
  PadId pad;
  double value = 0; // 0: not known
  int decimals = 2;
  double u = 0;
  words::Sentence say = words::Sentence{};  // what it is
  words::Sentence zero = words::Sentence{}; // what stands there for 0
};

// What there is of a card.
struct StockView {
  std::optional<session::Remaining> left;
  std::optional<double> low_g; // what a batch takes
  std::optional<double> days;  // until it is used up, as it was used lately
  std::optional<double> a_gram;
  std::string currency; // of that
};

// A pigment as it is read.
struct ReadingView {
  std::vector<double> right; // g of the binder to 10 g at which each batch of it alone was right
  std::optional<paint::Band> band;
  std::optional<MullingNeeded> mulling;
  struct Batch {
    PadId pad;
    std::string name;
    session::TrailView trail;
    session::Progress progress = session::Progress::open;
    std::optional<session::Became> became; // last
  };
  std::vector<Batch> batches; // newest first
};

// A recipe as its maker says it, all of it for one weight of pigment where that is weighed.
struct RecipeView {
  struct Part {
    session::CardKind kind = session::CardKind::pigment;
    std::string name;
    std::uint32_t colour = 0;
    bool gone = false; // not on the shelf
    session::SaidIn in = session::SaidIn::g;
    double amount = 0;
    ScoopView scoop = {}; // of spoons and drops
    double g = 0, u = 0;  // of those; 0: not known
    bool guess = false;   // by how the powder is guessed to lie
  };
  std::vector<Part> pigments, liquids;
  double per_g = 0;             // of pigment, that the liquids go to; 0: to all of it
  std::optional<ScoopView> per; // or to these spoons of powder
  session::RecipeFrom from = session::RecipeFrom::own_head;
  std::string batch; // that it was kept from; empty: not known
  bool mine = false;
  std::string note;
  std::vector<ReadingView::Batch> made; // by it, newest first
};

// Where a card's colour is from.
struct ColourView {
  std::string swatch_of;  // batch whose swatch it shows
  std::string take;       // batch whose swatch can be taken; empty: none
  bool give_back = false; // for the catalogue's
};

struct JarsView {
  session::Bought jar;            // as far as it is entered
  std::vector<session::Jar> jars; // newest first
  std::optional<session::Stock::Weighing> weighed;
};

struct ShelfView {
  struct Row {
    PadId pad;
    session::CardKind kind = session::CardKind::other;
    std::string name, index_name;
    std::uint32_t colour = 0;
    std::optional<session::Remaining> left;
    std::optional<double> low_g; // what a batch takes
    bool open = false;
    bool mine = false;
    struct Part {
      std::string name;
      std::uint32_t colour = 0;
    };
    std::vector<Part> pigments = {}; // of a recipe
    std::size_t made = 0;            // batches by it
  };
  ShelfKind kind = ShelfKind::pigment;
  bool away = false;
  std::size_t put_away = 0; // how many are
  bool others = false;
  bool ticking = false;
  std::size_t ticked = 0;     // pigments that are the maker's own
  std::size_t not_listed = 0; // the others, or the maker's own
  std::vector<Row> rows;      // this page's
  std::string search;
  int page = 0, pages = 1;
  std::optional<session::Card> card; // the open one
  CardPage on = CardPage::facts;
  bool is_new = false;                // as yet on no shelf
  bool ships = false;                 // and nobody has edited it: its figures are guesses
  std::string density_from, oil_from; // from the catalogue; empty: a guess
  std::string oil_beside;             // what was read beside that guess
  bool from_catalogue = false;        // a pigment as it ships
  std::vector<paint::Caution> asks;   // a pigment: what to be careful about
  bool choosing = false;              // which of them
  std::vector<FactView> facts;
  std::optional<words::Error> fault; // of the figures, as long as it stands
  StockView stock;
  std::optional<BinderRange> range; // of a pigment
  std::optional<SoftWanted> soft;   // likewise
  ReadingView reading;
  ColourView colour; // of a pigment
  std::optional<RecipeView> recipe;
  JarsView jars;
  std::optional<PaperDesk> paper;   // of a jar of binder: its label
  std::vector<std::uint32_t> chart; // hues, or shades of one
  std::optional<NumberView> number;
  Notice notice;
};

}
