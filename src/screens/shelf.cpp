#include "screens/parts.hpp"

namespace screens {

void draw_shelf(Sheet& sheet, const bench::ShelfView&) { panel(sheet, sheet.view.layout.main); }

}
