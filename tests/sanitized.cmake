# What cmake -C takes for the build with sanitizers and fuzzers: clang's, who has both.
set(CMAKE_C_COMPILER clang CACHE STRING "")
set(CMAKE_CXX_COMPILER clang++ CACHE STRING "")
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
set(SLABSIDE_SANITIZE ON CACHE BOOL "")
set(SLABSIDE_WINDOW OFF CACHE BOOL "")
