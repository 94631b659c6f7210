// What each screen shows, as kinds and numbers: words and pixels are made of them in screens/.
#pragma once

#include "bench/advice.hpp"
#include "bench/bench.hpp"

namespace bench {

struct MaterialView {
  PadId pad;
  session::CardKind kind = session::CardKind::other;
  std::string name;
  std::uint32_t colour = 0;    // pigment
  std::optional<double> grams; // so far; absent: none
  Amount next;                 // what a tap adds
};

struct PassView {
  enum Next { wet_out, mull, scrape, none } next = wet_out; // what the pad's tap does
  std::optional<session::Stage> running;
  int number = 0;      // of the running pass, or of the next one
  double seconds = 0;  // of the running pass
  double target_s = 0; // common practice, no source: a pass takes 2 to 5 minutes
};

// The running pass has lasted as long as one should.
bool is_over(const PassView& pass);

struct UndoView {
  std::optional<session::Event> target; // what the next undo takes back
  std::string card_name;                // of what was added
  bool saved = false;                   // the last line of this session lies on the disk
  std::uint64_t unsaved = 0;            // lines that do not
};

struct TrailMark { // a flag on the trail
  session::Clock clock = 0;
  double flow = 0;
  std::variant<session::Feel, session::Specks, session::TroubleKind> what;
};

struct TrailView {
  std::vector<session::TrailPoint> points;
  std::vector<session::TrailPoint> ghost; // of the last good batch, by its own clock
  std::vector<TrailMark> marks;
  std::vector<session::Pass> passes;
  std::optional<paint::Band> band; // today's notes counted in
  std::optional<double> now;       // live flow
  std::optional<double> landing;   // where the pressed pad's addition would land
  std::optional<double> next;      // where the advised addition would land
  session::Clock from = 0, to = 0; // the stretch of time to show
  bool whole = false;              // all of the batch, with its gaps shortened
  std::optional<session::Clock> gathered;
  std::int64_t opened_at = 0; // ms since 1970, for times of day
};

struct NumberView {
  PadId target;
  std::string text; // as typed
  std::string of;   // the material's name, where it is one
  std::optional<words::Error> error;
};

struct StripView {
  Screen screen = Screen::plan;
  std::string batch_name; // empty: none
  std::uint32_t batch_colour = 0;
  int hour = 0, minute = 0;
  bool night = false;
  bool sound = true;
};

struct SlabView {
  std::vector<MaterialView> materials;
  PassView pass;
  UndoView undo;
  std::optional<session::Specks> dot;
  TrailView trail;
  std::optional<paint::Amount> ratio; // g binder to 10 g pigment
  int ratio_decimals = 2;             // to one drop's worth
  Advice advice;
  paint::Amount dried_mL;
  bool dust = false;
  std::optional<std::string> save_failure;
  bool saved_elsewhere = false; // on this device, since the studio fails
  Notice notice;
  Middle middle = Middle::trail;
  Amount amount;
  std::optional<NumberView> number;
  bool locked = false;
  std::optional<double> unlocking; // 0 to 1 while the unlocking pad is held
  session::Progress progress = session::Progress::open;
  std::vector<session::Warning> warnings;
  bool damaged = false; // a file of this batch is
  bool newer = false;   // a file of this batch is of a newer format: nothing is summed
};

struct PlanView {
  struct Row {
    PadId pad;
    std::string name, index_name;
    std::uint32_t colour = 0;
    bool chosen = false;
  };
  std::vector<Row> pigments; // this page's
  std::vector<Row> binders;
  int page = 0, pages = 1;
  std::string name, search;
  double grams = 0;
  double celsius = 21, humidity = 0.5;
  bool room_guessed = true;
  std::vector<words::Say> cautions;
  std::optional<paint::Helping> first_helping;
  std::optional<words::Say> missing; // why it cannot begin yet
  std::optional<NumberView> number;
  std::optional<words::Error> error;
};

struct BookView {
  struct Row {
    PadId pad;
    std::string name;
    std::uint32_t colour = 0;
    std::int64_t opened_at = 0; // ms since 1970
    session::Progress progress = session::Progress::open;
    std::optional<paint::Amount> ratio;
    bool warned = false;
  };
  std::vector<Row> rows; // this page's, newest first
  int page = 0, pages = 1;
  std::size_t damages = 0;
  std::vector<std::string> faults;
  std::optional<Reading> reading;      // while the studio is being read
  std::optional<session::Batch> batch; // the one looked at
  std::uint32_t colour = 0;            // of its pigment
  TrailView trail;                     // of that one
};

struct TabletView {
  Size mm;
  Hand hand = Hand::left;
  bool motion = true;
  struct Row {
    PadId pad;          // bind ...
    PadId does;         // what the key does
    std::string key;    // empty: none
    bool waits = false; // the next key will be it
  };
  std::vector<Row> rows;
};

struct ShelfView {};

struct PansView {};

struct View {
  Layout layout;
  StripView strip;
  std::optional<PadId> pressed; // flashes
  std::optional<PadId> ring;    // where the keys stand
  int utc_offset_min = 0;
  std::variant<PlanView, SlabView, BookView, TabletView, ShelfView, PansView> screen;
};

View view(const Bench& bench, const Now& now);

}
