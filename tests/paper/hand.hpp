// Small batches by hand, and what is handed on of them.
#pragma once

#include "paper/facts.hpp"
#include "session/make.hpp"

namespace hand {

using namespace session;

struct Made {
  make::Writer writer;
  paper::Offsets offsets{{Ref{"c41e08d5", 0}, 60}};

  Made() {
    Card pigment = make::pigment("pb28", 4.0, 30);
    pigment.name = "Cobalt blue";
    std::get<PigmentCard>(pigment.facts).index_name = "PB28";
    std::get<PigmentCard>(pigment.facts).colour = 0x1F3FA0;
    writer.card(pigment);
    Card binder = make::liquid("gum_12", CardKind::binder, {.gum = 1, .water = 2});
    binder.name = "Gum 1:2";
    writer.card(binder);
    writer.card(make::dropper("dropper", 0.05, 0.002, CardKind::water));
  }
  Ref put(Event event) { return writer.put("9a04d3e1c26f", std::move(event)); }
  void open(const std::string& name) {
    put(Opened{name});
    put(RoomSet{19.5, 0.47, false});
  }
  // 12 g and 6 g, 20 drops in two runs, a pass, notes.
  void work() {
    put(Added{"pb28", Unit::g, 12, ""});
    put(Added{"gum_12", Unit::g, 6, ""});
    put(StageBegan{Stage::wetting_out});
    writer.wait(90);
    put(Felt{Feel::too_sticky, By::knife});
    for (int i = 0; i < 12; ++i) put(Added{"gum_12", Unit::drops, 1, "dropper"});
    put(StageBegan{Stage::mulling});
    writer.wait(200);
    for (int i = 0; i < 8; ++i) put(Added{"gum_12", Unit::drops, 1, "dropper"});
    put(Felt{Feel::right, By::muller});
    put(Dot{Specks::few});
    put(Gathered{});
    put(Closed{});
  }
  Batch batch() const { return make::folded({writer.log}, "9a04d3e1c26f"); }
};

inline Batch ordinary(const std::string& name = "Weir blue") {
  Made made;
  made.open(name);
  made.work();
  return made.batch();
}

inline const paper::Offsets& offsets() {
  static const paper::Offsets all{{Ref{"c41e08d5", 0}, 60}};
  return all;
}

inline bool has(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

// What a name may do to a page, a drawing, a table or whoever reads them.
inline std::vector<std::string> hostile_names() {
  return {"<script>alert(1)</script>",
          "</title></bdi><img src=x onerror=alert(1)>",
          "\" onload=\"x' & ]]> --> <!--",
          std::string("nul\0bell\a esc\x1b[31m del\x7f", 23),
          "c1\xc2\x9b"
          "31m",
          "not utf-8 \xff\xc0\xaf\xed\xa0\x80 end",
          "\xe2\x80\xae"
          "evil right-to-left",
          "\xd7\x9b\xd7\x97\xd7\x95\xd7\x9c \xd8\xa3\xd8\xb2\xd8\xb1\xd9\x82",
          "\xef\xbf\xbe noncharacter",
          "two\nlines\tand a tab",
          std::string(5000, 'w'),
          "=HYPERLINK(\"http://a.b\",\"c\")",
          "",
          "   ",
          "&lt;already&gt; {0} {1}"};
}

}
