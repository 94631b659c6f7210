#include "screens/views_tablet.hpp"

#include "bench/pads_shared.hpp"
#include "bench/pads_slab.hpp"
#include "screens/views_slab.hpp"

#include <memory>

namespace views {

using namespace bench;

void add_tablets(std::vector<Case>& out, Size mm, Hand hand, const std::string& on) {
  Bench b = bench_on(mm, hand);
  b.screen = Screen::tablet;
  b.tablet.keys = {{"Page Down", {SlabPad::add, "binder"}}, {"b", {SharedPad::undo, ""}}};
  out.push_back({"tablet" + on, mm, view(b, {})});
  b.full_screen = true;
  b.sharing.folder = "/home/maker/Slabside/told";
  out.push_back({"tablet, with others" + on, mm, view(b, {})});
  b.sharing.open = true;
  out.push_back({"tablet, other studios" + on, mm, view(b, {})});
  paint::ToldRange told;
  told.pigments = {"pb28", "py43", "pr108"};
  told.batches = 41;
  b.sharing.found = FriendsFile{"2026-11-21-weir.json", 1795617120000, told};
  out.push_back({"tablet, a file found" + on, mm, view(b, {})});
  Bench in_browser = b;
  in_browser.sharing = {};
  in_browser.sharing.by_hand = in_browser.sharing.open = true;
  out.push_back({"tablet, other studios in a browser" + on, mm, view(in_browser, {})});
  in_browser.sharing.written = "slabside-2026-11-25.json";
  out.push_back({"tablet, told in a browser" + on, mm, view(in_browser, {})});
  b.sharing.found.reset();
  b.sharing.written = "/home/maker/Slabside/told/2026-11-25-2.json";
  b.learning.told = b.learning.ranges.told = std::make_shared<const paint::ToldRange>(told);
  out.push_back({"tablet, told" + on, mm, view(b, {})});
}

}
