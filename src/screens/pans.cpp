#include "screens/parts.hpp"

namespace screens {

void draw_pans(Sheet& sheet, const bench::PansView&) { panel(sheet, sheet.view.layout.main); }

}
