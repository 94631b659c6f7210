# The toolchain of the page: Debian's emscripten, and every flag that the page is compiled with. What
# ships (demo/browser) and what is tested (tests/run web) have them both from here, and from nowhere else.
#   cmake -G Ninja -S . -B build-browser --toolchain third_party/emscripten.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "the only one" FORCE)
# All of it comes from afar before anything is seen, so it is small first; src/CMakeLists.txt names what is
# quick first. The browser's own exceptions need no code around each call that may throw, and no way through
# a script. At -Oz emscripten leaves all inlining to its linker, which makes more of it, and slower, than the
# compiler does. -Os would be a seventh larger on the way and a tenth quicker in what a tap takes.
foreach(language C CXX)
  set(CMAKE_${language}_FLAGS -fwasm-exceptions CACHE STRING "off unless asked for" FORCE)
  set(CMAKE_${language}_FLAGS_RELEASE "-Oz -finline-functions -DNDEBUG" CACHE STRING "as shipped" FORCE)
endforeach()
set(SLABSIDE_PAGE_FLAGS ON)

# emscripten links with programs of node's, and finds Debian's only where it is told to.
set(ENV{NODE_PATH} /usr/share/nodejs)
set_property(GLOBAL PROPERTY RULE_LAUNCH_LINK "${CMAKE_COMMAND} -E env NODE_PATH=$ENV{NODE_PATH}")

include(/usr/share/emscripten/cmake/Modules/Platform/Emscripten.cmake)
