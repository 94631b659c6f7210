// The words of what waits on Today.
#pragma once

#include "bench/view.hpp"

namespace screens {

// offset_min: of the clock on the wall, east of UTC.
std::string wait_words(const bench::TodayView& today, const bench::TodayView::Wait& wait,
                       int offset_min);

}
