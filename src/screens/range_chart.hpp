// What the two pages of ranges share: rows on one scale of flow.
#pragma once

#include "screens/parts.hpp"
#include "screens/trail_geometry.hpp"

namespace screens {

// The columns, where rows begin and end.
struct RangeChart {
  Rect names, bars, knowns; // of all rows
  FlowScale scale;
  double step = 0; // from row to row
  Rect row(const Rect& column, std::size_t i) const {
    return {column.x, column.y + static_cast<double>(i) * step, column.w, step};
  }
};

RangeChart range_chart(const Rect& rows, std::size_t count, double low, double high);
void range_axis(Sheet& sheet, const RangeChart& chart);

// From low to high, its middle open for a guess.
void interval(Sheet& sheet, const RangeChart& chart, double y, double low, double middle,
              double high, bool known);

}
