// Where to tap in the program's window so that a batch begins and its first pass runs: one
// "X Y" in pixels a line. Usage: places PX_PER_MM
#include "speed/race.hpp"
#include "speed/sitting.hpp"

#include <cstdio>
#include <cstdlib>

int main(int count, char** words) {
  speed::need(count == 2, "usage: places PX_PER_MM");
  const double px = std::strtod(words[1], nullptr);
  speed::need(px > 0, "pixels to a millimetre are wanted");
  speed::Sitting sitting(1);
  for (const char* pad : {"plan", "pigment pb28", "weigh", "digit 1", "digit 2", "enter", "begin",
                          "add gum_12", "pass"}) {
    const bench::Point at = sitting.box(pad).centre();
    std::printf("%.0f %.0f\n", at.x * px, at.y * px);
    sitting.tap(pad);
  }
}
