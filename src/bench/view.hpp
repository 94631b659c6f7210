// What each screen shows, as kinds and numbers: words and pixels are made of them in screens/.
#pragma once

#include "bench/advice.hpp"
#include "bench/bench.hpp"
#include "bench/binder_range.hpp"
#include "bench/doubt.hpp"
#include "bench/mulling.hpp"
#include "bench/planning.hpp"
#include "bench/recalibration.hpp"
#include "bench/remedy.hpp"
#include "bench/rewetting.hpp"
#include "bench/softening.hpp"
#include "bench/to_come.hpp"
#include "bench/view_binder.hpp"
#include "bench/view_match.hpp"
#include "bench/view_pans.hpp"
#include "bench/view_photos.hpp"
#include "bench/view_ranges.hpp"
#include "bench/view_shelf.hpp"
#include "paint/catalogue.hpp"
#include "session/cost.hpp"
#include "session/trail.hpp"
#include "words/say.hpp"

namespace bench {

struct MaterialView {
  PadId pad;
  session::CardKind kind = session::CardKind::other;
  std::string name;
  std::uint32_t colour = 0;    // pigment
  std::optional<double> grams; // so far; absent: none
  TapAmount next;              // what a tap adds
  int several = 0;             // pigments that the pad stands for
  std::string dropper;         // of the drops, where it is not plain
  bool corrects = false;       // a tap says that the open line was of it
  bool has_pad = false;        // while pads are chosen: it is on the slab
};

struct PassView {
  enum Next { wet_out, mull, scrape, none } next = wet_out; // what the pad's tap does
  std::optional<session::Stage> running;
  int number = 0;      // of the running pass, or of the next one
  double seconds = 0;  // of the running pass
  double target_s = 0; // how long this studio's passes are
};

// The running pass has lasted as long as one should.
bool is_over(const PassView& pass);

using session::TrailMark, session::TrailView;

// A line of the batch that can be corrected.
struct LineView {
  PadId pad;
  std::int64_t at = 0; // ms since 1970: many lines say the same, the time tells them apart
  session::Event event;
  std::string card_name; // of what was added
  bool corrected = false;
  std::int64_t took_ms = 0;           // a run of drops: from the first to the last
  std::optional<int> offset_min = {}; // by the clock there, where it is known
};

// A batch whose paint can go into this one.
struct PaintView {
  PadId pad;
  std::string name;
  std::uint32_t colour = 0;
  session::Place place = session::Place::jar;
  double grams = 0;
};

// The jar, while what is in it is in hand.
struct JarView {
  paint::Amount g;
  double on_tools = 0; // the share of the paint that stayed on glass and knife
};

struct TopBarView {
  Screen screen = Screen::plan;
  std::string batch_name; // empty: none
  std::uint32_t batch_colour = 0;
  int hour = 0, minute = 0;
  bool night = false;
  bool sound = true;
  std::size_t due = 0;       // what waits on Today
  bool batch_swatch = false; // its colour was read from its swatch
};

struct SlabView {
  std::vector<MaterialView> materials;
  PassView pass;
  UndoView undo;
  std::optional<session::Specks> dot;
  std::optional<session::TroubleKind> last_trouble; // that stands
  TrailView trail;
  bool smooth = false;                // as far as anybody knows
  bool flows_right = true;            // by what the hand said last, and not dried out since
  std::int64_t away_ms = 0;           // while it is asked how the paint was found
  std::optional<paint::Amount> ratio; // g binder to 10 g pigment
  int ratio_decimals = 2;             // to one drop's worth
  Advice advice;
  std::vector<ToComeView> to_come;
  std::optional<double>
      last_time_g; // of binder, that the batch made again took for as much pigment
  std::optional<double> by_recipe_g; // likewise, of the recipe that it was planned by
  int portions = 1;                  // over the slab, by its plan
  std::optional<Softening> softening;
  paint::Amount dried_mL;
  bool dust = false;
  bool flammable = false; // alcohol has not left it yet
  std::optional<words::Error> save_failure;
  bool saved_elsewhere = false; // on this device, since the studio fails
  Notice notice;
  Panel panel;
  TapAmount amount;
  std::string dropper;                // for the next drops, where there are several
  std::vector<MaterialView> pigments; // where one pad stands for all
  std::vector<MaterialView> cards;    // of the panel of materials
  std::optional<Remedy> remedy;
  std::optional<double> planned_g; // binder in all, where that is another than last time
  std::vector<LineView> lines;     // this page's; the chosen one alone in its panel
  bool line_has_amount = false;
  std::optional<Doubt> doubt; // about the chosen one
  std::vector<PaintView> paints;
  bool in_jar = false; // some of it is
  std::optional<JarView> jar;
  std::optional<DropperFound> dropper_found; // in its panel
  std::optional<NumberView> number;
  bool locked = false;
  std::optional<double> unlocking; // 0 to 1 while the unlocking pad is held
  session::Progress progress = session::Progress::open;
  std::vector<session::Warning> warnings;
  bool room_guessed = false; // what has dried off rests on a room that nobody read
  bool damaged = false;      // a file of this batch is
  bool newer = false;        // a file of this batch is of a newer format: nothing is summed
};

struct PlanView {
  struct Row {
    PadId pad;
    std::string name, index_name;
    std::uint32_t colour = 0;
    bool chosen = false;
    std::optional<double> left_g = {};
    enum Whose { told, own, ships } whose = told; // told: by its name, no other has it
  };
  struct Part {
    PadId pad; // parts
    std::string name;
    std::uint32_t colour = 0;
    double parts = 1;
    double grams = 0; // to be weighed
    session::SaidIn in = session::SaidIn::parts;
    ScoopView spoon = {}; // that it is said in
    std::string index_name = {};
    std::optional<double> left_g = {};
    double u = 0; // of the grams; 0: they are weighed
  };
  // What is to be done, in its order.
  struct Step {
    enum Why {
      measure,
      first_helping,
      rest,
      extra,
      lacked // an extra of which there was too little last time
    } why = measure;
    session::CardKind kind = session::CardKind::pigment;
    std::string name;
    std::uint32_t colour = 0;
    std::vector<ScoopView> scoops = {}; // none: it is weighed
    double low_g = 0, g = 0;            // from low where there is a range
    double u = 0;                       // of what those scoops give
    bool guess = false;                 // by how the powder is guessed to lie
    bool by_drop = true;                // a rest that no spoon measures: few enough drops
  };
  Finding finding = Finding::nothing;
  bool all_cards = false; // listed, not the workshop's own alone
  session::SaidIn said_in = session::SaidIn::parts;
  std::vector<Row> recipes;
  std::vector<Step> lines;
  std::string recipe;        // its name
  bool recipe_kept = false;  // the plan goes by it
  std::vector<Row> pigments; // this page's
  std::vector<Part> blend;
  bool by_volume = false;
  std::vector<Row> binders;
  int page = 0, pages = 1;
  std::string name, search;
  Want want = Want::pigment_g;
  double wanted = 0;
  std::string pan; // its name
  std::optional<Planned> planned;
  std::optional<BinderRange> range;    // of the blend, in that binder
  std::optional<words::Error> why_not; // it comes to nothing
  std::optional<MullingNeeded> mulling;
  SpecksStay specks_last = SpecksStay::no; // coarse: grind it dry first; else mull less at once
  std::optional<session::Cost> cost;
  std::string currency;               // of that
  std::optional<LastTime> last_time;  // its dry paint was not good
  std::optional<Softening> softening; // else: what it lacks
  bool is_short_of_gum = false;
  struct Short {
    std::string name;
    double left_g = 0, wanted_g = 0;
  };
  std::vector<Short> short_of;
  std::vector<std::string> past_day; // names: what it was to keep until is over
  std::string again_of;              // name
  std::string go_on;                 // name of the batch that was left open
  double celsius = 21, humidity = 0.5;
  bool room_guessed = true;     // nobody ever read it
  std::int64_t room_age_ms = 0; // since it was
  std::vector<words::Sentence> cautions;
  bool reading = false; // the cautions lie open
  bool cautions_seen = false;
  std::optional<words::Sentence> missing; // why it cannot begin yet
  std::optional<NumberView> number;
  std::optional<words::Error> error;
};

struct TodayView {
  struct Wait {
    PadId pad;
    Due due;
    std::string name = {}; // of the batch or card
    session::CardKind kind = session::CardKind::pigment;
    std::uint32_t colour = 0;
    std::int64_t since = 0;               // ms since 1970: began to wait
    TrailView trail = {};                 // on the slab
    std::vector<PansView::Pan> pans = {}; // poured
    double left_mL = 0;                   // poured: in the jar
    double low_h = 0, high_h = 0;         // until the pans may take it; 0: now
    int open_days = 0;                    // since the last pour, where it lapses soon; else 0
    int days = 0; // to the last day of what is to be used up; since something lies here alone
    std::optional<double> left_g = {}; // of a card
    double of_g = 0, takes_g = 0;      // how much there was, and what a batch takes
    session::MakingStep step = session::MakingStep::gum_in; // of binder: that runs
    std::optional<session::MakingStep> next = {};           // that has not begun; absent: none
    bool honey = true;                                      // sweetens it; else glycerin
    bool stood = false;                                     // too long for gum in water
    std::string image = {};                                 // of a batch's photo; empty: none
  };
  struct Again {
    PadId pad;
    std::string name;
    std::uint32_t colour = 0;
    std::int64_t made_at = 0;           // ms since 1970
    std::optional<int> offset_min = {}; // by the clock there, where it is known
    std::string image = {};             // of a swatch's photo; empty: none
  };
  std::vector<Wait> waits; // this page's
  int page = 0, pages = 1;
  std::vector<Again> again;
  bool first_day = false;
  Hand hand = Hand::left;
  std::int64_t now_ms = 0;        // since 1970
  std::optional<Reading> reading; // while the studio is being read
  Notice notice;
};

struct BookView {
  struct Row {
    PadId pad;
    std::string name;
    std::uint32_t colour = 0;
    std::int64_t made_at = 0; // ms since 1970
    session::Progress progress = session::Progress::open;
    std::optional<paint::Amount> ratio;
    bool warned = false;
    std::vector<session::Became> became = {};
    bool chosen = false;                // another one is wanted beside it
    std::optional<int> offset_min = {}; // by the clock there, where it is known
    bool swatch = false;                // the colour was read from its swatch
    int batches = 1;                    // by colour: of this paint
    std::optional<PaintLeft> left = {}; // likewise: of all of them
    std::string image = {};             // of a photo; empty: none
  };
  std::string search;
  bool by_colour = false;
  std::size_t listed = 0;                 // on all pages
  std::optional<std::size_t> marked = {}; // of them, while some are chosen for paper
  std::string label_line = {};            // while paper is asked for
  bool comparing = false;
  std::string compared;  // name of the batch that another one is chosen for
  std::vector<Row> rows; // this page's, newest first
  int page = 0, pages = 1;
  std::size_t damages = 0;
  std::vector<words::Error> faults;
  std::optional<Reading> reading; // while the studio is being read
  Folded batch;                   // the one looked at
  std::uint32_t colour = 0;       // of its swatch, else of its pigment
  bool swatch = false;            // which of both
  TrailView trail;                // of that one
  std::string again_of;           // names of batches
  std::vector<std::string> made_again;
  struct Verdict {
    std::optional<std::int64_t> days; // since the pour before it; absent: there was none
    session::Became as = session::Became::good;
    int pan = 0; // 0: all
  };
  std::vector<Verdict> verdicts;            // in order
  std::map<std::string, Measures> measures; // by card: of a liquid, by the tools of today
  std::optional<std::string> note;          // as far as it is written
  std::optional<std::string> new_name;      // likewise
  bool discarded = false;                   // the batch is, or the list is of those
  std::optional<session::Cost> cost;
  std::optional<double> a_pan_costs;
  std::string currency;             // of both
  bool recipe_kept = false;         // from this batch
  std::optional<paint::Amount> pvc; // of its dry film
  std::optional<PaperDesk> paper;   // while it is asked what shall be put on paper
  std::vector<std::string> photos;  // images, the latest first
  std::optional<MatchView> match;   // with the last good one of the same paint
};

struct CompareView {
  enum What { pigment, ratio, flow, gum, sweet, mulled, passes, celsius, humidity, became };
  struct Row {
    What what = pigment;
    std::string name;                  // of the pigment
    std::optional<paint::Amount> a, b; // mulled in min; absent: not known
    std::vector<session::Became> became_a, became_b;
    bool differs = false; // by more than what is not known of them
  };
  std::string name_a, name_b;
  std::uint32_t colour_a = 0, colour_b = 0;
  bool swatch_a = false, swatch_b = false; // they were read from swatches
  TrailView trail;                         // of a, b beside it
  std::vector<Row> rows;
  std::optional<MatchView> match; // where both swatches were read
  bool trails = true;             // in place of the colours
};

struct TabletView {
  Size mm;             // of the display, truly
  double drawn_at = 1; // see Display
  Hand hand = Hand::left;
  bool motion = true;
  bool full_screen = false;
  words::Language language = words::Language::english;
  struct Row {
    PadId pad;          // bind ...
    PadId does;         // what the key does
    std::string key;    // empty: none
    bool waits = false; // the next key will be it
  };
  std::vector<Row> rows;
  struct Sharing {               // what studios tell each other
    std::string folder, written; // no folder: files are saved and picked
    bool preparing = false;      // what is to be written
    bool none = false;
    std::string found; // a friend's file
    std::int64_t found_at = 0;
    std::size_t found_pigments = 0;
    int found_batches = 0;
    std::optional<words::Error> failure;
    std::size_t pigments = 0; // of what counts; 0: nothing does
    int batches = 0;
    bool doubted = false; // the studio's own notes speak against it
  };
  bool shares = false;         // has a pad for it
  std::optional<Sharing> told; // it is open
};

using ScreenView = std::variant<PlanView, TodayView, SlabView, BookView, CompareView, TabletView,
                                ShelfView, PansView, RangesView, StoryView, BinderView, PhotosView>;

struct View {
  Layout layout;
  TopBarView top_bar;
  std::optional<PadId> pressed; // flashes
  std::optional<PadId> focus;   // where the keys stand
  int utc_offset_min = 0;
  std::map<std::string, words::Error> no_pictures = {}; // images that cannot be shown, and why
  ScreenView screen;
};

View view(const Bench& bench, const Now& now);

}
