// The colours of what is handed on. Nothing is told by colour alone: it may be printed grey.
#pragma once

namespace paper::ink {

inline constexpr const char* text = "#18262e";
inline constexpr const char* quiet = "#4a5861";
inline constexpr const char* rule = "#b9b6ad";
inline constexpr const char* right = "#bdefd7";
inline constexpr const char* right_text = "#014933";
inline constexpr const char* sticky = "#f2cdbc";
inline constexpr const char* runny = "#ccdcf6";
inline constexpr const char* caution = "#fbc959";
inline constexpr const char* paper = "#ffffff";

}
