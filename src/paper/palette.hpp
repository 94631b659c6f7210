// The colours of what is handed on. Nothing is told by colour alone: it may be printed grey.
#pragma once

#include "session/shapes.hpp"

namespace paper::ink {

inline constexpr auto text = session::shapes::rgb(0x18262e);
inline constexpr auto quiet = session::shapes::rgb(0x4a5861);
inline constexpr auto rule = session::shapes::rgb(0xb9b6ad);
inline constexpr auto right = session::shapes::rgb(0xbdefd7);
inline constexpr auto right_text = session::shapes::rgb(0x014933);
inline constexpr auto sticky = session::shapes::rgb(0xf2cdbc);
inline constexpr auto runny = session::shapes::rgb(0xccdcf6);
inline constexpr auto caution = session::shapes::rgb(0xfbc959);
inline constexpr auto paper = session::shapes::rgb(0xffffff);

}
