// What the hands are doing: one function, step(bench, input, now) -> effects. It reads no clock, no
// file and no device; whatever it needs from outside stands in Now, whatever it wants done outside
// comes back as effects. The same inputs give the same batch, in a window or without one.
#pragma once

#include "bench/book_index.hpp"
#include "bench/book_pages.hpp"
#include "bench/due.hpp"
#include "bench/folds.hpp"
#include "bench/layout.hpp"
#include "bench/panel.hpp"
#include "bench/paper.hpp"
#include "bench/photos.hpp"
#include "bench/plan_state.hpp"
#include "bench/scroll.hpp"
#include "bench/sharing.hpp"
#include "bench/tablet.hpp"
#include "bench/taught.hpp"
#include "bench/touched.hpp"
#include "session/batch.hpp"
#include "session/making.hpp"
#include "session/offsets.hpp"
#include "session/reader.hpp"
#include "session/shelf.hpp"

#include <functional>
#include <map>
#include <memory>
#include <set>
#include <unordered_map>
#include <utility>
#include <variant>

namespace bench {

struct Now {
  std::int64_t wall_ms = 0; // since 1970
  std::int64_t run_ms = 0;  // a clock that never jumps and runs through suspend
  int utc_offset_min = 0;
  std::function<std::uint32_t()> fresh; // random, for ids
};

// ---- inputs

struct Pointer {
  enum Phase { down, move, up, lost } phase = down;
  Point at;
  std::int64_t ms = 0;    // run_ms when the event was taken from the queue
  std::uint64_t poll = 0; // events of one poll share it: after a stall they share their time too
  int finger = 0;
};
struct Key {        // of a keyboard or a pedal; never while a text field has it
  std::string name; // "b", "5", "Space", "Page Down"
  bool down = true; // a held key comes once
  std::int64_t ms = 0;
  std::uint64_t poll = 0;
};
struct Text { // what stands in a text field now
  PadId field;
  std::string text;
};
struct Tap {
  PadId pad;
};
struct Tick {};
struct Saved { // every line of this session up to n lies on the disk
  std::uint64_t n = 0;
  std::string fallback; // the folder it lies in while the studio fails; empty: the studio's own
};
struct SaveFailed {
  words::Error reason;
  bool nothing_is_safe = false; // also not what was confirmed before
};
struct Reading { // the studio, in files
  std::size_t done = 0;
  std::size_t to_come = 0;
};
struct Loaded { // everything that is kept
  std::vector<session::Log> logs;
  std::vector<session::Damage> damage;
  std::vector<words::Error> faults; // what could not be read at all
};
struct Arrived { // sessions of other devices, whole, since then
  std::vector<session::Log> logs;
  std::vector<session::Damage> damage; // of `files`
  std::vector<std::string> files;
  std::vector<words::Error> faults;
};
struct Resized {
  Display display;
};
struct NotKept { // the tablet, after keep_tablet
  words::Error why;
};
struct Spoken { // after Effects.speak, and at the start
  words::Language language;
};
struct HandedOn {      // all that was kept by then lies elsewhere too
  std::int64_t at = 0; // ms since 1970
};
struct Leaving {}; // the window is being closed; see leaving.hpp
struct Study {};   // after Effects.study: look through a little more of what is to be learnt from
struct LearnWanted {
  std::string problem;  // bytes for paint::learn_bytes, off this thread
  bool to_tell = false; // to another studio, and not for this one
};
struct Fitted {                      // the answer to Effects.learn
  words::Result<std::string> result; // bytes of a paint::RangeFit
  bool to_tell = false;
};

using Input = std::variant<Pointer, Key, Text, Tap, Tick, Saved, SaveFailed, Reading, Loaded,
                           Arrived, Resized, NotKept, Spoken, ToldWritten, FriendsFound,
                           PaperWritten, PaperNotShown, HandedOn, Leaving, Study, Fitted, Dropped,
                           PicturesListed, ImageSeen, PhotoKept, SwatchRead>;

// ---- effects

enum class SoundCue {
  tap,
  pigment,
  binder,
  water,
  honey,
  glycerin,
  wetting_aid,
  not_counted,
  bell
};

struct Effects {
  std::vector<session::Line> append;    // to this session's file, in order
  std::optional<std::int64_t> wake_at;  // run_ms at which to send a Tick at the latest
  bool redraw = false;                  // the view has changed
  bool keep_tablet = false;             // bench.tablet is another
  std::optional<words::Language> speak; // from now on
  std::optional<paint::ToldRange> tell; // to be written for another studio
  bool find_told = false;               // what another studio wrote
  bool hand_on = false;                 // where a pack is handed on is to be shown
  std::optional<PaperWanted> paper;     // to be written and shown
  std::vector<PhotoWanted> photos;      // to be answered, in order
  std::vector<SoundCue> cues;
  bool study = false; // there is more to look through: send a Study when nothing waits
  std::optional<LearnWanted> learn; // to be answered, in order
};

// ---- the state

enum class Screen { today, shelf, plan, slab, pans, book, tablet, binder, photos };

enum class NotCounted { bounced, slid, rested, other_finger };

struct Notice { // said for a few seconds
  std::optional<NotCounted> not_counted;
  std::optional<words::Error> error;
  std::int64_t until_ms = 0;
};

// How much the next tap on a material adds.
struct TapAmount {
  session::Unit unit = session::Unit::drops;
  double count = 1; // of drops or spoons; a weighing asks for its number
  bool operator==(const TapAmount&) const = default;
};

// What a list shows, for as long as what it rests on is so.
struct KeptList {
  std::string rests_on;
  std::vector<std::size_t> cards; // places
  std::size_t others = 0; // Shelf: not listed; Plan: pigments of one's own, or all are listed
};

struct Keys {
  std::optional<PadId> focus;   // where the keys have moved to; none while fingers tap
  std::optional<PadId> flash;   // pressed by a key that is down
  std::optional<PadId> binding; // waits for the key that it shall have
  struct Release {
    std::string name;
    std::int64_t ms = 0;
    std::uint64_t poll = 0;
  };
  std::optional<Release> last_up;
};

// The marker on its way from where it was to where an addition has brought it.
struct Glide {
  double from = 0; // flow
  std::int64_t since_ms = 0;
};
inline constexpr std::int64_t glide_ms = 120;

// What a number on the number pad is for.
struct NumberEntry {
  PadId target; // pour_g, weigh_pan; add CARD, bottle_of CARD, weigh_paint, spilt, other_amount;
                // weigh, parts CARD, celsius or humidity; fact WHICH
  std::string text;
  std::optional<words::Error> error;
  std::string asked = {}; // the text that was doubted: entered again, it is meant
};

// Of the batch on the slab, as long as its pigments are these.
struct EarlierBatches {
  std::string of;
  std::set<std::string> pigments;         // cards
  std::vector<session::TrailPoint> ghost; // of the last good batch of the same paint
  Folded made;                            // the batch that it makes again; null: none
  int ranges = -1;                        // version of what was learnt that portions rest on
  int portions = 1;                       // over the slab, as it was planned
};

enum class ShelfKind { pigment, binder, liquid, dropper, spoon, pan, glass, recipe };

// What lies open of a card: its figures to be changed, a pigment as it is read, its jars, the chart
// of colours.
enum class CardPage { facts, reading, jars, hues, shades };

struct ShelfState {
  ShelfKind kind = ShelfKind::pigment;
  std::string search;
  Scroll list;
  bool away = false;                 // lists what was put away
  std::optional<session::Card> card; // open, as far as it is edited
  bool changed = false;
  bool is_new = false;
  bool choosing = false; // its cautions, in place of the card
  int caution_page = 0;
  bool others = false;  // lists what is not the maker's own
  bool ticking = false; // lists all pigments, and a tap says whether it is the maker's own
  CardPage on = CardPage::facts;
  int hue = 0;         // of the chart, while a shade is chosen
  session::Bought jar; // as far as it is entered
};

// Binder as it is made, or a jar of it whose strength is looked at.
struct BinderState {
  std::string of;    // the making, by its jar's card; empty: a new one
  std::string by;    // of a new one: the binder whose recipe it goes by
  double gum_g = 60; // weighed
  double spoons = 0; // or measured so; 0: weighed
  std::string spoon; // card
  double dose = 0;   // of a preservative
  bool dose_in_g = false;
  std::optional<bool> preserved; // as chosen for its last day
  double jar_g = 0;              // that the jar holds, weighed; 0: not yet

  std::string jar;             // card of the jar that is looked at; empty: none
  double tare_g = 0;           // of its bottle
  std::optional<double> net_g; // in it, weighed and not yet kept
  int percent = 0;             // dry gum that it shall have; 0: as it is
};

struct TodayState {
  std::vector<Due> waits;         // as of the last step that showed it
  std::vector<std::string> again; // batches: the last good paints, each paint once
  Scroll list;                    // of what waits
};

struct PansState {
  std::string batch;    // chosen here; empty: that of the Book or of the slab, else the latest
  bool judging = false; // else pouring
  int pan = 0;          // tapped last; 0: all
  int page = 0;
  std::string card;                // of the pan; empty: as poured last, else the shelf's first
  std::vector<std::string> others; // batches that may have paint, as they lay when Pans was opened
  int others_page = 0;
  Folded folded;        // as of the last step that folded it
  paint::TackMark tack; // where it begins to stay tacky
};

struct Sitting { // this run of the program as a session
  std::string session;
  std::string device;
  std::int64_t began_run_ms = 0;
  std::int64_t wall_ahead_ms = 0; // of the running clock, when the wall clock was last looked at
  int utc_offset_min = 0;         // likewise
  std::uint64_t next_n = 0;
  bool left = false;                                      // has said goodbye: no line follows
  std::set<std::pair<std::string, std::string>> laid_out; // batch and card named in full already
  std::set<std::uint64_t> picked_out; // lines by which another than the last was taken back
};

struct Saving {
  std::optional<std::uint64_t> confirmed; // lines up to here lie on the disk
  std::optional<words::Error> failure;    // stands until a later save succeeds
  std::string fallback;                   // where lines lie while the studio fails
};

struct OtherPaint { // of an earlier batch, as a material
  std::string batch;
  session::Card card; // what it is made of, now
  session::Place place = session::Place::jar;
  double grams = 0;
};

struct Bench {
  Display display;
  bool night = false;
  std::optional<bool> full_screen; // whether the window fills the display; absent: it has no choice
  Screen screen = Screen::plan;    // a window begins on Today, a script on Plan
  Panel panel;                     // of Slab
  std::int64_t asked_since = 0;    // last line, order stamp, after which "found" was asked
  std::string asked_left_out;      // batch of whose pigment that is not in it was asked
  TapAmount amount;
  std::string dropper; // chosen for the next drops; empty: see tool_for
  std::optional<NumberEntry> number;
  bool locked = false; // the glass is being wiped
  Tablet tablet;
  bool hands_on = false; // no folder carries on what is kept here: see here_alone.hpp
  words::Language spoken = words::Language::english;
  Touch touch;
  Keys keys;
  Sharing sharing;
  PaperDesk paper;
  std::optional<Glide> glide;
  std::pair<std::string, double> rung; // batch and start of the last pass that the bell rang for
  Notice notice;
  PlanState plan;
  ShelfState shelf_page;
  BookState book;
  PansState pans;
  TodayState today;
  BinderState binder;
  PhotosState photos;
  BookIndex index;
  Folds folds;
  std::shared_ptr<const KeptList> shelf_list, finder_list; // of Shelf and of Plan; see kept_lists
  std::size_t restocked = 0; // how often shelf and stock were made anew
  std::unordered_map<std::string, std::size_t> place_on_shelf; // card -> since then

  std::vector<session::Card> shelf; // what may be used: what ships, as the workshop edited it
  std::vector<session::Card> away;  // put away
  std::set<std::string> own;        // cards that somebody laid out on the shelf
  std::set<std::string> pigments_in_recipes; // of those of the shelf
  session::Stocks stock;                     // what was bought and weighed of them
  session::Makings makings;                  // of binder, neither done nor thrown away
  std::int64_t making_rung_at = 0;           // wall clock, up to when the bell has rung for them
  std::vector<session::Log> logs;            // all sessions read, this one first
  std::map<std::string, std::vector<std::size_t>> speaks_of; // batch -> its logs
  session::Offsets offsets;                                  // of their devices' clocks
  std::vector<session::Damage> damage;
  std::vector<words::Error> faults;
  bool loaded = false;
  Reading reading; // while not loaded
  Sitting sitting;
  Saving saving;

  std::string batch;                    // on the slab; empty: none
  std::optional<PlanState> begun;       // as it was when that batch was begun here
  std::optional<session::Batch> folded; // that batch as of the last step that folded it
  std::int64_t folded_run_ms = 0;       // when that was
  EarlierBatches earlier;               // that it is like
  std::vector<OtherPaint> paints;       // that it may take, while they are chosen from
  std::vector<std::string> batches;     // all that are listed, oldest first
  std::vector<std::string> discarded;   // likewise
  session::Lessons lessons;             // what batches taught of this bench's drying
  Learning learning;                    // and of the range
  Expected expected;                    // what it says of the batch on the slab
  MullingModel mulling;
  Rewetting rewetting;
};

// An empty bench with the shelf that ships: one session, not yet begun on disk.
Bench start(std::string session, std::string device, const Display& display, const Now& now);

Effects step(Bench& bench, Input input, const Now& now);

// The pads of this moment.
Layout layout(const Bench& bench);

}
