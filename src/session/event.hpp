// What happened, one struct a kind, each with its word in files. Events say what was done, never
// what was computed from it.
// How they look as bytes: FORMAT.md beside this file.
#pragma once

#include "session/card.hpp"
#include "session/immutable.hpp"
#include "session/making_event.hpp"
#include "session/photo_event.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <tuple>
#include <variant>
#include <vector>

namespace session {

// A line of a session file: [session, n].
struct Ref {
  std::string session;
  std::uint64_t n = 0;
  bool operator==(const Ref&) const = default;
  bool operator<(const Ref& other) const {
    return std::tie(session, n) < std::tie(other.session, other.n);
  }
};

struct Began {
  static constexpr std::string_view word = "began";
  int version = 1;
  std::string session;
  int part = 0;
  std::uint64_t from = 0; // part > 0: the first n this part holds
  std::string device;
  std::string local; // local time with offset, for people
  bool operator==(const Began&) const = default;
};

struct LaidOut {
  static constexpr std::string_view word = "laid_out";
  Immutable<Card> card;
  bool operator==(const LaidOut&) const = default;
};

// Off the shelf until it is laid out anew.
struct PutAway {
  static constexpr std::string_view word = "put_away";
  std::string card;
  bool operator==(const PutAway&) const = default;
};

// So much more of it on the shelf: a jar bought, or given where its price is 0.
struct Bought {
  static constexpr std::string_view word = "bought";
  std::string of; // card
  double g = 0;
  std::optional<double> price = {}; // of all of it; absent: not said
  std::string currency = {};        // a word of its maker's own, where there is a price
  std::string lot = {};
  std::string on = {}; // "2026-11-25"; empty: the day of the line
  bool operator==(const Bought&) const = default;
};

// So much of it is left, without its jar: whatever was counted before.
struct StockWeighed {
  static constexpr std::string_view word = "stock_weighed";
  std::string of; // card
  double g = 0;
  double tare_g = 0; // of the empty jar, which g is without; 0: not said
  bool operator==(const StockWeighed&) const = default;
};

// What another studio has learnt of its pigments, as the file that it wrote (paint/range/TOLD.md);
// empty: it is told no more. Of several the last counts.
struct Told {
  static constexpr std::string_view word = "told";
  std::string range;
  bool operator==(const Told&) const = default;
};

struct Opened {
  static constexpr std::string_view word = "opened";
  std::string name;
  std::string again_of = {}; // the batch it makes again; empty: none
  bool operator==(const Opened&) const = default;
};
bool is_nameless(const Opened& opened); // nothing but spaces is no name

// What the batch is meant to be: pans of one size, and what is to go in. Of several the last
// counts.
struct Planned {
  static constexpr std::string_view word = "planned";
  static constexpr int most_pans = 1000; // of a batch
  struct Take {
    std::string of;                      // card
    std::optional<double> g, parts = {}; // absent: as much as it turns out to want; see FORMAT.md
    bool operator==(const Take&) const = default;
  };
  int pans = 0;   // 0: not said
  std::string in; // card of the pans, where there are any
  std::vector<Take> takes;
  std::string recipe = {}; // card that it was planned by; empty: none
  bool operator==(const Planned&) const = default;
};

struct RoomSet {
  static constexpr std::string_view word = "room";
  double celsius = 21;
  double humidity = 0.5; // 0 to 1
  bool guessed = false;  // nobody read an instrument
  bool operator==(const RoomSet&) const = default;
};

enum class Unit { g, drops, spoons };

struct Added {
  static constexpr std::string_view word = "added";
  std::string of; // card
  Unit unit = Unit::g;
  double amount = 0;
  std::string with; // dropper or spoon; empty for a weighing
  bool operator==(const Added&) const = default;
};

enum class Feel { wont_move, too_sticky, right, too_loose, too_runny };
enum class By { knife, muller };

struct Felt {
  static constexpr std::string_view word = "felt";
  Feel as = Feel::right;
  By by = By::knife;
  bool operator==(const Felt&) const = default;
};

enum class Stage { wetting_out, mulling, resting };

struct StageBegan {
  static constexpr std::string_view word = "stage";
  Stage stage = Stage::wetting_out;
  bool operator==(const StageBegan&) const = default;
};

// The stage still runs: written while nothing else is, so that a program that dies has not lost it.
struct GoesOn {
  static constexpr std::string_view word = "goes_on";
  bool operator==(const GoesOn&) const = default;
};

struct Dot {
  static constexpr std::string_view word = "dot";
  Specks specks = Specks::many;
  bool operator==(const Dot&) const = default;
};

enum class TroubleKind { wont_wet, gelling, gummy, gritty, foams, separates, smells };

struct Trouble {
  static constexpr std::string_view word = "trouble";
  TroubleKind what = TroubleKind::wont_wet;
  bool operator==(const Trouble&) const = default;
};

struct BottleWeighed {
  static constexpr std::string_view word = "bottle_weighed";
  std::string of;
  double g = 0; // bottle and all
  bool operator==(const BottleWeighed&) const = default;
};

struct CountLost {
  static constexpr std::string_view word = "count_lost";
  std::string of;
  bool operator==(const CountLost&) const = default;
};

// Where paint lies: open on the slab, in a covered jar, poured.
enum class Place { slab, jar, pans };

// How much of what lies in a place: a share, 1 for all and any other by eye, or so many grams.
struct Quantity {
  double share = 1;        // above 0 to 1; meaningful without g
  std::optional<double> g; // of paint as it lies there
  bool operator==(const Quantity&) const = default;
};

struct Moved {
  static constexpr std::string_view word = "moved";
  Place from = Place::slab;
  Place to = Place::jar;
  Quantity quantity;
  bool operator==(const Moved&) const = default;
};

// Spilt, left on the tools, or gone into another batch.
struct Lost {
  static constexpr std::string_view word = "lost";
  Place from = Place::slab;
  Quantity quantity;
  std::string into = {}; // that batch
  bool operator==(const Lost&) const = default;
};

// All that lies in a place, with what it lies in.
struct Weighed {
  static constexpr std::string_view word = "weighed";
  Place place = Place::jar;
  double g = 0;
  double tare_g = 0; // of the empty jar, slab or pans
  bool operator==(const Weighed&) const = default;
};

// After a rest the paint, with water added since, moves again as it did at that line.
struct AsBefore {
  static constexpr std::string_view word = "as_before";
  Ref line;
  bool operator==(const AsBefore&) const = default;
};

// How the paint was found after nobody was there: it was covered and has lost nothing since the
// line before, or all has gone that the room takes.
enum class State { wet, dry };

struct Found {
  static constexpr std::string_view word = "found";
  State as = State::wet;
  bool operator==(const Found&) const = default;
};

// What the pigments of the batch want done about them has been read.
struct CautionsSeen {
  static constexpr std::string_view word = "cautions_seen";
  bool operator==(const CautionsSeen&) const = default;
};

// One layer into each of the pans `first` to `last` of this batch; they are numbered from 1.
struct Poured {
  static constexpr std::string_view word = "poured";
  int first = 1, last = 1;
  std::string in;          // card of the pan
  std::optional<double> g; // into each; absent: filled to the brim
  bool operator==(const Poured&) const = default;
};

// One pan with the paint in it.
struct PanWeighed {
  static constexpr std::string_view word = "pan_weighed";
  int pan = 1;
  double g = 0;
  bool operator==(const PanWeighed&) const = default;
};

enum class Became { good, full, sunken, cracked, sticky, rubs_off, wont_rewet, mould };

// What the dry paint turned out to be.
struct Verdict {
  static constexpr std::string_view word = "verdict";
  Became as = Became::good;
  int pan = 0; // 0: all
  bool operator==(const Verdict&) const = default;
};

struct Noted {
  static constexpr std::string_view word = "noted";
  std::string text;
  bool operator==(const Noted&) const = default;
};

struct Withdrawn {
  static constexpr std::string_view word = "withdrawn";
  Ref line;
  bool operator==(const Withdrawn&) const = default;
};

// That feel note teaches nothing about what its pigments want; withdrawn, it teaches again.
struct SetAside {
  static constexpr std::string_view word = "set_aside";
  Ref line;
  bool operator==(const SetAside&) const = default;
};

// That weighing was looked at again: so many g it is, whatever was counted says.
struct Confirmed {
  static constexpr std::string_view word = "confirmed";
  Ref line;
  double g = 0; // as that line says
  bool operator==(const Confirmed&) const = default;
};

// That line should have said something else of its own kind, or happened `by_ms` after the moment
// it bears (before it if negative), or both. Of several corrections the last one that speaks
// counts.
struct Corrected {
  static constexpr std::string_view word = "corrected";
  using Says =
      std::variant<std::monostate, Opened, RoomSet, Added, Felt, StageBegan, Dot, Trouble,
                   BottleWeighed, Moved, Lost, Weighed, Found, Poured, PanWeighed, Verdict, Noted>;
  Ref line;
  Immutable<Says> says;              // monostate: nothing about that
  std::optional<std::int64_t> by_ms; // absent: nothing about that
  bool operator==(const Corrected&) const = default;
};

inline constexpr const char* gone_damaged = "damaged"; // what a writer gives as why

// Stands in a mended file for lines that could not be had back: from its own n to this one.
struct Gone {
  static constexpr std::string_view word = "gone";
  std::uint64_t to = 0;
  std::string why; // gone_damaged, or a sentence in older files
  bool operator==(const Gone&) const = default;
};

struct Gathered {
  static constexpr std::string_view word = "gathered";
  bool operator==(const Gathered&) const = default;
};

struct Closed {
  static constexpr std::string_view word = "closed";
  bool operator==(const Closed&) const = default;
};

// The batch leaves every list and teaches nothing; what went into it is gone all the same.
// Withdrawn, it is there again.
struct Discarded {
  static constexpr std::string_view word = "discarded";
  bool operator==(const Discarded&) const = default;
};

struct ClockJumped {
  static constexpr std::string_view word = "clock_jumped";
  std::int64_t by_ms = 0; // wall clock against the running one
  std::string local;      // the new local time
  bool operator==(const ClockJumped&) const = default;
};

struct Left {
  static constexpr std::string_view word = "left";
  bool operator==(const Left&) const = default;
};

// A kind this version does not know: kept as it came, shown, left out of sums.
struct Unknown {
  std::string e;
  std::string json; // the object without n, t, at, e, batch, c
  bool operator==(const Unknown&) const = default;
};

using EventKinds =
    std::variant<Began, LaidOut, PutAway, Bought, StockWeighed, Making, Told, Opened, Planned,
                 RoomSet, CautionsSeen, Added, Felt, StageBegan, GoesOn, Dot, Trouble,
                 BottleWeighed, CountLost, Moved, Lost, Weighed, AsBefore, Found, Poured,
                 PanWeighed, Verdict, Noted, SetAside, Confirmed, Withdrawn, Corrected, Photo, Gone,
                 Gathered, Closed, Discarded, ClockJumped, Left, Unknown>;

// One of them. What copies, moves and ends it is compiled once, in event.cpp: among every file that
// holds a line it would take a good part of the time to build.
struct Event : EventKinds {
  using EventKinds::EventKinds;
  Event();
  Event(const Event&);
  Event(Event&&) noexcept;
  Event& operator=(const Event&);
  Event& operator=(Event&&) noexcept;
  ~Event();
};
bool operator==(const Event&, const Event&);

struct Line {
  std::uint64_t n = 0;
  std::int64_t t = 0;  // ms since the session began, on a clock that runs through suspend
  std::int64_t at = 0; // order stamp, ms since 1970
  std::string batch;   // empty where the event belongs to no batch
  Event event;
  bool operator==(const Line&) const = default;
};

// The words in files.
std::string_view name_of(Feel);
std::string_view name_of(By);
std::string_view name_of(Stage);
std::string_view name_of(Specks);
std::string_view name_of(TroubleKind);
std::string_view name_of(PhotoOf);
std::string_view name_of(Place);
std::string_view name_of(State);
std::string_view name_of(Became);
std::optional<Feel> feel_named(std::string_view);
std::optional<By> by_named(std::string_view);
std::optional<Stage> stage_named(std::string_view);
std::optional<Specks> specks_named(std::string_view);
std::optional<TroubleKind> trouble_named(std::string_view);
std::optional<PhotoOf> photo_of_named(std::string_view);
std::optional<Place> place_named(std::string_view);
std::optional<State> state_named(std::string_view);
std::optional<Became> became_named(std::string_view);

}
