// What Pans shows of poured paint, and what it has in common with other screens.
#pragma once

#include "bench/bench.hpp"
#include "bench/pan_times.hpp"
#include "paint/cracks.hpp"

#include <optional>
#include <string>
#include <vector>

namespace bench {

struct UndoView {
  std::optional<session::Event> target; // what the next undo takes back
  std::string card_name;                // of what was added
  bool saved = false;                   // the last line of this session lies on the disk
  std::uint64_t unsaved = 0;            // lines that do not
  bool gives_back = false;              // the target was taken back, and comes again
  bool question = false;                // one stands: it is closed, and nothing taken back
};

struct NumberView {
  PadId target;
  std::string text; // as typed
  std::string of;   // the material's name, where it is one
  std::optional<words::Error> error;
  Want want = Want::pigment_g;                 // of the plan, for its number
  session::SaidIn in = session::SaidIn::parts; // likewise
  double planned_g = 0;                        // of a pigment, still to be weighed
  std::optional<session::Event> corrects = {}; // what the line says that is to be another amount
};

struct PansView {
  struct Said { // of the dry paint, last
    session::Became as = session::Became::good;
    bool early = false; // sticky, of a layer that could not yet be dry
  };
  struct Pan {
    PadId pad; // "pan 3", or "new_pan"
    int number = 1;
    double brim_mL = 0;
    std::vector<double> layers_mL; // as they will be when dry, the first below
    double wet_mL = 0;             // above that, still to dry off
    double pour_mL = 0;            // of the next layer, as poured; 0: it takes none
    double next_mL = 0;            // that it leaves when dry
    bool full = false;
    bool chosen = false;
    std::optional<Said> said;
  };
  struct Apart {
    int pan = 0;
    Said said;
  };
  struct Next { // layer
    enum Kind {
      nothing,
      in_hours,
      maybe_now,
      now,
      full,
      unknown,
      none_left,
      barred
    } kind = nothing;
    double low_h = 0, high_h = 0; // from now
    bool weighed = false;         // by what the scale said
    std::optional<session::Became> barred_by = {};
  };
  struct Weighing {
    double hours = 0, g = 0;
  };
  struct Curve { // of one pan's last layer
    int pan = 0; // 0: none
    std::int64_t poured_at = 0;
    double now_h = 0, to_h = 0;            // since it was poured
    std::vector<LayerCourse::Point> ahead; // from the last weighing on
    std::optional<paint::Interval> ready_h;
    int layer = 0; // that comes next; 0: none, it is full
  };
  struct Other { // batch
    enum What { layer_now, layer_later, look, on_slab, in_jar, dries } what = dries;
    PadId pad;
    std::string name;
    std::uint32_t colour = 0;
    bool swatch = false; // that colour was read from one
    std::vector<Pan> pans;
    int layer = 0;                  // the next
    double low_h = 0, high_h = 0;   // until then
    double mL = 0;                  // in the jar
    std::int64_t since_pour_ms = 0; // of the last
  };
  std::string batch, name; // empty: none
  std::uint32_t colour = 0;
  bool swatch = false; // that colour was read from one
  bool judging = false;
  int pan = 0; // that is meant; 0: all
  std::vector<Pan> pans;
  int layer = 0;               // poured last into the pan that is meant, or the most into any
  int layers_in_all = 0;       // about, with what is to come; 0: not known, or none is to come
  int all_layer = 0;           // that "pour all" pours; 0: not the same for all
  std::vector<Other> others;   // that have a pad
  std::size_t more_others = 0; // that have none now
  Curve curve;
  std::vector<paint::LikelyCause> causes; // where it cracked
  double layer_mm = 0;                    // the deepest layer as poured, of what is meant; 0: none
  bool depth_known = false;               // by the pan's card
  std::string card_name;
  double card_mL = 0;
  double to_pour_mL = 0;
  int all = 0; // pans that "pour all" pours into
  struct Planned {
    int pans = 0;   // 0: nothing was planned, or other pans
    int layers = 0; // that fill them; 0: not known
  } planned;
  bool layer_left = false; // paint for one more over all that is meant and has room
  bool wet = false;        // some that have room are still wet
  bool first = false;      // nothing was poured yet
  Pan fresh;               // before the first pour: each of those
  Next next;
  std::optional<paint::Interval> fill; // of the fullest pan when dry, 0 to 1
  std::optional<paint::Tack> tack;
  bool room_guessed = false;             // what is said of drying rests on a guess
  double celsius = 21, humidity = 0.5;   // of the room
  std::vector<Weighing> weighings;       // of the pan that is meant, or the first that was weighed
  std::optional<WeighAgain> weigh_again; // of this batch's pans
  bool weigh_now = false;                // its time has come
  std::int64_t since_pour_ms = 0;
  int asked_day = 0;        // whose verdict is due; 0: none
  std::optional<Said> said; // of the pan that is meant, or of all
  std::vector<Apart> apart; // while all are meant: pans of which something newer was said
  UndoView undo;
  std::optional<words::Error> save_failure;
  bool saved_elsewhere = false;
  Notice notice;
  std::optional<NumberView> number;
};

}
