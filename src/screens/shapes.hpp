// What a screen is made of: shapes. Whatever is said about a screen (does it fit, can it be read,
// what stands where) is said about this list; paint.hpp is the one place that makes pixels of it.
#pragma once

#include "session/shapes.hpp"

namespace screens {

using session::inset;
using session::Point;
using session::Rect;

using session::shapes::Anchor;
using session::shapes::Box;
using session::shapes::clear;
using session::shapes::Clip;
using session::shapes::Colour;
using session::shapes::Disc;
using session::shapes::Gradient;
using session::shapes::mixed;
using session::shapes::Picture;
using session::shapes::Polygon;
using session::shapes::Polyline;
using session::shapes::rgb;
using session::shapes::Shape;
using session::shapes::Stop;
using session::shapes::Text;

}
