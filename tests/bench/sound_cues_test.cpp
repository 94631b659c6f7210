#include "hands.hpp"

#include <algorithm>

namespace sound_cues_test {

using namespace hands;

namespace {

std::vector<SoundCue> of(Hands& h, const std::string& pad) {
  h.cues.clear();
  h.tap(pad);
  return h.cues;
}

}

TEST_CASE("each material has its own click, a pad that adds nothing another") {
  Hands h;
  h.begin();
  CHECK(of(h, "add gum_12") == std::vector{SoundCue::binder});
  CHECK(of(h, "add water") == std::vector{SoundCue::water});
  CHECK(of(h, "add honey_11") == std::vector{SoundCue::honey});
  CHECK(of(h, "add glycerin") == std::vector{SoundCue::glycerin});
  CHECK(of(h, "add ox_gall") == std::vector{SoundCue::wetting_aid});
  CHECK(of(h, "felt right") == std::vector{SoundCue::tap});
  CHECK(of(h, "add pb28") == std::vector{SoundCue::tap}); // asks for its weight first
  h.cues.clear();
  h.type("3");
  CHECK(h.cues.back() == SoundCue::pigment);
}

TEST_CASE("what was not counted is heard as such") {
  Hands h;
  h.begin();
  const Point at = h.box("add gum_12").centre();
  h.cues.clear();
  h.point(Pointer::down, at);
  h.point(Pointer::move, {0, 0});
  h.point(Pointer::up, {0, 0});
  CHECK(h.cues == std::vector{SoundCue::not_counted});
  h.cues.clear();
  h.point(Pointer::down, {at.x, -5}); // beside every pad: nothing
  h.point(Pointer::up, {at.x, -5});
  CHECK(h.cues.empty());
}

TEST_CASE("the bell rings once when a pass has lasted its time, however late it is looked at") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("pass");
  h.wait(400); // wetting out has no bell
  h.tap("pass");
  h.cues.clear();
  h.wait(paint::usual_pass_s - 1);
  CHECK(h.cues.empty());
  CHECK(*h.wake - h.run <= 1000); // it wakes for it
  h.wait(90);
  CHECK(h.cues == std::vector{SoundCue::bell});
  h.wait(30);
  h.wait(30);
  CHECK(h.cues.size() == 1);
  h.tap("pass");
  h.tap("pass");
  h.cues.clear();
  h.wait(paint::usual_pass_s + 1);
  CHECK(h.cues == std::vector{SoundCue::bell}); // the next one again
}

TEST_CASE("the bell wakes whoever looks at another screen, and while a finger moves") {
  Hands h;
  h.begin();
  h.tap("add gum_12");
  h.tap("pass");
  h.tap("pass");                          // mulling
  const std::int64_t began = h.run - 210; // a tap counts when lifted, then rests 210 ms
  h.tap("book");
  h.cues.clear();
  while (h.cues.empty() && h.run - began < 400000) {
    const std::int64_t wake = *h.wake;
    for (int i = 0; i < 3; ++i) { // nothing of this folds the batch anew
      h.pass_ms((wake - h.run) / 3);
      h.point(Pointer::move, {1.0 * i, 1});
      CHECK(*h.wake <= wake);
    }
    h.pass_ms(std::max<std::int64_t>(*h.wake - h.run, 0));
    h.give(Tick{});
  }
  CHECK(h.cues == std::vector{SoundCue::bell});
  CHECK(h.run - began >= paint::usual_pass_s * 1000);
  CHECK(h.run - began <= paint::usual_pass_s * 1000 + 1);
}

TEST_CASE("a pad that said no sounds like what was not counted") {
  Hands h;
  h.tap("pigment pb28");
  h.tap("weigh");
  CHECK(of(h, "enter") == std::vector{SoundCue::not_counted}); // no number
  h.type("12");
  CHECK(h.cues.back() == SoundCue::tap);
  CHECK(of(h, "begin") == std::vector{SoundCue::pigment});
  session::Log log = h.b.logs.front();
  log.session = "d52f19e60002";
  Hands later;
  later.give(Loaded{{log}, {}, {}});
  later.tap("go_on " + h.b.batch);
  CHECK(of(later, "undo") == std::vector{SoundCue::not_counted}); // another sitting did all of it
}

TEST_CASE("off by one tap, and on again") {
  Hands h;
  h.begin();
  CHECK(of(h, "sound").empty());
  CHECK(of(h, "add gum_12").empty());
  CHECK(of(h, "sound") == std::vector{SoundCue::tap});
}

}
