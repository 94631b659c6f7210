# B612, as cached paths and, for those who link third_party::font, as definitions of the same names.
set(font_folders PATHS /usr/share/fonts/opentype/b612 /usr/share/fonts /usr/local/share/fonts)
third_party_find(SLABSIDE_FONT_REGULAR B612-Regular.otf ${font_folders})
third_party_find(SLABSIDE_FONT_BOLD B612-Bold.otf ${font_folders})
# What B612 lacks, DejaVu Sans has; the third is there if the system has one of these.
set(dejavu_folders PATHS /usr/share/fonts/truetype/dejavu /usr/share/fonts /usr/local/share/fonts)
third_party_find(SLABSIDE_FONT_OTHER_REGULAR DejaVuSans.ttf ${dejavu_folders})
third_party_find(SLABSIDE_FONT_OTHER_BOLD DejaVuSans-Bold.ttf ${dejavu_folders})
find_file(SLABSIDE_FONT_EAST_ASIAN NAMES DroidSansFallbackFull.ttf NotoSansCJK-Regular.ttc
  PATHS /usr/share/fonts/opentype/noto /usr/share/fonts/truetype/droid NO_CMAKE_FIND_ROOT_PATH)
add_library(third_party_font INTERFACE)
add_library(third_party::font ALIAS third_party_font)
foreach(font REGULAR BOLD OTHER_REGULAR OTHER_BOLD EAST_ASIAN)
  target_compile_definitions(third_party_font INTERFACE
    SLABSIDE_FONT_${font}="${SLABSIDE_FONT_${font}}")
endforeach()
